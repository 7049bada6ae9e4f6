/** All that is known of a number: it is no less than `low` and no more than `high`. Both ends belong to it. */
export type Interval = { readonly low: number; readonly high: number };

/** A number that is known. */
export function exactly(value: number): Interval {
	return { low: value, high: value };
}

/** The middle of an interval: the mean, if every value in it is as likely as any other. */
export function mid(interval: Interval): number {
	return (interval.low + interval.high) / 2;
}

/** All sums of a value of one and a value of the other. */
export function addIntervals(one: Interval, other: Interval): Interval {
	return { low: one.low + other.low, high: one.high + other.high };
}

/** An interval times a number; a negative number swaps the ends. */
export function scaleInterval(interval: Interval, factor: number): Interval {
	const [one, other] = [interval.low * factor, interval.high * factor];
	return one <= other ? { low: one, high: other } : { low: other, high: one };
}

/**
 * The range of a weighted sum whose values are known only as intervals and vary independently of one another.
 *
 * @throws RangeError if there are not as many weights as values
 */
export function weightedSumOfIntervals(values: readonly Interval[], weights: readonly number[]): Interval {
	if (values.length !== weights.length) {
		throw new RangeError(`${values.length} values but ${weights.length} weights`);
	}
	return values.reduce(
		(sum, value, index) => addIntervals(sum, scaleInterval(value, weights[index] as number)),
		exactly(0),
	);
}
