import { describe, expect, test } from "vitest";
import { inStandardTerms, withFigures } from "../../src/reading/standard-terms.ts";

describe("words of other languages beside figures", () => {
	test.each([
		["6 Гбіт/с", "6 Gb/s"],
		["2,5 Gbit/s", "2,5 Gb/s"],
		["96 Go", "96 GB"],
		["192 ГБ", "192 GB"],
		["244 мм", "244 mm"],
		["4 шт.", "4"],
		["8-polig", "8-pin"],
		["8 pinowe", "8 pinowe"],
		["3 ventiladores", "3 fan"],
		["Anschlüsse arrière", "Anschlüsse rear"],
		["placa base", "motherboard"],
		["Tipo C", "Type-C"],
	])("%s is %s", (text, standard) => {
		expect(inStandardTerms(text)).toBe(standard);
	});
});

describe("glued notations", () => {
	test.each([
		["1 x HDMI2 x VGA", "1 x HDMI 2 x VGA"],
		["2 x USB 2.04 x VGA", "2 x USB 2.0 4 x VGA"],
		["2 x USB 3.2 Gen 24 x SATA", "2 x USB 3.2 Gen 2 4 x SATA"],
		["4xUSB", "4 x USB"],
	])("%s is %s", (text, standard) => {
		expect(inStandardTerms(text)).toBe(standard);
	});
});

test.each([
	"4 x DDR5 DIMM, max. 192 GB",
	"M2_1 (Key M): 2280, PCIe 4.0 x4",
	"2 x PCIe 5.0 x16 slots (x16 or x8/x8)",
	"4 x SATA3 x ports",
	"USB 3.2 Gen 1 x 2",
	"Gen4 x4",
	"12 x 9.6 in",
])("%s stays as it is", (text) => {
	expect(inStandardTerms(text)).toBe(text);
});

describe("counts in words", () => {
	test.each([
		["two M.2 sockets", "2 x M.2 sockets"],
		["Dual HDMI", "2 x HDMI"],
		["vier SATA-Ports", "4 x SATA-Ports"],
		["one USB port and three fan headers", "1 x USB port and 3 x fan headers"],
		["dual channel", "dual channel"],
		["including one M.2", "including one M.2"],
	])("%s", (text, standard) => {
		expect(withFigures(text)).toBe(standard);
	});
});
