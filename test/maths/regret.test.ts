import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { exactly, type Interval } from "../../src/maths/interval.ts";
import { greatestRegrets, worstScores } from "../../src/maths/regret.ts";
import { leastOver, type WeightRegion } from "../../src/maths/weight-region.ts";
import { allowedWeights, criteriaCount, positive, ranges, regions } from "./drawn-regions.ts";

const free: WeightRegion = { tiers: [], free: [0, 1] };
const known = (...values: number[]): Interval[] => values.map(exactly);

describe("greatest regret", () => {
	test("nobody regrets oneself, however wide one's own range", () => {
		const wide = [
			{ low: 0, high: 1 },
			{ low: 0, high: 1 },
		];
		expect(greatestRegrets(free, [wide])).toEqual([0]);
		expect(greatestRegrets(free, [wide, known(0.25, 0.5)])).toEqual([0.5, 0.75]);
	});

	test("two alike regret nothing", () => {
		expect(greatestRegrets(free, [known(0.3, 0.4), known(0.3, 0.4)])).toEqual([0, 0]);
	});

	test("nobody, and nothing that weighs", () => {
		expect(greatestRegrets(free, [])).toEqual([]);
		expect(greatestRegrets({ tiers: [], free: [] }, [known(1), known(0)])).toEqual([0, 0]);
		expect(worstScores({ tiers: [], free: [] }, [known(1), known(0)])).toEqual([0, 0]);
	});

	test("refuses rows of different widths", () => {
		expect(() => greatestRegrets(free, [known(1, 0), known(1)])).toThrow("1 values but 2 weights");
		expect(() => worstScores(free, [known(1)])).toThrow("criterion 1 has no coefficient");
	});

	const cases = regions().chain((region) => {
		const count = criteriaCount(region);
		const row = fc.array(ranges, { minLength: count, maxLength: count });
		const drawn = fc.array(positive, { minLength: count, maxLength: count });
		return fc.tuple(fc.constant(region), fc.array(row, { minLength: 1, maxLength: 8 }), drawn);
	});

	test("is the greatest over pairs, each by the least of its own lead", () => {
		fc.assert(
			fc.property(cases, ([region, values]) => {
				const byPairs = values.map((one, at) =>
					values.reduce((most, other, its) => {
						if (its === at) return most;
						const lead = one.map(({ low }, index) => low - (other[index] as Interval).high);
						return Math.max(most, -leastOver(region, lead));
					}, 0),
				);
				for (const [at, regret] of greatestRegrets(region, values).entries()) {
					expect(regret).toBeCloseTo(byPairs[at] as number, 10);
				}
			}),
		);
	});

	test("no allowed weights give more regret, or a score below the worst", () => {
		fc.assert(
			fc.property(cases, ([region, values, drawn]) => {
				const weights = allowedWeights(region, drawn);
				const score = (row: readonly Interval[], end: "low" | "high") =>
					row.reduce((sum, value, at) => sum + value[end] * (weights[at] as number), 0);
				const regrets = greatestRegrets(region, values);
				const worst = worstScores(region, values);
				for (const [at, row] of values.entries()) {
					const low = score(row, "low");
					const best = values.reduce(
						(most, other, its) => (its === at ? most : Math.max(most, score(other, "high"))),
						0,
					);
					expect(best - low).toBeLessThanOrEqual((regrets[at] as number) + 1e-9);
					expect(low).toBeGreaterThanOrEqual((worst[at] as number) - 1e-9);
				}
			}),
		);
	});
});
