import { describe, expect, test } from "vitest";
import { rowsOf } from "../../src/reference/slot-pitch.ts";
import { type CardSlot, graphicsInSlot, slotNeedOf, slotsBeside, slotsFor } from "../../src/rules/card-places.ts";

const slot = (row: number, lengthLanes: number, wiredLanes = lengthLanes): CardSlot => ({
	name: `SLOT_${row}`,
	bus: "PCI Express",
	row,
	lengthLanes,
	wiredLanes,
});
const names = (slots: readonly CardSlot[]) => slots.map(({ name }) => name);

describe("rows a card fills", () => {
	test.each([
		[20.32, 1],
		[20.82, 1],
		[20.83, 2],
		[40, 2],
		[40.64, 2],
		[41, 2],
		[41.2, 3],
		[60.96, 3],
		// Three slots, as pages print them.
		[61, 3],
		[71, 4],
	])("%s mm are %s rows", (thicknessMm, rows) => {
		expect(rowsOf(thicknessMm)).toBe(rows);
	});

	test("of a card not known: from one to four, if there is one at all", () => {
		expect(graphicsInSlot("have", 8, undefined, "best")).toEqual({ lanes: 8, rows: 1 });
		expect(graphicsInSlot("have", undefined, undefined, "worst")).toEqual({ lanes: undefined, rows: 4 });
		expect(graphicsInSlot("unknown", undefined, undefined, "best")).toBeNull();
		expect(graphicsInSlot("unknown", undefined, undefined, "worst")).toEqual({ lanes: undefined, rows: 4 });
		expect(graphicsInSlot("none", undefined, undefined, "worst")).toBeNull();
		expect(graphicsInSlot("open", undefined, undefined, "worst")).toEqual({ lanes: 16, rows: 2 });
	});
});

describe("slots beside the graphics card", () => {
	const slots = [slot(1, 1), slot(2, 16), slot(3, 1), slot(4, 16, 4), slot(5, 1)];

	test.each<[string, Parameters<typeof slotsBeside>, string | null, readonly string[]]>([
		["no card leaves all", [slots, null, "worst"], null, ["SLOT_1", "SLOT_2", "SLOT_3", "SLOT_4", "SLOT_5"]],
		[
			"one row, in the first long slot",
			[slots, { lanes: 16, rows: 1 }, "worst"],
			"SLOT_2",
			["SLOT_1", "SLOT_3", "SLOT_4", "SLOT_5"],
		],
		["two rows", [slots, { lanes: 16, rows: 2 }, "worst"], "SLOT_2", ["SLOT_1", "SLOT_4", "SLOT_5"]],
		["three rows", [slots, { lanes: 16, rows: 3 }, "worst"], "SLOT_2", ["SLOT_1", "SLOT_5"]],
		["rows beyond the board", [slots, { lanes: 16, rows: 9 }, "worst"], "SLOT_2", ["SLOT_1"]],
		[
			"a short card in a long slot",
			[slots, { lanes: 1, rows: 1 }, "worst"],
			"SLOT_2",
			["SLOT_1", "SLOT_3", "SLOT_4", "SLOT_5"],
		],
		[
			"the row decides, not the order",
			[[slot(4, 16), slot(1, 16)], { lanes: 16, rows: 2 }, "worst"],
			"SLOT_1",
			["SLOT_4"],
		],
		["short slots take a short card", [[slot(1, 4), slot(2, 8)], { lanes: 8, rows: 1 }, "worst"], "SLOT_2", ["SLOT_1"]],
		[
			"short slots take no long card",
			[[slot(1, 4), slot(2, 8)], { lanes: 16, rows: 1 }, "worst"],
			null,
			["SLOT_1", "SLOT_2"],
		],
		[
			"unknown length among short slots, at worst",
			[[slot(1, 4), slot(2, 8)], { lanes: undefined, rows: 1 }, "worst"],
			null,
			["SLOT_2"],
		],
		[
			"unknown length among short slots, at best",
			[[slot(1, 4), slot(2, 8)], { lanes: undefined, rows: 1 }, "best"],
			null,
			["SLOT_1", "SLOT_2"],
		],
		["no slot", [[], { lanes: 16, rows: 2 }, "best"], null, []],
		[
			"an old slot is none for it",
			[[{ name: "OLD", bus: "PCI", row: 1 }], { lanes: undefined, rows: 1 }, "worst"],
			null,
			["OLD"],
		],
	])("%s", (_, given, graphicsSlot, left) => {
		const beside = slotsBeside(...given);
		expect(beside.graphicsSlot?.name ?? null).toBe(graphicsSlot);
		expect(names(beside.left)).toEqual(left);
	});

	test("a slot whose row is not known is covered at worst, free at best", () => {
		const unknownRow = { name: "SLOT_X", lengthLanes: 1 };
		const beside = (rows: number, leaning: "best" | "worst") =>
			names(slotsBeside([slot(1, 16), unknownRow], { lanes: 16, rows }, leaning).left);
		expect(beside(2, "best")).toEqual(["SLOT_X"]);
		expect(beside(2, "worst")).toEqual([]);
		expect(beside(1, "worst")).toEqual(["SLOT_X"]);
	});
});

describe("slots for a card", () => {
	const old: CardSlot = { name: "OLD", bus: "PCI" };
	const silent: CardSlot = { name: "SILENT" };
	const all = [slot(1, 1), slot(2, 4), slot(3, 16, 4), old, silent];

	test.each<[string, Parameters<typeof slotsFor>[0], readonly string[], readonly string[]]>([
		[
			"x1",
			{ bus: "PCI Express", lanes: 1, leastLanes: 1 },
			["SLOT_1", "SLOT_2", "SLOT_3", "SILENT"],
			["SLOT_1", "SLOT_2", "SLOT_3", "SILENT"],
		],
		["x4", { bus: "PCI Express", lanes: 4, leastLanes: 1 }, ["SLOT_2", "SLOT_3", "SILENT"], ["SLOT_2", "SLOT_3"]],
		["x8 that does with four", { bus: "PCI Express", lanes: 8, leastLanes: 4 }, ["SLOT_3", "SILENT"], ["SLOT_3"]],
		["x8 that needs all", { bus: "PCI Express", lanes: 8, leastLanes: 8 }, ["SILENT"], []],
		["an old one", { bus: "PCI", lanes: 1, leastLanes: 1 }, ["OLD"], ["OLD"]],
	])("%s", (_, card, best, worst) => {
		expect(names(slotsFor(card, all, "best"))).toEqual(best);
		expect(names(slotsFor(card, all, "worst"))).toEqual(worst);
	});

	test("what a card's page is silent on is taken as usual for its kind", () => {
		const card = { id: "a-card", name: "Fiddle" };
		expect(slotNeedOf(card)).toEqual({ bus: "PCI Express", lanes: 1, leastLanes: 1 });
		expect(slotNeedOf({ ...card, use: "video capture" })).toEqual({ bus: "PCI Express", lanes: 4, leastLanes: 1 });
		expect(slotNeedOf({ ...card, use: "computing" })).toEqual({ bus: "PCI Express", lanes: 16, leastLanes: 1 });
		expect(slotNeedOf({ ...card, leastLanes: 2 })).toEqual({ bus: "PCI Express", lanes: 2, leastLanes: 2 });
		expect(slotNeedOf({ ...card, bus: "PCI", lanes: 1 })).toEqual({ bus: "PCI", lanes: 1, leastLanes: 1 });
	});
});
