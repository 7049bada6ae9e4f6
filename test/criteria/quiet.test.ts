import { expect, test } from "vitest";
import { quiet } from "../../src/criteria/quiet.ts";
import { piecewiseLinear } from "../../src/maths/piecewise-linear.ts";

const [fan, headers] = ["board.chipsetFan", "board.headers.fans"] as const;
const plug = (control?: readonly string[], use = "case") => ({ name: "A", use, ...(control ? { control } : {}) });
const both = plug(["4-pin PWM", "3-pin voltage"]);
const one = plug(["4-pin PWM"]);
const silent = plug();

test.each<[string, object, { low: number; high: number; missing: string[] }]>([
	["nothing that whines", { [fan]: false, [headers]: [both, both] }, { low: 0, high: 0, missing: [] }],
	["a fan of its own", { [fan]: true, [headers]: [both] }, { low: 1, high: 1, missing: [] }],
	["a plug that slows one kind only", { [fan]: false, [headers]: [both, one] }, { low: 0.5, high: 0.5, missing: [] }],
	["a plug that slows none", { [fan]: false, [headers]: [plug([])] }, { low: 0.5, high: 0.5, missing: [] }],
	["several such plugs count once", { [fan]: false, [headers]: [one, one, one] }, { low: 0.5, high: 0.5, missing: [] }],
	["both", { [fan]: true, [headers]: [one] }, { low: 1.5, high: 1.5, missing: [] }],
	[
		"plugs for the processor and for a pump have nothing to do with it",
		{ [fan]: false, [headers]: [both, plug(["4-pin PWM"], "processor"), plug(undefined, "pump")] },
		{ low: 0, high: 0, missing: [] },
	],
	[
		"a plug of which nothing is known",
		{ [fan]: false, [headers]: [both, silent] },
		{ low: 0, high: 0.5, missing: [headers] },
	],
	[
		"one bad plug settles it, whatever the other",
		{ [fan]: false, [headers]: [one, silent] },
		{ low: 0.5, high: 0.5, missing: [] },
	],
	["plugs not known", { [fan]: true }, { low: 1, high: 1.5, missing: [headers] }],
	["the fan not known", { [headers]: [one] }, { low: 0.5, high: 1.5, missing: [fan] }],
	["nothing known", {}, { low: 0, high: 1.5, missing: [fan, headers] }],
])("%s", (_, facts, measure) => {
	expect(quiet.measure(facts as Record<string, unknown>)).toEqual(measure);
});

test.each([
	[0, 1],
	[0.5, 0.85],
	[1, 0.425],
	[1.5, 0],
	[9, 0],
])("%f noisy things are worth %f", (things, value) => {
	expect(piecewiseLinear(quiet.scale, things)).toBeCloseTo(value, 12);
});

const measure = (low: number, high = low) => ({ low, high, missing: [] });
test.each([
	[measure(0), "it has no fan of its own, and its fan headers can slow every fan"],
	[measure(0.5), "some of its fan headers cannot slow every kind of fan"],
	[measure(0, 0.5), "how its fan headers slow fans is not known"],
	[measure(0, 1.5), "whether it has a small fan of its own is not known"],
	[measure(0.5, 1.5), "whether it has a small fan of its own is not known"],
	[measure(1), "it has a small fan of its own, which is heard all day"],
	[measure(1, 1.5), "it has a small fan of its own, which is heard all day"],
])("%o in words", (given, words) => {
	expect(quiet.says(given)).toBe(words);
});
