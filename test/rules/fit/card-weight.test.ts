import { cardWeight } from "../../../src/rules/fit/card-weight.ts";
import { slot } from "../../plan/made-up-problem.ts";
import { testRule } from "../test-rule.ts";

const graphicsCard = (weightG?: number) => ({
	lanes: 16,
	thicknessMm: 50,
	lengthMm: 300,
	...(weightG === undefined ? {} : { weightG }),
});
const board = (reinforced?: boolean) => ({
	cardSlots: [
		slot("SLOT_1", 1, 16, reinforced === undefined ? {} : { reinforced }),
		slot("SLOT_5", 5, 4, { reinforced: true }),
	],
	m2Sockets: [],
	sharing: [],
});
/** Its first slot is dead with some processors. */
const dependent = (second: boolean) => ({
	cardSlots: [slot("SLOT_1", 1, 16, { reinforced: true }), slot("SLOT_5", 5, 16, { reinforced: second })],
	conditions: [{ connector: "SLOT_1", when: { processorSeries: ["Lump"] }, dead: true }],
	m2Sockets: [],
	sharing: [],
});

// 1200 g and 250 mm are own conventions.
testRule(cardWeight, {
	fits: {
		"just 1200 g, in plain plastic": [
			{ board: board(false), graphicsCard: graphicsCard(1200) },
			"light",
			{ weightG: 1200 },
		],
		"short, and its weight not known": [
			{ board: board(false), graphicsCard: { lanes: 16, lengthMm: 250 } },
			"short",
			{ lengthMm: 250 },
		],
		"heavy, with metal around the slot": [
			{ board: board(true), graphicsCard: graphicsCard(1950) },
			"metal",
			{ slot: "SLOT_1" },
		],
		"metal around the slot, whatever the card weighs": [
			{ board: board(true), graphicsCard: graphicsCard() },
			"metal",
			{ slot: "SLOT_1" },
		],
		"metal around either slot it may go into": [
			{ board: dependent(true), graphicsCard: graphicsCard(1950), processor: {} },
			"metal",
			{ slot: "SLOT_1" },
		],
		"upright, on a riser cable": [
			{
				board: { cardSlots: [slot("SLOT_1", 1, 16, { reinforced: false }), slot("SLOT_2", 2, 1)], sharing: [] },
				graphicsCard: graphicsCard(1950),
				addInCards: [{ id: "fiddle", name: "Fiddle", lanes: 1, heightMm: 60, thicknessMm: 18 }],
				case: { cardSlots: 4, uprightSlots: 3 },
			},
			"upright",
		],
		"no slot for it: told elsewhere": [
			{ board: { cardSlots: [slot("SLOT_5", 5, 4)] }, graphicsCard: graphicsCard(1950) },
			"notAsked",
		],
		"a card still to be bought": [{ board: board(false), graphicsCard: "open" }, "notAsked"],
		"no card": [{ board: board(false), graphicsCard: "none" }, "notAsked"],
		"nobody has said": [{ board: board(false) }, "notAsked"],
	},
	fails: {
		"one gram more, in plain plastic": [
			{ board: board(false), graphicsCard: graphicsCard(1201) },
			"plain",
			{ weightG: 1201, slot: "SLOT_1" },
		],
		"short and heavy: the weight counts": [
			{ board: board(false), graphicsCard: { ...graphicsCard(1300), lengthMm: 240 } },
			"plain",
			{ weightG: 1300, slot: "SLOT_1" },
		],
	},
	cannotTell: {
		"whether there is metal around the slot": [
			{ board: board(), graphicsCard: graphicsCard(1950) },
			["board.cardSlots"],
			"slotUnknown",
		],
		"nor what the card weighs": [
			{ board: board(), graphicsCard: graphicsCard() },
			["graphicsCard.weightG", "board.cardSlots"],
			"slotUnknown",
		],
		"which slots the board has": [{ board: {}, graphicsCard: graphicsCard(1950) }, ["board.cardSlots"], "slotUnknown"],
		"what a card weighs that is not short, in plain plastic": [
			{ board: board(false), graphicsCard: { lanes: 16, thicknessMm: 50, lengthMm: 251 } },
			["graphicsCard.weightG"],
			"weightUnknown",
			{ slot: "SLOT_1" },
		],
		"which of two slots it goes into": [
			{ board: dependent(false), graphicsCard: graphicsCard(1950), processor: {} },
			["processor.series"],
			"slotUnknown",
		],
		"in which of two slots it goes, as the length of one is not known": [
			{
				board: {
					cardSlots: [
						slot("SLOT_1", 1, 16, { reinforced: true, lengthLanes: undefined, wiredLanes: undefined }),
						slot("SLOT_5", 5, 16, { reinforced: false }),
					],
					m2Sockets: [],
					sharing: [],
				},
				graphicsCard: graphicsCard(),
			},
			["graphicsCard.weightG", "board.cardSlots"],
			"slotUnknown",
		],
	},
	needs: {
		"a heavy card": [
			{ graphicsCard: graphicsCard(1201) },
			"Metal around the slot for the graphics card, which weighs 1201 g. Plan a support below the card as well.",
		],
		"a light card": [{ graphicsCard: graphicsCard(1200) }, null],
		"its weight is not known": [{ graphicsCard: graphicsCard() }, null],
	},
});
