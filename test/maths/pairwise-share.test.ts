import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { pairwiseShare } from "../../src/maths/pairwise-share.ts";
import type { WeightRegion } from "../../src/maths/weight-region.ts";
import { criteriaCount, plainDraws, regions, tenths } from "./drawn-regions.ts";

const noOrder = (count: number): WeightRegion => ({ tiers: [], free: Array.from({ length: count }, (_, at) => at) });

describe("share of weights under which one is ahead", () => {
	test("level under every weight is ahead for neither side", () => {
		expect(pairwiseShare(noOrder(3), [0, 0, 0])).toBe(0);
		// What rounding leaves of equal values is no lead.
		expect(pairwiseShare(noOrder(2), [0.1 + 0.2 - 0.3, 0])).toBe(0);
		expect(pairwiseShare(noOrder(0), [])).toBe(0);
	});

	test("one that is level on some criteria and ahead on the rest is ahead", () => {
		expect(pairwiseShare(noOrder(3), [0, 0.2, 0])).toBe(1);
		expect(pairwiseShare(noOrder(3), [0, -0.2, 0])).toBe(0);
		expect(pairwiseShare({ tiers: [[0], [1], [2]], free: [] }, [0, 0, 1])).toBe(1);
	});

	test("a criterion outside the region changes nothing", () => {
		expect(pairwiseShare({ tiers: [[0], [2]], free: [] }, [1, 99, -2])).toBe(
			pairwiseShare({ tiers: [[0], [1]], free: [] }, [1, -2]),
		);
	});

	test("free criteria of no difference still take weight from an order", () => {
		expect(pairwiseShare({ tiers: [[0, 1]], free: [2] }, [1, -1, 0])).toBeCloseTo(0.5, 12);
	});

	test("too many orders give no answer; alike differences make no more orders", () => {
		const region = { tiers: [[0], [1, 2, 3, 4, 5, 6, 7, 8]], free: [] };
		expect(pairwiseShare(region, [3, -1, -2, -3, -4, 5, 6, 7, 8])).toBe(null);
		expect(pairwiseShare(region, [3, -1, -1, -1, -1, 5, 5, 5, 5])).toBeGreaterThan(0.5);
		expect(pairwiseShare({ tiers: [[0], [1, 2]], free: [] }, [3, -1, -2], 1)).toBe(null);
		const alike = Array.from({ length: 33 }, (_, at) => (at === 0 ? 1 : -0.01));
		const below = (count: number) => ({ tiers: [[0], Array.from({ length: count }, (_, at) => at + 1)], free: [] });
		expect(pairwiseShare(below(30), alike)).toBe(1);
		expect(pairwiseShare(below(31), alike)).toBe(null);
		// Where all is level there is nothing to order.
		expect(pairwiseShare(below(31), new Array<number>(33).fill(0))).toBe(0);
		// The first tier and the free ones are never cut into orders.
		const wide = { tiers: [[0, 1, 2, 3, 4, 5, 6, 7, 8], [9]], free: [10, 11] };
		expect(pairwiseShare(wide, [1, 2, 3, 4, 5, 6, 7, 8, 9, -1, 1, 1])).toBeGreaterThan(0.5);
	});

	test("refuses a criterion without difference or that stands twice", () => {
		expect(() => pairwiseShare(noOrder(2), [1])).toThrow("criterion 1 has no difference");
		expect(() => pairwiseShare({ tiers: [[0]], free: [0] }, [1])).toThrow("a criterion stands twice: 0, 0");
	});

	test("both sides and what is level make the whole", () => {
		fc.assert(
			fc.property(casesOf(8, 1, 10), ([region, differences]) => {
				const there = pairwiseShare(region, differences) as number;
				const back = pairwiseShare(
					region,
					differences.map((difference) => -difference),
				) as number;
				const isLevel = differences.every((difference) => difference === 0);
				expect(there + back + (isLevel ? 1 : 0)).toBeCloseTo(1, 12);
				expect(there).toBeGreaterThanOrEqual(0);
				expect(there).toBeLessThanOrEqual(1 + 1e-12);
			}),
		);
	});

	test("a greater difference never lowers the share", () => {
		fc.assert(
			fc.property(casesOf(7, 1, 10), fc.nat(), tenths, ([region, differences], at, more) => {
				const index = at % differences.length;
				const raised = differences.with(index, (differences[index] as number) + more);
				const before = pairwiseShare(region, differences) as number;
				expect(pairwiseShare(region, raised)).toBeGreaterThanOrEqual(before - 1e-12);
			}),
		);
	});
});

/** A region and whole differences from minus to plus `most`. */
function casesOf(criteria: number, least: number, most: number) {
	return regions(criteria, least).chain((region) => {
		const count = criteriaCount(region);
		const differences = fc.array(fc.integer({ min: -most, max: most }), { minLength: count, maxLength: count });
		return fc.tuple(fc.constant(region), differences);
	});
}

// Another way to the same number: every full order that agrees with the tiers, free criteria at every place, each as
// likely; in each the closed form of Varsi 1973 (from memory) on the means of the first k, in whole numbers.
describe("the mean over all full orders, in exact fractions", () => {
	test("comes to the same", () => {
		fc.assert(
			fc.property(casesOf(5, 1, 999), ([region, differences]) => {
				const orders = allOrders(region);
				const shares = orders.map((order) => shareInOrder(order.map((index) => differences[index] as number)));
				fc.pre(shares.every((share) => share !== null));
				const mean = (shares as number[]).reduce((one, other) => one + other, 0) / orders.length;
				expect(pairwiseShare(region, differences)).toBeCloseTo(mean, 11);
			}),
			{ numRuns: 200 },
		);
	});
});

function allOrders({ tiers, free }: WeightRegion): number[][] {
	const indexes = [...tiers.flat(), ...free];
	const tierOf = new Map(tiers.flatMap((tier, at) => tier.map((index) => [index, at] as const)));
	return permutations(indexes).filter((order) => {
		const placed = order.flatMap((index) => tierOf.get(index) ?? []);
		return placed.every((tier, at) => at === 0 || tier >= (placed[at - 1] as number));
	});
}

function permutations(values: readonly number[]): number[][] {
	if (values.length === 0) return [[]];
	return values.flatMap((value, at) => permutations(values.toSpliced(at, 1)).map((rest) => [value, ...rest]));
}

/** Null where two means are equal, which the closed form cannot take. */
function shareInOrder(differences: readonly number[]): number | null {
	let sum = 0n;
	// 60 is divisible by all counts up to 5.
	const means = differences.map((difference, at) => {
		sum += BigInt(difference);
		return (sum * 60n) / BigInt(at + 1);
	});
	if (new Set(means).size < means.length) return null;
	let [above, below] = [0n, 1n];
	for (const mean of means) {
		if (mean <= 0n) continue;
		const divisor = means.reduce((product, other) => (other === mean ? product : product * (mean - other)), 1n);
		above = above * divisor + mean ** BigInt(means.length - 1) * below;
		below *= divisor;
	}
	return Number((above * 10n ** 15n) / below) / 1e15;
}

// Exponentials are uniform on the simplex but for their sum, which changes no sign and no order (Simon 2020, section
// 3.1). What does not obey the tiers is thrown away, so nothing is shared with the way the formula takes.
describe("400 000 draws that obey the region, within four standard errors", () => {
	const wanted = 400_000;
	test.each<[string, WeightRegion, number[]]>([
		["no order", noOrder(6), [0.5, -0.3, 0.2, -0.4, 0.1, -0.2]],
		["no order, equal differences", noOrder(4), [5, -1, -1, -1]],
		["a full order", { tiers: [[0], [1], [2], [3]], free: [] }, [0.3, -0.9, 0.4, -0.3]],
		[
			"tiers",
			{
				tiers: [
					[0, 1],
					[2, 3, 4],
				],
				free: [],
			},
			[0.5, -0.6, 0.3, -0.7, 0.2],
		],
		["a single one above three", { tiers: [[3], [0, 1, 2]], free: [] }, [-0.9, 0.4, -0.6, 0.3]],
		["tiers with free ones", { tiers: [[0], [], [1, 2]], free: [3, 4] }, [0.4, -0.8, 0.1, -0.3, 0.5]],
		["a first tier of several with free ones", { tiers: [[4, 1], [0]], free: [3, 2] }, [0.7, -0.5, -0.6, 0.3, 0.2]],
	])("%s", (_, region, differences) => {
		const draw = plainDraws(20260901);
		const weights = new Float64Array(differences.length);
		let [kept, ahead] = [0, 0];
		while (kept < wanted) {
			for (let at = 0; at < weights.length; at++) weights[at] = -Math.log(1 - draw());
			if (!isInOrder(region.tiers, weights)) continue;
			kept++;
			let sum = 0;
			for (let at = 0; at < weights.length; at++) sum += (weights[at] as number) * (differences[at] as number);
			if (sum > 0) ahead++;
		}
		const share = pairwiseShare(region, differences) as number;
		expect(share).toBeGreaterThan(0.02);
		expect(share).toBeLessThan(0.98);
		expect(Math.abs(ahead / wanted - share)).toBeLessThan(4 * Math.sqrt((share * (1 - share)) / wanted));
	});

	test("the draws themselves are uniform: means, spread and tails of three weights", () => {
		const draw = plainDraws(7);
		let [sum, squares, tail, level] = [0, 0, 0, 0];
		for (let at = 0; at < wanted; at++) {
			const raw = [draw(), draw(), draw()].map((value) => -Math.log(1 - value));
			const total = raw.reduce((one, other) => one + other, 0);
			const weights = raw.map((value) => value / total);
			const first = weights[0] as number;
			sum += first;
			squares += first ** 2;
			if (first > 0.5) tail++;
			if (Math.max(...weights) <= 0.4) level++;
		}
		// Mean 1/n, variance (n - 1) / (n^2 (n + 1)), tail (1 - t)^(n - 1), and 1 - 3 * 0.6^2 + 3 * 0.2^2 = 0.04.
		expect(Math.abs(sum / wanted - 1 / 3)).toBeLessThan(4 * Math.sqrt(1 / 18 / wanted));
		expect(squares / wanted - (sum / wanted) ** 2).toBeCloseTo(1 / 18, 3);
		expect(Math.abs(tail / wanted - 0.25)).toBeLessThan(4 * Math.sqrt(0.1875 / wanted));
		expect(Math.abs(level / wanted - 0.04)).toBeLessThan(4 * Math.sqrt(0.0384 / wanted));
	});
});

function isInOrder(tiers: readonly (readonly number[])[], weights: Float64Array): boolean {
	let bound = Infinity;
	for (const tier of tiers) {
		let least = bound;
		for (const index of tier) {
			const weight = weights[index] as number;
			if (weight > bound) return false;
			if (weight < least) least = weight;
		}
		bound = least;
	}
	return true;
}
