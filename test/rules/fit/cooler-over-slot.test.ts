import { coolerOverSlot } from "../../../src/rules/fit/cooler-over-slot.ts";
import { card, slot } from "../../plan/made-up-problem.ts";
import { partNames } from "../rule-subject.ts";
import { testRule } from "../test-rule.ts";

const air = (overSlotMm: number) => ({ kind: "air" as const, overSlotMm });
const graphicsCard = { lanes: 16, thicknessMm: 40, lengthMm: 250 };
/** The back of a card in its first slot begins 3.5 mm (2.67 + 0.8, rounded) before the slot's middle. */
const board = (firstSlotFromSocketMm?: number, cardSlots = [slot("SLOT_1", 1, 16), slot("SLOT_4", 4, 4)]) => ({
	cardSlots,
	m2Sockets: [],
	sharing: [],
	...(firstSlotFromSocketMm === undefined ? {} : { layout: { firstSlotFromSocketMm } }),
});
const carousel = { card: partNames.graphicsCard, slot: "SLOT_1" };
const fiddle = card("Fiddle");
const small = (overSlotMm: number) => ({
	board: board(76, [slot("SLOT_1", 1, 4)]),
	cooler: air(overSlotMm),
	graphicsCard: "none" as const,
	addInCards: [fiddle],
});

// What a card carries on its back is from memory; 3 and 5 mm of air, 58 mm and 85 mm are own conventions.
testRule(coolerOverSlot, {
	fits: {
		"just 5 mm of air": [{ board: board(76.5), cooler: air(68), graphicsCard }, "clear", { gapMm: 5 }],
		"a wide board": [{ board: board(96), cooler: air(76), graphicsCard }, "clear", { gapMm: 16.5 }],
		"the card's slot is not the first one": [
			{ board: board(76, [slot("SLOT_1", 1, 4), slot("SLOT_2", 2, 16)]), cooler: air(80), graphicsCard },
			"clear",
			{ gapMm: 12.8 },
		],
		"the first slot of the board lies in the second row": [
			{ board: board(96, [slot("SLOT_2", 2, 16)]), cooler: air(76), graphicsCard },
			"clear",
			{ gapMm: 16.5 },
		],
		"the card stands upright, on a riser cable": [
			{
				board: board(76, [slot("SLOT_1", 1, 16), slot("SLOT_2", 2, 1)]),
				cooler: air(80),
				graphicsCard,
				addInCards: [{ id: "fiddle", name: "Fiddle", lanes: 1, heightMm: 60, thicknessMm: 18 }],
				case: { cardSlots: 4, uprightSlots: 2 },
			},
			"clear",
			{ gapMm: 12.8 },
		],
		"a narrow cooler, on a board that nobody has measured": [
			{ board: board(), cooler: air(51.5), graphicsCard },
			"free",
		],
		"a cooler that nobody has measured, with room for any": [
			{ board: board(91.5), cooler: { kind: "air" }, graphicsCard },
			"free",
		],
		"no slot for the card: told elsewhere": [
			{ board: board(76, [slot("SLOT_4", 4, 4)]), cooler: air(80), graphicsCard },
			"free",
		],
		"far enough, with the kind of cooler not known": [
			{ board: board(96), cooler: { overSlotMm: 70 }, graphicsCard },
			"clear",
			{ gapMm: 22.5 },
		],
		"a liquid cooler": [{ board: board(62), cooler: { kind: "liquid", overSlotMm: 80 }, graphicsCard }, "notAsked"],
		"no cards": [{ board: board(62), cooler: air(80), graphicsCard: "none" }, "notAsked"],
		"the cooler from the box": [{ board: board(62), cooler: "none", graphicsCard }, "notAsked"],
		"a cooler to be bought": [{ board: board(62), cooler: "open", graphicsCard }, "notAsked"],
		"nobody has said": [{ board: board(62) }, "notAsked"],
		"nobody has said which card, on a board with room": [{ board: board(76.5), cooler: air(70) }, "notAsked"],
		"which slot comes first is not known, and 3 mm are left beside any": [
			{
				board: board(76.5, [slot("SLOT_1", 1, 16, { row: undefined }), slot("SLOT_4", 4, 4)]),
				cooler: air(70),
				graphicsCard,
			},
			"free",
		],
		"nobody has said which card, on a board without slots": [{ board: board(62, []), cooler: air(70) }, "free"],
	},
	cautions: {
		"a tenth less than 5 mm": [
			{ board: board(76.4), cooler: air(68), graphicsCard },
			"good-to-know",
			"close",
			{ ...carousel, gapMm: 4.9 },
		],
		"just 3 mm": [
			{ board: board(76.5), cooler: air(70), graphicsCard },
			"good-to-know",
			"close",
			{ ...carousel, gapMm: 3 },
		],
		"a tenth less than 3 mm": [
			{ board: board(76.4), cooler: air(70), graphicsCard },
			"plan-around",
			"tight",
			{ ...carousel, gapMm: 2.9 },
		],
		"they just do not meet": [
			{ board: board(76.5), cooler: air(73), graphicsCard },
			"plan-around",
			"tight",
			{ ...carousel, gapMm: 0 },
		],
		"a small card in the way": [
			small(80),
			"good-to-know",
			"smallCard",
			{ card: "Fiddle", slot: "SLOT_1", overMm: 80, backMm: 72.5 },
		],
		"a small card close by": [small(71), "good-to-know", "close", { card: "Fiddle", slot: "SLOT_1", gapMm: 1.5 }],
	},
	fails: {
		"a tenth too far": [
			{ board: board(76.5), cooler: air(73.1), graphicsCard },
			"graphics",
			{ ...carousel, overMm: 73.1, backMm: 73 },
		],
		"a graphics card still to be bought": [
			{ board: board(62), cooler: air(70), graphicsCard: "open" },
			"graphics",
			{ card: "graphics card", slot: "SLOT_1", overMm: 70, backMm: 58.5 },
		],
		"the only slot, of which no row is known": [
			{ board: board(62, [slot("SLOT_1", 1, 16, { row: undefined })]), cooler: air(70), graphicsCard },
			"graphics",
			{ ...carousel, overMm: 70, backMm: 58.5 },
		],
		"over the second row": [
			{ board: board(62, [slot("SLOT_1", 1, 4), slot("SLOT_2", 2, 16)]), cooler: air(80), graphicsCard },
			"graphics",
			{ card: partNames.graphicsCard, slot: "SLOT_2", overMm: 80, backMm: 78.9 },
		],
	},
	cannotTell: {
		"how far off the first slot is": [
			{ board: board(), cooler: air(51.6), graphicsCard },
			["board.layout.firstSlotFromSocketMm"],
			"unsure",
		],
		"how far the cooler reaches": [
			{ board: board(91.4), cooler: { kind: "air" }, graphicsCard },
			["cooler.overSlotMm"],
			"unsure",
		],
		neither: [
			{ board: board(), cooler: { kind: "air" }, graphicsCard },
			["cooler.overSlotMm", "board.layout.firstSlotFromSocketMm"],
			"unsure",
		],
		"which slots the board has": [
			{ board: { layout: { firstSlotFromSocketMm: 62 } }, cooler: air(70), graphicsCard },
			["board.cardSlots"],
			"unsure",
		],
		"which slot comes first": [
			{
				board: board(62, [slot("SLOT_1", 1, 16, { row: undefined }), slot("SLOT_4", 4, 4)]),
				cooler: air(70),
				graphicsCard,
			},
			["board.cardSlots"],
			"unsure",
		],
		"whether the first slot works": [
			{
				board: {
					...board(62, [slot("SLOT_1", 1, 16), slot("SLOT_4", 4, 16)]),
					conditions: [{ connector: "SLOT_1", when: { processorSeries: ["Lump"] }, dead: true }],
				},
				cooler: air(70),
				graphicsCard,
				processor: {},
			},
			["processor.series"],
			"unsure",
		],
		"whether there will be a card": [{ board: board(62), cooler: air(70) }, ["graphicsCard"], "unsure"],
		nothing: [
			{ board: {}, cooler: { kind: "air" } },
			["cooler.overSlotMm", "board.layout.firstSlotFromSocketMm", "graphicsCard", "board.cardSlots"],
			"unsure",
		],
		"the kind of cooler": [{ board: board(62), cooler: { overSlotMm: 70 }, graphicsCard }, ["cooler.kind"], "unsure"],
	},
	needs: {
		"a wide cooler and a card": [
			{ cooler: air(76), graphicsCard },
			"The first card slot at least 82.5 mm from the socket's centre, on the manual's drawing: your cooler is wide.",
		],
		"a card still to be bought": [
			{ cooler: air(70), graphicsCard: "open" },
			"The first card slot at least 76.5 mm from the socket's centre, on the manual's drawing: your cooler is wide.",
		],
		"a narrow cooler": [{ cooler: air(51.5), graphicsCard }, null],
		"no card": [{ cooler: air(76), graphicsCard: "none" }, null],
		"a liquid cooler": [{ cooler: { kind: "liquid", overSlotMm: 76 }, graphicsCard }, null],
		"its reach is not known": [{ cooler: { kind: "air" }, graphicsCard }, null],
	},
});
