import { spawnSync } from "node:child_process";
import {
	chmodSync,
	chownSync,
	existsSync,
	mkdirSync,
	readdirSync,
	readFileSync,
	statSync,
	symlinkSync,
	writeFileSync,
} from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { program } from "../e2e/program.ts";
import { ownFolder } from "../files/own-folder.ts";

// The start, the short walk, alone, for writing: three answers, and away.
const threeAnswers = "1\n1\n1\n1\ns\n";
/** Turns the first setting, before the walk. */
const oneSetting = "5\n1\n\n";

const { path, write } = ownFolder();
const walks = (home: string) => join(home, ".local", "state", "boardwalk", "walks");

interface RunOptions {
	readonly input?: string;
	readonly environment?: NodeJS.ProcessEnv;
	/** What stands before the program, such as a command that gives up rights. */
	readonly before?: readonly string[];
}

/** Runs the program line by line with nothing but a path and what is given; a start that hangs is stopped and counts as null. */
function run(words: readonly string[], { input = "", environment = {}, before = [] }: RunOptions = {}) {
	const [command = "", ...rest] = [...before, process.execPath, program, ...words];
	const { status, stdout, stderr } = spawnSync(command, rest, {
		cwd: path(),
		env: { PATH: process.env["PATH"], ...environment },
		input,
		encoding: "utf8",
		timeout: 30_000,
		killSignal: "SIGKILL",
	});
	return { status, said: `${stdout}${stderr}`.replace(/\s+/g, " ") };
}

const unkept = /Your answers cannot be kept \((.+?)\)\. The walk goes on/;

describe("a home that cannot be used", () => {
	// Root may make a folder anywhere.
	test.each([...(process.getuid?.() === 0 ? [] : ["/nonexistent/of/nobody"]), "/dev/null", "/proc", "/sys"])(
		"%s: the walk goes on, and says once that nothing is kept and why",
		(HOME) => {
			const { status, said } = run(["--plain"], { input: threeAnswers, environment: { HOME } });
			expect(status).toBe(1);
			expect(said).toMatch(unkept);
			expect(said.match(new RegExp(unkept, "g"))).toHaveLength(1);
			expect(said).toContain("What will you do with this computer?");
		},
	);

	test.each(["/dev/null", "/proc", "/sys"])(
		"%s: a setting holds for now, and the walk says why it is not kept",
		(HOME) => {
			const { status, said } = run(["--plain"], { input: oneSetting, environment: { HOME } });
			expect(status).toBe(1);
			expect(said).toContain("Colour: never");
			expect(said).toContain(
				`The settings hold for now, but cannot be kept: ${HOME}/.config/boardwalk/settings.json: `,
			);
		},
	);

	test.each(["/dev/null", "/proc"])("%s: own parts cannot be kept, which ends a command with 73", (HOME) => {
		const table = write("t.csv", "Name,Maker,Socket\nTidewater Lantern,Tidewater,Harbour 2\n");
		const { status, said } = run(["own", "import", table, "--kind", "board", "--yes"], { environment: { HOME } });
		expect([73, 66]).toContain(status);
		expect(said).toContain(`${HOME}/.local/share/boardwalk/`);
		expect(said).not.toContain(" at ");
	});

	test("a file in its place: said, and the file stays", () => {
		const HOME = write("home", "not a folder");
		const { status, said } = run(["--plain"], { input: threeAnswers, environment: { HOME } });
		expect(status).toBe(1);
		expect(unkept.exec(said)?.[1]).toContain("part of the path is a file, not a folder");
		expect(readFileSync(HOME, "utf8")).toBe("not a folder");
	});

	test("none named: the system's own is taken, or the walk says that there is none", () => {
		const { status, said } = run(["--version"]);
		expect({ status, said }).toEqual({ status: 0, said: expect.stringMatching(/^\d/) });
		const doctor = run(["doctor"]);
		expect([0, 78]).toContain(doctor.status);
	});

	test("relative folders of the XDG kind are ignored, as its specification asks", () => {
		const home = path("home");
		mkdirSync(home);
		const environment = { HOME: home, XDG_STATE_HOME: "state", XDG_CONFIG_HOME: "./config", XDG_DATA_HOME: "../data" };
		expect(run(["--plain"], { input: threeAnswers, environment }).status).toBe(1);
		expect(run(["--plain"], { input: oneSetting.replace("5", "6"), environment }).status).toBe(1);
		expect(readdirSync(path())).toEqual(["home"]);
		expect(readdirSync(walks(home))).toHaveLength(1);
		expect(existsSync(join(home, ".config", "boardwalk", "settings.json"))).toBe(true);
	});
});

/** Root may write anywhere, so the program gives up its rights first; who is not root needs no command for that. */
const isRoot = process.getuid?.() === 0;
const asNobody = isRoot ? ["setpriv", "--reuid=65534", "--regid=65534", "--clear-groups"] : [];
const canBeNobody =
	!isRoot || spawnSync(asNobody[0] ?? "", [...asNobody.slice(1), process.execPath, program, "--version"]).status === 0;

describe.skipIf(!canBeNobody)("a home that can only be read (skipped for root without setpriv)", () => {
	/** A home with one kept walk and settings, all of it locked. */
	function readOnlyHome(): string {
		const home = path("home");
		mkdirSync(home);
		run(["--plain"], { input: threeAnswers, environment: { HOME: home } });
		run(["--plain"], { input: oneSetting.replace("5", "6"), environment: { HOME: home } });
		for (const folder of readdirSync(home, { recursive: true, withFileTypes: true })) {
			const at = join(folder.parentPath, folder.name);
			if (isRoot) chownSync(at, 65534, 65534);
			chmodSync(at, folder.isDirectory() ? 0o500 : 0o400);
		}
		if (isRoot) chownSync(home, 65534, 65534);
		chmodSync(home, 0o500);
		chmodSync(path(), 0o755);
		return home;
	}

	/** So that the folder can be removed again by who made it. */
	function unlock(home: string): void {
		for (const entry of readdirSync(home, { recursive: true, withFileTypes: true }))
			if (entry.isDirectory()) chmodSync(join(entry.parentPath, entry.name), 0o700);
		chmodSync(home, 0o700);
	}

	test("the kept walk is on offer, goes on, and says that nothing more is kept; what was there stays whole", () => {
		const home = readOnlyHome();
		const [name = ""] = readdirSync(walks(home));
		const before = readFileSync(join(walks(home), name), "utf8");
		const { status, said } = run(["--plain"], { input: "1\n700\ns\n", environment: { HOME: home }, before: asNobody });
		const after = readFileSync(join(walks(home), name), "utf8");
		const files = readdirSync(walks(home));
		unlock(home);
		expect(status).toBe(1);
		expect(said).toContain("Go on with my walk: 3 of");
		expect(said).toMatch(unkept);
		expect(said).not.toContain("damaged");
		expect(after).toBe(before);
		expect(files).toEqual([name]);
	});

	test("a setting holds for now, and the file stays", () => {
		const home = readOnlyHome();
		const file = join(home, ".config", "boardwalk", "settings.json");
		const before = readFileSync(file, "utf8");
		const { said } = run(["--plain"], { input: "6\n1\n\n", environment: { HOME: home }, before: asNobody });
		const after = readFileSync(file, "utf8");
		unlock(home);
		expect(said).toContain("The settings hold for now, but cannot be kept");
		expect(after).toBe(before);
	});
});

describe("who may read what is kept", () => {
	test("new files are for their owner alone, and so are the folders made for them", () => {
		const home = path("home");
		mkdirSync(home);
		const table = write("t.csv", "Name,Maker,Socket\nTidewater Lantern,Tidewater,Harbour 2\n");
		const environment = { HOME: home };
		run(["--plain"], { input: threeAnswers, environment });
		run(["--plain"], { input: oneSetting.replace("5", "6"), environment });
		run(["own", "import", table, "--kind", "board", "--yes"], { environment });
		const modes = readdirSync(home, { recursive: true, withFileTypes: true }).map((entry) => {
			const at = join(entry.parentPath, entry.name);
			return [at, entry.isDirectory(), statSync(at).mode & 0o777] as const;
		});
		expect(modes.length).toBeGreaterThan(9);
		expect(modes.filter(([, isFolder, mode]) => mode !== (isFolder ? 0o700 : 0o600))).toEqual([]);
	});

	test("a file of answers that the program makes is 0600; one that the person made keeps its own mode", () => {
		const made = path("new.json");
		run(["--plain", "--answers", made], { input: threeAnswers, environment: { HOME: path() } });
		expect(statSync(made).mode & 0o777).toBe(0o600);
		chmodSync(made, 0o644);
		run(["--plain", "--answers", made], { input: "1\n700\ns\n", environment: { HOME: path() } });
		expect(statSync(made).mode & 0o777).toBe(0o644);
	});
});

/** A pipe that nobody writes into; null where there is no command for it. */
function pipeAt(at: string): boolean {
	mkdirSync(join(at, ".."), { recursive: true });
	return spawnSync("mkfifo", [at]).status === 0;
}

describe("rubbish where files of ours lie", () => {
	const settings = (home: string) => join(home, ".config", "boardwalk", "settings.json");
	const kinds: Readonly<Record<string, (at: string) => void>> = {
		"rubbish bytes": (at) =>
			writeFileSync(at, Buffer.from(Array.from({ length: 999 }, (_, index) => (index * 89) % 256))),
		"nothing at all": (at) => writeFileSync(at, ""),
		"ten megabytes of it": (at) => writeFileSync(at, "x".repeat(10 * 1024 * 1024)),
		"a folder": (at) => mkdirSync(at),
		"links in a circle": (at) => symlinkSync("settings.json", at),
		"a pipe that nobody writes into": (at) => {
			pipeAt(at);
		},
	};

	test.each(Object.entries(kinds))(
		"settings that are %s: set aside with a word, the usual ones hold, new ones are kept",
		(_, make) => {
			const file = settings(path());
			mkdirSync(join(file, ".."), { recursive: true });
			make(file);
			const { status, said } = run(["--plain"], { input: oneSetting, environment: { HOME: path() } });
			expect(status).toBe(1);
			expect(said).toContain(
				`The settings were damaged; the file lies in ${file}.damaged, and the usual settings hold.`,
			);
			expect(readdirSync(join(file, ".."))).toEqual(["settings.json", "settings.json.damaged"]);
			expect(JSON.parse(readFileSync(file, "utf8"))).toMatchObject({ colour: "never" });
			expect(run(["--plain"], { input: "\n", environment: { HOME: path() } }).said).not.toContain("damaged");
		},
	);

	test.each([
		"[1, 2]",
		'"words"',
		"7",
		'{"colour": {"a": [1]}, "helperName": {"b": 2}}',
		`{"pad": "${"y".repeat(10_000_000)}"}`,
	])("settings of a wrong shape count as the usual ones (%#)", (text) => {
		write(".config/boardwalk/settings.json", text);
		const { status, said } = run(["--plain"], { input: oneSetting, environment: { HOME: path() } });
		expect(status).toBe(1);
		expect(said).toContain("Colour: never");
		expect(said).not.toMatch(/fault of its own|cannot be kept/);
	});

	test("pipes in the place of walks and own parts hold nobody up", () => {
		expect(pipeAt(join(walks(path()), "walk-2026-01-01.json"))).toBe(true);
		expect(pipeAt(join(path(), ".local", "share", "boardwalk", "parts.json"))).toBe(true);
		const { status, said } = run(["--plain"], { input: threeAnswers, environment: { HOME: path() } });
		expect(status).toBe(1);
		expect(said).toContain("this is a pipe or a device, and a file was expected");
		expect(readdirSync(walks(path())).filter((name) => name.endsWith(".json"))).toHaveLength(2);
		for (const command of ["walks", "own"])
			expect(run([command], { environment: { HOME: path() } })).toEqual({
				status: 66,
				said: expect.stringContaining("parts.json: this is a pipe or a device, and a file was expected."),
			});
		expect([0, 78]).toContain(run(["doctor"], { environment: { HOME: path() } }).status);
	});
});
