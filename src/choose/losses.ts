import type { BuildFacts } from "../parts/build.ts";
import type { Question } from "../questions/define-question.ts";
import type { Rule } from "../rules/define-rule.ts";
import { type Firmness, ownershipOf } from "./firmness.ts";

/**
 * How much it costs a person to change an answer, least first (own convention): a must that becomes a would-like costs
 * nothing and can still come true; then money, of which the sum is known; then one thing fewer; then another part, which
 * has to be chosen again.
 */
const losses = ["wish", "money", "fewer", "part"] as const;
export type Loss = (typeof losses)[number];

/** What changing the answer to a question costs. */
export function lossOfQuestion({ id, isWish, kind, partKind }: Question): Loss {
	if (isWish || kind === "one") return "wish";
	if (id === "about/budget" || id === "about/money-in-all") return "money";
	return partKind && (kind === "part" || partKind === "processor") ? "part" : "fewer";
}

const roots: Readonly<Record<string, Loss>> = {
	wish: "wish",
	clockPlan: "wish",
	priceCap: "money",
	moneyInAll: "money",
	memoryGb: "fewer",
	rescueMusts: "fewer",
	drives: "fewer",
	addInCards: "fewer",
};

/** What giving up a rule costs at least, from what it reads. */
export function lossOfRule({ reads, mayRead }: Pick<Rule, "reads" | "mayRead">): Loss {
	const found = [...reads, ...mayRead].flatMap((path) => roots[path.split(".")[0] ?? ""] ?? []);
	return losses.find((loss) => found.includes(loss)) ?? "part";
}

/** Negative where the first loses less: the heaviest losses are compared first, and fewer go before more. */
export function compareLosses(one: readonly Loss[], other: readonly Loss[]): number {
	const [ours, theirs] = [one, other].map((all) => all.map((loss) => losses.indexOf(loss)).sort((a, b) => b - a)) as [
		number[],
		number[],
	];
	const at = ours.findIndex((loss, index) => loss !== theirs[index]);
	return at < 0 ? ours.length - theirs.length : (ours[at] as number) - (theirs[at] ?? -1);
}

/** How firmly what a question is about belongs to the build. */
export function firmnessOfQuestion({ id, kind, partKind }: Question, facts: BuildFacts): Firmness {
	if (kind === "part" && partKind) return ownershipOf(facts, partKind as keyof BuildFacts & "processor");
	const list = id === "fit/drives" ? "drives" : id === "fit/cards" ? "addInCards" : null;
	return list && facts.boughtLists?.includes(list) ? "bought" : "planned";
}
