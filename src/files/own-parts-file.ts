import { existsSync, readFileSync, rmSync } from "node:fs";
import { join } from "node:path";
import type { OwnPart } from "../parts/answers-file.ts";
import type { Fault } from "../parts/check-json.ts";
import { checkParts } from "../parts/check-parts.ts";
import type { PartsFile } from "../parts/market.ts";
import { addPart, noParts, partsIn, removePart } from "./own-parts.ts";
import { BrokenJson, parseJson } from "./read-json.ts";
import { decodeText, reasonOf, refusePipe, UnreadableFile } from "./read-text.ts";
import { setAside } from "./set-aside.ts";
import { soundParts } from "./sound-parts.ts";
import { whileHeld } from "./while-held.ts";
import { UnwritableFile, writeFile } from "./write-file.ts";

/** A parts file that holds something no part can have. It is kept as it is. */
export class FaultyParts extends Error {
	readonly path: string;
	readonly faults: readonly Fault[];

	constructor(path: string, faults: readonly Fault[]) {
		super(`${path}: ${faults[0]?.path ?? ""}: ${faults[0]?.expected ?? "something in it cannot be"}`);
		this.path = path;
		this.faults = faults;
	}
}

export interface OwnPartsOptions {
	/** Of a faulty file take the sound parts; a change then sets the file aside before it writes. */
	readonly soundOnly?: boolean;
}

/** The person's own parts, and why some of them were left out. */
export interface OwnPartsRead {
	readonly path: string;
	readonly file: PartsFile;
	/** Only with `soundOnly`: faults for which parts, or with an empty path the whole file, were left out. */
	readonly leftOut: readonly Fault[];
}

/** The file of own parts in the data folder. */
export function ownPartsPath(folder: string): string {
	return join(folder, "parts.json");
}

/**
 * The own parts kept in a folder (see dataFolder); none where there is no file yet.
 *
 * @throws UnreadableFile
 * @throws BrokenJson, FaultyParts unless `soundOnly` is set
 */
export function readOwnParts(folder: string, options: OwnPartsOptions = {}): OwnPartsRead {
	return readPartsAt(ownPartsPath(folder), options).read;
}

/**
 * Reads the own parts, changes them, and writes them: whole or not at all, readable by the owner only. No other program
 * that does the same can come between, and a file that something else changed meanwhile is never written over.
 *
 * @param change gives the parts to keep and whatever the caller wants to know; it may be called again
 * @throws UnwritableFile, UnreadableFile
 * @throws FaultyParts when the change would make a file that cannot be read back, or as readOwnParts does
 * @throws BrokenJson as readOwnParts does
 */
export function changeOwnParts<T>(
	folder: string,
	change: (parts: PartsFile) => { readonly file: PartsFile; readonly result: T },
	options: OwnPartsOptions = {},
): { readonly result: T; readonly setAside: string | null } {
	const path = ownPartsPath(folder);
	return whileHeld(path, () => {
		for (let attempt = 0; attempt < 5; attempt++) {
			const { read, bytes } = readPartsAt(path, options);
			const { file, result } = change(read.file);
			const { faults } = checkParts(file);
			if (faults.length > 0) throw new FaultyParts(path, faults);
			if (!sameBytes(bytes, bytesAt(path))) continue;
			const aside = read.leftOut.length > 0 ? setAside(path) : null;
			writeParts(path, file);
			return { result, setAside: aside };
		}
		throw new UnwritableFile(path, "another program keeps changing it");
	});
}

/** Takes a part out of the file and keeps it beside, so that takeBack can bring it back until the next is removed. */
export function removeOwnPart(folder: string, own: OwnPart, options: OwnPartsOptions = {}): void {
	const removed = removedPath(folder);
	changeOwnParts(
		folder,
		(parts) => {
			if (!partsIn(parts).some(({ kind, part }) => kind === own.kind && part.id === own.part.id))
				return { file: parts, result: null };
			// First into the second file: whatever happens next, the part is in one of the two.
			if (existsSync(removed) && !isSound(removed)) setAside(removed);
			writeParts(removed, addPart(noParts, own).file);
			return { file: removePart(parts, own), result: null };
		},
		options,
	);
}

/**
 * Brings the part removed last back, under a new id where its own was taken meanwhile; null where there is none.
 *
 * @throws as changeOwnParts does
 */
export function takeBack(folder: string, options: OwnPartsOptions = {}): OwnPart | null {
	const path = removedPath(folder);
	const [own] = partsIn(readPartsAt(path, {}).read.file);
	if (!own) return null;
	const { result } = changeOwnParts(
		folder,
		(parts) => {
			const { file, added } = addPart(parts, own);
			return { file, result: added };
		},
		options,
	);
	rmSync(path, { force: true });
	return result;
}

function removedPath(folder: string): string {
	return join(folder, "removed-parts.json");
}

function isSound(path: string): boolean {
	try {
		readPartsAt(path, {});
		return true;
	} catch {
		return false;
	}
}

function writeParts(path: string, file: PartsFile): void {
	writeFile(path, `${JSON.stringify(file, null, "\t")}\n`, { replace: true, ownerOnly: true, makeFolder: true });
}

function readPartsAt(
	path: string,
	{ soundOnly = false }: OwnPartsOptions,
): { readonly read: OwnPartsRead; readonly bytes: Buffer | null } {
	const bytes = bytesAt(path);
	if (bytes === null) return { read: { path, file: noParts, leftOut: [] }, bytes };
	const whole = (expected: string) => ({ read: { path, file: noParts, leftOut: [{ path: "", expected }] }, bytes });
	try {
		const { file, faults } = soundParts(parseJson(decodeText(bytes, path), path));
		if (faults.length > 0 && !soundOnly) throw new FaultyParts(path, faults);
		return file ? { read: { path, file, leftOut: faults }, bytes } : whole("a file of parts");
	} catch (error) {
		if (soundOnly && (error instanceof BrokenJson || error instanceof UnreadableFile)) return whole("sound JSON");
		throw error;
	}
}

function bytesAt(path: string): Buffer | null {
	refusePipe(path);
	try {
		return readFileSync(path);
	} catch (error) {
		if ((error as { code?: string }).code === "ENOENT") return null;
		throw new UnreadableFile(path, reasonOf(error));
	}
}

function sameBytes(one: Buffer | null, other: Buffer | null): boolean {
	return one === null || other === null ? one === other : one.equals(other);
}
