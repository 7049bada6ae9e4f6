import fc from "fast-check";
import { expect, test } from "vitest";
import type { SmallScale } from "../../src/criteria/define-criterion.ts";
import { sumOfScales } from "../../src/criteria/sum-of-scales.ts";
import { piecewiseLinear } from "../../src/maths/piecewise-linear.ts";

const rising: SmallScale = {
	name: "rising",
	unit: "things",
	weight: 60,
	scale: [
		[0, 0],
		[10, 1],
	],
};
const falling: SmallScale = {
	name: "falling",
	unit: "years",
	weight: 20,
	scale: [
		[1, 1],
		[5, 0],
	],
};
const at = (of: SmallScale, low: number, high = low, missing: readonly string[] = []) => ({ of, low, high, missing });

test("each part counts by its weight", () => {
	// (60 x 0.5 + 20 x 0.75) / 80
	expect(sumOfScales([at(rising, 5), at(falling, 2)])).toEqual({ low: 56.25, high: 56.25, missing: [] });
});

test("a part alone has all of it", () => {
	expect(sumOfScales([at(falling, 2)])).toEqual({ low: 75, high: 75, missing: [] });
});

test("a range on a falling scale is turned round", () => {
	expect(sumOfScales([at(falling, 2, 4, ["a fact"])])).toEqual({ low: 25, high: 75, missing: ["a fact"] });
});

test("a fact beyond the corners stays missing, and none is named twice", () => {
	const parts = [at(falling, 0, 1, ["a"]), at(rising, 0, 5, ["b"]), at(rising, 0, 5, ["b"])];
	expect(sumOfScales(parts).missing).toEqual(["a", "b"]);
});

test("a value on a scale is that of maths/piecewise-linear", () => {
	const corner = fc.tuple(fc.integer({ min: -50, max: 50 }), fc.integer({ min: 0, max: 100 }));
	const scale = fc.uniqueArray(corner, { selector: ([x]) => x, minLength: 1, maxLength: 6 });
	fc.assert(
		fc.property(scale, fc.double({ min: -80, max: 80, noNaN: true }), (corners, x) => {
			const sorted = corners.map(([m, v]) => [m, v / 100] as const).sort(([one], [other]) => one - other);
			for (const measure of [x, Math.round(x)])
				expect(sumOfScales([at({ ...rising, scale: sorted }, measure)]).high / 100).toBeCloseTo(
					piecewiseLinear(sorted, measure),
					12,
				);
		}),
	);
});
