import { existsSync, readdirSync, renameSync, statSync } from "node:fs";
import { join } from "node:path";
import type { AnswersFile } from "../parts/answers-file.ts";
import { readAnswers } from "./read-answers.ts";
import { BrokenJson } from "./read-json.ts";
import { UnreadableFile } from "./read-text.ts";

/** A walk kept in the folder. */
export interface KeptWalk {
	readonly file: string;
	readonly words: string;
}

/** Walks in the folder, the last written first, and damaged files that were set aside. */
export interface KeptWalks {
	readonly walks: readonly KeptWalk[];
	/** Where damaged files now lie. */
	readonly setAside: readonly string[];
}

/** More are not listed; the newest are what a person looks for. */
const mostListed = 20;

/** A file name in the folder that no walk has yet: walk-2026-11-24.json, walk-2026-11-24-2.json. */
export function newWalkFile(folder: string, asOf: string): string {
	for (let number = 1; ; number++) {
		const path = join(folder, `walk-${asOf}${number > 1 ? `-${number}` : ""}.json`);
		if (!existsSync(path)) return path;
	}
}

/**
 * Looks through the folder; `wordsOf` tells a walk in a few words. A file that cannot be used is renamed, so that it is
 * kept and does not stand in the way.
 */
export function keptWalks(folder: string, wordsOf: (walk: AnswersFile) => string): KeptWalks {
	const walks: (KeptWalk & { readonly writtenAt: number })[] = [];
	const setAside: string[] = [];
	for (const name of namesIn(folder)) {
		const file = join(folder, name);
		const walk = soundWalk(file);
		if (walk === "unreadable") continue;
		if (walk === "damaged") {
			const aside = asideName(file);
			if (tryRename(file, aside)) setAside.push(aside);
			continue;
		}
		walks.push({ file, words: wordsOf(walk), writtenAt: statSync(file).mtimeMs });
	}
	walks.sort((one, other) => other.writtenAt - one.writtenAt || (one.file < other.file ? 1 : -1));
	return { walks: walks.slice(0, mostListed).map(({ file, words }) => ({ file, words })), setAside };
}

function namesIn(folder: string): readonly string[] {
	try {
		return readdirSync(folder)
			.filter((name) => name.endsWith(".json"))
			.sort();
	} catch {
		return []; // No folder yet, or none that can be read: then there is nothing to go on with.
	}
}

function soundWalk(file: string): AnswersFile | "damaged" | "unreadable" {
	try {
		return readAnswers(file).value ?? "damaged";
	} catch (error) {
		if (error instanceof BrokenJson) return "damaged";
		if (error instanceof UnreadableFile) return "unreadable";
		throw error;
	}
}

function asideName(file: string): string {
	for (let number = 1; ; number++) {
		const aside = `${file}.damaged${number > 1 ? `-${number}` : ""}`;
		if (!existsSync(aside)) return aside;
	}
}

function tryRename(from: string, to: string): boolean {
	try {
		renameSync(from, to);
		return true;
	} catch {
		return false;
	}
}
