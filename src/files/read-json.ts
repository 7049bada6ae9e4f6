import { cleanJson } from "../parts/clean-text.ts";
import { NoText, readText } from "./read-text.ts";

/** A file that is no sound JSON; `reason` says what and where. */
export class BrokenJson extends Error {
	readonly path: string;
	readonly reason: string;

	constructor(path: string, reason: string) {
		super(`${path}: ${reason}`);
		this.path = path;
		this.reason = reason;
	}
}

/**
 * The cleaned value in a JSON file (see cleanJson).
 *
 * @throws UnreadableFile as readText does
 * @throws BrokenJson when it is no text, empty, no JSON, or nested too deep
 */
export function readJson(path: string): unknown {
	return parseJson(readJsonText(path), path);
}

/**
 * The text of a JSON file, not parsed yet.
 *
 * @throws UnreadableFile as readText does; BrokenJson when it is no text
 */
export function readJsonText(path: string): string {
	try {
		return readText(path);
	} catch (error) {
		if (error instanceof NoText) throw new BrokenJson(path, error.reason);
		throw error;
	}
}

/** As readJson, for text already at hand; `path` names it in messages. */
export function parseJson(text: string, path: string): unknown {
	if (text.trim() === "") throw new BrokenJson(path, "the file is empty, and JSON was expected");
	const json = text.replace(/^\uFEFF/, "");
	try {
		return cleanJson(JSON.parse(json));
	} catch (error) {
		if (error instanceof RangeError) throw new BrokenJson(path, `${error.message}, and no sound file is`);
		throw new BrokenJson(path, `this is no sound JSON${placeIn(json)}`);
	}
}

/** ", at line 3, column 7": behind the longest beginning that could still become sound JSON, found by halving. */
function placeIn(text: string): string {
	let [sound, faulty] = [0, text.length + 1];
	while (faulty - sound > 1) {
		const middle = Math.floor((sound + faulty) / 2);
		if (couldGoOn(text.slice(0, middle))) sound = middle;
		else faulty = middle;
	}
	if (sound === text.length) return ": it stops in the middle";
	const before = text.slice(0, sound).split("\n");
	return `, at line ${before.length}, column ${(before.at(-1) ?? "").length + 1}`;
}

/** The runtime's message tells the position, but only in some cases; at the end of the text it always tells that. */
function couldGoOn(beginning: string): boolean {
	try {
		JSON.parse(beginning);
		return true;
	} catch (error) {
		const { message } = error as Error;
		const position = /position (\d+)/.exec(message)?.[1];
		return /end of JSON|Unterminated string/i.test(message) || Number(position ?? -1) >= beginning.length;
	}
}
