import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { judge } from "../../src/choose/judge.ts";
import {
	nextOfShortWalk,
	nextQuestion,
	nextQuestionByWorth,
	worthOfQuestion,
	worthsOfOpen,
} from "../../src/choose/next-question.ts";
import { possibleAnswers } from "../../src/choose/possible-answers.ts";
import { rankBoards } from "../../src/choose/ranked-boards.ts";
import { mostAsked } from "../../src/choose/when-to-stop.ts";
import { worthOfAsking } from "../../src/maths/information-value.ts";
import type { Answers, AnswerValue } from "../../src/parts/answers-file.ts";
import type { Board } from "../../src/parts/board.ts";
import { allQuestions, questionById } from "../../src/questions/all-questions.ts";
import { type QuestionContext, tiers } from "../../src/questions/define-question.ts";
import { foldAnswers } from "../../src/questions/fold-answers.ts";
import { answered, anyAnswers, anyMarket, demo, demoContext, notSure, scenarios } from "./demo.ts";
import { buildOf, goodBoard, smallMarket } from "./small-market.ts";

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

const asOf = "2026-11-24";
const short: Answers = { "about/walk-length": answered("short") };
/** What a short walk begins with, answered so that nothing of it is open. */
const begun = (values: Readonly<Record<string, AnswerValue>> = {}): Answers => ({
	...short,
	...Object.fromEntries(
		Object.entries({
			"about/who": "builder",
			"about/activities": ["films"],
			"about/money-in-all": { minor: 150_000, currency: "EUR" },
			"about/budget": "no-limit",
			"fit/processor": { part: "tallowfinch-deckhand" },
			"fit/case": { part: "larkspur-wardrobe" },
			...values,
		}).map(([id, value]) => [id, answered(value)]),
	),
});

/** Worth by the plain way: every answer folded, every board judged and scored. */
function plainWorth(id: string, answers: Answers, context: QuestionContext): number | null {
	const question = questionById(id);
	if (!question) throw new Error(id);
	const now = judge(context.market, foldAnswers(answers, context));
	const left = now.boards.flatMap(({ verdict, subject }) => (verdict !== "does-not-fit" ? (subject.board ?? []) : []));
	const possible = possibleAnswers(question, context, now.build.facts, left);
	if (possible.length === 0) return null;
	const rows = possible.map(({ value }) => {
		const after = judge(context.market, foldAnswers({ ...answers, [id]: answered(value) }, context));
		const expected = new Map(rankBoards(after).map((ranked) => [ranked.judged.board.id, ranked.expected]));
		return context.market.parts.board.map((board) => expected.get(board.id) ?? 0);
	});
	const chances = possible.map(({ chance }) => chance);
	return worthOfAsking(chances, rows).worth;
}

describe("the worth of a question", () => {
	test("is what the plain way gives, for any answers and boards", () => {
		fc.assert(
			fc.property(anyAnswers, anyMarket, fc.nat(), (answers, market, nth) => {
				const context = { market, asOf };
				const open = worthsOfOpen(answers, context);
				const { questionId, worth } = open[nth % Math.max(1, open.length)] ?? {};
				if (questionId === undefined || market.parts.board.length === 0) return;
				const plain = plainWorth(questionId, answers, context);
				if (plain === null || worth == null) expect(worth).toBe(plain);
				else expect(worth).toBeCloseTo(plain, 9);
			}),
			{ numRuns: 60 },
		);
	});

	test("is never negative, and nothing exactly where no answer changes the leader", () => {
		fc.assert(
			fc.property(anyAnswers, anyMarket, (answers, market) => {
				for (const { worth, chance, answersThatChangeTheLeader } of worthsOfOpen(answers, { market, asOf })) {
					expect(chance).toBeGreaterThan(0);
					expect(chance).toBeLessThanOrEqual(1);
					if (worth === null) continue;
					expect(worth).toBeGreaterThanOrEqual(0);
					expect(worth > 1e-6).toBe(answersThatChangeTheLeader.length > 0);
				}
			}),
			{ numRuns: 25 },
		);
	});

	test("is the same however the boards are ordered", () => {
		const context = { market: demo, asOf };
		const turned = { ...demo, parts: { ...demo.parts, board: demo.parts.board.toReversed() } };
		for (const { file } of scenarios) {
			const answers = Object.fromEntries(Object.entries(file.answers).slice(0, 9));
			expect(worthsOfOpen(answers, { ...context, market: turned })).toEqual(worthsOfOpen(answers, context));
		}
	});

	test("is nothing where there is one board, whatever is answered", () => {
		const context = { market: { ...demo, parts: { ...demo.parts, board: demo.parts.board.slice(0, 1) } }, asOf };
		for (const { worth } of worthsOfOpen(short, context)) expect(worth ?? 0).toBe(0);
	});

	/** Two boards that differ in nothing but price and what stands here. */
	const two = (one: Partial<Board>, other: Partial<Board>): QuestionContext => ({
		market: smallMarket([
			{ ...goodBoard, ...one },
			{ ...goodBoard, ...other },
		]),
		asOf,
	});

	test("of the limit is half the points of the better board where the dearer one is better", () => {
		// Worked out: with the lower price as limit the dear board is out, with the higher one or none it leads.
		const context = two(
			{ price: { minor: 10_000, currency: "EUR" }, warrantyYears: 0 },
			{ price: { minor: 20_000, currency: "EUR" }, warrantyYears: 5 },
		);
		const answers: Answers = { "about/walk-length": answered("short") };
		const points = new Map(
			rankBoards(judge(context.market, foldAnswers(answers, context))).map((ranked) => [
				ranked.judged.board.id,
				ranked.expected,
			]),
		);
		const [cheap = 0, dear = 0] = [points.get("board-1"), points.get("board-2")];
		expect(dear).toBeGreaterThan(cheap);
		const worth = worthOfQuestion("about/budget", answers, context);
		// Chances a third each: (cheap + dear + dear) / 3 against the greater of (cheap) and (2 dear / 3).
		expect(worth?.worth).toBeCloseTo((cheap + 2 * dear) / 3 - Math.max(cheap, (2 * dear) / 3), 9);
		expect(worth?.answersThatChangeTheLeader).toHaveLength(cheap > (2 * dear) / 3 ? 2 : 1);
	});

	test("is nothing between boards that are alike", () => {
		for (const { worth } of worthsOfOpen(short, two({}, {}))) expect(worth ?? 0).toBe(0);
	});

	test("is told of one that is not sure, and of none that is answered or makes no sense", () => {
		const answers = begun({ "fit/case": { part: "larkspur-wardrobe" } });
		expect(worthOfQuestion("fit/case", answers, demoContext)).toBeNull();
		expect(worthOfQuestion("fit/candidates", answers, demoContext)).toBeNull();
		expect(worthOfQuestion("no/such-question", answers, demoContext)).toBeNull();
		expect(worthOfQuestion("fit/case", { ...answers, "fit/case": notSure }, demoContext)?.worth).toBeGreaterThan(0);
	});
});

describe("the next question of a short walk", () => {
	/** Answers each question with one of its possible answers, or not sure, until it asks no more. */
	function walk(context: QuestionContext, pick: (values: number) => number | null, start: Answers = short) {
		let answers = start;
		const asked: string[] = [];
		for (;;) {
			const { next, why } = nextOfShortWalk(answers, context);
			if (!next) return { answers, asked, why };
			asked.push(next.questionId);
			const question = questionById(next.questionId);
			const { facts } = foldAnswers(answers, context);
			const values = question ? possibleAnswers(question, context, facts, context.market.parts.board) : [];
			const value = values[pick(values.length) ?? values.length]?.value;
			answers = { ...answers, [next.questionId]: value === undefined ? notSure : answered(value) };
			if (asked.length > allQuestions.length) return { answers, asked, why };
		}
	}

	test("is never one that was dealt with, makes sense, and comes to an end with a reason", () => {
		fc.assert(
			fc.property(anyMarket, fc.infiniteStream(fc.nat(20)), (market, picks) => {
				const { asked, answers, why } = walk({ market, asOf }, (values) => (picks.next().value ?? 0) % (values + 1));
				expect(new Set(asked).size).toBe(asked.length);
				expect(asked).not.toContain("about/walk-length");
				expect(why).not.toBeNull();
				const dealtWith = Object.keys(answers).length;
				// Without boards left there is nothing to go by: all that are marked for the short walk are asked.
				const left = judge(market, foldAnswers(answers, { market, asOf })).boards.some(
					({ verdict }) => verdict !== "does-not-fit",
				);
				if (left) expect(dealtWith).toBeLessThanOrEqual(mostAsked);
			}),
			{ numRuns: 12 },
		);
	});

	test("begins with who asks, what for, the money, the processor and the case", () => {
		const { asked } = walk(demoContext, (values) => values - 1);
		const first = ["about/who", "about/activities", "about/money-in-all", "about/budget", "fit/processor", "fit/case"];
		expect(asked.filter((id) => first.includes(id))).toEqual(first);
		expect(asked.filter((id) => id.startsWith("fit/")).slice(0, 2)).toEqual(["fit/processor", "fit/case"]);
		// Who is not sure of the processor is asked which are in question.
		const unsure = nextQuestionByWorth({ ...begun(), "fit/processor": notSure }, demoContext, { from: "fit" });
		expect(unsure?.questionId).toBe("fit/candidates");
	});

	test("goes on from the tier where the person is, and comes back to what was left", () => {
		const answers = begun();
		const worths = worthsOfOpen(answers, demoContext);
		const order = (from: (typeof tiers)[number]) =>
			tiers.indexOf(
				questionById(nextQuestionByWorth(answers, demoContext, { from })?.questionId ?? "")?.tier ?? "about",
			);
		expect(worths.length).toBeGreaterThan(20);
		expect(order("features")).toBeGreaterThanOrEqual(tiers.indexOf("features"));
		expect(order("about")).toBeLessThanOrEqual(order("features"));
		expect(nextQuestionByWorth(answers, demoContext, { from: "before-you-pay" })).toEqual(
			nextQuestionByWorth(answers, demoContext),
		);
	});

	test("is the one worth most in its tier, counting the chance of an answer", () => {
		const answers = begun();
		const next = nextQuestionByWorth(answers, demoContext, { from: "features" });
		const tier = questionById(next?.questionId ?? "")?.tier;
		const gains = worthsOfOpen(answers, demoContext)
			.filter(({ questionId }) => questionById(questionId)?.tier === tier)
			.map(({ worth, chance }) => (worth ?? 0) * chance);
		expect((next?.worth ?? 0) * (next?.chance ?? 0)).toBe(Math.max(...gains));
	});

	test("is none whose every answer keeps the leader, but for those it begins with", () => {
		fc.assert(
			fc.property(anyAnswers, (answers) => {
				const { next } = nextOfShortWalk({ ...answers, ...short }, demoContext);
				if (next?.worth != null) expect(next.answersThatChangeTheLeader.length).toBeGreaterThan(0);
			}),
			{ numRuns: 25 },
		);
	});

	test("is none where one board is left, and says that nothing changes the lead", () => {
		const context = { market: { ...demo, parts: { ...demo.parts, board: demo.parts.board.slice(0, 1) } }, asOf };
		const { asked, why } = walk(context, () => null);
		expect(why).toBe("nothing-changes-the-lead");
		expect(asked.every((id) => /^about|^fit\/(processor|candidates|case)$/.test(id))).toBe(true);
	});

	test("without boards is each that is marked for the short walk, in order", () => {
		const context = { market: { ...demo, parts: { ...demo.parts, board: [] } }, asOf };
		const { asked } = walk(context, () => null);
		const { reached = [] } = foldAnswers(Object.fromEntries(asked.map((id) => [id, notSure])), context);
		expect(asked).toEqual(
			allQuestions
				.filter(({ id, short: marked }) => marked && reached.includes(id) && id !== "about/walk-length")
				.map(({ id }) => id),
		);
	});

	test("asks whether the lead is sure only where little is to be gained", () => {
		let calls = 0;
		const leadIsSure = () => {
			calls++;
			return true;
		};
		expect(nextQuestionByWorth(short, demoContext, { leadIsSure })?.questionId).toBe("about/who");
		expect(calls).toBe(0);
	});
});
