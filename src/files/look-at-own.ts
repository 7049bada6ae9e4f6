import { accessSync, constants, readdirSync, statSync } from "node:fs";
import { dirname, join } from "node:path";
import { defaultSettings, type WalkSettings } from "../walk/saved-settings.ts";
import { partsIn } from "./own-parts.ts";
import { readOwnParts } from "./own-parts-file.ts";
import { BrokenJson, readJson } from "./read-json.ts";
import { UnreadableFile } from "./read-text.ts";
import { namesIn, soundWalk } from "./saved-walks.ts";
import { readSettings, settingsPath } from "./settings.ts";

// All here only looks: nothing is made, mended or set aside.

/** A folder of ours as it is. */
export interface FolderLook {
	/** "no-folder": a file stands there, or above it. */
	readonly state: "there" | "not-yet" | "no-folder";
	/** Whether files can be written in it, or the folder can be made. */
	readonly canWrite: boolean;
	/** Files in it that others on this machine may read; null where the system does not tell. */
	readonly openToOthers: readonly string[] | null;
}

/** Looks at a folder that may not be there yet. */
export function lookAtFolder(folder: string, platform: string): FolderLook {
	const found = kindOf(folder);
	if (found === "file") return { state: "no-folder", canWrite: false, openToOthers: [] };
	if (found === "folder")
		return {
			state: "there",
			canWrite: canWriteIn(folder),
			openToOthers: platform === "win32" ? null : openFiles(folder),
		};
	let above = dirname(folder);
	while (kindOf(above) === "nothing" && dirname(above) !== above) above = dirname(above);
	return kindOf(above) === "folder"
		? { state: "not-yet", canWrite: canWriteIn(above), openToOthers: [] }
		: { state: "no-folder", canWrite: false, openToOthers: [] };
}

function kindOf(path: string): "file" | "folder" | "nothing" {
	try {
		return statSync(path).isDirectory() ? "folder" : "file";
	} catch {
		return "nothing";
	}
}

function canWriteIn(folder: string): boolean {
	try {
		accessSync(folder, constants.W_OK | constants.X_OK);
		return true;
	} catch {
		return false;
	}
}

/** In a folder that others cannot enter, no file is open to them. */
function openFiles(folder: string): readonly string[] {
	try {
		if ((statSync(folder).mode & 0o011) === 0) return [];
		return readdirSync(folder, { withFileTypes: true })
			.filter((entry) => entry.isFile())
			.map(({ name }) => join(folder, name))
			.filter((path) => (statSync(path).mode & 0o044) !== 0);
	} catch {
		return [];
	}
}

/** The settings, and whether the file that holds them is damaged; a damaged one counts as none. */
export function lookAtSettings(folder: string | null): {
	readonly settings: WalkSettings;
	readonly isDamaged: boolean;
} {
	const path = folder === null ? null : settingsPath(folder);
	if (path === null || kindOf(path) === "nothing") return { settings: defaultSettings, isDamaged: false };
	try {
		const json = readJson(path);
		if (json !== null && typeof json === "object" && !Array.isArray(json))
			return { settings: readSettings(json as Readonly<Record<string, unknown>>), isDamaged: false };
	} catch (error) {
		if (!(error instanceof BrokenJson || error instanceof UnreadableFile)) throw error;
	}
	return { settings: defaultSettings, isDamaged: true };
}

/** How many kept walks there are, and how many files in their folder cannot be used. */
export interface WalksLook {
	readonly sound: number;
	readonly damaged: number;
	/** Written by a newer program. */
	readonly newer: number;
	readonly unreadable: number;
}

export function lookAtWalks(folder: string): WalksLook {
	const found = namesIn(folder).map((name) => soundWalk(join(folder, name)));
	const count = (what: string) => found.filter((one) => one === what).length;
	return {
		sound: found.filter((one) => typeof one !== "string").length,
		damaged: count("damaged"),
		newer: count("newer"),
		unreadable: count("unreadable"),
	};
}

/** How many parts of their own a person keeps, and what is wrong with the file, in a phrase; null: nothing. */
export function lookAtOwnParts(folder: string): { readonly parts: number; readonly wrong: string | null } {
	try {
		const { file, leftOut } = readOwnParts(folder, { soundOnly: true });
		const faults = leftOut.length;
		const wrong = faults === 0 ? null : faults === 1 ? "one mistake in it" : `${faults} mistakes in it`;
		return { parts: partsIn(file).length, wrong };
	} catch (error) {
		if (error instanceof BrokenJson || error instanceof UnreadableFile) return { parts: 0, wrong: error.reason };
		throw error;
	}
}
