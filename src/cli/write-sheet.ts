import { isWalkFile } from "../files/read-answers.ts";
import { UnwritableFile, writeFile } from "../files/write-file.ts";
import type { AnswersFile } from "../parts/answers-file.ts";
import { htmlSheet } from "../sheet/html-sheet.ts";
import { markdownSheet } from "../sheet/markdown-sheet.ts";
import type { Sheet } from "../sheet/sheet.ts";
import { sheetJson } from "../sheet/sheet-json.ts";
import { shortlistCsv } from "../sheet/shortlist-csv.ts";
import { textSheet } from "../sheet/text-sheet.ts";
import { CommandError, exitCodes } from "./exit-codes.ts";

export interface WriteSheetOptions {
	readonly replace: boolean;
	/** What to do where the file is there already; a command has a flag for it, a walk has not. */
	readonly ifTaken: string;
}

/**
 * Writes a sheet in the form that the file's ending names.
 *
 * @param kept the walk it was made from, for forms that can be opened as a walk again
 * @returns the full path
 * @throws CommandError: 64 for an ending we cannot write, 73 when the file exists or cannot be made
 */
export function writeSheet(to: string, made: Sheet, kept: AnswersFile, options: WriteSheetOptions): string {
	return writeResult(to, sheetForm(made, kept, endingOf(to)), options);
}

/** The ending of a file's name, small, with its dot; empty where it has none. */
export function endingOf(path: string): string {
	return /\.[^./\\]*$/.exec(path)?.[0].toLowerCase() ?? "";
}

/**
 * Writes a result to the file a person named.
 *
 * @returns the full path
 * @throws CommandError 73 when the file exists, holds a walk (also with `replace`), or cannot be made
 */
export function writeResult(to: string, text: string, { replace, ifTaken }: WriteSheetOptions): string {
	if (replace && isWalkFile(to))
		throw new CommandError(
			exitCodes.cannotCreate,
			`${to} holds the answers of a walk, and was kept. Take another name.`,
		);
	try {
		return writeFile(to, text, { replace });
	} catch (error) {
		if (!(error instanceof UnwritableFile)) throw error;
		throw new CommandError(
			exitCodes.cannotCreate,
			error.exists
				? `${error.path} is there already and was kept. ${ifTaken}`
				: `${error.path} cannot be written: ${error.reason}.`,
		);
	}
}

/** The sheet as text of the form that an ending names, such as ".md". */
export function sheetForm(made: Sheet, kept: AnswersFile, ending: string): string {
	switch (ending) {
		case ".md":
			return markdownSheet(made);
		case ".html":
		case ".htm":
			return htmlSheet(made, kept);
		case ".txt":
			return textSheet(made);
		case ".json":
			return sheetJson(made, kept);
		case ".csv":
			return shortlistCsv(made);
		default:
			throw new CommandError(
				exitCodes.usage,
				"A sheet is written as .html, .md, .txt, .json or .csv; the file's name must end so.",
			);
	}
}
