import type { Board } from "../../../src/parts/board.ts";
import { graphicsLanes } from "../../../src/rules/features/graphics-lanes.ts";
import { card, m2, slot, stick } from "../../plan/made-up-problem.ts";
import { partNames } from "../rule-subject.ts";
import { testRule } from "../test-rule.ts";

// GB/s in one direction ("Understanding PCIe bandwidth", read in a secondary text): of sixteen lanes, generation 5
// 63.015, 4 31.508, 3 15.754, 2 8, 1 4; of eight lanes of generation 4 15.754, of four 7.877. Printed with one decimal.

/** Two rows thick, sixteen lanes of generation 4. */
const graphics = (facts: object = {}) => ({ thicknessMm: 40, lengthMm: 250, lanes: 16, generation: 4, ...facts });
const fiddle = card("Fiddle", { lanes: 1 });
const narrowed = (facts: object) => ({
	card: partNames.graphicsCard,
	slot: "X16",
	lanes: 16,
	of: 16,
	generation: 4,
	gbytesPerS: 15.8,
	ofGbytesPerS: 31.5,
	because: [],
	...facts,
});
const full = (lanes: number) => ({ card: partNames.graphicsCard, lanes });

const eight = slot("X8", 4, 8, { from: "processor" });
/** The second slot takes half of the first one's lanes when something is in it. */
const halving = {
	cardSlots: [slot("X16", 1, 16), eight],
	sharing: [{ members: ["X16", "X8"], modes: [{ on: { X16: 16 } }, { on: { X16: 8, X8: 8 } }] }],
} satisfies Partial<Board>;
const only = (facts: Parameters<typeof slot>[3]) => ({ cardSlots: [slot("X16", 1, 16, facts)], sharing: [] });
/** A slot that a processor of the series Lump does not serve. */
const lumpy = (...cardSlots: ReturnType<typeof slot>[]) => ({
	cardSlots,
	sharing: [],
	conditions: [{ connector: "X16", when: { processorSeries: ["Lump"] }, dead: true }],
});
const oneLane = slot("X1", 4, 16, { wiredLanes: 1, from: "chipset" });
const chipsetFour = slot("X4", 4, 16, { wiredLanes: 4, from: "chipset" });

/** Two wide slots of the processor's; the page does not say whether they share. */
const two = { cardSlots: [slot("X16", 1, 16), slot("X16_2", 4, 16)] };
const unsure = { card: partNames.graphicsCard };

testRule(graphicsLanes, {
	fits: {
		"there will be none": [{ board: halving, graphicsCard: "none" }, "noCard"],
		"nobody has said whether there will be one": [{ board: halving }, "notSaid"],
		"no slot at all": [
			{ board: { cardSlots: [] }, graphicsCard: graphics() },
			"noSlot",
			{ card: partNames.graphicsCard },
		],
		"none to be bought fits the only slot, which is short": [
			{ board: { cardSlots: [slot("X4", 1, 4)], sharing: [] }, graphicsCard: "open" },
			"noSlot",
			{ card: "graphics card" },
		],
		"the only slot is dead with this processor": [
			{ board: lumpy(slot("X16", 1, 16)), graphicsCard: graphics(), processor: { series: "Lump" } },
			"noSlot",
			{ card: partNames.graphicsCard },
		],
		"fewer lanes than the card starts with": [
			{ board: only({ wiredLanes: 4 }), graphicsCard: graphics({ leastLanes: 8 }) },
			"noSlot",
			{ card: partNames.graphicsCard },
		],
		"the first slot alone": [{ board: halving, graphicsCard: graphics() }, "full", full(16)],
		"one still to be bought": [{ board: halving, graphicsCard: "open" }, "full", { card: "graphics card", lanes: 16 }],
		"a card of which no lanes are given is sixteen long (common practice)": [
			{ board: halving, graphicsCard: graphics({ lanes: undefined }) },
			"full",
			full(16),
		],
		"sharing is not told, and one wide slot has nobody to share with": [
			{
				board: { ...two, cardSlots: [slot("X16", 1, 16), chipsetFour] },
				graphicsCard: graphics(),
				addInCards: [fiddle],
			},
			"full",
			full(16),
		],
		"sharing is not told, and the second wide slot stays empty": [
			{ board: two, graphicsCard: graphics() },
			"full",
			full(16),
		],
		"the page says that nothing shares, and a card is in the second wide slot": [
			{ board: { ...two, sharing: [] }, graphicsCard: graphics(), addInCards: [fiddle] },
			"full",
			full(16),
		],
		"sharing is not told, and eight lanes are all that the card can use": [
			{ board: two, graphicsCard: graphics({ lanes: 8 }), addInCards: [fiddle] },
			"full",
			full(8),
		],
		"a limit on its slot that leaves it all its lanes": [
			{
				board: {
					...only({}),
					conditions: [{ connector: "X16", when: { processorSeries: ["Lump"] }, wiredLanes: 8 }],
				},
				graphicsCard: graphics({ lanes: 8 }),
				processor: {},
			},
			"full",
			full(8),
		],
		"exactly the lanes of a card of eight": [
			{ board: only({ wiredLanes: 8 }), graphicsCard: graphics({ lanes: 8 }) },
			"full",
			full(8),
		],
		"half the lanes are all that a card of eight can use": [
			{ board: halving, graphicsCard: graphics({ lanes: 8 }), addInCards: [fiddle] },
			"full",
			full(8),
		],
		"a card with one lane": [{ board: halving, graphicsCard: graphics({ lanes: 1 }) }, "full", full(1)],
		"a newer slot than the card": [
			{ board: only({ generation: 5 }), graphicsCard: graphics({ generation: 3 }) },
			"full",
			full(16),
		],
		"upright, on a riser cable": [
			{
				board: { cardSlots: [slot("X16", 1, 16), slot("X1", 2, 1)], sharing: [] },
				graphicsCard: graphics(),
				addInCards: [card("Fiddle", { lanes: 1, heightMm: 60 })],
				case: { cardSlots: 4, uprightSlots: 2 },
			},
			"full",
			full(16),
		],
		"a slot that is dead with another processor": [
			{ board: lumpy(slot("X16", 1, 16)), graphicsCard: graphics(), processor: { series: "Loaf" } },
			"full",
			full(16),
		],
	},
	cautions: {
		"exactly half, since a card in the second slot takes the rest": [
			{ board: halving, graphicsCard: graphics(), addInCards: [fiddle] },
			"good-to-know",
			"narrow",
			narrowed({ lanes: 8, because: ["Fiddle"] }),
		],
		"all that take from it are named, a drive among them": [
			{
				board: {
					cardSlots: halving.cardSlots,
					m2Sockets: [m2("M1", { from: "processor" })],
					sharing: [
						{
							members: ["X16", "X8", "M1"],
							modes: [{ on: { X16: 16 } }, { on: { X16: 8, X8: 4, M1: 4 } }],
						},
					],
				},
				graphicsCard: graphics(),
				addInCards: [fiddle],
				drives: [stick("Dart")],
			},
			"good-to-know",
			"narrow",
			narrowed({ lanes: 8, because: ["Dart", "Fiddle"] }),
		],
		"the same while the card's generation is not known: lanes alone are told": [
			{ board: halving, graphicsCard: graphics({ generation: undefined }), addInCards: [fiddle] },
			"good-to-know",
			"narrow",
			narrowed({ lanes: 8, gbytesPerS: -1, ofGbytesPerS: -1, because: ["Fiddle"] }),
		],
		"exactly half, as the slot is wired": [
			{ board: only({ wiredLanes: 8 }), graphicsCard: graphics() },
			"good-to-know",
			"narrow",
			narrowed({ lanes: 8 }),
		],
		"one lane below half, and plenty all the same": [
			{ board: only({ wiredLanes: 7 }), graphicsCard: graphics() },
			"good-to-know",
			"narrow",
			// 7 x 1.9692 = 13.785
			narrowed({ lanes: 7, gbytesPerS: 13.8 }),
		],
		"seven lanes of generation 3 are less than plenty and less than half": [
			{ board: only({ wiredLanes: 7, generation: 3 }), graphicsCard: graphics() },
			"plan-around",
			"heldBack",
			// 7 x 0.9846 = 6.892
			narrowed({ lanes: 7, generation: 3, gbytesPerS: 6.9 }),
		],
		"four lanes of generation 3 are half of what a card of four of generation 4 can use": [
			{ board: only({ generation: 3 }), graphicsCard: graphics({ lanes: 4 }) },
			"good-to-know",
			"narrow",
			narrowed({ lanes: 4, of: 4, generation: 3, gbytesPerS: 3.9, ofGbytesPerS: 7.9 }),
		],
		"seven lanes, and of which generation the card is nobody knows": [
			{ board: only({ wiredLanes: 7 }), graphicsCard: graphics({ generation: undefined }) },
			"plan-around",
			"heldBack",
			narrowed({ lanes: 7, gbytesPerS: -1, ofGbytesPerS: -1 }),
		],
		"a card in the second slot takes so many that it is held back": [
			{
				board: {
					cardSlots: [slot("X16", 1, 16, { generation: 3 }), eight],
					sharing: [{ members: ["X16", "X8"], modes: [{ on: { X16: 7, X8: 8 } }] }],
				},
				graphicsCard: graphics(),
				addInCards: [card("Fiddle", { lanes: 1 })],
			},
			"plan-around",
			"heldBack",
			narrowed({ lanes: 7, generation: 3, gbytesPerS: 6.9, because: ["Fiddle"] }),
		],
		"this processor gives four lanes of generation 3": [
			{ board: only({}), graphicsCard: graphics(), processor: { lanes: { graphics: 4, generation: 3 } } },
			"plan-around",
			"heldBack",
			narrowed({ lanes: 4, generation: 3, gbytesPerS: 3.9, because: ["the processor"] }),
		],
		"the first slot is dead with this processor, the other has four lanes of generation 3": [
			{
				board: lumpy(slot("X16", 1, 16), { ...chipsetFour, generation: 3 }),
				graphicsCard: graphics(),
				processor: { series: "Lump" },
			},
			"plan-around",
			"heldBack",
			narrowed({ slot: "X4", lanes: 4, generation: 3, gbytesPerS: 3.9 }),
		],
		"one lane below all": [
			{ board: only({ wiredLanes: 15 }), graphicsCard: graphics() },
			"good-to-know",
			"narrow",
			// 15 x 1.9692 = 29.538
			narrowed({ lanes: 15, gbytesPerS: 29.5 }),
		],
		"a slot one generation older": [
			{ board: only({ generation: 3 }), graphicsCard: graphics() },
			"good-to-know",
			"narrow",
			narrowed({ generation: 3 }),
		],
		"two generations older, as fast as eight lanes of generation 3": [
			{ board: only({ generation: 2 }), graphicsCard: graphics() },
			"good-to-know",
			"narrow",
			narrowed({ generation: 2, gbytesPerS: 8 }),
		],
		"from generation 3 to 2 it is just above half": [
			{ board: only({ generation: 2 }), graphicsCard: graphics({ generation: 3 }) },
			"good-to-know",
			"narrow",
			narrowed({ generation: 2, gbytesPerS: 8, ofGbytesPerS: 15.8 }),
		],
		"half the lanes of an older generation are just plenty": [
			{
				board: { ...halving, cardSlots: [slot("X16", 1, 16, { generation: 3 }), eight] },
				graphicsCard: graphics(),
				addInCards: [fiddle],
			},
			"good-to-know",
			"narrow",
			narrowed({ lanes: 8, generation: 3, gbytesPerS: 7.9, because: ["Fiddle"] }),
		],
		"generation 5 in half the lanes of generation 4": [
			{ board: only({ wiredLanes: 8 }), graphicsCard: graphics({ generation: 5 }) },
			"good-to-know",
			"narrow",
			narrowed({ lanes: 8, ofGbytesPerS: 63 }),
		],
		"this processor gives eight lanes": [
			{ board: only({}), graphicsCard: graphics(), processor: { lanes: { graphics: 8 } } },
			"good-to-know",
			"narrow",
			narrowed({ lanes: 8, because: ["the processor"] }),
		],
		"this processor's lanes are of generation 3": [
			{ board: only({}), graphicsCard: graphics(), processor: { lanes: { generation: 3 } } },
			"good-to-know",
			"narrow",
			narrowed({ generation: 3 }),
		],
		"the first slot is dead with this processor, the other has four lanes": [
			{
				board: lumpy(slot("X16", 1, 16), chipsetFour),
				graphicsCard: graphics(),
				processor: { series: "Lump" },
			},
			"good-to-know",
			"narrow",
			narrowed({ slot: "X4", lanes: 4, gbytesPerS: 7.9 }),
		],
		"a card of which no lanes are given, in a slot of eight": [
			{ board: only({ wiredLanes: 8 }), graphicsCard: graphics({ lanes: undefined }) },
			"good-to-know",
			"narrow",
			narrowed({ lanes: 8, ofGbytesPerS: -1 }),
		],
		// Its own slot is the one with lanes; the small card finds none, and fit/card-slots says so.
		"it stays in the wide slot, though the other would leave that to a card of four lanes": [
			{
				board: { cardSlots: [slot("X16", 1, 16, { wiredLanes: 8 }), oneLane], sharing: [] },
				graphicsCard: graphics(),
				addInCards: [card("Drum", { leastLanes: 4 })],
			},
			"good-to-know",
			"narrow",
			narrowed({ lanes: 8 }),
		],
		"held back for certain, whatever the sharing that is not told": [
			{
				board: { cardSlots: [slot("X16", 1, 16, { generation: 1 }), slot("X16_2", 4, 16, { generation: 1 })] },
				graphicsCard: graphics(),
				addInCards: [fiddle],
			},
			"plan-around",
			"heldBack",
			narrowed({ generation: 1, gbytesPerS: 4 }),
		],
	},
	cannotTell: {
		"the page names no slots": [{ board: {}, graphicsCard: graphics() }, ["board.cardSlots"], "unsure", unsure],
		"how many lanes the slot has, is not known": [
			{ board: only({ wiredLanes: undefined }), graphicsCard: graphics() },
			["board.cardSlots"],
			"unsure",
			unsure,
		],
		"nor how long it is": [
			{ board: only({ wiredLanes: undefined, lengthLanes: undefined }), graphicsCard: graphics() },
			["board.cardSlots"],
			"unsure",
			unsure,
		],
		"the slot is dead with some processors, the other has four lanes": [
			{ board: lumpy(slot("X16", 1, 16), chipsetFour), graphicsCard: graphics(), processor: {} },
			["processor.series"],
			"unsure",
			unsure,
		],
		"the only slot is dead with some processors": [
			{ board: lumpy(slot("X16", 1, 16)), graphicsCard: graphics(), processor: {} },
			["processor.series"],
			"unsure",
			unsure,
		],
		"nobody has said which processor, and with some the slot has half its lanes": [
			{
				board: {
					...only({}),
					conditions: [{ connector: "X16", when: { processorSeries: ["Lump"] }, wiredLanes: 8 }],
				},
				graphicsCard: graphics(),
			},
			["processor"],
			"unsure",
			unsure,
		],
		"sharing is not told, and a card is in the second wide slot": [
			{ board: two, graphicsCard: graphics(), addInCards: [fiddle] },
			["board.sharing"],
			"unsure",
			unsure,
		],
		"neither which processor nor what shares": [
			{
				board: {
					...two,
					conditions: ["X16", "X16_2"].map((connector) => ({
						connector,
						when: { processorSeries: ["Lump"] },
						wiredLanes: 8,
					})),
				},
				graphicsCard: graphics(),
				addInCards: [fiddle],
				processor: {},
			},
			["processor.series", "board.sharing"],
			"unsure",
			unsure,
		],
		"sharing is not told, and the second slot is wired for eight, as most are": [
			{ board: { cardSlots: halving.cardSlots }, graphicsCard: graphics(), addInCards: [fiddle] },
			["board.sharing"],
			"unsure",
			unsure,
		],
		"sharing is not told, and a third wide slot is as likely to share as the second": [
			{
				board: { cardSlots: [...two.cardSlots, slot("X16_3", 7, 16)] },
				graphicsCard: graphics(),
				addInCards: [fiddle],
			},
			["board.sharing"],
			"unsure",
			unsure,
		],
		"with some processors the slot is a generation older": [
			{
				board: {
					...only({}),
					conditions: [{ connector: "X16", when: { processorSeries: ["Lump"] }, generation: 3 }],
				},
				graphicsCard: graphics(),
				processor: {},
			},
			["processor.series"],
			"unsure",
			unsure,
		],
	},
});
