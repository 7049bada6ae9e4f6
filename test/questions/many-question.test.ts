import { describe, expect, test } from "vitest";
import type { AnswerValue } from "../../src/parts/answers-file.ts";
import { emptyBuildFacts } from "../../src/parts/build.ts";
import type { LightPlug } from "../../src/parts/wants.ts";
import { type ManyLine, manyQuestion, readLineNumbers } from "../../src/questions/many-question.ts";
import { readTyped } from "../../src/questions/read-typed.ts";
import { contextOf, madeUpWords } from "./made-up-question.ts";

const context = contextOf();
const lines: readonly ManyLine[] = [
	{ value: "strip", label: "Strip", explanation: "Long" },
	{ value: "fan", label: "Lit fan", explanation: "Round", most: 3, group: "Turning" },
	{ value: "pump", label: "Lit pump", explanation: "Wet", most: 2, group: "Turning" },
];
const none = { label: "No lights", explanation: "Dark" };
const lights = manyQuestion({
	...madeUpWords,
	lines,
	none,
	sets: (facts, values) => ({ ...facts, lights: values as readonly LightPlug[] }),
});

test("is a list in which several lines can be marked, asked of everybody unless it says otherwise", () => {
	expect(lights.kind).toBe("many");
	expect(lights.none).toEqual(none);
	expect(lights.applies(emptyBuildFacts)).toBe(true);
	const never = manyQuestion({ ...madeUpWords, lines, none, sets: (facts) => facts, applies: () => false });
	expect(never.applies(emptyBuildFacts)).toBe(false);
});

test("each line's value is a list of its own, with the line's words, heading and how often it can be", () => {
	expect(lights.options(context, emptyBuildFacts)).toEqual([
		{ value: ["strip"], label: "Strip", explanation: "Long" },
		{ value: ["fan"], label: "Lit fan", explanation: "Round", most: 3, group: "Turning" },
		{ value: ["pump"], label: "Lit pump", explanation: "Wet", most: 2, group: "Turning" },
	]);
});

describe("what it expects", () => {
	test.each<[AnswerValue]>([[[]], [["strip"]], [["pump", "strip"]], [["fan", "fan", "fan", "pump", "pump"]]])(
		"%j",
		(value) => {
			expect(lights.expected(value, context)).toBeNull();
		},
	);

	test.each<[string, AnswerValue]>([
		["a line it has not", ["lamp"]],
		["one among others that it has not", ["strip", "lamp"]],
		["a line twice that can be marked once", ["strip", "strip"]],
		["once more than the most", ["fan", "fan", "fan", "fan"]],
		["a word alone", "strip"],
		["a number", 1],
		["a part", { part: "strip" }],
	])("not %s", (_, value) => {
		expect(lights.expected(value, context)).toBe('a list of "strip", "fan", "pump"; [] for none');
	});
});

test.each<[readonly string[], string]>([
	[[], "No lights"],
	[["fan"], "Lit fan"],
	[["fan", "fan", "fan"], "3 x Lit fan"],
	[["fan", "strip", "fan"], "2 x Lit fan, Strip"],
	[["lamp"], "lamp"],
])("%j sets that list, and reads %j", (value, words) => {
	expect(lights.sets(emptyBuildFacts, [...value], context).lights).toEqual(value);
	expect(lights.says([...value], context)).toBe(words);
});

describe("where lines differ from build to build", () => {
	const byBuild = manyQuestion({
		...madeUpWords,
		lines: ({ caseFans }) => lines.slice(0, caseFans ?? 0),
		values: ["strip", "fan", "pump"],
		none,
		says: (values) => `${values.length} lights`,
		sets: (facts) => facts,
	});

	test("it lists those of the build", () => {
		const labels = (caseFans: number | null) =>
			byBuild.options(context, { ...emptyBuildFacts, caseFans }).map(({ label }) => label);
		expect(labels(null)).toEqual([]);
		expect(labels(2)).toEqual(["Strip", "Lit fan"]);
	});

	test("a file may hold any of the values named, each once", () => {
		expect(byBuild.expected(["pump", "strip"], context)).toBeNull();
		expect(byBuild.expected(["fan", "fan"], context)).toMatch(/^a list of /);
		expect(byBuild.expected(["lamp"], context)).toMatch(/^a list of /);
	});

	test("it says a list in its own words, and none in those of its line", () => {
		expect(byBuild.says(["fan", "pump"], context)).toBe("2 lights");
		expect(byBuild.says([], context)).toBe("No lights");
	});
});

describe("numbers of lines, as typed", () => {
	const options = lights.options(context, emptyBuildFacts);

	test.each([
		["1", ["strip"]],
		["1, 3", ["strip", "pump"]],
		["3 1", ["strip", "pump"]],
		["3;1,", ["strip", "pump"]],
		["2,2", ["fan", "fan"]],
		["02", ["fan"]],
		["3, 2, 3", ["fan", "pump", "pump"]],
		["3,3,3,3", ["pump", "pump"]],
		["1 1", ["strip"]],
	])("%j is %j: in the order of the lines, none more often than it can be", (text, value) => {
		expect(readLineNumbers(text, options)).toEqual({ value });
	});

	test.each(["", " , ", "0", "4", "1, 4", "-1", "1.5", "one", "1, x", "1000", "1e0"])("%j is not", (text) => {
		expect(readLineNumbers(text, options)).toEqual({
			problem: "Type numbers from 1 to 3 with commas, such as 1, 3.",
		});
	});

	test("are what a typed line is read as", () => {
		expect(readTyped(lights, " 3, 1 ", context, emptyBuildFacts)).toEqual({ value: ["strip", "pump"] });
		expect(readTyped(lights, "Strip", context, emptyBuildFacts)).toEqual({
			problem: expect.stringContaining("from 1 to 3"),
		});
	});
});
