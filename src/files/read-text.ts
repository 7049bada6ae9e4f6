import { readFileSync, statSync } from "node:fs";

/** A file could not be read; `reason` is a phrase for a person. */
export class UnreadableFile extends Error {
	readonly path: string;
	readonly reason: string;

	constructor(path: string, reason: string) {
		super(`${path}: ${reason}`);
		this.path = path;
		this.reason = reason;
	}
}

/** No file of parts or answers is anywhere near this large. */
const mostBytes = 64 * 1024 * 1024;

/**
 * The text of a file in UTF-8, or UTF-16 where a byte order mark says so.
 *
 * @throws UnreadableFile when there is no such file, it is a folder, too large, not allowed, or no text
 */
export function readText(path: string): string {
	try {
		const found = statSync(path);
		if (found.isDirectory()) throw new UnreadableFile(path, "this is a folder, and a file was expected");
		if (found.size > mostBytes)
			throw new UnreadableFile(path, `the file is larger than ${mostBytes / 1024 / 1024} MB, so it was not read`);
		return decoded(readFileSync(path), path);
	} catch (error) {
		if (error instanceof UnreadableFile) throw error;
		throw new UnreadableFile(path, reasonOf(error));
	}
}

function decoded(bytes: Uint8Array, path: string): string {
	const encoding = bytes[0] === 0xff && bytes[1] === 0xfe ? "utf-16le" : "utf-8";
	try {
		return new TextDecoder(encoding, { fatal: true }).decode(bytes);
	} catch {
		throw new UnreadableFile(path, "this is no text in UTF-8");
	}
}

/** Why the system refused, in words. */
export function reasonOf(error: unknown): string {
	const code = (error as { code?: string } | null)?.code ?? "";
	return systemWords[code] ?? (error instanceof Error ? error.message : String(error));
}

const systemWords: Readonly<Record<string, string>> = {
	ENOENT: "there is no such file or folder",
	EACCES: "this user is not allowed to",
	EPERM: "this user is not allowed to",
	EISDIR: "this is a folder",
	ENOTDIR: "part of the path is a file, not a folder",
	ENOSPC: "the disk is full",
	EDQUOT: "the disk space of this user is used up",
	EROFS: "this disk can only be read",
	EEXIST: "it exists already",
	ENAMETOOLONG: "the name is too long",
	ELOOP: "the links lead in a circle",
};
