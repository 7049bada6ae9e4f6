import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { isBehindAt, isLeftBehind } from "../../src/maths/dominance.ts";
import { exactly, type Interval } from "../../src/maths/interval.ts";
import { extremePoints, type WeightRegion } from "../../src/maths/weight-region.ts";
import { weightedSum } from "../../src/maths/weighted-sum.ts";
import { allowedWeights, criteriaCount, positive, ranges, regions } from "./drawn-regions.ts";

const known = (...values: number[]): Interval[] => values.map(exactly);
const free: WeightRegion = { tiers: [], free: [0, 1] };
const ordered: WeightRegion = { tiers: [[0], [1]], free: [] };

describe("left behind under every allowed weight", () => {
	test.each<[string, WeightRegion, Interval[], Interval[], boolean]>([
		["worse on both", free, known(0.2, 0.3), known(0.4, 0.5), true],
		["worse on one, level on the other", free, known(0.2, 0.5), known(0.4, 0.5), true],
		["better on one", free, known(0.2, 0.6), known(0.4, 0.5), false],
		["better only where less weight can go", ordered, known(0.2, 0.6), known(0.4, 0.5), true],
		["better there by too much", ordered, known(0.2, 0.8), known(0.4, 0.5), false],
		["alike", free, known(0.4, 0.5), known(0.4, 0.5), false],
		["worse on one, level but for rounding on the other", free, known(0.1 + 0.2, 0.2), known(0.3, 0.5), true],
		["alike but for rounding", free, known(0.1 + 0.2, 0.5), known(0.3, 0.5), false],
		["an unknown value that may be better", free, [exactly(0.2), { low: 0, high: 0.6 }], known(0.4, 0.5), false],
		["an unknown value that can reach level", free, [exactly(0.2), { low: 0, high: 0.5 }], known(0.4, 0.5), true],
		["the other's value may be worse", free, known(0.2, 0.3), [exactly(0.4), { low: 0, high: 1 }], false],
		["unknown below, level at best", free, [{ low: 0, high: 1 }, exactly(0)], known(1, 0), true],
	])("%s", (_, region, one, other, isLeft) => {
		expect(isLeftBehind(region, one, other)).toBe(isLeft);
	});

	test("refuses tables of different widths and missing ranges", () => {
		expect(() => isLeftBehind(free, known(0.1), known(0.1, 0.2))).toThrow("2 ranges against 1");
		expect(() => isLeftBehind(free, known(0.1), known(0.1))).toThrow("criterion 1 has no coefficient");
	});

	const cases = regions().chain((region) => {
		const count = criteriaCount(region);
		const row = fc.array(ranges, { minLength: count, maxLength: count });
		// What is taken off a copy makes sure that many are left behind.
		const drop = fc.array(fc.integer({ min: -1, max: 3 }), { minLength: count, maxLength: count });
		const drawn = fc.array(positive, { minLength: count, maxLength: count });
		return fc.tuple(fc.constant(region), row, drop, drawn, fc.boolean());
	});
	const pairs = cases.map(([region, row, drop, drawn, isKnown]) => {
		const other = isKnown ? row.map(({ low }) => exactly(low)) : row;
		const one = other.map(({ low }, at) => exactly(low - (drop[at] as number) / 10));
		return { region, one, other, weights: allowedWeights(region, drawn) };
	});

	test("is so at each allowed weight, also by the ranges of the scores, and never both ways", () => {
		let times = 0;
		fc.assert(
			fc.property(pairs, ({ region, one, other, weights }) => {
				if (!isLeftBehind(region, one, other)) return;
				times++;
				const its = weightedSum(
					one.map(({ high }) => high),
					weights,
				);
				const others = weightedSum(
					other.map(({ low }) => low),
					weights,
				);
				expect(its).toBeLessThanOrEqual(others + 2e-9);
				expect(isLeftBehind(region, other, one)).toBe(false);
			}),
		);
		expect(times).toBeGreaterThan(20);
	});

	test("where it is not so, some weights can put it ahead, or both are alike", () => {
		fc.assert(
			fc.property(pairs, ({ region, one, other }) => {
				if (isLeftBehind(region, one, other) || isLeftBehind(region, other, one)) return;
				const isAlike = one.every(({ low, high }, at) => {
					const same = other[at] as Interval;
					return Math.abs(low - same.low) + Math.abs(high - same.high) + high - low < 1e-8;
				});
				const isBetterSomewhere = extremePoints(region, one.length).some((point) => {
					const lead = one.map(({ high }, at) => high - (other[at] as Interval).low);
					return weightedSum(lead, point) > 0;
				});
				expect(isAlike || isBetterSomewhere).toBe(true);
			}),
		);
	});
});

describe("behind at given weights by the ranges of the scores", () => {
	test.each<[Interval[], Interval[], boolean]>([
		[known(0.2, 0.4), known(0.3, 0.4), true],
		[known(0.3, 0.4), known(0.2, 0.4), false],
		[known(0.3, 0.4), known(0.4, 0.3), false],
		[[{ low: 0, high: 0.4 }, exactly(0.4)], known(0.4, 0.4), true],
		[[{ low: 0, high: 0.5 }, exactly(0.4)], known(0.4, 0.4), false],
	])("%j against %j: %j", (one, other, isBehind) => {
		expect(isBehindAt([0.5, 0.5], one, other)).toBe(isBehind);
	});

	test("refuses weights that do not match", () => {
		expect(() => isBehindAt([1], known(0, 0), known(0, 0))).toThrow("2 values but 1 weights");
	});
});
