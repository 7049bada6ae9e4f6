import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { advise } from "../../src/choose/advise.ts";
import { judge } from "../../src/choose/judge.ts";
import { seededDraws } from "../../src/maths/seeded-draws.ts";
import type { Answers } from "../../src/parts/answers-file.ts";
import type { Board } from "../../src/parts/board.ts";
import type { BuildFacts } from "../../src/parts/build.ts";
import type { Market } from "../../src/parts/market.ts";
import { type PartKind, partKindNames } from "../../src/parts/part-kinds.ts";
import { allQuestions } from "../../src/questions/all-questions.ts";
import { foldAnswers } from "../../src/questions/fold-answers.ts";
import { anyAnswersIn, asOf } from "./any-answers.ts";
import { anyMarket, withBoards } from "./any-market.ts";
import { runs } from "./runs.ts";
import { formsOf, viewOf, walkIn } from "./whole-way.ts";

type Shuffle = <T>(values: readonly T[]) => T[];
/** Another order for any list, by a number that says which. */
const anyShuffle: fc.Arbitrary<Shuffle> = fc.nat().map((which) => (values) => {
	const draws = seededDraws(which);
	return values
		.map((value) => ({ value, at: draws() }))
		.sort((one, other) => one.at - other.at)
		.map(({ value }) => value);
});

/** A market whose lists stand in another order. */
function shuffledMarket(market: Market, shuffle: Shuffle): Market {
	const lists = partKindNames.map((kind: PartKind) => [kind, shuffle<unknown>(market.parts[kind])]);
	return { ...market, parts: Object.fromEntries(lists) as unknown as Market["parts"] };
}

/** What is said of a walk in a market, whatever the order of its parts. */
function saidOf(market: Market, answers: Answers) {
	const walk = walkIn(market, answers);
	const view = viewOf(walk);
	const { text, markdown, csv } = formsOf(walk, view);
	const { lead, shortlist, ranking, nextQuestion } = view.advice();
	return { text, markdown, csv, lead, shortlist, ranking, nextQuestion };
}

describe("order changes nothing", () => {
	test("of the parts of a market: verdicts, advice and sheet are the same", () => {
		fc.assert(
			fc.property(anyAnswersIn(anyMarket()), anyShuffle, ({ market, answers }, shuffle) => {
				const other = shuffledMarket(market, shuffle);
				const verdicts = (one: Market) =>
					new Map(judge(one, foldAnswers(answers, { market: one, asOf })).boards.map((b) => [b.board.id, b.verdict]));
				expect(new Map([...verdicts(other)].sort())).toEqual(new Map([...verdicts(market)].sort()));
				expect(saidOf(other, answers)).toEqual(saidOf(market, answers));
			}),
			runs(12),
		);
	});

	test("of the answers in a file, and of the keys of each", () => {
		fc.assert(
			fc.property(anyAnswersIn(anyMarket()), anyShuffle, ({ market, answers }, shuffle) => {
				const other = Object.fromEntries(shuffle(Object.entries(answers)));
				const fresh = withBoards(market, market.parts.board);
				expect(saidOf(fresh, other)).toEqual(saidOf(market, answers));
			}),
			runs(8),
		);
	});

	test("of wishes and importances in a build, and of the ways that open answers may turn out", () => {
		fc.assert(
			fc.property(anyAnswersIn(anyMarket()), anyShuffle, ({ market, answers }, shuffle) => {
				const build = foldAnswers(answers, { market, asOf });
				const turned = (facts: BuildFacts): BuildFacts => ({
					...facts,
					wishes: Object.fromEntries(shuffle(Object.entries(facts.wishes))),
					importance: Object.fromEntries(shuffle(Object.entries(facts.importance))),
				});
				const order = shuffle(build.worlds.map((_, index) => index));
				const worlds = order.flatMap((index) => build.worlds[index] ?? []);
				const other = {
					...build,
					facts: turned(build.facts),
					worlds: worlds.map((world) => ({ ...world, facts: turned(world.facts) })),
				};
				const [one, two] = [judge(market, build), judge(withBoards(market, market.parts.board), other)];
				one.boards.forEach((was, index) => {
					const is = two.boards[index];
					expect(is?.verdict, was.board.id).toBe(was.verdict);
					expect([...(is?.possibleWorlds ?? [])].map((at) => order[at]).sort()).toEqual([...was.possibleWorlds].sort());
					expect([...(is?.dependsOn ?? [])].sort(), was.board.id).toEqual([...was.dependsOn].sort());
				});
				const [first, second] = [advise(one, answers), advise(two, answers)];
				expect(second.ranking.map(({ boardId }) => boardId)).toEqual(first.ranking.map(({ boardId }) => boardId));
				for (const [index, { score }] of first.ranking.entries())
					for (const end of ["low", "mid", "high"] as const)
						expect(second.ranking[index]?.score[end]).toBeCloseTo(score[end], 9);
				expect(second.waysOut.length).toBe(first.waysOut.length);
			}),
			runs(20),
		);
	});

	test("of what was marked in a list: no verdict and no score", () => {
		const lists = allQuestions.filter(({ kind }) => kind === "many").map(({ id }) => id);
		fc.assert(
			fc.property(anyAnswersIn(anyMarket()), anyShuffle, ({ market, answers }, shuffle) => {
				const other = Object.fromEntries(
					Object.entries(answers).map(([id, answer]) => [
						id,
						lists.includes(id) && Array.isArray(answer.value) ? { ...answer, value: shuffle(answer.value) } : answer,
					]),
				);
				expect(standing(withBoards(market, market.parts.board), other)).toEqual(standing(market, answers));
			}),
			runs(20),
		);
	});

	test("of the connectors, rows and offers that a page lists of a board: no verdict and no score", () => {
		fc.assert(
			fc.property(anyAnswersIn(anyMarket()), anyShuffle, ({ market, answers }, shuffle) => {
				const boards = market.parts.board.map((board) => otherOrder(board, shuffle));
				expect(standing(withBoards(market, boards), answers)).toEqual(standing(market, answers));
			}),
			runs(20),
		);
	});
});

/** Verdicts and scores by board. */
function standing(market: Market, answers: Answers): object {
	const judgement = judge(market, foldAnswers(answers, { market, asOf }));
	const { ranking } = advise(judgement, answers);
	return {
		verdicts: judgement.boards.map(({ board, verdict }) => [board.id, verdict]),
		scores: ranking.map(({ boardId, score }) => [boardId, ...[score.low, score.mid, score.high].map(toNinth)]),
	};
}

const toNinth = (value: number): number => Number(value.toFixed(9));

/** Lists whose order says something stay: the first plug named feeds the processor, and each mode of a group is tried in turn. */
function otherOrder(board: Board, shuffle: Shuffle): Board {
	const lists = ["cardSlots", "m2Sockets", "drivePorts", "rearUsb", "rearOld", "pictureSockets", "wiredGbps"] as const;
	const more = ["conditions", "offers", "holes"] as const;
	const changed = [...lists, ...more].flatMap((name) => {
		const list: readonly unknown[] | undefined = board[name];
		return list ? [[name, shuffle(list)] as const] : [];
	});
	const { fans, lights, typeC } = board.headers ?? {};
	const rows = board.supportList?.rows;
	return {
		...board,
		...Object.fromEntries(changed),
		...(board.headers
			? {
					headers: {
						...board.headers,
						...(fans ? { fans: shuffle(fans) } : {}),
						...(lights ? { lights: shuffle(lights) } : {}),
						...(typeC ? { typeC: shuffle(typeC) } : {}),
					},
				}
			: {}),
		...(board.supportList && rows ? { supportList: { ...board.supportList, rows: shuffle(rows) } } : {}),
	} as Board;
}
