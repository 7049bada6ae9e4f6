import { inclusionMinimal } from "../maths/minimal-sets.ts";
import type { Judgement } from "./judge.ts";

/** A smallest set of demands that, given up, brings at least one board back. */
export interface WayOut {
	readonly giveUp: readonly string[];
	readonly boardIds: readonly string[];
}

/**
 * What to give up when nothing is left: the inclusion-minimal sets of failed rules over all boards and worlds (decision
 * by catalogue: the rules a board fails in one world are one correction). Fewer rules first, then more boards brought
 * back.
 */
export function waysOut({ boards }: Judgement): readonly WayOut[] {
	const out = boards.filter(({ verdict }) => verdict === "does-not-fit");
	if (out.length < boards.length || boards.length === 0) return [];
	return inclusionMinimal(out.flatMap(({ corrections }) => corrections))
		.map((rules) => ({
			giveUp: [...rules].sort(),
			boardIds: out
				.filter(({ corrections }) => corrections.some((one) => [...one].every((id) => rules.has(id))))
				.map(({ board }) => board.id),
		}))
		.sort(
			(one, other) =>
				one.giveUp.length - other.giveUp.length ||
				other.boardIds.length - one.boardIds.length ||
				(one.giveUp.join() < other.giveUp.join() ? -1 : 1),
		);
}
