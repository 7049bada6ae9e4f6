/** Differences this small beside the largest are rounding, and count as none. */
const rounding = 1e-12;

/** The smallest change of one weight at which a leader is caught up with. */
export interface NarrowestCrossover {
	/** Place of the rival that catches up. */
	readonly rival: number;
	readonly criterion: number;
	/** Weight of the criterion now, as a share of all. */
	readonly from: number;
	/** Its weight where both are level. */
	readonly to: number;
}

/**
 * The weight of a group of criteria, as a share of all, at which two alternatives are level, while the proportions
 * inside the group and among all others stay: with the mean difference d in the group and r in the rest it is
 * r / (r - d). Past it the other one is ahead. Where a side weighs nothing, its criteria share alike.
 *
 * @param weights none negative, at least one above 0
 * @param group places of the criteria that move together; often one
 * @returns above 0 and below 1, or null if no weight of the group changes who is ahead
 * @throws RangeError if there are not as many values as weights
 */
export function crossoverWeight(
	weights: readonly number[],
	one: readonly number[],
	other: readonly number[],
	group: readonly number[],
): number | null {
	if (one.length !== weights.length || other.length !== weights.length) {
		throw new RangeError(`${one.length} and ${other.length} values but ${weights.length} weights`);
	}
	const differences = one.map((value, place) => value - (other[place] as number));
	const isMoved = (place: number) => group.includes(place);
	const places = weights.map((_, place) => place);
	const moved = meanOver(places.filter(isMoved), weights, differences);
	const rest = meanOver(
		places.filter((place) => !isMoved(place)),
		weights,
		differences,
	);
	const level = rounding * Math.max(...differences.map(Math.abs));
	if (Math.abs(moved) <= level || Math.abs(rest) <= level || moved > 0 === rest > 0) return null;
	return rest / (rest - moved);
}

/**
 * How firm a lead is: the smallest change of one criterion's weight, the others in proportion, at which any rival
 * catches up. Null if no single weight can do it. Of equal changes the first rival's and criterion's is given.
 *
 * @param weights as for `crossoverWeight`
 * @throws RangeError as `crossoverWeight`
 */
export function narrowestCrossover(
	weights: readonly number[],
	leader: readonly number[],
	rivals: readonly (readonly number[])[],
): NarrowestCrossover | null {
	const total = weights.reduce((sum, weight) => sum + weight, 0);
	let narrowest: NarrowestCrossover | null = null;
	for (const [rival, values] of rivals.entries()) {
		for (const [criterion, weight] of weights.entries()) {
			const to = crossoverWeight(weights, leader, values, [criterion]);
			const from = weight / total;
			if (to === null) continue;
			if (narrowest === null || Math.abs(to - from) < Math.abs(narrowest.to - narrowest.from)) {
				narrowest = { rival, criterion, from, to };
			}
		}
	}
	return narrowest;
}

/** Weighted mean; plain where nothing weighs anything, 0 (no difference) of no places. */
function meanOver(places: readonly number[], weights: readonly number[], differences: readonly number[]): number {
	if (places.length === 0) return 0;
	const total = places.reduce((sum, place) => sum + (weights[place] as number), 0);
	const share = (place: number) => (total > 0 ? (weights[place] as number) / total : 1 / places.length);
	return places.reduce((sum, place) => sum + share(place) * (differences[place] as number), 0);
}
