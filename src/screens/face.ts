import type { WalkEvent } from "../walk/walk-event.ts";
import type { Key } from "./keys.ts";
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
	const chosen = screen.choices.findIndex((choice) => choice.chosen);
	const row = isTypedAnswer(screen) ? inField : Math.max(0, chosen);
	return { screenId: screen.id, row, scroll: 0, field: emptyField, helpOpen: false };
}

/** The row of a mark that stands in the field and on no line. */
export const inField = -1;

function isTypedAnswer({ typing }: Screen): boolean {
	return typing?.kind === "value";
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
}

/** One key on a screen. Pure; a key that means nothing here changes nothing. */
export function pressKey(screen: Screen, before: Face, key: Key, page: PageSize): Press {
	const face = before.screenId === screen.id ? before : faceFor(screen);
	const keep = (changed: Partial<Face>): Press => ({ face: { ...face, ...changed }, event: null });
	const send = (event: WalkEvent): Press => ({ face, event });
	if (key.name === "help" || (key.name === "text" && key.text === "?"))
		return keep({ helpOpen: !face.helpOpen, scroll: 0 });
	if (face.helpOpen && (key.name === "escape" || key.name === "enter")) return keep({ helpOpen: false, scroll: 0 });
	switch (key.name) {
		case "page-down":
			return keep({ scroll: Math.min(page.lastScroll, face.scroll + Math.max(1, page.textRows - 1)) });
		case "page-up":
			return keep({ scroll: Math.max(0, face.scroll - Math.max(1, page.textRows - 1)) });
		case "tab":
			return send({ type: "menu" });
		case "back-tab":
			return send({ type: "back" });
		case "escape":
			return face.field.text === "" ? send({ type: "back" }) : keep({ field: emptyField, row: 0 });
		case "enter":
			return enter(screen, face);
	}
	const first = isTypedAnswer(screen) ? inField : 0;
	const last = shownChoices(screen, face).length - 1;
	if (key.name === "up") return keep({ row: Math.max(first, Math.min(face.row, last) - 1) });
	if (key.name === "down") return keep({ row: Math.max(first, Math.min(last, face.row + 1)) });
	return screen.typing ? typed(screen, face, key) : commanded(screen, face, key);
}

/** Where something can be typed, every letter is text, and editing keys edit. */
function typed(screen: Screen, face: Face, key: Key): Press {
	const text = key.name === "text" ? key.text : key.name === "space" ? " " : null;
	if (text !== null) {
		const field = typeInto(face.field, text);
		return { face: { ...face, field, row: firstMatch(screen, { ...face, field }) }, event: null };
	}
	if (key.name === "text") return { face, event: null };
	if (face.field.text === "") {
		if (key.name === "left") return { face, event: { type: "back" } };
		if (key.name === "home" || key.name === "end") return jumped(screen, face, key.name);
	}
	const field = editField(face.field, key.name);
	return { face: field ? { ...face, field, row: firstMatch(screen, { ...face, field }) } : face, event: null };
}

/** Typing puts the mark where Enter will act: on the first line with the words, or in the field. */
function firstMatch(screen: Screen, face: Face): number {
	if (isTypedAnswer(screen)) return inField;
	return screen.typing?.kind === "words" ? 0 : face.row;
}

/** Where nothing can be typed, a digit moves the mark and a few letters are commands. */
function commanded(screen: Screen, face: Face, key: Key): Press {
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
		s: { type: "leave" },
		b: { type: "back" },
	};
	const command = Object.hasOwn(commands, letter) ? commands[letter] : undefined;
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
 * Enter takes what was typed where that is the answer; else it chooses the marked line. Words that no line has go to
 * the walk, which says what was expected; so does an empty field.
 */
function enter(screen: Screen, face: Face): Press {
	const shown = shownChoices(screen, face);
	const text = face.field.text.trim();
	const kind = screen.typing?.kind;
	const isAnswer = kind === "value" ? face.row === inField : kind === "free";
	const matchesNone = kind === "words" && !shown.some(({ apart }) => !apart);
	if (text !== "" && (isAnswer || matchesNone)) return { face, event: { type: "text", text } };
	if (face.row === inField) return { face, event: screen.enter?.event ?? { type: "text", text } };
	const marked = shown[Math.min(face.row, shown.length - 1)];
	return { face, event: marked?.event ?? screen.enter?.event ?? null };
}
