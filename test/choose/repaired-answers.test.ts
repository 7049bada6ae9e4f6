import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type Judgement, judge } from "../../src/choose/judge.ts";
import { type Repair, repairedAnswers, repairedWays } from "../../src/choose/repaired-answers.ts";
import { waysOut } from "../../src/choose/ways-out.ts";
import type { Answers, AnswerValue } from "../../src/parts/answers-file.ts";
import type { Board } from "../../src/parts/board.ts";
import { makeMarket } from "../../src/parts/make-market.ts";
import type { Market, PartsFile } from "../../src/parts/market.ts";
import { foldAnswers } from "../../src/questions/fold-answers.ts";
import { anyAnswers, demo } from "./demo.ts";
import { goodBoard } from "./small-market.ts";

const asOf = "2026-11-24";
const eur = (units: number) => ({ minor: units * 100, currency: "EUR" });

const parts: Partial<PartsFile> = {
	processors: [
		{
			id: "piccolo",
			name: "Piccolo",
			graphics: true,
			socket: "Kettle 7",
			price: eur(150),
			memory: { types: ["DDR5"], channels: 2 },
		},
		{ id: "bassoon", name: "Bassoon", socket: "Harbour 2", price: eur(400) },
		{ id: "oboe", name: "Oboe", socket: "Harbour 2", price: eur(160) },
	],
	cases: [
		{ id: "bandbox", name: "Bandbox", boardForms: ["Mini-ITX"], price: eur(60) },
		{ id: "trunk", name: "Trunk", boardForms: ["ATX", "Mini-ITX"], price: eur(90) },
		{ id: "chest", name: "Chest", boardForms: ["ATX"], price: eur(65) },
	],
	supplies: [{ id: "bellows", name: "Bellows", processorPlugs: ["8-pin"], mainPlug: "24-pin", watts: 500 }],
	drives: ["one", "two", "three"].map((id) => ({
		id,
		name: `Stick ${id}`,
		shape: "M.2" as const,
		lengthMm: 80,
		key: "M" as const,
		link: "PCI Express" as const,
		lanes: 4,
	})),
};

const socket = (name: string) => ({
	name,
	key: "M" as const,
	lengthsMm: [80],
	wiredLanes: 4,
	sata: false,
	from: "processor" as const,
});

function marketOf(boards: readonly Partial<Board>[]): Market {
	const named = boards.map((facts, index) => ({
		id: `board-${index + 1}`,
		name: `Board ${index + 1}`,
		...goodBoard,
		supportList: { rows: [{ processor: "Piccolo" }, { processor: "Oboe" }, { processor: "Bassoon" }] },
		...facts,
	}));
	const { market, faults } = {
		faults: [],
		...makeMarket("small", [{ schema: "boardwalk/parts@1", ...parts, boards: named } as never]),
	};
	expect(faults).toEqual([]);
	return market;
}

const answersOf = (given: Readonly<Record<string, AnswerValue>>): Answers =>
	Object.fromEntries(Object.entries(given).map(([id, value]) => [id, { status: "answered", value }]));

/** All that has no part in a case: to be bought to suit, so that nothing else takes a board out. */
const suited: Readonly<Record<string, AnswerValue>> = {
	"fit/processor": { part: "piccolo" },
	"fit/case": "open",
	"fit/graphics-card": "open",
	"fit/memory": "open",
	"fit/cooler": "open",
	"fit/supply": "open",
};

function repaired(boards: readonly Partial<Board>[], given: Readonly<Record<string, AnswerValue>>) {
	const market = marketOf(boards);
	const answers = answersOf({ ...suited, ...given });
	const judgement = judge(market, foldAnswers(answers, { market, asOf }));
	const ways = waysOut(judgement);
	return repairedWays(judgement, answers, ways);
}

const changesOf = (found: ReturnType<typeof repaired>) =>
	found.map(({ repairs }) => repairs.map(({ changes }) => changes.map(({ questionId, to }) => [questionId, to])));

const back = ({ fits, cannotTell }: Repair) => [...fits, ...cannotTell];

describe("what to change", () => {
	test("the limit rises to the next price, not further", () => {
		const found = repaired([{ price: eur(300) }, { price: eur(225) }], {
			"about/budget": eur(210),
		});
		expect(changesOf(found)).toEqual([[[["about/budget", eur(225)]]]]);
		expect(found[0]?.repairs.map(back)).toEqual([["board-2"]]);
	});

	test("where of the nearest it cannot be told, the next with which one surely fits is offered too", () => {
		const unsure = { power: {} };
		const slot = { name: "SLOT_1", bus: "PCI Express" as const, lengthLanes: 16, wiredLanes: 16 };
		const found = repaired(
			[
				{ price: eur(300), cardSlots: [slot] },
				{ price: eur(225), ...unsure },
				{ price: eur(240), ...unsure },
			],
			{
				"about/budget": eur(210),
				"fit/supply": { part: "bellows" },
			},
		);
		expect(changesOf(found)[0]).toEqual([[["about/budget", eur(225)]], [["about/budget", eur(300)]]]);
		expect(found[0]?.repairs.map(({ fits, cannotTell }) => [fits, cannotTell])).toEqual([
			[[], ["board-2"]],
			[["board-1"], ["board-2", "board-3"]],
		]);
		// Where none surely fits, nothing more is offered.
		const none = repaired(
			[
				{ price: eur(225), ...unsure },
				{ price: eur(240), ...unsure },
			],
			{
				"about/budget": eur(210),
				"fit/supply": { part: "bellows" },
			},
		);
		expect(changesOf(none)[0]).toEqual([[["about/budget", eur(225)]]]);
	});

	test("a limit raised to the price alone says so where the board makes one buy more", () => {
		const slot = { name: "SLOT_1", bus: "PCI Express" as const, lengthLanes: 16, wiredLanes: 16 };
		const board = { price: eur(225), cardSlots: [slot], wireless: { builtIn: false } };
		const given = { "about/budget": eur(210), "fit/supply": { part: "bellows" }, "features/wireless": "must" };
		const [repair] = repaired([board], given)[0]?.repairs ?? [];
		expect(repair).toMatchObject({ fits: ["board-1"], leavesNothing: [{ boardId: "board-1" }] });
		expect(repair?.leavesNothing[0]?.extras.length).toBeGreaterThan(0);
		const [without] = repaired([{ ...board, wireless: { builtIn: true } }], given)[0]?.repairs ?? [];
		expect(without).toMatchObject({ fits: ["board-1"], leavesNothing: [] });
	});

	test("where the money left decides, it is the money in all that must grow", () => {
		const found = repaired([{ price: eur(225) }], { "about/money-in-all": eur(350), "about/budget": eur(300) });
		// The processor costs 150.
		expect(changesOf(found)).toEqual([[[["about/money-in-all", eur(375)]]]]);
	});

	test("where both limits stand in the way, both are changed", () => {
		const found = repaired([{ price: eur(225) }], { "about/money-in-all": eur(350), "about/budget": eur(210) });
		expect(
			changesOf(found)[0]?.[0]
				?.map(([id]) => id)
				.sort(),
		).toEqual(["about/budget", "about/money-in-all"]);
	});

	test("a must becomes a would-like, and no less than that", () => {
		const found = repaired([{ rearUsb: [{ plug: "A", count: 4 }] }], { "features/rear-usb-c": "must" });
		expect(changesOf(found)).toEqual([[[["features/rear-usb-c", "would-like"]]]]);
	});

	test("as many drives as there are sockets for", () => {
		const boards = [{ m2Sockets: [socket("M2_1"), socket("M2_2")], cardSlots: [], drivePorts: [], sharing: [] }];
		const found = repaired(boards, {
			"fit/drives": ["one", "two", "three"],
			"fit/graphics-card": "none",
		});
		expect(changesOf(found)).toEqual([[[["fit/drives", ["one", "two"]]]]]);
	});

	test("another part is named from the market, the nearest in price first", () => {
		const found = repaired([{}], { "fit/case": { part: "bandbox" } });
		const [change] = found[0]?.repairs[0]?.changes ?? [];
		expect(change).toEqual({
			questionId: "fit/case",
			from: { part: "bandbox" },
			to: null,
			partIds: ["chest", "trunk"],
		});
	});

	test("another processor cures what hangs on it, in one change", () => {
		const found = repaired([{ socket: "Harbour 2" }], {});
		const [change] = found[0]?.repairs[0]?.changes ?? [];
		expect(change?.questionId).toBe("fit/processor");
		expect(change?.partIds).toEqual(["oboe", "bassoon"]);
	});

	test("a part for which no money is left is no way out without it", () => {
		const found = repaired([{ socket: "Harbour 2", price: eur(100) }], { "about/money-in-all": eur(255) });
		// The Oboe costs 160 and the board 100.
		expect(found[0]?.repairs[0]?.changes.map(({ questionId, to }) => [questionId, to])).toEqual([
			["fit/processor", null],
			["about/money-in-all", eur(260)],
		]);
	});

	test("nothing is promised where nothing is known to do it", () => {
		const found = repaired([{ socket: "Nowhere 1" }], {});
		expect(found).toHaveLength(1);
		expect(found[0]?.repairs).toEqual([]);
	});

	test("boards that fit, and those of which nobody can tell, stand apart", () => {
		const found = repaired([{ price: eur(225) }, { price: eur(225), socket: undefined } as never], {
			"about/budget": eur(210),
		});
		const [repair] = found[0]?.repairs ?? [];
		expect(repair?.cannotTell).toContain("board-2");
		expect(repair?.fits).not.toContain("board-2");
	});

	test("the smaller sum comes first, and a wish before any sum", () => {
		const noPlug = { rearUsb: [{ plug: "A" as const, count: 4 }] };
		const plugged = { rearUsb: [{ plug: "C" as const, count: 4 }] };
		const found = repaired(
			[
				{ ...plugged, price: eur(225) },
				{ ...noPlug, price: eur(100) },
			],
			{ "about/budget": eur(210), "features/rear-usb-c": "must" },
		);
		expect(changesOf(found).map(([first]) => first?.[0]?.[0])).toEqual(["features/rear-usb-c", "about/budget"]);
	});
});

function judged(market: Market, answers: Answers): Judgement {
	return judge(market, foldAnswers(answers, { market, asOf }));
}

const isBack = ({ verdict }: { readonly verdict: string }) => verdict !== "does-not-fit";

describe("whatever was answered", () => {
	/** With so little money, hardly a board is left. */
	const poorAnswers = fc
		.tuple(anyAnswers, fc.integer({ min: 2000, max: 15_000 }), fc.boolean())
		.map(
			([answers, minor, isPoor]): Answers =>
				isPoor ? { ...answers, "about/budget": { status: "answered", value: { minor, currency: "EUR" } } } : answers,
		);

	test("every repair, judged again, brings back just the boards it names, and one of its way's; none does with less", () => {
		let seen = 0;
		fc.assert(
			fc.property(poorAnswers, (answers) => {
				const judgement = judged(demo, answers);
				for (const way of repairedWays(judgement, answers, waysOut(judgement))) {
					for (const repair of way.repairs) {
						seen += 1;
						const again = repairedAnswers(answers, repair.changes, { market: demo, asOf }).map((one) =>
							judged(demo, one),
						);
						const verdicts = demo.parts.board.map(({ id }, index) => ({
							id,
							all: again.map(({ boards }) => boards[index]?.verdict),
						}));
						expect(repair.fits).toEqual(verdicts.filter(({ all }) => all.includes("fits")).map(({ id }) => id));
						expect([...back(repair)].sort()).toEqual(
							verdicts
								.filter(({ all }) => all.some((verdict) => verdict !== "does-not-fit"))
								.map(({ id }) => id)
								.sort(),
						);
						expect(way.boardIds.some((id) => back(repair).includes(id))).toBe(true);
						for (const { questionId } of repair.changes) {
							const fewer = repair.changes.filter((one) => one.questionId !== questionId);
							const [less] = fewer.length > 0 ? repairedAnswers(answers, fewer, { market: demo, asOf }) : [answers];
							const left = less ? judged(demo, less).boards.filter(isBack) : [];
							expect(left.filter(({ board }) => way.boardIds.includes(board.id))).toEqual([]);
						}
						for (const { questionId, to } of repair.changes) {
							if (typeof to !== "object" || to === null || !("minor" in to)) continue;
							const under = { ...to, minor: to.minor - 1 };
							const changes = repair.changes.map((one) =>
								one.questionId === questionId ? { ...one, to: under } : one,
							);
							const boards = repairedAnswers(answers, changes, { market: demo, asOf }).slice(0, 1);
							const left = boards.flatMap((one) => judged(demo, one).boards.filter(isBack));
							expect(left.filter(({ board }) => way.boardIds.includes(board.id))).toEqual([]);
						}
					}
				}
			}),
			{ numRuns: 30 },
		);
		expect(seen).toBeGreaterThan(10);
	});
});
