import { isThere, readAnswers } from "../files/read-answers.ts";
import { BrokenJson } from "../files/read-json.ts";
import { readParts } from "../files/read-parts.ts";
import { UnreadableFile } from "../files/read-text.ts";
import type { AnswersFile } from "../parts/answers-file.ts";
import type { Market } from "../parts/market.ts";
import { type TakenUp, takeUpWalk } from "../walk/saved-walk.ts";
import type { WalkContext } from "../walk/walk-state.ts";
import type { Arguments } from "./arguments.ts";
import { demoFiles, demoMarket } from "./demo-market.ts";
import { CommandError, exitCodes } from "./exit-codes.ts";
import { faultsMessage } from "./fault-words.ts";
import type { Streams } from "./streams.ts";

/** Runs something that reads files, and turns what can go wrong into one message and its exit code. */
export function reading<T>(read: () => T): T {
	try {
		return read();
	} catch (error) {
		if (error instanceof UnreadableFile) throw new CommandError(exitCodes.noInput, `${error.path}: ${error.reason}.`);
		if (error instanceof BrokenJson)
			throw new CommandError(exitCodes.badData, `${error.path}: ${error.reason}. Nothing was changed.`);
		throw error;
	}
}

/** The market the flags ask for. */
export function loadMarket({ parts, withDemo }: Arguments, { err }: Streams): Market {
	if (parts === undefined) return demoMarket();
	const { market, faulty, warnings } = reading(() => readParts(parts, withDemo ? demoFiles : []));
	const [first] = faulty;
	if (first) throw new CommandError(exitCodes.badData, faultsMessage(first.file, first.faults));
	for (const warning of warnings) err(`${warning}\n`);
	return market;
}

/** The answers in a file, taken up in a market; warnings are told on standard error. */
export function loadWalk(
	path: string,
	context: Omit<WalkContext, "asOf">,
	{ err }: Streams,
): TakenUp & { file: AnswersFile } {
	const checked = reading(() => readAnswers(path));
	if (!checked.value) throw new CommandError(exitCodes.badData, faultsMessage(path, checked.faults));
	const file = checked.value;
	const taken = takeUpWalk({ ...context, asOf: file.asOf }, file);
	if (taken.faults.length > 0) throw new CommandError(exitCodes.badData, faultsMessage(path, taken.faults));
	for (const warning of taken.warnings) err(`${path}: ${warning}\n`);
	return { ...taken, file };
}

/** The walk that --answers names; it must be there. */
export function loadAnswersOf({ answers }: Arguments, market: Market, streams: Streams) {
	if (answers === undefined)
		throw new CommandError(exitCodes.usage, "This needs --answers FILE: the file that a walk wrote.");
	const taken = loadWalk(answers, { market }, streams);
	return { ...taken, context: { market, asOf: taken.file.asOf } satisfies WalkContext };
}

export { isThere };
