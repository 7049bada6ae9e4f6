import { type Interval, weightedSumOfIntervals } from "./interval.ts";
import { leastOver, type WeightRegion } from "./weight-region.ts";

/** Scores nearer than this are level. Own convention, for values of up to a few hundred. */
const level = 1e-9;

/**
 * Whether one stays behind the other under every allowed weight, whatever the values turn out to be: even its highest
 * values against the other's lowest come to no more. Two that are always level do not leave each other behind.
 * Sources: Salo & Hämäläinen 1992 (abstract read); the test at extreme points is worked out.
 *
 * @param one a range of values for every criterion, by index; ranges of different ones are taken as independent
 * @throws RangeError if a criterion of the region has no range, or one has more ranges than the other
 */
export function isLeftBehind(region: WeightRegion, one: readonly Interval[], other: readonly Interval[]): boolean {
	return isNeverBehind(region, other, one) && !isNeverBehind(region, one, other);
}

/**
 * Whether one stays behind the other under these weights by the ranges of their scores alone: its highest score is no
 * more than the other's lowest. Weaker than `isLeftBehind`, which compares them weight by weight.
 *
 * @throws RangeError if there are not as many weights as ranges
 */
export function isBehindAt(weights: readonly number[], one: readonly Interval[], other: readonly Interval[]): boolean {
	const [its, others] = [weightedSumOfIntervals(one, weights), weightedSumOfIntervals(other, weights)];
	return its.high <= others.low + level && !(others.high <= its.low + level);
}

function isNeverBehind(region: WeightRegion, one: readonly Interval[], other: readonly Interval[]): boolean {
	if (one.length !== other.length) throw new RangeError(`${one.length} ranges against ${other.length}`);
	const worst = one.map(({ low }, index) => low - (other[index] as Interval).high);
	return leastOver(region, worst) >= -level;
}
