import { cleanLine } from "../parts/clean-text.ts";
import type { WalkEvent } from "../walk/walk-event.ts";
import type { Key } from "./keys.ts";
import { explainsWords, wordMark } from "./marked-words.ts";
import type { Choice, Screen } from "./screen.ts";
import { editField, emptyField, type TextField, typeInto } from "./text-field.ts";

/** What is on the drawn screen beyond the walk itself: the marked line, what is typed, what is open. Pure state. */
export interface Face {
	/** The screen this belongs to; another screen starts afresh. */
	readonly screenId: string;
	/** Marked line, counted among the lines shown. */
	readonly row: number;
	/** First line of text shown, where the text is longer than the window. */
	readonly scroll: number;
	readonly field: TextField;
	readonly helpOpen: boolean;
	/** What the marked words mean stands in place of the text. Never together with the help. */
	readonly wordsOpen: boolean;
}

/** What a key press comes to: the face, and perhaps an event for the walk. */
export interface Press {
	readonly face: Face;
	readonly event: WalkEvent | null;
}

/**
 * A fresh face for a screen. The mark stands on the answer given before, else on the first line; where the answer is
 * typed it stands on no line, so that Enter alone answers nothing.
 */
export function faceFor(screen: Screen): Face {
	const chosen = screen.choices.findIndex(({ chosen: given, mark }) => given || (mark?.count ?? 0) > 0);
	const row = isTypedAnswer(screen) ? inField : Math.max(0, chosen);
	return { screenId: screen.id, row, scroll: 0, field: emptyField, helpOpen: false, wordsOpen: false };
}

/** The row of a mark that stands in the field and on no line. */
export const inField = -1;

/** Whether help or explained words stand in place of the screen's own text and list. */
export function isOpen({ helpOpen, wordsOpen }: Face): boolean {
	return helpOpen || wordsOpen;
}

function isTypedAnswer({ typing }: Screen): boolean {
	return typing?.kind === "value" || typing?.kind === "page";
}

/** The lines that can be marked now: all, or those that the typed words leave. Lines that stand apart always stay. */
export function shownChoices(screen: Screen, { field }: Face): readonly Choice[] {
	if (screen.typing?.kind !== "words" || field.text.trim() === "") return screen.choices;
	const wanted = plain(field.text.trim());
	return screen.choices.filter(
		({ label, detail, apart }) => apart || plain(`${label} ${detail ?? ""}`).includes(wanted),
	);
}

function plain(text: string): string {
	return text.normalize("NFKC").toLowerCase();
}

/** How far a page key scrolls; the arrangement keeps it inside the text. */
export interface PageSize {
	readonly textRows: number;
	readonly lastScroll: number;
	/** Where numbers and sources begin in the text, for who has just asked for them; null where they do not. */
	readonly sourcesFrom?: number | null;
}

/** Lines that a page key goes over in a list, where no text is to be read on. */
const listPage = 8;

/** More of a paste than any field takes; the field cuts it to graphemes. In characters. */
const mostForField = 2000;

/** One key on a screen. Pure; a key that means nothing here changes nothing. */
export function pressKey(screen: Screen, before: Face, key: Key, page: PageSize): Press {
	const face = before.screenId === screen.id ? before : faceFor(screen);
	if (key.name === "paste") {
		// Where a page is wanted all its lines count; elsewhere a paste is one line typed.
		if (screen.typing?.kind === "page") return { face, event: { type: "paste", text: key.text } };
		const text = cleanLine(key.text.slice(0, mostForField));
		return text === "" ? { face, event: null } : pressKey(screen, face, { name: "text", text }, page);
	}
	const keep = (changed: Partial<Face>): Press => ({ face: { ...face, ...changed }, event: null });
	const send = (event: WalkEvent): Press => ({ face, event });
	// Also from a field, of which nothing is lost, and from the help, which they then stand in place of.
	const closed = { helpOpen: false, wordsOpen: false, scroll: 0 };
	if (key.name === "sources") return { face: { ...face, ...closed }, event: { type: "show-sources" } };
	if (key.name === "help" || (key.name === "text" && key.text === "?"))
		return keep({ ...closed, helpOpen: !face.helpOpen });
	if (key.name === "text" && key.text === wordMark && explainsWords(screen))
		return keep({ ...closed, wordsOpen: !face.wordsOpen });
	if (isOpen(face) && (key.name === "escape" || key.name === "enter")) return keep(closed);
	// What lies under the open help hears no key.
	if (isOpen(face) && key.name !== "tab" && key.name !== "back-tab") return keep({ scroll: scrolled(face, key, page) });
	switch (key.name) {
		case "page-down":
		case "page-up": {
			if (page.lastScroll > 0) return keep({ scroll: scrolled(face, key, page) });
			const step = key.name === "page-down" ? listPage : -listPage;
			const end = shownChoices(screen, face).length - 1;
			return keep({ row: Math.max(firstRow(screen, face), Math.min(end, face.row + step)) });
		}
		case "tab":
			return send({ type: "menu" });
		case "back-tab":
			return send({ type: "back" });
		case "escape":
			return face.field.text === "" ? send({ type: "back" }) : keep(typedFace(screen, face, emptyField));
		case "enter":
			return enter(screen, face);
	}
	const marked = shownChoices(screen, face)[face.row];
	if (marked?.mark && !screen.typing) {
		if (key.name === "space") return send(marked.event);
		const by = key.name === "text" ? { "+": 1 as const, "-": -1 as const }[key.text] : undefined;
		if (by && marked.event.type === "mark") return send({ ...marked.event, by });
	}
	const first = firstRow(screen, face);
	const last = shownChoices(screen, face).length - 1;
	if (key.name === "up") return keep({ row: Math.max(first, Math.min(face.row, last) - 1) });
	if (key.name === "down") return keep({ row: Math.max(first, Math.min(last, face.row + 1)) });
	return screen.typing ? typed(screen, face, key) : commanded(screen, face, key);
}

/** A key that is no paste. */
type OneKey = Exclude<Key, { readonly name: "paste" }>;

/** Where something can be typed, every letter is text, and editing keys edit. */
function typed(screen: Screen, face: Face, key: OneKey): Press {
	const text = key.name === "text" ? key.text : key.name === "space" ? " " : null;
	if (text !== null) return { face: typedFace(screen, face, typeInto(face.field, text)), event: null };
	if (key.name === "text") return { face, event: null };
	if (face.field.text === "") {
		if (key.name === "left") return { face, event: { type: "back" } };
		if (key.name === "home" || key.name === "end") return jumped(screen, face, key.name);
	}
	const field = editField(face.field, key.name);
	return { face: field ? typedFace(screen, face, field) : face, event: null };
}

/** Typing puts the mark where Enter will act: on the first line with the words, or in the field. */
function typedFace(screen: Screen, before: Face, field: TextField): Face {
	const face = { ...before, field };
	return { ...face, row: firstRow(screen, face) };
}

/** The field can hold the mark where what is typed is the answer, or where no line has the words. */
function firstRow(screen: Screen, face: Face): number {
	if (isTypedAnswer(screen)) return inField;
	if (face.field.text.trim() === "") return 0;
	const matches = screen.typing?.kind === "words" && shownChoices(screen, face).some(({ apart }) => !apart);
	return screen.typing === null || matches ? 0 : inField;
}

/** The first line of text shown after a key; a page key leaves one line in sight. */
function scrolled({ scroll }: Face, { name }: OneKey, { textRows, lastScroll }: PageSize): number {
	const page = Math.max(1, textRows - 1);
	const steps: Readonly<Record<string, number>> = { up: -1, down: 1, "page-up": -page, "page-down": page };
	return Math.max(0, Math.min(lastScroll, scroll + (steps[name] ?? 0)));
}

/** Where nothing can be typed, a digit moves the mark and a few letters are commands. */
function commanded(screen: Screen, face: Face, key: OneKey): Press {
	const shown = shownChoices(screen, face);
	if (key.name === "left") return { face, event: { type: "back" } };
	if (key.name === "home" || key.name === "end") return jumped(screen, face, key.name);
	if (key.name !== "text") return { face, event: null };
	const letter = key.text.toLowerCase();
	if (/^[1-9]$/.test(letter) && Number(letter) <= shown.length)
		return { face: { ...face, row: Number(letter) - 1 }, event: null };
	const byKey = shown.findIndex((choice) => choice.key === letter);
	if (byKey >= 0) return { face: { ...face, row: byKey }, event: null };
	const commands: Readonly<Record<string, WalkEvent>> = {
		r: { type: "review" },
		q: { type: "leave" },
	};
	// Where something is asked, a person who types words into a list must not find themselves elsewhere.
	const isAsking = /^(question|describe|fact|doubt):/.test(screen.id);
	const command = !isAsking && Object.hasOwn(commands, letter) ? commands[letter] : undefined;
	if (command) return { face, event: command };
	if (letter === "j")
		return { face: { ...face, row: Math.max(0, Math.min(shown.length - 1, face.row + 1)) }, event: null };
	if (letter === "k") return { face: { ...face, row: Math.max(0, face.row - 1) }, event: null };
	return { face, event: null };
}

function jumped(screen: Screen, face: Face, name: "home" | "end"): Press {
	const last = Math.max(0, shownChoices(screen, face).length - 1);
	return { face: { ...face, row: name === "home" ? 0 : last }, event: null };
}

/**
 * Enter takes what was typed where the mark stands in the field; else it chooses the marked line. Words that no line
 * has go to the walk, which says what was expected; so does an empty field.
 */
function enter(screen: Screen, face: Face): Press {
	const shown = shownChoices(screen, face);
	const row = Math.max(firstRow(screen, face), Math.min(face.row, shown.length - 1));
	const text = face.field.text.trim();
	if (row === inField) return { face, event: (text === "" && screen.enter?.event) || { type: "text", text } };
	// On a line that is marked Enter goes on with all that is; on another one it marks it first.
	const done = (shown[row]?.mark?.count ?? 0) > 0 ? screen.enter?.event : undefined;
	return { face, event: done ?? shown[row]?.event ?? screen.enter?.event ?? null };
}
