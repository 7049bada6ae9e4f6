/**
 * Weights for criteria that are only put in order: entry 0 belongs to the most important.
 * Each function takes the number of criteria, returns that many weights (falling, summing to 1; none for 0),
 * and throws a RangeError if the number is not a whole number from 0 up.
 */

/**
 * Rank order centroid: w_j = (1/n) (1/j + ... + 1/n), the centre of all weights that respect the order.
 * Source: Barron 1992, Edwards & Barron 1994 (from memory); formula read in a secondary text, "Rank Order Centroid".
 */
export function rankOrderCentroid(n: number): number[] {
	const weights = new Array<number>(wholeCount(n));
	let tail = 0;
	for (let rank = n; rank >= 1; rank--) {
		tail += 1 / rank;
		weights[rank - 1] = tail / n;
	}
	return weights;
}

/** Rank sum: w_j = 2 (n + 1 - j) / (n (n + 1)). Source: GITTA, "Suitability: Normalisation". */
export function rankSum(n: number): number[] {
	return ranks(n).map((rank) => (2 * (n + 1 - rank)) / (n * (n + 1)));
}

/** Rank reciprocal: w_j in proportion to 1/j. Source: GITTA, "Suitability: Normalisation". */
export function rankReciprocal(n: number): number[] {
	const harmonic = ranks(n).reduceRight((sum, rank) => sum + 1 / rank, 0);
	return ranks(n).map((rank) => 1 / rank / harmonic);
}

function ranks(n: number): number[] {
	return Array.from({ length: wholeCount(n) }, (_, index) => index + 1);
}

function wholeCount(n: number): number {
	if (!Number.isInteger(n) || n < 0) throw new RangeError(`a number of criteria must be a whole number, not ${n}`);
	return n;
}
