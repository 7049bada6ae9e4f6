import type { Drive } from "../../../src/parts/drive.ts";
import { portsUnderCard } from "../../../src/rules/fit/ports-under-card.ts";
import { card, slot } from "../../plan/made-up-problem.ts";
import { testRule } from "../test-rule.ts";

const drive = (name: string, link: Drive["link"] = "SATA"): Drive => ({ id: name, name, shape: "3.5 inch", link });
const [brick, tile] = [drive("Brick"), drive("Tile")];
/** Two rows thick: over rows 1 and 2. */
const graphicsCard = { thicknessMm: 40, lengthMm: 250, lanes: 16 };
type Lie = { readonly upright?: boolean; readonly row?: number };
const board = (...ports: Lie[]) => ({
	cardSlots: [slot("X16", 1, 16)],
	m2Sockets: [],
	drivePorts: ports.map((lie, index) => ({ name: `S${index + 1}`, kind: "SATA" as const, ...lie })),
	sharing: [],
});
const [up, flat] = [{ upright: true }, { upright: false }];

testRule(portsUnderCard, {
	fits: {
		"nobody has said": [{ board: board({ ...up, row: 2 }), graphicsCard }, "notAsked"],
		"an old drive on another kind of port": [
			{
				board: { ...board(), drivePorts: [{ name: "OLD", kind: "IDE" as const, ...up, row: 2 }] },
				graphicsCard,
				drives: [drive("Slate", "IDE")],
			},
			"notAsked",
		],
		"a port that lies flat": [{ board: board({ ...flat, row: 2 }), graphicsCard, drives: [brick] }, "clear"],
		"one row below the card": [{ board: board({ ...up, row: 3 }), graphicsCard, drives: [brick] }, "clear"],
		// Own convention of the plan: from 200 mm on a card reaches over the ports.
		"a card just short enough": [
			{ board: board({ ...up, row: 2 }), graphicsCard: { ...graphicsCard, lengthMm: 199 }, drives: [brick] },
			"clear",
		],
		"a card just long enough, and another port": [
			{
				board: board({ ...up, row: 2 }, { ...up, row: 3 }),
				graphicsCard: { ...graphicsCard, lengthMm: 200 },
				drives: [brick],
			},
			"otherPorts",
			{ ports: ["S1"] },
		],
		"two below the card, and one beside it": [
			{ board: board({ ...up, row: 1 }, { ...up, row: 2 }, flat), graphicsCard, drives: [brick] },
			"otherPorts",
			{ ports: ["S1", "S2"] },
		],
		"an older drive counts too": [
			{ board: board({ ...up, row: 2 }, flat), graphicsCard, olderSataDrives: 1 },
			"otherPorts",
			{ ports: ["S1"] },
		],
		"no card": [{ board: board(up), graphicsCard: "none", drives: [brick] }, "clear"],
		"a card still to be bought can be short": [
			{ board: board({ ...up, row: 2 }), graphicsCard: "open", drives: [brick] },
			"clear",
		],
		"a row that nobody knows, and enough other ports": [
			{ board: board(up, flat), graphicsCard, drives: [brick] },
			"clear",
		],
		"too few ports, whatever the card": [
			{ board: board({ ...up, row: 3 }), graphicsCard, drives: [brick, tile] },
			"clear",
		],
		"a small card that is short": [
			{
				board: { ...board({ ...up, row: 4 }), cardSlots: [slot("X4", 4, 4)] },
				graphicsCard: "none",
				addInCards: [card("Fiddle")],
				drives: [brick],
			},
			"clear",
		],
		"the card stands upright, on a riser cable": [
			{
				board: { ...board(up), cardSlots: [slot("X16", 1, 16), slot("X1", 2, 1)] },
				graphicsCard,
				drives: [brick],
				addInCards: [card("Fiddle", { lanes: 1, heightMm: 60 })],
				case: { cardSlots: 4, uprightSlots: 2 },
			},
			"clear",
		],
	},
	cautions: {
		"the only port is below the card": [
			{ board: board({ ...up, row: 2 }), graphicsCard, drives: [brick] },
			"good-to-know",
			"pressed",
			{ ports: ["S1"] },
		],
		"one port too few beside the card": [
			{ board: board({ ...up, row: 1 }, { ...up, row: 2 }, flat), graphicsCard, drives: [brick, tile] },
			"good-to-know",
			"pressed",
			{ ports: ["S1", "S2"] },
		],
		"below a small card that is long": [
			{
				board: { ...board({ ...up, row: 4 }), cardSlots: [slot("X4", 4, 4)] },
				graphicsCard: "none",
				addInCards: [card("Fiddle", { lengthMm: 200 })],
				drives: [brick],
			},
			"good-to-know",
			"pressed",
			{ ports: ["S1"] },
		],
	},
	cannotTell: {
		"which ports the board has is not known": [
			{ board: { cardSlots: [] }, graphicsCard, drives: [brick] },
			["board.drivePorts"],
		],
		"the port's row is not known": [
			{ board: board(up), graphicsCard, drives: [brick] },
			["board.drivePorts"],
			"unsure",
			{ ports: ["S1"] },
		],
		"whether the port stands up is not known": [
			{ board: board({ row: 2 }), graphicsCard, drives: [brick] },
			["board.drivePorts"],
			"unsure",
			{ ports: ["S1"] },
		],
		"one port is certain, and the second drive needs another": [
			{ board: board(up, flat), graphicsCard, drives: [brick, tile] },
			["board.drivePorts"],
			"unsure",
			{ ports: ["S1"] },
		],
		"the card's length is not known": [
			{ board: board({ ...up, row: 2 }), graphicsCard: { thicknessMm: 40, lanes: 16 }, drives: [brick] },
			["graphicsCard.lengthMm"],
			"unsure",
			{ ports: ["S1"] },
		],
		"its thickness is not known": [
			{ board: board({ ...up, row: 2 }), graphicsCard: { lengthMm: 250, lanes: 16 }, drives: [brick] },
			["graphicsCard.thicknessMm"],
			"unsure",
			{ ports: ["S1"] },
		],
		"nobody has said whether there will be a graphics card": [
			{ board: board({ ...up, row: 2 }), drives: [brick] },
			["graphicsCard"],
			"unsure",
			{ ports: ["S1"] },
		],
		"the card's row is not known": [
			{
				board: { ...board({ ...up, row: 2 }), cardSlots: [slot("X16", 1, 16, { row: undefined })] },
				graphicsCard,
				drives: [brick],
			},
			["board.cardSlots"],
			"unsure",
			{ ports: ["S1"] },
		],
	},
});
