import { linkGenerations } from "../parts/vocabulary.ts";
import {
	bracketsOf,
	type Doubt,
	eachOnce,
	evenRun,
	footnoteWord,
	itemsOf,
	known,
	onlyOf,
	quoteOf,
	someOfThem,
} from "./quantities.ts";
import { generationsIn, lanesIn, sourceIn } from "./read-slots.ts";

/** M.2 sockets of one sort, as a text tells of them. What it does not tell has no key. */
export type M2Reading = {
	readonly count?: number;
	/** Names printed on the board, each written out. */
	readonly names?: readonly string[];
	/** E is for wireless cards, not for drives. */
	readonly key?: "B" | "M" | "E";
	/** Lengths in mm, shortest first. */
	readonly lengthsMm?: readonly number[];
	readonly generation?: number;
	/** The widest that is named. */
	readonly wiredLanes?: number;
	readonly sata?: boolean;
	readonly from?: "processor" | "chipset";
	readonly quote: string;
};

const socketWord = /\bm\.?\s?2(?![\d.])/i;
/** Things that come with M.2 sockets or go by their name. */
const falseFriend =
	/\b(?:screws?|schrauben?|stand-?offs?|abstandshalter|heat\s?sinks?|heatspreader|kühlkörper|kühler|thermal\spads?|wärmeleitpads?|armou?r|cover|clips?|latch|holder|riser|adapter|raid)\b/i;
const itemStart =
	/(?<![\w.])\d{1,2}\s?x\s?(?=(?:[^\s\d,;:()]{1,15}\s){0,3}m\.?2\b)|[,+](?=\s{0,3}\d{1,2}\s(?:x\s)?m\.?2\b)/gi;
/** "M2_1", "M.2_1,2", "M2A_CPU", "M2_3/4". */
const nameMark = /\bM\.?2(?:_[A-Z]?\d{0,2}|[A-Z]\d?)(?:_[A-Z]{2,8})?(?:\s?[,/&]\s?_?\d(?![\d.x]|\s?x\b))*/gi;
const spanMark = /(?<=\d\S{0,6}\s{0,2})(?:~|\bto\b|\bbis\b|-)\s{0,2}M\.?2_/i;
const lengthMark = /(?<![\w.])(?:16|22|25|30)(30|42|60|80|110)(?![\d.])((?:\s?\/\s?(?:30|42|60|80|110)(?!\d))*)/g;

/** Names, each written out: "M.2_1,2" is "M.2_1" and "M.2_2". */
function namesIn(text: string): readonly string[] {
	return eachOnce(
		[...text.matchAll(nameMark)].flatMap(([all]) => {
			const [first = "", ...more] = all.split(/\s?[,/&]\s?/);
			if (/_$/.test(first)) return [];
			const stem = first.replace(/\d{1,2}$/, "");
			return [first, ...more.map((end) => `${stem}${end.replace("_", "")}`)];
		}),
	);
}

function lengthsIn(text: string): readonly number[] {
	return eachOnce(
		[...text.matchAll(lengthMark)].flatMap(([, first, more = ""]) =>
			[first, ...(more.match(/\d+/g) ?? [])].map(Number),
		),
	).toSorted((one, other) => one - other);
}

function keysIn(text: string): readonly ("B" | "M" | "E")[] {
	const marks = [
		...text.matchAll(/\bkey[\s-]?([bme])(?![a-z0-9])/gi),
		...text.matchAll(/(?<![\w.])([bme])[\s-]?key(?![a-z])/gi),
	];
	return eachOnce(marks.map(([, letter = ""]) => letter.toUpperCase() as "B" | "M" | "E"));
}

function countsIn(text: string): readonly number[] {
	return eachOnce(
		[
			...text.matchAll(/(?<![\w.,])(\d{1,2})\s?x(?!\s?\d)(?=[^,;]{0,30}m\.?\s?2)/gi),
			...text.matchAll(/(?<![\w.,]|m\.?\s|key\s|gen\s)(\d{1,2})\s(?=(?:[^\s\d,;:()]{1,15}\s){0,3}m\.?2\b)/gi),
			...text.matchAll(/[:=]\s{0,3}(\d{1,2})\s{0,2}[^\d\s,;:]{0,8}\s{0,3}$/gi),
			...text.matchAll(/(?<=m\.?2(?:\s(?:slots?|sockets?|steckplätze))?)\s?x\s?(\d{1,2})(?!\d)/gi),
		].map(([, figure]) => Number(figure)),
	).filter((count) => count > 0);
}

/** Whether SATA drives go in as well: "open" where SATA may be said of another connector. */
function sataIn(text: string): boolean | "open" | undefined {
	if (!/sata/i.test(text)) return undefined;
	if (footnoteWord.test(text) || /sata[\s_]?\d?_/i.test(text)) return "open";
	const ports =
		/(?:(?<![\w.])\d\s?x?|dual|quad|two|four|six|zwei|vier|sechs)\s(?:[a-z]+\s)?sata|sata[^,;()\n]{0,16}(?:ports?|connectors?|anschl|buchse)/gi;
	const left = text.replace(ports, " ");
	if (!/sata/i.test(left)) return undefined;
	if (/\b(?:no|not|without|kein\w*|nicht|ohne)\b[^.;]{0,30}sata|sata[^.;]{0,30}\b(?:not|nicht)\b/i.test(left))
		return false;
	return true;
}

type M2Read = { readonly sockets: readonly M2Reading[]; readonly doubts: readonly Doubt[] };

function readItem(item: string, quote: string, around: "processor" | "chipset" | undefined): M2Read {
	const doubts: Doubt[] = [];
	const doubt = (about: string, might: readonly (number | string)[], why: string) =>
		doubts.push({ about, quote, might: eachOnce(might), why });

	const names = namesIn(item);
	const counts = countsIn(bracketsOf(item).outside);
	const stated = onlyOf(counts);
	let count = stated ?? (names.length > 0 ? names.length : undefined);
	if (counts.length > 1) {
		doubt("count", counts, "The text gives more than one count.");
		count = undefined;
	} else if (spanMark.test(item) && stated === undefined) {
		doubt("count", [], "The names are given as a span, and what lies between is not named.");
		count = undefined;
	} else if (stated !== undefined && names.length > 0 && names.length !== stated && !spanMark.test(item)) {
		doubt("count", [stated], "The count and the names beside it do not agree.");
		count = undefined;
	}
	const keys = keysIn(item);
	if (keys.length > 1) doubt("key", keys, "A socket has one key, and the text names more.");

	if (keys.length === 0 && /wi-?fi|wlan|wireless|bluetooth/i.test(item)) {
		doubt("key", ["E"], "The text speaks of wireless and names no key.");
	}
	const lengths = lengthsIn(item);
	const isSpan = /(?:16|22|25|30)(?:30|42|60|80)\s?(?:-|~|to|bis)\s?(?:16|22|25|30)?(?:42|60|80|110)(?!\d)/i.test(item);
	if (isSpan) doubt("lengths", lengths, "The lengths are given as a span, and what lies between is not named.");

	const generations = generationsIn(item).filter(
		(generation) => generation >= linkGenerations.least && generation <= linkGenerations.most,
	);
	if (generations.length > 1) doubt("generation", generations, "The text names more than one generation.");
	const lanes = lanesIn(item.replace(lengthMark, " "))
		.map((mark) => mark.lanes)
		.filter((lane) => lane <= 4);
	const widest = lanes.length > 0 ? Math.max(...lanes) : undefined;
	// "x4/x2" takes both; "x4 or x2" and "x2 when" is a condition.
	const depends = new Set(lanes).size > 1 && /\b(?:or|oder|when|wenn|if|only|nur|shared?|geteilt)\b/i.test(item);
	if (depends) doubt("lanes wired", lanes, "How many lanes are wired depends on something else.");

	const sata = sataIn(item);
	if (sata === "open") doubt("SATA", ["yes", "no"], "The text names SATA, yet maybe of another connector.");
	if (someOfThem.test(item)) {
		doubt("some of them", [], "The text speaks of some of the sockets only.");
		return { sockets: [{ ...known({ count, key: onlyOf(keys) }), quote }], doubts };
	}
	return {
		sockets: [
			{
				...known({
					count,
					names: names.length > 0 ? names : undefined,
					key: onlyOf(keys),
					lengthsMm: lengths.length > 0 && !isSpan ? lengths : undefined,
					generation: onlyOf(generations),
					wiredLanes: depends ? undefined : widest,
					sata: sata === "open" ? undefined : sata,
					from: sourceIn(item) ?? around,
				}),
				quote,
			},
		],
		doubts,
	};
}

/**
 * M.2 sockets that a run of text tells of; those for wireless cards have key E. Screws, stand-offs and coolers for them
 * are no sockets. `around` is where the lanes come from if the section head tells. Never throws.
 */
export function readM2(text: string, around?: "processor" | "chipset"): M2Read {
	const even = evenRun(text);
	const read = itemsOf(even, itemStart)
		.filter(({ text: item }) => socketWord.test(item) || namesIn(item).length > 0)
		// A named socket with lanes may have its own heat sink.
		.filter(
			({ text: item }) =>
				!falseFriend.test(bracketsOf(item).outside) || (namesIn(item).length > 0 && lanesIn(item).length > 0),
		)
		.filter(({ text: item }) => countsIn(item).length > 0 || !footnoteWord.test(item))
		.filter(({ text: item }) => !/\bdeaktiviert\b|\bdisables\b|\bschaltet\b/i.test(item))
		.map((item) => readItem(item.text, quoteOf(text, item), around));
	return { sockets: read.flatMap(({ sockets }) => sockets), doubts: read.flatMap(({ doubts }) => doubts) };
}
