import { expect, test } from "vitest";
import { seededDraws } from "../../src/maths/seeded-draws.ts";
import { chiSquareOfTenths, many } from "./draw-checks.ts";

test("a seed gives the same numbers each time, another seed others", () => {
	expect(many(seededDraws(7), 50)).toEqual(many(seededDraws(7), 50));
	expect(many(seededDraws(7), 50)).not.toEqual(many(seededDraws(8), 50));
});

test("two generators do not take numbers from each other", () => {
	const [one, other] = [seededDraws(7), seededDraws(7)];
	many(one, 10);
	expect(other()).toBe(seededDraws(7)());
});

test("numbers lie from 0 to below 1, and as many in each tenth", () => {
	const draws = many(seededDraws(20_261_128), 20_000);
	expect(Math.min(...draws)).toBeGreaterThanOrEqual(0);
	expect(Math.max(...draws)).toBeLessThan(1);
	expect(chiSquareOfTenths(draws)).toBeLessThan(33.7);
});

// Without the draws that are thrown away, the first is close to 1 for each of these seeds, and the second has a pattern.
test.each([0, 1, 2])("over small seeds, draw %i is spread evenly", (place) => {
	const draws = many((seed) => many(seededDraws(seed), 3)[place] as number, 5000);
	expect(chiSquareOfTenths(draws)).toBeLessThan(33.7);
});

test.each([Number.NaN, 0.5, 2 ** 32, -(2 ** 31) - 1, Number.POSITIVE_INFINITY, undefined as unknown as number])(
	"refuses the seed %s, and never takes one by itself",
	(seed) => {
		expect(() => seededDraws(seed)).toThrow(`a seed must be a whole number of 32 bits, not ${seed}`);
	},
);
