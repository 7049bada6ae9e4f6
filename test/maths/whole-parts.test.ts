import fc from "fast-check";
import { expect, test } from "vitest";
import { wholeParts } from "../../src/maths/whole-parts.ts";

test("what is left goes to the largest remainders", () => {
	expect(wholeParts([30.4, 20.4, 30.2])).toEqual([31, 20, 30]);
	expect(wholeParts([33.3, 33.3, 33.4])).toEqual([33, 33, 34]);
});

test("of equal remainders the first", () => {
	expect(wholeParts([0.5, 0.5])).toEqual([1, 0]);
});

test("a total below all parts rounded down takes from the smallest remainders", () => {
	expect(wholeParts([3.1, 2.5, 1.9], 5)).toEqual([2, 2, 1]);
	expect(wholeParts([1.9, 2.5, 3.1], 4)).toEqual([1, 1, 2]);
});

test("no part is rounded up past the most it may be; the next remainder is", () => {
	expect(wholeParts([1.9, 2.8, 3.1], 7, [1, 9, 9])).toEqual([1, 3, 3]);
	expect(wholeParts([1.9, 2.8, 3.1], 8, [1, 3, 4])).toEqual([1, 3, 4]);
});

test("pluses and minuses", () => {
	expect(wholeParts([19.2, 0, 2.3, -2.5, -3.6, 0.6])).toEqual([19, 0, 2, -2, -4, 1]);
});

test("nothing has no parts", () => {
	expect(wholeParts([])).toEqual([]);
});

test("they add up to the rounded sum, and none is off by a whole one", () => {
	fc.assert(
		fc.property(fc.array(fc.double({ min: -100, max: 100, noNaN: true }), { maxLength: 8 }), (parts) => {
			const whole = wholeParts(parts);
			expect(whole.reduce((sum, part) => sum + part, 0)).toBe(
				Math.round(parts.reduce((sum, part) => sum + part, 0)) + 0,
			);
			for (const [index, part] of whole.entries()) expect(Math.abs(part - (parts[index] ?? 0))).toBeLessThanOrEqual(1);
		}),
	);
});
