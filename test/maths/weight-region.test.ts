import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { extremePoints, greatestOver, leastOver, type WeightRegion } from "../../src/maths/weight-region.ts";
import { weightedSum } from "../../src/maths/weighted-sum.ts";
import { allowedWeights, criteriaCount, obeys, positive, regions } from "./drawn-regions.ts";

const third = 1 / 3;

describe("extreme points", () => {
	test.each<[string, WeightRegion, number[][]]>([
		[
			"no order",
			{ tiers: [], free: [0, 1] },
			[
				[1, 0],
				[0, 1],
			],
		],
		[
			"one tier is as free",
			{ tiers: [[], [1, 0]], free: [] },
			[
				[0, 1],
				[1, 0],
			],
		],
		[
			"a full order",
			{ tiers: [[2], [0], [1]], free: [] },
			[
				[0, 0, 1],
				[0.5, 0, 0.5],
				[third, third, third],
			],
		],
		[
			"two above one, and one free",
			{ tiers: [[0, 1], [], [2]], free: [3] },
			[
				[0, 0, 0, 1],
				[1, 0, 0, 0],
				[0, 1, 0, 0],
				[third, third, third, 0],
			],
		],
		[
			"one above two",
			{ tiers: [[0], [1, 2]], free: [] },
			[
				[1, 0, 0],
				[0.5, 0.5, 0],
				[0.5, 0, 0.5],
				[third, third, third],
			],
		],
		["no criteria", { tiers: [[]], free: [] }, []],
	])("%s", (_, region, points) => {
		expect(extremePoints(region)).toEqual(points);
	});

	test("a criterion outside the region weighs nothing", () => {
		expect(extremePoints({ tiers: [[0]], free: [] }, 3)).toEqual([[1, 0, 0]]);
		expect(extremePoints({ tiers: [], free: [2] })).toEqual([[0, 0, 1]]);
	});

	test("obey the region, and none is a mix of the others", () => {
		fc.assert(
			fc.property(regions(7), (region) => {
				const points = extremePoints(region);
				for (const point of points) expect(obeys(region, point)).toBe(true);
				expect(new Set(points.map(String)).size).toBe(points.length);
				for (const point of points) {
					expect(points.filter((other) => isMixOf(point, other, region))).toEqual([point]);
				}
			}),
			{ numRuns: 50 },
		);
	});

	test("refuse a criterion that stands twice or lies outside, and very wide lower tiers", () => {
		expect(() => extremePoints({ tiers: [[0], [0]], free: [] })).toThrow("a criterion stands twice: 0, 0");
		expect(() => extremePoints({ tiers: [[0]], free: [0] })).toThrow("a criterion stands twice: 0, 0");
		expect(() => extremePoints({ tiers: [[0]], free: [3] }, 3)).toThrow("no criterion 3");
		expect(() => extremePoints({ tiers: [[0.5]], free: [] })).toThrow("no criterion 0.5");
		expect(() => extremePoints({ tiers: [[0], Array.from({ length: 17 }, (_, at) => at + 1)], free: [] })).toThrow(
			"17 criteria in one tier, 16 at most",
		);
	});
});

/**
 * Whether a point can hold a part of another, so that both may be mixed: taking a little of it away leaves allowed
 * weights (but for their sum). An extreme point holds a part of itself alone.
 */
function isMixOf(point: readonly number[], part: readonly number[], region: WeightRegion): boolean {
	const left = point.map((weight, index) => weight - 0.01 * (part[index] as number));
	const sum = left.reduce((one, other) => one + other, 0);
	return obeys(
		region,
		left.map((weight) => weight / sum),
	);
}

describe("least and greatest value", () => {
	test.each<[WeightRegion, number[], number, number]>([
		[{ tiers: [], free: [0, 1, 2] }, [3, -1, 2], -1, 3],
		[{ tiers: [[0], [1], [2]], free: [] }, [3, -1, 2], 1, 3],
		[{ tiers: [[0], [1, 2]], free: [] }, [3, -1, -3], -third, 3],
		[{ tiers: [[1, 2], [0]], free: [] }, [3, -1, -3], -3, -third],
		[{ tiers: [[0], [1]], free: [2] }, [4, 2, 3.5], 3, 4],
		[{ tiers: [], free: [] }, [1], 0, 0],
	])("%j of %j: %f to %f", (region, coefficients, least, greatest) => {
		expect(leastOver(region, coefficients)).toBeCloseTo(least, 12);
		expect(greatestOver(region, coefficients)).toBeCloseTo(greatest, 12);
	});

	const cases = regions().chain((region) => {
		const count = criteriaCount(region);
		const numbers = fc.array(fc.integer({ min: -20, max: 20 }), { minLength: count, maxLength: count });
		const drawn = fc.array(positive, { minLength: count, maxLength: count });
		return fc.tuple(fc.constant(region), numbers, drawn);
	});

	test("are those at the extreme points", () => {
		fc.assert(
			fc.property(cases, ([region, coefficients]) => {
				const values = extremePoints(region).map((point) => weightedSum(coefficients, point));
				expect(leastOver(region, coefficients)).toBeCloseTo(Math.min(...values), 10);
				expect(greatestOver(region, coefficients)).toBeCloseTo(Math.max(...values), 10);
			}),
		);
	});

	test("hold for all allowed weights", () => {
		fc.assert(
			fc.property(cases, ([region, coefficients, drawn]) => {
				const weights = allowedWeights(region, drawn);
				expect(obeys(region, weights)).toBe(true);
				const value = weightedSum(coefficients, weights);
				expect(value).toBeGreaterThanOrEqual(leastOver(region, coefficients) - 1e-9);
				expect(value).toBeLessThanOrEqual(greatestOver(region, coefficients) + 1e-9);
			}),
		);
	});

	test("refuse a criterion without coefficient", () => {
		expect(() => leastOver({ tiers: [[0]], free: [1] }, [1])).toThrow("criterion 1 has no coefficient");
		expect(() => greatestOver({ tiers: [[0], [1]], free: [] }, [1])).toThrow("criterion 1 has no coefficient");
	});
});
