import { expect, test } from "vitest";
import type { AnswerValue } from "../../src/parts/answers-file.ts";
import { emptyBuildFacts } from "../../src/parts/build.ts";
import { oneQuestion } from "../../src/questions/one-question.ts";
import { contextOf, madeUpWords } from "./made-up-question.ts";

const context = contextOf();
const question = oneQuestion<"few" | "many">({
	...madeUpWords,
	choices: {
		many: { label: "A good many", explanation: "Ten" },
		few: { label: "A few", explanation: "Two" },
	},
	sets: (facts, value) => ({ ...facts, caseFans: value === "few" ? 2 : 10 }),
});

test("lists its choices in the order given", () => {
	expect(question.kind).toBe("one");
	expect(question.options(context, emptyBuildFacts)).toEqual([
		{ value: "many", label: "A good many", explanation: "Ten" },
		{ value: "few", label: "A few", explanation: "Two" },
	]);
});

test.each([
	["few", 2, "A few"],
	["many", 10, "A good many"],
])("%s is taken, sets what it should, and is said by its label", (value, caseFans, words) => {
	expect(question.expected(value, context)).toBeNull();
	expect(question.sets(emptyBuildFacts, value, context)).toEqual({ ...emptyBuildFacts, caseFans });
	expect(question.says(value, context)).toBe(words);
});

test.each<[AnswerValue]>([["Few"], [""], ["toString"], [2], [["few"]], [{ part: "few" }]])("%j is not", (value) => {
	expect(question.expected(value, context)).toBe("one of many, few");
});

test("a choice there no longer is stays as it was written", () => {
	expect(question.says("hundreds", context)).toBe("hundreds");
});

test("is asked of everybody unless it says otherwise", () => {
	expect(question.applies(emptyBuildFacts)).toBe(true);
	const choices = { yes: { label: "Yes", explanation: "So" } };
	const never = oneQuestion({ ...madeUpWords, choices, sets: (facts) => facts, applies: () => false });
	expect(never.applies(emptyBuildFacts)).toBe(false);
});
