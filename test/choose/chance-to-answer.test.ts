import { expect, test } from "vitest";
import { chanceToAnswer } from "../../src/choose/chance-to-answer.ts";
import type { Answers } from "../../src/parts/answers-file.ts";
import { allQuestions, questionById } from "../../src/questions/all-questions.ts";
import type { Question } from "../../src/questions/define-question.ts";
import { answered, notSure } from "./demo.ts";

const the = (id: string) => questionById(id) as Question;
const many = (count: number, answer: Answers[string]): Answers =>
	Object.fromEntries(allQuestions.slice(0, count).map(({ id }) => [id, answer]));

test("a taste is told more often than a part, a part than a count, a count than a detail of a page", () => {
	const chances = ["features/colour", "fit/case", "features/case-fans", "fit/front-plugs"].map((id) =>
		chanceToAnswer(the(id), {}),
	);
	expect(chances).toEqual([0.95, 0.85, 0.75, 0.6]);
	expect(allQuestions.every((question) => chanceToAnswer(question, {}) >= 0.6)).toBe(true);
});

test("falls with each answer that is not sure, and with no other", () => {
	const question = the("fit/case");
	const before = chanceToAnswer(question, {});
	expect(chanceToAnswer(question, many(8, answered("x")))).toBe(before);
	expect(chanceToAnswer(question, many(8, { status: "skipped" }))).toBe(before);
	// Worked out: 4 usual answers of 4 + 4 dealt with.
	expect(chanceToAnswer(question, many(4, notSure))).toBeCloseTo(before / 2, 12);
	expect(chanceToAnswer(question, many(40, notSure))).toBeGreaterThan(0);
});
