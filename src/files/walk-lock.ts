import { closeSync, mkdirSync, openSync, readFileSync, rmSync, writeSync } from "node:fs";
import { dirname } from "node:path";

/** A walk held by this program until it is let go of. */
export interface WalkLock {
	readonly release: () => void;
}

/**
 * Takes a walk for this program, so that two cannot write into one file. Makes the folder if there is none yet.
 *
 * @returns the lock, or the number of the process that has the walk open
 */
export function lockWalk(file: string): WalkLock | number {
	const path = `${file}.lock`;
	for (let attempt = 0; attempt < 2; attempt++) {
		if (tryCreate(path)) return { release: () => release(path) };
		const holder = holderOf(path);
		if (holder !== null && holder !== process.pid && isAlive(holder)) return holder;
		tryRemove(path); // Left behind by a program that was killed.
	}
	// Where no lock can be made (a folder that can only be read) there is nothing to guard.
	return { release: () => {} };
}

/** Lets go of a lock, unless another program has taken it over. */
function release(path: string): void {
	if (holderOf(path) === process.pid) tryRemove(path);
}

function tryCreate(path: string): boolean {
	try {
		mkdirSync(dirname(path), { recursive: true, mode: 0o700 });
		const lock = openSync(path, "wx", 0o600);
		writeSync(lock, String(process.pid));
		closeSync(lock);
		return true;
	} catch {
		return false;
	}
}

function tryRemove(path: string): void {
	try {
		rmSync(path, { force: true });
	} catch {
		// It cannot be guarded then, and writing will tell why.
	}
}

function holderOf(path: string): number | null {
	try {
		const pid = Number(readFileSync(path, "utf8"));
		return Number.isInteger(pid) && pid > 0 ? pid : null;
	} catch {
		return null;
	}
}

function isAlive(pid: number): boolean {
	try {
		process.kill(pid, 0);
		return true;
	} catch (error) {
		return (error as { code?: string }).code === "EPERM";
	}
}
