import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type BoardJudgement, type Judgement, judge } from "../../src/choose/judge.ts";
import { kleeneAnd, kleeneOr, type ThreeValued } from "../../src/maths/kleene.ts";
import type { Board } from "../../src/parts/board.ts";
import type { Build, BuildFacts } from "../../src/parts/build.ts";
import { foldAnswers } from "../../src/questions/fold-answers.ts";
import { allRules } from "../../src/rules/all-rules.ts";
import type { Finding, Verdict } from "../../src/rules/outcome.ts";
import { anyAnswers, demo, demoContext, wholeDemo } from "./demo.ts";
import {
	allOpen,
	anyBoardAndFewer,
	anyBuild,
	anyFacts,
	anyWayToAskLess,
	buildOf,
	factsGiven,
	inEveryWorld,
	marketOf,
	orderedLists,
	someBoards,
	withoutFacts,
} from "./made-up-builds.ts";

/** Each run judges a few boards for one build or two; RUNS asks for more of them. */
const runs = { numRuns: Number(process.env["RUNS"] ?? 25) };

/** Rules that can take a board out, or leave it uncertain. The others only caution. */
const stopping = new Set(
	allRules.filter(({ scope, severity }) => scope === "board" && severity === "stops").map(({ id }) => id),
);

const rank: Readonly<Record<Verdict, number>> = { "does-not-fit": 0, "cannot-tell": 1, fits: 2 };
const asThreeValued = (verdict: Verdict): ThreeValued =>
	verdict === "fits" ? "yes" : verdict === "cannot-tell" ? "unknown" : "no";
const ofStopping = ({ findings }: BoardJudgement) => findings.filter(({ ruleId }) => stopping.has(ruleId));
const changeAll = (steps: readonly { readonly change: (facts: BuildFacts) => BuildFacts }[]) => (facts: BuildFacts) =>
	steps.reduce((left, { change }) => change(left), facts);

/** The boards of two judgements of the same boards, one beside the other. */
function pairs(one: Judgement, other: Judgement): readonly (readonly [BoardJudgement, BoardJudgement])[] {
	const byId = new Map(other.boards.map((judged) => [judged.board.id, judged]));
	return one.boards.map((judged) => [judged, byId.get(judged.board.id) as BoardJudgement] as const);
}

/** The findings of two boards, rule by rule. */
const findingPairs = (one: BoardJudgement, other: BoardJudgement) =>
	one.findings.map((finding, index) => [finding, other.findings[index] as Finding] as const);

test("what follows is tried on boards of every verdict, and what is changed changes some", () => {
	const seen = { verdicts: new Set<Verdict>(), byLess: 0, byFacts: 0, worlds: 0 };
	const sample = fc.tuple(anyBuild, someBoards, anyWayToAskLess, anyBoardAndFewer(isNotGranted));
	for (const [build, boards, less, { board, fewer }] of fc.sample(sample, { numRuns: 40, seed: 5 })) {
		const before = judge(marketOf(boards), build);
		const after = judge(marketOf(boards), inEveryWorld(build, changeAll(less(build.facts))));
		for (const { verdict } of before.boards) seen.verdicts.add(verdict);
		seen.byLess += pairs(before, after).filter(([one, other]) => one.verdict !== other.verdict).length;
		const [whole, part] = [board, fewer].map((one) => judge(marketOf([one]), build).boards[0]?.verdict);
		if (whole !== part) seen.byFacts += 1;
		if (build.worlds.length > 1) seen.worlds += 1;
	}
	expect(seen.verdicts.size).toBe(3);
	expect(Math.min(seen.byLess, seen.byFacts, seen.worlds)).toBeGreaterThan(0);
});

/**
 * "Does not fit", "cannot tell", "fits" are in this order. A board's verdict is the least of its rules' verdicts, and a
 * rule that asks for less may not say less. So asking for less never takes a verdict down.
 */
describe("asking for less", () => {
	test("takes down what no rule says of any board", () => {
		fc.assert(
			fc.property(anyFacts, someBoards, anyWayToAskLess, (facts, boards, less) => {
				const steps = less(facts);
				const market = marketOf(boards);
				const [before, after] = [judge(market, buildOf(facts)), judge(market, buildOf(changeAll(steps)(facts)))];
				for (const [one, other] of pairs(before, after))
					for (const [was, is] of findingPairs(one, other)) {
						if (!stopping.has(was.ruleId)) continue;
						expect(rank[is.verdict], fallWords(one, was, is, steps)).toBeGreaterThanOrEqual(rank[was.verdict]);
					}
			}),
			runs,
		);
	});

	test("loses no board, however many ways the open answers may turn out", () => {
		fc.assert(
			fc.property(anyBuild, someBoards, anyWayToAskLess, (build, boards, less) => {
				const market = marketOf(boards);
				const after = judge(market, inEveryWorld(build, changeAll(less(build.facts))));
				for (const [one, other] of pairs(judge(market, build), after)) {
					// A way in which it may fit stays one.
					expect(other.possibleWorlds, one.board.id).toEqual(expect.arrayContaining([...one.possibleWorlds]));
					expect(rank[other.verdict], one.board.id).toBeGreaterThanOrEqual(rank[one.verdict]);
				}
			}),
			runs,
		);
	});

	/** Small cards and big ones, so that they crowd each other out where slots are few or half known. */
	test("cards that crowd each other out are no exception", () => {
		const { board: allBoards, addInCard } = wholeDemo.parts;
		const someCards = fc.array(fc.constantFrom(...addInCard), { minLength: 2, maxLength: 5 });
		const graphicsCard = fc.constantFrom<BuildFacts["graphicsCard"]>(
			{ state: "unknown" },
			{ state: "none" },
			{ state: "open" },
		);
		const cases = fc.constantFrom(...allBoards).chain((board) => {
			const slotFacts = factsGiven(board).filter(({ path }) => /^(cardSlots|sharing|conditions)/.test(path));
			return fc.subarray(slotFacts).map((without) => withoutFacts(board, without));
		});
		fc.assert(
			fc.property(cases, graphicsCard, someCards, fc.nat(), (board, graphics, addInCards, nth) => {
				const gone = nth % addInCards.length;
				const facts: BuildFacts = { ...allOpen, graphicsCard: graphics, addInCards };
				const fewer = { ...facts, addInCards: addInCards.filter((_, index) => index !== gone) };
				const [was, is] = [facts, fewer].map((some) => findingOf("fit/card-slots", board, some)) as [Finding, Finding];
				const words = `${was.messageId} with ${addInCards.map(({ id }) => id).join(", ")}; ${is.messageId} without ${gone}`;
				expect(rank[is.verdict], words).toBeGreaterThanOrEqual(rank[was.verdict]);
			}),
			{ numRuns: runs.numRuns * 4 },
		);
	});
});

function findingOf(ruleId: string, board: Board, facts: BuildFacts): Finding | undefined {
	return judge(marketOf([board]), buildOf(facts)).boards[0]?.findings.find((finding) => finding.ruleId === ruleId);
}

function fallWords(
	{ board }: BoardJudgement,
	was: Finding,
	is: Finding,
	steps: readonly { readonly what: string }[],
): string {
	const asked = steps.map(({ what }) => what).join("; ");
	return `${board.id}, ${was.ruleId}: ${was.messageId}, then ${is.messageId}, after ${asked}`;
}

describe("order", () => {
	test("the order of the boards changes no finding", () => {
		fc.assert(
			fc.property(
				anyBuild,
				someBoards.chain((boards) => fc.tuple(fc.constant(boards), shuffled(boards))),
				(build, [boards, others]) => {
					for (const [one, other] of pairs(judge(marketOf(boards), build), judge(marketOf(others), build)))
						expect({ ...other, subject: null }).toEqual({ ...one, subject: null });
				},
			),
			runs,
		);
	});

	test("which thing of several is named, where one is enough, hangs on the order indeed", () => {
		const cards = wholeDemo.parts.addInCard.filter(({ use }) => use === "wireless network");
		const board = { ...(wholeDemo.parts.board[0] as Board), wireless: { builtIn: false } };
		const wishes = { "features/wireless": "must" } as const;
		const told = [cards, [...cards].reverse()].map((addInCards) =>
			findingOf("features/wireless", board, { ...allOpen, addInCards, wishes }),
		);
		expect(told[0]?.data).not.toEqual(told[1]?.data);
		expect(toldBy(told[0] as Finding)).toEqual(toldBy(told[1] as Finding));
	});

	test("the order of things and wishes in the build changes no verdict and nothing that is told", () => {
		const list = fc.constantFrom(...orderedLists);
		fc.assert(
			fc.property(anyFacts, someBoards, list, fc.gen(), (facts, boards, name, gen) => {
				const things: readonly unknown[] = facts[name] ?? [];
				const changed: BuildFacts = {
					...facts,
					[name]: facts[name] && gen(shuffled<unknown>, things),
					wishes: Object.fromEntries(
						gen(shuffled<[string, unknown]>, Object.entries(facts.wishes)),
					) as BuildFacts["wishes"],
				};
				const market = marketOf(boards);
				for (const [one, other] of pairs(judge(market, buildOf(facts)), judge(market, buildOf(changed)))) {
					expect(other.verdict).toBe(one.verdict);
					for (const [was, is] of findingPairs(one, other))
						expect(toldBy(is), `${one.board.id}, ${was.ruleId}, other order of ${name}`).toEqual(toldBy(was));
				}
			}),
			runs,
		);
	});

	test("nor does the order of drives and cards, where there are many of either", () => {
		const { board: allBoards, drive, addInCard } = wholeDemo.parts;
		const boards = fc.oneof(
			fc.constantFrom(...allBoards),
			anyBoardAndFewer(() => true).map(({ fewer }) => fewer),
		);
		const things = fc.record({
			drives: fc.array(fc.constantFrom(...drive), { minLength: 2, maxLength: 6 }),
			addInCards: fc.array(fc.constantFrom(...addInCard), { minLength: 2, maxLength: 4 }),
		});
		fc.assert(
			fc.property(boards, anyFacts, things, fc.gen(), (board, some, { drives, addInCards }, gen) => {
				const facts: BuildFacts = { ...some, drives, addInCards };
				const changed = { ...facts, drives: gen(shuffled, drives), addInCards: gen(shuffled, addInCards) };
				const [one, other] = [facts, changed].map((build) => judge(marketOf([board]), buildOf(build)).boards[0]);
				for (const [was, is] of findingPairs(one as BoardJudgement, other as BoardJudgement))
					expect(toldBy(is), `${board.id}, ${was.ruleId}`).toEqual(toldBy(was));
			}),
			{ numRuns: runs.numRuns * 2 },
		);
	});
});

const shuffled = <T>(values: readonly T[]) => fc.shuffledSubarray([...values], { minLength: values.length });

/** Data that name the first of the person's things that will do, by rule: any would. */
const namesFirst: Readonly<Record<string, string>> = { "features/wireless": "card" };

/** All that a rule tells, with every list sorted: a list of the person's things stands in the order they were named. */
function toldBy({ ruleId, verdict, messageId, severity, missing, data }: Finding): object {
	const inAnyOrder = Object.entries(data)
		.filter(([name]) => name !== namesFirst[ruleId])
		.map(([name, value]) => [name, Array.isArray(value) ? [...value].sort() : value]);
	return { verdict, messageId, severity, missing: [...missing].sort(), data: Object.fromEntries(inAnyOrder) };
}

/**
 * Facts of a board that a rule takes for granted while nobody gives them: test/rules/less-known tells which rule, and
 * holds each to it. They stay as they are here. Whatever lies inside a footnote is no fact of its own: with one
 * condition or one way left out, the footnote says another thing.
 */
const granted: Readonly<Record<string, string>> = {
	"memory.maxGb": "without it the slots decide, or what most people buy",
	"memory.maxGbPerModule": "without it the page's own most decides, or what most people buy",
	"memory.slots": "without it the page's own most decides",
	"memory.form": "a desktop board takes DIMM",
	"memory.registered": "a board that takes registered modules says so loudly",
	price: "where no new one is noted, a used one is what can be had",
	"power.mainPlug": "a desktop board has a 24-pin plug",
	supportList: "without a list the chipset's table decides, and a list decides against it",
	"supportList.partial": "a list is whole unless it is said to be noted in part",
	connectorsOnBack: "pages say it loudly where it is so",
	widthMm: "a board is no larger than its form",
	depthMm: "a board is no larger than its form",
	conditions: "pages put it in footnotes where it is so",
};
const footnotes = ["conditions[]", "sharing[]"];

function isNotGranted(path: string): boolean {
	return !Object.hasOwn(granted, path) && !footnotes.some((start) => path.startsWith(start));
}

describe("a fact more about a board", () => {
	test("turns no verdict round, of a rule or in all", () => {
		const cases = fc.uniqueArray(anyBoardAndFewer(isNotGranted), {
			selector: ({ board }) => board.id,
			minLength: 3,
			maxLength: 6,
		});
		fc.assert(
			fc.property(anyFacts, cases, (facts, boards) => {
				const less = judge(marketOf(boards.map(({ fewer }) => fewer)), buildOf(facts));
				const more = judge(marketOf(boards.map(({ board }) => board)), buildOf(facts));
				for (const [one, other] of pairs(less, more)) {
					expect(isTurned(one.verdict, other.verdict), one.board.id).toBe(false);
					for (const [was, is] of findingPairs(one, other))
						expect(
							isTurned(was.verdict, is.verdict),
							`${one.board.id}, ${was.ruleId}: ${was.messageId}, then ${is.messageId}`,
						).toBe(false);
				}
			}),
			runs,
		);
	});
});

function isTurned(one: Verdict, other: Verdict): boolean {
	return Math.abs(rank[one] - rank[other]) === 2;
}

/** The verdict over several ways: fits if it fits in all, does not fit if it does in none, else cannot tell. */
function combined(verdicts: readonly Verdict[]): Verdict {
	const values = verdicts.map(asThreeValued);
	if (kleeneAnd(...values) === "yes") return "fits";
	return kleeneOr(...values) === "no" ? "does-not-fit" : "cannot-tell";
}

describe("possible worlds", () => {
	test("a board's verdict in one world is its stopping rules' verdicts, all of them together", () => {
		fc.assert(
			fc.property(anyFacts, someBoards, (facts, boards) => {
				for (const judged of judge(marketOf(boards), buildOf(facts)).boards) {
					const together = kleeneAnd(...ofStopping(judged).map(({ verdict }) => asThreeValued(verdict)));
					expect(asThreeValued(judged.verdict), judged.board.id).toBe(together);
				}
			}),
			runs,
		);
	});

	test("the verdict over several worlds combines the verdicts of each", () => {
		fc.assert(
			fc.property(anyBuild, someBoards, (build, boards) => {
				expectCombined(build, boards);
			}),
			runs,
		);
	});

	test("so it does for the ways that answers leave open", () => {
		fc.assert(
			fc.property(anyAnswers, (answers) => {
				const build = foldAnswers(answers, demoContext);
				// More ways than that take long, and show no more.
				fc.pre(build.worlds.length > 1 && build.worlds.length <= 12);
				expectCombined(build, demo.parts.board.slice(0, 4));
			}),
			{ numRuns: Math.ceil(runs.numRuns / 3) },
		);
	});

	test("a world more turns no verdict round, and settles none that is open", () => {
		fc.assert(
			fc.property(anyBuild, someBoards, (build, boards) => {
				fc.pre(build.worlds.length > 1);
				const market = marketOf(boards);
				const fewer = judge(market, { ...build, worlds: build.worlds.slice(0, -1) });
				for (const [one, other] of pairs(fewer, judge(market, build)))
					expect([one.verdict, "cannot-tell"], one.board.id).toContain(other.verdict);
			}),
			runs,
		);
	});
});

function expectCombined(build: Build, boards: readonly Board[]): void {
	const alone = build.worlds.map((world) => judge(marketOf(boards), { facts: build.facts, worlds: [world] }));
	judge(marketOf(boards), build).boards.forEach(({ board, verdict }, index) => {
		const verdicts = alone.map((judgement) => judgement.boards[index]?.verdict as Verdict);
		expect(verdict, `${board.id}: ${verdicts.join(", ")}`).toBe(combined(verdicts));
	});
}
