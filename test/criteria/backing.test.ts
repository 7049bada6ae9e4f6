import { expect, test } from "vitest";
import { backing } from "../../src/criteria/backing.ts";
import { piecewiseLinear } from "../../src/maths/piecewise-linear.ts";

const warranty = "board.warrantyYears";

test.each<[string, object, { low: number; high: number; missing: string[] }]>([
	["years left open at the end", { [warranty]: 3, yearsKept: 8 }, { low: 5, high: 5, missing: [] }],
	["all years covered, exactly", { [warranty]: 5, yearsKept: 5 }, { low: 0, high: 0, missing: [] }],
	["more than all years is worth no more", { [warranty]: 10, yearsKept: 2 }, { low: 0, high: 0, missing: [] }],
	["none at all is none, not unknown", { [warranty]: 0, yearsKept: 4 }, { low: 4, high: 4, missing: [] }],
	["nobody said how long: five years", { [warranty]: 3 }, { low: 2, high: 2, missing: [] }],
	["the page is silent: two to five years", { yearsKept: 6 }, { low: 1, high: 4, missing: [warranty] }],
	["the page is silent, kept for three", { yearsKept: 3 }, { low: 0, high: 1, missing: [warranty] }],
	["nothing known", {}, { low: 0, high: 3, missing: [warranty] }],
])("%s", (_, facts, measure) => {
	expect(backing.measure(facts as Record<string, unknown>)).toEqual(measure);
});

test.each([
	[0, 1],
	[1, 0.85],
	[2, 0.7],
	[3.5, 0.35],
	[5, 0],
	[20, 0],
])("%f years without warranty are worth %f", (years, value) => {
	expect(piecewiseLinear(backing.scale, years)).toBeCloseTo(value, 12);
});

const exactly = (years: number) => ({ low: years, high: years, missing: [] });
test.each([
	[exactly(0), "its warranty covers all the years you want to keep it"],
	[exactly(1), "1 of the years you want to keep it is without warranty"],
	[exactly(3), "3 of the years you want to keep it are without warranty"],
	[{ low: 0, high: 3, missing: [warranty] }, "how long its warranty lasts is not known"],
])("%o in words", (measure, words) => {
	expect(backing.says(measure)).toBe(words);
});
