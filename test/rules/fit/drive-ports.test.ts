import type { Board } from "../../../src/parts/board.ts";
import type { Drive } from "../../../src/parts/drive.ts";
import { drivePorts } from "../../../src/rules/fit/drive-ports.ts";
import { testRule } from "../test-rule.ts";

const brick: Drive = { id: "brick", name: "Brick", shape: "3.5 inch", link: "SATA" };
const pebble: Drive = { id: "pebble", name: "Pebble", shape: "M.2", link: "PCI Express", lengthMm: 80 };
const fossil: Drive = { id: "fossil", name: "Fossil", shape: "3.5 inch", link: "IDE" };

const ports = (count: number) =>
	Array.from({ length: count }, (_, index) => ({ name: `SATA_${index + 1}`, kind: "SATA" as const }));
const socket = (name: string) => ({ name, key: "M" as const, lengthsMm: [80], wiredLanes: 4, sata: false });
/** Either the socket or the ports. */
const either = (connector: string, ...names: string[]) => ({
	members: [connector, ...names],
	modes: [{ on: { [connector]: 4 } }, { on: Object.fromEntries(names.map((name) => [name, 1])) }],
});
/** Four ports; the second socket switches two of them off. */
const board = {
	drivePorts: ports(4),
	m2Sockets: [socket("M2_1"), socket("M2_2")],
	sharing: [either("M2_2", "SATA_3", "SATA_4")],
} satisfies Partial<Board>;

testRule(drivePorts, {
	fits: {
		"nobody has said": [{ board }, "notAsked"],
		"no such drive": [{ board: { drivePorts: [] }, drives: [pebble, fossil], olderSataDrives: 0 }, "notAsked"],
		"as many ports as drives": [
			{ board, drives: [brick, brick], olderSataDrives: 2 },
			"enough",
			{ drives: 4, ports: 4 },
		],
		"one drive": [{ board: { drivePorts: ports(1) }, olderSataDrives: 1 }, "enough", { drives: 1, ports: 1 }],
		"even in the socket that switches two off": [
			{ board, drives: [pebble], olderSataDrives: 2 },
			"enough",
			{ drives: 2, ports: 4 },
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
		"ports of another kind are no SATA ports, but SATA ones are enough": [
			{ board: { drivePorts: [{ name: "U2_1", kind: "U.2" }, ...ports(1)] }, drives: [brick] },
			"enough",
			{ drives: 1, ports: 1 },
		],
		"nothing said of sharing, and far more ports than drives": [
			{ board: { drivePorts: ports(4), m2Sockets: [socket("M2_1")] }, drives: [pebble], olderSataDrives: 2 },
			"enough",
			{ drives: 2, ports: 4 },
		],
		"a card slot that shares with ports is not looked at": [
			{
				board: { ...board, sharing: [either("SLOT_4", "SATA_3", "SATA_4")] },
				drives: [pebble],
				olderSataDrives: 4,
			},
			"enough",
			{ drives: 4, ports: 4 },
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
		"one more than is left beside two M.2 drives": [
			{ board, drives: [pebble, pebble], olderSataDrives: 3 },
			"plan-around",
			"tooFewBeside",
			{ drives: 3, ports: 2 },
		],
		"enough only in the right socket": [
			{ board, drives: [pebble], olderSataDrives: 4 },
			"good-to-know",
			"rightSocket",
			{ drives: 4, ports: 4, fewest: 2 },
		],
		"one M.2 drive switches one group off, not two": [
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
			{ drives: 5, ports: 6, fewest: 4 },
		],
		"nothing said of sharing, and it would matter": [
			{ board: { drivePorts: ports(4), m2Sockets: [socket("M2_1")] }, drives: [pebble], olderSataDrives: 3 },
			"good-to-know",
			"enoughUnlessShared",
			{ drives: 3, ports: 4 },
		],
		"more ways to share than are gone through: only ports that share with nothing count": [
			{
				board: {
					drivePorts: ports(10),
					m2Sockets: Array.from({ length: 9 }, (_, index) => socket(`M2_${index + 1}`)),
					sharing: Array.from({ length: 9 }, (_, index) => either(`M2_${index + 1}`, `SATA_${index + 1}`)),
				},
				drives: [pebble, brick, brick],
			},
			"plan-around",
			"tooFewBeside",
			{ drives: 2, ports: 1 },
		],
	},
	cannotTell: {
		"the page names no ports": [{ board: {}, drives: [brick] }, ["board.drivePorts"]],
	},
	needs: {
		"nobody has said": [{}, null],
		"one drive": [{ drives: [brick, pebble] }, "At least 1 SATA port that your M.2 drives do not switch off."],
		"older ones too": [
			{ drives: [brick], olderSataDrives: 2 },
			"At least 3 SATA ports that your M.2 drives do not switch off.",
		],
	},
});
