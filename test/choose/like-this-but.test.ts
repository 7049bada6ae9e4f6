import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { advise } from "../../src/choose/advise.ts";
import { judge } from "../../src/choose/judge.ts";
import { type LikeDirection, type LikeThisBut, likeDirections, likeThisBut } from "../../src/choose/like-this-but.ts";
import type { Board } from "../../src/parts/board.ts";
import { foldAnswers } from "../../src/questions/fold-answers.ts";
import { anyAnswers, demo, demoContext, scenarios, wholeDemo } from "./demo.ts";
import { buildOf, goodBoard, goodBuild, smallMarket } from "./small-market.ts";

const price = (euros: number, currency = "EUR") => ({ minor: euros * 100, currency });

/** What is like board-1 of these boards; each is good unless it says otherwise. */
function like(direction: LikeDirection, ...boards: readonly Partial<Board>[]): LikeThisBut {
	const build = buildOf({ ...goodBuild, case: { boardForms: ["ATX", "microATX", "Mini-ITX"], frontPlugs: [] } });
	const judgement = judge(smallMarket(boards.map((facts) => ({ ...goodBoard, ...facts }))), build);
	const result = likeThisBut(judgement, advise(judgement, {}), "board-1", direction);
	if (!result) throw new Error("there is a first board");
	return result;
}
const foundIn = ({ found }: LikeThisBut) => found.map(({ boardId }) => boardId).sort();
const without = (key: keyof Board): Partial<Board> => ({ [key]: undefined }) as Partial<Board>;

describe("cheaper", () => {
	test("a lower price only, and money of one kind", () => {
		const result = like(
			"cheaper",
			{ price: price(150) },
			{ price: price(149) },
			{ price: price(150) },
			{ price: price(151) },
			{ price: price(20, "USD") },
			without("price"),
		);
		expect(foundIn(result)).toEqual(["board-2"]);
		expect(result).toMatchObject({ isKnown: true, isLeft: true, more: 0, leftOut: ["board-5", "board-6"] });
		expect(result.found[0]).toMatchObject({ from: { price: price(150) }, to: { price: price(149) } });
	});

	test("nothing can be found for a board of which it is not known", () => {
		const result = like("cheaper", without("price"), { price: price(10) });
		expect(result).toMatchObject({ isKnown: false, found: [] });
	});

	test("boards that surely fit come before those that may", () => {
		const may = { socket: undefined, price: price(10) } as unknown as Partial<Board>;
		const { found } = like("cheaper", { price: price(150) }, may, {
			price: price(140),
			rearUsb: [{ plug: "A", count: 1 }],
		});
		expect(found.map(({ boardId, verdict }) => [boardId, verdict])).toEqual([
			["board-3", "fits"],
			["board-2", "cannot-tell"],
		]);
	});

	test("five at most, and how many more there are", () => {
		const result = like(
			"cheaper",
			{ price: price(150) },
			...[1, 2, 3, 4, 5, 6, 7].map((by) => ({ price: price(150 - by) })),
		);
		// All give up nothing, so that the cheapest come first.
		expect(result.found.map(({ boardId }) => boardId)).toEqual(["board-8", "board-7", "board-6", "board-5", "board-4"]);
		expect(result.more).toBe(2);
	});
});

describe("smaller", () => {
	test("one side shorter and none longer, however it is turned", () => {
		const sides = (widthMm: number, depthMm: number) => ({ widthMm, depthMm });
		const result = like(
			"smaller",
			sides(244, 244),
			sides(244, 243),
			sides(244, 244),
			sides(250, 170),
			sides(170, 244),
			sides(305, 200),
		);
		expect(foundIn(result)).toEqual(["board-2", "board-5"]);
	});

	test("without the sides a smaller form counts; alike forms tell nothing, and without a form nobody can tell", () => {
		const known = { widthMm: 305, depthMm: 244 };
		const result = like("smaller", known, { form: "microATX" }, {}, without("form"), known);
		expect(foundIn(result)).toEqual(["board-2"]);
		expect(result.found[0]?.to).toMatchObject({ sidesMm: null, form: "microATX" });
		expect(result.leftOut).toEqual(["board-3", "board-4"]);
		expect(like("smaller", { form: "microATX" }, { form: "ATX" })).toMatchObject({
			isKnown: true,
			found: [],
			leftOut: [],
		});
		expect(like("smaller", without("form"), {})).toMatchObject({ isKnown: false, found: [] });
	});

	test("a form that is fixed gives the sides by itself", () => {
		const { found } = like("smaller", { widthMm: 171, depthMm: 170 }, { form: "Mini-ITX" });
		expect(found.map(({ to }) => to.sidesMm)).toEqual([[170, 170]]);
	});
});

describe("more ports", () => {
	const rear = (count: number, headers?: Board["headers"]): Partial<Board> => ({
		rearUsb: [{ plug: "A", count }],
		headers: { ...goodBoard.headers, ...headers },
	});
	const none = { usb2: 0, usb5: 0, typeC: [] };

	test("sockets at the back come first, headers inside count between equals", () => {
		const result = like(
			"more-ports",
			rear(6, { ...none, usb2: 1 }),
			rear(7, none),
			rear(6, { ...none, usb2: 1, typeC: [{}] }),
			rear(6, { ...none, usb5: 1 }),
			rear(5, { ...none, usb2: 4 }),
		);
		expect(foundIn(result)).toEqual(["board-2", "board-3"]);
		expect(result.leftOut).toEqual([]);
	});

	test("what is not known is neither more nor less", () => {
		const result = like("more-ports", rear(6), rear(7), rear(6, none), rear(5), without("rearUsb"));
		expect(foundIn(result)).toEqual(["board-2"]);
		expect(result.leftOut).toEqual(["board-3", "board-5"]);
	});
});

describe("what else", () => {
	test("a board that fell out has no points to compare; those with most points come first", () => {
		const result = like(
			"cheaper",
			{ price: price(500) },
			{ price: price(100), rearUsb: [{ plug: "A", count: 4 }] },
			{ price: price(120), rearUsb: [{ plug: "A", count: 9 }] },
		);
		expect(result.isLeft).toBe(false);
		expect(result.found.map(({ points, byCriterion }) => [points, byCriterion])).toEqual([
			[null, []],
			[null, []],
		]);
		const [first, second] = result.found.map(({ score }) => score);
		expect(first).toBeGreaterThanOrEqual(second ?? 0);
	});

	test("where none is left the nearest of those that fell out is named: the one that fails least", () => {
		const result = like(
			"cheaper",
			{ price: price(100) },
			{ price: price(50), socket: "Harbour 2", form: "E-ATX" },
			{ price: price(90), socket: "Harbour 2" },
			{ price: price(120) },
		);
		expect(result.found).toEqual([]);
		expect(result.nearestFallen?.boardId).toBe("board-3");
		expect(result.nearestFallen?.failedRuleIds).toContain(result.nearestFallen?.stoppedBy);
	});

	test("no such board", () => {
		const judgement = judge(demo, foldAnswers({}, demoContext));
		expect(likeThisBut(judgement, advise(judgement, {}), "no-board", "cheaper")).toBeNull();
	});
});

describe("cooler", () => {
	const quiet = scenarios.find(({ name }) => name === "quiet-desk.json")?.file.answers ?? {};
	const coolest = (market: typeof demo) => {
		const judgement = judge(market, foldAnswers(quiet, { market, asOf: demoContext.asOf }));
		return likeThisBut(judgement, advise(judgement, quiet), "pennywhistle-hornpipe", "cooler");
	};

	test("the range lies higher at its low end by a degree or more, and no lower at its high end", () => {
		const result = coolest(wholeDemo);
		expect(result?.found.length).toBe(5);
		for (const { from, to } of result?.found ?? []) {
			expect((to.spareK?.low ?? 0) - (from.spareK?.low ?? 0)).toBeGreaterThanOrEqual(1);
			expect(to.spareK?.high).toBeGreaterThanOrEqual(from.spareK?.high ?? 0);
		}
	});

	test("a board of which nothing is known of its stages is left out, never found", () => {
		const [cooler] = coolest(wholeDemo)?.found ?? [];
		const board = wholeDemo.parts.board.map((one) => {
			const { powerDelivery: _, ...rest } = one;
			return one.id === cooler?.boardId ? rest : one;
		});
		const result = coolest({ ...wholeDemo, parts: { ...wholeDemo.parts, board } });
		expect(result?.found.map(({ boardId }) => boardId)).not.toContain(cooler?.boardId);
		expect(result?.leftOut).toContain(cooler?.boardId);
	});
});

test("of any answers: found are boards left, better that way, nearest first, and the criteria sum to the points", () => {
	fc.assert(
		fc.property(
			anyAnswers,
			fc.constantFrom(...demo.parts.board.map(({ id }) => id)),
			fc.constantFrom(...likeDirections),
			(answers, boardId, direction) => {
				const judgement = judge(demo, foldAnswers(answers, demoContext));
				const { ranking } = advise(judgement, answers);
				const result = likeThisBut(judgement, { ranking }, boardId, direction);
				if (!result) throw new Error("it is in the market");
				const left = new Set(ranking.map((one) => one.boardId));
				expect(result.isLeft).toBe(left.has(boardId));
				expect(result.found.length).toBeLessThanOrEqual(5);
				expect(result.more > 0 ? result.found.length : 5).toBe(5);
				for (const { boardId: id, points, byCriterion } of result.found) {
					expect(left.has(id) && id !== boardId).toBe(true);
					expect(result.leftOut).not.toContain(id);
					const score = (one: string) => ranking.find((entry) => entry.boardId === one)?.score.mid ?? Number.NaN;
					if (result.isLeft) {
						expect(points).toBeCloseTo(score(id) - score(boardId), 9);
						expect(byCriterion.reduce((sum, part) => sum + part.points, 0)).toBeCloseTo(points ?? Number.NaN, 9);
					} else expect(points).toBeNull();
				}
				if (!result.isKnown) expect(result.found).toEqual([]);
				if (result.found.length > 0) expect(result.nearestFallen).toBeNull();
				else if (result.nearestFallen) expect(left.has(result.nearestFallen.boardId)).toBe(false);
				if (result.isLeft && judgement.counts.fits === left.size) {
					const lost = result.found.map(({ byCriterion }) =>
						byCriterion.reduce((sum, part) => sum + Math.max(0, -part.points), 0),
					);
					expect(lost).toEqual([...lost].sort((one, other) => one - other));
				}
			},
		),
		{ numRuns: 60 },
	);
});
