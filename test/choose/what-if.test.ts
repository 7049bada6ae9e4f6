import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { advise } from "../../src/choose/advise.ts";
import type { FellOut } from "../../src/choose/fell-out.ts";
import { judge } from "../../src/choose/judge.ts";
import { type WhatIf, whatIf } from "../../src/choose/what-if.ts";
import type { Answer, Answers, AnswerValue } from "../../src/parts/answers-file.ts";
import { allQuestions } from "../../src/questions/all-questions.ts";
import { foldAnswers } from "../../src/questions/fold-answers.ts";
import { answered, anyAnswers, demo, demoContext, scenarios, valuesFor } from "./demo.ts";

const quiet = scenarios.find(({ name }) => name === "quiet-desk.json")?.file.answers ?? {};
const { asOf } = demoContext;
const tried = (questionId: string, value: AnswerValue, answers: Answers = quiet) =>
	whatIf(demo, answers, { questionId, answer: answered(value) }, asOf);
const idsOf = (groups: readonly FellOut[]) =>
	groups.flatMap(({ boards }) => boards.map(({ board }) => board.id)).sort();
const euros = (sum: number) => ({ minor: sum * 100, currency: "EUR" });

describe("one other answer", () => {
	test("less money takes out the boards that cost more, and says by which rule", () => {
		const leader = tried("about/budget", euros(200)).leader.before;
		if (!leader?.price) throw new Error("the quiet desk has a board with a price");
		const { fallOut, comeBack, left, went, leader: lead } = tried("about/budget", euros(leader.price.minor / 100 - 1));
		const dearer = demo.parts.board.filter(
			({ id, price }) => idsOf(fallOut).includes(id) && price && price.minor >= (leader.price?.minor ?? 0),
		);
		expect(fallOut.map(({ ruleId }) => ruleId)).toEqual(["fit/price-cap"]);
		expect(dearer.length).toBe(idsOf(fallOut).length);
		expect(comeBack).toEqual([]);
		expect(left.after).toBe(left.before - dearer.length);
		expect(went).toContainEqual({ ...leader, stoppedBy: "fit/price-cap" });
		expect(lead.after?.boardId).not.toBe(leader.boardId);
	});

	test("more money brings boards back, with what took them out", () => {
		const { comeBack, fallOut } = tried("about/budget", "no-limit", { ...quiet, "about/budget": answered(euros(130)) });
		expect(fallOut).toEqual([]);
		expect(comeBack.map(({ ruleId }) => ruleId)).toContain("fit/price-cap");
	});

	test("the answer already given changes nothing", () => {
		const same = tried("about/budget", quiet["about/budget"]?.value ?? "");
		expect(same).toMatchObject({
			isSame: true,
			counts: true,
			came: [],
			went: [],
			moved: [],
			fallOut: [],
			comeBack: [],
		});
	});

	test("an answer to what makes no sense here counts for nothing", () => {
		const { counts, isSame } = tried("fit/candidates", ["tallowfinch-deckhand", "tallowfinch-helmswoman"]);
		expect({ counts, isSame }).toEqual({ counts: false, isSame: true });
	});

	test("not sure is an answer: what was certain hangs on it, and new questions come up", () => {
		const { after, newlyAsked, isSame } = whatIf(
			demo,
			quiet,
			{ questionId: "fit/processor", answer: { status: "not-sure" } },
			asOf,
		);
		expect(after).toEqual({ status: "not-sure" });
		expect(isSame).toBe(false);
		expect(newlyAsked).toContain("fit/candidates");
	});

	test("questions that hang on the answer are told when they make no more sense", () => {
		expect(tried("fit/bought", []).noLongerAsked).toEqual(["fit/returnable", "fit/return-until"]);
	});

	test("nothing left on either side has no leader", () => {
		const { leader, left } = tried("about/budget", euros(30), { ...quiet, "about/budget": answered(euros(20)) });
		expect(left).toMatchObject({ before: 0, after: 0 });
		expect(leader).toEqual({ before: null, after: null });
	});
});

describe("of any answers", () => {
	const anyChange: fc.Arbitrary<{ questionId: string; answer: Answer }> = fc
		.constantFrom(...allQuestions)
		.chain((question) =>
			fc.record({
				questionId: fc.constant(question.id),
				answer: fc.oneof(
					fc.constantFrom(...valuesFor(question)).map(answered),
					fc.constant<Answer>({ status: "not-sure" }),
				),
			}),
		);
	const anyTrial = fc.tuple(anyAnswers, anyChange);

	test("each side is what the answers by themselves lead to", () => {
		fc.assert(
			fc.property(anyTrial, ([answers, change]) => {
				const { outcomes, shortlists } = whatIf(demo, answers, change, asOf);
				const changed = { ...answers, [change.questionId]: change.answer };
				for (const [given, list, { judgement }] of [
					[answers, shortlists.before, outcomes.before],
					[changed, shortlists.after, outcomes.after],
				] as const) {
					const alone = judge(demo, foldAnswers(given, demoContext));
					const { shortlist } = advise(alone, given);
					expect(judgement.counts).toEqual(alone.counts);
					expect(list.map(({ boardId, role }) => [boardId, role])).toEqual(
						shortlist.map(({ boardId, role }) => [boardId, role]),
					);
				}
			}),
			{ numRuns: 25 },
		);
	});

	test("boards left are those before without those that fall out and with those that come back", () => {
		fc.assert(
			fc.property(anyTrial, ([answers, change]) => {
				const { left, fallOut, comeBack, came, went, shortlists, isSame } = whatIf(demo, answers, change, asOf);
				expect(left.after).toBe(left.before - idsOf(fallOut).length + idsOf(comeBack).length);
				expect(shortlists.after.length).toBe(shortlists.before.length - went.length + came.length);
				for (const { boardId, stoppedBy } of went) expect(idsOf(fallOut).includes(boardId)).toBe(stoppedBy !== null);
				for (const { boardId, stoppedBy } of came) expect(idsOf(comeBack).includes(boardId)).toBe(stoppedBy !== null);
				if (isSame) expect([fallOut, comeBack, came, went]).toEqual([[], [], [], []]);
			}),
			{ numRuns: 40 },
		);
	});

	test("taking the change back turns every difference round", () => {
		fc.assert(
			fc.property(anyTrial, ([answers, change]) => {
				const { questionId, answer } = change;
				const there = whatIf(demo, answers, change, asOf);
				const back = whatIf(
					demo,
					{ ...answers, [questionId]: answer },
					{ questionId, answer: answers[questionId] ?? { status: "not-sure" } },
					asOf,
				);
				const seen = ({ left, came, went, fallOut, comeBack, moved }: WhatIf, isBack: boolean) => {
					const turned = <T>(one: T, other: T) => (isBack ? [other, one] : [one, other]);
					return [
						turned(left.before, left.after),
						turned(came, went),
						turned(idsOf(comeBack), idsOf(fallOut)),
						moved
							.map(({ boardId, before, after }) => [boardId, ...turned(before, after)])
							.sort((one, other) => (String(one[0]) < String(other[0]) ? -1 : 1)),
					];
				};
				expect(seen(back, true)).toEqual(seen(there, false));
				expect(back.isSame).toBe(there.isSame);
			}),
			{ numRuns: 25 },
		);
	});
});
