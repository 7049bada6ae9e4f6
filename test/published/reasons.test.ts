import { describe, expect, test } from "vitest";
import { contributions, mainReasons } from "../../src/maths/contributions.ts";
import { crossoverWeight, narrowestCrossover } from "../../src/maths/crossover-weight.ts";
import { rankOrderCentroid } from "../../src/maths/rank-weights.ts";
import { swingWeights } from "../../src/maths/swing-weights.ts";
import { unknownThreshold } from "../../src/maths/unknown-threshold.ts";
import { weightedSum } from "../../src/maths/weighted-sum.ts";
import { offices, officeWeights } from "./office-table.ts";

describe("office choice, A against E (Goodwin & Wright, Decision Analysis for Management Judgment, ch. 3; cells of E from memory)", () => {
	const shares = officeWeights.map((weight) => weight / 100);

	test("turnover against working conditions turns at 52.1 (read in the document; more digits worked out)", () => {
		const turnover = [0, 1, 2];
		const unrounded = swingWeights([100, 80, 70, 30, 20, 10]);
		const exact = crossoverWeight(unrounded, offices.A, offices.E, turnover);
		expect(exact).toBeCloseTo(0.521144, 6);
		expect(crossoverWeight(officeWeights, offices.A, offices.E, turnover)).toBeCloseTo(0.521663, 6);
	});

	test.each<[string, number, number | null]>([
		["closeness", 0, 0.07273],
		["visibility", 1, null],
		["image", 2, null],
		["size", 3, 0.4512],
		["comfort", 4, 0.2579],
		["car parking", 5, null],
	])("%s alone (worked out)", (_, criterion, expected) => {
		const crossover = crossoverWeight(officeWeights, offices.A, offices.E, [criterion]);
		if (expected === null) expect(crossover).toBeNull();
		else expect(Math.abs((crossover as number) - expected)).toBeLessThan(0.00005);
	});

	test("of all, comfort needs the least change: from 6 to 25.79 (worked out)", () => {
		const narrowest = narrowestCrossover(officeWeights, offices.A, [offices.E]);
		expect(narrowest).toMatchObject({ rival: 0, criterion: 4, from: 0.06 });
	});

	test("contributions 19.2, 0, 2.3, -2.5, -3.6, 0.6 make up 16.0, and the first outweighs both minuses (worked out)", () => {
		const parts = contributions(shares, offices.A, offices.E);
		const expected = [19.2, 0, 2.3, -2.5, -3.6, 0.6];
		for (const [place, part] of parts.entries()) expect(part).toBeCloseTo(expected[place] as number, 9);
		expect(parts.reduce((sum, part) => sum + part, 0)).toBeCloseTo(16, 9);
		// 28.2 points of differences in all: 0.6 is slight, 2.3 and 2.5 are not.
		expect(mainReasons(parts)).toEqual({ pluses: [0], biggestMinus: 4, others: [3, 2] });
	});
});

// Triantaphyllou & Sanchez, "A sensitivity analysis approach for some deterministic multi-criteria decision making
// methods", Decision Sciences 28(1), 1997, example of the weighted sum. Table from memory, results worked out.
describe("most critical criterion (Triantaphyllou & Sanchez 1997; table from memory, results worked out)", () => {
	const weights = [0.3277, 0.3058, 0.2876, 0.079];
	const rows = [
		[0.3088, 0.2897, 0.3867, 0.1922],
		[0.2163, 0.3458, 0.1755, 0.6288],
		[0.4509, 0.2473, 0.1194, 0.0575],
		[0.024, 0.1172, 0.3184, 0.1215],
	];

	/** Their measure: by how many of 100 of itself a weight must change, the others as they are, until two are level. */
	function changeOf(one: number, other: number, criterion: number): number | null {
		const share = crossoverWeight(weights, rows[one] as number[], rows[other] as number[], [criterion]);
		if (share === null) return null;
		const now = weights[criterion] as number;
		const others = weights.reduce((sum, weight) => sum + weight, 0) - now;
		// A share of all, with the others kept and not scaled, is this weight.
		return (100 * Math.abs((share * others) / (1 - share) - now)) / now;
	}

	function smallest(pairs: readonly (readonly [number, number])[]) {
		return pairs
			.flatMap(([one, other]) =>
				weights.map((_, criterion) => ({ one, other, criterion, change: changeOf(one, other, criterion) ?? Infinity })),
			)
			.reduce((least, each) => (each.change < least.change ? each : least));
	}

	test("scores .3162, .2768, .2623, .1449", () => {
		const scores = rows.map((row) => Number(weightedSum(row, weights).toFixed(4)));
		expect(scores).toEqual([0.3162, 0.2768, 0.2623, 0.1449]);
	});

	test("the leader falls first by the third criterion, to the second, at 64.9 of 100", () => {
		const found = smallest([
			[0, 1],
			[0, 2],
			[0, 3],
		]);
		expect(found).toMatchObject({ one: 0, other: 1, criterion: 2 });
		expect(found.change).toBeCloseTo(64.9, 1);
	});

	test("any two change places first by the first criterion, second and third, at 18.9 of 100", () => {
		const found = smallest([
			[0, 1],
			[0, 2],
			[0, 3],
			[1, 2],
			[1, 3],
			[2, 3],
		]);
		expect(found).toMatchObject({ one: 1, other: 2, criterion: 0 });
		expect(found.change).toBeCloseTo(18.9, 1);
	});
});

// Weights: rank order centroid. Worked out, with the gain in the text of src/maths/unknown-threshold.ts.
describe("an unknown value (worked out)", () => {
	const weights = rankOrderCentroid(3) as [number, number, number];
	const known = weightedSum([0.8, 0.6, 0.5], weights);

	test("0.4833 to 0.7611 against 0.7111: ahead from 0.82 on, chance 0.18, worth 0.0045", () => {
		const base = weightedSum([0.7, 0, 0.5], weights);
		const found = unknownThreshold(known, { base, weight: weights[1], value: { low: 0, high: 1 } });
		expect(known).toBeCloseTo(0.7111, 4);
		expect(found.score.low).toBeCloseTo(0.4833, 4);
		expect(found.score.high).toBeCloseTo(0.7611, 4);
		expect(found.ahead).toBe("open");
		expect(found.threshold).toBeCloseTo(0.82, 9);
		expect(found.chanceAhead).toBeCloseTo(0.18, 9);
		expect(found.worth).toBeCloseTo(0.0045, 9);
	});

	test("at most 0.5556: nothing to look up", () => {
		const base = weightedSum([0.4, 0, 0.3], weights);
		const found = unknownThreshold(known, { base, weight: weights[1], value: { low: 0, high: 1 } });
		expect(found.score.high).toBeCloseTo(0.5556, 4);
		expect(found).toMatchObject({ ahead: "known", chanceAhead: 0, worth: 0 });
	});
});
