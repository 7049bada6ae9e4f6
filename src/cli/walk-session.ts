import { resolve } from "node:path";
import { dataFolder, settingsFolder, walksFolder } from "../files/own-folders.ts";
import { ownPartsPath } from "../files/own-parts-file.ts";
import { readWalk } from "../files/read-answers.ts";
import { type KeptWalks, keptWalks, newWalkFile, tidyWalks } from "../files/saved-walks.ts";
import { settingsPath } from "../files/settings.ts";
import type { AnswersFile, OwnPart } from "../parts/answers-file.ts";
import type { Screen } from "../screens/screen.ts";
import { screenOf } from "../screens/screen-of.ts";
import { viewWalk } from "../screens/walk-view.ts";
import { wrapText } from "../screens/wrap-lines.ts";
import { paperBoardSvg } from "../sheet/paper-board-svg.ts";
import { waitingWords } from "../sheet/suggestion-words.ts";
import type { WalksChange } from "../walk/kept-walk-places.ts";
import { savedWalk, summaryWords } from "../walk/saved-walk.ts";
import { update } from "../walk/update.ts";
import type { WalkEffect, WalkEvent } from "../walk/walk-event.ts";
import { startWalk, type WalkContext, type WalkState } from "../walk/walk-state.ts";
import { adviceText } from "./advice-text.ts";
import { AnswersKeeper, quoted } from "./answers-keeper.ts";
import type { Arguments } from "./arguments.ts";
import { changeWalks } from "./change-walks.ts";
import { coachedBy, helpersFarewell, helpersNewFile, marketOfFile, sheetWords } from "./coached-walk.ts";
import { exampleWalk, exampleWords } from "./example-walk.ts";
import { CommandError, type ExitCode, exitCodes } from "./exit-codes.ts";
import { keptSettings } from "./kept-settings.ts";
import { isThere, loadWalk, reading } from "./load.ts";
import { drawnBoard } from "./paper-board-command.ts";
import type { Streams } from "./streams.ts";
import { walkMarket } from "./walk-market.ts";
import { walkRecorder } from "./walk-recorder.ts";
import { endingOf, writeResult, writeSheet } from "./write-sheet.ts";

/**
 * A walk under way: the state, and the one place where its effects are carried out. Both faces drive it, so that they
 * cannot differ in what they save or write.
 */
export interface WalkSession {
	readonly screen: () => Screen | null;
	readonly state: () => WalkState;
	readonly dispatch: (event: WalkEvent) => void;
	readonly exitCode: () => ExitCode;
	/** The result of a walk that came as far, in short or with --json as advice@1; else empty. */
	readonly result: (width: number) => string;
	/** What to print once the walk is left: where answers and sheets lie. */
	readonly farewell: () => string;
	/** Lets go of the walk's file; to be called on every way out. */
	readonly close: () => void;
}

const noWalks: KeptWalks = { walks: [], setAside: [], newer: [] };

/** Somebody who looks through the walk that --answers names, to help its builder. */
export interface Helper {
	/** Null: to be asked. */
	readonly name: string | null;
}

/** Opens a session: the walk that --answers names, or a new one with earlier walks on offer. */
export function openSession(
	args: Arguments,
	streams: Streams,
	today: string,
	helper: Helper | null = null,
): WalkSession {
	const recorder = walkRecorder(args, helper);
	const parts = helper
		? marketOfFile(args, streams)
		: walkMarket(args, streams, dataFolder(process.env, process.platform));
	const start = parts.now({});
	/** The market changes when an own part does, and then in one piece. */
	let context: WalkContext = { market: start.market, asOf: today };
	const folder = walksFolder(process.env, process.platform);
	if (folder !== null) tidyWalks(folder);
	const kept = args.answers === undefined ? walksNow() : noWalks;
	const settings = keptSettings();
	const words: string[] = [
		...(settings.warning ? [settings.warning] : []),
		...(parts.warning ? [parts.warning] : []),
		...kept.setAside.map((path) => `A damaged walk was set aside: ${path}`),
		...kept.newer.map((path) => `A newer boardwalk wrote this walk, so it is left as it is: ${path}`),
	];
	const amongOwn = () => (folder === null ? null : newWalkFile(folder, today));
	const handed = helper ? args.answers : undefined;
	const newFile = () => (handed === undefined ? amongOwn() : helpersNewFile(handed, amongOwn));
	const keeper = new AnswersKeeper(args.answers ?? null, newFile);
	let state: WalkState = { ...startWalk(), kept: start.kept };
	/** With which boards the answers of somebody else were given. */
	let marketThen: AnswersFile["market"] | null = null;
	let code: ExitCode = exitCodes.ok;
	let leftWith: WalkState | null = null;
	let shown: { readonly state: WalkState; readonly screen: Screen | null } | null = null;
	const written: string[] = [];
	/** The person's own walk, while the example is looked at. */
	let beforeExample: { readonly state: WalkState; readonly context: WalkContext } | null = null;
	/** The walk as it was handed over; a helper who only looks leaves the file alone. */
	let handedOver: AnswersFile | null = null;
	if (args.answers !== undefined && (helper || isThere(args.answers))) takeUp(args.answers);
	else if (args.answers !== undefined) keeper.hold(args.answers);
	state = {
		...state,
		saved: kept.walks,
		settings: { ...settings.settings, ...(args.inches ? { lengths: "with-inches" as const } : {}) },
		notice: words.join(" ") || null,
	};
	if (helper) {
		handedOver = fileNow();
		state = coachedBy(helper.name, state);
	}
	recorder.begin(fileNow);

	function walksNow(open: string | null = null): KeptWalks {
		if (folder === null) return noWalks;
		return keptWalks(folder, (walk, file) => `${summaryWords(walk, context)}${file === open ? ", open now" : ""}`);
	}

	/** A helper sees other boards perhaps, which changes nothing of those that the answers were given with. */
	function fileNow(): AnswersFile {
		const saved = savedWalk(context, state);
		return marketThen ? { ...saved, market: marketThen } : saved;
	}

	function isAsHandedOver(): boolean {
		return handedOver !== null && JSON.stringify(fileNow()) === JSON.stringify(handedOver);
	}

	function takeUp(file: string): void {
		beforeExample = null;
		const { checked, inSheet } = reading(() => readWalk(file));
		const { answers } = checked.value ?? { answers: {} };
		const { market, kept: own } = parts.now(answers);
		const { state: taken, warnings, file: walk } = loadWalk(file, { market }, { ...streams, err: () => {} });
		marketThen = helper ? walk.market : null;
		context = { market, asOf: today };
		words.push(...warnings);
		if (inSheet) {
			keeper.beginNew();
			words.push(sheetWords(helper ? newFile() : null));
		} else {
			const holder = keeper.hold(file);
			if (holder !== null)
				words.push(
					`This walk is open in another window (process ${holder}). What you answer here goes into a file of its own.`,
				);
		}
		// What was changed since holds for this walk too.
		const ownParts = taken.ownParts.map((one) => own.find((other) => isSamePart(one, other)) ?? one);
		const other = ownParts.filter((one, at) => JSON.stringify(one) !== JSON.stringify(taken.ownParts[at]));
		if (other.length > 0)
			words.push(
				`Taken from your own parts, since this file says otherwise: ${other.map(({ part }) => part.name).join(", ")}.`,
			);
		state = {
			...taken,
			ownParts,
			kept: own,
			saved: state.saved,
			canBringBack: state.canBringBack,
			settings: state.settings,
		};
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
		recorder.record(event);
		const [next, effects] = update(context, state, event);
		state = next;
		for (const effect of effects) carryOut(effect);
		if (state.place.at === "settings") state = { ...state, files: filesNow() };
	}

	function carryOut(effect: WalkEffect): void {
		switch (effect.type) {
			case "save": {
				// Who only looked in leaves no walk behind to be offered next time.
				if (!keeper.isKept() && Object.keys(state.answers).length === 0 && state.ownParts.every(isKeptElsewhere)) break;
				if (!keeper.isKept() && isAsHandedOver()) break;
				const problem = keeper.save(fileNow());
				if (problem) state = { ...state, notice: problem };
				break;
			}
			case "leave":
				// Who leaves out of the example has not come to a shortlist of their own.
				finished(effect.finished && beforeExample === null);
				break;
			case "write-sheet":
				dispatch(sheetWritten(effect.to, effect.orNext));
				break;
			case "open":
				dispatch(opened(effect.file));
				break;
			case "look-at-example": {
				beforeExample = { state, context };
				const { state: made, context: then } = exampleWalk();
				context = then;
				state = { ...made, saved: state.saved, settings: state.settings };
				recorder.begin(fileNow);
				dispatch({ type: "shortlist" });
				dispatch({ type: "tell", words: exampleWords });
				break;
			}
			case "leave-example":
				if (!beforeExample) break;
				context = beforeExample.context;
				state = { ...beforeExample.state, settings: state.settings, notice: "You are back in your own walk." };
				beforeExample = null;
				recorder.begin(fileNow);
				break;
			case "change-walks":
				walksChanged(effect.change);
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

	function finished(cameToShortlist: boolean): void {
		code = cameToShortlist ? exitCodes.ok : exitCodes.leftEarly;
		leftWith = cameToShortlist ? state : null;
	}

	/** What lies where, for the settings screen. */
	function filesNow(): WalkState["files"] {
		const path = keeper.file();
		const settingsIn = settingsFolder(process.env, process.platform);
		const partsIn = dataFolder(process.env, process.platform);
		return [
			...(path === null ? [] : [["This walk", resolve(path)] as const]),
			...(folder === null ? [] : [["Walks", folder] as const]),
			...(partsIn === null ? [] : [["Your own parts", ownPartsPath(partsIn)] as const]),
			...(settingsIn === null ? [] : [["Settings", settingsPath(settingsIn)] as const]),
		];
	}

	function walksChanged(change: WalksChange): void {
		const path = keeper.file();
		const open = path && resolve(path);
		if (change.does === "name" && change.file === open) {
			state = { ...state, name: change.name, notice: `This walk is now called ${change.name}.` };
			carryOut({ type: "save" });
			state = { ...state, saved: walksNow(open).walks };
			return;
		}
		try {
			if (folder === null) throw new CommandError(exitCodes.noInput, "There is no home folder to keep walks in.");
			const words = changeWalks(change, { folder, market: context.market, today, open });
			const canBringBack = change.does === "remove" || (change.does !== "bring-back" && state.canBringBack);
			dispatch({ type: "walks-changed", saved: walksNow(open).walks, canBringBack, words });
		} catch (error) {
			if (!(error instanceof CommandError)) throw error;
			dispatch({ type: "not-written", problem: error.message });
		}
	}

	/** Parts that are kept for all walks need no walk of their own. */
	function isKeptElsewhere(own: OwnPart): boolean {
		return state.kept.some((other) => isSamePart(own, other));
	}

	function sheetWritten(to: string, orNext: boolean): WalkEvent {
		try {
			const name = orNext && !args.replace ? freeName(to) : to;
			const view = viewWalk(context, state);
			const options = { replace: args.replace, ifTaken: "Take another name." };
			const path =
				endingOf(name) === ".svg"
					? writeResult(name, paperBoardSvg(drawnBoard(view, undefined)), options)
					: writeSheet(name, view.sheet(), fileNow(), options);
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
		recorder.begin(fileNow);
		dispatch({ type: "next" });
		return {
			type: "tell",
			words: [words.join(" ") || "Here you left off.", ...waitingWords(state.suggestions)].join(" "),
		};
	}

	return {
		screen,
		state: () => state,
		dispatch,
		exitCode: () => code,
		result: (width) => {
			if (code !== exitCodes.ok || leftWith === null || helper !== null) return "";
			if (args.json) return adviceText(context, leftWith);
			const { inShort } = viewWalk(context, leftWith).sheet();
			return inShort.flatMap((line) => wrapText(line, width).map((part) => `${part}\n`)).join("");
		},
		farewell: () =>
			[
				...written.map((path) => `The ${endingOf(path) === ".svg" ? "drawing" : "sheet"}: ${path}\n`),
				helper ? helpersFarewell(keeper) : keeper.farewell(marketFlags(args)),
				recorder.farewell(),
			].join(""),
		close: () => {
			recorder.close();
			keeper.close();
		},
	};
}

/** The flags without which other boards would be there when the walk is gone on with. */
function marketFlags({ parts, withDemo, soundOnly }: Arguments): string {
	return [
		...(parts === undefined ? [] : [` --parts ${quoted(parts)}`]),
		...(withDemo ? [" --with-demo"] : []),
		...(soundOnly ? [" --sound-only"] : []),
	].join("");
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
