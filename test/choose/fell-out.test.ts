import { expect, test } from "vitest";
import { fellOut, fellOutBetween } from "../../src/choose/fell-out.ts";
import { judge } from "../../src/choose/judge.ts";
import type { Board } from "../../src/parts/board.ts";
import { buildOf, goodBoard, goodBuild, smallMarket } from "./small-market.ts";

const dear = { price: { minor: 20_000, currency: "EUR" } };
const otherSocket = { socket: "Harbour 2" };
const market = (...boards: Partial<Board>[]) => smallMarket(boards.map((facts) => ({ ...goodBoard, ...facts })));
const groups = (fallen: ReturnType<typeof fellOut>) =>
	fallen.map(({ ruleId, boards }) => [ruleId, ...boards.map(({ board }) => board.id)]);

test("boards by the first rule that takes each out, the largest group first", () => {
	const judgement = judge(
		market(otherSocket, dear, {}, { ...dear, ...otherSocket }, { form: "E-ATX" }),
		buildOf(goodBuild),
	);
	expect(groups(fellOut(judgement))).toEqual([
		["fit/socket", "board-1", "board-4"],
		["fit/board-form", "board-5"],
		["fit/price-cap", "board-2"],
	]);
});

test("none fell out", () => {
	expect(fellOut(judge(market({}), buildOf(goodBuild)))).toEqual([]);
});

test("between two answers only those that the first still held", () => {
	const boards = market(otherSocket, dear, {}, { ...dear, form: "microATX" });
	const { priceCap: _, ...uncapped } = goodBuild;
	const before = judge(boards, buildOf(uncapped));
	const after = judge(boards, buildOf(goodBuild));
	expect(groups(fellOutBetween(before, after))).toEqual([["fit/price-cap", "board-2", "board-4"]]);
	expect(fellOutBetween(after, before)).toEqual([]);
	expect(fellOutBetween(after, after)).toEqual([]);
});

test("a board that came into the market only now was held by nobody", () => {
	const before = judge(market({}), buildOf(goodBuild));
	const after = judge(market({}, dear), buildOf(goodBuild));
	expect(fellOutBetween(before, after)).toEqual([]);
});
