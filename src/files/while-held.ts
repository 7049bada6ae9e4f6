import { linkSync, mkdirSync, renameSync, rmSync, writeFileSync } from "node:fs";
import { dirname } from "node:path";
import { holderOf, isAlive } from "./lock-holder.ts";
import { UnwritableFile } from "./write-file.ts";

/** Another program has a file for some milliseconds only; after so long something is wrong. */
const mostWaitMs = 10_000;

/**
 * Does some work on a file while no other process of this program does any on it. Makes the folder if there is none
 * yet. Unlike a walk, which is held for as long as it is open, the file is waited for.
 *
 * @throws UnwritableFile when another process does not let go of it, and whatever the work throws
 */
export function whileHeld<T>(file: string, work: () => T): T {
	const lock = `${file}.lock`;
	const mine = `${lock}.${process.pid}`;
	const end = Date.now() + mostWaitMs;
	try {
		mkdirSync(dirname(file), { recursive: true, mode: 0o700 });
		// The lock appears with its holder in it, in one step: an empty one would look as if nobody held it.
		writeFileSync(mine, String(process.pid), { mode: 0o600 });
	} catch {
		return work(); // Where no lock can be made nothing can be written either, and writing tells why.
	}
	try {
		while (!take(mine, lock)) {
			if (Date.now() > end) throw new UnwritableFile(file, "another window of this program is writing it");
			Atomics.wait(new Int32Array(new SharedArrayBuffer(4)), 0, 0, 5 + Math.floor(Math.random() * 20));
		}
		try {
			return work();
		} finally {
			if (holderOf(lock) === process.pid) rmSync(lock, { force: true });
		}
	} finally {
		rmSync(mine, { force: true });
	}
}

function take(mine: string, lock: string): boolean {
	try {
		linkSync(mine, lock);
		return true;
	} catch (error) {
		// Some file systems, such as those of USB sticks, know no links; what is written is then guarded by its bytes alone.
		if ((error as { code?: string }).code !== "EEXIST") return true;
	}
	const holder = holderOf(lock);
	if (holder !== null && (holder === process.pid || !isAlive(holder))) takeAway(lock, holder, mine);
	return false;
}

/** Removes the lock of a program that was killed, and only that one: another may have done so already. */
function takeAway(lock: string, dead: number, mine: string): void {
	const aside = `${mine}.old`;
	try {
		renameSync(lock, aside);
		if (holderOf(aside) !== dead) linkSync(aside, lock);
	} catch {
		// Gone already, or taken anew: then it is somebody's turn.
	}
	rmSync(aside, { force: true });
}
