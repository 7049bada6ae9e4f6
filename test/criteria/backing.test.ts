import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { backing } from "../../src/criteria/backing.ts";
import { piecewiseLinear } from "../../src/maths/piecewise-linear.ts";

type Facts = Record<string, unknown>;
const [warranty, releases, processors, memory] = [
	"board.warrantyYears",
	"board.firmware.releases",
	"board.listsPublished.processors",
	"board.listsPublished.memory",
] as const;
const bothLists = { [processors]: true, [memory]: true };
const asOf = "2026-11-28";
const came = (...dates: string[]) => dates.map((date, index) => ({ version: `F${index}`, date }));
const points = (facts: Facts) => {
	const measure = backing.measure(facts);
	return measure && [measure.low, measure.high].map((value) => Math.round(value * 100) / 100);
};

// Warranty and lists alone count 60 and 15 of 75. Worked out: 80 x value of the warranty + 20.
test.each<[string, Facts, number]>([
	["none at all is none, not unknown", { [warranty]: 0 }, 20],
	["two years", { [warranty]: 2 }, 52],
	["three years", { [warranty]: 3 }, 76],
	["four years lie between", { [warranty]: 4 }, 88],
	["five years", { [warranty]: 5 }, 100],
	["ten are worth no more", { [warranty]: 10 }, 100],
	["ten, kept for eight years", { [warranty]: 10, yearsKept: 8 }, 100],
	["five, kept for eight years", { [warranty]: 5, yearsKept: 8 }, 100],
	["three, kept for eight years", { [warranty]: 3, yearsKept: 8 }, 76],
	["all of the two years it is kept", { [warranty]: 2, yearsKept: 2 }, 100],
	// Two of three years are 10 / 3 of five: 0.7 + 0.15 / 3 = 0.75.
	["two of three years", { [warranty]: 2, yearsKept: 3 }, 80],
])("warranty: %s", (_, facts, worth) => {
	expect(points({ ...bothLists, ...facts })).toEqual([worth, worth]);
});

test.each<[string, Facts, number]>([
	["both", bothLists, 100],
	["one", { [processors]: true, [memory]: false }, 92],
	["none", { [processors]: false, [memory]: false }, 80],
])("lists: %s", (_, facts, worth) => {
	expect(points({ [warranty]: 5, ...facts })).toEqual([worth, worth]);
});

// With all else at its best: 75 + 25 x value of the firmware.
test.each<[string, unknown, number]>([
	["of this month", came("2026-11-01"), 100],
	["of a year ago", came("2025-11-28"), 100],
	["of two years ago", came("2024-11-28"), 95],
	["of three and a half years ago", came("2023-05-28"), 85],
	["of five years ago", came("2021-11-28"), 75],
	["of ten years ago is worth no less", came("2016-11-28"), 75],
	["the last one counts, in whatever order", came("2016-11-28", "2026-10-01", "2019-01-01"), 100],
	["one that comes out tomorrow is new", came("2026-11-29"), 100],
])("firmware %s", (_, list, worth) => {
	expect(points({ ...bothLists, [warranty]: 5, [releases]: list, asOf })).toEqual([worth, worth]);
});

describe("what is not known is a range", () => {
	test.each<[string, Facts, number[], string[]]>([
		["warranty: 2 to 5 years", { ...bothLists }, [52, 100], [warranty]],
		["warranty, kept for two years", { ...bothLists, yearsKept: 2 }, [100, 100], [warranty]],
		["lists", { [warranty]: 5 }, [80, 100], [processors, memory]],
		["one list", { [warranty]: 5, [memory]: true }, [92, 100], [processors]],
		["firmware", { ...bothLists, [warranty]: 5, asOf }, [75, 100], [releases]],
		[
			"versions without a date",
			{ ...bothLists, [warranty]: 5, [releases]: [{ version: "F1" }], asOf },
			[75, 100],
			[releases],
		],
		["nothing", { asOf }, [24, 100], [warranty, releases, processors, memory]],
		["nothing, and no day", {}, [32, 100], [warranty, processors, memory]],
	])("%s", (_, facts, range, missing) => {
		expect(points(facts)).toEqual(range);
		expect(backing.measure(facts)?.missing).toEqual(missing);
	});

	test("finding out never leads out of the range", () => {
		const truth = fc.record({
			[warranty]: fc.integer({ min: 2, max: 5 }),
			[releases]: fc.integer({ min: 2015, max: 2026 }).map((year) => came(`${year}-06-15`)),
			[processors]: fc.boolean(),
			[memory]: fc.boolean(),
		});
		const paths = [warranty, releases, processors, memory];
		const yearsKept = fc.integer({ min: 1, max: 10 });
		fc.assert(
			fc.property(truth, fc.subarray(paths), fc.subarray(paths), yearsKept, (all, some, more, kept) => {
				const knowing = (known: readonly string[]) =>
					backing.measure({
						asOf,
						yearsKept: kept,
						...Object.fromEntries(Object.entries(all).filter(([path]) => known.includes(path))),
					}) ?? { low: 0, high: 0 };
				const [before, after] = [knowing(some), knowing([...some, ...more])];
				expect(after.low).toBeGreaterThanOrEqual(before.low - 1e-9);
				expect(after.high).toBeLessThanOrEqual(before.high + 1e-9);
				const end = knowing(paths);
				expect(end.high - end.low).toBeLessThan(1e-9);
			}),
		);
	});
});

test("its points are its value", () => {
	expect([0, 52, 100].map((value) => piecewiseLinear(backing.scale, value))).toEqual([0, 0.52, 1]);
});

const said = (facts: Facts) => {
	const measure = backing.measure({ ...bothLists, ...facts });
	return measure && backing.says(measure);
};
test.each<[Facts, string]>([
	[{ [warranty]: 5 }, "its warranty covers all the years you want to keep it"],
	[{ [warranty]: 3, yearsKept: 8 }, "its warranty lasts 3 years of the 8 you want to keep it"],
	[{ [warranty]: 1 }, "its warranty lasts 1 year of the 5 you want to keep it"],
	[{}, "how long its warranty lasts is not known"],
	[
		{ [warranty]: 5, [releases]: came("2022-01-31"), asOf, [processors]: false, [memory]: false },
		"its warranty covers all the years you want to keep it; its last firmware came out on 2022-01-31",
	],
	[
		{ [warranty]: 5, [processors]: false, [memory]: false },
		"its warranty covers all the years you want to keep it; its maker publishes no list of what runs",
	],
])("%o in words", (facts, words) => {
	expect(said(facts)).toBe(words);
});

test("where ways differ, in words", () => {
	expect(backing.says({ low: 20, high: 40, missing: [] })).toBe(
		"how its maker stands behind it depends on what is not known",
	);
	expect(backing.says({ low: 40, high: 40, missing: [] })).toBe("its maker stands behind it in part");
});
