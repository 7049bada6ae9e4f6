import { describe, expect, test } from "vitest";
import { judge } from "../../src/choose/judge.ts";
import { waysOut } from "../../src/choose/ways-out.ts";
import type { Board } from "../../src/parts/board.ts";
import { buildOf, goodBoard, goodBuild, smallMarket } from "./small-market.ts";

const dear = { price: { minor: 20_000, currency: "EUR" } };
const otherSocket = { socket: "Harbour 2" };
const otherMemory = { memory: { type: "DDR4" as const, slots: 2 } };
const tooLarge = { form: "E-ATX" as const };

const ways = (boards: readonly Partial<Board>[], given: Parameters<typeof buildOf> = [goodBuild]) =>
	waysOut(judge(smallMarket(boards.map((facts) => ({ ...goodBoard, ...facts }))), buildOf(...given)));

describe("none where a board is left", () => {
	test("one fits", () => {
		expect(ways([{}, dear])).toEqual([]);
	});

	test("of one it cannot be told", () => {
		expect(ways([{ price: { minor: 1, currency: "JPY" } }, dear])).toEqual([]);
	});

	test("there is no board at all", () => {
		expect(ways([])).toEqual([]);
	});
});

describe("nothing fits", () => {
	test("one board, one rule", () => {
		expect(ways([dear])).toEqual([{ giveUp: ["fit/price-cap"], boardIds: ["board-1"] }]);
	});

	test("fewer demands first, then more boards brought back", () => {
		expect(ways([{ ...otherSocket, ...otherMemory }, dear, tooLarge, dear])).toEqual([
			{ giveUp: ["fit/price-cap"], boardIds: ["board-2", "board-4"] },
			{ giveUp: ["fit/board-form"], boardIds: ["board-3"] },
			{ giveUp: ["fit/memory-modules", "fit/socket"], boardIds: ["board-1"] },
		]);
	});

	test("one demand before two, though the two bring back more boards", () => {
		const twice = { ...otherSocket, ...otherMemory };
		expect(ways([twice, twice, dear]).map(({ giveUp }) => giveUp.length)).toEqual([1, 2]);
	});

	test("a set that contains another is no smallest way", () => {
		expect(ways([{ ...dear, ...otherSocket }, dear])).toEqual([{ giveUp: ["fit/price-cap"], boardIds: ["board-2"] }]);
	});

	test("a board that needs less is brought back along with one that needs more", () => {
		expect(
			ways([
				{ ...dear, ...otherSocket },
				{ ...dear, ...otherSocket },
				{ ...tooLarge, ...otherMemory },
			]),
		).toEqual([
			{ giveUp: ["fit/price-cap", "fit/socket"], boardIds: ["board-1", "board-2"] },
			{ giveUp: ["fit/board-form", "fit/memory-modules"], boardIds: ["board-3"] },
		]);
	});

	test("of as many demands and boards: by their names", () => {
		expect(ways([otherSocket, dear, tooLarge]).map(({ giveUp }) => giveUp.join())).toEqual([
			"fit/board-form",
			"fit/price-cap",
			"fit/socket",
		]);
	});
});

describe("open answers", () => {
	const open = { ...goodBuild, case: "unknown" as const, supply: "unknown" as const };
	const small = { boardForms: ["Mini-ITX" as const] };
	const large = { boardForms: ["ATX" as const] };
	const [weak, strong] = [{ processorPlugs: [] }, { processorPlugs: ["8-pin" as const] }];

	test("rules that together leave no way: giving up either is enough", () => {
		expect(
			ways(
				[{}],
				[open, { "small, strong": { case: small, supply: strong }, "large, weak": { case: large, supply: weak } }],
			),
		).toEqual([
			{ giveUp: ["fit/board-form"], boardIds: ["board-1"] },
			{ giveUp: ["fit/power-plugs"], boardIds: ["board-1"] },
		]);
	});

	test("a rule that always fails is not all there is to give up", () => {
		expect(
			ways(
				[dear],
				[open, { "small, strong": { case: small, supply: strong }, "large, weak": { case: large, supply: weak } }],
			),
		).toEqual([
			{ giveUp: ["fit/board-form", "fit/price-cap"], boardIds: ["board-1"] },
			{ giveUp: ["fit/power-plugs", "fit/price-cap"], boardIds: ["board-1"] },
		]);
	});

	test("what one way spares need not be given up", () => {
		expect(
			ways(
				[dear],
				[open, { "small, strong": { case: small, supply: strong }, "large, strong": { case: large, supply: strong } }],
			),
		).toEqual([{ giveUp: ["fit/price-cap"], boardIds: ["board-1"] }]);
	});
});
