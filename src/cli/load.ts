import { dataFolder } from "../files/own-folders.ts";
import { noParts } from "../files/own-parts.ts";
import { FaultyParts, readOwnParts } from "../files/own-parts-file.ts";
import { isThere, readAnswers } from "../files/read-answers.ts";
import { BrokenCsv } from "../files/read-csv.ts";
import { BrokenJson } from "../files/read-json.ts";
import { readParts } from "../files/read-parts.ts";
import { UnreadableFile } from "../files/read-text.ts";
import { UnwritableFile } from "../files/write-file.ts";
import type { AnswersFile, OwnPart } from "../parts/answers-file.ts";
import type { Fault } from "../parts/check-json.ts";
import type { Market, PartsFile } from "../parts/market.ts";
import type { AnyPart } from "../parts/part-kinds.ts";
import { type TakenUp, takeUpWalk } from "../walk/saved-walk.ts";
import type { WalkContext } from "../walk/walk-state.ts";
import type { Arguments } from "./arguments.ts";
import { demoFiles, marketWithOwn } from "./demo-market.ts";
import { CommandError, exitCodes } from "./exit-codes.ts";
import { faultLine, faultsMessage } from "./fault-words.ts";
import type { Streams } from "./streams.ts";

/** Runs something that reads or writes files, and turns what can go wrong into one message and its exit code. */
export function reading<T>(read: () => T): T {
	try {
		return read();
	} catch (error) {
		if (error instanceof UnreadableFile) throw new CommandError(exitCodes.noInput, `${error.path}: ${error.reason}.`);
		if (error instanceof UnwritableFile)
			throw new CommandError(exitCodes.cannotCreate, `${error.path} cannot be written: ${error.reason}.`);
		if (error instanceof FaultyParts)
			throw new CommandError(exitCodes.badData, `${faultsMessage(error.path, error.faults)} ${soundOnlyAdvice}`);
		if (error instanceof BrokenJson || error instanceof BrokenCsv)
			throw new CommandError(exitCodes.badData, `${error.path}: ${error.reason}. Nothing was changed.`);
		throw error;
	}
}

const soundOnlyAdvice = "Mend it, or add --sound-only to go on with its sound parts.";

/**
 * The market the flags ask for: the person's own parts and the demonstration, or what --parts names alone.
 *
 * @param folder where own parts are kept, or null
 * @param files of answers whose parts are wanted in any case
 */
export function loadMarket(
	{ parts, withDemo, answers, soundOnly }: Arguments,
	streams: Streams,
	folder: string | null = dataFolder(process.env, process.platform),
	files: readonly string[] = answers === undefined ? [] : [answers],
): Market {
	if (parts === undefined) {
		const own = loadOwnParts(folder, { soundOnly }, streams);
		return marketWithOwn(own, { withDemo, named: new Set(files.flatMap(namedParts)) });
	}
	const { market, faulty, warnings } = reading(() => readParts(parts, withDemo ? demoFiles : [], soundOnly));
	const [first] = faulty;
	if (first && !soundOnly)
		throw new CommandError(exitCodes.badData, `${faultsMessage(first.file, first.faults)} ${soundOnlyAdvice}`);
	for (const { file, faults } of faulty) tellLeftOut(file, faults, streams);
	for (const warning of warnings) streams.err(`${warning}\n`);
	return market;
}

/** The person's own parts; what of them was left out is told on standard error. */
export function loadOwnParts(
	folder: string | null,
	options: { readonly soundOnly: boolean },
	streams: Streams,
): PartsFile {
	if (folder === null) return noParts;
	const { path, file, leftOut } = reading(() => readOwnParts(folder, options));
	tellLeftOut(path, leftOut, streams);
	return file;
}

/** The faults for which parts of a file were left out. */
export function tellLeftOut(file: string, faults: readonly Fault[], { err }: Streams): void {
	for (const fault of faults.slice(0, 50)) err(`Left out: ${faultLine(file, fault)}\n`);
	if (faults.length > 50) err(`... and ${faults.length - 50} more.\n`);
}

/** Ids that a walk's answers may name; a file that cannot be used is told where the answers are taken up. */
function namedParts(answers: string): readonly string[] {
	try {
		const values = Object.values(readAnswers(answers).value?.answers ?? {}).map(({ value }) => value);
		return values.flatMap((value) => {
			if (typeof value === "string") return [value];
			if (Array.isArray(value)) return value;
			return typeof value === "object" && "part" in value ? [value.part] : [];
		});
	} catch (error) {
		if (error instanceof UnreadableFile || error instanceof BrokenJson) return [];
		throw error;
	}
}

/**
 * The answers in a file, checked against their schema.
 *
 * @throws CommandError: 65 for bad data, 66 where it cannot be read
 */
export function loadWalkFile(path: string): AnswersFile {
	const checked = reading(() => readAnswers(path));
	if (!checked.value) throw new CommandError(exitCodes.badData, faultsMessage(path, checked.faults));
	return checked.value;
}

/** The answers in a file, taken up in a market; warnings are told on standard error. */
export function loadWalk(
	path: string,
	context: Omit<WalkContext, "asOf">,
	{ err }: Streams,
): TakenUp & { file: AnswersFile } {
	const file = loadWalkFile(path);
	const taken = takeUpWalk({ ...context, asOf: file.asOf }, file);
	if (taken.faults.length > 0) throw new CommandError(exitCodes.badData, faultsMessage(path, taken.faults));
	for (const warning of taken.warnings) err(`${path}: ${warning}\n`);
	return { ...taken, file };
}

/** The walk that --answers names; it must be there. */
export function loadAnswersOf({ answers, parts, inches }: Arguments, market: Market, streams: Streams) {
	if (answers === undefined)
		throw new CommandError(exitCodes.usage, "This needs --answers FILE: the file that a walk wrote.");
	const taken = loadWalk(answers, { market }, streams);
	// What a person has changed since of an own part holds, as it does in the walk.
	const ownParts = taken.state.ownParts.map((one): OwnPart => {
		const now = (market.parts[one.kind] as readonly AnyPart[]).find(({ id }) => id === one.part.id);
		const isOwn = parts === undefined && now !== undefined && (now as { invented?: boolean }).invented !== true;
		return isOwn ? ({ kind: one.kind, part: now } as OwnPart) : one;
	});
	return {
		...taken,
		state: {
			...taken.state,
			ownParts,
			settings: { ...taken.state.settings, lengths: inches ? ("with-inches" as const) : ("mm" as const) },
		},
		context: { market, asOf: taken.file.asOf } satisfies WalkContext,
	};
}

export { isThere };
