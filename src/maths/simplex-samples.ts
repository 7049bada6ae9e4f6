/** A draw is kept so far from 0 and from 1: the logarithm of 0 has no end, and noughts alone cannot be scaled to 1. */
const leastDraw = 2 ** -53;

/**
 * Weights of which nothing is known but that none is below 0 and that they sum to 1: all such weights are as likely.
 *
 * Exponentials divided by their sum (Simon 2020, section 3.1). Uniform numbers divided by their sum would not do: they
 * crowd in the middle.
 *
 * @param draw gives a number from 0 to below 1 each time
 * @returns one column a criterion, as long as there are samples
 * @throws RangeError if a number is not a whole number from 0 up
 */
export function simplexSamples(draw: () => number, criteria: number, samples: number): readonly Float64Array[] {
	for (const count of [criteria, samples])
		if (!Number.isInteger(count) || count < 0) throw new RangeError(`a count must be a whole number, not ${count}`);
	const columns = Array.from({ length: criteria }, () => new Float64Array(samples));
	for (let sample = 0; sample < samples; sample++) {
		let sum = 0;
		for (const column of columns) {
			const exponential = -Math.log(1 - Math.min(Math.max(draw(), leastDraw), 1 - leastDraw));
			column[sample] = exponential;
			sum += exponential;
		}
		for (const column of columns) column[sample] = (column[sample] as number) / sum;
	}
	return columns;
}
