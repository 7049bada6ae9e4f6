import { describe, expect, test } from "vitest";
import { judge } from "../../../src/choose/judge.ts";
import type { Answers } from "../../../src/parts/answers-file.ts";
import { emptyBuildFacts } from "../../../src/parts/build.ts";
import { candidates } from "../../../src/questions/fit/candidates.ts";
import { foldAnswers } from "../../../src/questions/fold-answers.ts";
import { buildFacts } from "../../rules/rule-subject.ts";
import { contextOf } from "../made-up-question.ts";

const processors = ["one", "two", "three", "four", "five"].map((id, index) => ({
	id,
	name: `Number ${id}`,
	socket: index === 1 ? "Harbour 2" : "Kettle 7",
}));
const [one, two, three] = processors;
const boards = [
	{ id: "kettle", name: "Kettle", socket: "Kettle 7" },
	{ id: "harbour", name: "Harbour", socket: "Harbour 2" },
	{ id: "orchard", name: "Orchard", socket: "Orchard 5" },
];
const context = contextOf({ processors, boards });
const marked = (...ids: string[]): Answers => ({ "fit/candidates": { status: "answered", value: ids } });
const planned = (part: object | undefined) => ({ state: "have", ownership: "planned", part });

test("is asked only while no processor is settled", () => {
	expect(candidates.applies(emptyBuildFacts)).toBe(true);
	expect(candidates.applies(buildFacts({ processor: { socket: "Kettle 7" } }))).toBe(false);
	expect(candidates.applies(buildFacts({ processor: "open" }))).toBe(false);
});

test("takes up to four, none of them twice", () => {
	expect(candidates.expected(["one", "two", "three", "four"], context)).toBeNull();
	expect(candidates.expected([], context)).toBeNull();
	expect(candidates.expected(["one", "two", "three", "four", "five"], context)).toContain("4 lines at most");
	expect(candidates.expected(["one", "one"], context)).toMatch(/\S/);
});

describe("several", () => {
	test("each is one way the processor may turn out, and the build itself knows none", () => {
		const { facts, worlds } = foldAnswers(marked("three", "two"), context);
		expect(facts).toEqual({ ...emptyBuildFacts, asOf: context.asOf });
		const ofProcessors = worlds.filter(({ choices }) =>
			choices.some(({ questionId }) => questionId === "fit/candidates"),
		);
		expect(ofProcessors).toEqual(worlds);
		const seen = new Map(
			worlds.map((world) => [
				world.choices.find(({ questionId }) => questionId === "fit/candidates")?.label,
				world.facts.processor,
			]),
		);
		expect(seen).toEqual(
			new Map([
				["Number three", planned(three)],
				["Number two", planned(two)],
			]),
		);
	});

	test("a board that suits one of them depends on which, one that suits none is out", () => {
		const verdicts = (...ids: string[]) =>
			judge(context.market, foldAnswers(marked(...ids), context)).boards.map(({ failedRuleIds, depending }) => [
				failedRuleIds.includes("fit/socket"),
				depending.filter(({ ruleId }) => ruleId === "fit/socket"),
			]);
		const on = (fitsWith: string, notWith: string) => [
			{ ruleId: "fit/socket", questionId: "fit/candidates", fitsWith: [fitsWith], notWith: [notWith] },
		];
		expect(verdicts("one", "two")).toEqual([
			[false, on("Number one", "Number two")],
			[false, on("Number two", "Number one")],
			[true, []],
		]);
		expect(verdicts("one", "three")).toEqual([
			[false, []],
			[true, []],
			[true, []],
		]);
	});
});

test("one alone is the processor that is planned, and nothing stays open about it", () => {
	const { facts, worlds } = foldAnswers(marked("one"), context);
	expect(facts).toEqual({ ...emptyBuildFacts, asOf: context.asOf, processor: planned(one) });
	expect(worlds.flatMap(({ choices }) => choices.map(({ questionId }) => questionId))).not.toContain("fit/candidates");
});

test("none leaves all as it was", () => {
	expect(foldAnswers(marked(), context)).toEqual(foldAnswers({}, context));
	expect(candidates.says([], context)).toBe("No idea yet");
});

test("more than four, or one there is not, count as not sure", () => {
	for (const ids of [
		["one", "two", "three", "four", "five"],
		["one", "six"],
	])
		expect(foldAnswers(marked(...ids), context)).toEqual(foldAnswers({}, context));
});

test("count for nothing once a processor is settled", () => {
	const settled: Answers = { "fit/processor": { status: "answered", value: { part: "two" } } };
	expect(foldAnswers({ ...settled, ...marked("one", "three") }, context)).toEqual(foldAnswers(settled, context));
});

test("are said by name, with commas", () => {
	expect(candidates.says(["two", "one"], context)).toBe("Number two, Number one");
});
