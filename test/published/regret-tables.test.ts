import { describe, expect, test } from "vitest";
import { exactly, type Interval } from "../../src/maths/interval.ts";
import { canBeBest } from "../../src/maths/potential-optimality.ts";
import { greatestRegrets, worstScores } from "../../src/maths/regret.ts";
import type { WeightRegion } from "../../src/maths/weight-region.ts";
import { weightedSum } from "../../src/maths/weighted-sum.ts";
import { type Office, offices } from "./office-table.ts";

const known = (values: readonly number[]): Interval[] => values.map(exactly);
const noOrder = (count: number): WeightRegion => ({ tiers: [], free: Array.from({ length: count }, (_, at) => at) });
const ordered = (count: number): WeightRegion => ({ tiers: Array.from({ length: count }, (_, at) => [at]), free: [] });

function expectAll(found: readonly number[], wanted: readonly number[]): void {
	expect(found).toHaveLength(wanted.length);
	for (const [at, value] of wanted.entries()) expect(found[at]).toBeCloseTo(value, 12);
}

// The definition: Boutilier, Patrascu, Poupart & Schuurmans 2006 (abstract read). Results are worked out.
describe("two extremes and a compromise (worked out)", () => {
	const withCompromise = (value: number) => [known([1, 0]), known([0, 1]), known([value, value])];

	test("of 0.6: regret 1, 1, 0.4; at worst 0, 0, 0.6", () => {
		expectAll(greatestRegrets(noOrder(2), withCompromise(0.6)), [1, 1, 0.4]);
		expectAll(worstScores(noOrder(2), withCompromise(0.6)), [0, 0, 0.6]);
	});

	test("of 0.45: it is never best and yet has the smallest regret, so regret is no ranking", () => {
		const [one, other, compromise] = withCompromise(0.45) as [Interval[], Interval[], Interval[]];
		expectAll(greatestRegrets(noOrder(2), [one, other, compromise]), [1, 1, 0.55]);
		expect(canBeBest(noOrder(2), compromise, [one, other])).toBe(false);
	});
});

// Kaplan, "Maximax, maximin and minimax regret": supplies of 40, 50, 60 or 70 salads and four states of demand. The
// payoffs and chances were read there, the results are worked out. A state of demand takes the place of a criterion.
describe("salads (Kaplan, Maximax, maximin and minimax regret; payoffs read, results worked out)", () => {
	const payoffs = [
		[80, 80, 80, 80],
		[0, 100, 100, 100],
		[-80, 20, 120, 120],
		[-160, -60, 40, 140],
	];
	const values = payoffs.map(known);

	test("greatest regrets 60, 80, 160, 240: least for 40", () => {
		expect(greatestRegrets(noOrder(4), values)).toEqual([60, 80, 160, 240]);
	});

	test("at worst 80, 0, -80, -160: best for 40", () => {
		expect(worstScores(noOrder(4), values)).toEqual([80, 0, -80, -160]);
	});

	test("expected 80, 90, 80, 30", () => {
		const chances = [0.1, 0.2, 0.4, 0.3];
		expectAll(
			payoffs.map((row) => weightedSum(row, chances)),
			[80, 90, 80, 30],
		);
	});
});

// Column A was read in the document, the other cells are from memory; the results are worked out.
describe("office choice in order (Goodwin & Wright, Decision Analysis for Management Judgment, ch. 3)", () => {
	const names = Object.keys(offices) as Office[];
	const values = names.map((name) => known(offices[name]));

	test("greatest regrets in points of 100", () => {
		//                                                   A  B   C      D        E   F    G
		expectAll(greatestRegrets(ordered(6), values), [3, 80, 46.25, 110 / 3, 60, 100, 40]);
	});

	test.each<[Office, number]>([
		["A", 67],
		["G", 56],
		["D", 47],
		["E", 40],
	])("%s comes to %f at worst", (name, score) => {
		expect(worstScores(ordered(6), [known(offices[name])])[0]).toBeCloseTo(score, 12);
	});
});
