import { readdirSync, readFileSync, statSync, writeFileSync } from "node:fs";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import quietDesk from "../../data/scenarios/quiet-desk.json" with { type: "json" };
import { readArguments } from "../../src/cli/arguments.ts";
import { CommandError } from "../../src/cli/exit-codes.ts";
import { replay } from "../../src/cli/replay-command.ts";
import { openSession } from "../../src/cli/walk-session.ts";
import type { WalkEvent } from "../../src/walk/walk-event.ts";
import { commandRuns, flat } from "./run-command.ts";
import { sessionsAtHome, tell } from "./sessions-at-home.ts";

const today = "2026-11-28";
const { path, run, refusal } = commandRuns("replay", (args, streams) => replay(args, streams, null));
const sessions = sessionsAtHome(today);

const steps = () => path("steps.jsonl");
const begun = (): Readonly<Record<string, unknown>> => ({
	schema: "boardwalk/events@1",
	asOf: today,
	version: "0.1.0",
	market: { version: "any", fingerprint: "any" },
	answers: {
		schema: "boardwalk/answers@2",
		asOf: today,
		market: { version: "any", fingerprint: "any" },
		answers: {},
		parts: [],
	},
});
const written = (...lines: readonly unknown[]): string => {
	const text = lines.map((line) => (typeof line === "string" ? line : JSON.stringify(line))).join("\n");
	writeFileSync(steps(), `${text}\n`);
	return steps();
};

describe("a walk with --record", () => {
	const some: readonly WalkEvent[] = [
		{ type: "next" },
		{ type: "answer", value: "short" },
		{ type: "answer", value: "builder" },
		{ type: "mark", value: "games", by: 1 },
		{ type: "next" },
		{ type: "text", text: "900" },
		{ type: "not-sure" },
		{ type: "back" },
		{ type: "menu" },
		{ type: "fell-out" },
		{ type: "back" },
	];

	test("is replayed to the same answers, screen by screen, and its file is the owner's alone", () => {
		const session = sessions.start("--record", steps());
		tell(session, ...some);
		const kept = session.state();
		const shown = session.screen();
		tell(session, { type: "leave" });
		session.close();
		expect(session.farewell()).toContain(`Every step is recorded in ${steps()}`);
		expect(statSync(steps()).mode & 0o777).toBe(0o600);
		expect(readFileSync(steps(), "utf8").trim().split("\n")).toHaveLength(some.length + 2);
		expect(JSON.parse(run(steps(), "--json").out).answers).toEqual(kept.answers);
		const { out, err } = run(steps());
		expect(err).toBe("");
		expect(out.match(/^Step \d+\./gm)).toHaveLength(some.length + 1);
		expect(out).toContain("Step 2. Answered: About a quarter of an hour\n");
		expect(out).toContain("Step 6. Typed: 900\n");
		expect(out).toContain(shown?.title);
		expect(out).toMatch(/The end, after 12 steps\. Nothing was written\.\n112 of 112 boards are left/);
	});

	test("keeps what is there, unless it may be replaced, and never a walk", () => {
		writeFileSync(steps(), "mine");
		expect(() => sessions.start("--record", steps())).toThrow(/is there already and was kept/);
		sessions.start("--record", steps(), "--replace").close();
		expect(readFileSync(steps(), "utf8")).toMatch(/^\{"schema":"boardwalk\/events@1"/);
		writeFileSync(path("walk.json"), JSON.stringify(quietDesk));
		expect(() => sessions.start("--record", path("walk.json"), "--replace")).toThrow(/holds the answers of a walk/);
		expect(() => sessions.start("--record", path("new.json"), "--answers", path("new.json"))).toThrow(/the same file/);
		expect(() => sessions.start("--record", path("nowhere", "steps"))).toThrow(/there is no such folder/);
	});

	test("begins anew where another walk is opened", () => {
		writeFileSync(path("walk.json"), JSON.stringify(quietDesk));
		const session = sessions.start("--record", steps());
		tell(session, { type: "open", file: path("walk.json") }, { type: "shortlist" }, { type: "leave" });
		session.close();
		const { out } = run(steps());
		expect(out).toContain("Another walk is taken up.");
		expect(JSON.parse(run(steps(), "--json").out).answers).toEqual(quietDesk.answers);
	});

	test("goes into the made-up person's walk and back, and ends with the person's own", () => {
		const session = sessions.start("--record", steps());
		tell(
			session,
			{ type: "next" },
			{ type: "answer", value: "short" },
			{ type: "look-at-example" },
			{ type: "review" },
		);
		const shown = session.screen();
		tell(session, { type: "back" }, { type: "leave-example" }, { type: "answer", value: "builder" });
		const last = session.screen();
		session.close();
		const { out } = run(steps());
		expect(out).not.toContain("Another walk is taken up.");
		expect(out).toContain(shown?.title);
		expect(out).toContain(last?.title);
		expect(Object.keys(JSON.parse(run(steps(), "--json").out).answers)).toEqual(["about/walk-length", "about/who"]);
	});

	test("of a helper is replayed as one", () => {
		writeFileSync(path("walk.json"), JSON.stringify(quietDesk));
		const args = { ...readArguments(["coach", path("walk.json"), "--record", steps()]), answers: path("walk.json") };
		const session = openSession(args, { out: () => {}, err: () => {} }, today, { name: "Mia" });
		tell(session, { type: "change", questionId: "about/room" }, { type: "not-sure" });
		session.close();
		expect(run(steps()).out).toMatch(/^The walk begins, on 2026-11-28\.\n/);
		expect(JSON.parse(run(steps(), "--json").out).answers).toEqual(quietDesk.answers);
	});
});

describe("a kept walk", () => {
	test("is told answer by answer with what each took out, and comes to the same answers", () => {
		writeFileSync(path("walk.json"), JSON.stringify(quietDesk));
		const { out } = run(path("walk.json"));
		expect(out.match(/^Step \d+\./gm)).toHaveLength(Object.keys(quietDesk.answers).length);
		expect(out).toContain("Money in all: EUR 900.00");
		expect(out).toMatch(/Your last answer took out:\n- Price: /);
		const { answers, parts } = JSON.parse(run(path("walk.json"), "--json").out);
		expect(answers).toEqual(quietDesk.answers);
		expect(parts).toEqual(quietDesk.parts);
	});

	test("with an answer that cannot be is refused", () => {
		const answers = { ...quietDesk.answers, "about/who": { status: "answered", value: "nobody" } };
		writeFileSync(path("walk.json"), JSON.stringify({ ...quietDesk, answers }));
		expect(refusal(path("walk.json"))).toMatchObject({ code: 65, message: expect.stringMatching(/about\/who/) });
	});
});

describe("a damaged line", () => {
	test.each<[string, readonly unknown[], RegExp]>([
		[
			"no JSON",
			[begun(), { type: "next" }, '{"type":'],
			/line 3: expected one sound line of JSON\.\nNothing was replayed\.$/,
		],
		["no event", [begun(), ["next"]], /line 2: expected an event, such as \{"type":"next"\}\./],
		[
			"an unknown kind",
			[begun(), { type: "nxt" }],
			/line 2: expected a kind of event that is known, and not "nxt"\. Did you mean next/,
		],
		[
			"a key too many",
			[begun(), { type: "next", to: 1 }],
			/line 2: expected no key "to" in an event of the kind "next"\./,
		],
		["a key too few", [begun(), { type: "text" }], /line 2: expected text as "text" of an event of the kind "text"\./],
		["a wrong value", [begun(), { type: "mark", value: "a", by: 2 }], /line 2: expected 1 or -1 as "by"/],
		["a prototype's key", [begun(), '{"type":"constructor"}'], /line 2: expected a kind of event that is known/],
		["another prototype's key", [begun(), '{"type":"toString"}'], /line 2: expected a kind of event that is known/],
		["a wrong beginning", [{ ...begun(), asOf: "yesterday" }], /line 1: asOf: expected/],
		["a beginning without answers", [{ ...begun(), answers: 3 }], /line 1: answers: expected/],
		["a newer form", [{ ...begun(), schema: "boardwalk/events@2" }], /newer boardwalk/],
	])("%s: says which, and what was expected", (_, lines, words) => {
		const { code, message } = refusal(written(...lines));
		expect(message).toMatch(words);
		expect(code).toBe(65);
	});

	test("every one is told, and nothing is printed before", () => {
		const file = written(begun(), { type: "nxt" }, { type: "next" }, "{");
		expect(refusal(file).message.match(/: line \d+: /g)).toEqual([": line 2: ", ": line 4: "]);
	});

	test("empty lines and other line ends are no fault", () => {
		const text = [begun(), { type: "next" }].map((line) => JSON.stringify(line)).join("\r\n\r\n");
		writeFileSync(steps(), `\n${text}\r\n\r\n`);
		expect(run(steps()).out).toContain("Step 1.");
	});

	test("a file is wanted, and one that is there", () => {
		expect(refusal().code).toBe(64);
		expect(refusal(path("gone.jsonl")).code).toBe(66);
		writeFileSync(path("other.json"), '{"a":1}');
		expect(refusal(path("other.json")).code).toBe(65);
	});
});

describe("whatever is in the file", () => {
	const key = fc.constantFrom(
		"type",
		"value",
		"by",
		"text",
		"boardId",
		"questionId",
		"path",
		"kind",
		"__proto__",
		"constructor",
	);
	const value = fc.oneof(
		fc.jsonValue({ maxDepth: 2 }),
		fc.constantFrom("about/who", "constructor", "__proto__", -1, 1e9, []),
	);
	const types = [
		"answer",
		"mark",
		"text",
		"fact",
		"change",
		"board",
		"what-if",
		"like",
		"write-sheet",
		"set",
		"tell",
		"paste",
	];
	const others = [
		"fact-form",
		"new-part",
		"own-part",
		"doubt",
		"take-suggestion",
		"they-answered",
		"way-out",
		"walks-changed",
	];
	const line = fc.oneof(
		fc.dictionary(key, value),
		fc.record({ type: fc.constantFrom(...types, ...others), value, by: value }, { requiredKeys: ["type"] }),
		fc.constantFrom<WalkEvent>(
			{ type: "next" },
			{ type: "back" },
			{ type: "menu" },
			{ type: "own-parts" },
			{ type: "new-part", kind: "board" },
			{ type: "fact-form", path: ["constructor", 3, "__proto__"] },
			{ type: "add-entry" },
			{ type: "remove-entry" },
			{ type: "fact", value: { toString: 1 } as never },
			{ type: "doubt", index: 99 },
			{ type: "paste-part", what: "board" },
			{ type: "paste", text: "Memory: 4 x DDR5" },
			{ type: "read" },
			{ type: "keep" },
			{ type: "change", questionId: "about/who" },
			{ type: "answer", value: { part: "constructor" } },
			{ type: "take-suggestion", index: 7 },
			{ type: "suggestion", questionId: "constructor" },
			{ type: "told-by", by: "" },
			{ type: "walks-changed", saved: [], canBringBack: true, words: "x" },
			{ type: "edit-part" },
			{ type: "what-if", questionId: "about/who" },
			{ type: "like", boardId: "constructor" },
		),
		fc.string(),
	);

	test("it is replayed or refused with 65, and nothing else happens", () => {
		fc.assert(
			fc.property(fc.array(line, { maxLength: 12 }), (lines) => {
				const file = written(begun(), ...lines);
				try {
					run(file);
				} catch (error) {
					if (!(error instanceof CommandError)) throw error;
					expect(error.code).toBe(65);
				}
			}),
			{ numRuns: 150 },
		);
	});

	test("sound events in any order are all replayed, and none throws inside", () => {
		const sound = fc.constantFrom<WalkEvent>(
			{ type: "next" },
			{ type: "back" },
			{ type: "not-sure" },
			{ type: "review" },
			{ type: "shortlist" },
			{ type: "own-parts" },
			{ type: "new-part", kind: "case" },
			{ type: "fact-form", path: ["constructor", 3] },
			{ type: "fact-form", path: ["name"] },
			{ type: "text", text: "900" },
			{ type: "add-entry" },
			{ type: "remove-entry" },
			{ type: "doubt", index: 2 },
			{ type: "keep" },
			{ type: "suggestion", questionId: "constructor" },
			{ type: "change", questionId: "about/uses" },
			{ type: "mark", value: "games", by: 1 },
			{ type: "fact", value: "ATX" },
			{ type: "leave" },
		);
		fc.assert(
			fc.property(fc.array(sound, { maxLength: 10 }), (events) => {
				expect(run(written(begun(), ...events)).out).toContain(`The end, after ${events.length} step`);
			}),
			{ numRuns: 60 },
		);
	});

	test("nothing is written to the disk", () => {
		const file = written(begun(), { type: "sheet" }, { type: "write-sheet", to: path("sheet.md") }, { type: "leave" });
		const before = readdirSync(path());
		const { out } = run(file);
		expect(flat(out)).toContain("now nothing is written.");
		expect(readdirSync(path())).toEqual(before);
	});
});
