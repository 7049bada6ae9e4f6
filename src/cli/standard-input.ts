import { decodeText, NoText, UnreadableFile } from "../files/read-text.ts";

/** A page that somebody copies has some thousand characters; a file put in by mistake has millions. */
export const mostPageBytes = 4 * 1024 * 1024;

/**
 * All of standard input as text. From a terminal it ends with two empty lines, too, for not everybody knows Ctrl-D.
 *
 * @throws UnreadableFile when it is too long, empty, or no text
 */
export async function standardInputText(input: NodeJS.ReadStream): Promise<string> {
	const chunks: Uint8Array[] = [];
	let bytes = 0;
	for await (const chunk of input) {
		const piece: Uint8Array = typeof chunk === "string" ? Buffer.from(chunk) : chunk;
		chunks.push(piece);
		bytes += piece.length;
		if (bytes > mostPageBytes) throw tooLong("standard input");
		if (input.isTTY && /\n[ \t]*\r?\n[ \t]*\r?\n$/.test(lastCharacters(chunks))) break;
	}
	const text = decodeText(Buffer.concat(chunks), "standard input", { fallback: "windows-1252" });
	if (text.trim() === "") throw new UnreadableFile("standard input", "there is nothing to read");
	return text;
}

/** A text too long to be a page. */
export function tooLong(name: string): UnreadableFile {
	return new NoText(name, `this is longer than ${mostPageBytes / 1024 / 1024} MB, which no page of a part is`);
}

function lastCharacters(chunks: readonly Uint8Array[]): string {
	return Buffer.concat(chunks.slice(-4)).toString("latin1").slice(-20);
}
