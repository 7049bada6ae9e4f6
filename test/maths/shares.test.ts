import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { sampledValues } from "../../src/maths/sampled-values.ts";
import { seededDraws } from "../../src/maths/seeded-draws.ts";
import { centralWeights, entropyBits, firstPlaceShares, pairwiseShares, rankShares } from "../../src/maths/shares.ts";
import { simplexSamples } from "../../src/maths/simplex-samples.ts";

const column = (...values: number[]) => Float64Array.from(values);

/** Few different values, so that many are tied. */
const coarse = fc.tuple(fc.integer({ min: 1, max: 6 }), fc.integer({ min: 1, max: 12 })).chain(([count, samples]) =>
	fc.array(
		fc.array(fc.integer({ min: 0, max: 4 }), { minLength: samples, maxLength: samples }).map((list) => column(...list)),
		{ minLength: count, maxLength: count },
	),
);
const sumOf = (list: readonly number[]) => list.reduce((sum, value) => sum + value, 0);

/** Parts of up to six alternatives under up to four criteria, from 0 to 1. */
const unit = fc.double({ min: 0, max: 1, noNaN: true });
const tables = fc
	.tuple(fc.integer({ min: 1, max: 6 }), fc.integer({ min: 1, max: 4 }))
	.chain(([count, criteria]) =>
		fc.array(fc.array(unit, { minLength: criteria, maxLength: criteria }), { minLength: count, maxLength: count }),
	);
const weightsFor = (table: readonly (readonly number[])[], seed: number) =>
	simplexSamples(seededDraws(seed), table[0]?.length ?? 0, 200);
const valuesOf = (table: readonly (readonly number[])[], weights: readonly Float64Array[]) =>
	table.map((row) => sampledValues(weights, [row.map((value) => ({ low: value, high: value, stream: 0 }))], null));

describe("by hand", () => {
	// Sample by sample: first leads; first and second tie; all tie; third leads and the others tie.
	const values = [column(3, 2, 1, 0), column(2, 2, 1, 0), column(1, 0, 1, 1)];

	test("first places", () => {
		const shares = firstPlaceShares(values);
		[1 + 1 / 2 + 1 / 3, 1 / 2 + 1 / 3, 1 / 3 + 1].forEach((sum, at) => {
			expect(shares[at]).toBeCloseTo(sum / 4, 12);
		});
	});

	test("ranks", () => {
		const third = 1 / 3;
		const expected = [
			[1 + 0.5 + third, 0.5 + third + 0.5, third + 0.5],
			[0.5 + third, 1 + 0.5 + third + 0.5, third + 0.5],
			[third + 1, third, 1 + 1 + third],
		];
		rankShares(values).forEach((row, alternative) => {
			row.forEach((share, rank) => {
				expect(share).toBeCloseTo((expected[alternative]?.[rank] as number) / 4, 12);
			});
		});
	});

	test("two by two", () => {
		expect(pairwiseShares(values)).toEqual({
			ahead: [
				[0, 0.25, 0.5],
				[0, 0, 0.5],
				[0.25, 0.25, 0],
			],
			tied: [
				[1, 0.75, 0.25],
				[0.75, 1, 0.25],
				[0.25, 0.25, 1],
			],
		});
	});

	test("central weights, a shared sample counting in part", () => {
		const weights = [column(0.9, 0.5, 0.3, 0.1), column(0.1, 0.5, 0.7, 0.9)];
		const [first, , third] = centralWeights(values, weights);
		expect(first?.[0]).toBeCloseTo((0.9 + 0.5 / 2 + 0.3 / 3) / (1 + 1 / 2 + 1 / 3), 12);
		expect(third?.[1]).toBeCloseTo((0.7 / 3 + 0.9) / (1 / 3 + 1), 12);
	});

	test("one that never leads has no central weights, nor one that leads too seldom", () => {
		const values = [
			column(...new Array<number>(99).fill(1), 0),
			column(...new Array<number>(99).fill(0), 1),
			new Float64Array(100),
		];
		const weights = [new Float64Array(100).fill(1)];
		expect(centralWeights(values, weights)).toEqual([[1], null, null]);
		expect(centralWeights(values, weights, 0.01)).toEqual([[1], [1], null]);
		expect(centralWeights(values, weights, 0)).toEqual([[1], [1], null]);
	});

	test("a difference of rounding is a tie, one just above is none", () => {
		expect(firstPlaceShares([column(1), column(1 + 1e-12)])).toEqual([0.5, 0.5]);
		expect(firstPlaceShares([column(1), column(1 + 1e-8)])).toEqual([0, 1]);
		expect(pairwiseShares([column(1), column(1 + 1e-12)]).tied[0]?.[1]).toBe(1);
		expect(rankShares([column(1), column(1 + 1e-12)])).toEqual([
			[0.5, 0.5],
			[0.5, 0.5],
		]);
	});

	test("nobody to compare", () => {
		expect(firstPlaceShares([])).toEqual([]);
		expect(rankShares([])).toEqual([]);
		expect(pairwiseShares([])).toEqual({ ahead: [], tied: [] });
		expect(centralWeights([], [])).toEqual([]);
		expect(firstPlaceShares([column(-5, -5)])).toEqual([1]);
	});

	test.each([
		[[1, 0, 0], 0],
		[[0.5, 0.5], 1],
		[[0.25, 0.25, 0.25, 0.25], 2],
		[[], 0],
	])("entropy of %j", (shares, bits) => {
		expect(entropyBits(shares)).toBeCloseTo(bits, 12);
	});
});

describe("for any values", () => {
	test("rows and columns of rank shares sum to 1, and rank 0 is the first place", () => {
		fc.assert(
			fc.property(coarse, (values) => {
				const ranks = rankShares(values);
				const first = firstPlaceShares(values);
				expect(sumOf(first)).toBeCloseTo(1, 12);
				ranks.forEach((row, at) => {
					expect(sumOf(row)).toBeCloseTo(1, 12);
					expect(sumOf(ranks.map((other) => other[at] as number))).toBeCloseTo(1, 12);
					expect(row[0]).toBeCloseTo(first[at] as number, 12);
				});
			}),
		);
	});

	test("one ahead, the other ahead and tied sum to 1", () => {
		fc.assert(
			fc.property(coarse, (values) => {
				const { ahead, tied } = pairwiseShares(values);
				ahead.forEach((row, one) => {
					row.forEach((share, other) => {
						expect(share + (ahead[other]?.[one] as number) + (tied[one]?.[other] as number)).toBeCloseTo(1, 12);
					});
				});
			}),
		);
	});

	test("ranks agree with pairs: the mean rank is how many are ahead, ties half", () => {
		fc.assert(
			fc.property(coarse, (values) => {
				const { ahead, tied } = pairwiseShares(values);
				rankShares(values).forEach((row, one) => {
					const meanRank = sumOf(row.map((share, rank) => share * rank));
					const before = values.map((_, other) =>
						other === one ? 0 : (ahead[other]?.[one] as number) + (tied[other]?.[one] as number) / 2,
					);
					expect(meanRank).toBeCloseTo(sumOf(before), 10);
				});
			}),
		);
	});

	test("the order in which alternatives come says nothing", () => {
		fc.assert(
			fc.property(coarse, (values) => {
				const turned = firstPlaceShares([...values].reverse()).toReversed();
				firstPlaceShares(values).forEach((share, at) => {
					expect(turned[at]).toBeCloseTo(share, 12);
				});
			}),
		);
	});

	test("an alternative given twice shares its samples", () => {
		fc.assert(
			fc.property(coarse, fc.nat(5), (values, pick) => {
				const chosen = pick % values.length;
				const shares = firstPlaceShares([...values, values[chosen] as Float64Array]);
				expect(shares[chosen]).toBe(shares.at(-1));
				// Where others are tied with it, it has more than half of what it had: two of three places, not of two.
				expect(shares.at(-1)).toBeGreaterThanOrEqual((firstPlaceShares(values)[chosen] as number) / 2 - 1e-12);
			}),
		);
	});
});

describe("for any alternatives", () => {
	const seeds = fc.nat(1000);

	test("one that has less of nothing is never behind, and one that has more of all always ahead", () => {
		fc.assert(
			fc.property(tables, seeds, fc.double({ min: 0.01, max: 0.5, noNaN: true }), (table, seed, rise) => {
				const weights = weightsFor(table, seed);
				const row = table[0] as readonly number[];
				const more = row.map((value, at) => (at === 0 ? value + rise : value));
				const { ahead } = pairwiseShares(valuesOf([row, more, row.map((value) => value + rise)], weights));
				expect(ahead[0]).toEqual([0, 0, 0]);
				expect(ahead[1]?.[2]).toBe(0);
				expect(ahead[2]?.[0]).toBe(1);
			}),
		);
	});

	test("more of one thing never lowers a first-place share", () => {
		fc.assert(
			fc.property(tables, seeds, fc.nat(), fc.nat(), unit, (table, seed, one, criterion, rise) => {
				const chosen = one % table.length;
				const weights = weightsFor(table, seed);
				const raised = table.map((row, at) =>
					at === chosen ? row.map((value, part) => (part === criterion % row.length ? value + rise : value)) : row,
				);
				const share = (rows: readonly (readonly number[])[]) =>
					firstPlaceShares(valuesOf(rows, weights))[chosen] as number;
				expect(share(raised)).toBeGreaterThanOrEqual(share(table) - 1e-12);
			}),
		);
	});

	test("an alternative given twice has half the share each time, where no other ties with it", () => {
		fc.assert(
			fc.property(tables, seeds, fc.nat(), (table, seed, pick) => {
				const chosen = pick % table.length;
				const weights = weightsFor(table, seed);
				const values = valuesOf(table, weights);
				fc.pre(values.every((_, at) => at === chosen || (pairwiseShares(values).tied[chosen]?.[at] as number) === 0));
				const share = firstPlaceShares(values)[chosen] as number;
				const doubled = firstPlaceShares([...values, values[chosen] as Float64Array]);
				expect(doubled[chosen]).toBeCloseTo(share / 2, 12);
				expect(doubled.at(-1)).toBeCloseTo(share / 2, 12);
			}),
		);
	});

	test("central weights, weighed by shares, are the mean weights", () => {
		fc.assert(
			fc.property(tables, seeds, (table, seed) => {
				const weights = weightsFor(table, seed);
				const values = valuesOf(table, weights);
				const shares = firstPlaceShares(values);
				const central = centralWeights(values, weights, 0);
				weights.forEach((weight, criterion) => {
					const mean = sumOf(central.map((one, at) => (one?.[criterion] ?? 0) * (shares[at] as number)));
					expect(mean).toBeCloseTo(sumOf([...weight]) / weight.length, 10);
				});
			}),
		);
	});
});

test("columns of different length are refused", () => {
	const uneven = [column(1, 2), column(1)];
	for (const shares of [firstPlaceShares, rankShares, pairwiseShares])
		expect(() => shares(uneven)).toThrow("columns of different length");
	expect(() => centralWeights([column(1)], [column(1, 2)])).toThrow("columns of different length");
});
