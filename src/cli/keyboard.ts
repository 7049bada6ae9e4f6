import { emitKeypressEvents, type Key as NodeKey } from "node:readline";
import { cleanLine } from "../parts/clean-text.ts";
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
 * Listens to a terminal. Pasted text arrives as one text, whatever keys stand in it; an unknown sequence never leaks
 * its letters.
 */
export function openKeyboard(input: NodeJS.ReadStream, press: (key: Pressed) => void): Keyboard {
	let pasted: string | null = null;
	let inReport = 0;
	const onKey = (text: string | undefined, key: NodeKey): void => {
		if (key.name === "paste-start") {
			pasted = "";
			return;
		}
		if (key.name === "paste-end") {
			const whole = cleanLine(pasted ?? "");
			pasted = null;
			if (whole !== "") press({ name: "text", text: whole });
			return;
		}
		if (pasted !== null) {
			pasted += key.name === "return" || key.name === "enter" ? " " : (text ?? "");
			return;
		}
		// A mouse report in the old form is ESC [ M and three bytes, which readline would hand on as letters.
		if (key.sequence === "\u001b[M") {
			inReport = 3;
			return;
		}
		if (inReport > 0) {
			inReport--;
			return;
		}
		const pressed = keyOf(text, key);
		if (pressed) press(pressed);
	};
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
