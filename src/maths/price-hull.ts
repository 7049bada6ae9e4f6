import type { Interval } from "./interval.ts";

/** Something to be had for a price, and how good it is; both finite, in any units. */
export interface PricedScore {
	readonly price: number;
	readonly score: number;
}

/** The same where only bounds are known. */
export interface PricedRange {
	readonly price: Interval;
	readonly score: Interval;
}

/** Rounding of sums may make points of one line seem to lie beside it by so much of the score. */
const rounding = 1e-9;

/** Whether the first costs no more and is no worse, and is better in one of the two. */
export function dominates(one: PricedScore, other: PricedScore): boolean {
	return (
		one.price <= other.price &&
		one.score >= other.score &&
		(one.price < other.price || one.score > other.score + rounding)
	);
}

/**
 * Whether nobody sensible would take the second beside the first: it costs at most a little more and is clearly better.
 *
 * @param priceShare how much more it may cost, as a share of the second's price
 * @param clearly how much better it must be, in the score's unit
 */
export function dominatesInPractice(
	one: PricedScore,
	other: PricedScore,
	{ priceShare, clearly }: { readonly priceShare: number; readonly clearly: number },
): boolean {
	return one.price <= other.price * (1 + priceShare) && one.score >= other.score + clearly;
}

/** Indices of the points that no other point dominates, in the order given. Of equal points all stay. */
export function undominated(points: readonly PricedScore[]): readonly number[] {
	return indicesOf(points, (point) => !points.some((other) => dominates(other, point)));
}

/**
 * Indices of the points that may turn out undominated: at its best (cheapest, highest score) no other at its worst
 * dominates it. Where all is known these are the undominated ones.
 */
export function possiblyUndominated(ranges: readonly PricedRange[]): readonly number[] {
	const worst = ranges.map(({ price, score }) => ({ price: price.high, score: score.low }));
	return indicesOf(ranges, ({ price, score }, index) => {
		const best = { price: price.low, score: score.high };
		return !worst.some((other, at) => at !== index && dominates(other, best));
	});
}

/**
 * Indices of the corners of the upper concave hull, by rising price: from the cheapest point to the one with the highest
 * score. Each is the best of all for some worth of a point of score. Of points at the same place the first given is named;
 * one on the straight line between two corners is no corner.
 */
export function upperHull(points: readonly PricedScore[]): readonly number[] {
	const at = (index: number) => points[index] as PricedScore;
	const rising = undominated(points).toSorted(
		(one, other) => at(one).price - at(other).price || at(other).score - at(one).score || one - other,
	);
	const corners: number[] = [];
	for (const index of rising) {
		const last = corners.at(-1);
		// Of undominated points at one price the later ones have no more score.
		if (last !== undefined && at(index).score <= at(last).score + rounding) continue;
		while (corners.length > 1 && !liesAbove(at(corners.at(-1) ?? 0), at(corners.at(-2) ?? 0), at(index))) corners.pop();
		corners.push(index);
	}
	return corners;
}

/** What each further point costs from one corner of a hull to the next. Never falls along a hull. */
export function pricesOfPoint(points: readonly PricedScore[], hull: readonly number[]): readonly number[] {
	return hull.slice(1).map((index, before) => {
		const [from, to] = [points[hull[before] ?? 0] as PricedScore, points[index] as PricedScore];
		return (to.price - from.price) / (to.score - from.score);
	});
}

/** Whether a point lies above the straight line from one to another, whose prices differ. */
function liesAbove(point: PricedScore, from: PricedScore, to: PricedScore): boolean {
	const onLine = from.score + ((to.score - from.score) * (point.price - from.price)) / (to.price - from.price);
	return point.score > onLine + rounding;
}

function indicesOf<T>(list: readonly T[], holds: (one: T, index: number) => boolean): readonly number[] {
	return list.flatMap((one, index) => (holds(one, index) ? [index] : []));
}
