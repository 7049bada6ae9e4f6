import { describe, expect, test } from "vitest";
import { isBehindAt, isLeftBehind } from "../../src/maths/dominance.ts";
import { exactly, type Interval } from "../../src/maths/interval.ts";
import { bestCase, canBeBest } from "../../src/maths/potential-optimality.ts";
import { rankOrderCentroid } from "../../src/maths/rank-weights.ts";
import { leastOver, type WeightRegion } from "../../src/maths/weight-region.ts";
import { type Office, offices } from "./office-table.ts";

const known = (values: readonly number[]): Interval[] => values.map(exactly);
const noOrder = (count: number): WeightRegion => ({ tiers: [], free: Array.from({ length: count }, (_, at) => at) });
const ordered = (count: number): WeightRegion => ({ tiers: Array.from({ length: count }, (_, at) => [at]), free: [] });

// The programme: Hazen 1986; Eum, Park & Kim 2001 (abstract read). Instances and results are worked out, those of two
// criteria with two solvers.
describe("greatest lead over all others (worked out)", () => {
	const extremes = [known([1, 0]), known([0, 1])];
	const three = [known([1, 0.2, 0.3]), known([0.3, 1, 0.2]), known([0.2, 0.3, 1])];

	test("a compromise of 0.45 is left behind by nobody and yet never best: -0.05", () => {
		const compromise = known([0.45, 0.45]);
		for (const extreme of extremes) expect(isLeftBehind(noOrder(2), compromise, extreme)).toBe(false);
		expect(bestCase(noOrder(2), compromise, extremes).lead).toBeCloseTo(-0.05, 12);
		expect(canBeBest(noOrder(2), compromise, extremes)).toBe(false);
	});

	test("one of 0.6 leads by 0.10 at equal weights", () => {
		const { lead, weights } = bestCase(noOrder(2), known([0.6, 0.6]), extremes);
		expect(lead).toBeCloseTo(0.1, 12);
		expect(weights).toEqual([expect.closeTo(0.5, 12), expect.closeTo(0.5, 12)]);
	});

	test("three criteria: 0.5 everywhere just draws level at equal weights", () => {
		const { lead, weights } = bestCase(noOrder(3), known([0.5, 0.5, 0.5]), three);
		expect(lead).toBeCloseTo(0, 12);
		for (const weight of weights) expect(weight).toBeCloseTo(1 / 3, 12);
		expect(canBeBest(noOrder(3), known([0.5, 0.5, 0.5]), three)).toBe(true);
	});

	test("a little less on one criterion, and it is never best: -1/60", () => {
		expect(bestCase(noOrder(3), known([0.45, 0.5, 0.5]), three).lead).toBeCloseTo(-1 / 60, 12);
		expect(canBeBest(noOrder(3), known([0.45, 0.5, 0.5]), three)).toBe(false);
	});
});

// Column A was read in the document, the other cells are from memory; who leaves whom behind is worked out.
describe("office choice in order (Goodwin & Wright, Decision Analysis for Management Judgment, ch. 3)", () => {
	const names = Object.keys(offices) as Office[];

	test.each<[Office, string]>([
		["A", "BCDFG"],
		["B", "F"],
		["C", "F"],
		["D", "F"],
		["E", "BF"],
		["F", ""],
		["G", "BF"],
	])("%s leaves behind: %s", (name, behind) => {
		const left = names.filter((other) => isLeftBehind(ordered(6), known(offices[other]), known(offices[name])));
		expect(left.join("")).toBe(behind);
	});

	test("A is 3 points behind E where the first five weigh the same, and nowhere more", () => {
		const lead = offices.A.map((value, at) => value - offices.E[at as 0]);
		expect(leastOver(ordered(6), lead)).toBeCloseTo(-3, 12);
	});

	test("only A and E can be best in that order, and G level with A where the first two weigh the same", () => {
		const best = names.filter((name) => {
			const others = names.filter((other) => other !== name).map((other) => known(offices[other]));
			return canBeBest(ordered(6), known(offices[name]), others);
		});
		expect(best.join("")).toBe("AEG");
	});
});

// Salo & Hämäläinen 1992 (abstract read). Instance and results are worked out.
describe("three criteria in order, one value unknown (worked out)", () => {
	const leader = known([0.8, 0.6, 0.5]);
	const unknown = { low: 0, high: 1 };
	const weights = rankOrderCentroid(3);

	test("(0.4, ?, 0.3) is out, at the centre of the weights and at all others in that order", () => {
		const one = [exactly(0.4), unknown, exactly(0.3)];
		expect(isBehindAt(weights, one, leader)).toBe(true);
		expect(isLeftBehind(ordered(3), one, leader)).toBe(true);
		expect(isLeftBehind(noOrder(3), one, leader)).toBe(false);
	});

	test("(0.7, ?, 0.5) may still overtake", () => {
		const one = [exactly(0.7), unknown, exactly(0.5)];
		expect(isBehindAt(weights, one, leader)).toBe(false);
		expect(isLeftBehind(ordered(3), one, leader)).toBe(false);
		expect(canBeBest(ordered(3), one, [leader])).toBe(true);
	});
});
