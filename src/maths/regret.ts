import type { Interval } from "./interval.ts";
import { extremePoints, leastOver, type WeightRegion } from "./weight-region.ts";
import { weightedSum } from "./weighted-sum.ts";

/**
 * The most that each may turn out behind the best, over all allowed weights and values: 0 or more, in their unit.
 * It is reached at an extreme point, with its own values at their lowest and all others' at their highest.
 *
 * A warning light and no ranking: one that is never best can have the smallest of all.
 * Source: Boutilier, Patrascu, Poupart & Schuurmans 2006 (abstract read); the formula is worked out.
 *
 * @param values for every alternative a range for every criterion, by index; ranges are taken as independent
 * @throws RangeError if ranges are missing, or as `extremePoints`
 */
export function greatestRegrets(region: WeightRegion, values: readonly (readonly Interval[])[]): number[] {
	const lows = values.map((ranges) => ranges.map(({ low }) => low));
	const highs = values.map((ranges) => ranges.map(({ high }) => high));
	const regrets = values.map(() => 0);
	for (const point of extremePoints(region, values[0]?.length)) {
		const scores = highs.map((high) => weightedSum(high, point));
		const best = scores.reduce((most, score) => Math.max(most, score), -Infinity);
		const leader = scores.indexOf(best);
		const second = scores.reduce((most, score, at) => (at === leader ? most : Math.max(most, score)), -Infinity);
		for (const [at, low] of lows.entries()) {
			// Nobody is behind oneself, not even where one's own values are wide.
			const ahead = (at === leader ? second : best) - weightedSum(low, point);
			regrets[at] = Math.max(regrets[at] as number, ahead);
		}
	}
	return regrets;
}

/**
 * The least that each comes to, over all allowed weights and values, in their unit.
 *
 * @param values as for `greatestRegrets`
 * @throws RangeError if a criterion of the region has no range
 */
export function worstScores(region: WeightRegion, values: readonly (readonly Interval[])[]): number[] {
	return values.map((ranges) =>
		leastOver(
			region,
			ranges.map(({ low }) => low),
		),
	);
}
