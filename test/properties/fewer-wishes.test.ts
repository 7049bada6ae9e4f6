import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type BoardJudgement, type Judgement, judge } from "../../src/choose/judge.ts";
import type { Answer, Answers } from "../../src/parts/answers-file.ts";
import type { BuildFacts } from "../../src/parts/build.ts";
import type { Market } from "../../src/parts/market.ts";
import { allQuestions } from "../../src/questions/all-questions.ts";
import { foldAnswers } from "../../src/questions/fold-answers.ts";
import type { Verdict } from "../../src/rules/outcome.ts";
import { anyWayToAskLess, inEveryWorld } from "../choose/made-up-builds.ts";
import { answered, anyAnswersIn, asOf } from "./any-answers.ts";
import { anyMarket, withBoards } from "./any-market.ts";
import { runs } from "./runs.ts";

const judged = (market: Market, answers: Answers): Judgement => judge(market, foldAnswers(answers, { market, asOf }));
const rank: Readonly<Record<Verdict, number>> = { "does-not-fit": 0, "cannot-tell": 1, fits: 2 };

/**
 * No board does worse: one that fits still does, one that may still may, and every way in which it may is one still.
 * The boards that are not out are then those before and perhaps more.
 */
function expectNoneLost(before: readonly BoardJudgement[], after: readonly BoardJudgement[], what: string): void {
	before.forEach((was, index) => {
		const is = after[index];
		expect(is?.board.id).toBe(was.board.id);
		expect(rank[is?.verdict ?? "does-not-fit"], `${was.board.id}, ${what}`).toBeGreaterThanOrEqual(rank[was.verdict]);
		expect(is?.possibleWorlds, `${was.board.id}, ${what}`).toEqual(expect.arrayContaining([...was.possibleWorlds]));
	});
}

/** From the most that can be asked to nothing said. */
const steps: readonly (Answer | null)[] = [
	answered("must"),
	answered("would-like"),
	answered("dont-mind"),
	{ status: "not-sure" },
	{ status: "skipped" },
	null,
];
const wishIds = allQuestions.filter(({ isWish }) => isWish).map(({ id }) => id);

function withAnswer(given: Answers, id: string, answer: Answer | null): Answers {
	const { [id]: _, ...others } = given;
	return answer ? { ...others, [id]: answer } : others;
}

describe("a wish that is weakened or gone loses no board of any market", () => {
	test.each(wishIds)("%s: must, would like, don't mind, not sure, nothing said", (id) => {
		fc.assert(
			fc.property(anyAnswersIn(anyMarket()), ({ market, answers }) => {
				const judgements = steps.map((answer) => judged(market, withAnswer(answers, id, answer)));
				for (const [index, before] of judgements.entries())
					for (const [further, after] of judgements.slice(index + 1).entries())
						expectNoneLost(before.boards, after.boards, `${id}: step ${index} to ${index + 1 + further}`);
			}),
			runs(6),
		);
	});

	test("wishes do take boards out of such markets, so that there is something to lose", () => {
		let lost = 0;
		for (const { market, answers } of fc.sample(anyAnswersIn(anyMarket()), { numRuns: 40, seed: 5 })) {
			const asked = (answer: Answer) => wishIds.reduce((all, id) => withAnswer(all, id, answer), answers);
			const [most, least] = [answered("must"), answered("dont-mind")].map((one) => judged(market, asked(one)));
			if (!most || !least) throw new Error("unreachable");
			lost += least.boards.filter(({ verdict }, index) => verdict !== most.boards[index]?.verdict).length;
		}
		expect(lost).toBeGreaterThan(3);
	});
});

test("nor does anything else that is asked for less: limits, things to plug in, musts", () => {
	fc.assert(
		fc.property(anyAnswersIn(anyMarket()), anyWayToAskLess, ({ market, answers }, less) => {
			const build = foldAnswers(answers, { market, asOf });
			const steps = less(build.facts);
			const change = (facts: BuildFacts) => steps.reduce((left, step) => step.change(left), facts);
			const fresh = withBoards(market, market.parts.board);
			const after = judge(fresh, inEveryWorld(build, change));
			expectNoneLost(judge(market, build).boards, after.boards, steps.map(({ what }) => what).join("; "));
		}),
		runs(40),
	);
});
