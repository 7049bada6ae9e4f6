import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { escaped, markdownSheet } from "../../src/sheet/markdown-sheet.ts";
import type { Sheet, SheetBoard } from "../../src/sheet/sheet.ts";
import { scenarios } from "../walk/walk-in-demo.ts";
import { meaningsIn, unescaped } from "./markdown-reading.ts";
import { sheetOf } from "./sheet-of.ts";

describe("escaping", () => {
	test.each([
		["a * b", "a \\* b"],
		["**bold**", "\\*\\*bold\\*\\*"],
		["snake_case_name", "snake\\_case\\_name"],
		["`code`", "\\`code\\`"],
		["[x](javascript:alert)", "\\[x\\](javascript:alert)"],
		["![x](y)", "!\\[x\\](y)"],
		["<script>", "\\<script\\>"],
		["a | b", "a \\| b"],
		["# no heading", "\\# no heading"],
		["C#", "C\\#"],
		["R&amp;D", "R\\&amp;D"],
		["back\\slash", "back\\\\slash"],
		["- no item", "\\- no item"],
		["+ no item", "\\+ no item"],
		["--- ", "\\---"],
		["=== ", "\\==="],
		["1. no number", "1\\. no number"],
		["12) no number", "12\\) no number"],
		["1.5 mm - 2 mm", "1\\.5 mm - 2 mm"],
		["~~gone~~", "\\~\\~gone\\~\\~"],
		["one\ntwo", "one two"],
		["one \r\n\n  two", "one two"],
		["one\rtwo", "one two"],
		["    four spaces", "four spaces"],
		["two spaces at the end  ", "two spaces at the end"],
		["plain words, with (brackets) and 8-pin!", "plain words, with (brackets) and 8-pin!"],
	])("%j", (text, markdown) => {
		expect(escaped(text)).toBe(markdown);
	});

	test("of any text says that text on one line, and nothing in it means anything", () => {
		const nasty = fc.string({ unit: fc.constantFrom(..."\\`*_{}[]()<>#+-=.!|~&;:1 9a\n\r\té\u2028"), maxLength: 20 });
		fc.assert(
			fc.property(fc.oneof(nasty, fc.string({ unit: "grapheme" })), (text) => {
				const markdown = escaped(text);
				expect(meaningsIn(markdown)).toEqual([]);
				expect(unescaped(markdown)).toBe(text.replace(/\s*[\r\n]\s*/g, " ").trim());
			}),
			{ numRuns: 1000 },
		);
	});
});

/** Checks a whole sheet line by line: only the marks that the sheet itself sets have a meaning. */
function strayMeanings(markdown: string): readonly string[] {
	return markdown.split("\n").flatMap((line) => {
		const [, text = "", label, rest] = /^(?:#{1,3} |- \[ \] |- )?((?:\*\*(.+?)\*\*: )?(.*))$/.exec(line) ?? [];
		const told = label === undefined ? meaningsIn(text) : [...meaningsIn(label), ...meaningsIn(rest ?? "")];
		return told.map((meaning) => `${meaning}: ${line}`);
	});
}

describe.each(scenarios)("the sheet of $name", ({ state }) => {
	const markdown = markdownSheet(sheetOf(state));

	test("is lines of headings, paragraphs and items, each by a blank line apart, and nothing else", () => {
		expect(strayMeanings(markdown)).toEqual([]);
		expect(markdown).toMatch(/^# \S/);
		expect(markdown.endsWith("\n")).toBe(true);
		expect(markdown).not.toMatch(/\n{3}|\n\n$|[ \t]\n/);
		const lines = markdown.split("\n");
		lines.forEach((line, index) => {
			if (!/^#{1,3} /.test(line)) return;
			expect(lines[index + 1]).toBe("");
			if (index > 0) expect(lines[index - 1]).toBe("");
		});
	});

	test("has one title, sections below it and boards below their section", () => {
		const levels = [...markdown.matchAll(/^(#+) /gm)].map(([, marks = ""]) => marks.length);
		expect(levels[0]).toBe(1);
		expect(levels.filter((level) => level === 1)).toHaveLength(1);
		levels.slice(1).forEach((level, index) => {
			expect(level).toBeLessThanOrEqual((levels[index] ?? 0) + 1);
		});
	});
});

describe("names that would like to be something else", () => {
	const [quiet] = scenarios.filter(({ name }) => name === "quiet-desk").map(({ state }) => sheetOf(state));
	if (!quiet) throw new Error("the quiet desk is gone");
	const names = [
		"* star_board_ `x` <b>bold</b> [link](http://x.example) | cell",
		"- item",
		"1. first",
		"# head",
		"=====",
		"two\n\n## lines",
		"```",
		"&copy; &#35; \\",
		"[ref]: http://x.example",
	];

	test.each(names)("%j stays a name, wherever it stands", (name) => {
		const board: SheetBoard = {
			...(quiet.shortlist[0] as SheetBoard),
			name,
			for: [name],
			against: [`${name} is against it.`],
			unknown: [name],
		};
		const hostile: Sheet = {
			...quiet,
			title: name,
			market: name,
			inShort: [name],
			beforeYouPay: [name],
			mustHave: [{ ruleId: "fit/socket", label: name, text: name, why: name }],
			shortlist: [board],
			nothingFits: [name],
			partsDisagree: [{ text: name, isStopped: true, advice: name }],
			open: [{ what: name, how: name }],
			answers: [{ questionId: "fit/processor", label: name, value: name, by: name }],
			sources: [name],
		};
		const markdown = markdownSheet(hostile);
		expect(strayMeanings(markdown)).toEqual([]);
		const said = name.replace(/\s*\n\s*/g, " ");
		expect(unescaped(markdown).split(said).length - 1).toBeGreaterThanOrEqual(15);
		const count = (text: string, mark: RegExp) => text.match(mark)?.length ?? 0;
		for (const mark of [/^## /gm, /^### /gm])
			expect(count(markdown, mark)).toBe(
				count(markdownSheet({ ...hostile, shortlist: [{ ...board, name: "Plain" }], title: "Plain" }), mark),
			);
	});
});
