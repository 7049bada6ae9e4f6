import { closeSync, openSync, readSync, statSync } from "node:fs";

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

/** A file that can be read and is no text. */
export class NoText extends UnreadableFile {}

/** No file of parts or answers is anywhere near this large. */
const mostBytes = 64 * 1024 * 1024;

export interface TextOptions {
	/**
	 * What bytes that are no UTF count as. Older programs write pages and tables in Windows-1252, which holds all of
	 * Latin-1; JSON is UTF by its standard, so there a guess would only hide a damaged file.
	 */
	readonly fallback?: "windows-1252";
}

/**
 * The text of a file in UTF-8 or UTF-16, with a byte order mark or without.
 *
 * @throws UnreadableFile when there is no such file, it is a folder, too large, not allowed, or no text
 */
export function readText(path: string, options: TextOptions = {}): string {
	return decodeText(readBytes(path), path, options);
}

/**
 * The text of a page or a table: as readText, in Windows-1252 too.
 *
 * @throws UnreadableFile as readText does, and for a file with nothing in it
 */
export function readForeignText(path: string): string {
	const text = readText(path, { fallback: "windows-1252" });
	if (text.trim() === "") throw new UnreadableFile(path, "the file is empty");
	return text;
}

function readBytes(path: string): Uint8Array {
	const tooLarge = () =>
		new UnreadableFile(path, `the file is larger than ${mostBytes / 1024 / 1024} MB, so it was not read`);
	try {
		const found = statSync(path);
		if (found.isDirectory()) throw new UnreadableFile(path, "this is a folder, and a file was expected");
		if (found.size > mostBytes) throw tooLarge();
		const bytes = firstBytes(path, mostBytes + 1);
		if (bytes.length > mostBytes) throw tooLarge();
		return bytes;
	} catch (error) {
		if (error instanceof UnreadableFile) throw error;
		throw new UnreadableFile(path, reasonOf(error));
	}
}

/**
 * Refuses what is no ordinary file among our own: reading a pipe that nobody writes into would never end. Where nothing
 * lies, or it cannot be looked at, reading will tell.
 *
 * @throws UnreadableFile
 */
export function refusePipe(path: string): void {
	let found: ReturnType<typeof statSync> | undefined;
	try {
		found = statSync(path, { throwIfNoEntry: false });
	} catch {
		return;
	}
	if (found && !found.isFile() && !found.isDirectory())
		throw new UnreadableFile(path, "this is a pipe or a device, and a file was expected");
}

/** A pipe or a device tells no size beforehand and may never end. */
function firstBytes(path: string, most: number): Uint8Array {
	const file = openSync(path, "r");
	try {
		const chunks: Uint8Array[] = [];
		for (let taken = 0; taken < most; ) {
			const chunk = Buffer.allocUnsafe(Math.min(1024 * 1024, most - taken));
			const read = readSync(file, chunk, 0, chunk.length, null);
			if (read === 0) break;
			chunks.push(chunk.subarray(0, read));
			taken += read;
		}
		return Buffer.concat(chunks);
	} finally {
		closeSync(file);
	}
}

/**
 * Bytes as text; see readText.
 *
 * @param path names the bytes in messages
 * @throws UnreadableFile when they are no text
 */
export function decodeText(bytes: Uint8Array, path: string, { fallback }: TextOptions = {}): string {
	const encoding = encodingOf(bytes);
	let text: string;
	try {
		text = new TextDecoder(encoding, { fatal: true }).decode(bytes);
	} catch {
		if (fallback === undefined || encoding !== "utf-8" || looksBinary(Buffer.from(bytes).toString("latin1")))
			throw fallback === undefined
				? new UnreadableFile(path, "this is no text in UTF-8")
				: new NoText(path, binaryWords);
		text = fromWindows1252(bytes);
	}
	if (looksBinary(text)) throw new NoText(path, binaryWords);
	return text;
}

const binaryWords = "this is no text (a picture, a PDF or a spreadsheet, perhaps); save it as text or CSV first";

/** By the byte order mark; without one, by the zeros that UTF-16 has in every other byte of Latin letters. */
function encodingOf(bytes: Uint8Array): "utf-8" | "utf-16le" | "utf-16be" {
	if (bytes[0] === 0xff && bytes[1] === 0xfe) return "utf-16le";
	if (bytes[0] === 0xfe && bytes[1] === 0xff) return "utf-16be";
	const looked = bytes.subarray(0, 4096);
	const half = Math.floor(looked.length / 2);
	if (half === 0 || bytes.length % 2 === 1) return "utf-8";
	const zeros = [0, 0];
	for (const [index, byte] of looked.entries()) if (byte === 0) zeros[index % 2] = (zeros[index % 2] ?? 0) + 1;
	const [first = 0, second = 0] = zeros;
	if (first === 0 && second * 10 >= half * 7) return "utf-16le";
	if (second === 0 && first * 10 >= half * 7) return "utf-16be";
	return "utf-8";
}

/** A zero byte, the mark of a PDF, or more than one control character in a hundred: no page and no table has them. */
function looksBinary(text: string): boolean {
	if (text.includes("\0") || text.startsWith("%PDF-")) return true;
	// biome-ignore lint/suspicious/noControlCharactersInRegex: these are the very characters to be counted
	const controls = text.match(/[\u0001-\u0006\u000e-\u001a\u001c-\u001f\u007f]/g)?.length ?? 0;
	return controls * 100 > text.length;
}

/** What Windows-1252 has where Latin-1 has control characters (0x80 to 0x9f). Some versions of Node decode it as Latin-1. */
const windowsOnly = "€\u0081‚ƒ„…†‡ˆ‰Š‹Œ\u008dŽ\u008f\u0090‘’“”•–—˜™š›œ\u009džŸ";

function fromWindows1252(bytes: Uint8Array): string {
	return Buffer.from(bytes)
		.toString("latin1")
		.replace(/[\u0080-\u009f]/g, (letter) => windowsOnly[letter.charCodeAt(0) - 0x80] ?? letter);
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
	EFBIG: "no file may be as large as this one would be",
};
