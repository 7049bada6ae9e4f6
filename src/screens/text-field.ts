import type { KeyName } from "./keys.ts";

/** A line being typed. The cursor counts graphemes, so that it never stands inside one. */
export interface TextField {
	readonly text: string;
	readonly cursor: number;
}

export const emptyField: TextField = { text: "", cursor: 0 };

/** More than any answer needs; a paste is cut here. */
const mostGraphemes = 200;

const segmenter = new Intl.Segmenter("en", { granularity: "grapheme" });

/** The text as a person counts its letters. */
export function graphemesOf(text: string): string[] {
	return [...segmenter.segment(text)].map(({ segment }) => segment);
}

/** The field with text put in at the cursor. */
export function typeInto({ text, cursor }: TextField, typed: string): TextField {
	const before = graphemesOf(text);
	const room = Math.max(0, mostGraphemes - before.length);
	const added = graphemesOf(typed).slice(0, room);
	const whole = [...before.slice(0, cursor), ...added, ...before.slice(cursor)].join("");
	// A mark typed behind a letter joins it: the cursor then stands where the joined text puts it.
	const ahead = graphemesOf([...before.slice(0, cursor), ...added].join("")).length;
	return { text: whole, cursor: Math.min(ahead, graphemesOf(whole).length) };
}

/** The field after an editing key, or null when the key edits nothing. */
export function editField({ text, cursor }: TextField, key: KeyName): TextField | null {
	const letters = graphemesOf(text);
	const cut = (from: number, to: number): TextField => ({
		text: [...letters.slice(0, from), ...letters.slice(to)].join(""),
		cursor: from,
	});
	switch (key) {
		case "left":
			return { text, cursor: Math.max(0, cursor - 1) };
		case "right":
			return { text, cursor: Math.min(letters.length, cursor + 1) };
		case "home":
			return { text, cursor: 0 };
		case "end":
			return { text, cursor: letters.length };
		case "word-left":
			return { text, cursor: wordStart(letters, cursor) };
		case "word-right":
			return { text, cursor: wordEnd(letters, cursor) };
		case "backspace":
			return cut(Math.max(0, cursor - 1), cursor);
		case "delete":
			return { ...cut(cursor, cursor + 1), cursor };
		case "delete-word":
			return cut(wordStart(letters, cursor), cursor);
		case "delete-to-start":
			return cut(0, cursor);
		case "delete-to-end":
			return { ...cut(cursor, letters.length), cursor };
		default:
			return null;
	}
}

function wordStart(letters: readonly string[], cursor: number): number {
	let at = cursor;
	while (at > 0 && letters[at - 1] === " ") at--;
	while (at > 0 && letters[at - 1] !== " ") at--;
	return at;
}

function wordEnd(letters: readonly string[], cursor: number): number {
	let at = cursor;
	while (at < letters.length && letters[at] === " ") at++;
	while (at < letters.length && letters[at] !== " ") at++;
	return at;
}
