import type { BuildFacts, BuildPartKind } from "../parts/build.ts";
import type { Rule } from "../rules/define-rule.ts";

/** How hard it is to change what a rule reads of the build: a plan, a part that can go back, one bought for good. */
export type Firmness = "planned" | "returnable" | "bought";

const order: readonly Firmness[] = ["planned", "returnable", "bought"];

/** The parts of the build that a rule holds against each other, or against the board; those that were picked. */
export function partsOfRule({ reads }: Pick<Rule, "reads">, facts: BuildFacts): readonly BuildPartKind[] {
	const roots = [...new Set(reads.map((path) => path.split(".")[0] ?? ""))];
	return roots.filter((root): root is BuildPartKind => {
		const have = (facts as unknown as Record<string, { state?: string } | undefined>)[root];
		return have?.state === "have";
	});
}

/** The firmest of the parts that would have to change; a wish or a limit is as free as a plan. */
export function firmnessOf(
	rules: readonly (Pick<Rule, "reads"> & Partial<Pick<Rule, "mayRead">>)[],
	facts: BuildFacts,
): Firmness {
	const all = rules.flatMap((rule): readonly Firmness[] => [
		...partsOfRule(rule, facts).map((kind) => ownershipOf(facts, kind)),
		...(isOfPaidLists(rule, facts) ? ["bought" as const] : []),
	]);
	return all.reduce((firmest, one) => (order.indexOf(one) > order.indexOf(firmest) ? one : firmest), "planned");
}

/** Whether a rule is about drives or cards alone, and these are paid for already. */
function isOfPaidLists(
	{ reads, mayRead = [] }: Pick<Rule, "reads"> & Partial<Pick<Rule, "mayRead">>,
	facts: BuildFacts,
): boolean {
	const lists = (facts.boughtLists ?? []).filter((list) => mayRead.includes(list));
	return reads.length === 0 && lists.length > 0;
}

/** How a picked part is owned. */
export function ownershipOf(facts: BuildFacts, kind: BuildPartKind): Firmness {
	const have = facts[kind];
	return have.state === "have" ? have.ownership : "planned";
}

/** Negative where the first is easier to change. */
export function compareFirmness(one: Firmness, other: Firmness): number {
	return order.indexOf(one) - order.indexOf(other);
}
