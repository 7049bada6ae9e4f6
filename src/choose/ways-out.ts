import { inclusionMinimal } from "../maths/minimal-sets.ts";
import { ruleById } from "../rules/all-rules.ts";
import { compareFirmness, type Firmness, firmnessOf } from "./firmness.ts";
import type { Judgement } from "./judge.ts";

/** A smallest set of demands that, given up, brings at least one board back. */
export interface WayOut {
	readonly giveUp: readonly string[];
	readonly boardIds: readonly string[];
	/** The firmest part that would have to change. */
	readonly firmness: Firmness;
}

/**
 * What to give up when nothing is left: the inclusion-minimal sets of failed rules over all boards and worlds (decision
 * by catalogue: the rules a board fails in one world are one correction). What is only planned comes before what can go
 * back, and that before what is bought for good; then fewer changes (two rules may ask for the same one), fewer rules, and
 * more boards brought back.
 */
export function waysOut({ boards, build }: Judgement): readonly WayOut[] {
	const out = boards.filter(({ verdict }) => verdict === "does-not-fit");
	if (out.length < boards.length || boards.length === 0) return [];
	return inclusionMinimal(out.flatMap(({ corrections }) => corrections))
		.map((rules) => ({
			giveUp: [...rules].sort(),
			firmness: firmnessOf(
				[...rules].flatMap((id) => ruleById(id) ?? []),
				build.facts,
			),
			boardIds: out
				.filter(({ corrections }) => corrections.some((one) => [...one].every((id) => rules.has(id))))
				.map(({ board }) => board.id),
		}))
		.sort(
			(one, other) =>
				compareFirmness(one.firmness, other.firmness) ||
				changesOf(one).size - changesOf(other).size ||
				one.giveUp.length - other.giveUp.length ||
				other.boardIds.length - one.boardIds.length ||
				(one.giveUp.join() < other.giveUp.join() ? -1 : 1),
		);
}

/** What a person would change: another processor cures its socket and its memory at once. */
function changesOf({ giveUp }: WayOut): ReadonlySet<string> {
	return new Set(giveUp.map((id) => ruleById(id)?.wayOut ?? id));
}
