import { dataFolder, walksFolder } from "../files/own-folders.ts";
import { readAnswers } from "../files/read-answers.ts";
import { keptWalks } from "../files/saved-walks.ts";
import type { OwnPart } from "../parts/answers-file.ts";
import type { Screen } from "../screens/screen.ts";
import { screenOf } from "../screens/screen-of.ts";
import { viewWalk } from "../screens/walk-view.ts";
import { savedWalk, summaryWords } from "../walk/saved-walk.ts";
import { update } from "../walk/update.ts";
import type { WalkEffect, WalkEvent } from "../walk/walk-event.ts";
import { startWalk, type WalkContext, type WalkState } from "../walk/walk-state.ts";
import { AnswersKeeper } from "./answers-keeper.ts";
import type { Arguments } from "./arguments.ts";
import { CommandError, type ExitCode, exitCodes } from "./exit-codes.ts";
import { keptSettings } from "./kept-settings.ts";
import { isThere, loadWalk, reading } from "./load.ts";
import type { Streams } from "./streams.ts";
import { walkMarket } from "./walk-market.ts";
import { writeSheet } from "./write-sheet.ts";

/**
 * A walk under way: the state, and the one place where its effects are carried out. Both faces drive it, so that they
 * cannot differ in what they save or write.
 */
export interface WalkSession {
	readonly screen: () => Screen | null;
	readonly state: () => WalkState;
	readonly dispatch: (event: WalkEvent) => void;
	readonly exitCode: () => ExitCode;
	/** The result in short, for a walk that came as far; else empty. */
	readonly result: () => string;
	/** What to print once the walk is left: where answers and sheets lie. */
	readonly farewell: () => string;
	/** Lets go of the walk's file; to be called on every way out. */
	readonly close: () => void;
}

/** Opens a session: the walk that --answers names, or a new one with earlier walks on offer. */
export function openSession(args: Arguments, streams: Streams, today: string): WalkSession {
	const parts = walkMarket(args, streams, dataFolder(process.env, process.platform));
	const start = parts.now({});
	/** The market changes when an own part does, and then in one piece. */
	let context: WalkContext = { market: start.market, asOf: today };
	const folder = walksFolder(process.env, process.platform);
	const kept =
		folder === null || args.answers !== undefined
			? { walks: [], setAside: [] }
			: keptWalks(folder, (walk) => summaryWords(walk, context));
	const settings = keptSettings();
	const words: string[] = [
		...(settings.warning ? [settings.warning] : []),
		...(parts.warning ? [parts.warning] : []),
		...kept.setAside.map((path) => `A damaged walk was set aside: ${path}`),
	];
	const keeper = new AnswersKeeper(args.answers ?? null, folder, today);
	let state: WalkState = { ...startWalk(), kept: start.kept };
	let code: ExitCode = exitCodes.ok;
	let leftWith: WalkState | null = null;
	let shown: { readonly state: WalkState; readonly screen: Screen | null } | null = null;
	const written: string[] = [];
	if (args.answers !== undefined && isThere(args.answers)) takeUp(args.answers);
	else if (args.answers !== undefined) keeper.hold(args.answers);
	state = { ...state, saved: kept.walks, settings: settings.settings, notice: words.join(" ") || null };

	function takeUp(file: string): void {
		const { answers } = reading(() => readAnswers(file)).value ?? { answers: {} };
		const { market, kept: own } = parts.now(answers);
		const { state: taken, warnings } = loadWalk(file, { market }, { ...streams, err: () => {} });
		context = { market, asOf: today };
		words.push(...warnings);
		const holder = keeper.hold(file);
		if (holder !== null)
			words.push(
				`This walk is open in another window (process ${holder}). What you answer here goes into a file of its own.`,
			);
		// What was changed since holds for this walk too.
		const ownParts = taken.ownParts.map((one) => own.find((other) => isSamePart(one, other)) ?? one);
		state = { ...taken, ownParts, kept: own, saved: state.saved, settings: state.settings };
	}

	/** Own parts changed: the market is put together anew, with what the answers name. */
	function partsChanged(problem: string | null): void {
		if (problem) {
			state = { ...state, notice: `This holds for this walk, but cannot be kept for others: ${problem}` };
			return;
		}
		const { market, kept: own } = parts.now(state.answers);
		context = { market, asOf: today };
		state = { ...state, kept: own };
	}

	/** Worked out once a state: it is asked for with every key. */
	function screen(): Screen | null {
		if (shown?.state !== state) shown = { state, screen: screenOf(context, state) };
		return shown.screen;
	}

	function dispatch(event: WalkEvent): void {
		const [next, effects] = update(context, state, event);
		state = next;
		for (const effect of effects) carryOut(effect);
	}

	function carryOut(effect: WalkEffect): void {
		switch (effect.type) {
			case "save": {
				// Who only looked in leaves no walk behind to be offered next time.
				if (!keeper.isKept() && Object.keys(state.answers).length === 0 && state.ownParts.every(isKeptElsewhere)) break;
				const problem = keeper.save(savedWalk(context, state));
				if (problem) state = { ...state, notice: problem };
				break;
			}
			case "leave":
				code = effect.finished ? exitCodes.ok : exitCodes.leftEarly;
				leftWith = effect.finished ? state : null;
				break;
			case "write-sheet":
				dispatch(sheetWritten(effect.to, effect.orNext));
				break;
			case "open":
				dispatch(opened(effect.file));
				break;
			case "keep-part":
				partsChanged(parts.keep(effect.own));
				break;
			case "remove-part":
				partsChanged(parts.remove(effect.kind, effect.id));
				break;
			case "keep-settings": {
				const problem = settings.keep(effect.settings);
				if (problem) state = { ...state, notice: `The settings hold for now, but cannot be kept: ${problem}.` };
				break;
			}
		}
	}

	/** Parts that are kept for all walks need no walk of their own. */
	function isKeptElsewhere(own: OwnPart): boolean {
		return state.kept.some((other) => isSamePart(own, other));
	}

	function sheetWritten(to: string, orNext: boolean): WalkEvent {
		try {
			const name = orNext && !args.replace ? freeName(to) : to;
			const path = writeSheet(name, viewWalk(context, state).sheet(), {
				replace: args.replace,
				ifTaken: "Take another name.",
			});
			written.push(path);
			return { type: "written", path };
		} catch (error) {
			if (!(error instanceof CommandError)) throw error;
			return { type: "not-written", problem: error.message };
		}
	}

	function opened(file: string): WalkEvent {
		words.length = 0;
		try {
			takeUp(file);
		} catch (error) {
			if (!(error instanceof CommandError)) throw error;
			return { type: "tell", words: error.message };
		}
		dispatch({ type: "next" });
		return { type: "tell", words: words.join(" ") || "Here you left off." };
	}

	return {
		screen,
		state: () => state,
		dispatch,
		exitCode: () => code,
		result: () =>
			code === exitCodes.ok && leftWith !== null
				? viewWalk(context, leftWith)
						.sheet()
						.inShort.map(
							(line) => `${line}
`,
						)
						.join("")
				: "",
		farewell: () => [...written.map((path) => `The sheet: ${path}\n`), keeper.farewell()].join(""),
		close: () => keeper.close(),
	};
}

function isSamePart(one: OwnPart, other: OwnPart): boolean {
	return one.kind === other.kind && one.part.id === other.part.id;
}

/** The name itself, or with the first number behind it that is not taken: sheet-2.md. */
function freeName(name: string): string {
	const [, stem = name, ending = ""] = /^(.*?)(\.[^.]*)?$/.exec(name) ?? [];
	let free = name;
	for (let number = 2; isThere(free); number++) free = `${stem}-${number}${ending}`;
	return free;
}
