import { describe, expect, test } from "vitest";
import { judge } from "../../src/choose/judge.ts";
import type { OwnPart } from "../../src/parts/answers-file.ts";
import type { Board } from "../../src/parts/board.ts";
import { type FormDraft, valueIn, withoutValue } from "../../src/parts/form-draft.ts";
import type { Market } from "../../src/parts/market.ts";
import { foldAnswers } from "../../src/questions/fold-answers.ts";
import { findingWords } from "../../src/rules/finding-words.ts";
import { powerToldOf, powerWords } from "../../src/sheet/power-words.ts";
import { marketOf } from "../../src/walk/market-of.ts";
import { ownPartsOf } from "../../src/walk/own-parts-list.ts";
import { type ToldFact, toldFact, toldPath, toldValue, untold } from "../../src/walk/told-fact.ts";
import { wholeDemo } from "../choose/demo.ts";
import { deepFreeze, demo, scenarios } from "./walk-in-demo.ts";

const thin: Board = deepFreeze({ id: "my-board", name: "My Board", form: "Mini-ITX", socket: "Harbour 2" });
const market = marketWith(thin);

function marketWith(board: Board): Market {
	return deepFreeze(marketOf(wholeDemo, [{ kind: "board", part: board }]));
}

function tell(fact: Partial<ToldFact>, ownParts: readonly OwnPart[] = [], of: Market = market) {
	return toldFact(of, ownParts, {
		boardId: "my-board",
		path: "memory.slots",
		value: 2,
		by: "the shop",
		date: "2026-11-28",
		...fact,
	});
}

function told(fact: Partial<ToldFact>, ownParts: readonly OwnPart[] = [], of: Market = market) {
	const result = tell(fact, ownParts, of);
	if ("problem" in result) throw new Error(`${result.problem} ${JSON.stringify(result.contradiction)}`);
	return result;
}

const boardOf = ({ own }: { readonly own: OwnPart }) => own.part as Board;

describe("what is noted", () => {
	test("the fact, who told it, when, and the answer as it came", () => {
		const board = boardOf(told({ quote: "  two,\n I think " }));
		expect(board.memory).toEqual({ slots: 2 });
		expect(board.evidence).toEqual({
			"memory.slots": {
				standing: "stated",
				quote: "two, I think",
				where: "told by the shop",
				date: "2026-11-28",
				by: "the shop",
			},
		});
	});

	test("the copy takes the place of the market's board, which stays as it is", () => {
		const { ownParts } = told({});
		const boards = marketOf(market, ownParts).parts.board.filter(({ id }) => id === "my-board");
		expect(boards).toHaveLength(1);
		expect(boards[0]?.memory?.slots).toBe(2);
	});

	test("a second fact joins the first in one part", () => {
		const first = told({});
		const second = told({ path: "chipsetFan", value: false, by: "Ada" }, first.ownParts);
		expect(second.ownParts).toHaveLength(1);
		expect(boardOf(second)).toMatchObject({ memory: { slots: 2 }, chipsetFan: false });
		expect(Object.keys(boardOf(second).evidence ?? {})).toEqual(["memory.slots", "chipsetFan"]);
	});

	test("an invented board stays marked so, and is no part of the person's own", () => {
		const [board] = wholeDemo.parts.board;
		const { ownParts, own } = told(
			{ boardId: board?.id ?? "", path: "lit", value: true, replace: true },
			[],
			wholeDemo,
		);
		expect(boardOf({ own }).invented).toBe(true);
		expect(ownPartsOf({ kept: [], ownParts })).toEqual([]);
		expect(ownPartsOf({ kept: [own], ownParts })).toEqual([own]);
	});

	test("a price takes its day with it", () => {
		const price = { minor: 12_900, currency: "EUR" };
		expect(boardOf(told({ path: "price", value: price }))).toMatchObject({ price, checkedOn: "2026-11-28" });
	});
});

describe("what was known before", () => {
	const stated = marketWith({ ...thin, memory: { slots: 4 } });

	test("what is stated otherwise is not silently taken: both are told", () => {
		expect(tell({}, [], stated)).toEqual({
			problem: "Something else is stated of this board.",
			contradiction: {
				stated: "Memory slots, as known until now: 4.",
				told: "the shop says: 2.",
			},
		});
		expect(boardOf(told({ replace: true }, [], stated)).memory?.slots).toBe(2);
	});

	test("what one told stands against what another tells", () => {
		const first = told({ by: "Ada" });
		expect(tell({ value: 4, by: "Ben" }, first.ownParts)).toMatchObject({
			contradiction: { stated: "Memory slots, told by Ada on 2026-11-28: 2.", told: "Ben says: 4." },
		});
	});

	test("what was assumed gives way", () => {
		const assumed = marketWith({
			...thin,
			memory: { slots: 4 },
			evidence: { "memory.slots": { standing: "assumed" } },
		});
		expect(boardOf(told({}, [], assumed)).evidence?.["memory.slots"]?.standing).toBe("stated");
		// A Mini-ITX board is assumed to be 170 mm deep; nothing is stated of it.
		const { ownParts } = told({ path: "depthMm", value: 172 });
		const judged = judge(marketOf(market, ownParts), foldAnswers({}, { market, asOf: demo.asOf }));
		const subject = judged.boards.find(({ board }) => board.id === "my-board")?.subject;
		expect(subject?.board?.depthMm).toBe(172);
		expect(subject?.assumed.map(({ path }) => path)).not.toContain("depthMm");
	});

	test("the same once more is no contradiction, in whatever order a list stands", () => {
		const two = marketWith({ ...thin, memory: { slots: 2 }, pictureSockets: ["HDMI", "DisplayPort"] });
		expect(boardOf(told({}, [], two)).memory?.slots).toBe(2);
		told({ path: "pictureSockets", value: ["DisplayPort", "HDMI"] }, [], two);
		expect(tell({ path: "pictureSockets", value: ["HDMI"] }, [], two)).toHaveProperty("contradiction");
	});

	test("a shorter telling of a list loses nothing of the longer one", () => {
		const sockets = [
			{ name: "M2_1", wiredLanes: 4, generation: 5 },
			{ name: "M2_2", wiredLanes: 4, generation: 4 },
		];
		const known = marketWith({ ...thin, m2Sockets: sockets });
		const short = [{ name: "M.2 socket 1" }, { name: "M.2 socket 2", generation: 5 }];
		expect(boardOf(told({ path: "m2Sockets", value: short }, [], known)).m2Sockets).toEqual(sockets);
		const other = [{ name: "M.2 socket 1", generation: 3 }, { name: "M.2 socket 2" }];
		expect(tell({ path: "m2Sockets", value: other }, [], known)).toHaveProperty("contradiction");
		expect(tell({ path: "m2Sockets", value: short.slice(1) }, [], known)).toHaveProperty("contradiction");
	});

	test.each(["F12", "F2", "2026.1"])(
		"another firmware in the box is no more taken in silence than any other fact (%s)",
		(value) => {
			const known = marketWith({ ...thin, firmware: { oldestInShops: "F3" } });
			const path = "firmware.oldestInShops";
			expect(tell({ path, value }, [], known)).toMatchObject({
				contradiction: { stated: expect.stringContaining("F3"), told: `the shop says: ${value}.` },
			});
			expect(boardOf(told({ path, value, replace: true }, [], known)).firmware?.oldestInShops).toBe(value);
			told({ path, value: "F3" }, [], known);
		},
	);
});

test("what was told can be taken back: what is stated counts again, and the rest stays", () => {
	const stated = marketWith({
		...thin,
		memory: { slots: 4 },
		evidence: { "memory.slots": { standing: "stated", where: "page" } },
	});
	const both = told({ path: "chipsetFan", value: true }, told({ replace: true }, [], stated).ownParts, stated);
	const back = untold(stated, both.ownParts, "my-board", "memory.slots");
	expect("own" in back && back.own.part).toMatchObject({
		memory: { slots: 4 },
		chipsetFan: true,
		evidence: { "memory.slots": { where: "page" }, chipsetFan: { where: "told by the shop" } },
	});
	const alone = untold(market, told({}).ownParts, "my-board", "memory.slots");
	expect("own" in alone && alone.own.part).toEqual(thin);
	expect(untold(market, [], "my-board", "memory.slots")).toHaveProperty("problem");
});

describe("support lists and offers", () => {
	const row = { processor: "Tallowfinch Deckhand", fromVersion: "F5" };
	const one = (more: object = {}) => ({
		path: "supportList",
		value: { partial: true as const, rows: [{ ...row, ...more }] },
	});

	test("a told row joins a list of which only some rows are noted", () => {
		const known = marketWith({ ...thin, supportList: { partial: true, rows: [{ processor: "Cadmor 7 2400" }] } });
		expect(boardOf(told(one(), [], known)).supportList).toEqual({
			partial: true,
			rows: [{ processor: "Cadmor 7 2400" }, row],
		});
		expect(toldValue("supportList", one().value)).toBe("Tallowfinch Deckhand, from firmware F5");
	});

	test("a whole list that lacks it, or names another version, contradicts", () => {
		const lacks = marketWith({ ...thin, supportList: { rows: [{ processor: "Cadmor 7 2400" }] } });
		expect(tell(one(), [], lacks)).toHaveProperty("contradiction");
		const other = marketWith({ ...thin, supportList: { rows: [{ ...row, fromVersion: "F9" }] } });
		expect(tell(one(), [], other)).toHaveProperty("contradiction");
		const same = marketWith({ ...thin, supportList: { rows: [row] } });
		expect(boardOf(told(one(), [], same)).supportList?.rows).toEqual([row]);
	});

	test("taking what was told of one processor keeps what the list says of all others", () => {
		const others = [{ processor: "Cadmor 7 2400" }, { processor: "Cadmor 5 2200", fromVersion: "F2" }];
		const other = marketWith({
			...thin,
			supportList: { readOn: "2026-11-01", rows: [...others, { ...row, fromVersion: "F9" }] },
		});
		const after = boardOf(told({ ...one(), replace: true }, [], other)).supportList;
		expect(after).toEqual({ readOn: "2026-11-01", rows: [...others, row] });
		const lacks = marketWith({ ...thin, supportList: { rows: others } });
		expect(boardOf(told({ ...one(), replace: true }, [], lacks)).supportList?.rows).toEqual([...others, row]);
	});

	test("a version that the list leaves open is filled in", () => {
		const open = { processor: row.processor, versionOpen: true };
		const known = marketWith({ ...thin, supportList: { rows: [open, { processor: "Cadmor 7 2400" }] } });
		expect(boardOf(told(one(), [], known)).supportList?.rows).toEqual([{ processor: "Cadmor 7 2400" }, row]);
	});

	test("a day of return joins its offer, and does not move silently", () => {
		const offer = { price: { minor: 9900, currency: "EUR" }, condition: "new" as const };
		const known = marketWith({ ...thin, offers: [offer] });
		const value = (returnableUntil: string) => [{ ...offer, returnableUntil }];
		const first = told({ path: "offers", value: value("2026-12-24") }, [], known);
		expect(boardOf(first).offers).toEqual(value("2026-12-24"));
		expect(tell({ path: "offers", value: value("2026-12-31") }, first.ownParts, known)).toHaveProperty("contradiction");
	});
});

describe("a measured temperature", () => {
	const path = "powerDelivery.measurements";
	const published = { loadW: 150, airC: 22, stageC: 71, minutes: 30, where: "a test on paper" };
	const value = [{ loadW: 150, airC: 24, stageC: 98 }];

	test("says of itself who told it, and stands beside those that are known", () => {
		const known = marketWith({ ...thin, powerDelivery: { measurements: [published] } });
		const noted = boardOf(told({ path, value }, [], known)).powerDelivery?.measurements;
		expect(noted).toEqual([published, { ...value[0], where: "told by the shop", date: "2026-11-28" }]);
		const again = told({ path, value, by: "Ada" }, told({ path, value }, [], known).ownParts, known);
		expect(boardOf(again).powerDelivery?.measurements).toEqual(noted);
	});

	test("of the very board narrows what it is thought to reach, upwards too, and is not called published", () => {
		const answers = scenarios.find(({ name }) => name === "quiet-desk")?.state.answers ?? {};
		const build = foldAnswers(answers, { market, asOf: demo.asOf });
		const before = powerToldOf(thin, build.facts);
		const after = powerToldOf(boardOf(told({ path, value })), build.facts);
		const [was, is] = [before.steady?.hotSpotC, after.steady?.hotSpotC];
		if (!was || !is) throw new Error("no figures");
		expect(is.low).toBeGreaterThan(was.low);
		expect(is.high - is.low).toBeLessThan(was.high - was.low);
		const section = powerWords(after).find(({ heading }) => heading === "A measurement that was told");
		expect(section?.lines.join(" ")).toMatch(
			/The power stages had 98 degrees C at 150 W.*Told by the shop on 2026-11-28\./,
		);
		expect(JSON.stringify(powerWords(after))).not.toContain('"A published test"');
		const judged = judge(marketOf(market, told({ path, value }).ownParts), build);
		const words = judged.boards
			.find(({ board }) => board.id === "my-board")
			?.findings.filter(({ ruleId }) => ruleId === "quality/steady-power")
			.map(findingWords);
		expect(words?.join()).toContain("A measurement that was told is counted in.");
	});
});

describe("what cannot be noted", () => {
	test.each([
		[{ boardId: "no-board" }, "There is no board"],
		[{ boardId: "__proto__" }, "There is no board"],
		[{ path: "__proto__" }, "A board has no fact"],
		[{ path: "constructor.prototype" }, "A board has no fact"],
		[{ path: "evidence" }, "A board has no fact"],
		[{ path: "invented", value: false }, "A board has no fact"],
		[{ path: "id", value: "other" }, "A board has no fact"],
		[{ path: "name", value: "other" }, "A board has no fact"],
		[{ path: "memory.slots[0]" }, "A board has no fact"],
		[{ value: 3.5 }, "cannot be so"],
		[{ value: -1 }, "cannot be so"],
		[{ value: "4" }, "cannot be so"],
		[{ value: null }, "cannot be so"],
		[{ value: undefined }, "Nothing was told"],
		[{ path: "wireless.standard", value: "Wi-Fi 7" }, "cannot be so"],
		[{ by: " \u202e " }, "Say who told it"],
		[{ by: "x".repeat(61) }, "Say who told it"],
		[{ date: "yesterday" }, "cannot be so"],
	])("%j", (fact, words) => {
		const result = tell(fact as Partial<ToldFact>);
		expect("problem" in result ? result.problem : "taken").toContain(words);
	});

	test("control characters of a teller and a quote are gone, and a long quote is cut", () => {
		const board = boardOf(told({ by: "A\u001b[31mda\n", quote: `\u0007${"long ".repeat(200)}` }));
		expect(board.evidence?.["memory.slots"]).toMatchObject({ by: "Ada", where: "told by Ada" });
		expect(board.evidence?.["memory.slots"]?.quote?.length).toBeLessThanOrEqual(400);
	});

	test("a path is known with and without the board in front", () => {
		expect(toldPath("board.memory.slots")).toBe("memory.slots");
		expect(toldPath(" memory.slots ")).toBe("memory.slots");
		expect(toldPath("processor.name")).toBeNull();
	});
});

/** Facts that a shop could tell, of boards in the demonstration that have them. */
const tellable = [
	"memory.slots",
	"memory.type",
	"memory.maxGb",
	"power.processorPlugs",
	"m2Sockets",
	"cardSlots",
	"rearUsb",
	"drivePorts",
	"depthMm",
	"socket",
	"supportList",
	"firmware.oldestInShops",
	"recovery.flashWithoutProcessor",
	"pictureSockets",
	"layout.ownBackPlate",
] as const;

describe.each(scenarios)("$name", ({ state }) => {
	const verdictsIn = (of: Market) =>
		new Map(
			judge(of, foldAnswers(state.answers, { market: of, asOf: demo.asOf })).boards.map(({ board, verdict }) => [
				board.id,
				verdict,
			]),
		);
	const given = marketOf(demo.market, state.ownParts);
	const whole = verdictsIn(given);

	test.each(tellable)(
		"%s: told, it gives the verdict that the fact itself gives, and turns no sure one round",
		(path) => {
			const keys = path.split(".");
			const known = given.parts.board.filter((board) => valueIn(board, keys) !== undefined);
			const without = (board: Board) => withoutValue(board as FormDraft, keys) as unknown as Board;
			const lacking: Market = {
				...given,
				parts: { ...given.parts, board: given.parts.board.map((one) => (known.includes(one) ? without(one) : one)) },
			};
			const before = verdictsIn(lacking);
			let ownParts: readonly OwnPart[] = [];
			for (const board of known)
				ownParts = told(
					{ boardId: board.id, path, value: valueIn(board, keys), by: "the shop" },
					ownParts,
					lacking,
				).ownParts;
			const after = verdictsIn(marketOf(lacking, ownParts));
			for (const { id } of known) {
				expect(after.get(id), `${id} ${path}`).toBe(whole.get(id));
				// What no list tells is taken from the table of chipsets, which a list of this very board may outdo.
				if (path !== "supportList" && before.get(id) !== "cannot-tell")
					expect(after.get(id), `${id} ${path}`).toBe(before.get(id));
			}
		},
	);
});
