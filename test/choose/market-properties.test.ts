import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type BoardJudgement, type Judgement, judge } from "../../src/choose/judge.ts";
import { kleeneAnd, kleeneOr, type ThreeValued } from "../../src/maths/kleene.ts";
import type { Board } from "../../src/parts/board.ts";
import { type Build, type BuildFacts, emptyBuildFacts } from "../../src/parts/build.ts";
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
	inEveryWorld,
	marketOf,
	orderedLists,
	someBoards,
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
	for (const [build, boards, less, { board, fewer }] of fc.sample(sample, { numRuns: 15, seed: 5 })) {
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
 * rule that asks for less may not say less. So asking for less never takes a verdict down. What is certain even where a
 * rule answers too early: nothing that fits, or may fit, comes out as "does not fit".
 */
describe("asking for less", () => {
	/** Rules that break it, from "fits" to "cannot tell" only, and why. */
	const fallsToUnknown: Readonly<Record<string, string>> = {
		"fit/card-slots":
			"where one card surely finds no slot it says so and fits, though of another it is not known; without the first it cannot tell",
	};

	test("takes down what no rule says of any board", () => {
		fc.assert(
			fc.property(anyFacts, someBoards, anyWayToAskLess, (facts, boards, less) => {
				const steps = less(facts);
				const market = marketOf(boards);
				const [before, after] = [judge(market, buildOf(facts)), judge(market, buildOf(changeAll(steps)(facts)))];
				for (const [one, other] of pairs(before, after))
					for (const [was, is] of findingPairs(one, other)) {
						const mayFall = Object.hasOwn(fallsToUnknown, was.ruleId) && is.verdict === "cannot-tell";
						if (!stopping.has(was.ruleId) || mayFall) continue;
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
					if (other.verdict === "does-not-fit") expect(one.verdict, one.board.id).toBe("does-not-fit");
					const fell = ofStopping(other).filter(({ verdict }) => verdict !== "fits");
					if (fell.every(({ ruleId }) => Object.hasOwn(fallsToUnknown, ruleId))) continue;
					expect(rank[other.verdict], one.board.id).toBeGreaterThanOrEqual(rank[one.verdict]);
				}
			}),
			runs,
		);
	});

	test.each(Object.keys(fallsToUnknown))("%s breaks it indeed", (ruleId) => {
		const falls = fc
			.sample(fc.tuple(fc.constantFrom(...wholeDemo.parts.board), threeCards), { numRuns: 60, seed: 1 })
			.some(([board, addInCards]) => {
				const told = [addInCards, addInCards.slice(0, 1)].map((cards) =>
					findingOf(ruleId, board, { ...emptyBuildFacts, graphicsCard: { state: "unknown" }, addInCards: cards }),
				);
				return told[0]?.verdict === "fits" && told[1]?.verdict === "cannot-tell";
			});
		expect(falls).toBe(true);
	});
});

const threeCards = fc.array(fc.constantFrom(...wholeDemo.parts.addInCard), { minLength: 3, maxLength: 3 });

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

	/**
	 * Of two plans that are as good, the one counts in which the thing named first has the connector named first. So the
	 * order of drives and cards may decide what the rules tell that only caution about places. It never decides a fit.
	 */
	const mayTellOfTie = new Set(
		allRules
			.filter(
				({ id, reads, mayRead }) => !stopping.has(id) && [...reads, ...mayRead].some((path) => /^plan\./.test(path)),
			)
			.map(({ id }) => id),
	);
	const placedThings: readonly string[] = ["drives", "addInCards"];

	test("the order of things and wishes in the build changes no verdict and no message", () => {
		const list = fc.constantFrom(...orderedLists);
		fc.assert(
			fc.property(anyFacts, someBoards, list, fc.gen(), (facts, boards, name, gen) => {
				const things: readonly unknown[] = facts[name] ?? [];
				const isPlaced = placedThings.includes(name);
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
					for (const [was, is] of findingPairs(one, other)) {
						if (isPlaced && mayTellOfTie.has(was.ruleId)) continue;
						const words = `${one.board.id}, ${was.ruleId}, other order of ${name}`;
						expect(is.verdict, words).toBe(was.verdict);
						expect([is.messageId, is.severity], words).toEqual([was.messageId, was.severity]);
						expect([...is.missing].sort(), words).toEqual([...was.missing].sort());
						if (!isPlaced) expect(inAnyOrder(is), words).toEqual(inAnyOrder(was));
					}
				}
			}),
			runs,
		);
	});

	test("the order of two cards decides what is told of a tie indeed", () => {
		const board = wholeDemo.parts.board.find(({ id }) => id === "pennywhistle-pavane") as Board;
		const cards = wholeDemo.parts.addInCard.filter(({ id }) =>
			["bellfoundry-abacus", "bellfoundry-spyglass"].includes(id),
		);
		const told = [cards, [...cards].reverse()].map((addInCards) =>
			findingOf("features/chipset-link", board, { ...allOpen, addInCards }),
		);
		expect(mayTellOfTie.has("features/chipset-link")).toBe(true);
		expect(told[0]?.messageId).not.toBe(told[1]?.messageId);
	});
});

const shuffled = <T>(values: readonly T[]) => fc.shuffledSubarray([...values], { minLength: values.length });

/** Data with every list sorted: a list of the person's things stands in the order they were named. */
function inAnyOrder({ data }: Finding): object {
	return Object.fromEntries(
		Object.entries(data).map(([name, value]) => [name, Array.isArray(value) ? [...value].sort() : value]),
	);
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
