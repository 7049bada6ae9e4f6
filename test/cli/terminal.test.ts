import { afterEach, describe, expect, test, vi } from "vitest";
import { isUtf8, prepareForDrawing, terminalFacts } from "../../src/cli/terminal.ts";

const noWishes = { noColour: false, ascii: false };
const usual = { TERM: "xterm-256color", LANG: "en_GB.UTF-8" };

afterEach(() => vi.unstubAllGlobals());

/** Pretends that the three streams are terminals of a size, or none. */
function streams(given: { stdin: boolean; stdout: boolean; stderr: boolean; columns?: number; rows?: number }): void {
	const { columns = 80, rows = 24 } = given;
	const stream = (isTTY: boolean) => (isTTY ? { isTTY, columns, rows } : {});
	vi.stubGlobal("process", {
		...process,
		platform: process.platform,
		stdin: stream(given.stdin),
		stdout: stream(given.stdout),
		stderr: stream(given.stderr),
	});
}
const all = { stdin: true, stdout: true, stderr: true };

describe("where the walk is drawn", () => {
	test("on standard output; on standard error where the result goes into a file", () => {
		streams(all);
		expect(terminalFacts(noWishes, usual).stream).toBe(process.stdout);
		streams({ ...all, stdout: false });
		expect(terminalFacts(noWishes, usual).stream).toBe(process.stderr);
	});

	test.each<[string, Parameters<typeof streams>[0], NodeJS.ProcessEnv]>([
		["input is no terminal", { ...all, stdin: false }, usual],
		["no output is a terminal", { stdin: true, stdout: false, stderr: false }, usual],
		["the terminal is dumb", all, { ...usual, TERM: "dumb" }],
		["its size is unknown", { ...all, columns: 0, rows: 0 }, usual],
		["it is narrower than any screen", { ...all, columns: 39 }, usual],
		["it is lower than any screen", { ...all, rows: 11 }, usual],
	])("nowhere, where %s", (_, given, environment) => {
		streams(given);
		expect(terminalFacts(noWishes, environment).stream).toBeNull();
	});

	test("on the smallest that a screen fits on", () => {
		streams({ ...all, columns: 40, rows: 12 });
		expect(terminalFacts(noWishes, usual).stream).toBe(process.stdout);
	});
});

describe("colour", () => {
	test.each<[string, boolean, NodeJS.ProcessEnv, boolean]>([
		["as usual", false, usual, true],
		["not with the flag", true, usual, false],
		["not with the flag, even if forced", true, { ...usual, FORCE_COLOR: "3" }, false],
		["not with NO_COLOR", false, { ...usual, NO_COLOR: "1" }, false],
		["not with NO_COLOR, whatever it says", false, { ...usual, NO_COLOR: "0", FORCE_COLOR: "1" }, false],
		["an empty NO_COLOR counts as none", false, { ...usual, NO_COLOR: "" }, true],
		["not where it is forced off", false, { ...usual, FORCE_COLOR: "0" }, false],
		["not where it is forced off in words", false, { ...usual, FORCE_COLOR: "false" }, false],
		["forced on a dumb terminal", false, { TERM: "dumb", FORCE_COLOR: "1" }, true],
		["not on a dumb terminal", false, { TERM: "dumb" }, false],
	])("%s", (_, noColour, environment, expected) => {
		streams(all);
		expect(terminalFacts({ ...noWishes, noColour }, environment).colour).toBe(expected);
	});
});

describe("characters", () => {
	test.each<[NodeJS.ProcessEnv, boolean]>([
		[{ LANG: "en_GB.UTF-8" }, true],
		[{ LANG: "C.utf8" }, true],
		[{ LANG: "C" }, false],
		[{ LANG: "de_DE.ISO-8859-1" }, false],
		[{}, false],
		[{ LC_ALL: "C", LANG: "en_GB.UTF-8" }, false],
		[{ LC_ALL: "", LC_CTYPE: "C.UTF-8", LANG: "C" }, true],
		[{ LC_CTYPE: "POSIX", LANG: "en_GB.UTF-8" }, false],
		[{ LANG: "en_GB.UTF-8", TERM: "linux" }, false],
	])("%o is UTF-8: %s", (environment, expected) => {
		vi.stubGlobal("process", { ...process, platform: "linux" });
		expect(isUtf8(environment)).toBe(expected);
	});

	test("on Windows a console of the newer kind tells of itself", () => {
		vi.stubGlobal("process", { ...process, platform: "win32" });
		expect(isUtf8({ WT_SESSION: "x" })).toBe(true);
		expect(isUtf8({ LANG: "en_GB.UTF-8" })).toBe(false);
	});

	test("are ASCII where the flag or the locale says so", () => {
		streams(all);
		expect(terminalFacts({ ...noWishes, ascii: true }, usual).ascii).toBe(true);
		expect(terminalFacts(noWishes, { ...usual, LANG: "C" }).ascii).toBe(true);
		expect(terminalFacts(noWishes, usual).ascii).toBe(false);
	});
});

describe("the environment for the drawing library", () => {
	const facts = { stream: null, colour: true, ascii: false };

	test("has CI off, since it would draw nothing until the end", () => {
		const environment = { CI: "1", CONTINUOUS_INTEGRATION: "1" };
		prepareForDrawing(facts, environment);
		expect(environment).toEqual({ CI: "false", FORCE_COLOR: "1" });
	});

	test("says colour and no colour in the one word it knows", () => {
		const environment = { NO_COLOR: "1", FORCE_COLOR: "3" };
		prepareForDrawing({ ...facts, colour: false }, environment);
		expect(environment).toMatchObject({ FORCE_COLOR: "0" });
	});
});
