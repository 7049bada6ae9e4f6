import {
	chmodSync,
	existsSync,
	mkdirSync,
	mkdtempSync,
	readdirSync,
	readFileSync,
	rmSync,
	statSync,
	writeFileSync,
} from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, test, vi } from "vitest";
import { readArguments } from "../../src/cli/arguments.ts";
import { openSession, type WalkSession } from "../../src/cli/walk-session.ts";
import type { WalkEvent } from "../../src/walk/walk-event.ts";

const today = "2026-11-25";
let home = "";
let desk = "";
let walks = "";
let said = "";
const before = process.cwd();
const open: WalkSession[] = [];

beforeEach(() => {
	home = mkdtempSync(join(tmpdir(), "session-"));
	desk = join(home, "desk");
	mkdirSync(desk);
	walks = join(home, ".local", "state", "boardwalk", "walks");
	said = "";
	process.chdir(desk);
	vi.stubEnv("HOME", home);
	for (const name of ["XDG_STATE_HOME", "XDG_CONFIG_HOME", "XDG_DATA_HOME"]) vi.stubEnv(name, undefined);
});
afterEach(() => {
	for (const session of open.splice(0)) session.close();
	process.chdir(before);
	vi.unstubAllEnvs();
	vi.restoreAllMocks();
	rmSync(home, { recursive: true, force: true });
});

const streams = {
	out: (text: string) => {
		said += text;
	},
	err: (text: string) => {
		said += text;
	},
};

function start(...words: readonly string[]): WalkSession {
	const session = openSession(readArguments(words), streams, today);
	open.push(session);
	return session;
}

function tell(session: WalkSession, ...events: readonly WalkEvent[]): WalkSession {
	for (const event of events) session.dispatch(event);
	return session;
}

const next: WalkEvent = { type: "next" };
const leave: WalkEvent = { type: "leave" };
/** The answers to the first two questions. */
const short: WalkEvent = { type: "answer", value: "short" };
const builder: WalkEvent = { type: "answer", value: "builder" };
/** An answer to the question about the processor, from wherever one is. */
const processor: readonly WalkEvent[] = [
	{ type: "change", questionId: "fit/processor" },
	{ type: "answer", value: { part: "tallowfinch-deckhand" } },
];
const kept = (file: string) => JSON.parse(readFileSync(file, "utf8"));
const files = () => (existsSync(walks) ? readdirSync(walks).sort() : []);

describe("a new walk", () => {
	test("is kept from its first answer on, in a file of its own for the owner only, and after each answer", () => {
		const session = tell(start(), next);
		expect(files()).toEqual([]);
		tell(session, short);
		const file = join(walks, "walk-2026-11-25.json");
		expect(files()).toEqual(["walk-2026-11-25.json", "walk-2026-11-25.json.lock"]);
		expect(statSync(file).mode & 0o777).toBe(0o600);
		expect(Object.keys(kept(file).answers)).toEqual(["about/walk-length"]);
		tell(session, builder);
		expect(Object.keys(kept(file).answers)).toEqual(["about/walk-length", "about/who"]);
		session.close();
		expect(files()).toEqual(["walk-2026-11-25.json"]);
		expect(session.farewell()).toContain(`Your answers are kept in ${file}`);
		expect(session.farewell()).toContain(`--answers ${file}`);
	});

	test("of somebody who only looked in leaves nothing behind", () => {
		const session = tell(start(), next, leave);
		expect(files()).toEqual([]);
		expect(session.farewell()).toBe("");
		expect(session.exitCode()).toBe(1);
	});

	test("takes the next free name of the day", () => {
		tell(start(), next, short).close();
		tell(start(), next, { type: "not-sure" }).close();
		expect(files()).toEqual(["walk-2026-11-25-2.json", "walk-2026-11-25.json"]);
	});

	test.skipIf(process.platform !== "linux")("is told once that it cannot be kept, and goes on all the same", () => {
		// Nobody, root neither, can make a file there.
		const session = tell(start("--answers", "/proc/boardwalk.json"), next, short);
		expect(session.state().notice).toMatch(
			/^Your answers cannot be kept \(\/proc\/boardwalk\.json: .+\)\. The walk goes on; write the sheet before/,
		);
		tell(session, builder);
		expect(session.state().notice).toBeNull();
		expect(session.state().answers["about/who"]).toBeDefined();
		expect(session.farewell()).toBe("");
	});

	test("goes on where there is no home at all", () => {
		vi.stubEnv("HOME", "not/absolute");
		vi.stubEnv("XDG_STATE_HOME", "relative/too");
		const session = start("--answers", join(desk, "mine.json"));
		tell(session, next, short);
		expect(Object.keys(kept(join(desk, "mine.json")).answers)).toEqual(["about/walk-length"]);
	});
});

describe("the next start", () => {
	test("offers the walk there is, in words, and opens it where it left off", () => {
		tell(start(), next, short, builder).close();
		const session = start();
		const label = session.screen()?.choices[0]?.label ?? "";
		expect(label).toMatch(/^Go on with my walk: 2 of \d+ answered, next comes About you, today$/);
		tell(session, session.screen()?.choices[0]?.event as WalkEvent);
		expect(session.state().place).toEqual({ at: "question", id: "about/activities" });
		expect(session.state().notice).toBe("Here you left off.");
		tell(session, { type: "not-sure" });
		expect(files().filter((name) => name.endsWith(".json"))).toEqual(["walk-2026-11-25.json"]);
		expect(Object.keys(kept(join(walks, "walk-2026-11-25.json")).answers)).toHaveLength(3);
	});

	test("sets a damaged walk aside with a word, whatever is wrong with it", () => {
		mkdirSync(walks, { recursive: true });
		writeFileSync(join(walks, "walk-2026-11-01.json"), '{"schema": "boardwalk/ans');
		writeFileSync(join(walks, "walk-2026-11-02.json"), '{"schema": "something/else@7"}');
		const session = start();
		expect(session.state().saved).toEqual([]);
		for (const name of ["walk-2026-11-01.json", "walk-2026-11-02.json"]) {
			expect(session.state().notice).toContain(`A damaged walk was set aside: ${join(walks, name)}.damaged`);
			expect(existsSync(join(walks, `${name}.damaged`))).toBe(true);
		}
		session.close();
		expect(start().state().notice).toBeNull();
	});

	test("says what no longer applies where the market changed meanwhile", () => {
		tell(start(), next, short, ...processor).close();
		const file = join(walks, "walk-2026-11-25.json");
		const changed = kept(file);
		changed.answers["fit/processor"].value.part = "no-longer-sold";
		changed.market.fingerprint = "another";
		writeFileSync(file, JSON.stringify(changed));
		const session = start();
		tell(session, session.screen()?.choices[0]?.event as WalkEvent);
		expect(session.state().notice).toContain('there is no part "no-longer-sold" here');
		expect(session.state().notice).toContain("with other boards to choose from");
	});

	test("tells of a walk that vanished meanwhile, and stays where it is", () => {
		tell(start(), next, short).close();
		const session = start();
		rmSync(join(walks, "walk-2026-11-25.json"));
		tell(session, session.screen()?.choices[0]?.event as WalkEvent);
		expect(session.state().place).toEqual({ at: "start" });
		expect(session.state().notice).toContain("walk-2026-11-25.json");
	});
});

describe("a walk that another program has open", () => {
	/** A lock as another, living program would leave it: this test's own parent. */
	function heldByAnother(file: string): void {
		writeFileSync(`${file}.lock`, String(process.ppid));
	}

	test("is not written to: one is told, and what one answers goes into a file of its own", () => {
		tell(start(), next, short).close();
		const file = join(walks, "walk-2026-11-25.json");
		const text = readFileSync(file, "utf8");
		heldByAnother(file);
		const session = start("--answers", file);
		expect(session.state().notice).toContain(`This walk is open in another window (process ${process.ppid})`);
		tell(session, next, builder);
		expect(readFileSync(file, "utf8")).toBe(text);
		expect(Object.keys(kept(join(walks, "walk-2026-11-25-2.json")).answers)).toEqual([
			"about/walk-length",
			"about/who",
		]);
		session.close();
		expect(readFileSync(`${file}.lock`, "utf8")).toBe(String(process.ppid));
	});

	test("is taken over where that program is gone", () => {
		tell(start(), next, short).close();
		const file = join(walks, "walk-2026-11-25.json");
		writeFileSync(`${file}.lock`, "999999999");
		const session = tell(start("--answers", file), next, builder);
		expect(session.state().notice).toBeNull();
		expect(Object.keys(kept(file).answers)).toEqual(["about/walk-length", "about/who"]);
	});
});

describe("the sheet", () => {
	const toSheet = (session: WalkSession) => tell(session, next, short, { type: "sheet" });

	test("is written where asked, told with its full path, and named again at the end", () => {
		const session = tell(toSheet(start()), { type: "text", text: "mine.md" });
		expect(session.state().notice).toBe(`The sheet is written: ${join(desk, "mine.md")}`);
		expect(readFileSync(join(desk, "mine.md"), "utf8")).toContain("# ");
		tell(session, leave);
		expect(session.farewell()).toMatch(`The sheet: ${join(desk, "mine.md")}\nYour answers are kept in `);
		expect(session.exitCode()).toBe(0);
		expect(session.result(78)).not.toBe("");
		expect(
			Math.max(
				...session
					.result(40)
					.split("\n")
					.map((line) => line.length),
			),
		).toBeLessThanOrEqual(40);
	});

	test("with --json the result is the shortlist as advice@1, and nothing for who left before one", () => {
		const session = tell(toSheet(start("--json")), leave);
		expect(JSON.parse(session.result(78))).toMatchObject({
			schema: "boardwalk/advice@1",
			shortlist: expect.any(Array),
		});
		const early = tell(start("--json"), next, leave);
		expect(early.result(78)).toBe("");
	});

	test("never replaces a file unless told to", () => {
		writeFileSync(join(desk, "mine.md"), "older");
		const session = tell(toSheet(start()), { type: "text", text: "mine.md" });
		expect(session.state().problem).toContain("mine.md");
		expect(readFileSync(join(desk, "mine.md"), "utf8")).toBe("older");
		session.close();
		tell(toSheet(start("--replace")), { type: "text", text: "mine.md" });
		expect(readFileSync(join(desk, "mine.md"), "utf8")).not.toBe("older");
	});

	test("of the usual name takes the next free one", () => {
		writeFileSync(join(desk, "board-sheet.html"), "older");
		const session = toSheet(start());
		tell(session, session.screen()?.choices[0]?.event as WalkEvent);
		expect(session.state().notice).toBe(`The sheet is written: ${join(desk, "board-sheet-2.html")}`);
	});

	test("that cannot be written is told, with nothing lost", () => {
		const session = tell(toSheet(start()), { type: "text", text: "no-such-folder/mine.md" });
		expect(session.state().problem).toContain("no-such-folder");
		expect(session.state().place).toEqual({ at: "sheet" });
		tell(session, { type: "text", text: "mine.doc" });
		expect(session.state().problem).toContain(".md, .txt, .json");
	});
});

describe("settings", () => {
	test("are kept at once, for the owner only", () => {
		const session = tell(start(), { type: "set", setting: { characters: "ascii" } });
		const file = join(home, ".config", "boardwalk", "settings.json");
		expect(kept(file)).toEqual({ colour: "auto", characters: "ascii", face: "auto", lengths: "mm" });
		expect(statSync(file).mode & 0o777).toBe(0o600);
		expect(session.state().notice).toBeNull();
	});

	test("hold for now where they cannot be kept, and one is told why", () => {
		mkdirSync(join(home, ".config"));
		writeFileSync(join(home, ".config", "boardwalk"), "a file where the folder should be");
		const session = tell(start(), { type: "set", setting: { characters: "ascii" } });
		expect(session.state().settings.characters).toBe("ascii");
		expect(session.state().notice).toMatch(/^The settings hold for now, but cannot be kept: ./);
	});

	test("that were damaged are set aside with a word, whoever looks first", () => {
		const folder = join(home, ".config", "boardwalk");
		mkdirSync(folder, { recursive: true });
		writeFileSync(join(folder, "settings.json"), "{");
		const [first, second] = [start(), start()];
		for (const session of [first, second])
			expect(session.state().notice).toContain(`the file lies in ${join(folder, "settings.json")}.damaged`);
	});
});

describe("a walk named with --answers", () => {
	test("that is not there yet is begun there", () => {
		const file = join(desk, "new.json");
		const session = tell(start("--answers", file), next, short);
		expect(Object.keys(kept(file).answers)).toEqual(["about/walk-length"]);
		session.close();
		expect(readdirSync(desk)).toEqual(["new.json"]);
		expect(files()).toEqual([]);
	});

	test("with bad data ends the start with its own code, and touches nothing", () => {
		const file = join(desk, "bad.json");
		writeFileSync(file, "{");
		expect(() => start("--answers", file)).toThrow(expect.objectContaining({ code: 65 }));
		expect(readFileSync(file, "utf8")).toBe("{");
		expect(readdirSync(desk)).toEqual(["bad.json"]);
	});

	test.skipIf(process.getuid?.() === 0)("that cannot be read ends the start with its own code", () => {
		const file = join(desk, "secret.json");
		writeFileSync(file, "{}");
		chmodSync(file, 0o000);
		expect(() => start("--answers", file)).toThrow(expect.objectContaining({ code: 66 }));
	});

	test("is gone on with the same boards to choose from", () => {
		const session = tell(start("--with-demo"), next, short, leave);
		expect(session.farewell()).toMatch(/--answers \S+ --with-demo\n/);
	});

	test("whose path has a space is named in quotes at the end", () => {
		const file = join(desk, "my walk's file.json");
		const session = tell(start("--answers", file), next, short, leave);
		expect(session.farewell()).toContain(`--answers '${desk}/my walk'\\''s file.json'`);
	});
});

test("nothing is printed while a walk is under way", () => {
	tell(start(), next, short, { type: "sheet" }, { type: "text", text: "mine.md" }, leave);
	expect(said).toBe("");
});
