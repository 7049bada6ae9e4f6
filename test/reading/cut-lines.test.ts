import fc from "fast-check";
import { expect, test } from "vitest";
import { cutLines } from "../../src/reading/cut-lines.ts";
import { labelledLines } from "../../src/reading/labelled-lines.ts";
import { textLines } from "../../src/reading/text-lines.ts";
import { specLikeText } from "./spec-like-text.ts";

const cut = (text: string) => cutLines(labelledLines(textLines(text).lines)).filter(({ names }) => !names);
const values = (text: string) => cut(text).map(({ value }) => value);

test.each([
	["1 x HDMI, 2 x USB 2.0", ["1 x HDMI", "2 x USB 2.0"]],
	["1 x HDMI 1 x VGA", ["1 x HDMI", "1 x VGA"]],
	["1 x HDMI and 2 x VGA", ["1 x HDMI", "2 x VGA"]],
	["1 x HDMI; 2 audio", ["1 x HDMI", "2 audio"]],
	// What stands in brackets belongs to its thing.
	["2 x M.2 (1 x PCIe, 1 x SATA)", ["2 x M.2 (1 x PCIe, 1 x SATA)"]],
	["M.2 x 2, SATA x 4", ["M.2 x 2", "SATA x 4"]],
	["one thing, another thing", ["one thing, another thing"]],
])("%s", (text, parts) => {
	expect(values(text)).toEqual(parts);
});

test("a list of sockets at the back may leave out the count of one", () => {
	expect(values("Back panel: HDMI, DisplayPort, 4 x USB 2.0")).toEqual(["1 x HDMI", "1 x DisplayPort", "4 x USB 2.0"]);
});

test("a paragraph is cut at its labels, and a sentence's end is no part of a value", () => {
	const filler =
		"This is a board with everything that a first computer needs. It has many things in it, and a good deal of light. ";
	const lines = cut(`${filler}Socket: KT7. Chipset: K720. Memory: 4 x DDR5 DIMM.`);
	expect(lines.slice(-3).map(({ label, value }) => [label, value])).toEqual([
		["Socket", "KT7"],
		["Chipset", "K720"],
		["Memory", "4 x DDR5 DIMM"],
	]);
	expect(lines.at(-3)?.quote).toBe("Socket: KT7.");
});

test("a sum is marked", () => {
	expect(cut("Supports 5 x M.2 and 6 x SATA").map(({ isSum }) => isSum)).toEqual([true]);
	expect(cut("5 x M.2 and 6 x SATA").map(({ isSum }) => isSum)).toEqual([false, false]);
});

test("quotes stand in the text, and no piece is empty", () => {
	fc.assert(
		fc.property(fc.array(specLikeText, { maxLength: 12 }), (texts) => {
			const { lines } = textLines(texts.join(", "));
			const all = labelledLines(lines);
			for (const { value, quote } of cutLines(all)) {
				expect(value.trim()).not.toBe("");
				expect(all.some((one) => one.quote.includes(quote))).toBe(true);
			}
		}),
	);
});
