import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { readM2 } from "../../src/reading/read-m2.ts";
import { heavyTexts, specLikeText, standsIn } from "./spec-like-text.ts";

const read = (text: string, around?: "processor" | "chipset") => {
	const { sockets, doubts } = readM2(text, around);
	return { sockets: sockets.map(({ quote: _, ...facts }) => facts), doubts: doubts.map(({ about }) => about) };
};

test.each([
	["1 x M.2 socket", { count: 1 }],
	["M.2 slots: 3", { count: 3 }],
	["2 M.2-Steckplätze", { count: 2 }],
	["M.2 Steckplatz (Key E, 2230)", { key: "E", lengthsMm: [30] }],
	["1 x M.2, B key, 2242", { count: 1, key: "B", lengthsMm: [42] }],
	[
		"M.2_1,2 slot: 2280, PCIe 4.0 x4",
		{ count: 2, names: ["M.2_1", "M.2_2"], lengthsMm: [80], generation: 4, wiredLanes: 4 },
	],
	["2 x M.2 (M2_1 and M2_2)", { count: 2, names: ["M2_1", "M2_2"] }],
	[
		"M2_1 (Key M): 22110/2280/2260, PCIe Gen5x4",
		{ count: 1, names: ["M2_1"], key: "M", lengthsMm: [60, 80, 110], generation: 5, wiredLanes: 4 },
	],
	["1 x M.2 2242/60/80, PCIe 3.0 x4/x2", { count: 1, lengthsMm: [42, 60, 80], generation: 3, wiredLanes: 4 }],
	["1 x M.2, PCIe 3.0 x2 and SATA", { count: 1, generation: 3, wiredLanes: 2, sata: true }],
	["1 x M.2, PCIe 4.0 x4, kein SATA", { count: 1, generation: 4, wiredLanes: 4, sata: false }],
	["1 x M.2 and 4 x SATA ports", { count: 1 }],
	["1 x M.2 PCIe 5.0 x4 (from the processor)", { count: 1, generation: 5, wiredLanes: 4, from: "processor" }],
])("%s", (text, socket) => {
	expect(read(text)).toEqual({ sockets: [socket], doubts: [] });
});

test.each([
	["3 x M.2 (M2_1, M2_2)", "count", { names: ["M2_1", "M2_2"] }],
	["M2_1 to M2_4", "count", { names: ["M2_1", "M2_4"] }],
	["1 x M.2 2242-2280", "lengths", { count: 1 }],
	["1 x M.2 key B, key M", "key", { count: 1 }],
	["1 x M.2 PCIe 4.0 x4 or x2", "lanes wired", { count: 1, generation: 4 }],
	["1 x M.2, shares with SATA_5", "SATA", { count: 1 }],
	["1 x M.2 Wi-Fi slot", "key", { count: 1 }],
	["3 x M.2, davon einer PCIe 5.0 x4", "some of them", { count: 3 }],
])("%s is a doubt about the %s", (text, about, socket) => {
	expect(read(text)).toEqual({ sockets: [socket], doubts: [about] });
});

test.each([
	"4 x screws for M.2",
	"2 Schrauben für M.2",
	"M.2 heat sink",
	"M2_1 is disabled when SATA_5 is used",
	"SATA: 2.2",
])("%s tells of no socket", (text) => {
	expect(read(text).sockets).toEqual([]);
});

describe("any text", () => {
	test("gives only figures that stand in it, and quotes of its own", () => {
		fc.assert(
			fc.property(specLikeText, (text) => {
				const { sockets, doubts } = readM2(text);
				for (const { lengthsMm = [], wiredLanes, generation, quote } of sockets) {
					for (const figure of [...lengthsMm, wiredLanes, generation]) {
						if (figure !== undefined) expect(standsIn(text, figure)).toBe(true);
					}
					expect(text).toContain(quote);
				}
				for (const { quote } of doubts) expect(text).toContain(quote);
			}),
			{ numRuns: 2000 },
		);
	});
	test.each(heavyTexts)("is read in a blink", (text) => {
		const before = performance.now();
		readM2(text);
		expect(performance.now() - before).toBeLessThan(1000);
	});
});
