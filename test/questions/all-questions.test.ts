import { expect, test } from "vitest";
import { allQuestions, questionById } from "../../src/questions/all-questions.ts";
import { tiers } from "../../src/questions/define-question.ts";

test.each(allQuestions)("$id is found by its id and by those it formerly had", (question) => {
	for (const id of [question.id, ...(question.formerly ?? [])]) expect(questionById(id)).toBe(question);
});

test.each(["", "fit/nothing", "constructor"])("no question is called %j", (id) => {
	expect(questionById(id)).toBeUndefined();
});

test("they are asked tier by tier", () => {
	const order = allQuestions.map(({ tier }) => tiers.indexOf(tier));
	expect(order).toEqual([...order].sort((one, other) => one - other));
});
