import { dirname, resolve } from "node:path";
import packageFacts from "../../package.json" with { type: "json" };
import { type EventRecord, eventRecord } from "../files/event-record.ts";
import { lookAtFolder } from "../files/look-at-own.ts";
import { isThere, isWalkFile } from "../files/read-answers.ts";
import type { AnswersFile } from "../parts/answers-file.ts";
import type { WalkEvent } from "../walk/walk-event.ts";
import type { Arguments } from "./arguments.ts";
import { CommandError, exitCodes } from "./exit-codes.ts";
import { eventsSchemaName } from "./recorded-walk.ts";

/** Writes every step of a walk into the file of --record. */
export interface WalkRecorder {
	/** The walk as it is before the steps that follow; again when another walk is taken up. */
	readonly begin: (walkNow: () => AnswersFile) => void;
	readonly record: (event: WalkEvent) => void;
	/** What to print once the walk is left. */
	readonly farewell: () => string;
	readonly close: () => void;
}

/**
 * The recorder that --record asks for, or one that does nothing.
 *
 * @param helper who looks through somebody else's walk; a name that is null is to be asked
 * @throws CommandError: 73 where the file is there already or cannot be made, 64 where it is the walk's own
 */
export function walkRecorder(
	{ record, answers, replace }: Pick<Arguments, "record" | "answers" | "replace">,
	helper: { readonly name: string | null } | null,
): WalkRecorder {
	if (record === undefined) return { begin: () => {}, record: () => {}, farewell: () => "", close: () => {} };
	const path = resolve(record);
	if (answers !== undefined && resolve(answers) === path)
		throw new CommandError(exitCodes.usage, "--record and --answers name the same file. Take another name for one.");
	refuseTaken(path, replace);
	const file: EventRecord = eventRecord(path, { replace });
	return {
		begin: (walkNow) => {
			const { asOf, market, ...walk } = walkNow();
			file.begin({
				schema: eventsSchemaName,
				asOf,
				version: packageFacts.version,
				market,
				...(helper === null ? {} : { helper: helper.name }),
				answers: { asOf, market, ...walk },
			});
		},
		record: file.add,
		farewell: () => {
			const problem = file.problem();
			return problem === null
				? `Every step is recorded in ${path}\n`
				: `Not every step could be recorded in ${path}: ${problem}.\n`;
		},
		close: file.close,
	};
}

function refuseTaken(path: string, replace: boolean): void {
	const refuse = (words: string) => new CommandError(exitCodes.cannotCreate, words);
	if (isThere(path) && !replace)
		throw refuse(`${path} is there already and was kept. Take another name, or add --replace.`);
	if (isWalkFile(path)) throw refuse(`${path} holds the answers of a walk, and was kept. Take another name.`);
	const folder = lookAtFolder(dirname(path), process.platform);
	if (folder.state !== "there" || !folder.canWrite)
		throw refuse(
			`${path} cannot be written: ${folder.state === "there" ? "this user is not allowed to" : "there is no such folder"}.`,
		);
}
