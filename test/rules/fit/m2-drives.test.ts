import type { Board } from "../../../src/parts/board.ts";
import type { Drive } from "../../../src/parts/drive.ts";
import { m2Drives } from "../../../src/rules/fit/m2-drives.ts";
import { testRule } from "../test-rule.ts";

const stick = (name: string, facts: Partial<Drive> = {}): Drive => ({
	id: name.toLowerCase(),
	name,
	shape: "M.2",
	link: "PCI Express",
	lengthMm: 80,
	...facts,
});
const [pebble, cobble, flint] = [stick("Pebble"), stick("Cobble"), stick("Flint")];
const slate = stick("Slate", { link: "SATA", key: "B+M" });
const boulder = stick("Boulder", { lengthMm: 110 });
const brick: Drive = { id: "brick", name: "Brick", shape: "3.5 inch", link: "SATA" };
const fiddle = { id: "fiddle", name: "Fiddle", lanes: 1 };

const socket = (name: string, facts: Partial<NonNullable<Board["m2Sockets"]>[number]> = {}) => ({
	name,
	key: "M" as const,
	lengthsMm: [60, 80],
	wiredLanes: 4,
	sata: false,
	from: "processor" as const,
	...facts,
});
const slot = (row: number, lengthLanes: number, wiredLanes = lengthLanes) => ({
	name: `SLOT_${row}`,
	bus: "PCI Express" as const,
	row,
	lengthLanes,
	wiredLanes,
});
const ports = (count: number) =>
	Array.from({ length: count }, (_, index) => ({ name: `SATA_${index + 1}`, kind: "SATA" as const }));
/** Either the socket or the others. */
const either = (name: string, lanes: number, ...others: string[]) => ({
	members: [name, ...others],
	modes: [{ on: { [name]: 4 } }, { on: Object.fromEntries(others.map((other) => [other, lanes])) }],
});

/** One socket, one long slot, one slot of four lanes below it, into which the graphics card does not go. */
const board = {
	m2Sockets: [socket("M2_1")],
	cardSlots: [slot(1, 16), slot(3, 4)],
	drivePorts: ports(2),
	sharing: [],
} satisfies Partial<Board>;
const card = { lanes: 16, thicknessMm: 40 };
const lump = [{ when: { processorSeries: ["Lump"] }, connector: "M2_1", dead: true as const }];

testRule(m2Drives, {
	fits: {
		"nobody has said": [{ board }, "notAsked"],
		"none yet": [{ board: {}, drives: [] }, "notAsked"],
		"only a drive with a cable": [{ board, drives: [brick] }, "notAsked"],
		"as many sockets as drives": [{ board, drives: [pebble] }, "placed", { drives: 1 }],
		"each in the only socket of its kind, though the first one would go in both": [
			{ board: { m2Sockets: [socket("M2_1", { sata: true }), socket("M2_2")] }, drives: [pebble, slate] },
			"placed",
			{ drives: 2 },
		],
		"three of them": [
			{ board: { m2Sockets: ["M2_1", "M2_2", "M2_3"].map((name) => socket(name)) }, drives: [pebble, cobble, flint] },
			"placed",
			{ drives: 3 },
		],
		"a socket that is dead with another processor": [
			{
				board: { m2Sockets: [socket("M2_1")], conditions: lump },
				drives: [pebble],
				processor: { series: "Loaf" },
			},
			"placed",
			{ drives: 1 },
		],
		"a socket that shares stays free": [
			{
				board: {
					...board,
					m2Sockets: [socket("M2_1"), socket("M2_2", { from: "chipset" })],
					sharing: [either("M2_2", 1, "SATA_1")],
				},
				drives: [pebble],
			},
			"placed",
			{ drives: 1 },
		],
		"the same where it is named first": [
			{
				board: {
					...board,
					m2Sockets: [socket("M2_2"), socket("M2_1")],
					sharing: [either("M2_2", 1, "SATA_1")],
				},
				drives: [pebble],
			},
			"placed",
			{ drives: 1 },
		],
		"a port that is off for the sake of a card is no matter of the drive": [
			{
				board: { ...board, sharing: [either("SLOT_3", 1, "SATA_1")] },
				drives: [pebble],
				graphicsCard: card,
				addInCards: [fiddle],
			},
			"placed",
			{ drives: 1 },
		],
		"nothing said of sharing, and nothing on the ports": [
			{ board: { ...board, m2Sockets: [socket("M2_1", { from: "chipset" })], sharing: undefined }, drives: [pebble] },
			"placed",
			{ drives: 1 },
		],
	},
	cautions: {
		"a socket that shares is needed": [
			{
				board: { ...board, m2Sockets: [socket("M2_1"), socket("M2_2")], sharing: [either("M2_2", 1, "SATA_1")] },
				drives: [pebble, cobble],
			},
			"good-to-know",
			"switchesOff",
			{ drives: 2, off: ["SATA_1"] },
		],
		"the only socket shares": [
			{ board: { ...board, sharing: [either("M2_1", 1, "SATA_1", "SATA_2")] }, drives: [pebble] },
			"good-to-know",
			"switchesOff",
			{ drives: 1, off: ["SATA_1", "SATA_2"] },
		],
		"it shares with a card slot": [
			{ board: { ...board, sharing: [either("M2_1", 4, "SLOT_3")] }, drives: [pebble], graphicsCard: card },
			"good-to-know",
			"switchesOff",
			{ drives: 1, off: ["SLOT_3"] },
		],
		"one drive more than sockets, and a slot for an adapter": [
			{ board, drives: [pebble, cobble], graphicsCard: card },
			"plan-around",
			"adapter",
			{ drives: 2, places: 1, left: ["Pebble"] },
		],
		"of two alike the last named goes on the adapter": [
			{ board, drives: [cobble, pebble], graphicsCard: card },
			"plan-around",
			"adapter",
			{ drives: 2, places: 1, left: ["Pebble"] },
		],
		"of three alike the two whose names come last, in the order they were named": [
			{
				board: { ...board, cardSlots: [slot(1, 16), slot(3, 4), slot(4, 4)] },
				drives: [flint, pebble, cobble],
				graphicsCard: card,
			},
			"plan-around",
			"adapter",
			{ drives: 3, places: 1, left: ["Flint", "Pebble"] },
		],
		"without a graphics card there are two such slots": [
			{ board, drives: [pebble, cobble, flint], graphicsCard: "none" },
			"plan-around",
			"adapter",
			{ drives: 3, places: 1, left: ["Pebble", "Flint"] },
		],
		"a longer drive than the socket holds": [
			{ board, drives: [boulder], graphicsCard: card },
			"plan-around",
			"adapter",
			{ drives: 1, places: 0, left: ["Boulder"] },
		],
		"none of two finds a socket": [
			{ board: { ...board, m2Sockets: [] }, drives: [pebble, cobble], graphicsCard: "none" },
			"plan-around",
			"adapter",
			{ drives: 2, places: 0, left: ["Pebble", "Cobble"] },
		],
		"a SATA stick where no socket is wired for it goes on a port": [
			{ board, drives: [slate, brick], graphicsCard: card },
			"plan-around",
			"adapter",
			{ drives: 1, places: 0, left: ["Slate"] },
		],
		"the page does not say whether the socket takes SATA; a port would": [
			{ board: { ...board, m2Sockets: [socket("M2_1", { sata: undefined })] }, drives: [slate], graphicsCard: card },
			"good-to-know",
			"maybeAdapter",
			{ drives: 1 },
		],
		"the same for one of two": [
			{
				board: { ...board, m2Sockets: [socket("M2_1"), socket("M2_2", { lengthsMm: undefined })] },
				drives: [pebble, boulder],
				graphicsCard: card,
			},
			"good-to-know",
			"maybeAdapter",
			{ drives: 2 },
		],
		// The board could hold both drives; what is in the way is a card that may go elsewhere.
		"another card sits in the slot for the adapter": [
			{ board, drives: [pebble, cobble], graphicsCard: card, addInCards: [fiddle] },
			"plan-around",
			"crowded",
			{ left: ["Pebble"] },
		],
		"a SATA stick, and its port is taken by the drives with a cable": [
			{ board, drives: [slate], olderSataDrives: 2, graphicsCard: card },
			"plan-around",
			"crowded",
			{ left: ["Slate"] },
		],
		"the socket is off for the sake of older drives": [
			{
				board: { ...board, cardSlots: [], sharing: [either("M2_1", 1, "SATA_1", "SATA_2")] },
				drives: [pebble],
				olderSataDrives: 1,
				graphicsCard: "none",
			},
			"plan-around",
			"crowded",
			{ left: ["Pebble"] },
		],
		"nothing said of sharing, and the ports are all taken": [
			{
				board: { ...board, m2Sockets: [socket("M2_1", { from: "chipset" })], cardSlots: [], sharing: undefined },
				drives: [pebble],
				olderSataDrives: 2,
				graphicsCard: "none",
			},
			"good-to-know",
			"maybeCrowded",
			{ left: ["Pebble"] },
		],
	},
	fails: {
		"one drive more than sockets and slots": [
			{ board, drives: [pebble, cobble, flint], graphicsCard: card },
			"noPlace",
			{ drives: 3, left: ["Pebble"] },
		],
		"two more than sockets and slots": [
			{ board, drives: [pebble, cobble, flint, stick("Marble")], graphicsCard: card },
			"noPlace",
			{ drives: 4, left: ["Pebble", "Marble"] },
		],
		"one more than sockets and slots, two in sockets": [
			{
				board: { ...board, m2Sockets: [socket("M2_1"), socket("M2_2")] },
				drives: [pebble, cobble, flint, stick("Marble")],
				graphicsCard: card,
			},
			"noPlace",
			{ drives: 4, left: ["Pebble"] },
		],
		"the graphics card covers the slot for the adapter": [
			{ board, drives: [pebble, cobble], graphicsCard: { lanes: 16, thicknessMm: 42 } },
			"noPlace",
			{ drives: 2, left: ["Pebble"] },
		],
		"the only slot is the graphics card's": [
			{ board: { ...board, cardSlots: [slot(1, 16)] }, drives: [pebble, cobble], graphicsCard: card },
			"noPlace",
			{ drives: 2, left: ["Pebble"] },
		],
		"the graphics card does not leave it for a long slot of one lane": [
			{ board: { ...board, cardSlots: [slot(1, 16), slot(3, 16, 1)] }, drives: [pebble, cobble], graphicsCard: card },
			"noPlace",
			{ drives: 2, left: ["Pebble"] },
		],
		"the slot left has one lane": [
			{ board: { ...board, cardSlots: [slot(1, 16), slot(3, 4, 1)] }, drives: [pebble, cobble], graphicsCard: card },
			"noPlace",
			{ drives: 2, left: ["Pebble"] },
		],
		"the slot left is too short for an adapter": [
			{ board: { ...board, cardSlots: [slot(1, 16), slot(3, 1)] }, drives: [pebble, cobble], graphicsCard: card },
			"noPlace",
			{ drives: 2, left: ["Pebble"] },
		],
		"a SATA stick, and no port for its frame": [
			{ board: { ...board, drivePorts: [] }, drives: [slate], graphicsCard: card },
			"noPlace",
			{ drives: 1, left: ["Slate"] },
		],
		"neither of two finds a place": [
			{ board: { ...board, m2Sockets: [], cardSlots: [] }, drives: [pebble, cobble], graphicsCard: "none" },
			"noPlace",
			{ drives: 2, left: ["Pebble", "Cobble"] },
		],
		"the only socket is dead with this processor": [
			{
				board: { m2Sockets: [socket("M2_1")], cardSlots: [], conditions: lump },
				drives: [pebble],
				processor: { series: "Lump" },
			},
			"noPlace",
			{ drives: 1, left: ["Pebble"] },
		],
		"no place even before the other parts come": [
			{
				board: { ...board, cardSlots: [] },
				drives: [pebble, cobble],
				olderSataDrives: 3,
				graphicsCard: "none",
				addInCards: [fiddle],
			},
			"noPlace",
			{ drives: 2, left: ["Pebble"] },
		],
	},
	cannotTell: {
		"the page names no sockets": [{ board: {}, drives: [pebble] }, ["board.m2Sockets"], "unsure", { drives: 1 }],
		"the page names no slots": [
			{ board: { m2Sockets: [socket("M2_1")] }, drives: [pebble, cobble], graphicsCard: card },
			["board.cardSlots"],
			"unsure",
			{ drives: 2 },
		],
		"nobody has said whether there will be a graphics card": [
			{ board: { ...board, cardSlots: [slot(1, 16)] }, drives: [pebble, cobble] },
			["graphicsCard"],
			"unsure",
			{ drives: 2 },
		],
		"how thick the card is, is not known": [
			{ board, drives: [pebble, cobble], graphicsCard: { lanes: 16 } },
			["graphicsCard.thicknessMm"],
			"unsure",
			{ drives: 2 },
		],
		"a SATA stick, and the page names no ports": [
			{ board: { ...board, drivePorts: undefined }, drives: [slate], graphicsCard: card },
			["board.drivePorts"],
			"unsure",
			{ drives: 1 },
		],
		"the socket is dead with some processors": [
			{
				board: { m2Sockets: [socket("M2_1")], cardSlots: [], conditions: lump },
				drives: [pebble],
				processor: {},
				graphicsCard: "none",
			},
			["processor.series"],
			"unsure",
			{ drives: 1 },
		],
		"an adapter would do it only in the slot that the graphics card may need": [
			{
				board: {
					...board,
					m2Sockets: [socket("M2_1"), socket("M2_2", { lengthsMm: undefined })],
					cardSlots: [slot(1, 16)],
					conditions: [{ when: { processorSeries: ["Lump"] }, connector: "SLOT_1", wiredLanes: 8 }],
				},
				drives: [pebble, boulder],
				graphicsCard: { ...card, leastLanes: 16, lengthMm: 250 },
				processor: {},
			},
			["processor.series", "board.m2Sockets"],
			"unsure",
			{ drives: 2 },
		],
		"a long drive, and the page gives no lengths": [
			{
				board: { m2Sockets: [socket("M2_1", { lengthsMm: undefined })], cardSlots: [] },
				drives: [boulder],
				graphicsCard: "none",
			},
			["board.m2Sockets"],
			"unsure",
			{ drives: 1 },
		],
	},
	needs: {
		"nobody has said": [{}, null],
		"only a drive with a cable": [{ drives: [brick] }, null],
		"one usual drive": [{ drives: [pebble] }, "1 M.2 socket for your drives."],
		"two, one of them SATA": [{ drives: [pebble, slate] }, "2 M.2 sockets for your drives, 1 of them wired for SATA."],
		"a long one": [{ drives: [boulder, pebble] }, "2 M.2 sockets for your drives. Lengths to look for: 80, 110 mm."],
	},
});
