/**
 * What samples of values say of alternatives. Each function takes one column of values an alternative, all as long, and
 * throws a RangeError if they are not. Two values are tied where they differ by no more than `tieWithin`; of an empty
 * column nothing is known, and shares are not numbers.
 *
 * Definitions: stochastic multicriteria acceptability analysis, Lahdelma, Hokkanen & Salminen 1998; SMAA-2, Lahdelma &
 * Salminen 2001. A share is that of the answers still allowed, no chance of being right.
 */

/** Far above the rounding of a sum, far below what anybody would call a difference. */
const tieWithin = 1e-9;

/** Of an alternative that leads so seldom, too few samples are left for central weights (own convention). */
const leastShareForWeights = 0.02;

/** The share of samples in which each alternative has the greatest value. Those tied for it share the sample. */
export function firstPlaceShares(values: readonly Float64Array[]): readonly number[] {
	const shares = values.map(() => 0);
	const samples = sampleCountOf(values);
	forEachFirst(values, (alternative, _, part) => {
		shares[alternative] = (shares[alternative] as number) + part;
	});
	return shares.map((share) => share / samples);
}

/**
 * `rankShares(values)[alternative][rank]`: the share of samples in which it stands at that rank, 0 for the greatest
 * value. Tied alternatives share the ranks they take up together. Rows and columns sum to 1.
 */
export function rankShares(values: readonly Float64Array[]): readonly (readonly number[])[] {
	const count = values.length;
	const samples = sampleCountOf(values);
	const counts = new Float64Array(count * count);
	const order = new Uint32Array(count);
	const falling = new Float64Array(count);
	for (let sample = 0; sample < samples; sample++) {
		for (let alternative = 0; alternative < count; alternative++) {
			const value = (values[alternative] as Float64Array)[sample] as number;
			let at = alternative;
			for (; at > 0 && (falling[at - 1] as number) < value; at--) {
				falling[at] = falling[at - 1] as number;
				order[at] = order[at - 1] as number;
			}
			falling[at] = value;
			order[at] = alternative;
		}
		for (let first = 0, end = 1; first < count; first = end) {
			const least = (falling[first] as number) - tieWithin;
			for (end = first + 1; end < count && (falling[end] as number) >= least; ) end++;
			const part = 1 / (end - first);
			for (let at = first; at < end; at++) {
				const row = (order[at] as number) * count;
				for (let rank = first; rank < end; rank++) counts[row + rank] = (counts[row + rank] as number) + part;
			}
		}
	}
	return values.map((_, row) => Array.from(counts.subarray(row * count, (row + 1) * count), (sum) => sum / samples));
}

/** How alternatives stand to each other, two by two, as shares of the samples. */
export interface PairwiseShares {
	/** `ahead[one][other]`: one has the greater value, by more than a tie. 0 on the diagonal. */
	readonly ahead: readonly (readonly number[])[];
	/** `tied[one][other]`; ahead[one][other] + ahead[other][one] + tied[one][other] = 1. 1 on the diagonal. */
	readonly tied: readonly (readonly number[])[];
}

/** Pairwise winning indices, with ties told apart. */
export function pairwiseShares(values: readonly Float64Array[]): PairwiseShares {
	const samples = sampleCountOf(values);
	const ahead = values.map(() => values.map(() => 0));
	const tied = values.map((_, row) => values.map((_, column) => (row === column ? 1 : 0)));
	values.forEach((one, row) => {
		for (let column = row + 1; column < values.length; column++) {
			const other = values[column] as Float64Array;
			let [wins, losses] = [0, 0];
			for (let sample = 0; sample < samples; sample++) {
				const difference = (one[sample] as number) - (other[sample] as number);
				// Who is ahead changes from sample to sample: counting without a branch is four times as fast.
				wins += Number(difference > tieWithin);
				losses += Number(difference < -tieWithin);
			}
			(ahead[row] as number[])[column] = wins / samples;
			(ahead[column] as number[])[row] = losses / samples;
			const ties = (samples - wins - losses) / samples;
			(tied[row] as number[])[column] = ties;
			(tied[column] as number[])[row] = ties;
		}
	});
	return { ahead, tied };
}

/**
 * For each alternative the mean weights of the samples in which it is first: what somebody values who would choose it.
 * Null where it is never first, or in so small a share of the samples that the mean would say little.
 *
 * @param weights one column a criterion, as long as those of the values
 */
export function centralWeights(
	values: readonly Float64Array[],
	weights: readonly Float64Array[],
	leastShare = leastShareForWeights,
): readonly (readonly number[] | null)[] {
	const samples = sampleCountOf([...values, ...weights]);
	const shares = values.map(() => 0);
	const sums = values.map(() => weights.map(() => 0));
	forEachFirst(values, (alternative, sample, part) => {
		shares[alternative] = (shares[alternative] as number) + part;
		const sum = sums[alternative] as number[];
		weights.forEach((column, criterion) => {
			sum[criterion] = (sum[criterion] as number) + part * (column[sample] as number);
		});
	});
	return sums.map((sum, alternative) => {
		const share = shares[alternative] as number;
		return share > 0 && share >= leastShare * samples ? sum.map((weight) => weight / share) : null;
	});
}

/** How open it is which of the cases holds, in bits: 0 where one is sure, 1 for two that are as likely. */
export function entropyBits(shares: readonly number[]): number {
	return shares.reduce((bits, share) => (share > 0 ? bits - share * Math.log2(share) : bits), 0);
}

/** Calls with each sample's first alternatives; `part` is 1, or less where several are tied. */
function forEachFirst(
	values: readonly Float64Array[],
	take: (alternative: number, sample: number, part: number) => void,
): void {
	const samples = sampleCountOf(values);
	const best = new Float64Array(samples).fill(Number.NEGATIVE_INFINITY);
	const second = new Float64Array(samples).fill(Number.NEGATIVE_INFINITY);
	const leader = new Uint32Array(samples);
	values.forEach((column, alternative) => {
		for (let sample = 0; sample < samples; sample++) {
			const value = column[sample] as number;
			if (value > (best[sample] as number)) {
				second[sample] = best[sample] as number;
				best[sample] = value;
				leader[sample] = alternative;
			} else if (value > (second[sample] as number)) second[sample] = value;
		}
	});
	for (let sample = 0; sample < samples; sample++) {
		const least = (best[sample] as number) - tieWithin;
		if ((second[sample] as number) < least) {
			take(leader[sample] as number, sample, 1);
			continue;
		}
		const tied: number[] = [];
		for (let at = 0; at < values.length; at++)
			if (((values[at] as Float64Array)[sample] as number) >= least) tied.push(at);
		for (const alternative of tied) take(alternative, sample, 1 / tied.length);
	}
}

function sampleCountOf(columns: readonly Float64Array[]): number {
	const samples = columns[0]?.length ?? 0;
	if (columns.some(({ length }) => length !== samples)) throw new RangeError("columns of different length");
	return samples;
}
