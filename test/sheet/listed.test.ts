import { expect, test } from "vitest";
import { listed, numbered, withCounts, withRuns } from "../../src/sheet/listed.ts";

test.each([
	[[], ""],
	[["S5"], "S5"],
	[["S5", "S6"], "S5 and S6"],
	[["S5", "S6", "S7"], "S5, S6 and S7"],
	[["S5", "S6", "S7", "M2"], "S5, S6, S7 and M2"],
])("%j is listed as %j", (names, words) => {
	expect(listed(names)).toBe(words);
});

test.each([
	["nothing", [], []],
	["one", ["S1"], ["S1"]],
	["two in a row stay two", ["S1", "S2"], ["S1", "S2"]],
	["three in a row are one", ["S1", "S2", "S3"], ["S1 to S3"]],
	["a gap ends a run", ["S1", "S2", "S3", "S5", "S6", "S7"], ["S1 to S3", "S5 to S7"]],
	["another stem ends a run", ["S1", "S2", "S3", "X4"], ["S1 to S3", "X4"]],
	["from nine to ten", ["S8", "S9", "S10"], ["S8 to S10"]],
	["names with a space", ["older drive 1", "older drive 2", "older drive 3"], ["older drives 1 to 3"]],
	["names with a space, two in a row", ["case fan 1", "case fan 2"], ["case fan 1", "case fan 2"]],
	[
		"names with a space, one run after the other",
		["pump 1", "pump 2", "pump 3", "case fan 1", "case fan 2", "case fan 3"],
		["pumps 1 to 3", "case fans 1 to 3"],
	],
	["the board's own name stands whole, spaces in it or not", ["M 2_1", "M 2_2", "M 2_3"], ["M 2_1 to M 2_3"]],
	["the number before the last one is part of the stem", ["M2_1", "M2_2", "M3_3"], ["M2_1", "M2_2", "M3_3"]],
	["down is no run", ["S3", "S2", "S1"], ["S3", "S2", "S1"]],
	["twice the same is no run", ["S1", "S1", "S1"], ["S1", "S1", "S1"]],
	["names without a number", ["Dart", "Mouse", "Owl"], ["Dart", "Mouse", "Owl"]],
	["a number and more after it", ["S1 (x2)", "S2 (x2)", "S3 (x2)"], ["S1 (x2)", "S2 (x2)", "S3 (x2)"]],
] as const)("runs: %s", (_, names, runs) => {
	expect(withRuns(names)).toEqual(runs);
});

test.each([
	["SATA_12", { stem: "SATA_", number: 12 }],
	["7", { stem: "", number: 7 }],
	["S007", { stem: "S", number: 7 }],
	["SLOT", null],
	["", null],
	["S1 ", null],
])("the number of %j", (name, result) => {
	expect(numbered(name)).toEqual(result);
});

test("a number longer than nine digits keeps its first ones in the stem, so that it stays exact", () => {
	expect(numbered("S12345678901234567890")).toEqual({ stem: "S12345678901", number: 234567890 });
});

test("names that stand several times stand once, with their number", () => {
	expect(withCounts([])).toEqual([]);
	expect(withCounts(["Brick", "Loaf", "Brick", "Brick"])).toEqual(["Brick (3)", "Loaf"]);
});
