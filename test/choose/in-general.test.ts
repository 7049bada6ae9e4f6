import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { advise } from "../../src/choose/advise.ts";
import { fellOut, fellOutBetween } from "../../src/choose/fell-out.ts";
import { type BoardJudgement, type Judgement, judge } from "../../src/choose/judge.ts";
import { waysOut } from "../../src/choose/ways-out.ts";
import type { Answers, AnswerValue } from "../../src/parts/answers-file.ts";
import type { Market } from "../../src/parts/market.ts";
import { allQuestions } from "../../src/questions/all-questions.ts";
import type { Question } from "../../src/questions/define-question.ts";
import { foldAnswers } from "../../src/questions/fold-answers.ts";
import { allRules } from "../../src/rules/all-rules.ts";
import { runRule } from "../../src/rules/run-rule.ts";
import { answered, anyAnswers, anyMarket, demo, demoContext, scenarios, valuesFor } from "./demo.ts";

const judgeFor = (market: Market, answers: Answers) =>
	judge(market, foldAnswers(answers, { ...demoContext, market: demo }));
const verdicts = ({ boards }: Judgement) => new Map(boards.map(({ board, verdict }) => [board.id, verdict]));
const left = ({ boards }: Judgement) =>
	boards.filter(({ verdict }) => verdict !== "does-not-fit").map(({ board }) => board.id);
const boardRules = allRules.filter(({ scope }) => scope === "board");

/** The others can only caution: not knowing what they ask makes no board uncertain. */
const stopping = new Set(boardRules.filter(({ severity }) => severity === "stops").map(({ id }) => id));

/** Each run judges the whole market. */
const runs = { numRuns: 40 };

test("the people of data/scenarios are judged as any others", () => {
	for (const { file } of scenarios) expect(judgeFor(demo, file.answers).counts.all).toBe(demo.parts.board.length);
});

test("what follows is tried on boards of every verdict", () => {
	const seen = new Set(fc.sample(anyAnswers, 60).flatMap((answers) => [...verdicts(judgeFor(demo, answers)).values()]));
	expect(seen.size).toBe(3);
});

/** What each rule says in each world, asked one by one. */
function failedByWorld({ subject }: BoardJudgement, { build }: Judgement) {
	return build.worlds.map(({ facts }) => {
		const findings = boardRules.map((rule) => runRule(rule, { ...subject, facts }));
		return {
			failed: findings.filter(({ verdict }) => verdict === "does-not-fit").map(({ ruleId }) => ruleId),
			isCertain: findings.every(({ verdict, ruleId }) => verdict === "fits" || !stopping.has(ruleId)),
		};
	});
}

test("verdicts are what asking every rule in every world one by one gives", () => {
	fc.assert(
		fc.property(anyMarket, anyAnswers, (market, answers) => {
			const judgement = judgeFor(market, answers);
			for (const judged of judgement.boards) {
				const worlds = failedByWorld(judged, judgement);
				const possible = worlds.flatMap(({ failed }, index) => (failed.length === 0 ? [index] : []));
				const isCertain = worlds.every((world) => world.isCertain);
				expect(judged.possibleWorlds).toEqual(possible);
				expect(judged.verdict).toBe(possible.length === 0 ? "does-not-fit" : isCertain ? "fits" : "cannot-tell");
				for (const id of judged.failedRuleIds) expect(worlds.some(({ failed }) => failed.includes(id))).toBe(true);
				for (const { ruleId, questionId, fitsWith, notWith } of judged.depending)
					judgement.build.worlds.forEach(({ choices, facts }) => {
						const label = choices.find((choice) => choice.questionId === questionId)?.label ?? "";
						const rule = boardRules.find(({ id }) => id === ruleId);
						const verdict = rule && runRule(rule, { ...judged.subject, facts }).verdict;
						if (fitsWith.includes(label)) expect(verdict).toBe("fits");
						if (notWith.includes(label)) expect(verdict).toBe("does-not-fit");
					});
			}
		}),
		runs,
	);
});

test("counts add up, and the shortlist is of boards that are left", () => {
	fc.assert(
		fc.property(anyMarket, anyAnswers, (market, answers) => {
			const judgement = judgeFor(market, answers);
			const { all, fits, cannotTell, doesNotFit } = judgement.counts;
			expect(fits + cannotTell + doesNotFit).toBe(all);
			expect(all).toBe(market.parts.board.length);
			expect(fellOut(judgement).flatMap(({ boards }) => boards)).toHaveLength(doesNotFit);
			const { shortlist, ranking } = advise(judgement, answers);
			expect(ranking.map(({ boardId }) => boardId).sort()).toEqual(left(judgement).sort());
			const listed = shortlist.map(({ boardId }) => boardId);
			expect(new Set(listed).size).toBe(listed.length);
			for (const id of listed) expect(left(judgement)).toContain(id);
			expect(shortlist.length > 0).toBe(left(judgement).length > 0);
			if (fits > 0) {
				expect(shortlist[0]).toMatchObject({ role: "best-match", verdict: "fits" });
				for (const { role, verdict } of shortlist) expect(verdict === "fits").toBe(role !== "check-first");
			}
		}),
		runs,
	);
});

test("the order of the boards changes nothing", () => {
	fc.assert(
		fc.property(
			anyAnswers,
			fc.shuffledSubarray([...demo.parts.board], { minLength: demo.parts.board.length }),
			(answers, board) => {
				const [one, other] = [demo, { ...demo, parts: { ...demo.parts, board } }].map((market) =>
					judgeFor(market, answers),
				);
				if (!one || !other) throw new Error("unreachable");
				expect(new Map([...verdicts(other)].sort())).toEqual(new Map([...verdicts(one)].sort()));
				const [advice, otherAdvice] = [advise(one, answers), advise(other, answers)];
				expect(otherAdvice.shortlist).toEqual(advice.shortlist);
				expect(otherAdvice.ranking).toEqual(advice.ranking);
				expect(otherAdvice.waysOut.map(({ giveUp, boardIds }) => [giveUp, [...boardIds].sort()])).toEqual(
					advice.waysOut.map(({ giveUp, boardIds }) => [giveUp, [...boardIds].sort()]),
				);
			},
		),
		runs,
	);
});

describe("asking for less never loses a board", () => {
	test("a wish dropped, or only wished for", () => {
		const wishes = allQuestions.filter(({ isWish }) => isWish).map(({ id }) => id);
		fc.assert(
			fc.property(
				anyAnswers,
				fc.constantFrom(...wishes),
				fc.constantFrom("dont-mind", "would-like"),
				(answers, id, weaker) => {
					const before = judgeFor(demo, { ...answers, [id]: answered("must") });
					const after = judgeFor(demo, { ...answers, [id]: answered(weaker) });
					expect(left(after)).toEqual(expect.arrayContaining(left(before)));
					expect(fellOutBetween(before, after)).toEqual([]);
				},
			),
			runs,
		);
	});

	test("the limit lifted, or raised", () => {
		const cap = fc.integer({ min: 5000, max: 60_000 });
		fc.assert(
			fc.property(anyAnswers, cap, fc.option(cap), (answers, minor, more) => {
				const limit = (sum: number) => answered({ minor: sum, currency: "EUR" });
				const before = judgeFor(demo, { ...answers, "about/budget": limit(minor) });
				const after = judgeFor(demo, {
					...answers,
					"about/budget": more === null ? answered("no-limit") : limit(minor + more),
				});
				expect(left(after)).toEqual(expect.arrayContaining(left(before)));
			}),
			runs,
		);
	});
});

test("a board that does not fit changes nothing for the others", () => {
	fc.assert(
		fc.property(anyAnswers, (answers) => {
			const all = judgeFor(demo, answers);
			const kept = demo.parts.board.filter(({ id }) => verdicts(all).get(id) !== "does-not-fit");
			fc.pre(kept.length > 0);
			const fewer = judgeFor({ ...demo, parts: { ...demo.parts, board: kept } }, answers);
			const still = new Map([...verdicts(all)].filter(([, verdict]) => verdict !== "does-not-fit"));
			expect(verdicts(fewer)).toEqual(still);
			const { counts: _, ...advice } = advise(all, answers);
			expect(advise(fewer, answers)).toMatchObject(advice);
		}),
		runs,
	);
});

/** Limits, musts and plans: asked for only once they are said, so that until then they take no board out. */
const isDemand = ({ id, isWish = false }: Question) => isWish || demands.includes(id);
const demands = [
	"about/money-in-all",
	"about/money-spent",
	"about/budget",
	"fit/memory-size",
	"fit/drives",
	"fit/older-drives",
	"fit/cards",
	"features/raise-clock",
	"features/rescue-musts",
];

test("an answer where there was none turns no verdict round", () => {
	const question = fc.constantFrom(...allQuestions.filter((asked) => !isDemand(asked)));
	const answerTo = question.chain((asked) => fc.tuple(fc.constant(asked), fc.constantFrom(...valuesFor(asked))));
	fc.assert(
		fc.property(anyAnswers, answerTo, ({ "about/money-in-all": _, ...given }, [asked, value]) => {
			// Of all the money every part that is picked takes some: that is a limit too.
			const { "fit/candidates": candidates, ...others } = given;
			// Candidates say already that it is one of them; and the ways a supply may turn out all have the usual plug.
			const answers =
				asked.id === "fit/processor" || !candidates ? others : { ...others, "fit/candidates": candidates };
			fc.pre(!hasOddMainPlug(value));
			const before = verdicts(judgeFor(demo, { ...answers, [asked.id]: { status: "not-sure" } }));
			const after = verdicts(judgeFor(demo, { ...answers, [asked.id]: answered(value) }));
			for (const [id, verdict] of after) {
				if (before.get(id) === "does-not-fit") expect(verdict, id).not.toBe("fits");
				if (before.get(id) === "fits") expect(verdict, id).not.toBe("does-not-fit");
			}
		}),
		{ numRuns: 100 },
	);
});

function hasOddMainPlug(value: AnswerValue): boolean {
	const id = typeof value === "object" && "part" in value ? value.part : "";
	return demo.parts.supply.find((supply) => supply.id === id)?.mainPlug === "10-pin 12 V only";
}

describe("ways out", () => {
	/** Answers that leave nothing, as often as not. */
	const hard = fc
		.tuple(anyAnswers, anyMarket)
		.map(([answers, market]) => ({ judgement: judgeFor(market, answers), market }))
		.filter(({ judgement }) => judgement.counts.all > 0 && left(judgement).length === 0);

	test("are all the smallest sets that bring a board back, found by trying every set", () => {
		fc.assert(
			fc.property(hard, ({ judgement }) => {
				const failed = judgement.boards.map((judged) => ({
					id: judged.board.id,
					worlds: failedByWorld(judged, judgement).map((world) => world.failed),
				}));
				const ids = [...new Set(failed.flatMap(({ worlds }) => worlds.flat()))];
				const sets = Array.from({ length: 2 ** ids.length }, (_, bits) => ids.filter((__, at) => bits & (1 << at)));
				const broughtBack = (set: readonly string[]) =>
					failed
						.filter(({ worlds }) => worlds.some((world) => world.every((id) => set.includes(id))))
						.map(({ id }) => id);
				const enough = sets.filter((set) => broughtBack(set).length > 0);
				const smallest = enough.filter(
					(set) => !enough.some((other) => other.length < set.length && other.every((id) => set.includes(id))),
				);
				const found = waysOut(judgement);
				expect(found.map(({ giveUp }) => [...giveUp].sort().join()).sort()).toEqual(
					smallest.map((set) => [...set].sort().join()).sort(),
				);
				for (const { giveUp, boardIds } of found) expect(boardIds).toEqual(broughtBack(giveUp));
			}),
			{ numRuns: 40 },
		);
	});
});
