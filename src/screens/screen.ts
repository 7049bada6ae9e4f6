import type { WalkEvent } from "../walk/walk-event.ts";

/** A piece of a screen, as data; both faces draw it with the same words. */
export type Block =
	| { readonly kind: "heading"; readonly text: string }
	| { readonly kind: "text"; readonly text: string }
	| { readonly kind: "list"; readonly items: readonly string[] }
	/** A picture in plain letters: never wrapped, left out where it does not fit. `isTold`: words on the screen say it all. */
	| { readonly kind: "picture"; readonly lines: readonly string[]; readonly isTold?: boolean }
	| { readonly kind: "pairs"; readonly pairs: readonly (readonly [label: string, value: string])[] };

export interface Choice {
	readonly label: string;
	/** One line of explanation. */
	readonly detail?: string;
	/** How many boards would be left, for a wish. */
	readonly count?: string;
	/** This is the answer given before. */
	readonly chosen?: boolean;
	/** Stands apart, after an "or": not sure, describe it. */
	readonly apart?: boolean;
	/** Says "I do not know". */
	readonly isUnsure?: boolean;
	/** In a list where several lines can be marked: how often this one is, and how often it can be. */
	readonly mark?: { readonly count: number; readonly most: number };
	/** Heading above this line, if the line before has another. */
	readonly group?: string;
	/** A letter that picks this line wherever it stands. */
	readonly key?: string;
	readonly event: WalkEvent;
}

export interface Screen {
	readonly id: string;
	/** Tier and place in it, such as "Fit, question 2 of 5"; empty where there is none. */
	readonly place: string;
	readonly title: string;
	readonly body: readonly Block[];
	readonly choices: readonly Choice[];
	/**
	 * What may be typed, or null. "words": some letters find a line. "free": what is typed is the answer, though a number
	 * alone picks a line. "value": a number is the answer itself, and lines are picked by their key. "page": as "value",
	 * for text of many lines.
	 */
	readonly typing: { readonly kind: "words" | "free" | "value" | "page"; readonly words: string } | null;
	/** A menu where nothing can be answered wrongly, so that it may be drawn as one. */
	readonly isMenu: boolean;
	/** What Enter alone does, in words and as an event; null where something must be chosen. */
	readonly enter: { readonly words: string; readonly event: WalkEvent } | null;
	/** Boards left, what the last answer took out. */
	readonly side: readonly Block[];
	/** Why we ask, where to find it: shown on "?". */
	readonly help: readonly Block[];
	/** Numbers and sources, for who explains; empty unless they are wanted. */
	readonly sources: readonly Block[];
	/** Something was wrong with what was typed. */
	readonly problem: string | null;
	readonly notice: string | null;
}

export const text = (words: string): Block => ({ kind: "text", text: words });
export const heading = (words: string): Block => ({ kind: "heading", text: words });
export const picture = (lines: readonly string[]): Block => ({ kind: "picture", lines });
export const list = (items: readonly string[]): Block => ({ kind: "list", items });
export const pairs = (rows: readonly (readonly [string, string])[]): Block => ({ kind: "pairs", pairs: rows });
