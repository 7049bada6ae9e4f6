import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { readSize } from "../../src/reading/read-size.ts";
import { heavyTexts, specLikeText } from "./spec-like-text.ts";

const read = (text: string) => {
	const { size, doubts } = readSize(text);
	return { size, doubts: doubts.map(({ about }) => about) };
};

test.each([
	["ATX", "ATX"],
	["Micro ATX", "microATX"],
	["mATX", "microATX"],
	["m-ATX", "microATX"],
	["µATX", "microATX"],
	["Mikro-ATX", "microATX"],
	["Mini ITX", "Mini-ITX"],
	["mITX", "Mini-ITX"],
	["EATX", "E-ATX"],
	["Extended ATX", "E-ATX"],
	["Flex-ATX", "FlexATX"],
	["Mini-DTX", "Mini-DTX"],
	["SSI-EEB", "SSI EEB"],
	["CEB", "SSI CEB"],
])("%s is %s", (text, form) => {
	expect(read(text)).toEqual({ size: { form }, doubts: [] });
});

test.each([
	["305 mm x 244 mm", [305, 244]],
	["305 x 244 mm", [305, 244]],
	["30,5 cm × 24,4 cm", [305, 244]],
	["12 x 9.6 in", [305, 244]],
	['12" x 9.6"', [305, 244]],
	["9,6 Zoll x 9,6 Zoll", [244, 244]],
	["9.6-in x 9.6-in, 24.4 cm x 24.4 cm", [244, 244]],
	["6.7 x 6.7 inches (17 x 17 cm)", [170, 170]],
	["17 cm x 17 cm x 15 mm", [170, 170]],
])("%s", (text, sidesMm) => {
	expect(read(text)).toEqual({ size: { sidesMm }, doubts: [] });
});

test.each([
	["ATX / microATX", ["form"], {}],
	["XL-ATX", ["form"], {}],
	["305 x 244", ["sides"], {}],
	["305 mm x 244 mm, 12 in x 8 in", ["sides"], {}],
	["2 mm x 3 mm", ["sides"], {}],
	["Mini-ITX, 24.4 cm x 24.4 cm", ["form"], {}],
	["microATX, 30.5 cm x 24.4 cm", ["form"], {}],
])("%s is a doubt about the %s", (text, about, size) => {
	expect(read(text)).toEqual({ size, doubts: about });
});

test("a power plug is no form", () => {
	expect(read("8-pin ATX 12V, 24-pin ATX plug, ATX 24-pin")).toEqual({ size: {}, doubts: [] });
});

test("a slot's version and lanes before a word that looks like inches are no sides", () => {
	expect(read("1 x PCIe 4.0 x16 in ")).toEqual({ size: {}, doubts: [] });
	expect(read("PCI Express 5.0 x16 in the first slot")).toEqual({ size: {}, doubts: [] });
	expect(read("Gen 4.0 x16 in, 9.6 x 9.6 in").size.sidesMm).toEqual([244, 244]);
});

test("a smaller board of its form is one", () => {
	expect(read("microATX, 22.0 cm x 19.3 cm").size).toEqual({ form: "microATX", sidesMm: [220, 193] });
});

describe("any text", () => {
	test("gives only sides that its figures make, in one of the three units", () => {
		fc.assert(
			fc.property(specLikeText, (text) => {
				const figures = [...text.matchAll(/\d+(?:[.,]\d+)?/g)].map(([figure]) => Number(figure.replace(",", ".")));
				for (const side of readSize(text).size.sidesMm ?? []) {
					// Inches come out as whole millimetres.
					const made = figures.some(
						(value) =>
							[1, 10].some((unit) => Math.abs(value * unit - side) < 0.001) || Math.round(value * 25.4) === side,
					);
					expect(made).toBe(true);
				}
			}),
			{ numRuns: 2000 },
		);
	});
	test.each(heavyTexts)("is read in a blink", (text) => {
		const before = performance.now();
		readSize(text);
		expect(performance.now() - before).toBeLessThan(1000);
	});
});
