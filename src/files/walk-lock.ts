import { rmSync } from "node:fs";
import { letGo, prepareLock, tryTake } from "./lock-file.ts";
import { pause } from "./pause.ts";

/** A walk held by this program until it is let go of. */
export interface WalkLock {
	readonly release: () => void;
}

/** Programs that come upon a lock left behind take turns, which takes some milliseconds. */
const mostAttempts = 50;

/**
 * Takes a walk for this program, so that two cannot write into one file. Makes the folder if there is none yet.
 *
 * @returns the lock, or the number of the process that has the walk open
 */
export function lockWalk(file: string): WalkLock | number {
	const lock = `${file}.lock`;
	let mine: string | null = null;
	try {
		mine = prepareLock(lock);
		for (let attempt = 0; attempt < mostAttempts; attempt++) {
			const taken = tryTake(lock, mine);
			if (typeof taken === "number") return taken;
			if (taken) return { release: () => quietly(() => letGo(lock)) };
			if (attempt > 0) pause(5);
		}
	} catch {
		// Where no lock can be made (a folder that can only be read) there is nothing to guard, and writing will tell why.
	} finally {
		const made = mine;
		if (made !== null) quietly(() => rmSync(made, { force: true }));
	}
	return { release: () => {} };
}

function quietly(work: () => void): void {
	try {
		work();
	} catch {
		// A lock that stays is taken over by the next program.
	}
}
