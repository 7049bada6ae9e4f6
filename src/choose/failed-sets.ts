import type { BuildFacts, World } from "../parts/build.ts";
import type { Market } from "../parts/market.ts";
import { allRules } from "../rules/all-rules.ts";
import type { Rule } from "../rules/define-rule.ts";
import { type FindingOnBoard, findingsOfMarket, seenBy } from "./findings-of-market.ts";
import { isMeasured } from "./is-measured.ts";

/** Which of the rules that can stop a board do so, for a board (its place in the market) in one world. */
interface FailedIn {
	/** Rules that need nothing measured; quick to tell. */
	quick(index: number): ReadonlySet<string>;
	/** All of them. */
	all(index: number): ReadonlySet<string>;
	/** Whether no rule stops it; ends at the first that does. */
	isFree(index: number): boolean;
}

/** The failed rules of each board of a market in a world. What is found is kept as for a judgement, so little is done twice. */
export function failedIn(market: Market, facts: BuildFacts): FailedIn {
	const findings = (rules: readonly SeenRule[]) =>
		rules.map(({ rule, seen }): [string, FindingOnBoard] => [
			rule.id,
			findingsOfMarket(market, rule, facts, seen(facts)),
		]);
	const quickOnes = findings(quickRules);
	const measuredOnes = findings(measuredRules);
	const failed = (ones: typeof quickOnes, index: number) =>
		ones.filter(([, find]) => find(index).verdict === "does-not-fit").map(([id]) => id);
	return {
		quick: (index) => new Set(failed(quickOnes, index)),
		all: (index) => new Set([...failed(quickOnes, index), ...failed(measuredOnes, index)]),
		isFree: (index) => [...quickOnes, ...measuredOnes].every(([, find]) => find(index).verdict !== "does-not-fit"),
	};
}

/** Of these boards those that some world leaves in. */
export function boardsLeft(market: Market, worlds: readonly World[], indexes: readonly number[]): readonly number[] {
	const failed = worlds.map(({ facts }) => failedIn(market, facts));
	return indexes.filter((index) => failed.some((world) => world.isFree(index)));
}

/** Whether some world leaves any of these boards in; ends at the first. */
export function anyLeft(market: Market, worlds: readonly World[], indexes: readonly number[]): boolean {
	const failed = worlds.map(({ facts }) => failedIn(market, facts));
	return indexes.some((index) => failed.some((world) => world.isFree(index)));
}

interface SeenRule {
	readonly rule: Rule;
	readonly seen: (facts: BuildFacts) => string;
}

const stopping: readonly SeenRule[] = allRules
	.filter(({ scope, severity }) => scope === "board" && severity === "stops")
	.map((rule) => ({ rule, seen: seenBy(rule) }));
const quickRules = stopping.filter(({ rule }) => !isMeasured(rule));
const measuredRules = stopping.filter(({ rule }) => isMeasured(rule));
