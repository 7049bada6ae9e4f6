import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { readSlots } from "../../src/reading/read-slots.ts";
import { heavyTexts, specLikeText, standsIn } from "./spec-like-text.ts";

const read = (text: string, around?: "processor" | "chipset") => {
	const { slots, doubts } = readSlots(text, around);
	return { slots: slots.map(({ quote: _, ...facts }) => facts), doubts: doubts.map(({ about }) => about) };
};
const express = { bus: "PCI Express" };

test.each([
	["1 x PCIe 5.0 x16 slot", [{ ...express, count: 1, lengthLanes: 16, generation: 5 }]],
	["PCI Express 4.0 x1", [{ ...express, lengthLanes: 1, generation: 4 }]],
	["2 x PCIe Gen3x1", [{ ...express, count: 2, lengthLanes: 1, generation: 3 }]],
	["1x PCIe 4.0 x16 (x4 mode)", [{ ...express, count: 1, lengthLanes: 16, wiredLanes: 4, generation: 4 }]],
	["1 x PCIe 4.0 x16 (elektrisch x8)", [{ ...express, count: 1, lengthLanes: 16, wiredLanes: 8, generation: 4 }]],
	["1 x PCIe 4.0 x4 (x16 mechanisch)", [{ ...express, count: 1, lengthLanes: 16, wiredLanes: 4, generation: 4 }]],
	["1 x PCIe 4.0 slot (x4 mode)", [{ ...express, count: 1, wiredLanes: 4, generation: 4 }]],
	[
		"1 x PCIe 3.0 x16 slot (PCIE2), runs at x4, from the chipset",
		[{ ...express, count: 1, names: ["PCIE2"], lengthLanes: 16, wiredLanes: 4, generation: 3, from: "chipset" }],
	],
	["1 x PCIe 5.0 x16 vom Prozessor", [{ ...express, count: 1, lengthLanes: 16, generation: 5, from: "processor" }]],
	["PCI Express x1: 2 Stück", [{ ...express, count: 2, lengthLanes: 1 }]],
	["2 x PCI", [{ bus: "PCI", count: 2 }]],
	[
		"3 x PCIe 3.0 x1, 1 x PCIe 5.0 x16",
		[
			{ ...express, count: 3, lengthLanes: 1, generation: 3 },
			{ ...express, count: 1, lengthLanes: 16, generation: 5 },
		],
	],
])("%s", (text, slots) => {
	expect(read(text)).toEqual({ slots, doubts: [] });
});

test.each([
	["1 x PCIe 4.0 x16 (x8/x4 mode)", "lanes wired", [{ ...express, count: 1, lengthLanes: 16, generation: 4 }]],
	["2 x PCIe 5.0 x16 (x16 or x8/x8)", "lanes wired", [{ ...express, count: 2, lengthLanes: 16, generation: 5 }]],
	["1 x PCIe 4.0 x4 (x8 mode)", "lanes wired", [{ ...express, count: 1, lengthLanes: 4, generation: 4 }]],
	["3 x PCIe x16, including one at x4", "some of them", [{ ...express, count: 3 }]],
	[
		"3 x PCIe 4.0 x16 (PCIE1, PCIE2)",
		"count",
		[{ ...express, names: ["PCIE1", "PCIE2"], lengthLanes: 16, generation: 4 }],
	],
])("%s is a doubt about the %s", (text, about, slots) => {
	expect(read(text)).toEqual({ slots, doubts: [about] });
});

test.each([
	"1 x M.2 socket, PCIe 4.0 x4",
	"1 x 6-pin power plug for PCIe graphics",
	"PCI: no slots",
	"The PCIe x4 slot is disabled when a drive is fitted",
	"Four memory slots",
])("%s tells of no slot", (text) => {
	expect(read(text).slots).toEqual([]);
});

test("the section's head gives where the lanes come from", () => {
	expect(read("1 x PCIe 4.0 x4", "chipset").slots[0]?.from).toBe("chipset");
});

describe("any text", () => {
	test("gives only figures that stand in it, and quotes of its own", () => {
		fc.assert(
			fc.property(specLikeText, (text) => {
				const { slots, doubts } = readSlots(text);
				for (const { lengthLanes, wiredLanes, generation, quote } of slots) {
					for (const figure of [lengthLanes, wiredLanes, generation]) {
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
		readSlots(text);
		expect(performance.now() - before).toBeLessThan(1000);
	});
});
