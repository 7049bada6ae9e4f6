import * as z from "zod";
import { NewerFile } from "../files/newer-file.ts";
import { BrokenJson, parseJson } from "../files/read-json.ts";
import { type AnswersFile, answersFile } from "../parts/answers-file.ts";
import { answersOfToday, newestAnswersVersion } from "../parts/answers-versions.ts";
import { checkJson, type Fault } from "../parts/check-json.ts";
import { date, line } from "../parts/fact.ts";
import { schemaVersion } from "../parts/schema-version.ts";
import type { WalkEvent } from "../walk/walk-event.ts";
import { readEvent } from "./event-shapes.ts";

export const eventsSchemaName = "boardwalk/events@1";
const newestVersion = 1;

/** The line before the steps: when, with which boards, and the answers to begin with. */
const head = z.strictObject({
	schema: z.literal(eventsSchemaName),
	asOf: date(),
	/** Of the program that wrote it. */
	version: line(40),
	market: z.strictObject({ version: line(200), fingerprint: line(80) }),
	/** Who looked through somebody else's walk; null: the name was still to be asked. */
	helper: line(60).nullable().optional(),
	answers: answersFile,
});

/** One line of a recorded walk. */
export type RecordedLine =
	| {
			readonly line: number;
			readonly begins: { readonly walk: AnswersFile; readonly helper: { readonly name: string | null } | null };
	  }
	| { readonly line: number; readonly event: WalkEvent };

/** A line that cannot be used, with what was expected there. */
export interface LineFault {
	readonly line: number;
	readonly words: string;
}

/** Whether a text is a recorded walk, of whatever version; what stands in its first line decides. */
export function isRecord(text: string): boolean {
	const [first = ""] = text.trimStart().split("\n", 1);
	return /^\uFEFF?\{\s*"schema"\s*:\s*"boardwalk\/events@/.test(first);
}

/**
 * The lines of a recorded walk, each held against what it can be. Every fault is told, none stops the others.
 *
 * @param path names the text in messages
 * @throws NewerFile
 */
export function readRecord(
	text: string,
	path: string,
): { readonly lines: readonly RecordedLine[]; readonly faults: readonly LineFault[] } {
	const lines: RecordedLine[] = [];
	const faults: LineFault[] = [];
	for (const [index, words] of text.split(/\r?\n/).entries()) {
		if (words.trim() === "") continue;
		const read = readLine(words, index + 1, path, lines.length === 0 && faults.length === 0);
		if ("words" in read) faults.push(read);
		else lines.push(read);
	}
	return { lines, faults };
}

function readLine(words: string, number: number, path: string, isFirst: boolean): RecordedLine | LineFault {
	const fault = (expected: string): LineFault => ({ line: number, words: `expected ${expected}` });
	let json: unknown;
	try {
		json = parseJson(words, path);
	} catch (error) {
		if (error instanceof BrokenJson) return fault("one sound line of JSON");
		throw error;
	}
	const found = schemaVersion(json);
	if (found?.form === "events" && found.version > newestVersion) throw new NewerFile(path, found, newestVersion);
	if (found?.form === "events") return readHead(json, number, path);
	if (isFirst) return fault(`the line that begins a recorded walk, with "schema": "${eventsSchemaName}"`);
	const read = readEvent(json);
	return "event" in read ? { line: number, event: read.event } : fault(read.expected.replace(/\.$/, ""));
}

function readHead(json: unknown, number: number, path: string): RecordedLine | LineFault {
	const { answers } = json as { readonly answers?: unknown };
	const found = schemaVersion(answers);
	if (found?.form === "answers" && found.version > newestAnswersVersion)
		throw new NewerFile(path, found, newestAnswersVersion);
	const { value, faults } = checkJson(head, { ...(json as object), answers: answersOfToday(answers) });
	if (value)
		return {
			line: number,
			begins: { walk: value.answers, helper: value.helper === undefined ? null : { name: value.helper } },
		};
	const [first] = faults as readonly Fault[];
	return { line: number, words: `${first?.path || "the line"}: expected ${first?.expected ?? "something else"}` };
}
