import { inclusionMinimal } from "../maths/minimal-sets.ts";
import { ruleById } from "../rules/all-rules.ts";
import { failedIn } from "./failed-sets.ts";
import { compareFirmness, type Firmness, firmnessOf } from "./firmness.ts";
import type { Judgement } from "./judge.ts";
import { compareLosses, type Loss, lossOfRule } from "./losses.ts";

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
 * back, and that before what is bought for good; then what loses least, with the heaviest loss compared first; then
 * fewer changes (two rules may ask for the same one), fewer rules, and more boards brought back.
 */
export function waysOut({ boards, build, market }: Judgement): readonly WayOut[] {
	if (boards.length === 0 || boards.some(({ verdict }) => verdict !== "does-not-fit")) return [];
	const failed = failedSets({ boards, build, market });
	const found = inclusionMinimal(failed.map(({ rules }) => rules)).map((rules): WayOut & { loss: readonly Loss[] } => {
		const back = new Set(failed.flatMap((one) => (isWithin(one.rules, rules) ? [one.index] : [])));
		const given = [...rules].flatMap((id) => ruleById(id) ?? []);
		return {
			giveUp: [...rules].sort(),
			firmness: firmnessOf(given, build.facts),
			boardIds: boards.flatMap(({ board }, index) => (back.has(index) ? [board.id] : [])),
			loss: [...new Map(given.map((rule) => [rule.wayOut, lossOfRule(rule)])).values()],
		};
	});
	return found
		.sort(
			(one, other) =>
				compareFirmness(one.firmness, other.firmness) ||
				compareLosses(one.loss, other.loss) ||
				one.giveUp.length - other.giveUp.length ||
				other.boardIds.length - one.boardIds.length ||
				(one.giveUp.join() < other.giveUp.join() ? -1 : 1),
		)
		.map(({ loss: _, ...way }) => way);
}

/**
 * What boards fail, each in each world, as far as it can belong to a smallest way out. Most of a market already fails
 * more by the quick rules than another board fails in all; nothing is measured for those.
 */
function failedSets({ boards, build, market }: Pick<Judgement, "boards" | "build" | "market">) {
	const tried = build.worlds
		.flatMap(({ facts }) => {
			const world = failedIn(market, facts);
			return boards.map((_, index) => ({ index, world, quick: world.quick(index) }));
		})
		.sort((one, other) => one.quick.size - other.quick.size);
	const found: { index: number; rules: ReadonlySet<string> }[] = [];
	let smallest: ReadonlySet<string>[] = [];
	for (const { index, world, quick } of tried) {
		if (smallest.some((rules) => rules.size < quick.size && isWithin(rules, quick))) continue;
		const rules = world.all(index);
		found.push({ index, rules });
		if (!smallest.some((known) => isWithin(known, rules))) smallest = inclusionMinimal([...smallest, rules]);
	}
	return found;
}

function isWithin(part: ReadonlySet<string>, whole: ReadonlySet<string>): boolean {
	return [...part].every((id) => whole.has(id));
}
