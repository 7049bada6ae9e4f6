import { describe, expect, test } from "vitest";
import { nearWords, readArguments } from "../../src/cli/arguments.ts";
import { commandNames, commandTable, usagesOf, walkEntry } from "../../src/cli/command-table.ts";
import { CommandError } from "../../src/cli/exit-codes.ts";
import { flags, flagsForAll } from "../../src/cli/flags.ts";

const none = {
	command: null,
	operands: [],
	withDemo: false,
	soundOnly: false,
	replace: false,
	yes: false,
	keep: false,
	json: false,
	plain: false,
	noColour: false,
	ascii: false,
	noInput: false,
	inches: false,
	help: false,
	version: false,
};

function refusal(...argv: string[]): CommandError {
	try {
		readArguments(argv);
	} catch (error) {
		if (error instanceof CommandError) return error;
		throw error;
	}
	throw new Error(`${argv.join(" ")} was taken`);
}

describe("reads", () => {
	test.each<[string[], object]>([
		[[], {}],
		[["shortlist"], { command: "shortlist" }],
		[["sheet", "--answers", "my.json"], { command: "sheet", answers: "my.json" }],
		[["--answers=my.json", "sheet"], { command: "sheet", answers: "my.json" }],
		[["sheet", "--answers", "my file.json", "--to", "-"], { command: "sheet", answers: "my file.json", to: "-" }],
		[["--answers=--odd-name.json"], { answers: "--odd-name.json" }],
		[["--parts", "shop", "--with-demo"], { parts: "shop", withDemo: true }],
		[["--plain", "--no-color", "--ascii"], { plain: true, noColour: true, ascii: true }],
		[["--no-input", "--inches"], { noInput: true, inches: true }],
		[["--record", "steps.jsonl"], { record: "steps.jsonl" }],
		[
			["sheet", "--to", "note.md", "--replace", "--json"],
			{ command: "sheet", to: "note.md", replace: true, json: true },
		],
		[["why", "fit/socket"], { command: "why", operands: ["fit/socket"] }],
		[["power", "a-board", "--json"], { command: "power", operands: ["a-board"], json: true }],
		[
			["own", "set", "a-board", "memory.type", "DDR5", "--kind=board"],
			{ command: "own", operands: ["set", "a-board", "memory.type", "DDR5"], kind: "board" },
		],
		[
			["own", "import", "a.csv", "--map", "A=name", "--yes"],
			{ command: "own", operands: ["import", "a.csv"], map: "A=name", yes: true },
		],
		[["check", "a.json"], { command: "check", operands: ["a.json"] }],
		[["check", "--", "--odd-name.json"], { command: "check", operands: ["--odd-name.json"] }],
		[["--help"], { help: true }],
		[["-h"], { help: true }],
		[["help"], { command: "help" }],
		[["--version"], { version: true }],
		[["-V"], { version: true }],
		[["--answers", "a.json", "--answers", "b.json"], { answers: "b.json" }],
	])("%j", (argv, expected) => {
		expect(readArguments(argv)).toEqual({ ...none, ...expected });
	});

	test("help beside anything, known or not", () => {
		expect(readArguments(["shortlst", "--help"])).toMatchObject({ help: true, command: null });
		expect(readArguments(["sheet", "-h"])).toMatchObject({ help: true, command: "sheet" });
	});

	test("every command and every flag there is", () => {
		for (const name of commandNames) expect(readArguments([name]).command).toBe(name);
		for (const [name, { value }] of Object.entries(flags)) {
			const given = value ? [`--${name}`, "x"] : [`--${name}`];
			const takers = [[], ...ways()].filter((words) => taken(...words, ...given));
			expect(takers.length, name).toBeGreaterThan(0);
			for (const words of takers) expect(readArguments([...words, ...given]), name).not.toEqual(readArguments(words));
		}
	});
});

/** Every command, alone or with each of its words. */
function ways(): readonly string[][] {
	return commandNames.flatMap((name) => {
		const { usage } = commandTable[name];
		return "words" in usage ? [[name], ...Object.keys(usage.words).map((word) => [name, word])] : [[name]];
	});
}

function taken(...argv: string[]): boolean {
	try {
		readArguments(argv);
		return true;
	} catch {
		return false;
	}
}

describe("a flag that a command does not read", () => {
	test("is refused by every command, and one that it reads is taken", () => {
		for (const words of [[], ...ways()]) {
			const [name, word] = words;
			const entry = name === undefined ? walkEntry : commandTable[name as keyof typeof commandTable];
			const read = new Set<string>([...flagsForAll, ...usagesOf(entry, word).flatMap((usage) => usage.flags)]);
			for (const [flag, { value }] of Object.entries(flags)) {
				const argv = [...words, `--${flag}`, ...(value ? ["x"] : [])];
				expect(taken(...argv), argv.join(" ")).toBe(read.has(flag));
			}
		}
	});

	test.each<[string[], string]>([
		[["plan", "a-board", "--width", "80"], "plan does not take --width; price-line does."],
		[["--width", "80"], "The walk does not take --width; price-line does."],
		[["own", "show", "a", "--price", "1 EUR"], "own show does not take --price; own offer does."],
		[["own", "--price", "1 EUR"], "own does not take --price; own offer does."],
		[["shortlist", "--to", "a.txt"], "shortlist does not take --to. See: boardwalk shortlist --help"],
		[["merge", "a", "b", "--record", "c"], "merge does not take --record; the walk and coach do."],
	])("%j", (argv, words) => {
		const { code, message } = refusal(...argv);
		expect([code, message]).toEqual([64, words]);
	});

	test("is no matter where help or the version is asked for", () => {
		expect(taken("plan", "--width", "80", "--help")).toBe(true);
		expect(taken("plan", "--width", "80", "--version")).toBe(true);
	});
});

describe("refuses with 64", () => {
	test.each<[string[], RegExp]>([
		[["shortlst"], /^There is no command "shortlst"\. Did you mean shortlist\?$/],
		[["check", "a.json", "b.json"], /^check takes one word behind it, and "b\.json" is one too many\.$/],
		[["shortlist", "quiet-desk"], /^shortlist takes no word behind it, and "quiet-desk" is one too many\.$/],
		[["own", "set", "a", "b", "c", "d"], /^own takes at most 4 words behind it, and "d" is one too many\.$/],
		[["short"], /Did you mean shortlist\?/],
		[["chek", "a.json"], /Did you mean check\?/],
		[["powr", "a-board"], /^There is no command "powr"\. Did you mean power\?$/],
		[["power", "a-board", "b-board"], /^power takes one word behind it, and "b-board" is one too many\.$/],
		[["dance"], /^There is no command "dance"\. See: boardwalk --help$/],
		[["--answer", "a.json"], /^There is no flag --answer\. Did you mean --answers\?$/],
		[["--colour"], /^There is no flag --colour\./],
		[["--color"], /Did you mean --no-color\?/],
		[["-x"], /^There is no flag -x\./],
		[["-v"], /^There is no flag -v\./],
		[["--answers"], /^--answers needs a FILE behind it\.$/],
		[["--answers="], /^--answers needs a FILE behind it\.$/],
		[["--answers", ""], /^--answers needs a FILE behind it\.$/],
		[["--answers", "--json"], /^--answers needs a FILE behind it\.$/],
		[["sheet", "--to", "--replace"], /^--to needs a FILE behind it\.$/],
		[["--parts", "-h"], /^--parts needs a FOLDER behind it\.$/],
		[["--json=yes"], /^--json takes no value, and "yes" was given\.$/],
		[["--constructor"], /^There is no flag --constructor\./],
	])("%j", (argv, words) => {
		const { code, message } = refusal(...argv);
		expect(code).toBe(64);
		expect(message).toMatch(words);
	});
});

describe("near words", () => {
	test("are at most three, those that hold the word first", () => {
		expect(nearWords("socket", ["fit/socket", "spare-sockets", "rocket", "pocket"])).toBe(
			" Did you mean fit/socket or spare-sockets or rocket?",
		);
	});

	test("are none for a word like no other", () => {
		expect(nearWords("zzzzzz", ["fit/socket"])).toBe(" See: boardwalk --help");
		expect(nearWords("", ["fit/socket"])).toBe(" See: boardwalk --help");
	});
});
