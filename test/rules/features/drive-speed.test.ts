import type { Drive } from "../../../src/parts/drive.ts";
import { driveSpeed } from "../../../src/rules/features/drive-speed.ts";
import { m2, ports, slot, stick } from "../../plan/made-up-problem.ts";
import { testRule } from "../test-rule.ts";

// GB/s in one direction ("Understanding PCIe bandwidth", read in a secondary text): generation 4 x4 7.877, x2 3.938;
// generation 3 x4 3.938, x2 1.969, x1 0.985. Printed with two decimals.

const [dart, mouse] = [stick("Dart"), stick("Mouse")];
const slate = stick("Slate", { link: "SATA", lanes: undefined, generation: undefined });
const brick: Drive = { id: "brick", name: "Brick", shape: "3.5 inch", link: "SATA" };
const oldSocket = (name: string, facts: Parameters<typeof m2>[1] = {}) => m2(name, { generation: 3, ...facts });
const half = (drive: string, socket: string) => `${drive} in ${socket} moves 3.94 of the 7.88 GB/s it can use.`;
/** Neither its generation nor its speed is known. */
const riddle = stick("Riddle", { generation: undefined });
/** A fast socket that a processor of the series Lump does not serve, and a slower one. */
const lumpy = {
	m2Sockets: [m2("M1"), oldSocket("M2")],
	conditions: [{ connector: "M1", when: { processorSeries: ["Lump"] }, dead: true }],
};

testRule(driveSpeed, {
	fits: {
		"nobody has said": [{ board: { m2Sockets: [m2("M1")] } }, "notAsked"],
		"SATA drives are slower than any place": [
			{ board: { m2Sockets: [m2("M1", { sata: true })], drivePorts: ports(1) }, drives: [slate, brick] },
			"notAsked",
		],
		"one without a place is told elsewhere": [{ board: { m2Sockets: [], cardSlots: [] }, drives: [dart] }, "notAsked"],
		"a socket of its own generation": [{ board: { m2Sockets: [m2("M1")] }, drives: [dart] }, "full", { drives: 1 }],
		"a newer socket": [{ board: { m2Sockets: [m2("M1", { generation: 5 })] }, drives: [dart] }, "full", { drives: 1 }],
		"three of them": [
			{ board: { m2Sockets: [m2("M1"), m2("M2"), m2("M3")] }, drives: [dart, mouse, stick("Shrew")] },
			"full",
			{ drives: 3 },
		],
		"an older socket that carries what the drive reads": [
			{ board: { m2Sockets: [oldSocket("M1")] }, drives: [stick("Dart", { readMBytesPerS: 3500 })] },
			"full",
			{ drives: 1 },
		],
		// 0.9 x 4376 = 3938.4; four lanes of generation 3 carry 3938.46.
		"just at nine tenths": [
			{ board: { m2Sockets: [oldSocket("M1")] }, drives: [stick("Dart", { readMBytesPerS: 4376 })] },
			"full",
			{ drives: 1 },
		],
		"the fast drive gets the fast socket, whatever the order": [
			{
				board: { m2Sockets: [oldSocket("M1"), m2("M2")] },
				drives: [stick("Mouse", { readMBytesPerS: 3500 }), stick("Dart", { readMBytesPerS: 7000 })],
			},
			"full",
			{ drives: 2 },
		],
		"a socket that is dead with another processor": [
			{ board: lumpy, drives: [dart], processor: { series: "Loaf" } },
			"full",
			{ drives: 1 },
		],
		"no lanes given: a socket of key M is taken for four (common practice)": [
			{ board: { m2Sockets: [m2("M1", { wiredLanes: undefined })] }, drives: [dart] },
			"full",
			{ drives: 1 },
		],
		"nobody knows what the drive can do": [
			{ board: { m2Sockets: [m2("M1")] }, drives: [riddle] },
			"unknownDrives",
			{ drives: ["Riddle"] },
		],
		"nor what the socket does": [
			{ board: { m2Sockets: [m2("M1", { generation: undefined })] }, drives: [riddle] },
			"unknownDrives",
			{ drives: ["Riddle"] },
		],
		"one of two is at full speed, of the other nobody knows": [
			{ board: { m2Sockets: [m2("M1"), m2("M2")] }, drives: [dart, riddle] },
			"unknownDrives",
			{ drives: ["Riddle"] },
		],
		"of two alike the one whose name comes last goes on the adapter, in a slot as fast": [
			{
				board: { m2Sockets: [m2("M1")], cardSlots: [slot("X4", 2, 4)] },
				drives: [dart, mouse],
				graphicsCard: "none",
			},
			"full",
			{ drives: 2 },
		],
		"a U.2 drive at its port runs as fast as it can": [
			{
				board: { drivePorts: [{ name: "U1", kind: "U.2" }] },
				drives: [{ id: "urn", name: "Urn", shape: "2.5 inch", link: "U.2", lanes: 4, generation: 4 }],
			},
			"full",
			{ drives: 1 },
		],
		"on an adapter card in a slot as fast": [
			{ board: { m2Sockets: [], cardSlots: [slot("X4", 2, 4)] }, drives: [dart], graphicsCard: "none" },
			"full",
			{ drives: 1 },
		],
	},
	cautions: {
		"a socket one generation older": [
			{ board: { m2Sockets: [oldSocket("M1")] }, drives: [dart] },
			"good-to-know",
			"slower",
			{ drives: [half("Dart", "M1")] },
		],
		// 0.9 x 4377 = 3939.3
		"just under nine tenths": [
			{ board: { m2Sockets: [oldSocket("M1")] }, drives: [stick("Dart", { readMBytesPerS: 4377 })] },
			"good-to-know",
			"slower",
			{ drives: ["Dart in M1 moves 3.94 of the 4.38 GB/s it can use."] },
		],
		"two lanes of four": [
			{
				board: { m2Sockets: [m2("M1", { wiredLanes: 2 })] },
				drives: [stick("Dart", { readMBytesPerS: 7000 })],
			},
			"good-to-know",
			"slower",
			{ drives: ["Dart in M1 moves 3.94 of the 7 GB/s it can use."] },
		],
		"no lanes given: a socket of key B is taken for two (common practice)": [
			{
				board: { m2Sockets: [m2("M1", { key: "B", wiredLanes: undefined, generation: 3 })] },
				drives: [stick("Dart", { key: "B+M", generation: 3 })],
			},
			"good-to-know",
			"slower",
			{ drives: ["Dart in M1 moves 1.97 of the 3.94 GB/s it can use."] },
		],
		"two sockets that halve each other": [
			{
				board: {
					m2Sockets: [m2("M1"), m2("M2")],
					sharing: [{ members: ["M1", "M2"], modes: [{ on: { M1: 4 } }, { on: { M1: 2, M2: 2 } }] }],
				},
				drives: [dart, mouse],
			},
			"good-to-know",
			"slower",
			{ drives: [half("Dart", "M1"), half("Mouse", "M2")] },
		],
		"only one of two is slowed": [
			{ board: { m2Sockets: [m2("M1"), oldSocket("M2")] }, drives: [dart, mouse] },
			"good-to-know",
			"slower",
			{ drives: [half("Mouse", "M2")] },
		],
		"one is slowed, of the other nobody knows: the one that is known is told": [
			{
				board: {
					m2Sockets: [oldSocket("M1"), m2("M2", { generation: undefined, lengthsMm: [110] })],
				},
				drives: [dart, stick("Mouse", { lengthMm: 110 })],
			},
			"good-to-know",
			"slower",
			{ drives: [half("Dart", "M1")] },
		],
		"the fast socket is dead with this processor": [
			{ board: lumpy, drives: [dart], processor: { series: "Lump" } },
			"good-to-know",
			"slower",
			{ drives: [half("Dart", "M2")] },
		],
		"this processor's lanes are of generation 3": [
			{
				board: { m2Sockets: [m2("M1", { from: "processor" })] },
				drives: [dart],
				processor: { lanes: { generation: 3 } },
			},
			"good-to-know",
			"slower",
			{ drives: [half("Dart", "M1")] },
		],
		// Alike places: the drive named first has the socket named first.
		"one is slowed, of the other nobody knows what it can do": [
			{ board: { m2Sockets: [oldSocket("M1"), oldSocket("M2")] }, drives: [riddle, dart] },
			"good-to-know",
			"slower",
			{ drives: [half("Dart", "M1")] },
		],
		"of two alike the one whose name comes last goes on the adapter, in an older slot": [
			{
				board: { m2Sockets: [m2("M1")], cardSlots: [slot("X4", 2, 4, { generation: 3 })] },
				drives: [dart, mouse],
				graphicsCard: "none",
			},
			"good-to-know",
			"slower",
			{ drives: [half("Mouse", "X4")] },
		],
		"on an adapter card in an older slot": [
			{
				board: { m2Sockets: [], cardSlots: [slot("X4", 2, 4, { generation: 3 })] },
				drives: [dart],
				graphicsCard: "none",
			},
			"good-to-know",
			"slower",
			{ drives: [half("Dart", "X4")] },
		],
	},
	cannotTell: {
		"the socket's generation is not known": [
			{ board: { m2Sockets: [m2("M1", { generation: undefined })] }, drives: [dart] },
			["board.m2Sockets"],
			"unsure",
			{ drives: ["Dart"] },
		],
		"on an adapter card, the slot's generation is not known": [
			{
				board: { m2Sockets: [], cardSlots: [slot("X4", 2, 4, { generation: undefined })] },
				drives: [dart],
				graphicsCard: "none",
			},
			["board.cardSlots"],
			"unsure",
			{ drives: ["Dart"] },
		],
		"neither of socket nor slot": [
			{
				board: {
					m2Sockets: [m2("M1", { generation: undefined, from: "processor" })],
					cardSlots: [slot("X4", 2, 4, { generation: undefined })],
				},
				drives: [dart, mouse],
				graphicsCard: "none",
			},
			["board.m2Sockets", "board.cardSlots"],
			"unsure",
			{ drives: ["Dart", "Mouse"] },
		],
		"the fast socket is dead with some processors": [
			{ board: lumpy, drives: [dart], processor: {} },
			["processor.series"],
			"unsure",
			{ drives: ["Dart"] },
		],
		"the place of one, and what the other can do": [
			{
				board: { m2Sockets: [m2("M1", { generation: undefined }), m2("M2", { generation: undefined })] },
				drives: [dart, riddle],
			},
			["board.m2Sockets"],
			"unsure",
			{ drives: ["Dart"] },
		],
		"two sockets of one board are looked up once": [
			{
				board: { m2Sockets: [m2("M1", { generation: undefined }), m2("M2", { generation: undefined })] },
				drives: [dart, mouse],
			},
			["board.m2Sockets"],
			"unsure",
			{ drives: ["Dart", "Mouse"] },
		],
	},
});
