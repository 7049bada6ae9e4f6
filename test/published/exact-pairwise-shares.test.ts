import { describe, expect, test } from "vitest";
import { pairwiseShare } from "../../src/maths/pairwise-share.ts";
import type { WeightRegion } from "../../src/maths/weight-region.ts";
import { type Office, offices } from "./office-table.ts";

const places = (count: number) => Array.from({ length: count }, (_, at) => at);
const noOrder = (count: number): WeightRegion => ({ tiers: [], free: places(count) });
const ordered = (count: number): WeightRegion => ({ tiers: places(count).map((at) => [at]), free: [] });

function less(one: readonly number[], other: readonly number[]): number[] {
	return one.map((value, at) => value - (other[at] as number));
}

// The recursion: Varsi 1973, Ali 1973 (from memory). The fractions are worked out, by integration over the weights and
// by the closed form; those without order also by 2 000 000 draws.
describe("share of all weights under which one is ahead (worked out)", () => {
	test.each<[string, readonly number[], readonly number[], number, number]>([
		["two opposite ones", [1, 0], [0, 1], 1 / 2, 1],
		// Ahead where the first weight is above 3/7.
		["two with a compromise", [0.8, 0.3], [0.4, 0.6], 4 / 7, 1],
		["a good compromise against an extreme", [0.6, 0.6], [1, 0], 3 / 5, 1 / 5],
		["a good compromise against the other extreme", [0.6, 0.6], [0, 1], 3 / 5, 1],
		["two of three criteria against one", [1, 0, 1], [0, 1, 0], 3 / 4, 1],
		["an order turns the advice", [1, 0, 0.5], [0, 1, 1], 1 / 3, 6 / 7],
		// Behind where one weight is above 0.4: 0.6 squared.
		["0.4 everywhere against one extreme", [0.4, 0.4, 0.4], [0, 0, 1], 16 / 25, 1],
	])("%s: %j against %j", (_, one, other, withoutOrder, inOrder) => {
		const differences = less(one, other);
		expect(pairwiseShare(noOrder(one.length), differences)).toBeCloseTo(withoutOrder, 12);
		expect(pairwiseShare(ordered(one.length), differences)).toBeCloseTo(inOrder, 12);
	});

	test.each<[readonly number[], number, number | null]>([
		[[1, -1, -0.5], 1 / 3, 6 / 7],
		[[0.3, -0.2, 0.1, -0.4], 37 / 105, 95 / 98],
		[[5, -1, -1, -1], 125 / 216, null],
		[[1, -1, 1], 3 / 4, null],
	])("differences %j", (differences, withoutOrder, inOrder) => {
		expect(pairwiseShare(noOrder(differences.length), differences)).toBeCloseTo(withoutOrder, 12);
		if (inOrder !== null) expect(pairwiseShare(ordered(differences.length), differences)).toBeCloseTo(inOrder, 12);
	});

	test("six criteria: 0.431978", () => {
		expect(pairwiseShare(noOrder(6), [0.5, -0.3, 0.2, -0.4, 0.1, -0.2])).toBeCloseTo(0.431978, 6);
	});

	test("all in one tier is no order", () => {
		expect(pairwiseShare({ tiers: [[2, 0, 1, 3]], free: [] }, [0.3, -0.2, 0.1, -0.4])).toBeCloseTo(37 / 105, 12);
	});

	// One above two others: half of the weights have the second ahead of the third, half the other way.
	test("a tier of two is the mean of its two orders", () => {
		const inTiers = pairwiseShare({ tiers: [[0], [1, 2]], free: [] }, [1, -1, -0.5]) as number;
		const either = pairwiseShare(ordered(3), [1, -0.5, -1]) as number;
		expect(inTiers).toBeCloseTo((6 / 7 + either) / 2, 12);
	});
});

// Shares worked out from cells of which only column A was read in the document; the others are from memory.
describe("office choice (Goodwin & Wright, Decision Analysis for Management Judgment, ch. 3; shares worked out)", () => {
	test.each<[Office, Office, number, number]>([
		["A", "E", 0.532346, 0.999919],
		["G", "C", 0.933696, 0.933884],
	])("%s ahead of %s: %f without order, %f in order", (one, other, withoutOrder, inOrder) => {
		const differences = less(offices[one], offices[other]);
		expect(pairwiseShare(noOrder(6), differences)).toBeCloseTo(withoutOrder, 6);
		expect(pairwiseShare(ordered(6), differences)).toBeCloseTo(inOrder, 6);
	});
});
