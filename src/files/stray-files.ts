import { randomBytes } from "node:crypto";
import { readdirSync, rmSync } from "node:fs";
import { basename, dirname, join } from "node:path";
import { isAlive } from "./lock-holder.ts";

/** A name for what is written before it takes a file's place. It holds this program's number, so that it can be tidied up. */
export function nameBeside(file: string): string {
	return `${file}.${process.pid}-${randomBytes(4).toString("hex")}.tmp`;
}

/** Names that only this program makes: half-written files, and locks that were not in place yet. */
const strayName = /^(.+)\.(?:(\d{1,10})-[0-9a-f]{8}\.tmp|lock\.(\d{1,10}))$/;

/**
 * Removes what programs left in a folder when they were killed while they wrote. What a living program is at work on
 * stays. Nothing here throws.
 *
 * @param of only what stands beside this file; all in the folder where it is not given
 */
export function removeStrays(folder: string, of?: string): void {
	for (const name of namesIn(folder)) {
		const [, file, writer, locker] = strayName.exec(name) ?? [];
		if (file === undefined || (of !== undefined && file !== of)) continue;
		const pid = Number(writer ?? locker);
		if (pid !== process.pid && !isAlive(pid)) tryRemove(join(folder, name));
	}
}

/** Files whose strays were looked for: once a program is enough. */
const lookedAt = new Set<string>();

/** Removes the strays beside a file, the first time that this program writes it. */
export function removeStraysOnce(file: string): void {
	if (lookedAt.has(file)) return;
	lookedAt.add(file);
	removeStrays(dirname(file), basename(file));
}

function namesIn(folder: string): readonly string[] {
	try {
		return readdirSync(folder);
	} catch {
		return []; // A folder that can be written and not listed.
	}
}

function tryRemove(path: string): void {
	try {
		rmSync(path, { force: true });
	} catch {
		// It is no hindrance, only untidy.
	}
}
