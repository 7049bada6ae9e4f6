import { randomBytes } from "node:crypto";
import { closeSync, fsyncSync, linkSync, mkdirSync, openSync, renameSync, rmSync, writeSync } from "node:fs";
import { dirname, resolve } from "node:path";
import { reasonOf } from "./read-text.ts";

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
 * Writes a file whole or not at all: into a new file beside it, flushed to the disk, then put in place in one step.
 *
 * @returns the full path
 * @throws UnwritableFile; `exists` tells that a file is there and was kept
 */
export function writeFile(path: string, text: string, { replace, ownerOnly, makeFolder }: WriteOptions): string {
	const target = resolve(path);
	const beside = `${target}.${randomBytes(6).toString("hex")}.tmp`;
	let made = false;
	try {
		if (makeFolder) mkdirSync(dirname(target), { recursive: true, mode: ownerOnly ? 0o700 : 0o777 });
		// "wx" follows no link and overwrites nothing.
		const file = openSync(beside, "wx", ownerOnly ? 0o600 : 0o666);
		made = true;
		try {
			writeWhole(file, Buffer.from(text, "utf8"));
			fsyncSync(file);
		} finally {
			closeSync(file);
		}
		if (replace) renameSync(beside, target);
		else putInPlace(beside, target);
		return target;
	} catch (error) {
		const exists = (error as { code?: string }).code === "EEXIST";
		throw new UnwritableFile(target, reasonOf(error), exists);
	} finally {
		if (made) rmSync(beside, { force: true });
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
