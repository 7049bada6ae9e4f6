import { describe, expect, test } from "vitest";
import { readLine, readMillimetres, readWhole } from "../../../src/questions/describe/readers.ts";

describe("a line", () => {
	test.each([
		[" Copperbeech  Bench ", "Copperbeech Bench"],
		["\u001b[1mBench\u001b[0m", "Bench"],
		["12345", "12345"],
	])("%j is %j", (text, value) => {
		expect(readLine(20)(text)).toEqual({ value });
	});

	test("exactly as long as it may be, and one letter longer", () => {
		expect(readLine(5)("abcde")).toEqual({ value: "abcde" });
		expect(readLine(5)("abcdef")).toEqual({ problem: "Type at most 5 letters; this has 6." });
	});

	test.each(["", "  ", "\u200b"])("%j is nothing", (text) => {
		expect(readLine(5)(text)).toEqual({ problem: "Type the words as the page prints them." });
	});
});

describe("a whole number", () => {
	test.each([
		["1", 1],
		["16", 16],
		[" 4 ", 4],
		["4x", 4],
		["4 X", 4],
	])("%j is %i", (text, value) => {
		expect(readWhole(1, 16)(text)).toEqual({ value });
	});

	test.each(["0", "17", "", "4.5", "-4", "four", "4 GB", "1e1", "4x4"])("not %j", (text) => {
		expect(readWhole(1, 16)(text)).toEqual({ problem: "Type a whole number from 1 to 16." });
	});

	test("with its unit, in any letters, and no other", () => {
		const read = readWhole(1, 1000, "W");
		expect(read("65 W")).toEqual({ value: 65 });
		expect(read("65w")).toEqual({ value: 65 });
		expect(read("65 A")).toEqual({ problem: "Type a whole number from 1 to 1000, in W." });
	});
});

describe("a length", () => {
	test.each([
		["320", 320],
		["320 mm", 320],
		["320MM", 320],
		["32 cm", 320],
		["0.32 m", 320],
		["12,5 cm", 125],
		["6.7 in", 170.2],
		['6.7"', 170.2],
		["6.7 inches", 170.2],
		["1 inch", 25.4],
		["304.26", 304.3],
		["50", 50],
		["800", 800],
	])("%j is %f mm", (text, value) => {
		expect(readMillimetres(25, 800)(text)).toEqual({ value });
	});

	test.each(["", "24.9", "800.1", "81 cm", "long", "-320", "320 ft", "1.2.3", "1e3"])("not %j", (text) => {
		expect(readMillimetres(25, 800)(text)).toEqual({
			problem: "Type a length from 25 to 800 mm, such as 320 mm or 32 cm.",
		});
	});
});
