import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { rankOrderCentroid, rankReciprocal, rankSum } from "../../src/maths/rank-weights.ts";
import { weightedSum } from "../../src/maths/weighted-sum.ts";

const count = fc.integer({ min: 1, max: 40 });

describe.each([
	["rank order centroid", rankOrderCentroid],
	["rank sum", rankSum],
	["rank reciprocal", rankReciprocal],
])("%s", (_, weightsOf) => {
	test("sums to 1", () => {
		fc.assert(
			fc.property(count, (n) => {
				expect(weightsOf(n).reduce((sum, weight) => sum + weight, 0)).toBeCloseTo(1, 12);
			}),
		);
	});

	test("falls from each place to the next and stays above 0", () => {
		fc.assert(
			fc.property(count, (n) => {
				const weights = weightsOf(n);
				expect(weights).toHaveLength(n);
				for (const [place, weight] of weights.entries()) {
					expect(weight).toBeGreaterThan(weights[place + 1] ?? 0);
				}
			}),
		);
	});

	test("one criterion takes all, none takes nothing", () => {
		expect(weightsOf(1)).toEqual([1]);
		expect(weightsOf(0)).toEqual([]);
	});

	test.each([-1, 1.5, Number.NaN])("refuses %s criteria", (n) => {
		expect(() => weightsOf(n)).toThrow(`a number of criteria must be a whole number, not ${n}`);
	});
});

test("the last rank order centroid weight is 1/n², the first is the nth harmonic number over n", () => {
	fc.assert(
		fc.property(count, (n) => {
			const weights = rankOrderCentroid(n);
			const harmonic = Array.from({ length: n }, (_, index) => 1 / (index + 1)).reduce((a, b) => a + b);
			expect(weights.at(-1)).toBeCloseTo(1 / n ** 2, 12);
			expect(weights[0]).toBeCloseTo(harmonic / n, 12);
		}),
	);
});

test("the rank order centroid is the mean of the corners of the region the order leaves open", () => {
	// The corners of w1 >= ... >= wn are the equal weights over the first k criteria, for k = 1 to n.
	fc.assert(
		fc.property(fc.array(fc.double({ min: -1, max: 1, noNaN: true }), { minLength: 1, maxLength: 12 }), (values) => {
			const corners = values.map((_, k) => values.slice(0, k + 1).reduce((a, b) => a + b) / (k + 1));
			const mean = corners.reduce((a, b) => a + b) / corners.length;
			expect(weightedSum(values, rankOrderCentroid(values.length))).toBeCloseTo(mean, 12);
		}),
	);
});
