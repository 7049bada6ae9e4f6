import { copyFileSync, writeFileSync } from "node:fs";
import { afterEach, beforeEach, describe, expect, test, vi } from "vitest";
import { type Arguments, readArguments } from "../../src/cli/arguments.ts";
import { type CommandName, commandNames, commandTable, usagesOf, walkEntry } from "../../src/cli/command-table.ts";
import { demoMarket } from "../../src/cli/demo-market.ts";
import { type FlagName, flags, flagsForAll } from "../../src/cli/flags.ts";
import { command, walk } from "../../src/cli/main.ts";
import { openSession } from "../../src/cli/walk-session.ts";
import { scenarioFile } from "../e2e/program.ts";
import { ownFolder } from "../files/own-folder.ts";

/** A flag that a command does not list is refused, so a command must not read any other; and what it lists, it reads. */

const { path } = ownFolder();
const board = demoMarket().parts.board[0]?.id ?? "";
const streams = { out: () => {}, err: () => {} };

beforeEach(() => {
	vi.stubEnv("HOME", path("home"));
	for (const place of ["XDG_DATA_HOME", "XDG_STATE_HOME", "XDG_CONFIG_HOME", "LOCALAPPDATA"])
		vi.stubEnv(place, undefined);
	for (const name of ["a.json", "b.json", "told.json"]) copyFileSync(scenarioFile("quiet-desk"), path(name));
	writeFileSync(path("page.txt"), "Wobblestone Orchard\nSocket: Orchard 5\nForm factor: ATX\nMemory: 4 x DDR5\n");
	writeFileSync(path("list.txt"), "CPU\tBIOS\nAlpha 1\t1.02\nBeta 2\t1.03\n");
	writeFileSync(path("boards.csv"), "id,name,memory.slots\nfirst-board,First board,4\n");
});
afterEach(() => vi.unstubAllEnvs());

const flagOf: Readonly<Partial<Record<string, FlagName>>> = {
	withDemo: "with-demo",
	soundOnly: "sound-only",
	noColour: "no-color",
	noInput: "no-input",
};

/** Arguments that note which flags are looked at. */
function watched(args: Arguments): { readonly args: Arguments; readonly read: Set<string> } {
	const read = new Set<string>();
	const proxy = new Proxy(args, {
		get: (target, key) => {
			const name = flagOf[String(key)] ?? String(key);
			if (Object.hasOwn(flags, name)) read.add(name);
			return Reflect.get(target, key);
		},
	});
	return { args: proxy, read };
}

const answers = ["--answers", "a.json"];

/** Ways to run each command; together they come by everything it reads. */
const runs: Readonly<Record<Exclude<CommandName, "help" | "completion" | "coach">, readonly (readonly string[])[]>> = {
	shortlist: [answers],
	"price-line": [answers, [...answers, "--to", "line.json"]],
	sheet: [
		answers,
		[...answers, "--to", "s.md"],
		[...answers, "--to", "s.svg"],
		[...answers, "--paper", "a4", "--to", "s.html"],
	],
	plan: [
		[board, ...answers],
		[board, ...answers, "--to", "plan.svg"],
	],
	power: [
		[board, ...answers],
		[board, ...answers, "--to", "power.svg"],
	],
	"what-if": [
		["about/budget=150", ...answers],
		["about/budget=150", ...answers, "--to", "w.txt"],
	],
	like: [
		[board, "cheaper", ...answers],
		[board, "cheaper", ...answers, "--to", "like.txt"],
	],
	ask: [answers, [...answers, "--to", "ask.txt"]],
	told: [[board, "memory.slots", "4", "--by", "the shop", "--answers", "told.json"]],
	merge: [["a.json", "b.json", "--from", "told.json", "--to", "both.json"]],
	compare: [
		["a.json", "b.json"],
		["a.json", "b.json", "--to", "c.txt"],
	],
	walks: [[], ["take", "a.json"], ["list"], ["name", "b.json", "Bea"], ["copy", "a.json"], ["remove", "Bea"], ["undo"]],
	why: [["fit/socket"], [board], [board, ...answers], ["all"]],
	read: [
		["board", "page.txt", "--keep"],
		["list", "list.txt"],
		["list", "list.txt", "--keep", "--board", board],
	],
	own: [
		["import", "boards.csv", "--kind", "board", "--yes"],
		["import", "boards.csv", "--kind", "board"],
		["list"],
		["show", "first-board"],
		["copy", "first-board"],
		["set", "first-board", "memory.slots", "2"],
		["unset", "first-board", "memory.slots"],
		["offer", "first-board", "--price", "99 EUR"],
		["export", "out.json"],
		["remove", "first-board"],
		["undo"],
	],
	check: [["a.json"], ["boards.csv"]],
	replay: [["a.json"]],
	schema: [["board"]],
	words: [[]],
	sources: [[]],
	doctor: [[]],
};

/** The market is put together of what --answers names too; these take their walks as words behind them. */
const looksAtAnswers: readonly CommandName[] = ["merge", "compare", "walks", "check", "replay"];
/** It prints JSON in any case. */
const isJsonAnyway: readonly CommandName[] = ["schema"];

async function readBy(name: CommandName, words: readonly string[]): Promise<Set<string>> {
	const inFolder = words.map((word) => (/\.(json|txt|md|svg|csv|html)$/.test(word) ? path(word) : word));
	const { args, read } = watched(readArguments([name, ...inFolder]));
	await command(args, streams).catch(() => {}); // What is refused was looked at all the same.
	return read;
}

describe("a command reads the flags that it lists, and no other", () => {
	test.each(Object.keys(runs) as (keyof typeof runs)[])("%s", async (name) => {
		const { usage } = commandTable[name];
		/** By the word behind the command, where one changes what is read. */
		const readAt = new Map<string, Set<string>>();
		for (const words of runs[name]) {
			const word = "words" in usage ? (words[0] ?? "list") : "";
			const read = readAt.get(word) ?? new Set();
			readAt.set(word, read);
			for (const flag of await readBy(name, words)) read.add(flag);
		}
		for (const [word, read] of readAt) {
			const listed = new Set<string>(usagesOf(commandTable[name], word).flatMap((one) => one.flags));
			const known = new Set<string>([...listed, ...flagsForAll, ...(looksAtAnswers.includes(name) ? ["answers"] : [])]);
			expect(
				[...read].filter((flag) => !known.has(flag)),
				word,
			).toEqual([]);
			expect(
				[...listed].filter((flag) => !read.has(flag) && !isJsonAnyway.includes(name)),
				word,
			).toEqual([]);
		}
		if ("words" in usage && name !== "read") expect([...readAt.keys()].sort()).toEqual(Object.keys(usage.words).sort());
	});

	test("the walk, and coaching beside it", async () => {
		const drawn = watched(readArguments(["--answers", path("a.json"), "--record", path("steps.jsonl")]));
		const session = openSession(drawn.args, streams, "2026-11-28");
		session.dispatch({ type: "write-sheet", to: path("sheet.md") });
		session.dispatch({ type: "write-sheet", to: path("sheet.md"), orNext: true });
		session.close();
		const page = watched(readArguments(["--no-input", "--answers", path("a.json")]));
		await walk(page.args, streams);
		const read = new Set([...drawn.read, ...page.read]);
		const listed = new Set<string>("words" in walkEntry.usage ? [] : walkEntry.usage.flags);
		expect([...read].filter((flag) => !listed.has(flag) && !(flagsForAll as readonly string[]).includes(flag))).toEqual(
			[],
		);
		expect([...listed].filter((flag) => !read.has(flag))).toEqual([]);
		const { usage } = commandTable.coach;
		const ofCoach = "words" in usage ? [] : usage.flags;
		expect(new Set<string>([...ofCoach, "json"])).toEqual(new Set([...listed, "name"]));
	});

	test("no command is left out but those that read none", () => {
		const other: readonly CommandName[] = ["help", "completion", "coach"];
		expect([...Object.keys(runs), ...other].sort()).toEqual([...commandNames].sort());
	});
});
