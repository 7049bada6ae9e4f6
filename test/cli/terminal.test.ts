import { afterEach, describe, expect, test, vi } from "vitest";
import { isUtf8, prepareForDrawing, type TerminalWishes, terminalFacts } from "../../src/cli/terminal.ts";
import { walkFace } from "../../src/cli/walk-face.ts";
import { defaultSettings } from "../../src/walk/saved-settings.ts";

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

/** For somebody who has set nothing. */
const factsOf = (wishes: TerminalWishes, environment: NodeJS.ProcessEnv) =>
	terminalFacts(wishes, defaultSettings, environment);

describe("where the walk is drawn", () => {
	test("on standard output; on standard error where the result goes into a file", () => {
		streams(all);
		expect(factsOf(noWishes, usual).stream).toBe(process.stdout);
		streams({ ...all, stdout: false });
		expect(factsOf(noWishes, usual).stream).toBe(process.stderr);
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
		expect(factsOf(noWishes, environment).stream).toBeNull();
	});

	test("on the smallest that a screen fits on", () => {
		streams({ ...all, columns: 40, rows: 12 });
		expect(factsOf(noWishes, usual).stream).toBe(process.stdout);
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
		expect(factsOf({ ...noWishes, noColour }, environment).colour).toBe(expected);
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
		expect(factsOf({ ...noWishes, ascii: true }, usual).ascii).toBe(true);
		expect(factsOf(noWishes, { ...usual, LANG: "C" }).ascii).toBe(true);
		expect(factsOf(noWishes, usual).ascii).toBe(false);
	});
});

describe("the environment for the drawing library", () => {
	const facts = { colour: true };

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

describe("each decision says why", () => {
	test.each<[TerminalWishes, Partial<typeof defaultSettings>, NodeJS.ProcessEnv, boolean, string]>([
		[{ ...noWishes, noColour: true }, { colour: "never" }, usual, false, "the flag --no-color"],
		[noWishes, { colour: "never" }, { ...usual, NO_COLOR: "1", FORCE_COLOR: "1" }, false, "your settings say so"],
		[noWishes, {}, { ...usual, NO_COLOR: "1", FORCE_COLOR: "1" }, false, "NO_COLOR is set"],
		[noWishes, {}, { ...usual, FORCE_COLOR: "1", TERM: "dumb" }, true, "FORCE_COLOR is 1"],
		[noWishes, {}, { ...usual, TERM: "dumb" }, false, "TERM is dumb"],
		[noWishes, {}, usual, true, "nothing speaks against it"],
	])("colour: %o %o %o", (wishes, settings, environment, colour, because) => {
		streams(all);
		const facts = terminalFacts(wishes, { ...defaultSettings, ...settings }, environment);
		expect([facts.colour, facts.because.colour]).toEqual([colour, because]);
	});

	test.each<[TerminalWishes, Partial<typeof defaultSettings>, NodeJS.ProcessEnv, boolean, string]>([
		[{ ...noWishes, ascii: true }, { characters: "ascii" }, usual, true, "the flag --ascii"],
		[noWishes, { characters: "ascii" }, usual, true, "your settings say so"],
		[noWishes, {}, { ...usual, TERM: "linux" }, true, "TERM is linux, a console that lacks many signs"],
		[noWishes, {}, usual, false, "LANG is en_GB.UTF-8"],
		[noWishes, {}, { ...usual, LC_ALL: "C" }, true, "LC_ALL is C"],
		[noWishes, {}, { TERM: "xterm" }, true, "none of LC_ALL, LC_CTYPE, LANG is set"],
	])("characters: %o %o %o", (wishes, settings, environment, ascii, because) => {
		vi.stubGlobal("process", { ...process, platform: "linux", stdin: {}, stdout: {}, stderr: {} });
		const facts = terminalFacts(wishes, { ...defaultSettings, ...settings }, environment);
		expect([facts.ascii, facts.because.ascii]).toEqual([ascii, because]);
	});

	const asked = { plain: false, noInput: false, noColour: false, ascii: false };
	test.each<[Partial<typeof asked>, Partial<typeof defaultSettings>, NodeJS.ProcessEnv, boolean, string, string]>([
		[{ noInput: true, plain: true }, {}, { ...usual, ACCESSIBLE: "1" }, true, "page", "the flag --no-input"],
		[{ plain: true }, {}, usual, false, "line-by-line", "the flag --plain"],
		[{}, {}, { ...usual, ACCESSIBLE: "1" }, true, "line-by-line", "ACCESSIBLE is set"],
		[{}, {}, { ...usual, ACCESSIBLE: "0" }, true, "drawn", "standard output is a terminal that can be drawn on"],
		[{}, {}, { ...usual, INK_SCREEN_READER: "true" }, true, "line-by-line", "INK_SCREEN_READER is true"],
		[{}, { face: "line-by-line" }, usual, false, "page", "standard input is no terminal to ask in"],
		[{}, { face: "line-by-line" }, usual, true, "line-by-line", "your settings say so"],
		[{}, {}, { ...usual, TERM: "dumb" }, true, "line-by-line", "TERM is dumb"],
	])("the face: %o %o %o", (args, settings, environment, stdin, face, because) => {
		streams({ ...all, stdin });
		const chosen = walkFace({ ...asked, ...args }, () => ({ ...defaultSettings, ...settings }), environment);
		expect([chosen.face, chosen.because]).toEqual([face, because]);
	});

	test("a terminal that is too small tells its size", () => {
		streams({ ...all, columns: 39 });
		expect(factsOf(noWishes, usual).because.stream).toBe("the terminal has 39 columns and 24 rows, which is too few");
	});
});
