import { cleanJson } from "../parts/clean-text.ts";
import { readText } from "./read-text.ts";

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
 * @throws BrokenJson when the text is empty, no JSON, or nested too deep
 */
export function readJson(path: string): unknown {
	return parseJson(readText(path), path);
}

/** As readJson, for text already at hand; `path` names it in messages. */
export function parseJson(text: string, path: string): unknown {
	if (text.trim() === "") throw new BrokenJson(path, "the file is empty, and JSON was expected");
	try {
		return cleanJson(JSON.parse(text.replace(/^\uFEFF/, "")));
	} catch (error) {
		if (error instanceof RangeError) throw new BrokenJson(path, `${error.message}, and no sound file is`);
		throw new BrokenJson(path, `this is no sound JSON${placeIn(text, error)}`);
	}
}

/** ", at line 3, column 7", from the position that the runtime's message tells. */
function placeIn(text: string, error: unknown): string {
	const position = /position (\d+)/.exec(error instanceof Error ? error.message : "")?.[1];
	if (position === undefined) return /end of JSON/i.test(String(error)) ? ": it stops in the middle" : "";
	const before = text.slice(0, Number(position)).split("\n");
	return `, at line ${before.length}, column ${(before.at(-1) ?? "").length + 1}`;
}
