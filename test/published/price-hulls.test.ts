import { describe, expect, test } from "vitest";
import { dominates, dominatesInPractice, pricesOfPoint, undominated, upperHull } from "../../src/maths/price-hull.ts";
import { weightedSum } from "../../src/maths/weighted-sum.ts";

/** Places with what they cost and how good they are. */
interface Site {
	readonly name: string;
	readonly price: number;
	readonly score: number;
}

const namesOf = (sites: readonly Site[], indices: readonly number[]) => indices.map((index) => sites[index]?.name);

/**
 * Goodwin and Wright, Decision Analysis for Management Judgment, chapter 3, the choice of an office: weights, the totals of
 * A, C and G, what each further point costs, and who beats whom are read in the document. The other values and single
 * costs are from memory; they give every figure that was read.
 */
describe("the office (Goodwin and Wright, chapter 3)", () => {
	const weights = [32, 26, 23, 10, 6, 3].map((weight) => weight / 100);
	const values: Readonly<Record<string, readonly [price: number, values: readonly number[]]>> = {
		A: [35_000, [100, 60, 100, 75, 0, 90]],
		B: [17_800, [20, 80, 10, 30, 100, 30]],
		C: [6_700, [80, 70, 0, 0, 10, 100]],
		D: [14_100, [70, 50, 30, 55, 30, 90]],
		E: [34_800, [40, 60, 90, 100, 60, 70]],
		F: [18_600, [0, 0, 70, 0, 80, 0]],
		G: [12_000, [60, 100, 20, 50, 50, 80]],
	};
	const offices = Object.entries(values).map(
		([name, [price, given]]): Site => ({ name, price, score: weightedSum(given, weights) }),
	);
	const office = (name: string) => offices.find((one) => one.name === name) as Site;

	test("the totals of A, C and G (read in the document)", () => {
		expect(office("A").score).toBeCloseTo(80.8, 9);
		expect(office("C").score).toBeCloseTo(47.4, 9);
		expect(office("G").score).toBeCloseTo(60.2, 9);
	});

	test("the hull is C, G, A (verdict read in the document)", () => {
		expect(namesOf(offices, upperHull(offices))).toEqual(["C", "G", "A"]);
	});

	test("a further point costs 414 from C to G and 1117 from G to A (read in the document)", () => {
		const [first, second, ...more] = pricesOfPoint(offices, upperHull(offices));
		expect(more).toEqual([]);
		expect(Math.abs((first ?? 0) - 414)).toBeLessThan(0.6);
		expect(Math.abs((second ?? 0) - 1117)).toBeLessThan(0.6);
	});

	test("B, D and F are beaten by G (read in the document)", () => {
		for (const name of ["B", "D", "F"]) expect(dominates(office("G"), office(name)), name).toBe(true);
	});

	test("E, only a little cheaper than A, is dropped (verdict read in the document)", () => {
		// It stays among those that nothing beats strictly, since it costs 200 less than A.
		expect(namesOf(offices, undominated(offices))).toEqual(["A", "C", "E", "G"]);
		expect(dominatesInPractice(office("A"), office("E"), { priceShare: 0.02, clearly: 5 })).toBe(true);
		expect(namesOf(offices, upperHull(offices))).not.toContain("E");
		// Worked out: on the hull it would need 80.6 points at its price.
		expect(60.2 + (80.8 - 60.2) * ((34_800 - 12_000) / (35_000 - 12_000))).toBeCloseTo(80.6, 1);
	});
});

/** An exercise of the same book, chapter 3, the site of a stadium: swings, values and costs read in the document. */
describe("the stadium (exercise of Goodwin and Wright, chapter 3)", () => {
	const weights = [0.5, 0.15, 0.275, 0.075];
	const sites = (
		[
			["Egbert", 80, [10, 100, 70, 50]],
			["Lakeside", 65, [40, 80, 100, 100]],
			["Jones", 30, [60, 10, 0, 0]],
			["Causeway", 100, [0, 60, 40, 60]],
			["Hodge", 75, [100, 0, 20, 10]],
		] as const
	).map(([name, price, values]): Site => ({ name, price, score: weightedSum(values, weights) }));

	test("the totals (worked out)", () => {
		const expected = [43, 67, 31.5, 24.5, 56.25];
		for (const [index, { score }] of sites.entries()) expect(score).toBeCloseTo(expected[index] as number, 9);
	});

	test("only Jones and Lakeside are beaten by none, and a further point costs 0.98592 (worked out)", () => {
		expect(namesOf(sites, undominated(sites))).toEqual(["Lakeside", "Jones"]);
		const hull = upperHull(sites);
		expect(namesOf(sites, hull)).toEqual(["Jones", "Lakeside"]);
		expect(pricesOfPoint(sites, hull)).toHaveLength(1);
		expect(pricesOfPoint(sites, hull)[0]).toBeCloseTo(0.98592, 5);
	});
});
