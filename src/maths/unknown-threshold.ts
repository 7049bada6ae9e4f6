import { addIntervals, exactly, type Interval, mid, scaleInterval } from "./interval.ts";

/** An alternative of which all but one value is known. */
export interface HalfKnown {
	/** Score without the unknown value. */
	readonly base: number;
	/** Weight of the unknown value, 0 or more. */
	readonly weight: number;
	/** All that the unknown value may be; every value in it counts as likely as any other. */
	readonly value: Interval;
}

/** What an unknown value could change between its alternative and one whose score is known. */
export interface UnknownThreshold {
	/** Score of the half-known one over all its value may be. */
	readonly score: Interval;
	/** It is ahead from above this value on; infinite where the value weighs nothing. */
	readonly threshold: number;
	/** "open" where finding out can change who is ahead; else who is ahead whatever the value. */
	readonly ahead: "known" | "half-known" | "open";
	/** Chance that the half-known one is ahead once the value is known. */
	readonly chanceAhead: number;
	/** Expected gain from finding out before choosing between the two, in the unit of the scores; 0 or more. */
	readonly worth: number;
}

/**
 * Where the unknown value turns the order of two alternatives, and what finding it out is worth.
 *
 * With known score V, threshold t = (V - base) / weight and the value even over [low, high], the better of both comes
 * to V + weight E max(0, x - t), and E max(0, x - t) = (high - t)^2 / (2 (high - low)) for t inside. Where the known one
 * is ahead by the mean, choosing now gives V, so that is the gain. Where the half-known one is, choosing now gives
 * V + weight (mean - t), and the difference is weight (t - low)^2 / (2 (high - low)). The smaller of the two squares is
 * always the one that counts. On [0, 1] with the known one ahead it is weight (1 - t)^2 / 2.
 *
 * @throws RangeError if the weight is negative or the interval runs backwards
 */
export function unknownThreshold(knownScore: number, { base, weight, value }: HalfKnown): UnknownThreshold {
	if (!(weight >= 0)) throw new RangeError(`a weight must be 0 or more, not ${weight}`);
	if (value.low > value.high) throw new RangeError(`the interval runs backwards: ${value.low} to ${value.high}`);
	const score = addIntervals(exactly(base), scaleInterval(value, weight));
	const threshold = weight > 0 ? (knownScore - base) / weight : knownScore < base ? -Infinity : Infinity;
	// Being level at one end alone turns nothing.
	if (threshold >= value.high) return { score, threshold, ahead: "known", chanceAhead: 0, worth: 0 };
	if (threshold <= value.low) return { score, threshold, ahead: "half-known", chanceAhead: 1, worth: 0 };
	const width = value.high - value.low;
	const turning = threshold >= mid(value) ? value.high - threshold : threshold - value.low;
	return {
		score,
		threshold,
		ahead: "open",
		chanceAhead: (value.high - threshold) / width,
		worth: (weight * turning ** 2) / (2 * width),
	};
}
