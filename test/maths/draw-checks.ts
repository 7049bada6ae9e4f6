/** So many results of a function, which is given the place of each. */
export function many<T>(draw: (place: number) => T, count: number): T[] {
	return Array.from({ length: count }, (_, place) => draw(place));
}

/** Pearson's statistic for ten classes of equal width; above 33.7 with 9 degrees of freedom once in 10 000 times. */
export function chiSquareOfTenths(draws: ArrayLike<number>): number {
	const counts = new Array<number>(10).fill(0);
	for (const draw of Array.from(draws)) {
		const tenth = Math.floor(10 * draw);
		counts[tenth] = (counts[tenth] as number) + 1;
	}
	return chiSquare(counts);
}

/** Pearson's statistic against equal counts. */
export function chiSquare(counts: readonly number[]): number {
	const expected = counts.reduce((sum, count) => sum + count, 0) / counts.length;
	return counts.reduce((sum, count) => sum + (count - expected) ** 2 / expected, 0);
}

export function meanOf(values: ArrayLike<number>): number {
	return Array.from(values).reduce((sum, value) => sum + value, 0) / values.length;
}

/** Share of the samples in which something holds. */
export function shareOf(samples: number, holds: (sample: number) => boolean): number {
	let count = 0;
	for (let sample = 0; sample < samples; sample++) if (holds(sample)) count++;
	return count / samples;
}

/** How far a share of so many samples may be off: more than that less than once in 10 000 times. */
export function allowedOff(share: number, samples: number): number {
	return 4 * Math.sqrt((share * (1 - share)) / samples);
}
