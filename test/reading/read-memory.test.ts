import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { readMemory } from "../../src/reading/read-memory.ts";
import { heavyTexts, specLikeText, standsIn } from "./spec-like-text.ts";

const read = (text: string) => {
	const { memory, doubts } = readMemory(text);
	return { memory, doubts: doubts.map(({ about }) => about) };
};

test.each([
	["4 x DIMM", { form: "DIMM", slots: 4 }],
	["2 x DDR5 SO-DIMM slots", { type: "DDR5", form: "SO-DIMM", slots: 2 }],
	["DIMM slots: 4", { form: "DIMM", slots: 4 }],
	["4x DDR5~128GB", { type: "DDR5", slots: 4, maxGb: 128 }],
	["Maximum memory: 1TB", { maxGb: 1024 }],
	["Up to 256 GB (64 GB per DIMM), 4 DIMM slots", { form: "DIMM", slots: 4, maxGb: 256, maxGbPerModule: 64 }],
	["max. 4 x 48 GB", {}],
	["64 GB per module", { maxGbPerModule: 64 }],
	[
		"2 Speichersteckplätze, bis zu 96 GB (48 GB pro Modul), DDR5 bis 6.400 MHz, Zweikanal",
		{ type: "DDR5", slots: 2, channels: 2, maxGb: 96, maxGbPerModule: 48, highestMtPerS: 6400 },
	],
	["DDR4-3200", { type: "DDR4", highestMtPerS: 3200 }],
	["DDR5 7600+(OC) / 6400(OC) / 5600 / 4800", { type: "DDR5", highestMtPerS: 7600 }],
	["DDR5 memory up to 8000 MT/s, dual channel", { type: "DDR5", channels: 2, highestMtPerS: 8000 }],
	["Quad-Channel DDR4", { type: "DDR4", channels: 4 }],
	["4 slots, DDR5, 2 DIMMs per channel", { type: "DDR5", form: "DIMM", slots: 4 }],
	["4 x 288-pin DDR5 DIMM", { type: "DDR5", form: "DIMM", slots: 4 }],
	["1 DIMM per channel", { form: "DIMM" }],
	["288-pin DDR5 DIMM, PC4-25600, sold since 2024", { type: "DDR5", form: "DIMM" }],
])("%s", (text, memory) => {
	expect(read(text)).toEqual({ memory, doubts: [] });
});

test.each([
	["DDR4 / DDR5", "type", {}],
	["2 x DIMM or 4 x DIMM", "slots", { form: "DIMM" }],
	["max. 128 GB, max. 192 GB", "most memory", {}],
	["DDR5 128 GB", "most memory", { type: "DDR5" }],
	["4 x DIMM, max. 128 GB, 64 GB per DIMM", "most memory", { form: "DIMM", slots: 4 }],
	["DDR5 2400 MHz", "highest rate", { type: "DDR5" }],
	["single channel, dual channel", "channels", {}],
])("%s is a doubt about the %s", (text, about, memory) => {
	expect(read(text)).toEqual({ memory, doubts: [about] });
});

describe("any text", () => {
	const channelNames = new Set([1, 2, 4, 8]);
	test("gives only figures that stand in it", () => {
		fc.assert(
			fc.property(specLikeText, (text) => {
				const { memory } = readMemory(text);
				for (const figure of [memory.slots, memory.highestMtPerS]) {
					if (figure !== undefined) expect(standsIn(text, figure)).toBe(true);
				}
				for (const gb of [memory.maxGb, memory.maxGbPerModule]) {
					if (gb !== undefined) expect(standsIn(text, gb) || standsIn(text, gb / 1024)).toBe(true);
				}
				const { channels } = memory;
				if (channels !== undefined) expect(channelNames.has(channels) || standsIn(text, channels)).toBe(true);
			}),
			{ numRuns: 2000 },
		);
	});
	test.each(heavyTexts)("is read in a blink", (text) => {
		const before = performance.now();
		readMemory(text);
		expect(performance.now() - before).toBeLessThan(1000);
	});
});
