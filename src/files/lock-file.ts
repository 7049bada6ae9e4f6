import { linkSync, rmSync, writeFileSync } from "node:fs";
import { dirname } from "node:path";
import { holderOf, isAlive } from "./lock-holder.ts";
import { makeFolder } from "./make-folder.ts";

// A lock is a file with the number of the process that has it. It appears with its holder in it, in one step, since an
// empty one would look as if nobody held it: it is written under a name of its own and then linked.

/**
 * Writes what tryTake links to, and makes the folder if there is none yet; to be removed when the lock was taken or not.
 *
 * @returns its path
 * @throws the system's error
 */
export function prepareLock(lock: string): string {
	const mine = `${lock}.${process.pid}`;
	makeFolder(dirname(lock), 0o700);
	try {
		writeFileSync(mine, String(process.pid), { mode: 0o600 });
	} catch (error) {
		// On a full disk an empty file is made, and cannot be filled.
		rmSync(mine, { force: true });
		throw error;
	}
	return mine;
}

/**
 * Tries once to take a lock. One that a killed program left is removed, so that the next try can take it.
 *
 * @param mine from prepareLock
 * @returns whether it was taken, or the number of the living process that has it; this process counts as none
 * @throws the system's error
 */
export function tryTake(lock: string, mine: string): boolean | number {
	if (linked(mine, lock)) return true;
	const holder = holderOf(lock);
	if (holder !== null && !isLeftBehind(holder)) return holder;
	removeLeftBehind(lock, mine);
	return false;
}

/** Lets go of a lock, unless another program has taken it over. */
export function letGo(lock: string): void {
	if (holderOf(lock) === process.pid) rmSync(lock, { force: true });
}

function isLeftBehind(holder: number | null): boolean {
	return holder === null || holder === process.pid || !isAlive(holder);
}

/**
 * Removes a lock that was left behind. Several programs may come upon it at once, and whoever is late must not remove the
 * lock that the first has taken meanwhile: so they take turns.
 */
function removeLeftBehind(lock: string, mine: string): void {
	const turn = `${lock}.turn`;
	if (!linked(mine, turn)) {
		if (isLeftBehind(holderOf(turn))) rmSync(turn, { force: true });
		return;
	}
	try {
		if (isLeftBehind(holderOf(lock))) rmSync(lock, { force: true });
	} finally {
		rmSync(turn, { force: true });
	}
}

function linked(mine: string, lock: string): boolean {
	try {
		linkSync(mine, lock);
		return true;
	} catch (error) {
		if ((error as { code?: string }).code === "EEXIST") return false;
	}
	try {
		// Some file systems, such as those of USB sticks, know no links.
		writeFileSync(lock, String(process.pid), { flag: "wx", mode: 0o600 });
		return true;
	} catch (error) {
		if ((error as { code?: string }).code === "EEXIST") return false;
		throw error;
	}
}
