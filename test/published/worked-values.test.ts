import { describe, expect, test } from "vitest";
import { exactly, weightedSumOfIntervals } from "../../src/maths/interval.ts";
import { type Breakpoint, piecewiseLinear } from "../../src/maths/piecewise-linear.ts";
import { rankOrderCentroid, rankSum } from "../../src/maths/rank-weights.ts";
import { swingWeights } from "../../src/maths/swing-weights.ts";
import { weightedSum } from "../../src/maths/weighted-sum.ts";

// Goodwin & Wright, "Decision Analysis for Management Judgment", ch. 3, office choice.
// Read in the document: the weights, column A, the totals of A, C and G, and what E comes to on two groups of criteria.
// From memory: the other cells, and the totals of B, D, E and F; they agree with every figure that was read.
describe("office choice (Goodwin & Wright, Decision Analysis for Management Judgment, ch. 3)", () => {
	// Closeness, visibility, image, size, comfort, car parking.
	const swings = [100, 80, 70, 30, 20, 10];
	const weights = [32, 26, 23, 10, 6, 3];
	const offices = {
		A: [100, 60, 100, 75, 0, 90],
		B: [20, 80, 10, 30, 100, 30],
		C: [80, 70, 0, 0, 10, 100],
		D: [70, 50, 30, 55, 30, 90],
		E: [40, 60, 90, 100, 60, 70],
		F: [0, 0, 70, 0, 80, 0],
		G: [60, 100, 20, 50, 50, 80],
	};

	function totalOf(office: keyof typeof offices, shares: readonly number[]): number {
		return weightedSum(offices[office], shares);
	}

	test("A: 3200 + 1560 + 2300 + 750 + 0 + 270 = 8080 (read in the document)", () => {
		expect(offices.A.map((score, index) => weightedSum([score], [weights[index] as number]))).toEqual([
			3200, 1560, 2300, 750, 0, 270,
		]);
		expect(totalOf("A", weights)).toBe(8080);
	});

	test.each<[keyof typeof offices, number, string]>([
		["A", 80.8, "total and cells read in the document"],
		["C", 47.4, "total read in the document, cells from memory"],
		["G", 60.2, "total read in the document, cells from memory"],
		["B", 39.4, "from memory"],
		["D", 52.3, "from memory"],
		["E", 64.8, "from memory"],
		["F", 20.9, "from memory"],
	])("%s totals %f (%s)", (office, total) => {
		expect(totalOf(office, weights) / 100).toBeCloseTo(total, 9);
	});

	test("E comes to 60.4 on closeness, visibility and image, 81.7 on the rest (both read in the document, cells from memory)", () => {
		const turnover = weightedSum(offices.E.slice(0, 3), swingWeights(swings.slice(0, 3)));
		const workingConditions = weightedSum(offices.E.slice(3), swingWeights(swings.slice(3)));
		expect(turnover).toBeCloseTo(60.4, 9);
		expect(Math.abs(workingConditions - 81.7)).toBeLessThan(0.051);
	});

	// Same table under other weights, worked out.
	test.each<[string, readonly number[], Partial<Record<keyof typeof offices, number>>]>([
		[
			"rank order centroid",
			rankOrderCentroid(6),
			{ A: 81.38, G: 62.25, E: 60.97, D: 55.4, C: 52.97, B: 39.11, F: 15.97 },
		],
		["rank sum", rankSum(6), { A: 76.9, E: 66.19, G: 60.48 }],
		["equal weights", swingWeights([1, 1, 1, 1, 1, 1]), { A: 70.83, E: 70, G: 60 }],
	])("under %s (cells as above, totals worked out)", (_, shares, totals) => {
		for (const [office, total] of Object.entries(totals)) {
			expect(Math.abs(totalOf(office as keyof typeof offices, shares) - total), office).toBeLessThan(0.0051);
		}
	});
});

// An exercise of the same textbook. All inputs were read where it is posed; the totals are worked out.
describe("stadium site (exercise of Decision Analysis for Management Judgment; inputs read, totals worked out)", () => {
	// Distance, parking, residents, accessibility.
	const weights = swingWeights([100, 30, 55, 15]);

	test("weights 0.50, 0.15, 0.275, 0.075", () => {
		for (const [index, weight] of [0.5, 0.15, 0.275, 0.075].entries()) {
			expect(weights[index]).toBeCloseTo(weight, 12);
		}
	});

	test.each([
		["Egbert", [10, 100, 70, 50], 43],
		["Lakeside", [40, 80, 100, 100], 67],
		["Jones", [60, 10, 0, 0], 31.5],
		["Causeway", [0, 60, 40, 60], 24.5],
		["Hodge", [100, 0, 20, 10], 56.25],
	])("%s: %j comes to %f", (_, scores, total) => {
		expect(weightedSum(scores, weights)).toBeCloseTo(total, 9);
	});
});

describe("R package smaa, commit 2ce6bbd, tests/pvf.R; test values read in the document", () => {
	const falling: readonly Breakpoint[] = [
		[50, 1],
		[75, 0.8],
		[90, 0.5],
		[100, 0],
	];
	const rising: readonly Breakpoint[] = [
		[-0.15, 0],
		[0, 0.1],
		[0.25, 0.9],
		[0.35, 1],
	];

	test.each([
		[50, 1],
		[60, 0.92],
		[75, 0.8],
		[90, 0.5],
		[100, 0],
		[10, 1],
		[120, 0],
	])("falling: %i is worth %f", (x, value) => {
		expect(piecewiseLinear(falling, x)).toBeCloseTo(value, 12);
	});

	test("rising: 0.1 is worth 0.42", () => {
		expect(piecewiseLinear(rising, 0.1)).toBeCloseTo(0.42, 12);
	});
});

// The package lists the corners of price and time from the highest down; here they rise in x, the function is the same.
describe("R package MCDA, commit ff40fd0, tests; partial values read in the document, totals worked out", () => {
	const price: readonly Breakpoint[] = [
		[2, 0.0875],
		[16, 0],
		[30, 0],
	];
	const time: readonly Breakpoint[] = [
		[10, 0.9],
		[20, 0.025],
		[30, 0],
		[40, 0],
	];
	const comfort: readonly Breakpoint[] = [
		[0, 0],
		[1, 0],
		[2, 0.0125],
		[3, 0.0125],
	];

	test.each([
		[[3, 10, 1], [0.08125, 0.9, 0], 0.98125],
		[[4, 20, 2], [0.075, 0.025, 0.0125], 0.1125],
		[[2, 20, 0], [0.0875, 0.025, 0], 0.1125],
		[[6, 40, 0], [0.0625, 0, 0], 0.0625],
		[[30, 30, 3], [0, 0, 0.0125], 0.0125],
	] as const)("price, time, comfort %j are worth %j, together %f", (row, values, total) => {
		const ours = [piecewiseLinear(price, row[0]), piecewiseLinear(time, row[1]), piecewiseLinear(comfort, row[2])];
		for (const [index, value] of values.entries()) expect(ours[index]).toBeCloseTo(value, 12);
		expect(weightedSum(ours, [1, 1, 1])).toBeCloseTo(total, 12);
	});
});

// Worked out for this project; no published source.
describe("a score with an unknown fact, three criteria under the rank order centroid (worked out)", () => {
	const weights = rankOrderCentroid(3);
	const unknown = { low: 0, high: 1 };

	test("all known: 0.8, 0.6, 0.5 scores 0.7111", () => {
		const { low, high } = weightedSumOfIntervals([0.8, 0.6, 0.5].map(exactly), weights);
		expect(low).toBeCloseTo(0.7111, 4);
		expect(high).toBe(low);
	});

	test("0.7, ?, 0.5 scores from 0.4833 to 0.7611", () => {
		const { low, high } = weightedSumOfIntervals([exactly(0.7), unknown, exactly(0.5)], weights);
		expect(low).toBeCloseTo(0.4833, 4);
		expect(high).toBeCloseTo(0.7611, 4);
	});

	test("0.4, ?, 0.3 scores at most 0.5556", () => {
		expect(weightedSumOfIntervals([exactly(0.4), unknown, exactly(0.3)], weights).high).toBeCloseTo(0.5556, 4);
	});
});

// A scale refitted to the boards at hand lets a third board turn the order of two others round; a fixed one cannot.
// Worked out for this project; literature on the effect: Vafaei et al. 2016 (abstract read).
describe("fixed scales keep the order of two boards whatever the third (worked out)", () => {
	const weights = [0.55, 0.45];

	function scoreOn(
		ports: readonly Breakpoint[],
		price: readonly Breakpoint[],
		board: readonly [number, number],
	): number {
		return weightedSum([piecewiseLinear(ports, board[0]), piecewiseLinear(price, board[1])], weights);
	}

	const boards = { P1: [4, 100], P2: [8, 180], P3: [16, 190] } as const;

	/** Scales fitted to these boards: the worst among them is worth 0, the best 1. */
	function scoresOnFittedScales(names: readonly (keyof typeof boards)[]): number[] {
		const ports = names.map((name) => boards[name][0]);
		const prices = names.map((name) => boards[name][1]);
		const portScale: Breakpoint[] = [
			[Math.min(...ports), 0],
			[Math.max(...ports), 1],
		];
		const priceScale: Breakpoint[] = [
			[Math.min(...prices), 1],
			[Math.max(...prices), 0],
		];
		return names.map((name) => scoreOn(portScale, priceScale, boards[name]));
	}

	test.each<[keyof typeof boards, number]>([
		["P1", 0.4386],
		["P2", 0.4157],
		["P3", 0.7075],
	])("%s scores %f on ports 2 to 16 and price 60 to 260", (name, score) => {
		const ours = scoreOn(
			[
				[2, 0],
				[16, 1],
			],
			[
				[60, 1],
				[260, 0],
			],
			boards[name],
		);
		expect(ours).toBeCloseTo(score, 4);
	});

	test("on fitted scales P2 leads P1 alone (0.55 to 0.45), but P1 leads P2 once P3 is there (0.45 to 0.2333)", () => {
		const two = scoresOnFittedScales(["P1", "P2"]);
		const three = scoresOnFittedScales(["P1", "P2", "P3"]);
		for (const [index, score] of [0.45, 0.55].entries()) expect(two[index]).toBeCloseTo(score, 4);
		for (const [index, score] of [0.45, 0.2333, 0.55].entries()) expect(three[index]).toBeCloseTo(score, 4);
	});
});
