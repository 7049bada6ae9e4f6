import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { likeDirections } from "../../src/choose/like-this-but.ts";
import { readArguments } from "../../src/cli/arguments.ts";
import {
	type CommandName,
	commandNames,
	commandTable,
	flagWords,
	subWords,
	usagesOf,
} from "../../src/cli/command-table.ts";
import { exitCodes, exitCodeWords } from "../../src/cli/exit-codes.ts";
import { type FlagName, flags, flagsForAll } from "../../src/cli/flags.ts";
import { commandHelp, helpText } from "../../src/cli/help.ts";
import { conditions } from "../../src/parts/offer.ts";
import { partKindNames } from "../../src/parts/part-kinds.ts";
import { readKinds } from "../../src/reading/part-reading.ts";
import { papers } from "../../src/sheet/paper-board-tiles.ts";

const help = helpText();

test("the help names every command", () => {
	for (const name of commandNames) expect(help).toMatch(new RegExp(`^  boardwalk ${name}\\b.* {2}\\S`, "m"));
});

test("the help names every flag with what stands behind it and what it does", () => {
	for (const [name, { value, help: does }] of Object.entries(flags))
		expect(help).toMatch(
			new RegExp(`^  --${name}${value ? ` ${value}` : ""} {2,}${does.replace(/[.?]/g, "\\$&")}$`, "m"),
		);
});

/** The words of a shell line, as simple shells cut it. */
function wordsOf(line: string): readonly string[] {
	return (line.match(/"[^"]*"|\S+/g) ?? []).map((word) => word.replace(/^"|"$/g, ""));
}

/** Whether the program takes a line that help shows. */
function expectTaken(line: string): void {
	const words = wordsOf(line.replace(/^source <\((.*)\)$/, "$1"));
	expect(words[0], line).toBe("boardwalk");
	expect(() => readArguments(words.slice(1)), line).not.toThrow();
}

test("examples come first, and each is a command line that is understood", () => {
	expect(help.indexOf("\nExamples\n")).toBeLessThan(help.indexOf("\nCommands\n"));
	const [, examples = ""] = /\nExamples\n([\s\S]*?)\n\n/.exec(help) ?? [];
	const lines = examples.split("\n").map((line) => line.trim().split(/ {2,}/)[0] ?? "");
	expect(lines.length).toBeGreaterThan(3);
	for (const line of lines) expectTaken(line);
});

test("the codes the program ends with are told", () => {
	const { ok, leftEarly, usage, badData, noInput, cannotCreate, software, notSetUp } = exitCodes;
	for (const code of [ok, leftEarly, usage, badData, noInput, cannotCreate, software, notSetUp])
		expect(help).toMatch(new RegExp(`\\b${code}\\b`));
});

test("no line is wider than a terminal of 120 columns, nor ends in a space", () => {
	for (const line of [help, ...commandNames.map(commandHelp)].join("\n").split("\n")) {
		expect(line.length, line).toBeLessThanOrEqual(120);
		expect(line).not.toMatch(/\s$/);
	}
});

describe("the page of a command", () => {
	test.each(commandNames)(
		"%s: what it does, forms, its flags, one to three examples, what it writes, codes",
		(name) => {
			const page = commandHelp(name);
			const { does, forms, examples, writes, codes } = commandTable[name];
			expect(page.startsWith(`boardwalk ${name}\n\n${does}\n`)).toBe(true);
			for (const [operands] of forms) expect(page).toContain(`  boardwalk ${name}${operands ? ` ${operands}` : ""}`);
			expect(examples.length).toBeGreaterThanOrEqual(1);
			expect(examples.length).toBeLessThanOrEqual(3);
			for (const [line] of examples) {
				expect(page).toContain(`  ${line}`);
				expectTaken(line);
				expect(wordsOf(line.replace("source <(", "")).slice(0, 2), line).toEqual(["boardwalk", name]);
			}
			for (const sentence of writes.split(/(?<=\.) /)) expect(page).toContain(sentence);
			for (const code of codes) {
				expect(exitCodeWords[code], `words for ${code}`).toBeDefined();
				expect(page).toMatch(new RegExp(`^  ${code} +\\S`, "m"));
			}
		},
	);

	test.each(commandNames)("%s: names every flag it takes and no other", (name) => {
		const named = new Set([...commandHelp(name).matchAll(/^ {2}--([a-z-]+)/gm)].map(([, flag]) => flag));
		const { usage } = commandTable[name];
		const usages = "words" in usage ? Object.values(usage.words) : [usage];
		expect(named).toEqual(new Set(usages.flatMap((one) => one.flags)));
		const others = / takes (.*) too\.$/m.exec(commandHelp(name))?.[1] ?? "";
		for (const flag of flagsForAll) expect(named.has(flag) || others.includes(`--${flag}`), flag).toBe(true);
	});

	test("no two say the same, and one that is not there is refused with near ones", () => {
		expect(new Set(commandNames.map(commandHelp)).size).toBe(commandNames.length);
		expect(() => commandHelp("plann")).toThrow(/There is no command "plann"\. Did you mean plan/);
		expect(() => commandHelp("constructor")).toThrow(/There is no command "constructor"/);
	});
});

describe("the table of commands", () => {
	test.each(commandNames)("%s: its forms hold only its words and its flags", (name) => {
		const entry = commandTable[name];
		const words = new Set([...subWords(entry), ...usagesOf(entry, undefined).flatMap((one) => wordsIn(one))]);
		const { usage } = entry;
		const read = new Set<string>(("words" in usage ? Object.values(usage.words) : [usage]).flatMap((one) => one.flags));
		for (const [operands, does] of entry.forms) {
			for (const [, flag = ""] of `${operands} ${does}`.matchAll(/--([a-z][a-z-]*)/g))
				expect(read, flag).toContain(flag);
			const small = operands.replace(/--\S+( \S+)?/g, "").match(/(?<![\w.])[a-z][a-z-]+(?![\w.])/g) ?? [];
			for (const word of small) expect(words, word).toContain(word);
		}
	});

	function wordsIn({ operands }: ReturnType<typeof usagesOf>[number]): readonly string[] {
		return operands.flatMap((one) => one.words ?? []);
	}

	test("knows the words that the program knows", () => {
		const operandsOf = (name: CommandName) => usagesOf(commandTable[name], undefined).flatMap(wordsIn);
		expect(operandsOf("like")).toEqual([...likeDirections]);
		expect(flagWords.kind).toEqual(partKindNames);
		expect(flagWords.condition).toEqual([...conditions]);
		expect(flagWords.paper).toEqual(Object.keys(papers));
		expect(operandsOf("schema")).toEqual([...partKindNames, "parts", "answers", "sheet"]);
		expect(subWords(commandTable.read)).toEqual([...readKinds, "list"]);
	});
});

describe("README.md", () => {
	const readme = readFileSync(new URL("../../README.md", import.meta.url), "utf8");
	const [, table = ""] = /\| command \| what it does \|\n\| --- \| --- \|\n([\s\S]*?)\n\n/.exec(readme) ?? [];
	const rows = table.split("\n");

	test("has a row for every command", () => {
		for (const name of commandNames.filter((one) => one !== "help"))
			expect(
				rows.some((row) => row.startsWith(`| \`boardwalk ${name}`)),
				name,
			).toBe(true);
	});

	test("has only lines that are understood, and only flags that the command of the row takes", () => {
		for (const row of rows) {
			const [, line = ""] = /^\| `(boardwalk[^`]*)`/.exec(row) ?? [];
			expectTaken(line);
			const [, name] = wordsOf(line);
			if (name === undefined || name.startsWith("--")) continue;
			const { usage } = commandTable[name as CommandName];
			const usages = "words" in usage ? Object.values(usage.words) : [usage];
			const read = new Set<string>([...usages.flatMap((one) => one.flags), ...flagsForAll]);
			for (const [, flag = ""] of row.matchAll(/`--([a-z-]+)/g)) expect(read, row).toContain(flag as FlagName);
		}
	});

	test("has the exit codes in the same words", () => {
		const [, codes = ""] = /\| exit code \| meaning \|\n\| --- \| --- \|\n([\s\S]*?)\n\n/.exec(readme) ?? [];
		const told = Object.fromEntries(codes.split("\n").map((row) => row.slice(2, -2).split(" | ")));
		expect(told).toEqual(exitCodeWords);
	});
});
