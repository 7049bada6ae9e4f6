import { homedir } from "node:os";
import { isAbsolute, join } from "node:path";

/**
 * The folder that walks are kept in: $XDG_STATE_HOME/boardwalk/walks, by default below ~/.local/state (XDG Base
 * Directory Specification 0.8; relative values are ignored, as it asks); on Windows below LOCALAPPDATA.
 *
 * @returns null when there is no home to put it in
 */
export function walksFolder(environment: NodeJS.ProcessEnv, platform: string): string | null {
	const base = ownFolder(environment, platform, "XDG_STATE_HOME", [".local", "state"]);
	return base && join(base, "walks");
}

/** The folder of the settings: $XDG_CONFIG_HOME/boardwalk, by default ~/.config/boardwalk; as walksFolder. */
export function settingsFolder(environment: NodeJS.ProcessEnv, platform: string): string | null {
	return ownFolder(environment, platform, "XDG_CONFIG_HOME", [".config"]);
}

/** The folder of the person's own parts: $XDG_DATA_HOME/boardwalk, by default ~/.local/share/boardwalk; as walksFolder. */
export function dataFolder(environment: NodeJS.ProcessEnv, platform: string): string | null {
	return ownFolder(environment, platform, "XDG_DATA_HOME", [".local", "share"]);
}

function ownFolder(
	environment: NodeJS.ProcessEnv,
	platform: string,
	variable: string,
	below: readonly string[],
): string | null {
	const absolute = (path: string | undefined) => (path && isAbsolute(path) ? path : undefined);
	const given = absolute(environment[platform === "win32" ? "LOCALAPPDATA" : variable]);
	if (given) return join(given, "boardwalk");
	const home = absolute(environment["HOME"]) ?? absolute(safeHome());
	return home ? join(home, ...below, "boardwalk") : null;
}

function safeHome(): string | undefined {
	try {
		return homedir();
	} catch {
		return undefined;
	}
}
