import { expect, test } from "vitest";
import type { OwnPart } from "../../src/parts/answers-file.ts";
import { findPart } from "../../src/parts/market.ts";
import { partKindNames } from "../../src/parts/part-kinds.ts";
import { marketOf, takenIds } from "../../src/walk/market-of.ts";
import { demo } from "./walk-in-demo.ts";

const board = (id: string, name: string): OwnPart => ({ kind: "board", part: { id, name } });

test("without parts of one's own the market is the very same", () => {
	expect(marketOf(demo.market, [])).toBe(demo.market);
});

test("own parts come last, in their order, and nothing else moves", () => {
	const { parts } = marketOf(demo.market, [board("one", "One"), board("two", "Two")]);
	expect(parts.board.map(({ id }) => id)).toEqual([...demo.market.parts.board.map(({ id }) => id), "one", "two"]);
	for (const kind of partKindNames) if (kind !== "board") expect(parts[kind]).toEqual(demo.market.parts[kind]);
});

test("an own part takes the place of one of the same id and kind, of no other kind", () => {
	const market = marketOf(demo.market, [board("oddment-button", "My Button"), board("larkspur-barn", "Barn board")]);
	expect(findPart(market, "board", "oddment-button")?.name).toBe("My Button");
	expect(market.parts.board).toHaveLength(demo.market.parts.board.length + 1);
	expect(findPart(market, "case", "larkspur-barn")?.name).toBe("Larkspur Barn");
});

test("ids are taken kind by kind", () => {
	expect(takenIds(demo.market, "board").has("oddment-button")).toBe(true);
	expect(takenIds(demo.market, "case").has("oddment-button")).toBe(false);
});
