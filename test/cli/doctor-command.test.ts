import { chmodSync, existsSync, mkdirSync, readdirSync } from "node:fs";
import { afterEach, beforeEach, describe, expect, test, vi } from "vitest";
import quietDesk from "../../data/scenarios/quiet-desk.json" with { type: "json" };
import packageFacts from "../../package.json" with { type: "json" };
import { readArguments } from "../../src/cli/arguments.ts";
import { demoMarket } from "../../src/cli/demo-market.ts";
import { doctor } from "../../src/cli/doctor-command.ts";
import { ownFolder } from "../files/own-folder.ts";
import { flat } from "./run-command.ts";

const { path, write } = ownFolder();

beforeEach(() => {
	vi.stubEnv("HOME", path("home"));
	for (const name of ["XDG_DATA_HOME", "XDG_STATE_HOME", "XDG_CONFIG_HOME", "NO_COLOR", "FORCE_COLOR"])
		vi.stubEnv(name, undefined);
	vi.stubEnv("TERM", "xterm-256color");
	vi.stubEnv("LC_ALL", "C.UTF-8");
	mkdirSync(path("home"));
});
afterEach(() => vi.unstubAllEnvs());

function look(...words: readonly string[]) {
	let out = "";
	const code = doctor(readArguments(["doctor", ...words]), { out: (text) => (out += text), err: () => {} });
	return { out, code };
}
const json = (...words: readonly string[]) => JSON.parse(look("--json", ...words).out);

const walksFolder = "home/.local/state/boardwalk/walks";
const partsFile = "home/.local/share/boardwalk/parts.json";
const settingsFile = "home/.config/boardwalk/settings.json";

describe("on a new machine", () => {
	test("it tells versions, places and the demonstration, and all is well", () => {
		const { out, code } = look();
		expect(code).toBe(0);
		expect(out).toContain(`boardwalk ${packageFacts.version}, Node.js ${process.versions.node}, ${process.platform}`);
		for (const place of [".config/boardwalk", ".local/state/boardwalk/walks", ".local/share/boardwalk"])
			expect(out).toContain(path("home", place));
		expect(out.match(/Not there yet; made when something is kept\./g)).toHaveLength(3);
		expect(out).toContain(`The demonstration has ${demoMarket().parts.board.length} boards`);
		expect(out).toContain("All is well");
		expect(flat(out)).toContain("Nothing is ever sent anywhere");
	});

	test("nothing is made by looking", () => {
		look();
		look("--json");
		expect(readdirSync(path("home"))).toEqual([]);
	});

	test("no line is wider than 80 columns, but for a path", () => {
		for (const line of look().out.split("\n")) if (!line.includes(path())) expect(line.length).toBeLessThanOrEqual(80);
	});
});

describe("it tells what the walk would decide, and why", () => {
	test.each<[string[], Record<string, string>, object]>([
		[
			[],
			{},
			{ face: { is: "page" }, colour: { is: true, because: "nothing speaks against it" }, ascii: { is: false } },
		],
		[["--no-color"], {}, { colour: { is: false, because: "the flag --no-color" } }],
		[[], { NO_COLOR: "1" }, { colour: { is: false, because: "NO_COLOR is set" } }],
		[[], { FORCE_COLOR: "0" }, { colour: { is: false, because: "FORCE_COLOR is 0" } }],
		[[], { LC_ALL: "C" }, { ascii: { is: true, because: "LC_ALL is C" } }],
		[["--ascii"], {}, { ascii: { is: true, because: "the flag --ascii" } }],
		[["--plain"], {}, { face: { is: "line-by-line", because: "the flag --plain" } }],
		[["--no-input"], {}, { face: { is: "page", because: "the flag --no-input" } }],
		[[], { ACCESSIBLE: "1" }, { face: { is: "line-by-line", because: "ACCESSIBLE is set" } }],
	])("%j %j", (words, environment, expected) => {
		for (const [name, value] of Object.entries(environment)) vi.stubEnv(name, value);
		expect(json(...words)).toMatchObject(expected);
	});

	test("from the settings too", () => {
		write(settingsFile, '{"colour":"never","characters":"ascii"}');
		expect(json()).toMatchObject({
			colour: { is: false, because: "your settings say so" },
			ascii: { is: true, because: "your settings say so" },
		});
	});
});

describe("what is kept", () => {
	test("walks are counted: sound, damaged and of a newer program; none is set aside", () => {
		write(`${walksFolder}/one.json`, JSON.stringify(quietDesk));
		write(`${walksFolder}/two.json`, JSON.stringify(quietDesk));
		write(`${walksFolder}/broken.json`, "{");
		write(`${walksFolder}/newer.json`, JSON.stringify({ ...quietDesk, schema: "boardwalk/answers@99" }));
		const { out, code } = look();
		expect(code).toBe(0);
		expect(flat(out)).toContain("2 walks, 1 damaged, 1 of a newer boardwalk.");
		expect(readdirSync(path(walksFolder)).sort()).toEqual(["broken.json", "newer.json", "one.json", "two.json"]);
		expect(json().walks).toEqual({ sound: 2, damaged: 1, newer: 1, unreadable: 0 });
	});

	test("own parts are counted, and a faulty file is broken, with what to do", () => {
		write(partsFile, JSON.stringify({ schema: "boardwalk/parts@1", cases: [{ id: "a-case", name: "A case" }] }));
		expect(look().code).toBe(0);
		expect(json().ownParts).toEqual({ parts: 1, wrong: null });
		write(partsFile, JSON.stringify({ schema: "boardwalk/parts@1", cases: [{ id: "a-case", name: "A case", x: 1 }] }));
		const { out, code } = look();
		expect(code).toBe(78);
		expect(out.replace(/\s+/g, " ")).toContain(`boardwalk check ${path(partsFile)}`);
		write(partsFile, "{");
		expect(look().code).toBe(78);
	});

	test("damaged settings are told, stay where they are, and are not broken for good", () => {
		write(settingsFile, "{");
		const { out, code } = look();
		expect(code).toBe(0);
		expect(out).toContain("The settings are damaged.");
		expect(existsSync(path(settingsFile))).toBe(true);
	});

	test("what others can read is told, and what lies in a closed folder is not", () => {
		chmodSync(write(`${walksFolder}/one.json`, JSON.stringify(quietDesk)), 0o644);
		chmodSync(path(walksFolder), 0o755);
		expect(flat(look().out)).toContain(`Others on this machine can read ${path(walksFolder, "one.json")}.`);
		chmodSync(path(walksFolder), 0o700);
		expect(look().out).not.toContain("Others on this machine");
		chmodSync(path(walksFolder), 0o755);
		chmodSync(path(walksFolder, "one.json"), 0o600);
		expect(look().out).not.toContain("Others on this machine");
	});
});

describe("what is broken ends with 78 and says what to do", () => {
	test("a file stands where a folder should be", () => {
		write("home/.config/boardwalk", "");
		const { out, code } = look();
		expect(code).toBe(78);
		expect(flat(out)).toContain("A file stands where the folder for settings should be");
	});

	test("a file stands above a folder that is not there yet", () => {
		write("home/.local/state", "");
		expect(look().code).toBe(78);
	});

	test.skipIf(process.getuid?.() === 0)("a folder cannot be written", () => {
		mkdirSync(path(walksFolder), { recursive: true });
		chmodSync(path(walksFolder), 0o500);
		const { out, code } = look();
		chmodSync(path(walksFolder), 0o700);
		expect(code).toBe(78);
		expect(flat(out)).toContain("The folder for walks cannot be written");
	});
});
