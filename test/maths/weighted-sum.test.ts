import fc from "fast-check";
import { expect, test } from "vitest";
import { weightedSum } from "../../src/maths/weighted-sum.ts";

test.each([
	["nothing sums to 0", [], [], 0],
	["one value", [3], [0.5], 1.5],
	["values of either sign", [2, -4, 10], [0.5, 0.25, 0.1], 1],
])("%s", (_, values, weights, expected) => {
	expect(weightedSum(values, weights)).toBeCloseTo(expected, 12);
});

test("raising a value never lowers the sum", () => {
	const terms = fc.array(
		fc.tuple(fc.double({ min: 0, max: 1, noNaN: true }), fc.double({ min: 0, max: 1, noNaN: true })),
		{
			minLength: 1,
			maxLength: 8,
		},
	);
	fc.assert(
		fc.property(terms, fc.nat(), fc.double({ min: 0, max: 1, noNaN: true }), (list, pick, rise) => {
			const values = list.map(([value]) => value);
			const weights = list.map(([, weight]) => weight);
			const raised = values.map((value, index) => (index === pick % values.length ? value + rise : value));
			expect(weightedSum(raised, weights)).toBeGreaterThanOrEqual(weightedSum(values, weights));
		}),
	);
});

test("refuses lists of different length", () => {
	expect(() => weightedSum([1, 2], [1])).toThrow("2 values but 1 weights");
	expect(() => weightedSum([1], [0.5, 0.5])).toThrow("1 values but 2 weights");
});
