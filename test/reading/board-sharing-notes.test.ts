import { describe, expect, test } from "vitest";
import { boardLines } from "../../src/reading/board-lines.ts";
import { sharingNotes } from "../../src/reading/board-sharing-notes.ts";
import { labelledLines } from "../../src/reading/labelled-lines.ts";
import type { ReadFact } from "../../src/reading/part-reading.ts";
import { textLines } from "../../src/reading/text-lines.ts";

const connector = (list: string, index: number, value: object): ReadFact => ({
	fact: `${list}[${index}]`,
	value,
	standing: "stated",
	line: 1,
	quote: "above",
});
const lists = [
	connector("m2Sockets", 0, { name: "M2_1", wiredLanes: 4 }),
	connector("m2Sockets", 1, { name: "M2_2", wiredLanes: 2 }),
	connector("cardSlots", 0, { name: "PCIE_1", lengthLanes: 16 }),
	connector("cardSlots", 1, { name: "PCIE_2", lengthLanes: 16, wiredLanes: 4 }),
	...[1, 2, 3, 4, 5, 6].map((number) => connector("drivePorts", number - 1, { name: `SATA ${number}`, kind: "SATA" })),
];
const notes = (text: string) => sharingNotes(boardLines(labelledLines(textLines(text).lines)), lists, []);
const either = (one: Record<string, number>, other: Record<string, number>) => ({
	members: [...Object.keys(one), ...Object.keys(other)],
	modes: [{ on: one }, { on: other }],
});

describe("which is off when the other is used", () => {
	test.each([
		["When M2_2 is used, SATA_5 is disabled.", either({ M2_2: 2 }, { "SATA 5": 1 })],
		["SATA_5 will be disabled if M2_2 is used.", either({ M2_2: 2 }, { "SATA 5": 1 })],
		["SATA_5/6 are unavailable when M2_2 is populated.", either({ M2_2: 2 }, { "SATA 5": 1, "SATA 6": 1 })],
		["If M2_1 is used, SATA ports 3-5 are disabled.", either({ M2_1: 4 }, { "SATA 3": 1, "SATA 4": 1, "SATA 5": 1 })],
		["PCIE_2 is turned off while M2_1 is used.", either({ M2_1: 4 }, { PCIE_2: 4 })],
		["Wenn M2_1 belegt ist, wird PCIE_2 deaktiviert.", either({ M2_1: 4 }, { PCIE_2: 4 })],
		["Sobald PCIE_1 belegt ist, ist M2_2 nicht verfügbar.", either({ PCIE_1: 16 }, { M2_2: 2 })],
	])("%s", (text, value) => {
		expect(notes(text)).toEqual({
			facts: [{ fact: "sharing[0]", value, standing: "stated", line: 1, quote: text }],
			doubts: [],
		});
	});
	test.each([
		"When M2_2 runs in SATA mode, SATA_5 is disabled.",
		"If M2_2 is occupied by a SATA-type M.2 device, SATA_5 will be disabled.",
		"SATA_5 will be unavailable when a SATA SSD is installed in M2_2.",
		"Ist M2_2 mit einer SATA-SSD belegt, ist SATA_5 deaktiviert.",
	])("only while a SATA drive is there: %s", (text) => {
		const { facts } = notes(text);
		expect(facts.map(({ value }) => value)).toEqual(
			text.startsWith("Ist") ? [] : [{ ...either({ M2_2: 2 }, { "SATA 5": 1 }), onlyWithSata: ["M2_2"] }],
		);
	});
	test("a note told twice is one group", () => {
		const text = "When M2_2 is used, SATA_5 is disabled.";
		expect(notes(`${text}\n${text}`).facts).toHaveLength(1);
	});
});

describe("left open", () => {
	test.each([
		["M2_2 shares bandwidth with SATA_5.", []],
		["M2_9 is disabled when SATA_5 is used.", []],
		["SATA_9 is disabled when M2_1 is used.", []],
		["When the second socket is used, two ports are disabled.", []],
		["When M2_1 is used, M2_1 is disabled.", []],
	])("%s", (text, might) => {
		expect(notes(text)).toMatchObject({ facts: [], doubts: [{ fact: "sharing", might, line: 1, quote: text }] });
	});

	test("names what shares", () => {
		expect(notes("M2_2 shares bandwidth with SATA_5.").doubts[0]?.why).toBe(
			"M2_2 and SATA 5 share. The line does not say which is off when the other is used.",
		);
	});
});

test.each(["4 x SATA 6 Gb/s", "M2_1: PCIe 4.0 x4", "Graphics: up to 2 GB of shared memory"])(
	"%s tells of no sharing",
	(text) => {
		expect(notes(text)).toEqual({ facts: [], doubts: [] });
	},
);
