import { describe, expect, test } from "vitest";
import { seededDraws } from "../../src/maths/seeded-draws.ts";
import { simplexSamples } from "../../src/maths/simplex-samples.ts";

const sums = (columns: readonly Float64Array[]) =>
	Array.from(columns[0] ?? [], (_, sample) => columns.reduce((sum, column) => sum + (column[sample] as number), 0));

test.each([1, 2, 5, 8])("%i weights are not below 0 and sum to 1", (criteria) => {
	const columns = simplexSamples(seededDraws(3), criteria, 500);
	expect(columns).toHaveLength(criteria);
	for (const column of columns) {
		expect(column).toHaveLength(500);
		expect(Math.min(...column)).toBeGreaterThanOrEqual(0);
	}
	for (const sum of sums(columns)) expect(sum).toBeCloseTo(1, 12);
});

describe("draws at the ends", () => {
	test.each([0, 1, 1 - 2 ** -53])("all of them %d: equal weights", (draw) => {
		for (const column of simplexSamples(() => draw, 4, 2))
			for (const weight of column) expect(weight).toBeCloseTo(0.25, 12);
	});

	test("0 beside 1: numbers all the same, the greater for the 1", () => {
		const draws = [0, 1];
		const [least = 0, most = 0] = simplexSamples(() => draws.shift() as number, 2, 1).map((column) => column[0]);
		expect(least).toBeGreaterThan(0);
		expect(least).toBeLessThan(1e-15);
		expect(most).toBeCloseTo(1, 12);
	});
});

test("no criteria, no columns; no samples, empty columns", () => {
	expect(simplexSamples(seededDraws(1), 0, 10)).toEqual([]);
	expect(simplexSamples(seededDraws(1), 2, 0)).toEqual([new Float64Array(), new Float64Array()]);
});

test("takes one draw a weight, sample by sample, so that more samples only add to the first ones", () => {
	const few = simplexSamples(seededDraws(5), 3, 10);
	const more = simplexSamples(seededDraws(5), 3, 20);
	expect(more.map((column) => column.slice(0, 10))).toEqual(few);
});

test("takes no more draws than it has weights, so that who draws next is not put out of step", () => {
	const draw = seededDraws(5);
	let drawn = 0;
	simplexSamples(
		() => {
			drawn++;
			return draw();
		},
		3,
		10,
	);
	expect(drawn).toBe(30);
});

test.each([
	[-1, 3, -1],
	[2.5, 3, 2.5],
	[2, -1, -1],
	[2, Number.NaN, Number.NaN],
])("refuses %d criteria with %d samples", (criteria, samples, count) => {
	expect(() => simplexSamples(seededDraws(1), criteria, samples)).toThrow(
		`a count must be a whole number, not ${count}`,
	);
});
