import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type Breakpoint, piecewiseLinear, valueOverInterval } from "../../src/maths/piecewise-linear.ts";

/** A scale that rises and then falls: neither end of an interval need hold its extremes. */
const tent: readonly Breakpoint[] = [
	[0, 0],
	[10, 1],
	[20, 0.5],
];

const corners = fc
	.uniqueArray(fc.integer({ min: -50, max: 50 }), { minLength: 1, maxLength: 8 })
	.chain((xs) =>
		fc
			.array(fc.double({ min: -5, max: 5, noNaN: true }), { minLength: xs.length, maxLength: xs.length })
			.map((ys) => xs.sort((a, b) => a - b).map((x, index): Breakpoint => [x, ys[index] as number])),
	);
const anyX = fc.double({ min: -80, max: 80, noNaN: true });

describe("piecewise-linear", () => {
	test.each([
		[-1, 0],
		[0, 0],
		[2.5, 0.25],
		[10, 1],
		[15, 0.75],
		[20, 0.5],
		[21, 0.5],
		[Number.POSITIVE_INFINITY, 0.5],
		[Number.NEGATIVE_INFINITY, 0],
	])("at %s is %s", (x, expected) => {
		expect(piecewiseLinear(tent, x)).toBe(expected);
	});

	test("one corner makes a level line", () => {
		expect([-9, 3, 9].map((x) => piecewiseLinear([[3, 0.4]], x))).toEqual([0.4, 0.4, 0.4]);
	});

	test("gives each corner its own y, exactly", () => {
		fc.assert(
			fc.property(corners, (breakpoints) => {
				for (const [x, y] of breakpoints) expect(piecewiseLinear(breakpoints, x)).toBe(y);
			}),
		);
	});

	test("stays level beyond the first and the last corner", () => {
		fc.assert(
			fc.property(corners, fc.double({ min: 0, max: 1000, noNaN: true }), (breakpoints, beyond) => {
				const [firstX, firstY] = breakpoints[0] as Breakpoint;
				const [lastX, lastY] = breakpoints.at(-1) as Breakpoint;
				expect(piecewiseLinear(breakpoints, firstX - beyond)).toBe(firstY);
				expect(piecewiseLinear(breakpoints, lastX + beyond)).toBe(lastY);
			}),
		);
	});

	test("a number that is none gives none", () => {
		expect(piecewiseLinear(tent, Number.NaN)).toBeNaN();
	});

	test("refuses no corners, and corners that do not rise in x", () => {
		expect(() => piecewiseLinear([], 1)).toThrow("a piecewise-linear function needs a breakpoint");
		const level: Breakpoint[] = [
			[1, 0],
			[1, 1],
		];
		const falling: Breakpoint[] = [
			[2, 0],
			[1, 1],
		];
		expect(() => piecewiseLinear(level, 1)).toThrow("breakpoints must rise in x, but 1 follows 1");
		expect(() => piecewiseLinear(falling, 1)).toThrow("breakpoints must rise in x, but 1 follows 2");
	});
});

describe("value over an interval", () => {
	test.each([
		["a corner inside is the greatest", 5, 20, 0.5, 1],
		["rising part", 2, 6, 0.2, 0.6],
		["falling part", 10, 15, 0.75, 1],
		["beyond both ends", -100, 100, 0, 1],
		["a point", 5, 5, 0.5, 0.5],
		["all beyond the last corner", 30, 40, 0.5, 0.5],
	])("%s", (_, low, high, least, greatest) => {
		const range = valueOverInterval(tent, { low, high });
		expect(range.low).toBeCloseTo(least, 12);
		expect(range.high).toBeCloseTo(greatest, 12);
	});

	test("holds the value at any point of the interval, and takes on both ends", () => {
		const shares = Array.from({ length: 41 }, (_, index) => index / 40);
		fc.assert(
			fc.property(corners, anyX, anyX, (breakpoints, a, b) => {
				const [low, high] = [Math.min(a, b), Math.max(a, b)];
				const range = valueOverInterval(breakpoints, { low, high });
				// Both ends as they are: low + (high - low) may round past high.
				const inner = shares.map((share) => low + share * (high - low));
				const points = [low, high, ...inner, ...breakpoints.map(([x]) => x)];
				const values = points.filter((x) => low <= x && x <= high).map((x) => piecewiseLinear(breakpoints, x));
				expect(Math.min(...values)).toBeCloseTo(range.low, 9);
				expect(Math.max(...values)).toBeCloseTo(range.high, 9);
			}),
		);
	});

	test("refuses an interval that runs backwards", () => {
		expect(() => valueOverInterval(tent, { low: 2, high: 1 })).toThrow("the interval runs backwards: 2 to 1");
	});
});
