import { describe, expect, test } from "vitest";
import { sampledValues } from "../../src/maths/sampled-values.ts";
import { seededDraws } from "../../src/maths/seeded-draws.ts";
import { centralWeights, entropyBits, firstPlaceShares, pairwiseShares, rankShares } from "../../src/maths/shares.ts";
import { simplexSamples } from "../../src/maths/simplex-samples.ts";
import { weightsInTiers } from "../../src/maths/weights-in-tiers.ts";
import { allowedOff } from "../maths/draw-checks.ts";
import { type Office, offices } from "./office-table.ts";

const samples = 10_000;
const seed = 20_261_128;

/** Known alternatives under uniform weights, or under weights that fall from the first criterion on. */
function compared(table: readonly (readonly number[])[], order: "no order" | "falling") {
	const criteria = table[0]?.length ?? 0;
	const free = simplexSamples(seededDraws(seed), criteria, samples);
	const weights =
		order === "falling"
			? weightsInTiers(
					free,
					[...free.keys()].map((criterion) => [criterion]),
					[],
				)
			: free;
	const values = table.map((row) =>
		sampledValues(weights, [row.map((value) => ({ low: value, high: value, stream: 0 }))], null),
	);
	const first = firstPlaceShares(values);
	return {
		first,
		ranks: rankShares(values),
		central: centralWeights(values, weights),
		pairs: pairwiseShares(values),
		entropy: entropyBits(first),
	};
}

function expectNear(ours: readonly number[] | null | undefined, expected: readonly number[], tolerance: number): void {
	expect(ours).toHaveLength(expected.length);
	expected.forEach((value, at) => {
		const own = ours?.[at] as number;
		expect(Math.abs(own - value), `place ${at + 1}: ${own} instead of ${value}`).toBeLessThanOrEqual(tolerance + 1e-12);
	});
}

/** Within what the draw of 10 000 may be off. */
function expectShares(ours: readonly number[] | undefined, exact: readonly number[]): void {
	expect(ours).toHaveLength(exact.length);
	exact.forEach((share, at) => {
		expectNear([ours?.[at] as number], [share], allowedOff(share, samples));
	});
}

// Definitions: Lahdelma, Hokkanen & Salminen 1998; SMAA-2, Lahdelma & Salminen 2001 (read as an abstract). The values are
// integrals over the simplex, worked out exactly.
describe("small cases with exact values", () => {
	test("(1, 0) and (0, 1): 1/2 each; central weights 3/4 and 1/4; with the first heavier 1 and 0", () => {
		const table = [
			[1, 0],
			[0, 1],
		];
		const { first, central } = compared(table, "no order");
		expectShares(first, [1 / 2, 1 / 2]);
		expectNear(central[0], [3 / 4, 1 / 4], 0.01);
		expectNear(central[1], [1 / 4, 3 / 4], 0.01);
		expectShares(compared(table, "falling").first, [1, 0]);
	});

	test("(0.8, 0.3) and (0.4, 0.6): 4/7 and 3/7; central weights 5/7 and 3/14", () => {
		const { first, central } = compared(
			[
				[0.8, 0.3],
				[0.4, 0.6],
			],
			"no order",
		);
		expectShares(first, [4 / 7, 3 / 7]);
		expectNear(central[0], [5 / 7, 2 / 7], 0.01);
		expectNear(central[1], [3 / 14, 11 / 14], 0.01);
	});

	test("(1, 0), (0, 1) and the compromise (0.6, 0.6)", () => {
		const { first, ranks, central, pairs, entropy } = compared(
			[
				[1, 0],
				[0, 1],
				[0.6, 0.6],
			],
			"no order",
		);
		expectShares(first, [0.4, 0.4, 0.2]);
		expectShares(ranks[0], [0.4, 0.1, 0.5]);
		expectShares(ranks[1], [0.4, 0.1, 0.5]);
		expectShares(ranks[2], [0.2, 0.8, 0]);
		expectShares(pairs.ahead[0], [0, 0.5, 0.4]);
		expectShares(pairs.ahead[2], [0.6, 0.6, 0]);
		expectNear(
			central.map((weights) => weights?.[0] as number),
			[0.8, 0.2, 0.5],
			0.01,
		);
		expectNear([entropy], [1.52193], 0.02);
	});

	// The alternatives are those of a test of JSMAA (github.com/tommite/jsmaa, d00ae14; read in the document).
	test("(1, 0, 1) and (0, 1, 0): 3/4 and 1/4", () => {
		const { first, central } = compared(
			[
				[1, 0, 1],
				[0, 1, 0],
			],
			"no order",
		);
		expectShares(first, [3 / 4, 1 / 4]);
		expectNear(central[0], [7 / 18, 2 / 9, 7 / 18], 0.01);
		expectNear(central[1], [1 / 6, 2 / 3, 1 / 6], 0.01);
	});

	test("(1, 0, 0.5) and (0, 1, 1): 1/3 and 2/3; one ranking turns it to 6/7 and 1/7", () => {
		const table = [
			[1, 0, 0.5],
			[0, 1, 1],
		];
		expectShares(compared(table, "no order").first, [1 / 3, 2 / 3]);
		const { first, central } = compared(table, "falling");
		expectShares(first, [6 / 7, 1 / 7]);
		expectNear(central[0], [9 / 14, 11 / 42, 2 / 21], 0.01);
	});

	test("three that are best at one thing each, and (0.4, 0.4, 0.4): 0.32 each and 0.04", () => {
		const table = [
			[1, 0, 0],
			[0, 1, 0],
			[0, 0, 1],
			[0.4, 0.4, 0.4],
		];
		expectShares(compared(table, "no order").first, [0.32, 0.32, 0.32, 0.04]);
	});
});

/**
 * Means and standard deviations of each drug's figures: the logarithm of efficacy, then five side effects. Expected:
 * rank shares, central weights, confidence.
 */
const drugs = [
	{
		means: [0, 11.7, 7.2, 16.6, 13.7, 18.6],
		deviations: [0, 2.5, 1.45, 3.27, 1.89, 1.79],
		ranks: [0.2, 0.28, 0.3, 0.22],
		central: [0.08, 0.14, 0.23, 0.18, 0.16, 0.22],
		confidence: 0.48,
	},
	{
		means: [0.086, 9.2, 10.6, 21.2, 14.3, 18.3],
		deviations: [0.056, 1.86, 1.58, 5.15, 2.93, 3.7],
		ranks: [0.25, 0.29, 0.27, 0.19],
		central: [0.18, 0.17, 0.15, 0.13, 0.15, 0.22],
		confidence: 0.44,
	},
	{
		means: [0.095, 15.4, 7.5, 20.2, 15, 19.5],
		deviations: [0.044, 2.65, 1.48, 3.78, 3.21, 2.6],
		ranks: [0.17, 0.25, 0.29, 0.3],
		central: [0.21, 0.1, 0.22, 0.13, 0.15, 0.2],
		confidence: 0.34,
	},
	{
		means: [0.113, 5.5, 15.7, 12.8, 11.2, 31],
		deviations: [0.048, 2.32, 4.44, 2.45, 3.98, 1.68],
		ranks: [0.39, 0.18, 0.15, 0.29],
		central: [0.18, 0.21, 0.12, 0.21, 0.19, 0.09],
		confidence: 0.74,
	},
] as const;

// github.com/tommite/jsmaa, d00ae14, SMAA2SimulationTest, "BR model": inputs, expected values and tolerances read in the
// document; replicated with 400 000 draws.
describe("four drugs under six criteria (JSMAA's test)", () => {
	const draw = seededDraws(seed);
	const criteria = [0, 1, 2, 3, 4, 5];
	/** Efficacy is better the higher, side effects the lower; a scale runs from the least to the greatest 95 % limit. */
	const scales = criteria.map((criterion) => {
		const shown = (figure: number) => (criterion === 0 ? Math.exp(figure) : figure);
		const limits = drugs.flatMap((drug) => {
			const { mean, deviation } = figureOf(drug, criterion);
			return [shown(mean - 1.96 * deviation), shown(mean + 1.96 * deviation)];
		});
		const [least, most] = [Math.min(...limits), Math.max(...limits)];
		return (figure: number) => {
			const share = (shown(figure) - least) / (most - least);
			return criterion === 0 ? share : 1 - share;
		};
	});
	/** parts[drug][criterion][sample] */
	const parts = drugs.map((drug) =>
		criteria.map((criterion) => {
			const { mean, deviation } = figureOf(drug, criterion);
			const worth = scales[criterion] as (figure: number) => number;
			return Float64Array.from({ length: samples }, () => worth(mean + deviation * normalDraw()));
		}),
	);
	const weights = simplexSamples(seededDraws(seed + 1), criteria.length, samples);
	const values = valuesUnder((criterion, sample) => weights[criterion]?.[sample] as number);
	const ranks = rankShares(values);
	const central = centralWeights(values, weights);

	function figureOf({ means, deviations }: (typeof drugs)[number], criterion: number) {
		return { mean: means[criterion] as number, deviation: deviations[criterion] as number };
	}

	/** Box & Muller. */
	function normalDraw(): number {
		return Math.sqrt(-2 * Math.log(1 - draw())) * Math.cos(2 * Math.PI * draw());
	}

	function valuesUnder(weightAt: (criterion: number, sample: number) => number): readonly Float64Array[] {
		return parts.map((columns) =>
			Float64Array.from({ length: samples }, (_, sample) =>
				columns.reduce((sum, column, criterion) => sum + weightAt(criterion, sample) * (column[sample] as number), 0),
			),
		);
	}

	test.each([0, 1, 2, 3])("drug %i: rank shares, within 0.02", (drug) => {
		expectNear(ranks[drug], drugs[drug]?.ranks ?? [], 0.02);
		expect(firstPlaceShares(values)[drug]).toBeCloseTo(ranks[drug]?.[0] as number, 12);
	});

	test.each([0, 1, 2, 3])("drug %i: central weights, within 0.02", (drug) => {
		expectNear(central[drug], drugs[drug]?.central ?? [], 0.02);
	});

	test.each([0, 1, 2, 3])("drug %i: first under its own central weights, within 0.03", (drug) => {
		const own = central[drug] ?? [];
		const confidence = firstPlaceShares(valuesUnder((criterion) => own[criterion] as number))[drug];
		expectNear([confidence as number], [drugs[drug]?.confidence as number], 0.03);
	});
});

// R packages smaa and rsmaa: reference output and tests, read in the document.
describe("reference values of the R packages smaa and rsmaa", () => {
	test("entropy of 0.3504 and 0.6496 is 0.9344248 bits", () => {
		expect(Math.abs(entropyBits([0.3504, 0.6496]) - 0.9344248)).toBeLessThan(5e-6);
	});

	const winsNineOfTen = [
		Float64Array.from({ length: 10 }, (_, at) => (at === 3 ? 0 : 1)),
		new Float64Array(10).fill(0.5),
	];

	test("one that wins nine of ten: pairwise 0.9 and 0.1 (pwi.R)", () => {
		expect(pairwiseShares(winsNineOfTen).ahead).toEqual([
			[0, 0.9],
			[0.1, 0],
		]);
		expect(firstPlaceShares(winsNineOfTen)).toEqual([0.9, 0.1]);
	});

	test("one that never wins has no central weights, not noughts (nacw.R)", () => {
		const weights = simplexSamples(seededDraws(1), 3, 10);
		expect(centralWeights([...winsNineOfTen, new Float64Array(10)], weights)[2]).toBeNull();
	});
});

// Office choice of Goodwin & Wright, "Decision Analysis for Management Judgment", ch. 3: column A read in the document, the
// other cells from memory. Shares worked out with 2 000 000 draws, by another program.
describe("seven offices", () => {
	const names = Object.keys(offices) as Office[];
	const table = names.map((name) => offices[name]);
	const at = (name: Office) => names.indexOf(name);

	test("no order known", () => {
		const { first, ranks, entropy } = compared(table, "no order");
		const expected = { A: 0.472, B: 0.046, C: 0.003, D: 0, E: 0.36, F: 0, G: 0.117 };
		for (const name of names)
			expectNear([first[at(name)] as number], [expected[name]], allowedOff(expected[name], samples) + 0.0005);
		const meanRanks = { A: 2.03, E: 2.09, G: 3, D: 4.07, B: 4.94, C: 5.44, F: 6.44 };
		for (const name of names) {
			const mean = (ranks[at(name)] ?? []).reduce((sum, share, rank) => sum + share * (rank + 1), 0);
			expectNear([mean], [meanRanks[name]], 0.08);
		}
		expectNear([entropy], [1.641], 0.03);
	});

	test("the full order known", () => {
		const { first, ranks, entropy } = compared(table, "falling");
		expectNear([first[at("A")] as number], [0.9999], 0.001);
		expectNear([ranks[at("G")]?.[1] as number], [0.467], 0.02);
		expectNear([ranks[at("E")]?.[1] as number], [0.463], 0.02);
		expect(entropy).toBeLessThan(0.01);
	});
});
