import { expect, test } from "vitest";
import { commandNames, flags, readArguments } from "../../src/cli/arguments.ts";
import { exitCodes } from "../../src/cli/exit-codes.ts";
import { helpText } from "../../src/cli/help.ts";

const help = helpText();

test("the help names every command", () => {
	for (const name of commandNames.filter((one) => one !== "help"))
		expect(help).toMatch(new RegExp(`^  boardwalk ${name}\\b.* {2}\\S`, "m"));
});

test("the help names every flag with what stands behind it and what it does", () => {
	for (const [name, { value, help: does }] of Object.entries(flags))
		expect(help).toMatch(
			new RegExp(`^  --${name}${value ? ` ${value}` : ""} {2,}${does.replace(/[.?]/g, "\\$&")}$`, "m"),
		);
});

test("examples come first, and each is a command line that is understood", () => {
	expect(help.indexOf("\nExamples\n")).toBeLessThan(help.indexOf("\nCommands\n"));
	const [, examples = ""] = /\nExamples\n([\s\S]*?)\n\n/.exec(help) ?? [];
	const lines = examples.split("\n").map((line) => line.trim().split(/ {2,}/)[0] ?? "");
	expect(lines.length).toBeGreaterThan(3);
	for (const line of lines) {
		const [program, ...argv] = line.split(" ");
		expect(program).toBe("boardwalk");
		expect(() => readArguments(argv)).not.toThrow();
	}
});

test("the codes the program ends with are told", () => {
	const { ok, leftEarly, usage, badData, noInput, cannotCreate, software } = exitCodes;
	for (const code of [ok, leftEarly, usage, badData, noInput, cannotCreate, software])
		expect(help).toMatch(new RegExp(`\\b${code}\\b`));
});

test("no line is wider than a terminal of 120 columns, nor ends in a space", () => {
	for (const line of help.split("\n")) {
		expect(line.length, line).toBeLessThanOrEqual(120);
		expect(line).not.toMatch(/\s$/);
	}
});
