import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
	addIntervals,
	exactly,
	type Interval,
	mid,
	scaleInterval,
	weightedSumOfIntervals,
} from "../../src/maths/interval.ts";
import { weightedSum } from "../../src/maths/weighted-sum.ts";

const number = fc.double({ min: -100, max: 100, noNaN: true });
const interval = fc.tuple(number, number).map(([a, b]): Interval => ({ low: Math.min(a, b), high: Math.max(a, b) }));

/** The value a share of the way from low to high. */
function within({ low, high }: Interval, share: number): number {
	return low + share * (high - low);
}

describe("interval", () => {
	test("a known number is an interval of no width", () => {
		expect(exactly(7)).toEqual({ low: 7, high: 7 });
	});

	test("the middle lies halfway", () => {
		expect(mid({ low: -2, high: 6 })).toBe(2);
	});

	test("adds end to end", () => {
		expect(addIntervals({ low: 1, high: 2 }, { low: -4, high: 10 })).toEqual({ low: -3, high: 12 });
	});

	test.each([
		[2, { low: -2, high: 6 }],
		[0, { low: 0, high: 0 }],
		[-2, { low: -6, high: 2 }],
	])("times %s", (factor, expected) => {
		const { low, high } = scaleInterval({ low: -1, high: 3 }, factor);
		// Adding 0 turns -0 into 0, which the two ends of an interval need not be told apart by.
		expect({ low: low + 0, high: high + 0 }).toEqual(expected);
	});
});

describe("weighted sum of intervals", () => {
	const terms = fc.array(
		fc.record({ value: interval, weight: number, share: fc.double({ min: 0, max: 1, noNaN: true }) }),
		{ maxLength: 8 },
	);

	test("holds the weighted sum of any values within", () => {
		fc.assert(
			fc.property(terms, (list) => {
				const weights = list.map(({ weight }) => weight);
				const sum = weightedSum(
					list.map(({ value, share }) => within(value, share)),
					weights,
				);
				const { low, high } = weightedSumOfIntervals(
					list.map(({ value }) => value),
					weights,
				);
				expect(sum).toBeGreaterThanOrEqual(low - 1e-9);
				expect(sum).toBeLessThanOrEqual(high + 1e-9);
			}),
		);
	});

	test("is the weighted sum where every value is known", () => {
		expect(weightedSumOfIntervals([exactly(1), exactly(5)], [0.25, 0.75])).toEqual(exactly(4));
	});

	test("grows no wider when one interval narrows", () => {
		const wide = weightedSumOfIntervals([{ low: 0, high: 1 }, exactly(1)], [0.5, 0.5]);
		const narrow = weightedSumOfIntervals([{ low: 0.25, high: 0.5 }, exactly(1)], [0.5, 0.5]);
		expect(wide).toEqual({ low: 0.5, high: 1 });
		expect(narrow).toEqual({ low: 0.625, high: 0.75 });
	});

	test("refuses lists of different length", () => {
		expect(() => weightedSumOfIntervals([exactly(1)], [])).toThrow("1 values but 0 weights");
	});
});
