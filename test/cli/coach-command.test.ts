import {
	chmodSync,
	existsSync,
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
import { coach, coachPage } from "../../src/cli/coach-command.ts";
import { CommandError, exitCodes } from "../../src/cli/exit-codes.ts";
import { openSession, type WalkSession } from "../../src/cli/walk-session.ts";
import type { AnswersFile } from "../../src/parts/answers-file.ts";
import { builders } from "../walk/coached-walks.ts";

const today = "2026-11-25";
let folder = "";
let said = "";
const streams = {
	out: (text: string) => {
		said += text;
	},
	err: () => {},
};

beforeEach(() => {
	folder = mkdtempSync(join(tmpdir(), "coach-"));
	said = "";
	for (const [name, at] of [
		["HOME", ""],
		["XDG_STATE_HOME", "state"],
		["XDG_CONFIG_HOME", "config"],
		["XDG_DATA_HOME", "data"],
	] as const)
		vi.stubEnv(name, join(folder, at));
});
afterEach(() => {
	vi.unstubAllEnvs();
	rmSync(folder, { recursive: true, force: true });
});

/** A file as the builder handed it over: of another market, so that nothing depends on ours. */
function walkFile(more: Partial<AnswersFile> = {}): string {
	const path = join(folder, "walk.json");
	const file = {
		schema: "boardwalk/answers@2",
		asOf: "2026-11-24",
		market: { version: "what the builder had", fingerprint: "theirs" },
		answers: builders.answers,
		parts: [],
		...more,
	};
	writeFileSync(path, JSON.stringify(file));
	return path;
}

const inFile = (path: string) => JSON.parse(readFileSync(path, "utf8")) as AnswersFile;

function helping(path: string, events: Parameters<WalkSession["dispatch"]>[0][], name: string | null = "Ida") {
	const session = openSession({ ...readArguments(["coach", path]), answers: path }, streams, today, { name });
	for (const event of events) session.dispatch(event);
	session.close();
	return session;
}

/** A helper answers what is open. */
const openAnswered: Parameters<WalkSession["dispatch"]>[0][] = [
	{ type: "change", questionId: "fit/supply" },
	{ type: "answer", value: { part: "millpond-bonfire" } },
];

describe("boardwalk coach", () => {
	test("opens on what to check, and writes answers and suggestions into the file", () => {
		const path = walkFile();
		const session = helping(path, [
			{ type: "change", questionId: "fit/supply" },
			{ type: "answer", value: { part: "millpond-bonfire" } },
			{ type: "change", questionId: "features/rear-usb-c" },
			{ type: "answer", value: "would-like" },
			{ type: "text", text: "One plug less is no harm." },
		]);
		expect(session.screen()?.id).toBe("coach");
		const file = inFile(path);
		expect(file.answers).toEqual({
			...builders.answers,
			"fit/supply": { status: "answered", value: { part: "millpond-bonfire" }, by: "Ida" },
		});
		expect(file.suggestions).toEqual([
			{
				questionId: "features/rear-usb-c",
				status: "answered",
				value: "would-like",
				by: "Ida",
				why: "One plug less is no harm.",
				on: today,
				state: "open",
			},
		]);
		// With which boards the builder chose is the builder's to say.
		expect(file.market).toEqual({ version: "what the builder had", fingerprint: "theirs" });
		session.dispatch({ type: "leave" });
		expect(session.exitCode()).toBe(exitCodes.ok);
		expect(session.result(78)).toBe("");
		expect(session.farewell()).toContain(path);
	});

	test("leaves the file byte for byte as it was where nothing was answered or suggested", () => {
		const path = walkFile();
		const before = readFileSync(path, "utf8");
		const session = helping(path, [{ type: "shortlist" }, { type: "leave" }]);
		expect(readFileSync(path, "utf8")).toBe(before);
		expect(session.farewell()).toContain("Nothing was changed");
	});

	test.skipIf(process.platform === "win32")("leaves who may read the file as it was", () => {
		const path = walkFile();
		chmodSync(path, 0o664);
		helping(path, openAnswered);
		expect(inFile(path).answers["fit/supply"]?.by).toBe("Ida");
		expect(statSync(path).mode & 0o777).toBe(0o664);
	});

	test("of a sheet puts what is answered into a file of its own beside it, overwrites none, and names it", () => {
		const sheet = join(folder, "mias sheet.json");
		writeFileSync(sheet, JSON.stringify({ schema: "boardwalk/sheet@1", answersFile: inFile(walkFile()) }));
		const before = readFileSync(sheet, "utf8");
		const session = helping(sheet, [], "Ida");
		const file = join(folder, "mias sheet-2.json");
		expect(session.state().notice).toContain(
			`The sheet stays as it is, and what you answer goes into a new file: ${file}`,
		);
		expect(existsSync(file)).toBe(false);
		const first = helping(sheet, openAnswered);
		expect(inFile(file).answers["fit/supply"]?.by).toBe("Ida");
		expect(first.farewell()).toContain(file);
		helping(sheet, openAnswered);
		expect(existsSync(join(folder, "mias sheet-3.json"))).toBe(true);
		expect(readFileSync(sheet, "utf8")).toBe(before);
		// Nothing lies among the helper's own walks.
		expect(readdirSync(folder).filter((name) => name === "state")).toEqual([]);
	});

	test("page by page tells on paper too what became of what was suggested", () => {
		const suggestion = {
			questionId: "features/rear-usb-c",
			status: "answered",
			value: "would-like",
			by: "Ida",
			on: today,
		};
		const path = walkFile({ suggestions: [{ ...suggestion, status: "answered", state: "left" }] });
		coachPage({ ...readArguments(["coach", path]), answers: path }, streams, today, { name: "Ida" });
		expect(said.replace(/\s+/g, " ")).toMatch(
			/What became of your suggestions .*: left, so the answer stays as it was\./,
		);
	});

	test("asks once for a name, and knows it the next time", async () => {
		const path = walkFile();
		const session = helping(path, [], null);
		expect(session.screen()?.id).toBe("coach-name");
		helping(path, [{ type: "text", text: "Ida" }], null);
		const walk = vi.fn(async () => exitCodes.ok);
		await coach(readArguments(["coach", path]), walk);
		expect(walk).toHaveBeenLastCalledWith(expect.objectContaining({ answers: path }), { name: "Ida" });
		await coach(readArguments(["coach", path, "--name", "Joe"]), walk);
		expect(walk).toHaveBeenLastCalledWith(expect.anything(), { name: "Joe" });
	});

	test("keeps the helper's own parts out, and the builder's as they are", () => {
		const board = { kind: "board", part: { id: "my-board", name: "my board", socket: "Harbour 2" } } as const;
		const path = walkFile({ parts: [board] });
		// The helper has a part of that id too.
		const own = openSession(readArguments([]), streams, today);
		own.dispatch({ type: "new-part", kind: "board" });
		own.dispatch({ type: "text", text: "my board" });
		own.dispatch({ type: "keep" });
		own.close();
		const session = helping(path, [
			{ type: "change", questionId: "features/rear-usb-c" },
			{ type: "answer", value: "would-like" },
			{ type: "next" },
		]);
		expect(session.state().ownParts).toEqual([board]);
		expect(inFile(path).parts).toEqual([board]);
	});

	test("without a terminal it prints what to check", () => {
		const path = walkFile();
		expect(coachPage({ ...readArguments(["coach", path]), answers: path }, streams, today, { name: null })).toBe(0);
		expect(said).toContain("What I would check myself");
		expect(said.replace(/\s+/g, " ")).toMatch(/ Open, by what it could change - .*: It decides whether /);
	});

	test.each([
		[["coach"], exitCodes.usage, "Whose walk?"],
		[["coach", "no-such-file.json"], exitCodes.noInput, "no-such-file.json"],
		[["coach", "WALK", "--name", "builder"], exitCodes.usage, "stands for the one who builds"],
		[["coach", "BROKEN"], exitCodes.badData, "broken.json"],
	])("%j ends with a clear word", (words, code, message) => {
		const path = walkFile();
		const broken = join(folder, "broken.json");
		writeFileSync(broken, "{");
		const args = readArguments(words.map((word) => ({ WALK: path, BROKEN: broken })[word] ?? word));
		let error: unknown;
		try {
			coach(args, () => Promise.resolve(exitCodes.ok));
		} catch (thrown) {
			error = thrown;
		}
		expect(error).toBeInstanceOf(CommandError);
		expect(error).toMatchObject({ code, message: expect.stringContaining(message) });
	});
});
