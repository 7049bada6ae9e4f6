import { chmodSync, existsSync, renameSync } from "node:fs";
import { join } from "node:path";
import Conf from "conf";
import { defaultSettings, type WalkSettings } from "../walk/saved-settings.ts";

/** Settings as they are kept, and a word where something was wrong with them. */
export interface KeptSettings {
	readonly settings: WalkSettings;
	readonly warning: string | null;
	/** Keeps new settings; tells why it could not, or null. */
	readonly keep: (settings: WalkSettings) => string | null;
}

/** What was told of damaged files, by folder: settings are opened more than once, and the word must not be lost. */
const toldOf = new Map<string, string>();

/** The file of the settings in their folder. */
export function settingsPath(folder: string): string {
	return join(folder, "settings.json");
}

/** Opens the settings in a folder. A damaged file is set aside and the defaults hold; nothing here throws. */
export function openSettings(folder: string | null): KeptSettings {
	const unkept = (why: string): KeptSettings => ({ settings: defaultSettings, warning: null, keep: () => why });
	if (folder === null) return unkept("there is no home folder to keep settings in");
	const path = settingsPath(folder);
	let store: Conf<Record<string, unknown>>;
	try {
		store = open(folder);
	} catch (error) {
		if (!existsSync(path)) return unkept(error instanceof Error ? error.message : String(error));
		const aside = `${path}.damaged`;
		try {
			renameSync(path, aside);
			store = open(folder);
			const told = `The settings were damaged; the file lies in ${aside}, and the usual settings hold.`;
			toldOf.set(folder, told);
		} catch {
			return unkept(`${path} is damaged and cannot be set aside`);
		}
	}
	return {
		settings: readSettings(store.store),
		warning: toldOf.get(folder) ?? null,
		keep: (settings) => {
			try {
				store.set({ ...settings });
				chmodSync(path, 0o600);
				return null;
			} catch (error) {
				return error instanceof Error ? error.message : String(error);
			}
		},
	};
}

function open(folder: string): Conf<Record<string, unknown>> {
	return new Conf({ cwd: folder, configName: "settings", configFileMode: 0o600 });
}

/** Values that no setting can have count as the default. */
export function readSettings(stored: Readonly<Record<string, unknown>>): WalkSettings {
	return {
		colour: stored["colour"] === "never" ? "never" : defaultSettings.colour,
		characters: stored["characters"] === "ascii" ? "ascii" : defaultSettings.characters,
		face: stored["face"] === "line-by-line" ? "line-by-line" : defaultSettings.face,
		lengths: stored["lengths"] === "with-inches" ? "with-inches" : defaultSettings.lengths,
		...(typeof stored["helperName"] === "string" ? { helperName: stored["helperName"] } : {}),
	};
}
