import { describe, expect, test } from "vitest";
import type { Drive } from "../../../src/parts/drive.ts";
import { chipsetLink } from "../../../src/rules/features/chipset-link.ts";
import { card, m2, ports, slot, stick } from "../../plan/made-up-problem.ts";
import { partNames } from "../rule-subject.ts";
import { testRule } from "../test-rule.ts";

// GB/s in one direction ("Understanding PCIe bandwidth", read in a secondary text): four lanes of generation 4 7.877, of
// generation 3 3.938; two of generation 3 1.969. A SATA link moves 0.6. Printed with two decimals.

const uplink = (generation: number, lanes = 4) => ({ chipsetUplink: { lanes, generation } });
const [dart, mouse] = [stick("Dart"), stick("Mouse")];
/** Neither its generation nor its speed is known. */
const riddle = stick("Riddle", { generation: undefined });
const reading = (readMBytesPerS: number) => stick("Dart", { readMBytesPerS });
/** 5.495 GB/s in all: a sum of such fractions is just that or a hair less, as they are added. The smallest come first. */
const [slow, middling, quick] = [565, 1785, 3145].map((readMBytesPerS) =>
	stick(`Reader ${readMBytesPerS}`, { readMBytesPerS }),
) as [Drive, Drive, Drive];
const threeSockets = { m2Sockets: [m2("M1"), m2("M2"), m2("M3")], ...uplink(4) };
/** A SATA drive without moving parts. */
const box = { id: "box", name: "Box", shape: "2.5 inch", link: "SATA" } as const;
const oneSocket = { m2Sockets: [m2("M1")] };
/** Two sockets that carry half of the link each. */
const twoHalves = { m2Sockets: [m2("M1", { generation: 3 }), m2("M2", { generation: 3 })], ...uplink(4) };

describe("advice where it is more than the link carries", () => {
	const advice = chipsetLink.advice?.["more"];
	test("of a single thing nothing is said of working at once", () => {
		expect(advice?.({ things: 1 })).toBe("It works, only slower than it could elsewhere.");
	});
	test("of two it counts only when both work", () => {
		expect(advice?.({ things: 2 })).toContain("at the same time");
	});
});

testRule(chipsetLink, {
	fits: {
		"nobody has said": [{ board: { ...oneSocket, ...uplink(4) } }, "notAsked"],
		"all hangs on the processor": [
			{ board: { m2Sockets: [m2("M1", { from: "processor" })], ...uplink(3) }, drives: [dart] },
			"notAsked",
		],
		"what could hang there is dead with this processor": [
			{
				board: {
					...oneSocket,
					...uplink(3),
					cardSlots: [],
					conditions: [{ connector: "M1", when: { processorSeries: ["Lump"] }, dead: true }],
				},
				drives: [dart],
				processor: { series: "Lump" },
			},
			"notAsked",
		],
		"one drive that can fill the link": [
			{ board: { ...oneSocket, ...uplink(4) }, drives: [dart] },
			"enough",
			{ wanted: 7.88 },
		],
		"two drives that fill it exactly": [{ board: twoHalves, drives: [dart, mouse] }, "enough", { wanted: 7.88 }],
		"twice the lanes carry what one socket cannot fill": [
			{ board: { ...oneSocket, ...uplink(3, 8) }, drives: [dart] },
			"enough",
			{ wanted: 7.88 },
		],
		"a drive on the processor does not count": [
			{
				board: { m2Sockets: [m2("M1", { from: "processor" }), m2("M2")], ...uplink(4) },
				drives: [dart, mouse],
			},
			"enough",
			{ wanted: 7.88 },
		],
		"nobody knows the link, and seven hard disks fit any": [
			{ board: { drivePorts: ports(8) }, olderSataDrives: 7 },
			"enough",
			// 7 x 0.28, common practice
			{ wanted: 1.96 },
		],
		"nobody knows the link, and three SATA drives fit any": [
			{ board: { drivePorts: ports(4) }, drives: [box, box, box] },
			"enough",
			{ wanted: 1.8 },
		],
		"nobody knows what the drive moves": [
			{ board: { ...oneSocket, ...uplink(4) }, drives: [riddle] },
			"unrated",
			{ things: ["Riddle"] },
		],
		"nobody knows how fast the socket is": [
			{ board: { m2Sockets: [m2("M1", { generation: undefined })], ...uplink(4) }, drives: [dart] },
			// The drive's own rate counts then, since it can move no more.
			"enough",
			{ wanted: 7.88 },
		],
		"both of them": [
			{
				board: { m2Sockets: [m2("M1"), m2("M2")], ...uplink(4) },
				drives: [riddle, stick("Shrew", { generation: undefined })],
			},
			"unrated",
			{ things: ["Riddle", "Shrew"] },
		],
		"a graphics card of which no generation is given, beside a drive that does not fill the link": [
			{
				board: {
					...oneSocket,
					...uplink(4),
					cardSlots: [slot("X4", 4, 16, { wiredLanes: 4, from: "chipset" })],
				},
				graphicsCard: { lanes: 16, thicknessMm: 40 },
				drives: [reading(3000)],
			},
			"unrated",
			{ things: [partNames.graphicsCard] },
		],
		"neither the link nor what the drive moves is known": [
			{ board: oneSocket, drives: [riddle] },
			"unrated",
			{ things: ["Riddle"] },
		],
		"a sum that ends in half a hundredth": [
			{ board: threeSockets, drives: [slow, middling, quick] },
			"enough",
			{ wanted: 5.49 },
		],
		"the same drives named in another order": [
			{ board: threeSockets, drives: [slow, quick, middling] },
			"enough",
			{ wanted: 5.49 },
		],
		"and in another": [{ board: threeSockets, drives: [quick, middling, slow] }, "enough", { wanted: 5.49 }],
		"exactly what any link carries": [{ board: oneSocket, drives: [reading(1970)] }, "enough", { wanted: 1.97 }],
	},
	cautions: {
		"one of them is known to be more, whatever the other does": [
			{ board: { m2Sockets: [m2("M1"), m2("M2")], ...uplink(3) }, drives: [dart, riddle] },
			"good-to-know",
			"more",
			{ wanted: 7.88, carries: 3.94, things: 2 },
		],
		"one drive alone, twice as fast as the link": [
			{ board: { ...oneSocket, ...uplink(3) }, drives: [dart] },
			"good-to-know",
			"more",
			{ wanted: 7.88, carries: 3.94, things: 1 },
		],
		"a SATA drive beside two that fill it": [
			{ board: { ...twoHalves, drivePorts: ports(1) }, drives: [dart, mouse, box] },
			"good-to-know",
			"more",
			{ wanted: 8.48, carries: 7.88, things: 3 },
		],
		"nobody knows how fast the socket is, and the drive alone could move more": [
			{ board: { m2Sockets: [m2("M1", { generation: undefined })], ...uplink(3) }, drives: [dart] },
			"good-to-know",
			"more",
			{ wanted: 7.88, carries: 3.94, things: 1 },
		],
		"just more than the link carries": [
			{ board: { ...oneSocket, ...uplink(3) }, drives: [reading(3950)] },
			"good-to-know",
			"more",
			{ wanted: 3.95, carries: 3.94, things: 1 },
		],
		"a graphics card in a slot of the chipset, and a drive": [
			{
				board: {
					...oneSocket,
					...uplink(4),
					cardSlots: [slot("X4", 4, 16, { wiredLanes: 4, from: "chipset" })],
				},
				graphicsCard: { lanes: 16, generation: 4, thicknessMm: 40 },
				drives: [dart],
			},
			"good-to-know",
			"more",
			{ wanted: 15.75, carries: 7.88, things: 2 },
		],
		"cards count too": [
			{
				board: { ...oneSocket, ...uplink(4), cardSlots: [slot("X1", 3, 1)] },
				graphicsCard: "none",
				drives: [dart],
				addInCards: [card("Fiddle", { lanes: 1 })],
			},
			"good-to-know",
			"more",
			// 7.877 + 0.985
			{ wanted: 8.86, carries: 7.88, things: 2 },
		],
	},
	cannotTell: {
		"nobody knows the link": [
			{ board: oneSocket, drives: [dart] },
			["board.chipsetUplink"],
			"unsure",
			{ wanted: 7.88 },
		],
		"four SATA drives may be more than any link carries": [
			{ board: { drivePorts: ports(4) }, drives: [box, box, box, box] },
			["board.chipsetUplink"],
			"unsure",
			{ wanted: 2.4 },
		],
		"eight hard disks may be more than any link carries": [
			{ board: { drivePorts: ports(8) }, olderSataDrives: 8 },
			["board.chipsetUplink"],
			"unsure",
			// 8 x 0.28
			{ wanted: 2.24 },
		],
		"just more than any link carries": [
			{ board: oneSocket, drives: [reading(1971)] },
			["board.chipsetUplink"],
			"unsure",
			{ wanted: 1.97 },
		],
		"the link is of a generation whose rate is not known here": [
			{ board: { ...oneSocket, ...uplink(7) }, drives: [dart] },
			["board.chipsetUplink"],
			"unsure",
			{ wanted: 7.88 },
		],
	},
});
