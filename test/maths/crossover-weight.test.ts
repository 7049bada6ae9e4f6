import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { crossoverWeight, narrowestCrossover } from "../../src/maths/crossover-weight.ts";
import { weightedSum } from "../../src/maths/weighted-sum.ts";

// Thousandths, since fast-check's doubles are nearly all next to nothing.
const thousandths = (min: number, max: number) => fc.integer({ min, max }).map((count) => count / 1000);
const share = thousandths(0, 1000);
const weight = thousandths(10, 1000);
/** Weight, value of one, value of the other, and whether the criterion is in the group. */
const comparison = fc.array(fc.tuple(weight, share, share, fc.boolean()), { minLength: 2, maxLength: 8 });

/** The weights with the group at this share of all and proportions kept. */
function withShare(weights: readonly number[], group: readonly number[], to: number): number[] {
	const moved = group.reduce((sum, place) => sum + (weights[place] as number), 0);
	const rest = weights.reduce((sum, each) => sum + each, 0) - moved;
	return weights.map((each, place) => (group.includes(place) ? (each * to) / moved : (each * (1 - to)) / rest));
}

describe("crossover weight", () => {
	test.each<[string, number[], number[], number[], number[], number | null]>([
		["better on one, worse on the other", [0.7, 0.3], [1, 0], [0, 1], [0], 0.5],
		["better on both", [0.7, 0.3], [1, 1], [0, 0], [0], null],
		["alike on it", [0.7, 0.3], [1, 1], [1, 0], [0], null],
		["alike on the rest: level only at 0", [0.7, 0.3], [1, 1], [0, 1], [0], null],
		["it weighs nothing yet", [0, 1], [0, 1], [3, 0], [0], 0.25],
		["it weighs all", [1, 0], [1, 0], [0, 3], [0], 0.75],
		["everything moves together", [0.7, 0.3], [1, 0], [0, 1], [0, 1], null],
		["nothing moves", [0.7, 0.3], [1, 0], [0, 1], [], null],
		["weights that sum to 100", [70, 30], [1, 0], [0, 1], [0], 0.5],
		["a difference made of rounding", [0.5, 0.5], [0.1 + 0.2, 1], [0.3, 2], [0], null],
	])("%s", (_, weights, one, other, group, expected) => {
		const crossover = crossoverWeight(weights, one, other, group);
		if (expected === null) expect(crossover).toBeNull();
		else expect(crossover).toBeCloseTo(expected, 12);
	});

	test("both scores are equal there, and the order turns", () => {
		let crossings = 0;
		fc.assert(
			fc.property(comparison, (rows) => {
				const weights = rows.map(([each]) => each);
				const one = rows.map((row) => row[1]);
				const other = rows.map((row) => row[2]);
				const group = rows.flatMap(([, , , isMoved], place) => (isMoved ? [place] : []));
				if (group.length === 0 || group.length === rows.length) return;
				const gapAt = (to: number) => {
					const moved = withShare(weights, group, to);
					return weightedSum(one, moved) - weightedSum(other, moved);
				};
				const crossover = crossoverWeight(weights, one, other, group);
				if (crossover === null) {
					// The gap runs straight from end to end, so that one sign at both means one sign between.
					expect(gapAt(0) * gapAt(1)).toBeGreaterThanOrEqual(-1e-9);
					return;
				}
				crossings++;
				expect(crossover).toBeGreaterThan(0);
				expect(crossover).toBeLessThan(1);
				expect(Math.abs(gapAt(crossover))).toBeLessThan(1e-9);
				expect(gapAt(0) * gapAt(1)).toBeLessThan(0);
			}),
		);
		expect(crossings).toBeGreaterThan(10);
	});

	test("refuses lists of different length", () => {
		expect(() => crossoverWeight([1, 1], [1], [1, 2], [0])).toThrow("1 and 2 values but 2 weights");
		expect(() => crossoverWeight([1, 1], [1, 2], [1], [0])).toThrow("2 and 1 values but 2 weights");
	});
});

describe("narrowest crossover", () => {
	test("the rival and criterion that need the least change", () => {
		// Rival 0 is level at .5 of the first, rival 1 at .6: the lead is lost to rival 1 after a change of a tenth.
		const narrowest = narrowestCrossover(
			[0.7, 0.3],
			[1, 0],
			[
				[0, 1],
				[0.2, 1.2],
			],
		);
		expect(narrowest).toMatchObject({ rival: 1, criterion: 0, from: 0.7 });
		expect(narrowest?.to).toBeCloseTo(0.6, 12);
	});

	test("of equal changes the first rival's and the first criterion's", () => {
		const rival = [0, 1];
		expect(narrowestCrossover([0.75, 0.25], [1, 0], [rival, rival])).toMatchObject({ rival: 0, criterion: 0 });
	});

	test("null where no rival is better on anything, or there is none", () => {
		expect(
			narrowestCrossover(
				[0.5, 0.5],
				[1, 1],
				[
					[0, 0],
					[1, 0],
				],
			),
		).toBeNull();
		expect(narrowestCrossover([0.5, 0.5], [1, 1], [])).toBeNull();
	});

	test("a smaller change of any one weight leaves the leader ahead of all", () => {
		const table = fc.integer({ min: 2, max: 6 }).chain((width) =>
			fc.record({
				weights: fc.array(weight, { minLength: width, maxLength: width }),
				rows: fc.array(fc.array(share, { minLength: width, maxLength: width }), { minLength: 2, maxLength: 5 }),
				part: thousandths(-999, 999),
				criterion: fc.nat(width - 1),
			}),
		);
		fc.assert(
			fc.property(table, ({ weights, rows, part, criterion }) => {
				const byScore = [...rows].sort((one, other) => weightedSum(other, weights) - weightedSum(one, weights));
				const [leader, ...rivals] = byScore as [number[], ...number[][]];
				const narrowest = narrowestCrossover(weights, leader, rivals);
				const total = weights.reduce((sum, each) => sum + each, 0);
				const now = (weights[criterion] as number) / total;
				const change = narrowest === null ? part : part * Math.abs(narrowest.to - narrowest.from);
				const moved = withShare(weights, [criterion], Math.min(1, Math.max(0, now + change)));
				for (const rival of rivals) {
					expect(weightedSum(leader, moved) - weightedSum(rival, moved)).toBeGreaterThan(-1e-9);
				}
			}),
		);
	});
});
