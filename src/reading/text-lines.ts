import { cleanText } from "../parts/clean-text.ts";
import { decodeEntities, textOfHtml } from "./html-text.ts";

/** One line of what was pasted, clean. Tabs are borders of cells; spaces at its start are how far it is indented. */
export interface TextLine {
	/** Line of the pasted text, from 1. Of HTML: line of the text made of it. Pieces of a line too long share one. */
	readonly number: number;
	readonly text: string;
	/** Known from HTML only: a heading, or the names of a table's columns. */
	readonly kind?: "head" | "columns";
}

export interface TextLines {
	/** At most 20 000 of at most 2000 characters (UTF-16 units). Empty lines of plain text stay: they part blocks. */
	readonly lines: readonly TextLine[];
	/** Lines of the pasted text that did not fit, at the least; 0 if all is there. */
	readonly leftOut: number;
	readonly fromHtml: boolean;
}

/** Own conventions. A long page has some hundred lines; a line longer than this is broken at a space. */
export const mostLines = 20_000;
export const longestLine = 2000;
/** How far back from the end of a line too long a space is looked for; own convention. */
const breakWithin = 200;

/** Every kind of line end: CR LF, CR, vertical tab, form feed, next line, and the separators for lines and paragraphs. */
// biome-ignore lint/suspicious/noControlCharactersInRegex: these are the very characters looked for
const lineEnds = /\r\n?|[\u000b\u000c\u0085\u2028\u2029]/g;

/**
 * Characters 80 to 9F, which stand for these where a page in Windows-1252 was taken for Latin-1. As control characters
 * they would swallow what follows. From memory: the code page's table; 81, 8D, 8F, 90 and 9D stand for nothing.
 */
const windows1252 = "€ ‚ƒ„…†‡ˆ‰Š‹Œ Ž  ‘’“”•–—˜™š›œ žŸ";

/** Any pasted text as clean lines. Time is linear in the length. Never throws. */
export function textLines(pasted: string): TextLines {
	const even = pasted
		.replace(lineEnds, "\n")
		.replace(/[\u0080-\u009f]/g, (found) => windows1252[found.charCodeAt(0) - 0x80] ?? " ");
	const html = textOfHtml(even);
	const text = html?.text ?? decodeEntities(even);
	const lines: TextLine[] = [];
	let start = 0;
	for (let number = 1; start <= text.length; number++) {
		if (lines.length >= mostLines) break;
		const found = text.indexOf("\n", start);
		const end = found < 0 ? text.length : found;
		const kind = html?.kinds.get(number);
		start = addLine(lines, text, start, end, number, kind);
	}
	let leftOut = 0;
	for (let at = start; at <= text.length && start <= text.length; leftOut++) {
		const found = text.indexOf("\n", at);
		at = found < 0 ? text.length + 1 : found + 1;
	}
	return { lines, leftOut, fromHtml: html !== undefined };
}

/** The lines as one text. Every quote that a reader gives occurs in it. */
export function textOfLines(lines: readonly TextLine[]): string {
	return lines.map(({ text }) => text).join("\n");
}

/** Adds one line, in pieces if it is too long, and gives the place where the next begins. */
function addLine(
	lines: TextLine[],
	text: string,
	start: number,
	end: number,
	number: number,
	kind: TextLine["kind"],
): number {
	let at = start;
	do {
		if (lines.length >= mostLines) return at;
		const stop = end - at <= longestLine ? end : breakBefore(text, at, at + longestLine);
		// Composing may lengthen a text, so what is too long after it is cut once more.
		for (const piece of pieces(cleanOneLine(text.slice(at, stop)))) {
			if (lines.length >= mostLines) return at;
			lines.push({ number, text: piece, ...(kind && { kind }) });
		}
		at = stop;
	} while (at < end);
	return end + 1;
}

function pieces(text: string): string[] {
	const found: string[] = [];
	let at = 0;
	do {
		const stop = text.length - at <= longestLine ? text.length : breakBefore(text, at, at + longestLine);
		found.push(text.slice(at, stop).trimEnd());
		at = stop;
	} while (at < text.length);
	return found;
}

/** The last place before `limit` to break a line: behind white space, or anywhere but within one character. */
function breakBefore(text: string, start: number, limit: number): number {
	for (let at = limit; at > limit - breakWithin && at > start + 1; at--) {
		const before = text[at - 1];
		if (before === " " || before === "\t") return at;
	}
	const code = text.charCodeAt(limit - 1);
	return code >= 0xd800 && code <= 0xdbff ? limit - 1 : limit;
}

/** A line by itself, so that an escape sequence without an end takes no more than its line. */
function cleanOneLine(text: string): string {
	// Hundreds of marks on one letter are no writing, and composing them takes time by their square.
	const fewMarks = text.replace(/(\p{M}{8})\p{M}+/gu, "$1");
	return cleanText(fewMarks)
		.replaceAll("\n", " ")
		.replace(/\p{Zs}/gu, " ")
		.trimEnd();
}
