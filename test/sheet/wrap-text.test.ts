import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { wrapText } from "../../src/sheet/wrap-text.ts";

describe("wrapping text", () => {
	test.each<[string, number, string[]]>([
		["", 10, [""]],
		["short", 10, ["short"]],
		["just right", 10, ["just right"]],
		["just right.", 10, ["just", "right."]],
		["one two three four", 9, ["one two", "three", "four"]],
		["one\ntwo", 10, ["one", "two"]],
		["one\n\ntwo", 10, ["one", "", "two"]],
		["averyveryverylongword", 10, ["averyveryverylongword"]],
		["a averyveryverylongword b", 10, ["a", "averyveryverylongword", "b"]],
	])("%j in %i columns", (text, width, lines) => {
		expect(wrapText(text, width)).toEqual(lines);
	});

	test("indents every line but the first", () => {
		expect(wrapText("- one two three", 9, { indent: "  " })).toEqual(["- one two", "  three"]);
	});

	test("keeps spaces in front of a line, and of one after a line break", () => {
		expect(wrapText("    one two", 9, { indent: "    " })).toEqual(["    one", "    two"]);
		expect(wrapText("one\n  two", 9)).toEqual(["one", "  two"]);
	});

	test("breaks long words where asked, never within a letter of several characters", () => {
		expect(wrapText("abcdefgh", 3, { breakWords: true })).toEqual(["abc", "def", "gh"]);
		expect(wrapText("e\u0301e\u0301e\u0301", 2, { breakWords: true, measure: (text) => [...text].length / 2 })).toEqual(
			["e\u0301e\u0301", "e\u0301"],
		);
	});

	test("goes by the cells that a terminal gives a letter", () => {
		const wide = (text: string) => text.length * 2;
		expect(wrapText("ab cd", 5, { measure: wide })).toEqual(["ab", "cd"]);
	});

	const words = fc.array(fc.string({ unit: fc.constantFrom("a", "b", "-", "é"), minLength: 1, maxLength: 14 }), {
		minLength: 1,
		maxLength: 40,
	});

	test("loses no word, and no line is wider than asked unless it is one word", () => {
		fc.assert(
			fc.property(words, fc.integer({ min: 1, max: 40 }), fc.nat(4), (list, width, indentWidth) => {
				const indent = " ".repeat(indentWidth);
				const lines = wrapText(list.join(" "), width, { indent });
				expect(lines.map((line) => line.trim()).join(" ")).toBe(list.join(" "));
				for (const line of lines) if (line.length > width) expect(line.trim()).not.toContain(" ");
				for (const line of lines.slice(1)) expect(line.startsWith(indent)).toBe(true);
			}),
		);
	});

	test("wraps greedily: the first word of a line would not have fitted on the one before", () => {
		fc.assert(
			fc.property(words, fc.integer({ min: 1, max: 40 }), (list, width) => {
				const lines = wrapText(list.join(" "), width);
				lines.slice(1).forEach((line, index) => {
					expect(`${lines[index]} ${line.split(" ")[0]}`.length).toBeGreaterThan(width);
				});
			}),
		);
	});

	test("with words broken no line is wider than asked", () => {
		fc.assert(
			fc.property(words, fc.integer({ min: 5, max: 40 }), (list, width) => {
				const lines = wrapText(list.join(" "), width, { indent: "  ", breakWords: true });
				for (const line of lines) expect(line.length).toBeLessThanOrEqual(width);
				expect(lines.join("").replaceAll(" ", "")).toBe(list.join(""));
			}),
		);
	});
});
