import { type WordTest, words } from "./words.ts";

/** What a line of a board's page is about, by the words it stands under. */
export type BoardTopic =
	| "memory"
	| "slots"
	| "storage"
	| "usb"
	| "back"
	| "internal"
	| "picture"
	| "network"
	| "wireless"
	| "sound"
	| "size"
	| "processor"
	| "chipset"
	| "accessories"
	| "overview";

const topics: readonly (readonly [BoardTopic, WordTest])[] = [
	["accessories", words.accessories],
	["wireless", words.wireless],
	["back", words.back],
	[
		"memory",
		/memoria\sinterna|mémoire\sinterne|interner?\sspeicher|internal\smemory|intern(?:a|e)\s(?:geheugen|memória)/i,
	],
	["internal", /\binternal\b/i],
	["internal", words.internal],
	["memory", words.memory],
	["usb", words.usb],
	["network", words.network],
	["sound", words.sound],
	["size", words.size],
	["storage", words.storage],
	["slots", words.slots],
	["picture", words.picture],
	["chipset", words.chipset],
	["processor", words.processor],
	["processor", words.socket],
	["overview", words.overview],
];

/** A line that sums up what the lines below tell one by one. */
export const sumLine =
	/^(?:total\b|in\s(?:total|all)\b|altogether\b|insgesamt|gesamt|overall|supports?\s(?:up\sto\s)?\d|unterstützt\s\d|suporta\s\d|soporta\s\d|prend\sen\scharge\s\d)/iu;

/** Labels and heads stand over many lines: what each is about is worked out once. Emptied when full, so that it cannot grow. */
const known = new Map<string, { readonly topic: BoardTopic | undefined }>();
const mostKnown = 2000;

export function topicOf(label: string): BoardTopic | undefined {
	const before = known.get(label);
	if (before) return before.topic;
	// The small letter of the dotted capital I is two characters, which no pattern knows.
	const text = label.replaceAll("İ", "i").toLowerCase();
	const topic = topics.find(([, pattern]) => pattern.test(text))?.[0];
	if (known.size >= mostKnown) known.clear();
	if (label.length <= 120) known.set(label, { topic });
	return topic;
}
