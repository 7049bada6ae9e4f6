import { existsSync } from "node:fs";
import { type AnswersFile, answersFile } from "../parts/answers-file.ts";
import { type Checked, checkJson } from "../parts/check-json.ts";
import { readJson } from "./read-json.ts";

/**
 * The answers in a file, checked against their schema.
 *
 * @throws UnreadableFile, BrokenJson
 */
export function readAnswers(path: string): Checked<AnswersFile> {
	return checkJson(answersFile, readJson(path));
}

/** Whether anything stands at a path. */
export function isThere(path: string): boolean {
	return existsSync(path);
}
