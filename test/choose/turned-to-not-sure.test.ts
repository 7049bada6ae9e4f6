import { describe, expect, test } from "vitest";
import { advise } from "../../src/choose/advise.ts";
import { findOut } from "../../src/choose/find-out.ts";
import { judge } from "../../src/choose/judge.ts";
import type { Answers } from "../../src/parts/answers-file.ts";
import { foldAnswers } from "../../src/questions/fold-answers.ts";
import { askedQuestions } from "../../src/questions/is-asked.ts";
import { demo, demoContext, notSure, scenarios } from "./demo.ts";

const people = scenarios.filter(({ name }) =>
	["quiet-desk.json", "showpiece.json", "tight-budget.json"].includes(name),
);

function looked(answers: Answers) {
	const judgement = judge(demo, foldAnswers(answers, demoContext));
	return { judgement, advice: advise(judgement, answers) };
}

describe.each(people)("$name: any answer turned to not sure", ({ file: { answers } }) => {
	const before = looked(answers);
	const turned = Object.keys(answers).filter((id) => answers[id]?.status === "answered");

	test.each(turned)("%s", (id) => {
		const now: Answers = { ...answers, [id]: notSure };
		const { judgement, advice } = looked(now);
		// It is listed as open, if it is still asked: which way the walk goes may hang on it.
		const isAsked = askedQuestions(judgement.build).some((question) => question.id === id);
		const open = findOut(judgement, advice, now).flatMap(({ about }) =>
			about.kind === "question" ? [about.questionId] : [],
		);
		expect(open.includes(id)).toBe(isAsked);
		// Shares are shares of all, and each score lies within its range.
		const shares = advice.shortlist.flatMap(({ firstShare }) => firstShare ?? []);
		for (const share of shares) expect(share).toBeGreaterThanOrEqual(0);
		expect(shares.reduce((sum, share) => sum + share, 0)).toBeLessThanOrEqual(1 + 1e-9);
		for (const { score } of advice.ranking) {
			expect(score.low).toBeLessThanOrEqual(score.mid + 1e-9);
			expect(score.mid).toBeLessThanOrEqual(score.high + 1e-9);
		}
	});

	test("without the processor no score is surer than with it", () => {
		const { advice } = looked({ ...answers, "fit/processor": notSure });
		const width = (boardId: string, all: typeof advice.ranking) => {
			const score = all.find((one) => one.boardId === boardId)?.score;
			return score ? score.high - score.low : null;
		};
		let compared = 0;
		for (const { boardId } of before.advice.ranking) {
			const [then, now] = [width(boardId, before.advice.ranking), width(boardId, advice.ranking)];
			if (then === null || now === null) continue;
			expect(now).toBeGreaterThanOrEqual(then - 1e-9);
			compared++;
		}
		expect(compared).toBe(before.advice.ranking.length);
	});
});
