import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, vi } from "vitest";
import { readArguments } from "../../src/cli/arguments.ts";
import { openSession, type WalkSession } from "../../src/cli/walk-session.ts";
import type { WalkEvent } from "../../src/walk/walk-event.ts";

/**
 * Sessions in a home folder of their own, new and empty for each test of the file; all of them are closed behind it.
 *
 * @param today ISO date
 */
export function sessionsAtHome(today: string) {
	let home = "";
	const open: WalkSession[] = [];
	beforeEach(() => {
		home = mkdtempSync(join(tmpdir(), "session-home-"));
		vi.stubEnv("HOME", home);
		for (const name of ["XDG_STATE_HOME", "XDG_CONFIG_HOME", "XDG_DATA_HOME", "LOCALAPPDATA"])
			vi.stubEnv(name, undefined);
	});
	afterEach(() => {
		for (const session of open.splice(0)) session.close();
		vi.unstubAllEnvs();
		rmSync(home, { recursive: true, force: true });
	});
	return {
		/** A path inside that home. */
		path: (...names: readonly string[]) => join(home, ...names),
		start(...words: readonly string[]): WalkSession {
			const session = openSession(readArguments(words), { out: () => {}, err: () => {} }, today);
			open.push(session);
			return session;
		},
	};
}

/** Lets the events happen one by one. */
export function tell(session: WalkSession, ...events: readonly WalkEvent[]): WalkSession {
	for (const event of events) session.dispatch(event);
	return session;
}
