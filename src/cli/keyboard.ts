import { emitKeypressEvents, type Key as NodeKey } from "node:readline";
import { cleanLine, cleanText } from "../parts/clean-text.ts";
import type { Key, KeyName } from "../screens/keys.ts";

/** What the keyboard hands on: a key of the walk, or a command to the program itself. */
export type Pressed = Key | { readonly name: "interrupt" | "suspend" | "redraw" };

/** A lone Esc and the start of an arrow look alike; after this long it is taken for Esc. */
const escapeMs = 40;

const plainNames: Readonly<Record<string, KeyName>> = {
	up: "up",
	down: "down",
	left: "left",
	right: "right",
	home: "home",
	end: "end",
	pageup: "page-up",
	pagedown: "page-down",
	return: "enter",
	enter: "enter",
	escape: "escape",
	tab: "tab",
	backspace: "backspace",
	delete: "delete",
	f1: "help",
};

const controlNames: Readonly<Record<string, Pressed["name"]>> = {
	c: "interrupt",
	z: "suspend",
	l: "redraw",
	a: "home",
	e: "end",
	b: "left",
	f: "right",
	h: "backspace",
	d: "delete",
	w: "delete-word",
	u: "delete-to-start",
	k: "delete-to-end",
	t: "sources",
	left: "word-left",
	right: "word-right",
};

/**
 * One keypress event of node:readline as a key of the walk, or null for everything that is none: function keys, mouse
 * and focus reports, sequences cut short. Only what stands in the tables above is let through.
 */
export function keyOf(text: string | undefined, key: NodeKey): Pressed | null {
	const { name, sequence = "", ctrl, meta, shift } = key;
	if (ctrl) {
		const found = name === undefined ? undefined : controlNames[name];
		return found === undefined || meta ? null : { name: found as KeyName };
	}
	if (name === "tab" && shift) return { name: "back-tab" };
	if (name === "f1" && shift) return null;
	if (name !== undefined && Object.hasOwn(plainNames, name)) {
		if (meta && name !== "escape") return name === "backspace" ? { name: "delete-word" } : null;
		return { name: plainNames[name] as KeyName };
	}
	if (meta) {
		if (name === "b") return { name: "word-left" };
		return name === "f" ? { name: "word-right" } : null;
	}
	if (name === "space") return { name: "space" };
	// An escape sequence that readline does not know comes as text with the escape in front.
	if (text === undefined || sequence.startsWith("\u001b")) return null;
	const typed = cleanLine(text);
	return typed === "" ? null : { name: "text", text: typed };
}

/** Reads keys from a terminal in raw mode until it is closed. */
export interface Keyboard {
	readonly close: () => void;
}

/**
 * Listens to a terminal. Pasted text arrives as one paste, whatever keys stand in it; an unknown sequence never leaks
 * its letters.
 */
export function openKeyboard(input: NodeJS.ReadStream, press: (key: Pressed) => void): Keyboard {
	const onKey = keySieve(press);
	// The types ask for a whole interface; the function reads this one property of it.
	emitKeypressEvents(input, { escapeCodeTimeout: escapeMs } as never);
	input.setRawMode(true);
	input.on("keypress", onKey);
	input.resume();
	return {
		close() {
			input.off("keypress", onKey);
			try {
				input.setRawMode(false);
			} catch {
				// The terminal is gone; there is no mode to set back.
			}
			input.pause();
		},
	};
}

/** A paste whose end never comes is taken for done after this long without a key, so that no key is lost for good. */
const pasteMs = 1000;

/** The walk takes less than this of a paste, and says so; in characters, own convention. */
const mostHeld = 2_100_000;

/** Sequences that readline hands over in pieces: what stands behind the escape at first, and whether all is read. */
const pieced: readonly { readonly start: RegExp; readonly isWhole: (rest: string) => boolean }[] = [
	// A mouse report in the old form: ESC [ M and three bytes.
	{ start: /^\[M$/, isWhole: (rest) => rest.length >= 3 && !rest.includes("\u001b") },
	// Control sequences longer than any key's: reports of mouse, cursor and terminal.
	{ start: /^(?:\[\[?[0-?]*[ -/]*|O[\d;]+)$/, isWhole: (rest) => /[@-~]$/.test(rest) && !rest.includes("\u001b") },
	// Sequences with a payload, such as a terminal's answer about its colours.
	{ start: /^[\]PX^_]$/, isWhole: (rest) => rest.endsWith("\u0007") || rest.endsWith("\u001b\\") },
];

/** Sorts keypress events: keys are pressed, pastes gathered, and pieces of unknown sequences dropped. */
function keySieve(press: (key: Pressed) => void): (text: string | undefined, key: NodeKey) => void {
	let pasted: string | null = null;
	let piece: { readonly isWhole: (rest: string) => boolean; readonly rest: string } | null = null;
	let afterReturn = false;
	let timer: NodeJS.Timeout | undefined;
	const later = (ms: number, then: () => void): void => {
		clearTimeout(timer);
		timer = setTimeout(then, ms);
		timer.unref();
	};
	const endPaste = (): void => {
		const whole = pasted ?? "";
		pasted = null;
		if (cleanText(whole).trim() !== "") press({ name: "paste", text: whole });
	};
	const endPiece = (): void => {
		piece = null;
	};
	/** Whether a key is one more piece of a sequence; a control character cuts one short, and counts itself. */
	const isPiece = (sequence: string): boolean => {
		const at = sequence.lastIndexOf("\u001b");
		const begun = at < 0 ? undefined : pieced.find(({ start }) => start.test(sequence.slice(at + 1)));
		const before = piece;
		piece = begun ? { isWhole: begun.isWhole, rest: "" } : before && { ...before, rest: before.rest + sequence };
		// Alt+[ looks like the start of a sequence: what comes later is a person's next key.
		later(escapeMs, endPiece);
		if (begun || piece === null) return begun !== undefined;
		const { isWhole, rest } = piece;
		const isCut = !isWhole(rest) && sequence.charCodeAt(0) < 32;
		if (isWhole(rest) || isCut) piece = null;
		return !isCut;
	};
	return (text, key) => {
		const { name, sequence = "" } = key;
		const isEnter = name === "return" || name === "enter";
		if (name === "paste-end") return endPaste();
		if (name === "paste-start" || pasted !== null) {
			// A carriage return with a line feed is one end of a line.
			const isSameEnd = name === "enter" && afterReturn;
			afterReturn = name === "return";
			const more = isEnter ? (isSameEnd ? "" : "\n") : (text ?? "");
			pasted = name === "paste-start" ? "" : pasted !== null && pasted.length < mostHeld ? pasted + more : pasted;
			piece = null;
			// Ctrl+C, pressed again and again, gets out of a paste without an end.
			if (sequence !== "\u0003") later(pasteMs, endPaste);
			return;
		}
		if (isPiece(sequence)) return;
		// A carriage return with a line feed is one Enter.
		const isOneEnter = name === "enter" && afterReturn;
		afterReturn = name === "return";
		if (afterReturn)
			setImmediate(() => {
				afterReturn = false;
			});
		if (isOneEnter) return;
		// Ctrl+C behind the start of a sequence is told as part of it.
		const pressed = sequence.length > 1 && sequence.endsWith("\u0003") ? interrupt : keyOf(text, key);
		if (pressed) press(pressed);
	};
}

const interrupt: Pressed = { name: "interrupt" };
