import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { contributions, fewestPluses, mainReasons } from "../../src/maths/contributions.ts";
import { weightedSum } from "../../src/maths/weighted-sum.ts";

// Thousandths, since fast-check's doubles are nearly all next to nothing.
const differences = fc.array(
	fc.integer({ min: -50000, max: 50000 }).map((count) => count / 1000),
	{ minLength: 1, maxLength: 8 },
);

function sumOf(numbers: readonly number[]): number {
	return numbers.reduce((sum, number) => sum + number, 0);
}

function minusesOf(list: readonly number[]): number {
	return -sumOf(list.filter((difference) => difference < 0));
}

describe("contributions", () => {
	test("sum to the gap between the scores", () => {
		const share = fc.integer({ min: 0, max: 1000 }).map((count) => count / 1000);
		fc.assert(
			fc.property(fc.array(fc.tuple(share, share, share), { minLength: 1, maxLength: 8 }), (rows) => {
				const [weights, one, other] = [0, 1, 2].map((column) => rows.map((row) => row[column] as number)) as [
					number[],
					number[],
					number[],
				];
				const gap = weightedSum(one, weights) - weightedSum(other, weights);
				expect(sumOf(contributions(weights, one, other))).toBeCloseTo(gap, 12);
			}),
		);
	});

	test("refuses lists of different length", () => {
		expect(() => contributions([1], [1], [])).toThrow("1 and 0 values but 1 weights");
		expect(() => contributions([1], [1, 2], [1])).toThrow("2 and 1 values but 1 weights");
	});
});

describe("fewest pluses", () => {
	test.each<[string, readonly number[], readonly number[] | null]>([
		["the largest alone where it is enough", [1, 9, 2, -3], [1]],
		["as many as are needed, largest first", [4, 5, 3, -8], [1, 0]],
		["more than, not as much as", [5, 4, -5], [0, 1]],
		["nothing to outweigh: the largest", [1, 3, 0], [1]],
		["of equal ones the first", [2, 2, -1], [0]],
		["behind", [1, -2], null],
		["level", [2, -2], null],
		["no difference at all", [0, 0], null],
		["nothing compared", [], null],
	])("%s", (_, list, expected) => {
		expect(fewestPluses(list)).toEqual(expected);
	});

	test("they outweigh all minuses, and no smaller set of pluses does", () => {
		fc.assert(
			fc.property(differences, (list) => {
				const named = fewestPluses(list);
				const pluses = list.filter((difference) => difference > 0);
				const against = minusesOf(list);
				const sums = Array.from({ length: 2 ** pluses.length }, (_, set) =>
					pluses.filter((_, place) => set & (1 << place)),
				);
				if (named === null) {
					expect(sumOf(pluses)).toBeLessThanOrEqual(against + 1e-9);
					return;
				}
				expect(sumOf(named.map((place) => list[place] as number))).toBeGreaterThan(against);
				expect(named.every((place) => (list[place] as number) > 0)).toBe(true);
				for (const set of sums) {
					if (set.length > 0 && set.length < named.length) expect(sumOf(set)).toBeLessThanOrEqual(against + 1e-9);
				}
			}),
		);
	});
});

describe("main reasons", () => {
	test("below 5 of 100 of all differences is left out, just 5 is not", () => {
		expect(mainReasons([70, 5, 4, -16, -5])).toEqual({ pluses: [0], biggestMinus: 3, others: [1, 4] });
	});

	test("the biggest minus is told even where it is slight", () => {
		expect(mainReasons([99, -1])).toEqual({ pluses: [0], biggestMinus: 1, others: [] });
	});

	test("a slight plus is told where the minuses are not outweighed without it", () => {
		expect(mainReasons([48, 3, 2, -47])?.pluses).toEqual([0]);
		expect(mainReasons([46, 3, 2, -47])?.pluses).toEqual([0, 1]);
	});

	test("nothing against it", () => {
		expect(mainReasons([3, 1])).toEqual({ pluses: [0], biggestMinus: null, others: [1] });
	});

	test("no lead, no reasons", () => {
		expect(mainReasons([1, -1])).toBeNull();
	});

	test("nothing is named twice, and what is not named is slight or no difference", () => {
		fc.assert(
			fc.property(differences, (list) => {
				const reasons = mainReasons(list);
				if (reasons === null) return;
				const { pluses, biggestMinus, others } = reasons;
				const named = [...pluses, ...(biggestMinus === null ? [] : [biggestMinus]), ...others];
				expect(new Set(named).size).toBe(named.length);
				const all = sumOf(list.map(Math.abs));
				for (const [place, difference] of list.entries()) {
					if (!named.includes(place)) expect(Math.abs(difference)).toBeLessThan(0.05 * all + 1e-9);
				}
				expect(Math.min(0, ...list)).toBe(biggestMinus === null ? 0 : list[biggestMinus]);
			}),
		);
	});
});
