import { linkSync, mkdirSync, rmSync, writeFileSync } from "node:fs";
import { dirname } from "node:path";
import { holderOf, isAlive } from "./lock-holder.ts";

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
	const mine = `${path}.${process.pid}`;
	try {
		mkdirSync(dirname(path), { recursive: true, mode: 0o700 });
		// The lock appears with its holder in it, in one step: an empty one would look as if nobody held it.
		writeFileSync(mine, String(process.pid), { mode: 0o600 });
		return linked(mine, path);
	} catch {
		return false;
	} finally {
		tryRemove(mine);
	}
}

function linked(mine: string, path: string): boolean {
	try {
		linkSync(mine, path);
		return true;
	} catch (error) {
		if ((error as { code?: string }).code === "EEXIST") return false;
		// Some file systems, such as those of USB sticks, know no links.
		writeFileSync(path, String(process.pid), { flag: "wx", mode: 0o600 });
		return true;
	}
}

function tryRemove(path: string): void {
	try {
		rmSync(path, { force: true });
	} catch {
		// It cannot be guarded then, and writing will tell why.
	}
}
