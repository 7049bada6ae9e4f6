import { describe, expect, test } from "vitest";
import { advise } from "../../src/choose/advise.ts";
import { type Judgement, judge } from "../../src/choose/judge.ts";
import type { Answers, AnswerValue } from "../../src/parts/answers-file.ts";
import { allQuestions } from "../../src/questions/all-questions.ts";
import type { Question } from "../../src/questions/define-question.ts";
import { foldAnswers } from "../../src/questions/fold-answers.ts";
import { makeSheet } from "../../src/sheet/make-sheet.ts";
import { marketOf } from "../../src/walk/market-of.ts";
import { answered, demoContext, scenarios, valuesFor } from "../choose/demo.ts";

const people = scenarios.map(({ name, file }, index) => ({ name: name.replace(/\.json$/, ""), file, index }));

/** Long lists are dealt out among the people, about three options to each, so that every option meets somebody. */
function dealtTo(index: number, values: readonly AnswerValue[]): readonly AnswerValue[] {
	const step = Math.min(people.length, Math.max(1, Math.floor(values.length / 3)));
	return values.filter((_, at) => at % step === index % step);
}

test("every option is dealt to somebody", () => {
	for (const question of allQuestions) {
		const values = valuesFor(question);
		const dealt = new Set(people.flatMap(({ index }) => dealtTo(index, values)));
		expect(dealt.size, question.id).toBe(values.length);
	}
});

describe.each(people)("walks every question with its options: $name", ({ file, index }) => {
	const context = { ...demoContext, market: marketOf(demoContext.market, file.parts) };
	const judged = (answers: Answers) => judge(context.market, foldAnswers(answers, context));

	test.each(allQuestions)("$id", (question: Question) => {
		for (const value of dealtTo(index, valuesFor(question))) {
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
