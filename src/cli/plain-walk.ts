import { createInterface } from "node:readline";
import { newWalkFile, walksFolder } from "../files/saved-walks.ts";
import { UnwritableFile, writeFile } from "../files/write-file.ts";
import { runPlainWalk } from "../plain/run-plain-walk.ts";
import { screenOf } from "../screens/screen-of.ts";
import { viewWalk } from "../screens/walk-view.ts";
import { savedWalk } from "../walk/saved-walk.ts";
import { update } from "../walk/update.ts";
import type { WalkEffect, WalkEvent } from "../walk/walk-event.ts";
import { startWalk, type WalkContext, type WalkState } from "../walk/walk-state.ts";
import type { Arguments } from "./arguments.ts";
import { writeSheet } from "./commands.ts";
import { CommandError, type ExitCode, exitCodes } from "./exit-codes.ts";
import { isThere, loadMarket, loadWalk } from "./load.ts";
import type { Streams } from "./streams.ts";

/** Lines wider than this are hard to read, whatever the terminal. */
const widest = 78;

/** The walk, line by line. Answers are written after each one; the effects of a walk are carried out here. */
export async function plainWalk(args: Arguments, streams: Streams, today: string): Promise<ExitCode> {
	const market = loadMarket(args, streams);
	const context: WalkContext = { market, asOf: today };
	const goesOn = args.answers !== undefined && isThere(args.answers);
	let state: WalkState = goesOn ? loadWalk(args.answers as string, { market }, streams).state : startWalk();
	let code: ExitCode = exitCodes.ok;
	const keeper = answersKeeper(args.answers ?? defaultFile(today), streams);
	const dispatch = (event: WalkEvent): void => {
		const [next, effects] = update(context, state, event);
		state = next;
		for (const effect of effects) carryOut(effect);
	};
	const carryOut = (effect: WalkEffect): void => {
		if (effect.type === "save") keeper.save(savedWalk(context, state));
		else if (effect.type === "leave") code = effect.finished ? exitCodes.ok : exitCodes.leftEarly;
		else dispatch(sheetWritten(effect.to, context, state, args.replace));
	};
	const lines = lineReader(streams);
	try {
		await runPlainWalk({
			screen: () => screenOf(context, state),
			dispatch,
			write: streams.out,
			readLine: lines.next,
			width: Math.min(widest, process.stdout.columns || widest),
		});
	} finally {
		lines.close();
	}
	keeper.sayWhere();
	return lines.interrupted() ? exitCodes.interrupted : code;
}

function sheetWritten(to: string, context: WalkContext, state: WalkState, replace: boolean): WalkEvent {
	try {
		return { type: "written", path: writeSheet(to, viewWalk(context, state).sheet(), replace) };
	} catch (error) {
		if (!(error instanceof CommandError)) throw error;
		return { type: "not-written", problem: error.message };
	}
}

function defaultFile(today: string): string | null {
	const folder = walksFolder(process.env, process.platform);
	return folder === null ? null : newWalkFile(folder, today);
}

/** Keeps the answers in a file; a failure is told once, and the walk goes on. */
function answersKeeper(path: string | null, { err }: Streams) {
	let failed = false;
	let savedTo: string | null = null;
	const fail = (reason: string) => {
		if (!failed) err(`Your answers cannot be kept (${reason}). The walk goes on; write the sheet before you leave.\n`);
		failed = true;
	};
	return {
		save(walk: object): void {
			if (path === null) {
				fail("there is no home folder to put them in");
				return;
			}
			try {
				savedTo = writeFile(path, `${JSON.stringify(walk, null, "\t")}\n`, {
					replace: true,
					ownerOnly: true,
					makeFolder: true,
				});
			} catch (error) {
				if (!(error instanceof UnwritableFile)) throw error;
				fail(`${error.path}: ${error.reason}`);
			}
		},
		sayWhere(): void {
			if (savedTo)
				err(`Your answers are kept in ${savedTo}\nTo go on: boardwalk --plain --answers ${quoted(savedTo)}\n`);
		},
	};
}

/** A path that a shell takes as one word. */
function quoted(path: string): string {
	return /^[\w./~-]+$/.test(path) ? path : `'${path.replaceAll("'", "'\\''")}'`;
}

/** Lines from standard input, one at a time; Ctrl-C ends the input and is remembered. */
function lineReader({ out }: Streams) {
	const reader = createInterface({
		input: process.stdin,
		output: process.stdout,
		terminal: Boolean(process.stdin.isTTY && process.stdout.isTTY),
	});
	const waiting: string[] = [];
	let wanted: ((line: string | null) => void) | null = null;
	let ended = false;
	let interrupted = false;
	const give = (line: string | null) => {
		const take = wanted;
		wanted = null;
		take?.(line);
	};
	reader.on("line", (line) => (wanted ? give(line) : waiting.push(line)));
	reader.on("close", () => {
		ended = true;
		give(null);
	});
	reader.on("SIGINT", () => {
		interrupted = true;
		out("\n");
		reader.close();
	});
	return {
		next: (prompt: string): Promise<string | null> => {
			if (reader.terminal && !ended) {
				// The prompt's last line is readline's own, so that editing the line redraws no more than that.
				const [, head = "", last = prompt] = /^([\s\S]*\n)(.*)$/.exec(prompt) ?? [];
				out(head);
				reader.setPrompt(last);
				reader.prompt();
			} else out(prompt);
			const line = waiting.shift();
			if (line !== undefined) return Promise.resolve(line);
			if (ended) return Promise.resolve(null);
			return new Promise((resolve) => {
				wanted = resolve;
			});
		},
		close: () => reader.close(),
		interrupted: () => interrupted,
	};
}
