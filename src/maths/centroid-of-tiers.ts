import { rankOrderCentroid } from "./rank-weights.ts";

/**
 * The centre of all weights that respect an order given in tiers, while the free criteria may weigh anything.
 *
 * With m criteria in tiers, f free ones and n = m + f: each criterion of a tier gets m/n times the mean of the rank
 * order centroid of m over the places its tier takes up, each free one 1/n. It follows from the flat Dirichlet
 * distribution being exchangeable: the values that fall on the tiered criteria are dealt out in falling order, tier by
 * tier, and the free ones stay as drawn. (Derived; formulas of the draw: Simon 2020, section 3.1.)
 *
 * @param tiers most important tier first; a tier may be empty
 * @param free criteria whose importance is not known
 * @returns a weight for every key, in the order given; the weights sum to 1 (no keys, no weights)
 * @throws RangeError if a key stands twice
 */
export function centroidOfTiers<K>(tiers: readonly (readonly K[])[], free: readonly K[]): Map<K, number> {
	const tieredCount = tiers.reduce((count, tier) => count + tier.length, 0);
	const count = tieredCount + free.length;
	const places = rankOrderCentroid(tieredCount);
	const weights = new Map<K, number>();
	const give = (key: K, weight: number) => {
		if (weights.has(key)) throw new RangeError(`a criterion stands twice: ${String(key)}`);
		weights.set(key, weight);
	};
	let place = 0;
	for (const tier of tiers) {
		const taken = places.slice(place, place + tier.length);
		const mean = taken.reduce((sum, weight) => sum + weight, 0) / tier.length;
		for (const key of tier) give(key, (tieredCount / count) * mean);
		place += tier.length;
	}
	for (const key of free) give(key, 1 / count);
	return weights;
}
