import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { planFor } from "../../src/plan/plan.ts";
import { problemOf } from "../../src/plan/problem.ts";
import { escaped, markdownSheet } from "../../src/sheet/markdown-sheet.ts";
import { planPicture } from "../../src/sheet/plan-picture.ts";
import type { Sheet, SheetBoard } from "../../src/sheet/sheet.ts";
import { bareBuild, m2, ports, slot, stick, withGraphics } from "../plan/made-up-problem.ts";
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

interface Fenced {
	/** All lines that stand in no fenced block; the fences themselves are gone. */
	readonly outside: readonly string[];
	/** The lines of each fenced block. */
	readonly blocks: readonly (readonly string[])[];
	/** Whether the last block has no end of its own, so that the rest of the sheet is in it. */
	readonly isLeftOpen: boolean;
}

/**
 * Fenced blocks by CommonMark 0.31.2, section 4.5: three backticks or tildes or more open one, at most three spaces in,
 * and behind backticks no other backtick. As many of the same sort or more end it, with nothing but spaces behind.
 */
function readFences(markdown: string): Fenced {
	const outside: string[] = [];
	const blocks: string[][] = [];
	let fence: string | null = null;
	for (const line of markdown.split("\n")) {
		if (fence === null) {
			fence = /^ {0,3}(?:(`{3,})[^`]*|(~{3,}).*)$/.exec(line)?.slice(1).find(Boolean) ?? null;
			if (fence === null) outside.push(line);
			else blocks.push([]);
			continue;
		}
		const end = /^ {0,3}(`{3,}|~{3,})[ \t]*$/.exec(line)?.[1];
		if (end?.startsWith(fence)) fence = null;
		else blocks.at(-1)?.push(line);
	}
	return { outside, blocks, isLeftOpen: fence !== null };
}

test.each([
	["tildes", "a\n~~~\nb\n~~~\nc", ["a", "c"], [["b"]]],
	["backticks with a word behind", "```text\nb\n```\nc", ["c"], [["b"]]],
	["the other sort ends nothing", "~~~\n```\n~~~\nc", ["c"], [["```"]]],
	["fewer end nothing, more do", "~~~~\n~~~\n~~~~~\nc", ["c"], [["~~~"]]],
	["up to three spaces in", "   ~~~\nb\n   ~~~  \nc", ["c"], [["b"]]],
	["four spaces in end nothing", "~~~\n    ~~~\n~~~\nc", ["c"], [["    ~~~"]]],
	["words behind end nothing", "~~~\n~~~ b\n~~~\nc", ["c"], [["~~~ b"]]],
	["two are no fence", "~~\nb\n~~", ["~~", "b", "~~"], []],
	["four spaces in are no fence", "    ~~~", ["    ~~~"], []],
	["backticks with one behind are code in a line", "``` a`b", ["``` a`b"], []],
	["tildes with anything behind are one", "~~~ a`~b\nc\n~~~", [], [["c"]]],
] as const)("the reader of fences: %s", (_, markdown, outside, blocks) => {
	expect(readFences(markdown)).toEqual({ outside, blocks, isLeftOpen: false });
});

test("the reader of fences: one without an end takes all the rest", () => {
	expect(readFences("a\n~~~~\nb\n~~~")).toEqual({ outside: ["a"], blocks: [["b", "~~~"]], isLeftOpen: true });
});

/**
 * Cells of a table's row, between pipes that no backslash escapes (GitHub Flavored Markdown 0.29-gfm, section 4.10); null
 * for a line that is none. The line of dashes stands second in its table.
 */
function cellsIn(line: string): readonly string[] | null {
	return line.startsWith("| ") && line.endsWith(" |") ? line.slice(2, -2).split(/ (?<!\\)\| /) : null;
}

/** Checks a whole sheet line by line: only the marks that the sheet itself sets have a meaning; in a fence nothing has. */
function strayMeanings(markdown: string): readonly string[] {
	const { outside, isLeftOpen } = readFences(markdown);
	if (isLeftOpen) return ["a fence without an end"];
	return outside.flatMap((line, index) => {
		const cells = cellsIn(line);
		if (cells && !(/^\| --- /.test(line) && !outside[index - 2])) {
			const isEven = cells.length === (cellsIn(outside[index - 1] ?? "") ?? cells).length;
			return [...cells.flatMap(meaningsIn), ...(isEven ? [] : ["a cell too many or too few"])].map(
				(meaning) => `${meaning}: ${line}`,
			);
		}
		if (cells) return [];
		const [, text = "", label, rest] = /^(?:#{1,4} |- \[ \] |- )?((?:\*\*(.+?)\*\*: )?(.*))$/.exec(line) ?? [];
		const told = label === undefined ? meaningsIn(text) : [...meaningsIn(label), ...meaningsIn(rest ?? "")];
		return told.map((meaning) => `${meaning}: ${line}`);
	});
}

test("the pictures are the only fenced blocks, line for line; where there are none there is no block", () => {
	const pictures = scenarios.map(({ state }) => {
		const sheet = sheetOf(state);
		const { blocks } = readFences(markdownSheet(sheet));
		const drawn = [sheet.plan, sheet.power].map((page) => page?.picture ?? []).filter(({ length }) => length > 0);
		expect(blocks).toEqual(drawn);
		return sheet.plan?.picture.length ?? 0;
	});
	expect(Math.max(...pictures)).toBeGreaterThan(5);
	const [first] = scenarios.map(({ state }) => sheetOf(state));
	if (!first) throw new Error("there are no scenarios");
	expect(readFences(markdownSheet({ ...first, plan: null, power: null })).blocks).toEqual([]);
});

describe.each(scenarios)("the sheet of $name", ({ state }) => {
	const markdown = markdownSheet(sheetOf(state));

	test("is lines of headings, paragraphs, items and a picture, each by a blank line apart, and nothing else", () => {
		expect(strayMeanings(markdown)).toEqual([]);
		expect(markdown).toMatch(/^# \S/);
		expect(markdown.endsWith("\n")).toBe(true);
		expect(markdown).not.toMatch(/\n{3}|\n\n$|[ \t]\n/);
		const lines = readFences(markdown).outside;
		lines.forEach((line, index) => {
			if (!/^#{1,4} /.test(line)) return;
			expect(lines[index + 1]).toBe("");
			if (index > 0) expect(lines[index - 1]).toBe("");
		});
	});

	test("has one title, sections below it and boards below their section", () => {
		const levels = [
			...readFences(markdown)
				.outside.join("\n")
				.matchAll(/^(#+) /gm),
		].map(([, marks = ""]) => marks.length);
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
		"~~~",
		"~~~~~~~~ text",
		"&copy; &#35; \\",
		"[ref]: http://x.example",
	];

	test.each(names)("%j stays a name, wherever it stands", (name) => {
		const board: SheetBoard = {
			...(quiet.shortlist[0] as SheetBoard),
			name,
			power: name,
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
			open: [{ what: name, how: name, changes: name }],
			forWhom: [{ label: name, text: name }],
			planAround: [{ boardNames: [name], text: name }],
			steps: [{ label: name, text: name, ground: name }],
			told: [true, false].map((isListed) => ({ boardName: name, text: name, isListed })),
			suggestions: [{ label: name, text: name, by: name, state: "open" }],
			askTheShop: [{ boardName: name, english: name, german: name }],
			answers: [{ questionId: "fit/processor", label: name, value: name, by: name }],
			sources: [name],
			plan: {
				boardName: name,
				picture: name.split("\n").filter(Boolean),
				svg: null,
				sections: [{ heading: name, lines: [name] }],
			},
			power: {
				boardName: name,
				picture: name.split("\n").filter(Boolean),
				svg: null,
				sections: [{ heading: name, lines: [name] }],
			},
		};
		const markdown = markdownSheet(hostile);
		expect(strayMeanings(markdown)).toEqual([]);
		const said = name.replace(/\s*\n\s*/g, " ");
		const { outside, blocks } = readFences(markdown);
		expect(blocks).toEqual([hostile.plan?.picture, hostile.power?.picture]);
		expect(unescaped(outside.join("\n")).split(said).length - 1).toBeGreaterThanOrEqual(27);
		const count = (text: string, mark: RegExp) => readFences(text).outside.join("\n").match(mark)?.length ?? 0;
		for (const mark of [/^## /gm, /^### /gm, /^#### /gm, /^\| /gm])
			expect(count(markdown, mark)).toBe(
				count(markdownSheet({ ...hostile, shortlist: [{ ...board, name: "Plain" }], title: "Plain" }), mark),
			);
	});

	const sections = [{ heading: "Still free", lines: ["Card slots: X16."] }];
	const pictured = (picture: readonly string[]) =>
		readFences(markdownSheet({ ...quiet, plan: { boardName: "A board", picture, svg: null, sections }, power: null }));
	const { outside: around } = pictured(["a picture"]);

	test.each([
		["a line that would end the usual fence", ["~~~"]],
		["one that would end a longer one", ["~~~~~~~~~~", "~~~"]],
		["tildes a few spaces in", ["   ~~~~  "]],
		["tildes in the middle of a line", ["| ~~~~~ ~~~~~~~ |"]],
		["backticks", ["```", "`"]],
		["headings, items and boxes", ["# head", "## head", "- [ ] item", "====", "    code", "<b>"]],
	])("%s in a picture stays in it", (_, picture) => {
		expect(pictured(picture)).toEqual({ outside: around, blocks: [picture], isLeftOpen: false });
	});

	test("no picture of any lines ends its fence, and none changes the sheet around it", () => {
		const line = fc.string({ unit: fc.constantFrom(..."~~~` |#-[]a\t"), minLength: 1, maxLength: 12 });
		fc.assert(
			fc.property(fc.array(line, { minLength: 1, maxLength: 6 }), (picture) => {
				expect(pictured(picture)).toEqual({ outside: around, blocks: [picture], isLeftOpen: false });
			}),
			{ numRuns: 500 },
		);
	});

	test.each(["~~~", "~~~~~~", "Dart\n~~~\n# head", "```"])(
		"a real picture with things named %j stays whole",
		(name) => {
			const board = {
				cardSlots: [slot(name, 1, 16)],
				m2Sockets: [m2(`${name} 1`, { row: 2 }), m2(`${name} 2`)],
				drivePorts: [...ports(2), { name: `${name} 3`, kind: "SATA" as const }],
				conditions: [],
				sharing: [],
			};
			const build = { ...bareBuild, graphicsCard: withGraphics({ name, thicknessMm: 55 }), drives: [stick(name)] };
			const picture = planPicture(planFor(problemOf(board, build, { leaning: "best" })), {});
			const [mark = ""] = /[~`]+/.exec(name) ?? [];
			expect(picture.filter((line) => line.includes(mark)).length).toBeGreaterThanOrEqual(3);
			expect(pictured(picture)).toEqual({ outside: around, blocks: [picture], isLeftOpen: false });
		},
	);
});
