import { existsSync } from "node:fs";
import { homedir } from "node:os";
import { isAbsolute, join } from "node:path";

/**
 * The folder that walks are kept in: $XDG_STATE_HOME/boardwalk/walks, by default below ~/.local/state (XDG Base
 * Directory Specification 0.8; relative values are ignored, as it asks); on Windows below LOCALAPPDATA.
 *
 * @returns null when there is no home to put it in
 */
export function walksFolder(environment: NodeJS.ProcessEnv, platform: string): string | null {
	const absolute = (path: string | undefined) => (path && isAbsolute(path) ? path : undefined);
	const local = platform === "win32" ? absolute(environment["LOCALAPPDATA"]) : absolute(environment["XDG_STATE_HOME"]);
	if (local) return join(local, "boardwalk", "walks");
	const home = absolute(environment["HOME"]) ?? absolute(safeHome());
	return home ? join(home, ".local", "state", "boardwalk", "walks") : null;
}

/** A file name in the folder that no walk has yet: walk-2026-11-24.json, walk-2026-11-24-2.json. */
export function newWalkFile(folder: string, asOf: string): string {
	for (let number = 1; ; number++) {
		const path = join(folder, `walk-${asOf}${number > 1 ? `-${number}` : ""}.json`);
		if (!existsSync(path)) return path;
	}
}

function safeHome(): string | undefined {
	try {
		return homedir();
	} catch {
		return undefined;
	}
}
