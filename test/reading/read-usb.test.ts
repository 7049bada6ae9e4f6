import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { readUsb } from "../../src/reading/read-usb.ts";
import { usbRates } from "../../src/reference/usb-rates.ts";
import { heavyTexts, specLikeText, standsIn } from "./spec-like-text.ts";

/** What was read, without quotes, and what is in doubt. */
const read = (text: string, around?: "back" | "header") => {
	const { usb, doubts } = readUsb(text, around);
	return { usb: usb.map(({ quote: _, ...facts }) => facts), doubts: doubts.map(({ about }) => about) };
};

describe("names and their rates", () => {
	test.each([
		["1 x USB 1.1", 0.012],
		["1 x USB 2.0/1.1", 0.48],
		["1 x USB 3.0", 5],
		["1 x USB3.2Gen1", 5],
		["1 x USB 3.1 Gen 2", 10],
		["1 x USB 3.2 Gen 2x1", 10],
		["1 x USB 3.2 Gen 2×2", 20],
		["1 x USB 5Gbps", 5],
		["1 x USB 10 Gbit/s", 10],
		["1 x USB (480 Mbps)", 0.48],
		["1 x USB4 40Gbps", 40],
		["1 x USB4 Version 2.0 (80 Gb/s)", 80],
		["1 x USB 3.2 (10 Gb/s)", 10],
	])("%s", (text, gbps) => {
		expect(read(text)).toEqual({ usb: [{ gbps, count: 1 }], doubts: [] });
	});

	test.each([
		"1 x USB 3.1",
		"1 x USB 3.2",
		"1 x USB 3",
		"1 x USB4",
		"1 x USB 3.2 Gen 1 (10 Gb/s)",
		"1 x USB 7Gbps",
		"1 x USB 5Gbps/10Gbps",
	])("%s is a doubt", (text) => {
		expect(read(text)).toEqual({ usb: [{ count: 1 }], doubts: ["rate"] });
	});
});

describe("counts, shapes and places", () => {
	test.each([
		["4 x USB 3.2 Gen 2 Type-A ports", [{ gbps: 10, plug: "A", count: 4 }]],
		["Rear: 2 x USB 5Gbps Type-A", [{ gbps: 5, plug: "A", count: 2, place: "back" }]],
		[
			"USB 10Gbps Type-C (2 rear, 2 front)",
			[
				{ gbps: 10, plug: "C", place: "back", count: 2 },
				{ gbps: 10, plug: "C", place: "header", count: 2 },
			],
		],
		[
			"5 USB 5Gbps ports: 3 at the back, 2 by header",
			[
				{ gbps: 5, place: "back", count: 3 },
				{ gbps: 5, place: "header", count: 2 },
			],
		],
		[
			"5 ports: 3 at the back, 2 by header",
			[
				{ place: "back", count: 3 },
				{ place: "header", count: 2 },
			],
		],
		[
			"6 USB-2.0-Anschlüsse (4 hinten, 2 vorne)",
			[
				{ gbps: 0.48, place: "back", count: 4 },
				{ gbps: 0.48, place: "header", count: 2 },
			],
		],
		[
			"3 x USB 3.2 Gen 1 (1 x Type-C + 2 x Type-A)",
			[
				{ gbps: 5, plug: "C", count: 1 },
				{ gbps: 5, plug: "A", count: 2 },
			],
		],
		[
			"2 USB 2.0 ports, 4 USB 5Gbps ports",
			[
				{ gbps: 0.48, count: 2 },
				{ gbps: 5, count: 4 },
			],
		],
		["USB 2.0 ports: 4", [{ gbps: 0.48, count: 4 }]],
		["USB-C 3.2 Gen 2x2 x 1", [{ gbps: 20, plug: "C", count: 1 }]],
		["2 × USB 10Gbps, Typ-C, Rückseite", [{ gbps: 10, plug: "C", count: 2, place: "back" }]],
		["1 x USB 5Gbps header for 2 ports", [{ gbps: 5, place: "header", headers: 1, count: 2 }]],
		["2 x USB 2.0 headers (support 4 USB 2.0 ports)", [{ gbps: 0.48, place: "header", headers: 2, count: 4 }]],
		["1 interne USB 3.2 Gen 1 Steckleiste für 2 Anschlüsse", [{ gbps: 5, place: "header", headers: 1, count: 2 }]],
		["1 x USB-C 3.2 Gen 2", [{ gbps: 10, plug: "C", count: 1 }]],
		[
			"Rear: 2 x USB 2.0, 1 x USB 5Gbps\n3 x USB 2.0",
			[
				{ gbps: 0.48, count: 2, place: "back" },
				{ gbps: 5, count: 1, place: "back" },
				{ gbps: 0.48, count: 3 },
			],
		],
		["2 x USB 2.0 headers", [{ gbps: 0.48, place: "header", headers: 2 }]],
	])("%s", (text, usb) => {
		expect(read(text)).toEqual({ usb, doubts: [] });
	});

	test.each([
		["6 x USB 2.0 (4 rear, 4 front)", "count", [{ gbps: 0.48 }]],
		["USB 3.2 Gen 1 x 2", "rate", []],
		["4 x USB 5Gbps Type-A Type-C", "plug", [{ gbps: 5, count: 4 }]],
		["4 x USB 5Gbps rear and front", "place", [{ gbps: 5 }]],
		["4 x USB 2.0 (2 ici, 2 ailleurs)", "place", [{ gbps: 0.48, count: 4 }]],
		["4 x USB ports including a 10Gbps Type-C", "some of them", [{ count: 4 }]],
	])("%s is a doubt about the %s", (text, about, usb) => {
		expect(read(text)).toEqual({ usb, doubts: [about] });
	});

	test("the section's head gives the place where the line gives none", () => {
		expect(read("2 x USB 2.0", "back").usb).toEqual([{ gbps: 0.48, count: 2, place: "back" }]);
		expect(read("2 x USB 2.0 (front)", "back").usb).toEqual([{ gbps: 0.48, count: 2, place: "header" }]);
	});

	test("a heading and a hub are no sockets", () => {
		expect(read("USB").usb).toEqual([]);
		expect(read("2 x USB 2.0 hub").usb).toEqual([]);
	});
});

describe("any text", () => {
	const rates = new Set<number>(Object.values(usbRates).map(({ gbitsPerSecond }) => gbitsPerSecond));
	test("gives only figures that stand in it, rates that exist, and quotes of its own", () => {
		fc.assert(
			fc.property(specLikeText, (text) => {
				const { usb, doubts } = readUsb(text);
				for (const { gbps, count, headers, quote } of usb) {
					if (gbps !== undefined) expect(rates).toContain(gbps);
					for (const figure of [count, headers]) if (figure !== undefined) expect(standsIn(text, figure)).toBe(true);
					expect(text).toContain(quote);
				}
				for (const { quote } of doubts) expect(text).toContain(quote);
			}),
			{ numRuns: 2000 },
		);
	});
	test.each(heavyTexts)("is read in a blink", (text) => {
		const before = performance.now();
		readUsb(text);
		expect(performance.now() - before).toBeLessThan(1000);
	});
});
