import { rmSync } from "node:fs";
import { letGo, prepareLock, tryTake } from "./lock-file.ts";
import { pause } from "./pause.ts";
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
	let mine: string;
	try {
		mine = prepareLock(lock);
	} catch {
		return work(); // Where no lock can be made nothing can be written either, and writing tells why.
	}
	try {
		waitFor(file, lock, mine);
	} finally {
		rmSync(mine, { force: true });
	}
	try {
		return work();
	} finally {
		letGo(lock);
	}
}

function waitFor(file: string, lock: string, mine: string): void {
	// Not by the clock of the day, which may be set while we wait.
	const end = performance.now() + mostWaitMs;
	while (tryTake(lock, mine) !== true) {
		if (performance.now() > end) throw new UnwritableFile(file, "another window of this program is writing it");
		pause(5 + Math.floor(Math.random() * 20));
	}
}
