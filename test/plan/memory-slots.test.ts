import { expect, test } from "vitest";
import type { Board } from "../../src/parts/board.ts";
import { memorySlotsOf } from "../../src/plan/memory-slots.ts";

const slotOrder = { "1": ["A2"], "2": ["A2", "B2"], "4": ["A1", "A2", "B1", "B2"] };
const board = (memory: Board["memory"]) => ({ memory });
const usual = board({ slots: 4, slotOrder });

test.each([
	// The list for four names all slots; what is not filled of them stays empty.
	[1, ["A2"], ["A1", "B1", "B2"]],
	[2, ["A2", "B2"], ["A1", "B1"]],
	[4, ["A1", "A2", "B1", "B2"], []],
])("%i modules on a board of four slots", (modules, fill, empty) => {
	expect(memorySlotsOf(usual, modules)).toEqual({ fill, empty });
});

test.each([
	["a number that the manual does not name", usual, 3],
	["more modules than slots", usual, 8],
	["no modules", usual, 0],
	["nobody knows how many modules", usual, undefined],
	["no manual read", board({ slots: 4 }), 2],
	["nothing known of the memory", {}, 2],
	["a list with a slot too few", board({ slots: 4, slotOrder: { "2": ["A2"] } }), 2],
	["a list that names a slot twice", board({ slots: 4, slotOrder: { "2": ["A2", "A2"] } }), 2],
])("%s: not known", (_, given, modules) => {
	expect(memorySlotsOf(given, modules)).toBeNull();
});

test("which stay empty is told only where every slot has a name", () => {
	// Of four slots two are named, so the names of the others are not known.
	expect(memorySlotsOf(board({ slots: 4, slotOrder: { "2": ["A2", "B2"] } }), 2)).toEqual({
		fill: ["A2", "B2"],
		empty: null,
	});
	// Nobody knows how many slots there are.
	expect(memorySlotsOf(board({ slotOrder }), 2)).toEqual({ fill: ["A2", "B2"], empty: null });
	// Lists together name all: A1 and B1 for two, and A1 for one.
	expect(memorySlotsOf(board({ slots: 2, slotOrder: { "1": ["A1"], "2": ["A1", "B1"] } }), 1)).toEqual({
		fill: ["A1"],
		empty: ["B1"],
	});
	// All slots are filled, though no other list is there.
	expect(memorySlotsOf(board({ slots: 2, slotOrder: { "2": ["A1", "B1"] } }), 2)?.empty).toEqual([]);
});

test("a list that cannot be trusted names no slot that stays empty", () => {
	const order = { "1": ["A2"], "2": ["A2", "B2", "B2"] };
	expect(memorySlotsOf(board({ slots: 2, slotOrder: order }), 1)).toEqual({ fill: ["A2"], empty: null });
});
