import { expect, test } from "vitest";
import { nextQuestion } from "../../src/choose/next-question.ts";
import type { Answers } from "../../src/parts/answers-file.ts";
import { allQuestions } from "../../src/questions/all-questions.ts";
import { notSure } from "./demo.ts";
import { buildOf } from "./small-market.ts";

const build = buildOf({});
const all: Answers = Object.fromEntries(allQuestions.map(({ id }) => [id, notSure]));

test("the first that nobody has dealt with", () => {
	expect(nextQuestion({}, build)).toBe(allQuestions[0]?.id);
	const { [allQuestions[3]?.id ?? ""]: _, [allQuestions[5]?.id ?? ""]: __, ...rest } = all;
	expect(nextQuestion(rest, build)).toBe(allQuestions[3]?.id);
});

test("not sure and skipped are dealt with", () => {
	expect(nextQuestion(all, build)).toBeNull();
	expect(nextQuestion({ ...all, "fit/case": { status: "skipped" } }, build)).toBeNull();
});
