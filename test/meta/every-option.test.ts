import { describe, expect, test } from "vitest";
import { advise } from "../../src/choose/advise.ts";
import { type Judgement, judge } from "../../src/choose/judge.ts";
import type { Answers } from "../../src/parts/answers-file.ts";
import { allQuestions } from "../../src/questions/all-questions.ts";
import type { Question } from "../../src/questions/define-question.ts";
import { foldAnswers } from "../../src/questions/fold-answers.ts";
import { makeSheet } from "../../src/sheet/make-sheet.ts";
import { marketOf } from "../../src/walk/market-of.ts";
import { answered, demoContext, scenarios, valuesFor } from "../choose/demo.ts";

const people = scenarios.map(({ name, file }) => ({ name: name.replace(/\.json$/, ""), file }));

describe.each(people)("walks every question with every option: $name", ({ file }) => {
	const context = { ...demoContext, market: marketOf(demoContext.market, file.parts) };
	const judged = (answers: Answers) => judge(context.market, foldAnswers(answers, context));

	test.each(allQuestions)("$id", (question: Question) => {
		for (const value of valuesFor(question)) {
			const answers = { ...file.answers, [question.id]: answered(value) };
			const judgement = judged(answers);
			const { all, fits, cannotTell, doesNotFit } = judgement.counts;
			expect(all).toBe(context.market.parts.board.length);
			expect(fits + cannotTell + doesNotFit).toBe(all);
			const advice = advise(judgement, answers);
			expect(advice.ranking).toHaveLength(fits + cannotTell);
			const sheet = makeSheet(judgement, advice, answers, context);
			expect(sheet.shortlist.map(({ boardId }) => boardId)).toEqual(advice.shortlist.map(({ boardId }) => boardId));
			expect(sheet.inShort.join(" ")).toMatch(/\S/);
		}
	});

	test.each(allQuestions.filter(({ isWish }) => isWish))("$id: a wish taken back loses no board", ({ id }) => {
		const must = judged({ ...file.answers, [id]: answered("must") });
		for (const weaker of ["would-like", "dont-mind"]) {
			const after = judged({ ...file.answers, [id]: answered(weaker) });
			expect(left(after)).toEqual(expect.arrayContaining(left(must)));
		}
	});
});

const left = ({ boards }: Judgement): string[] =>
	boards.filter(({ verdict }) => verdict !== "does-not-fit").map(({ board }) => board.id);
