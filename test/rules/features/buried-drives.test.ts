import { buriedDrives } from "../../../src/rules/features/buried-drives.ts";
import { card, m2, slot, stick } from "../../plan/made-up-problem.ts";
import { testRule } from "../test-rule.ts";

const [dart, mouse] = [stick("Dart"), stick("Mouse")];
/** Two rows thick: over rows 1 and 2. */
const graphicsCard = { thicknessMm: 40, lengthMm: 250, lanes: 16 };
const board = (...m2Sockets: ReturnType<typeof m2>[]) => ({ cardSlots: [slot("X16", 1, 16)], m2Sockets, sharing: [] });
const chipsetSlot = (row: number) => ({
	cardSlots: [slot("X4", row, 4)],
	m2Sockets: [m2("M1", { row: 4 })],
	sharing: [],
});

const small = card("Fiddle", { lengthMm: 120 });

testRule(buriedDrives, {
	fits: {
		"nobody has said": [{ board: board(m2("M1", { row: 2 })), graphicsCard }, "notAsked"],
		"one without a place is told elsewhere": [
			{ board: { m2Sockets: [], cardSlots: [] }, graphicsCard: "none", drives: [dart] },
			"notAsked",
		],
		"the only socket is dead with this processor": [
			{
				board: {
					...board(m2("M1", { row: 2 })),
					conditions: [{ connector: "M1", when: { processorSeries: ["Lump"] }, dead: true }],
				},
				graphicsCard,
				drives: [dart],
				processor: { series: "Lump" },
			},
			"notAsked",
		],
		"one row below the card": [{ board: board(m2("M1", { row: 3 })), graphicsCard, drives: [dart] }, "free"],
		"of two sockets as fast the one in reach, though the other hangs on the processor": [
			{
				board: board(m2("M1", { row: 2, from: "processor" }), m2("M2", { row: 4, from: "chipset" })),
				graphicsCard,
				drives: [dart],
			},
			"free",
		],
		"of two sockets that are as good, the one in reach": [
			{ board: board(m2("M1", { row: 2 }), m2("M2", { row: 4 })), graphicsCard, drives: [dart] },
			"free",
		],
		"on the back of the board": [
			{ board: board(m2("M1", { row: 2, place: "back" })), graphicsCard, drives: [dart] },
			"free",
		],
		"there will be no graphics card": [
			{ board: board(m2("M1", { row: 2 })), graphicsCard: "none", drives: [dart] },
			"free",
		],
		"the card stands upright, on a riser cable": [
			{
				board: { ...board(m2("M1", { row: 2 })), cardSlots: [slot("X16", 1, 16), slot("X1", 2, 1)] },
				graphicsCard,
				drives: [dart],
				addInCards: [card("Fiddle", { lanes: 1, heightMm: 60 })],
				case: { cardSlots: 4, uprightSlots: 2 },
			},
			"free",
		],
		// Own convention: up to 120 mm.
		"a small card just short enough": [
			{
				board: chipsetSlot(4),
				graphicsCard: "none",
				drives: [dart],
				addInCards: [card("Fiddle", { lengthMm: 120 })],
			},
			"free",
		],
		"a long card in the row above": [
			{
				board: chipsetSlot(3),
				graphicsCard: "none",
				drives: [dart],
				addInCards: [card("Fiddle", { lengthMm: 200 })],
			},
			"free",
		],
		"no row is known, and no long card is there": [
			{
				board: { ...chipsetSlot(4), m2Sockets: [m2("M1")] },
				graphicsCard: "none",
				drives: [dart],
				addInCards: [small],
			},
			"free",
		],
		"no row is known, but it is on the back of the board": [
			{ board: board(m2("M1", { place: "back" })), graphicsCard, drives: [dart] },
			"free",
		],
		"the row of a socket that stays empty is no matter": [
			{ board: board(m2("M1", { row: 4 }), m2("M2")), graphicsCard, drives: [dart] },
			"free",
		],
		"nobody knows how thick the card is, and the socket is below any": [
			{ board: board(m2("M1", { row: 5 })), graphicsCard: { lanes: 16, lengthMm: 250 }, drives: [dart] },
			"free",
		],
		"on an adapter card it is in reach": [
			{ board: { m2Sockets: [], cardSlots: [slot("X4", 4, 4)] }, graphicsCard: "none", drives: [dart] },
			"free",
		],
	},
	cautions: {
		"with a cooler of its own": [
			{
				board: board(m2("M1", { row: 2 }), m2("M2", { row: 1 })),
				graphicsCard,
				drives: [stick("Dart", { ownCooler: true }), mouse],
			},
			"plan-around",
			"tallBuried",
			{ drives: ["Dart in M1"] },
		],
		"in the card's last row": [
			{ board: board(m2("M1", { row: 2 })), graphicsCard, drives: [dart] },
			"good-to-know",
			"buried",
			{ drives: ["Dart in M1"] },
		],
		"in the card's own row": [
			{
				board: board(m2("M1", { row: 1 })),
				graphicsCard: { ...graphicsCard, thicknessMm: 20 },
				drives: [dart],
			},
			"good-to-know",
			"buried",
			{ drives: ["Dart in M1"] },
		],
		"a card of three rows": [
			{
				board: board(m2("M1", { row: 3 })),
				graphicsCard: { ...graphicsCard, thicknessMm: 61 },
				drives: [dart],
			},
			"good-to-know",
			"buried",
			{ drives: ["Dart in M1"] },
		],
		"a card still to be bought is taken for two rows": [
			{ board: board(m2("M1", { row: 2 })), graphicsCard: "open", drives: [dart] },
			"good-to-know",
			"buried",
			{ drives: ["Dart in M1"] },
		],
		"two of them": [
			{ board: board(m2("M1", { row: 2 }), m2("M2", { row: 1 })), graphicsCard, drives: [dart, mouse] },
			"good-to-know",
			"buried",
			{ drives: ["Dart in M1", "Mouse in M2"] },
		],
		"only one of two": [
			{ board: board(m2("M1", { row: 2 }), m2("M2", { row: 4 })), graphicsCard, drives: [dart, mouse] },
			"good-to-know",
			"buried",
			{ drives: ["Dart in M1"] },
		],
		"the same one, though the other is named first": [
			{ board: board(m2("M1", { row: 2 }), m2("M2", { row: 4 })), graphicsCard, drives: [mouse, dart] },
			"good-to-know",
			"buried",
			{ drives: ["Dart in M1"] },
		],
		"speed counts more than reach": [
			{
				board: board(m2("M1", { row: 2 }), m2("M2", { row: 4, generation: 3 })),
				graphicsCard,
				drives: [dart],
			},
			"good-to-know",
			"buried",
			{ drives: ["Dart in M1"] },
		],
		"the socket in reach is dead with this processor": [
			{
				board: {
					...board(m2("M1", { row: 2 }), m2("M2", { row: 4 })),
					conditions: [{ connector: "M2", when: { processorSeries: ["Lump"] }, dead: true }],
				},
				graphicsCard,
				drives: [dart],
				processor: { series: "Lump" },
			},
			"good-to-know",
			"buried",
			{ drives: ["Dart in M1"] },
		],
		"a small card just too long": [
			{
				board: chipsetSlot(4),
				graphicsCard: "none",
				drives: [dart],
				addInCards: [card("Fiddle", { lengthMm: 121 })],
			},
			"good-to-know",
			"buried",
			{ drives: ["Dart in M1"] },
		],
	},
	cannotTell: {
		"how thick the card is, is not known": [
			{ board: board(m2("M1", { row: 2 })), graphicsCard: { lanes: 16, lengthMm: 250 }, drives: [dart] },
			["graphicsCard.thicknessMm"],
			"unsure",
		],
		"in the last row of the thickest card": [
			{ board: board(m2("M1", { row: 4 })), graphicsCard: { lanes: 16, lengthMm: 250 }, drives: [dart] },
			["graphicsCard.thicknessMm"],
			"unsure",
		],
		"nobody has said whether there will be a graphics card": [
			{ board: board(m2("M1", { row: 2 })), drives: [dart] },
			["graphicsCard"],
			"unsure",
		],
		"the socket's row is not known": [
			{ board: board(m2("M1")), graphicsCard, drives: [dart] },
			["board.m2Sockets"],
			"unsure",
		],
		"of two sockets the row of one is not known": [
			{ board: board(m2("M1", { row: 4 }), m2("M2")), graphicsCard, drives: [dart, mouse] },
			["board.m2Sockets"],
			"unsure",
		],
		"a small card that is long, and the socket's row is not known": [
			{
				board: { ...chipsetSlot(4), m2Sockets: [m2("M1")] },
				graphicsCard: "none",
				drives: [dart],
				addInCards: [card("Fiddle", { lengthMm: 121 })],
			},
			["board.m2Sockets"],
			"unsure",
		],
		"the socket in reach is dead with some processors": [
			{
				board: {
					...board(m2("M1", { row: 2 }), m2("M2", { row: 4 })),
					conditions: [{ connector: "M2", when: { processorSeries: ["Lump"] }, dead: true }],
				},
				graphicsCard,
				drives: [dart],
				processor: {},
			},
			["processor.series"],
			"unsure",
		],
		"the card's row is not known": [
			{
				board: { ...board(m2("M1", { row: 2 })), cardSlots: [slot("X16", 1, 16, { row: undefined })] },
				graphicsCard,
				drives: [dart],
			},
			["board.cardSlots"],
			"unsure",
		],
	},
});
