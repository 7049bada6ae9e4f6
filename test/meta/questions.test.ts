import { readdirSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { describe, expect, test } from "vitest";
import { advise } from "../../src/choose/advise.ts";
import { judge } from "../../src/choose/judge.ts";
import { allCriteria } from "../../src/criteria/all-criteria.ts";
import type { Answer, Answers, OwnPart } from "../../src/parts/answers-file.ts";
import { type BuildFacts, emptyBuildFacts } from "../../src/parts/build.ts";
import { partKindNames } from "../../src/parts/part-kinds.ts";
import { allQuestions } from "../../src/questions/all-questions.ts";
import { foldAnswers } from "../../src/questions/fold-answers.ts";
import { askedQuestions } from "../../src/questions/is-asked.ts";
import { allRules } from "../../src/rules/all-rules.ts";
import { needOf } from "../../src/rules/run-rule.ts";
import { makeSheet } from "../../src/sheet/make-sheet.ts";
import { marketOf } from "../../src/walk/market-of.ts";
import { savedWalk, takeUpWalk } from "../../src/walk/saved-walk.ts";
import { startWalk } from "../../src/walk/walk-state.ts";
import { answered, demoContext, notSure, scenarios, settledFacts, valuesFor } from "../choose/demo.ts";

const folder = fileURLToPath(new URL("../../src/questions", import.meta.url));
/** Folders of questions are named for their tiers; describe/ holds how parts are typed in. */
const files = readdirSync(folder, { recursive: true, encoding: "utf8" })
	.map((path) => path.replaceAll("\\", "/"))
	.filter((path) => path.includes("/") && path.endsWith(".ts") && !path.startsWith("describe/"))
	.map((path) => path.replace(/\.ts$/, ""));

test("every question's file is in the list, and every question in the list has a file of its name", () => {
	expect(allQuestions.map(({ id }) => id).sort()).toEqual(files.sort());
});

test("ids are told apart, also from those that questions formerly had", () => {
	const ids = allQuestions.flatMap(({ id, formerly = [] }) => [id, ...formerly]);
	expect(new Set(ids).size).toBe(ids.length);
});

test("no two ask the same, and no two are called the same in the review", () => {
	for (const key of ["ask", "label"] as const)
		expect(new Set(allQuestions.map((question) => question[key])).size).toBe(allQuestions.length);
});

describe.each(allQuestions)("$id", (question) => {
	const options = question.options(demoContext, settledFacts);

	test("lies in its tier", () => {
		expect(question.id.split("/")[0]).toBe(question.tier);
	});

	test("asks in twelve words or fewer", () => {
		expect(question.ask).toMatch(/^[A-Z].*\?$/);
		expect(question.ask.split(/\s+/).length).toBeLessThanOrEqual(12);
	});

	test("hints in one sentence without a full stop", () => {
		expect(question.hint).toMatch(/^[A-Z].*[^.!]$/);
		expect(question.hint).not.toMatch(/[.!?] [A-Z]/);
	});

	test.each(["why", "whereToFind", "changes", "notSure", "howToFindOut"] as const)("says %s", (key) => {
		expect(question[key]).toMatch(/^[A-Z].*[.?]$/);
	});

	test("has a short statement for the review", () => {
		expect(question.label).toMatch(/^[A-Z].*[^.?]$/);
	});

	test("its options are told apart, explained, and ones it takes", () => {
		expect(new Set(options.map(({ value }) => JSON.stringify(value))).size).toBe(options.length);
		expect(new Set(options.map(({ label }) => label)).size).toBe(options.length);
		for (const { value, label, explanation } of options) {
			expect(question.expected(value, demoContext)).toBeNull();
			expect(label).toMatch(/\S/);
			expect(explanation).toMatch(/^\S.*[^.\s]$/);
			const said = question.says(value, demoContext).toLowerCase();
			// A list is said inside a sentence, or only counted: then one line is one.
			expect(question.kind === "many" ? [label.toLowerCase(), "1"] : [label.toLowerCase()]).toContain(said);
		}
	});

	test("can be answered: by picking or by typing", () => {
		expect(options.length > 0 || question.read !== undefined).toBe(true);
		for (const value of valuesFor(question)) expect(question.expected(value, demoContext)).toBeNull();
	});

	test("does not take what no question takes", () => {
		for (const value of ["", "\u0000", -1, 1e9, ["x"], { part: "" }])
			expect(question.expected(value, demoContext)).toMatch(/\S/);
		if (question.kind !== "many") expect(question.expected([], demoContext)).toMatch(/\S/);
	});

	test("sets something, and only where it is told to", () => {
		const before = structuredClone(emptyBuildFacts);
		for (const [from, unchanged] of [
			[emptyBuildFacts, before],
			[settledFacts, structuredClone(settledFacts)],
		]) {
			const after = valuesFor(question).map((value) => question.sets(from as BuildFacts, value, demoContext));
			expect(from).toEqual(unchanged);
			const changes = after.some((facts) => JSON.stringify(facts) !== JSON.stringify(unchanged));
			// Candidates change nothing themselves: each is a way the open processor may turn out.
			const opens = valuesFor(question).some((value) => (question.alternatives?.(value, demoContext) ?? []).length > 1);
			if (from === settledFacts) expect(changes || opens).toBe(true);
		}
	});

	test("a part question names its kind of part, a number is typed", () => {
		if (question.kind === "part") expect(question.partKind).toBeDefined();
		if (question.partKind) expect(["part", "many"]).toContain(question.kind);
		expect(question.none !== undefined).toBe(question.kind === "many");
		if (question.partKind) expect(partKindNames).toContain(question.partKind);
		if (question.kind === "number") expect(question.read).toBeDefined();
		if (question.isWish) expect(question.kind).toBe("one");
	});

	test("ways to turn out are told apart, and each is one of the values a rule can read", () => {
		const possibilities = question.possibilities?.(demoContext) ?? [];
		expect(new Set(possibilities.map(({ label }) => label)).size).toBe(possibilities.length);
		expect(possibilities.length).not.toBe(1);
		for (const { sets } of possibilities) expect(sets(emptyBuildFacts)).not.toEqual(emptyBuildFacts);
	});
});

/** Somebody who has answered, with the parts they brought. */
interface Person {
	readonly answers: Answers;
	readonly parts: readonly OwnPart[];
}
// Those who have answered most first: what a question does shows soonest there.
const people: readonly Person[] = [...scenarios.map(({ file }) => file), { answers: {}, parts: [] }].sort(
	(one, other) => Object.keys(other.answers).length - Object.keys(one.answers).length,
);
const labels = new Set(allQuestions.map(({ label }) => label));

/**
 * All that an answer can change beside being told itself: verdicts, scores, reasons, findings about the build, what to
 * look for, which questions come, whose the answers are, and every other line of the sheet.
 */
function outcomeOf({ answers, parts }: Person): string {
	const context = { ...demoContext, market: marketOf(demoContext.market, parts) };
	const build = foldAnswers(answers, context);
	const judgement = judge(context.market, build);
	const advice = advise(judgement, answers);
	const { answers: _told, open, ...sheet } = makeSheet(judgement, advice, answers, context);
	return JSON.stringify({
		verdicts: judgement.boards.map(({ verdict, failedRuleIds, dependsOn }) => [verdict, failedRuleIds, dependsOn]),
		ranking: advice.ranking,
		shortlist: advice.shortlist,
		buildFindings: advice.buildFindings,
		needs: build.worlds.map(({ facts }) => allRules.map((rule) => needOf(rule, { facts }))),
		asked: askedQuestions(build).map(({ id }) => id),
		by: takeUpWalk(context, savedWalk(context, startWalk(answers, parts))).state.by,
		sheet,
		open: open.filter(({ what }) => !labels.has(what)),
	});
}

const withAnswer = ({ answers, parts }: Person, id: string, answer: Answer): Person => ({
	answers: { ...answers, [id]: answer },
	parts,
});

test.each(allQuestions)("some answer to $id changes something for somebody", (question) => {
	const given = [notSure, ...valuesFor(question).map(answered)];
	const differ = people.some((person) => {
		const before = outcomeOf(withAnswer(person, question.id, given[0] as Answer));
		return given.slice(1).some((answer) => outcomeOf(withAnswer(person, question.id, answer)) !== before);
	});
	expect(differ).toBe(true);
});

/** Wishes and importance: a few answers, each of which must be worth telling from the others. */
const graded = allQuestions.filter(({ kind }) => kind === "one");
const importanceIds = allQuestions
	.filter((question) => allCriteria.some(({ asks }) => asks === question.ask))
	.map(({ id }) => id);

test.each(graded)("any two answers to $id do something else for somebody", (question) => {
	// Importance counts only beside that of others: one to whom all matters alike must notice any change.
	const alike = Object.fromEntries(importanceIds.map((id) => [id, answered("somewhat")]));
	const everybody = people.flatMap(({ answers, parts }) => [
		{ answers, parts },
		{ answers: { ...answers, ...alike }, parts },
	]);
	const values = valuesFor(question);
	const outcomes = values.map(() => "");
	const toldApart = everybody.some((person) => {
		values.forEach((value, index) => {
			outcomes[index] += outcomeOf(withAnswer(person, question.id, answered(value)));
		});
		return new Set(outcomes).size === outcomes.length;
	});
	expect(toldApart).toBe(true);
});
