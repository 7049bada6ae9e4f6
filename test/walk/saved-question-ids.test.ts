import { expect, test } from "vitest";
import { allQuestions } from "../../src/questions/all-questions.ts";
import { withTodaysIds } from "../../src/walk/saved-question-ids.ts";
import { proposed } from "./coached-walks.ts";
import { scenarios } from "./walk-in-demo.ts";

const idOf = (id: string) => (id === "quality/calm" ? "about/quiet" : id.startsWith("no/") ? undefined : id);
const [{ file } = { file: null }] = scenarios;
if (!file) throw new Error("no scenario");
const calm = { status: "answered", value: "a-lot", by: "builder" } as const;

test("an answer and a suggestion under the id that a question had before stand under today's", () => {
	const old = {
		...file,
		answers: { "about/budget": { status: "not-sure" as const }, "quality/calm": calm, "no/such": calm },
		suggestions: [proposed("quality/calm", "a-little"), proposed("about/budget", "no-limit")],
	};
	const today = withTodaysIds(old, idOf);
	// In the order in which they were given: a short walk goes through them so.
	expect(Object.entries(today.answers)).toEqual([
		["about/budget", { status: "not-sure" }],
		["about/quiet", calm],
		["no/such", calm],
	]);
	expect(today.suggestions?.map(({ questionId }) => questionId)).toEqual(["about/quiet", "about/budget"]);
});

test("where both are answered, today's id counts", () => {
	const both = { ...file, answers: { "quality/calm": calm, "about/quiet": { status: "not-sure" as const } } };
	expect(withTodaysIds(both, idOf).answers).toEqual({ "about/quiet": { status: "not-sure" } });
});

test("a file of today stays as it is", () => {
	for (const scenario of scenarios) expect(withTodaysIds(scenario.file)).toBe(scenario.file);
	for (const { id, formerly = [] } of allQuestions)
		for (const old of formerly)
			expect(withTodaysIds({ ...file, answers: { [old]: calm } }).answers).toEqual({ [id]: calm });
});
