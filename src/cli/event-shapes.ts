import { likeDirections } from "../choose/like-this-but.ts";
import { answerValue } from "../parts/answers-file.ts";
import { partKindNames } from "../parts/part-kinds.ts";
import { readKinds } from "../reading/part-reading.ts";
import type { WalkEvent } from "../walk/walk-event.ts";
import { nearWords } from "./arguments.ts";

/** What a key of an event can hold; null where a value is sound, else what was expected. */
interface Check {
	readonly expected: string;
	readonly isOptional?: true;
	readonly holds: (value: unknown) => boolean;
}

const text: Check = { expected: "text", holds: (value) => typeof value === "string" };
const count: Check = {
	expected: "a whole number from 0 on",
	holds: (value) => Number.isSafeInteger(value) && (value as number) >= 0,
};
const yesOrNo: Check = { expected: "true or false", holds: (value) => typeof value === "boolean" };
const anything: Check = { expected: "a value", holds: (value) => value !== undefined };
const anAnswer: Check = { expected: "an answer", holds: (value) => answerValue.safeParse(value).success };

function oneOf(...values: readonly unknown[]): Check {
	return { expected: values.map((value) => JSON.stringify(value)).join(" or "), holds: (one) => values.includes(one) };
}

function listOf(expected: string, holds: (entry: unknown) => boolean): Check {
	return { expected, holds: (value) => Array.isArray(value) && value.every(holds) };
}

function optional({ expected, holds }: Check): Check {
	return { expected, holds, isOptional: true };
}

const isObject = (value: unknown): value is Readonly<Record<string, unknown>> =>
	value !== null && typeof value === "object" && !Array.isArray(value);

/** One answer of a way out; see TakenChange. */
function isTakenChange(value: unknown): boolean {
	const isValue = (one: unknown) => one === null || anAnswer.holds(one);
	return isObject(value) && text.holds(value["questionId"]) && isValue(value["from"]) && isValue(value["to"]);
}

/** See SavedSummary. */
function isSummary(value: unknown): boolean {
	return isObject(value) && text.holds(value["file"]) && text.holds(value["words"]);
}

const settingChecks: Readonly<Record<string, Check>> = {
	colour: oneOf("auto", "never"),
	characters: oneOf("auto", "ascii"),
	face: oneOf("auto", "line-by-line"),
	lengths: text,
	helperName: text,
};

const setting: Check = {
	expected: "settings such as colour, characters, face",
	holds: (value) =>
		isObject(value) &&
		Object.entries(value).every(([key, one]) => Object.hasOwn(settingChecks, key) && settingChecks[key]?.holds(one)),
};

type EventOf<T extends WalkEvent["type"]> = Extract<WalkEvent, { readonly type: T }>;

/** What was done, in words, and what else the event holds. */
type Shapes = {
	readonly [T in WalkEvent["type"]]: {
		readonly did: string;
		readonly keys: { readonly [K in Exclude<keyof EventOf<T>, "type">]-?: Check };
	};
};

const none = {} as const;
const kind = oneOf(...partKindNames);

/** Every event there is. The compiler holds this table to WalkEvent: a new kind or a new key is missing here at once. */
const shapes: Shapes = {
	next: { did: "Went on", keys: none },
	back: { did: "Went back", keys: none },
	"go-on": { did: "Went on to what is open", keys: none },
	answer: { did: "Answered", keys: { value: anAnswer } },
	mark: { did: "Marked", keys: { value: text, by: oneOf(1, -1) } },
	"not-sure": { did: "Answered: not sure", keys: none },
	text: { did: "Typed", keys: { text } },
	describe: { did: "Began to type in a part", keys: none },
	"describe-board": { did: "Began to type in a board", keys: none },
	fact: { did: "Said of the part", keys: { value: anything } },
	"not-on-page": { did: "Said: not on the page", keys: none },
	review: { did: "Looked at all answers", keys: none },
	change: { did: "Went to change an answer", keys: { questionId: text } },
	"way-out": { did: "Took a way out", keys: { changes: listOf("a list of changed answers", isTakenChange) } },
	"fell-out": { did: "Looked at what fell out", keys: none },
	shortlist: { did: "Looked at the shortlist", keys: none },
	"price-line": { did: "Looked at what more money buys", keys: none },
	"find-out": { did: "Looked at what to find out", keys: none },
	board: { did: "Looked at a board", keys: { boardId: text, page: optional(oneOf("facts", "plan", "power")) } },
	"what-if": { did: "Tried another answer", keys: { questionId: optional(text) } },
	"keep-tried": { did: "Took the answer that was tried", keys: none },
	like: {
		did: "Looked for a board like it",
		keys: { boardId: optional(text), direction: optional(oneOf(...likeDirections)) },
	},
	sheet: { did: "Went to the sheet", keys: { page: optional(oneOf("all")) } },
	"write-sheet": { did: "Had the sheet written", keys: { to: text, orNext: optional(yesOrNo) } },
	written: { did: "The sheet was written", keys: { path: text } },
	"not-written": { did: "Nothing was written", keys: { problem: text } },
	menu: { did: "Opened the menu", keys: none },
	open: { did: "Opened a walk", keys: { file: text } },
	settings: { did: "Looked at the settings", keys: none },
	"look-at-example": { did: "Looked at a made-up person's walk", keys: none },
	"leave-example": { did: "Came back to their own walk", keys: none },
	glossary: { did: "Looked at the words", keys: none },
	set: { did: "Set", keys: { setting } },
	tell: { did: "Was told", keys: { words: text } },
	"show-sources": { did: "Turned numbers and sources on or off", keys: none },
	leave: { did: "Left", keys: none },
	"ask-shop": { did: "Looked at what to ask the shop", keys: { boardId: text, language: optional(oneOf("de")) } },
	"they-answered": { did: "Noted what the shop answered", keys: { path: text, asPage: optional(oneOf(true)) } },
	"take-back": { did: "Took back what was told", keys: { path: text } },
	"told-by": { did: "Said who told it", keys: { by: text, replace: optional(oneOf(true)) } },
	coach: { did: "Looked at what to check first", keys: none },
	"coach-name": { did: "Went to say who helps", keys: none },
	withdraw: { did: "Took a suggestion back", keys: { questionId: text } },
	suggestions: { did: "Looked at suggestions", keys: { page: optional(oneOf("decided")) } },
	suggestion: { did: "Looked at a suggestion", keys: { questionId: text } },
	"take-suggestion": { did: "Took a suggestion", keys: { index: count } },
	"leave-suggestions": { did: "Left what is suggested", keys: { questionId: text } },
	"saved-walks": { did: "Looked at the walks kept", keys: none },
	"kept-walk": { did: "Looked at a kept walk", keys: { file: text } },
	"name-walk": { did: "Went to name a walk", keys: { file: optional(text) } },
	"copy-walk": { did: "Had a walk copied", keys: none },
	"remove-walk": { did: "Had a walk removed", keys: none },
	"bring-walk-back": { did: "Had a walk brought back", keys: none },
	"take-walk": { did: "Went to take a walk in", keys: none },
	"walks-changed": {
		did: "The kept walks changed",
		keys: { saved: listOf("a list of walks", isSummary), canBringBack: yesOrNo, words: text },
	},
	"own-parts": { did: "Looked at their own parts", keys: none },
	"new-part": { did: "Began a new part", keys: { kind: optional(kind) } },
	"paste-part": { did: "Went to paste a page", keys: { what: oneOf(...readKinds, "support-list") } },
	paste: { did: "Pasted", keys: { text } },
	read: { did: "Had the page read", keys: none },
	"clear-paste": { did: "Cleared what was pasted", keys: none },
	"own-part": { did: "Looked at a part", keys: { kind, id: text, page: optional(oneOf("facts")) } },
	"edit-part": { did: "Went to change the part", keys: none },
	"copy-part": { did: "Copied the part", keys: none },
	"remove-part": { did: "Removed the part", keys: none },
	"bring-back": { did: "Brought the part back", keys: none },
	"add-offer": { did: "Went to note an offer", keys: none },
	"part-form": { did: "Went to the part's facts", keys: { page: optional(oneOf("all")) } },
	"fact-form": {
		did: "Went to a fact",
		keys: { path: listOf("a list of keys and places", (one) => text.holds(one) || count.holds(one)) },
	},
	"add-entry": { did: "Added an entry", keys: { like: optional(yesOrNo) } },
	"remove-entry": { did: "Removed an entry", keys: none },
	doubt: { did: "Went to what is in doubt", keys: { index: count } },
	unread: { did: "Looked at the lines not understood", keys: none },
	keep: { did: "Kept the part", keys: none },
	"drop-form": { did: "Dropped the part", keys: none },
};

/** An event as it was written, or what was expected in its place. */
export type ReadEvent = { readonly event: WalkEvent } | { readonly expected: string };

/** Holds a parsed and cleaned line against the events there are. */
export function readEvent(json: unknown): ReadEvent {
	if (!isObject(json) || typeof json["type"] !== "string") return { expected: 'an event, such as {"type":"next"}' };
	const { type } = json;
	if (!isEventType(type)) {
		const near = nearWords(type, Object.keys(shapes)).replace(/^ See: .*/, "");
		return { expected: `a kind of event that is known, and not "${type.slice(0, 60)}".${near}` };
	}
	const keys: Readonly<Record<string, Check>> = shapes[type].keys;
	const strange = Object.keys(json).find((key) => key !== "type" && !Object.hasOwn(keys, key));
	if (strange !== undefined) return { expected: `no key "${strange.slice(0, 60)}" in an event of the kind "${type}"` };
	for (const [key, { expected, isOptional, holds }] of Object.entries(keys)) {
		const value = Object.hasOwn(json, key) ? json[key] : undefined;
		if (value === undefined && isOptional) continue;
		if (!holds(value)) return { expected: `${expected} as "${key}" of an event of the kind "${type}"` };
	}
	return { event: json as unknown as WalkEvent };
}

function isEventType(type: string): type is WalkEvent["type"] {
	return Object.hasOwn(shapes, type);
}

/** What was done, with what it was done to: "Typed: 900". */
export function didWords(event: WalkEvent): string {
	const { type, ...rest } = event;
	const values = Object.values(rest).filter((value) => value !== undefined);
	const words = values.map((value) => (typeof value === "string" ? value : JSON.stringify(value)).slice(0, 200));
	return [shapes[type].did, ...(words.length > 0 ? [words.join(", ")] : [])].join(": ");
}
