import { describe, expect, test } from "vitest";
import type { AnswerValue } from "../../src/parts/answers-file.ts";
import { emptyBuildFacts } from "../../src/parts/build.ts";
import { partsOf, partsQuestion } from "../../src/questions/parts-question.ts";
import { contextOf, madeUpWords } from "./made-up-question.ts";

const stick = { id: "acorn-stick", name: "Acorn Stick", shape: "M.2", link: "PCI Express", gb: 1000 } as const;
const box = { id: "acorn-box", name: "Acorn Box", shape: "2.5 inch", link: "SATA" } as const;
const long = { id: "acorn-long", name: "Acorn Long", shape: "M.2", lengthMm: 110 } as const;
const bare = { id: "acorn-bare", name: "Acorn Bare" };
const context = contextOf({
	drives: [stick, box, long, bare],
	addInCards: [{ id: "an-ear", name: "An Ear", use: "sound" }],
});
const drives = partsQuestion({
	...madeUpWords,
	partKind: "drive",
	none: { label: "No drives", explanation: "None" },
	mostOfOne: 2,
	most: 4,
	sets: (facts, parts) => ({ ...facts, drives: parts }),
});

test("lists the market's parts of its kind, those under one heading together", () => {
	expect(drives).toMatchObject({ kind: "many", partKind: "drive", none: { label: "No drives" } });
	expect(drives.options(context, emptyBuildFacts)).toEqual([
		{
			value: ["acorn-stick"],
			label: "Acorn Stick",
			explanation: "M.2 stick, fast (NVMe), 1 TB",
			most: 2,
			group: "Sticks (M.2)",
		},
		{ value: ["acorn-long"], label: "Acorn Long", explanation: "M.2 stick of 110 mm", most: 2, group: "Sticks (M.2)" },
		{
			value: ["acorn-box"],
			label: "Acorn Box",
			explanation: "2.5 inch drive, SATA",
			most: 2,
			group: "Drives of 2.5 inch",
		},
		{ value: ["acorn-bare"], label: "Acorn Bare", explanation: "", most: 2, group: "Shape not known" },
	]);
	expect(drives.options(contextOf(), emptyBuildFacts)).toEqual([]);
});

test("a kind without headings has none", () => {
	const cards = partsQuestion({
		...madeUpWords,
		partKind: "addInCard",
		none: { label: "No cards", explanation: "None" },
		mostOfOne: 1,
		most: 4,
		sets: (facts, parts) => ({ ...facts, addInCards: parts }),
	});
	expect(cards.options(context, emptyBuildFacts)).toEqual([
		{ value: ["an-ear"], label: "An Ear", explanation: "sound", most: 1 },
	]);
});

describe("what it expects", () => {
	test.each<[AnswerValue]>([
		[[]],
		[["acorn-box"]],
		[["acorn-stick", "acorn-stick"]],
		[["acorn-stick", "acorn-box", "acorn-stick", "acorn-box"]],
	])("%j", (value) => {
		expect(drives.expected(value, context)).toBeNull();
	});

	test.each<[string, AnswerValue]>([
		["a part there is not", ["acorn-stick", "walnut-stick"]],
		["a part of another kind", ["an-ear"]],
		["one of them more often than there may be", ["acorn-box", "acorn-box", "acorn-box"]],
	])("not %s", (_, value) => {
		expect(drives.expected(value, context)).toBe("a list of ids of the market, the same drive 2 times at most");
	});

	test.each<[string, AnswerValue]>([
		["a word", "acorn-stick"],
		["one part on its own", { part: "acorn-stick" }],
		["a number", 2],
	])("not %s", (_, value) => {
		expect(drives.expected(value, context)).toBe("a list of ids, one a drive");
	});

	test("not more than there may be in all", () => {
		const five = ["acorn-stick", "acorn-stick", "acorn-box", "acorn-box", "acorn-long"];
		expect(drives.expected(five, context)).toBe("4 lines at most");
	});
});

test("sets the parts themselves, in the order of the list, the same one twice for two", () => {
	const value = ["acorn-box", "acorn-stick", "acorn-box"];
	expect(drives.sets(emptyBuildFacts, value, context)).toEqual({ ...emptyBuildFacts, drives: [box, stick, box] });
	expect(drives.sets(emptyBuildFacts, [], context).drives).toEqual([]);
});

test("a part gone from the market is left out", () => {
	expect(partsOf("drive", ["walnut-stick", "acorn-bare"], context)).toEqual([bare]);
});

test.each<[readonly string[], string]>([
	[[], "No drives"],
	[["acorn-box"], "Acorn Box"],
	[["acorn-box", "acorn-stick", "acorn-box"], "2 x Acorn Box, Acorn Stick"],
	[["walnut-stick"], "walnut-stick"],
])("%j in words: %s", (value, words) => {
	expect(drives.says([...value], context)).toBe(words);
});

test("is asked of everybody unless it says otherwise", () => {
	expect(drives.applies(emptyBuildFacts)).toBe(true);
	const { none, mostOfOne, most } = { none: { label: "None", explanation: "No" }, mostOfOne: 1, most: 1 };
	const never = partsQuestion({
		...madeUpWords,
		...{ partKind: "processor", none, mostOfOne, most },
		sets: (facts) => facts,
		applies: () => false,
	});
	expect(never.applies(emptyBuildFacts)).toBe(false);
});
