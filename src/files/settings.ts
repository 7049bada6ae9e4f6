import { chmodSync, lstatSync, readdirSync, rmSync } from "node:fs";
import { join } from "node:path";
import Conf from "conf";
import { defaultSettings, type WalkSettings } from "../walk/saved-settings.ts";
import { makeFolder } from "./make-folder.ts";
import { reasonOf, refusePipe } from "./read-text.ts";
import { setAside } from "./set-aside.ts";
import { removeStrays } from "./stray-files.ts";
import { whileHeld } from "./while-held.ts";
import { UnwritableFile } from "./write-file.ts";

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

/**
 * Opens the settings in a folder. A damaged file is set aside and the defaults hold; one that may not be read stays.
 * Nothing is made for looking, and nothing here throws.
 */
export function openSettings(folder: string | null): KeptSettings {
	if (folder === null)
		return { settings: defaultSettings, warning: null, keep: () => "there is no home folder to keep settings in" };
	const path = settingsPath(folder);
	const usual = (warning: string): KeptSettings => ({ settings: defaultSettings, warning, keep: () => warning });
	let stored: Readonly<Record<string, unknown>> = {};
	try {
		// Conf would make the folder, open to others, and below /proc it would try to do so for ever.
		if (isThere(path)) stored = open(folder).store;
	} catch (error) {
		if (notAllowed(error)) return usual(`${path} cannot be read (${reasonOf(error)}); the usual settings hold.`);
		try {
			const aside = setAside(path);
			toldOf.set(folder, `The settings were damaged; the file lies in ${aside}, and the usual settings hold.`);
		} catch {
			return usual(`${path} is damaged and cannot be set aside; the usual settings hold.`);
		}
	}
	return {
		settings: readSettings(stored),
		warning: toldOf.get(folder) ?? null,
		keep: (settings) => {
			try {
				makeFolder(folder, 0o700);
				whileHeld(path, () => {
					removeStrays(folder);
					removeHalfWritten(folder);
					outsideSnap(() => open(folder).set({ ...settings }));
					chmodSync(path, 0o600);
				});
				return null;
			} catch (error) {
				return error instanceof UnwritableFile ? error.message : `${path}: ${reasonOf(error)}`;
			}
		},
	};
}

/** The settings as Conf keeps them. */
function open(folder: string): Conf<Record<string, unknown>> {
	refusePipe(settingsPath(folder));
	return new Conf({ cwd: folder, configName: "settings", configFileMode: 0o600 });
}

function notAllowed(error: unknown): boolean {
	return ["EACCES", "EPERM", "EIO"].includes((error as { code?: string }).code ?? "");
}

/** Whether anything stands there, be it a link that leads nowhere. */
function isThere(path: string): boolean {
	try {
		return lstatSync(path, { throwIfNoEntry: false }) !== undefined;
	} catch {
		return false;
	}
}

/** Removes what Conf left in a program that was killed while it wrote; nobody else writes as long as the file is held. */
function removeHalfWritten(folder: string): void {
	for (const name of readdirSync(folder))
		if (/^settings\.json\.tmp-[0-9a-f]{16}$/.test(name)) rmSync(join(folder, name), { force: true });
}

/** In a terminal that a snap package opened Conf would write over the file itself, which is lost when that is cut short. */
function outsideSnap(write: () => void): void {
	const snap = process.env["SNAP"];
	delete process.env["SNAP"];
	try {
		write();
	} finally {
		if (snap !== undefined) process.env["SNAP"] = snap;
	}
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
