import { existsSync, linkSync, readdirSync, realpathSync, renameSync, rmSync } from "node:fs";
import { basename, dirname, join } from "node:path";
import type { AnswersFile } from "../parts/answers-file.ts";
import { reasonOf } from "./read-text.ts";
import { newWalkFile } from "./saved-walks.ts";
import { lockWalk } from "./walk-lock.ts";
import { whileHeld } from "./while-held.ts";
import { UnwritableFile, writeFile } from "./write-file.ts";

/** What is done with kept walks as files: copies, changes, removing and bringing back. */

/**
 * Writes a walk into a new file of the folder, which gets the day's next free name.
 *
 * @returns the file
 * @throws UnwritableFile
 */
export function keepCopy(folder: string, walk: AnswersFile, asOf: string): string {
	for (let attempt = 0; ; attempt++) {
		try {
			return write(newWalkFile(folder, asOf), walk, false);
		} catch (error) {
			// Another program took the name at the same time.
			if (!(error instanceof UnwritableFile && error.exists) || attempt > 20) throw error;
		}
	}
}

/**
 * Writes a walk to the file that a person named; the folder must be there.
 *
 * @returns the full path, or null where a file is there and is not to be replaced
 * @throws UnwritableFile, also where another program has that walk open
 */
export function keepWalkAt(file: string, walk: AnswersFile, replace: boolean): string | null {
	if (existsSync(file) && !replace) return null;
	const text = `${JSON.stringify(walk, null, "\t")}\n`;
	const work = () => writeFile(file, text, { replace, ownerOnly: true });
	try {
		// A lock would make the folder.
		return existsSync(file) ? whileMine(file, work) : work();
	} catch (error) {
		if (error instanceof UnwritableFile && error.exists) return null;
		throw error;
	}
}

/**
 * Writes a changed walk in place of the one in a file.
 *
 * @throws UnwritableFile, also where another program has the walk open
 */
export function changeWalk(file: string, change: () => AnswersFile): void {
	whileMine(file, () => write(file, change(), true));
}

/**
 * Takes a walk out of the list: its file stays in the folder under another name, until takeWalkBack.
 *
 * @returns where it now lies
 * @throws UnwritableFile, also where another program has the walk open
 */
export function removeWalk(file: string): string {
	const folder = dirname(file);
	return whileHeld(join(folder, "removing"), () =>
		whileMine(file, () => {
			const aside = `${file}.removed-${Math.max(0, ...removedIn(folder).map(({ number }) => number)) + 1}`;
			return moved(file, aside);
		}),
	);
}

/**
 * Brings back the walk that was removed last, under another name where its own was taken meanwhile.
 *
 * @returns its file, or null where none was removed
 * @throws UnwritableFile
 */
export function takeWalkBack(folder: string): string | null {
	if (removedIn(folder).length === 0) return null;
	return whileHeld(join(folder, "removing"), () => {
		const [last] = removedIn(folder).toSorted((one, other) => other.number - one.number);
		if (!last) return null;
		for (let number = 1; number < 1000; number++) {
			const target = join(folder, `${last.stem}${number > 1 ? `-${number}` : ""}.json`);
			if (!existsSync(target)) return moved(join(folder, last.name), target);
		}
		throw new UnwritableFile(join(folder, last.name), "there is no free name for it");
	});
}

/** Whether a file lies in the folder itself; links on the way to the folder do not matter. */
export function liesIn(folder: string, file: string): boolean {
	try {
		return realpathSync(dirname(file)) === realpathSync(folder);
	} catch {
		return false;
	}
}

interface Removed {
	readonly name: string;
	readonly stem: string;
	/** The later it was removed the higher. */
	readonly number: number;
}

function removedIn(folder: string): readonly Removed[] {
	let names: readonly string[] = [];
	try {
		names = readdirSync(folder);
	} catch {
		return []; // Where there is no folder nothing was removed from it.
	}
	return names.flatMap((name) => {
		const [, stem, number] = /^(.+)\.json\.removed-([1-9]\d{0,8})$/.exec(name) ?? [];
		return stem === undefined ? [] : [{ name, stem: basename(stem), number: Number(number) }];
	});
}

function whileMine<T>(file: string, work: () => T): T {
	const lock = lockWalk(file);
	if (typeof lock === "number") throw new UnwritableFile(file, `this walk is open in another window (process ${lock})`);
	try {
		return work();
	} finally {
		lock.release();
	}
}

/** Renames a file and replaces none. */
function moved(from: string, to: string): string {
	try {
		try {
			linkSync(from, to);
			rmSync(from);
		} catch (error) {
			const { code } = error as { code?: string };
			// Some file systems, such as those of USB sticks, know no links.
			if (!["EPERM", "ENOTSUP", "EOPNOTSUPP", "ENOSYS"].includes(code ?? "") || existsSync(to)) throw error;
			renameSync(from, to);
		}
		return to;
	} catch (error) {
		throw new UnwritableFile(from, reasonOf(error));
	}
}

function write(file: string, walk: AnswersFile, replace: boolean): string {
	return writeFile(file, `${JSON.stringify(walk, null, "\t")}\n`, { replace, ownerOnly: true, makeFolder: true });
}
