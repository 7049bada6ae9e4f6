import { closeSync, openSync, readFileSync, rmSync, writeSync } from "node:fs";

/** A walk held by this program until it is let go of. */
export interface WalkLock {
	readonly release: () => void;
}

/**
 * Takes a walk for this program, so that two cannot write into one file.
 *
 * @returns the lock, or the number of the process that has the walk open
 */
export function lockWalk(file: string): WalkLock | number {
	const path = `${file}.lock`;
	for (let attempt = 0; attempt < 2; attempt++) {
		if (tryCreate(path)) return { release: () => rmSync(path, { force: true }) };
		const holder = holderOf(path);
		if (holder !== null && holder !== process.pid && isAlive(holder)) return holder;
		rmSync(path, { force: true }); // Left behind by a program that was killed.
	}
	// Where no lock can be made (a folder that can only be read) there is nothing to guard.
	return { release: () => {} };
}

function tryCreate(path: string): boolean {
	try {
		const lock = openSync(path, "wx", 0o600);
		writeSync(lock, String(process.pid));
		closeSync(lock);
		return true;
	} catch {
		return false;
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
