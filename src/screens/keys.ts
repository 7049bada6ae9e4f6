/** A key as the walk knows it; whatever else a terminal sends is never one. */
export type Key =
	| { readonly name: KeyName }
	/** One grapheme typed. */
	| { readonly name: "text"; readonly text: string }
	/** A whole paste, with its line ends; it is cleaned where it is used. */
	| { readonly name: "paste"; readonly text: string };

export type KeyName =
	| "up"
	| "down"
	| "left"
	| "right"
	| "home"
	| "end"
	| "page-up"
	| "page-down"
	| "enter"
	| "escape"
	| "tab"
	| "back-tab"
	| "space"
	| "backspace"
	| "delete"
	| "word-left"
	| "word-right"
	| "delete-word"
	| "delete-to-start"
	| "delete-to-end"
	| "sources"
	| "help";

/** One line of the keymap: what it is called on screen, what it does, and where it counts. */
export interface KeyLine {
	readonly keys: string;
	readonly does: string;
	readonly when: "always" | "lists" | "typing" | "text";
}

/** Every key that does something. The help on each screen and the table in README.md are made from this. */
export const keymap: readonly KeyLine[] = [
	{ keys: "Up, Down", does: "move in the list; they stop at its ends", when: "lists" },
	{ keys: "Home, End", does: "to the first line of the list, to the last", when: "lists" },
	{ keys: "1 to 9", does: "move to that line; it is not chosen yet", when: "lists" },
	{
		keys: "Space",
		does: "mark a line where several can be marked; again for two, past the most for none",
		when: "lists",
	},
	{ keys: "+, -", does: "mark once more, once less", when: "lists" },
	{ keys: "r, q", does: "all answers; leave. Not on a question, where Tab leads to both", when: "lists" },
	{
		keys: "Enter",
		does: "choose the line it stands on, or take what was typed; on a marked line go on",
		when: "always",
	},
	{ keys: "Esc", does: "back one screen; nothing is lost. In a field it first empties the field", when: "always" },
	{ keys: "Left, Shift+Tab", does: "back one screen, where nothing is being typed", when: "always" },
	{
		keys: "Page Up, Page Down",
		does: "read on where more text stands; else eight lines of the list",
		when: "text",
	},
	{ keys: "?", does: "why we ask and where to find it; the same key closes it", when: "always" },
	{ keys: "*", does: "what the words marked * on this screen mean; the same key closes it", when: "always" },
	{ keys: "Tab", does: "more: all answers, boards left, shortlist, settings, leave", when: "always" },
	{ keys: "letters", does: "find a line by its words, or write in a field", when: "typing" },
	{ keys: "Ctrl+Left, Ctrl+Right", does: "in a field: a word back, a word on", when: "typing" },
	{ keys: "Ctrl+W, Ctrl+U, Ctrl+K", does: "in a field: delete a word, to the start, to the end", when: "typing" },
	{ keys: "Ctrl+T", does: "show numbers and sources; the same keys hide them", when: "always" },
	{ keys: "Ctrl+C", does: "leave at once; the answers are kept", when: "always" },
	{ keys: "Ctrl+Z", does: "put the program to sleep; type fg to wake it", when: "always" },
	{ keys: "Ctrl+L", does: "draw the screen again", when: "always" },
];
