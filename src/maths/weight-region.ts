/**
 * The weights that an importance order allows: 0 or more, summing to 1, every weight of a tier at least every weight of
 * the tiers after it. Free criteria may weigh anything. Criteria are named by index, each at most once; one that stands
 * nowhere weighs nothing.
 */
export interface WeightRegion {
	/** Most important tier first; a tier may be empty. */
	readonly tiers: readonly (readonly number[])[];
	readonly free: readonly number[];
}

/** More criteria in one tier would make more than 65 535 extreme points. */
const mostListed = 16;

/**
 * The extreme points of the region; a linear function is least and greatest at some of them.
 *
 * Each spreads the weight evenly over a set of criteria: a free one; one of the first tier; or all earlier tiers and a
 * part of the next, at least one. (The extreme rays of such a cone are its connected upper sets: worked out.) A lower
 * tier of k criteria makes 2^k - 1 of them.
 *
 * @param count how many weights each point gets; up to the greatest index if not given
 * @returns none for a region without criteria
 * @throws RangeError if a criterion stands twice or lies outside, or a lower tier has more than 16
 */
export function extremePoints(region: WeightRegion, count?: number): number[][] {
	const indexes = criteriaOf(region);
	const length = count ?? 1 + Math.max(-1, ...indexes);
	for (const index of indexes) {
		if (!(Number.isInteger(index) && index >= 0 && index < length)) throw new RangeError(`no criterion ${index}`);
	}
	return extremeSets(region).map((set) => {
		const weights = new Array<number>(length).fill(0);
		for (const index of set) weights[index] = 1 / set.length;
		return weights;
	});
}

/**
 * The least value of a weighted sum over all allowed weights; 0 for a region without criteria, where nothing weighs.
 * Nothing is listed: of a lower tier the smallest coefficients, however many, make the least mean.
 *
 * @param coefficients one a criterion, by index
 * @throws RangeError if a criterion has no coefficient
 */
export function leastOver({ tiers, free }: WeightRegion, coefficients: readonly number[]): number {
	let least = Infinity;
	let sum = 0;
	let count = 0;
	for (const index of free) least = Math.min(least, coefficientOf(coefficients, index));
	for (const tier of tiers) {
		for (const value of tier.map((index) => coefficientOf(coefficients, index)).sort((one, other) => one - other)) {
			sum += value;
			count++;
			// In the first tier only single criteria are extreme points. The smallest comes first, and no mean is below it.
			least = Math.min(least, sum / count);
		}
	}
	return least === Infinity ? 0 : least;
}

/** The greatest value of a weighted sum over all allowed weights; else as `leastOver`. */
export function greatestOver(region: WeightRegion, coefficients: readonly number[]): number {
	return (
		0 -
		leastOver(
			region,
			coefficients.map((coefficient) => -coefficient),
		)
	);
}

/** @throws RangeError if a criterion stands twice */
export function criteriaOf({ tiers, free }: WeightRegion): readonly number[] {
	const indexes = [...tiers.flat(), ...free];
	if (new Set(indexes).size < indexes.length) throw new RangeError(`a criterion stands twice: ${indexes.join(", ")}`);
	return indexes;
}

function extremeSets({ tiers, free }: WeightRegion): readonly (readonly number[])[] {
	const sets = free.map((index) => [index]);
	let earlier: readonly number[] = [];
	for (const tier of tiers) {
		if (earlier.length === 0) sets.push(...tier.map((index) => [index]));
		else for (const part of partsOf(tier)) sets.push([...earlier, ...part]);
		earlier = [...earlier, ...tier];
	}
	return sets;
}

function partsOf(tier: readonly number[]): readonly (readonly number[])[] {
	if (tier.length > mostListed) throw new RangeError(`${tier.length} criteria in one tier, ${mostListed} at most`);
	return Array.from({ length: 2 ** tier.length - 1 }, (_, at) => tier.filter((_, bit) => ((at + 1) >> bit) & 1));
}

function coefficientOf(coefficients: readonly number[], index: number): number {
	const coefficient = coefficients[index];
	if (coefficient === undefined) throw new RangeError(`criterion ${index} has no coefficient`);
	return coefficient;
}
