import { accessSync, constants, existsSync, readdirSync, statSync } from "node:fs";
import { basename, dirname, extname, join, resolve } from "node:path";
import type { AnswersFile } from "../parts/answers-file.ts";
import { cleanLine } from "../parts/clean-text.ts";
import { holderOf } from "./lock-holder.ts";
import { NewerFile } from "./newer-file.ts";
import { readWalk } from "./read-answers.ts";
import { BrokenJson } from "./read-json.ts";
import { refusePipe, UnreadableFile } from "./read-text.ts";
import { setAside } from "./set-aside.ts";
import { removeStrays } from "./stray-files.ts";
import { lockWalk } from "./walk-lock.ts";
import { UnwritableFile } from "./write-file.ts";

/** A walk kept in the folder. */
export interface KeptWalk {
	readonly file: string;
	/** What the person calls it, on one line; null: nothing. */
	readonly name: string | null;
	readonly words: string;
}

/** Walks in the folder, the last written first, and files that were not taken for one. */
export interface KeptWalks {
	readonly walks: readonly KeptWalk[];
	/** Where damaged files now lie. */
	readonly setAside: readonly string[];
	/** Files that a newer program wrote; they were left as they are. */
	readonly newer: readonly string[];
}

/** More are not listed; the newest are what a person looks for. */
const mostListed = 20;

/**
 * A file name in the folder that no walk has yet, and no other program has taken for one: walk-2026-11-24.json,
 * walk-2026-11-24-2.json.
 */
export function newWalkFile(folder: string, asOf: string): string {
	for (let number = 1; ; number++) {
		const path = join(folder, `walk-${asOf}${number > 1 ? `-${number}` : ""}.json`);
		if (!existsSync(path) && !existsSync(`${path}.lock`)) return path;
	}
}

/**
 * A file name that nothing has yet, beside a file and called after it: mias.json beside mias.html, else mias-2.json. Null
 * where the folder cannot be written.
 */
export function newFileBeside(file: string): string | null {
	const folder = dirname(resolve(file));
	try {
		accessSync(folder, constants.W_OK);
	} catch {
		return null;
	}
	const stem = basename(file, extname(file));
	for (let number = 1; ; number++) {
		const path = join(folder, `${stem}${number > 1 ? `-${number}` : ""}.json`);
		if (!existsSync(path)) return path;
	}
}

/**
 * Looks through the folder; `wordsOf` tells a walk in a few words. A file that cannot be used is renamed, so that it is
 * kept and does not stand in the way; one of a newer program stays.
 */
export function keptWalks(
	folder: string,
	wordsOf: (walk: AnswersFile, file: string) => string,
	most: number = mostListed,
): KeptWalks {
	const found = namesIn(folder).map((name) => {
		const file = join(folder, name);
		return { file, walk: soundWalk(file) };
	});
	const filesThatAre = (what: string) => found.filter(({ walk }) => walk === what).map(({ file }) => file);
	const walks = found.flatMap(({ file, walk }) => {
		if (typeof walk === "string") return [];
		// Another program may have removed it just now.
		const written = statSync(file, { throwIfNoEntry: false });
		return written ? [{ file, name: nameOf(walk), words: wordsOf(walk, file), writtenAt: written.mtimeMs }] : [];
	});
	walks.sort((one, other) => other.writtenAt - one.writtenAt || (one.file < other.file ? 1 : -1));
	return {
		walks: walks.slice(0, most).map(({ file, name, words }) => ({ file, name, words })),
		setAside: filesThatAre("damaged").flatMap(trySetAside),
		newer: filesThatAre("newer"),
	};
}

/** What a walk is called, on one line; null where it has no name. */
export function nameOf({ name }: AnswersFile): string | null {
	return cleanLine(name ?? "") || null;
}

/** Removes what killed programs left in the folder: half-written files, and locks of walks that nobody has open. */
export function tidyWalks(folder: string): void {
	removeStrays(folder);
	for (const name of namesIn(folder, ".json.lock")) {
		if (holderOf(join(folder, name)) === process.pid) continue;
		// Whoever takes a lock that was left behind can let go of it.
		const lock = lockWalk(join(folder, name.slice(0, -".lock".length)));
		if (typeof lock !== "number") lock.release();
	}
}

/** Names of the files in the folder that may be walks. */
export function namesIn(folder: string, ending: string = ".json"): readonly string[] {
	try {
		return readdirSync(folder)
			.filter((name) => name.endsWith(ending))
			.sort();
	} catch {
		return []; // No folder yet, or none that can be read: then there is nothing to go on with.
	}
}

/** The walk in a file, or why there is none. */
export function soundWalk(file: string): AnswersFile | "damaged" | "newer" | "unreadable" | "sheet" {
	try {
		refusePipe(file);
		const { checked, inSheet } = readWalk(file);
		return inSheet ? "sheet" : (checked.value ?? "damaged");
	} catch (error) {
		if (error instanceof NewerFile) return "newer";
		if (error instanceof BrokenJson) return "damaged";
		if (error instanceof UnreadableFile) return "unreadable";
		throw error;
	}
}

function trySetAside(file: string): readonly string[] {
	try {
		return [setAside(file)];
	} catch (error) {
		if (error instanceof UnwritableFile) return [];
		throw error;
	}
}
