import type { Board } from "../../../src/parts/board.ts";
import type { Drive } from "../../../src/parts/drive.ts";
import { drivePorts } from "../../../src/rules/fit/drive-ports.ts";
import { testRule } from "../test-rule.ts";

const brick: Drive = { id: "brick", name: "Brick", shape: "3.5 inch", link: "SATA" };
const pebble: Drive = { id: "pebble", name: "Pebble", shape: "M.2", link: "PCI Express", lengthMm: 80 };
const slate: Drive = { id: "slate", name: "Slate", shape: "M.2", link: "SATA", lengthMm: 80, key: "B+M" };
const fossil: Drive = { id: "fossil", name: "Fossil", shape: "3.5 inch", link: "IDE" };
const urn: Drive = { id: "urn", name: "Urn", shape: "2.5 inch", link: "U.2" };

const ports = (count: number) =>
	Array.from({ length: count }, (_, index) => ({ name: `SATA_${index + 1}`, kind: "SATA" as const }));
const socket = (name: string) => ({ name, key: "M" as const, lengthsMm: [80], wiredLanes: 4, sata: false });
const slot = (row: number, lengthLanes: number) => ({
	name: `SLOT_${row}`,
	bus: "PCI Express" as const,
	row,
	lengthLanes,
	wiredLanes: lengthLanes,
});
const idePort = { name: "IDE_1", kind: "IDE" } as const;
/** Either the socket or the ports. */
const either = (connector: string, ...names: string[]) => ({
	members: [connector, ...names],
	modes: [{ on: { [connector]: 4 } }, { on: Object.fromEntries(names.map((name) => [name, 1])) }],
});
/** Four ports; the second socket switches two of them off. No slot for an adapter. */
const board = {
	drivePorts: ports(4),
	m2Sockets: [socket("M2_1"), socket("M2_2")],
	cardSlots: [],
	sharing: [either("M2_2", "SATA_3", "SATA_4")],
} satisfies Partial<Board>;
const bought = { boughtLists: ["drives"] as const };

/** Two ports that stand up at the far edge, in rows 2 and 3, below a graphics card in row 1. */
const uprightPorts = {
	drivePorts: ports(2).map((port, index) => ({ ...port, upright: true, row: index + 2 })),
	cardSlots: [slot(1, 16)],
	sharing: [],
};
const twoWide = (lengthMm?: number) => ({ lanes: 16, thicknessMm: 40, ...(lengthMm ? { lengthMm } : {}) });

testRule(drivePorts, {
	fits: {
		"nobody has said": [{ board }, "notAsked"],
		"no such drive": [{ board: { drivePorts: [] }, drives: [pebble], olderSataDrives: 0 }, "notAsked"],
		"as many ports as drives": [
			{ board: { drivePorts: ports(4) }, drives: [brick, brick], olderSataDrives: 2 },
			"enough",
			{ drives: 4, ports: 4 },
		],
		"one drive": [{ board: { drivePorts: ports(1) }, olderSataDrives: 1 }, "enough", { drives: 1, ports: 1 }],
		"beside an M.2 drive that switches nothing off": [
			{ board, drives: [pebble], olderSataDrives: 2 },
			"enough",
			{ drives: 2, ports: 4 },
		],
		"the drives take the ports that share with nothing, though named last": [
			{
				board: { ...board, sharing: [either("M2_2", "SATA_1", "SATA_2")] },
				drives: [pebble],
				olderSataDrives: 2,
			},
			"enough",
			{ drives: 2, ports: 4 },
		],
		"four sockets share with a port each, and the drive finds the port that costs none": [
			{
				board: {
					drivePorts: ports(5),
					m2Sockets: Array.from({ length: 4 }, (_, index) => socket(`M2_${index + 1}`)),
					cardSlots: [],
					sharing: Array.from({ length: 4 }, (_, index) => either(`M2_${index + 1}`, `SATA_${index + 1}`)),
				},
				drives: [pebble, brick],
			},
			"enoughBeside",
			{ drives: 1, ports: 4 },
		],
		"as many as there are, and no M.2 drive that could cost one": [
			{ board, olderSataDrives: 4 },
			"enough",
			{ drives: 4, ports: 4 },
		],
		"one port of each kind for one drive of each": [
			{ board: { drivePorts: [idePort, ...ports(1)] }, drives: [fossil, brick] },
			"enough",
			{ drives: 2, ports: 2 },
		],
		"ports of other kinds are not counted": [
			{ board: { drivePorts: [idePort, ...ports(2)] }, drives: [brick] },
			"enough",
			{ drives: 1, ports: 2 },
		],
		"a U.2 drive on its own port": [
			{ board: { drivePorts: [{ name: "U2_1", kind: "U.2" }, ...ports(2)] }, drives: [urn] },
			"enough",
			{ drives: 1, ports: 1 },
		],
		"beside two M.2 drives": [
			{ board, drives: [pebble, pebble, brick], olderSataDrives: 1 },
			"enoughBeside",
			{ drives: 2, ports: 2 },
		],
		"one drive, one port left": [
			{
				board: {
					drivePorts: ports(2),
					m2Sockets: [socket("M2_1")],
					sharing: [either("M2_1", "SATA_2")],
				},
				drives: [pebble, brick],
			},
			"enoughBeside",
			{ drives: 1, ports: 1 },
		],
		"nothing said of sharing, and far more ports than drives": [
			{ board: { drivePorts: ports(4), m2Sockets: [socket("M2_1")] }, drives: [pebble], olderSataDrives: 2 },
			"enough",
			{ drives: 2, ports: 4 },
		],
		"nothing said of sharing: an M.2 drive that is only planned gives way, and its own rule says so": [
			{ board: { ...board, sharing: undefined }, drives: [pebble], olderSataDrives: 4 },
			"enough",
			{ drives: 4, ports: 4 },
		],
		"a card slot that shares with ports, and nothing in it": [
			{
				board: { ...board, cardSlots: [slot(4, 4)], sharing: [either("SLOT_4", "SATA_3", "SATA_4")] },
				drives: [pebble],
				olderSataDrives: 4,
				graphicsCard: "none",
			},
			"enough",
			{ drives: 4, ports: 4 },
		],
		"a card in a slot that shares with ports": [
			{
				board: { ...board, cardSlots: [slot(4, 4)], sharing: [either("SLOT_4", "SATA_3", "SATA_4")] },
				olderSataDrives: 2,
				graphicsCard: "none",
				addInCards: [{ id: "fiddle", name: "Fiddle", lanes: 1 }],
			},
			"enoughBeside",
			{ drives: 2, ports: 2 },
		],
		"an old drive on an old port": [
			{ board: { drivePorts: [idePort] }, drives: [fossil] },
			"enough",
			{ drives: 1, ports: 1 },
		],
		"a SATA stick in a frame leaves one of two": [
			{
				board: { drivePorts: ports(2), m2Sockets: [], cardSlots: [] },
				drives: [slate, brick],
				graphicsCard: "none",
			},
			"enough",
			{ drives: 1, ports: 2 },
		],
		"ports that stand up under a long card, one of two": [
			{ board: uprightPorts, graphicsCard: twoWide(200), olderSataDrives: 1 },
			"enoughBeside",
			{ drives: 1, ports: 1 },
		],
		// Own convention: from 200 mm on a card reaches the far edge.
		"a card just too short to reach them": [
			{ board: uprightPorts, graphicsCard: twoWide(199), olderSataDrives: 2 },
			"enough",
			{ drives: 2, ports: 2 },
		],
		"a port that is dead with another processor": [
			{
				board: {
					drivePorts: ports(2),
					conditions: [{ connector: "SATA_2", when: { processorSeries: ["Lump"] }, dead: true }],
				},
				olderSataDrives: 2,
				processor: { series: "Loaf" },
			},
			"enough",
			{ drives: 2, ports: 2 },
		],
	},
	cautions: {
		"one drive more than ports": [{ board, olderSataDrives: 5 }, "plan-around", "tooFew", { drives: 5, ports: 4 }],
		"no port at all": [
			{ board: { drivePorts: [] }, drives: [brick] },
			"plan-around",
			"tooFew",
			{ drives: 1, ports: 0 },
		],
		"one port": [
			{ board: { drivePorts: ports(1) }, drives: [brick, brick] },
			"plan-around",
			"tooFew",
			{ drives: 2, ports: 1 },
		],
		"two SATA drives, and one of the two ports is of the old kind": [
			{ board: { drivePorts: [idePort, ...ports(1)] }, drives: [brick, brick] },
			"plan-around",
			"tooFew",
			{ drives: 2, ports: 1 },
		],
		"two SATA drives, and the only port is of the old kind": [
			{ board: { drivePorts: [idePort] }, drives: [brick, brick] },
			"plan-around",
			"noSuchPort",
			{ left: ["Brick", "Brick"] },
		],
		"a U.2 drive and a SATA one, and a port for the latter alone": [
			{ board: { drivePorts: ports(1) }, drives: [urn, brick] },
			"plan-around",
			"noSuchPort",
			{ left: ["Urn"] },
		],
		"one more than is left beside two M.2 drives": [
			{ board, drives: [pebble, pebble], olderSataDrives: 3, graphicsCard: "none", ...bought },
			"plan-around",
			"tooFewBeside",
			{ drives: 3, ports: 2, off: ["SATA_3", "SATA_4"] },
		],
		"the same where the M.2 drives are only planned: one of them gives way, and its own rule says so": [
			{ board, drives: [pebble, pebble], olderSataDrives: 3, graphicsCard: "none" },
			"good-to-know",
			"rightSocket",
			{ drives: 3, ports: 4, sockets: ["M2_2"] },
		],
		"enough only in the right socket": [
			{ board, drives: [pebble], olderSataDrives: 4 },
			"good-to-know",
			"rightSocket",
			{ drives: 4, ports: 4, sockets: ["M2_2"] },
		],
		"either of two sockets would cost a port that is needed": [
			{
				board: {
					drivePorts: ports(6),
					m2Sockets: [socket("M2_1"), socket("M2_2"), socket("M2_3")],
					sharing: [either("M2_2", "SATA_3", "SATA_4"), either("M2_3", "SATA_5", "SATA_6")],
				},
				drives: [pebble],
				olderSataDrives: 5,
			},
			"good-to-know",
			"rightSocket",
			{ drives: 5, ports: 6, sockets: ["M2_2", "M2_3"] },
		],
		"one port of two lies under a long card": [
			{ board: uprightPorts, graphicsCard: twoWide(200), olderSataDrives: 2 },
			"plan-around",
			"tooFewBeside",
			{ drives: 2, ports: 1, off: ["SATA_1"] },
		],
		"one of two is dead with this processor": [
			{
				board: {
					drivePorts: ports(2),
					conditions: [{ connector: "SATA_2", when: { processorSeries: ["Lump"] }, dead: true }],
				},
				olderSataDrives: 2,
				processor: { series: "Lump" },
			},
			"plan-around",
			"tooFewBeside",
			{ drives: 2, ports: 1, off: [] },
		],
		"an old drive, and only SATA ports": [
			{ board: { drivePorts: ports(2) }, drives: [fossil, brick] },
			"plan-around",
			"noSuchPort",
			{ left: ["Fossil"] },
		],
		"a U.2 drive, and only SATA ports": [
			{ board: { drivePorts: ports(2) }, drives: [urn] },
			"plan-around",
			"noSuchPort",
			{ left: ["Urn"] },
		],
	},
	cannotTell: {
		"the page names no ports": [{ board: {}, drives: [brick] }, ["board.drivePorts"]],
		"nothing said of sharing, and it would matter": [
			{
				board: { ...board, m2Sockets: [socket("M2_1")], sharing: undefined },
				drives: [pebble],
				olderSataDrives: 3,
				graphicsCard: "none",
				...bought,
			},
			["board.sharing"],
			"unsureShared",
			{ left: ["older drive 3"] },
		],
		"whether a SlimSAS port is wired for a U.2 drive, is not known": [
			{ board: { drivePorts: [{ name: "SLIM_1", kind: "SlimSAS" }] }, drives: [urn] },
			["board.drivePorts"],
			"unsure",
			{ left: ["Urn"] },
		],
		"the port is dead with some processors": [
			{
				board: {
					drivePorts: ports(1),
					conditions: [{ connector: "SATA_1", when: { processorSeries: ["Lump"] }, dead: true }],
				},
				drives: [brick],
				processor: {},
			},
			["processor.series"],
			"unsure",
			{ left: ["Brick"] },
		],
		"whether the card reaches the ports that stand up, is not known": [
			{ board: uprightPorts, graphicsCard: twoWide(), olderSataDrives: 2 },
			["graphicsCard.lengthMm"],
			"unsure",
			{ left: ["older drive 2"] },
		],
	},
	needs: {
		"nobody has said": [{}, null],
		"an M.2 drive alone": [{ drives: [pebble] }, null],
		"one drive": [{ drives: [brick, pebble] }, "At least 1 SATA port that your M.2 drives do not switch off."],
		"older ones too": [
			{ drives: [brick], olderSataDrives: 2 },
			"At least 3 SATA ports that your M.2 drives do not switch off.",
		],
	},
});
