import {
	accessSync,
	closeSync,
	constants,
	fchmodSync,
	fsyncSync,
	linkSync,
	lstatSync,
	openSync,
	renameSync,
	rmSync,
	writeSync,
} from "node:fs";
import { dirname, resolve } from "node:path";
import { makeFolder as makeFolderAt } from "./make-folder.ts";
import { reasonOf } from "./read-text.ts";
import { nameBeside, removeStraysOnce } from "./stray-files.ts";

/** A file could not be written; nothing that was there before is lost. */
export class UnwritableFile extends Error {
	readonly path: string;
	readonly reason: string;
	/** The file exists already and was not to be replaced. */
	readonly exists: boolean;

	constructor(path: string, reason: string, exists = false) {
		super(`${path}: ${reason}`);
		this.path = path;
		this.reason = reason;
		this.exists = exists;
	}
}

export interface WriteOptions {
	/** Whether a file already there may be replaced. */
	readonly replace: boolean;
	/** Readable by the owner only; for answers and settings. */
	readonly ownerOnly?: boolean;
	/** Makes the folder if there is none. */
	readonly makeFolder?: boolean;
}

/**
 * Writes a file whole or not at all: into a new file beside it, flushed to the disk, then put in place in one step. A
 * file that is replaced keeps who may read and write it. What a killed program left half-written beside it is removed.
 *
 * @returns the full path
 * @throws UnwritableFile, also for a file that may only be read; `exists` tells that a file is there and was kept
 */
export function writeFile(path: string, text: string, { replace, ownerOnly, makeFolder }: WriteOptions): string {
	const target = resolve(path);
	const beside = nameBeside(target);
	let made = false;
	try {
		const modeBefore = replace ? writableMode(target) : null;
		if (makeFolder) makeFolderAt(dirname(target), ownerOnly ? 0o700 : 0o777);
		removeStraysOnce(target);
		// "wx" follows no link and overwrites nothing.
		const file = openSync(beside, "wx", ownerOnly ? 0o600 : 0o666);
		made = true;
		try {
			if (modeBefore !== null) keepMode(file, modeBefore);
			writeWhole(file, Buffer.from(text, "utf8"));
			fsyncSync(file);
		} finally {
			closeSync(file);
		}
		if (replace) renameSync(beside, target);
		else putInPlace(beside, target);
		return target;
	} catch (error) {
		if (error instanceof UnwritableFile) throw error;
		const exists = (error as { code?: string }).code === "EEXIST";
		throw new UnwritableFile(target, reasonOf(error), exists);
	} finally {
		if (made) rmSync(beside, { force: true });
	}
}

/**
 * Who may read and write the file that is to be replaced; null where there is none. Renaming would get round a file's own
 * protection, so that is looked at here.
 *
 * @throws UnwritableFile for a file that nobody or not this user may write
 */
function writableMode(target: string): number | null {
	const found = lstatSync(target, { throwIfNoEntry: false });
	if (!found?.isFile()) return null;
	const isProtected = (found.mode & 0o222) === 0;
	if (isProtected) throw new UnwritableFile(target, "it is protected against writing");
	accessSync(target, constants.W_OK);
	return found.mode & 0o777;
}

/** Some file systems, such as those of USB sticks, know no modes. */
function keepMode(file: number, mode: number): void {
	try {
		fchmodSync(file, mode);
	} catch (error) {
		if (!["EPERM", "ENOTSUP", "EOPNOTSUPP", "ENOSYS"].includes((error as { code?: string }).code ?? "")) throw error;
	}
}

/** Fails where the target is there already. Some file systems, such as those of USB sticks, know no links. */
function putInPlace(beside: string, target: string): void {
	try {
		linkSync(beside, target);
	} catch (error) {
		if (!["EPERM", "ENOTSUP", "EOPNOTSUPP", "ENOSYS"].includes((error as { code?: string }).code ?? "")) throw error;
		closeSync(openSync(target, "wx"));
		renameSync(beside, target);
	}
}

/** A write may take only part of the bytes, on a disk that is nearly full. */
function writeWhole(file: number, bytes: Buffer): void {
	for (let done = 0; done < bytes.length; ) done += writeSync(file, bytes, done);
}
