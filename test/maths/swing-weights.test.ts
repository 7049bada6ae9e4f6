import fc from "fast-check";
import { expect, test } from "vitest";
import { swingWeights } from "../../src/maths/swing-weights.ts";

test("keeps the ratios and sums to 1", () => {
	expect(swingWeights([100, 60, 40])).toEqual([0.5, 0.3, 0.2]);
});

test("a swing of 0 weighs nothing", () => {
	expect(swingWeights([0, 5])).toEqual([0, 1]);
});

test("the unit of the swings does not matter", () => {
	const swings = fc.array(fc.integer({ min: 0, max: 100 }), { minLength: 1, maxLength: 8 });
	fc.assert(
		fc.property(
			swings.filter((list) => list.some((swing) => swing > 0)),
			fc.integer({ min: 1, max: 1000 }),
			(list, unit) => {
				const weights = swingWeights(list);
				expect(weights.reduce((a, b) => a + b)).toBeCloseTo(1, 12);
				for (const [index, weight] of swingWeights(list.map((swing) => swing * unit)).entries()) {
					expect(weight).toBeCloseTo(weights[index] as number, 12);
				}
			},
		),
	);
});

test.each([
	[[], "at least one swing must be above 0"],
	[[0, 0], "at least one swing must be above 0"],
	[[-1, 2], "a swing must be 0 or more, not -1"],
	[[Number.NaN, 1], "a swing must be 0 or more, not NaN"],
	[[Number.POSITIVE_INFINITY, 1], "a swing must be 0 or more, not Infinity"],
])("refuses %j", (swings, words) => {
	expect(() => swingWeights(swings)).toThrow(words);
});
