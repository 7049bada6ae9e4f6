import { existsSync } from "node:fs";
import { type AnswersFile, answersFile } from "../parts/answers-file.ts";
import { answersInHtml } from "../parts/answers-in-html.ts";
import { answersOfToday, newestAnswersVersion } from "../parts/answers-versions.ts";
import { type Checked, checkJson } from "../parts/check-json.ts";
import { schemaVersion } from "../parts/schema-version.ts";
import { withTodaysIds } from "../walk/saved-question-ids.ts";
import { NewerFile } from "./newer-file.ts";
import { BrokenJson, parseJson, readJson, readJsonText } from "./read-json.ts";
import { UnreadableFile } from "./read-text.ts";

/** The newest version of sheets that this program knows. */
const newestSheetVersion = 1;

/** What was read of a file that may hold a walk. */
interface WalkRead {
	readonly checked: Checked<AnswersFile>;
	/** The walk stands inside a sheet; nothing but a sheet may ever be written there. */
	readonly inSheet: boolean;
}

/**
 * The answers in a file, of any version up to today's, checked against their schema. A sheet that boardwalk wrote as
 * HTML or JSON carries them too; what counts is what a file holds, and not how its name ends.
 *
 * @throws UnreadableFile; BrokenJson, also for a sheet without answers; NewerFile
 */
export function readAnswers(path: string): Checked<AnswersFile> {
	return readWalk(path).checked;
}

/** As readAnswers, and whether the answers stand inside a sheet. */
export function readWalk(path: string): WalkRead {
	const { json, inSheet } = answersAt(path);
	const checked = checkJson(answersFile, json);
	return { checked: checked.value ? { ...checked, value: withTodaysIds(checked.value) } : checked, inSheet };
}

/**
 * Whether a file is one of answers, or a sheet, of whatever version.
 *
 * @throws UnreadableFile, BrokenJson
 */
export function holdsAnswers(path: string): boolean {
	if (isPage(readJsonText(path))) return true;
	const form = schemaVersion(readJson(path))?.form;
	return form === "answers" || form === "sheet";
}

/** Whether a walk itself lies there, of whatever version: nothing else may be written in its place. Never throws. */
export function isWalkFile(path: string): boolean {
	try {
		return schemaVersion(readJson(path))?.form === "answers";
	} catch (error) {
		if (error instanceof UnreadableFile || error instanceof BrokenJson) return false;
		throw error;
	}
}

/** The answers as parsed, taken to today's version. */
function answersAt(path: string): { readonly json: unknown; readonly inSheet: boolean } {
	const text = readJsonText(path);
	if (isPage(text)) {
		const carried = answersInHtml(text);
		if (carried === null) throw new BrokenJson(path, "this page is no sheet of boardwalk with answers in it");
		return { json: ofToday(parseJson(carried, path), path), inSheet: true };
	}
	const json = parseJson(text, path);
	if (schemaVersion(json)?.form !== "sheet") return { json: ofToday(json, path), inSheet: false };
	refuseNewer(json, "sheet", newestSheetVersion, path);
	const { answersFile: carried } = json as { readonly answersFile?: unknown };
	if (carried === undefined || carried === null) throw new BrokenJson(path, "this sheet carries no answers");
	return { json: ofToday(carried, path), inSheet: true };
}

/** HTML begins with an angle bracket; JSON never does. */
function isPage(text: string): boolean {
	return /^\uFEFF?\s*</.test(text);
}

function ofToday(json: unknown, path: string): unknown {
	refuseNewer(json, "answers", newestAnswersVersion, path);
	return answersOfToday(json);
}

function refuseNewer(json: unknown, form: string, known: number, path: string): void {
	const found = schemaVersion(json);
	if (found?.form === form && found.version > known) throw new NewerFile(path, found, known);
}

/** Whether anything stands at a path. */
export function isThere(path: string): boolean {
	return existsSync(path);
}
