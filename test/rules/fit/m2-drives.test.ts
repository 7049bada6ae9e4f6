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
const brick: Drive = { id: "brick", name: "Brick", shape: "3.5 inch", link: "SATA" };

const socket = (name: string, facts: Partial<NonNullable<Board["m2Sockets"]>[number]> = {}) => ({
	name,
	key: "M" as const,
	lengthsMm: [60, 80],
	wiredLanes: 4,
	sata: false,
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

/** One socket, one long slot, one slot of four lanes below it. */
const board = {
	m2Sockets: [socket("M2_1")],
	cardSlots: [slot(1, 16), slot(3, 16, 4)],
	drivePorts: ports(2),
} satisfies Partial<Board>;
const card = { thicknessMm: 40 };

testRule(m2Drives, {
	fits: {
		"nobody has said": [{ board }, "notAsked"],
		"none yet": [{ board: {}, drives: [] }, "notAsked"],
		"only a drive with a cable": [{ board, drives: [brick] }, "notAsked"],
		"as many sockets as drives": [{ board, drives: [pebble] }, "placed", { drives: 1 }],
		"each in the only socket of its kind, though the first one would go in both": [
			{
				board: { m2Sockets: [socket("M2_1", { sata: true }), socket("M2_2")] },
				drives: [pebble, slate],
			},
			"placed",
			{ drives: 2 },
		],
		"a socket that is dead with another processor": [
			{
				board: {
					m2Sockets: [socket("M2_1")],
					conditions: [{ when: { processorSeries: ["Lump"] }, connector: "M2_1", dead: true }],
				},
				drives: [pebble],
				processor: { series: "Loaf" },
			},
			"placed",
			{ drives: 1 },
		],
		"a socket that shares stays free": [
			{
				board: {
					m2Sockets: [socket("M2_2"), socket("M2_1")],
					sharing: [{ members: ["M2_2", "SATA_5"], modes: [{ on: { M2_2: 4 } }, { on: { SATA_5: 1 } }] }],
				},
				drives: [pebble],
			},
			"placed",
			{ drives: 1 },
		],
	},
	cautions: {
		"a socket that shares is needed": [
			{
				board: {
					m2Sockets: [socket("M2_1"), socket("M2_2")],
					sharing: [{ members: ["M2_2", "SATA_5"], modes: [{ on: { M2_2: 4 } }, { on: { SATA_5: 1 } }] }],
				},
				drives: [pebble, cobble],
			},
			"good-to-know",
			"placedShared",
			{ drives: 2 },
		],
		"the only socket shares": [
			{
				board: {
					m2Sockets: [socket("M2_1")],
					sharing: [{ members: ["M2_1", "SATA_5"], modes: [{ on: { M2_1: 4 } }, { on: { SATA_5: 1 } }] }],
				},
				drives: [pebble],
			},
			"good-to-know",
			"placedShared",
			{ drives: 1 },
		],
		"one drive more than sockets, and a slot for an adapter": [
			{ board, drives: [pebble, cobble], graphicsCard: card },
			"plan-around",
			"adapter",
			{ drives: 2, places: 1, left: ["Cobble"] },
		],
		"without a graphics card there are two such slots": [
			{ board, drives: [pebble, cobble, flint], graphicsCard: "none" },
			"plan-around",
			"adapter",
			{ drives: 3, places: 1, left: ["Cobble", "Flint"] },
		],
		"a longer drive than the socket holds": [
			{ board, drives: [stick("Boulder", { lengthMm: 110 })], graphicsCard: card },
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
				drives: [pebble, stick("Boulder", { lengthMm: 110 })],
				graphicsCard: card,
			},
			"good-to-know",
			"maybeAdapter",
			{ drives: 2 },
		],
	},
	fails: {
		"one drive more than sockets and slots": [
			{ board, drives: [pebble, cobble, flint], graphicsCard: card },
			"noPlace",
			{ drives: 3, places: 1, left: ["Cobble", "Flint"] },
		],
		"two more than sockets and slots, two in sockets": [
			{
				board: { ...board, m2Sockets: [socket("M2_1"), socket("M2_2")] },
				drives: [pebble, cobble, flint, stick("Marble")],
				graphicsCard: card,
			},
			"noPlace",
			{ drives: 4, places: 2, left: ["Flint", "Marble"] },
		],
		"the graphics card covers the slot for the adapter": [
			{ board, drives: [pebble, cobble], graphicsCard: { thicknessMm: 42 } },
			"noPlace",
			{ drives: 2, places: 1, left: ["Cobble"] },
		],
		"another card sits in the slot for the adapter": [
			{
				board,
				drives: [pebble, cobble],
				graphicsCard: card,
				addInCards: [{ id: "fiddle", name: "Fiddle", lanes: 1 }],
			},
			"noPlace",
			{ drives: 2, places: 1, left: ["Cobble"] },
		],
		"the slot left has one lane": [
			{
				board: { ...board, cardSlots: [slot(1, 16), slot(3, 16, 1)] },
				drives: [pebble, cobble],
				graphicsCard: card,
			},
			"noPlace",
			{ drives: 2, places: 1, left: ["Cobble"] },
		],
		"a SATA stick, and its port is taken by the drives with a cable": [
			{ board, drives: [slate], olderSataDrives: 2, graphicsCard: card },
			"noPlace",
			{ drives: 1, places: 0, left: ["Slate"] },
		],
		"the only socket is dead with this processor": [
			{
				board: {
					m2Sockets: [socket("M2_1")],
					cardSlots: [],
					conditions: [{ when: { processorSeries: ["Lump"] }, connector: "M2_1", dead: true }],
				},
				drives: [pebble],
				processor: { series: "Lump" },
			},
			"noPlace",
			{ drives: 1, places: 0, left: ["Pebble"] },
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
			{ board, drives: [pebble, cobble], graphicsCard: {} },
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
				board: {
					m2Sockets: [socket("M2_1")],
					cardSlots: [],
					conditions: [{ when: { processorSeries: ["Lump"] }, connector: "M2_1", dead: true }],
				},
				drives: [pebble],
				processor: {},
				graphicsCard: "none",
			},
			["processor.series"],
			"unsure",
			{ drives: 1 },
		],
		"a long drive, and the page gives no lengths": [
			{
				board: { m2Sockets: [socket("M2_1", { lengthsMm: undefined })], cardSlots: [] },
				drives: [stick("Boulder", { lengthMm: 110 })],
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
		"a long one": [
			{ drives: [stick("Boulder", { lengthMm: 110 }), pebble] },
			"2 M.2 sockets for your drives. Lengths to look for: 80, 110 mm.",
		],
	},
});
