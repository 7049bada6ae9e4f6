import type { Board } from "../parts/board.ts";
import { cleanLine, cleanText } from "../parts/clean-text.ts";
import { factAt } from "../parts/fact-list.ts";
import { valueIn } from "../parts/form-draft.ts";
import { type FormField, fieldAt } from "../parts/form-fields.ts";
import { readTyped } from "../parts/form-read.ts";
import { expectedWords } from "../parts/form-words.ts";
import { partPrice } from "../parts/part-price.ts";
import { readMoney } from "../questions/read-money.ts";
import { readCell } from "../reading/csv-cells.ts";
import { readBoard } from "../reading/read-board.ts";
import { readSupportList, supportListOf } from "../reading/support-list.ts";
import { fieldOf } from "./told-fact.ts";

/** What reading an answer needs from outside. */
export interface ToldContext {
	/** The board it is about, as it is known until now. */
	readonly board: Board;
	/** Name of the person's processor; null where it is not settled. */
	readonly processor: string | null;
	/** ISO date that "today" means. */
	readonly asOf: string;
	/** Three letters; for a sum without one. */
	readonly currency: string;
}

export type ToldReading = { readonly value: unknown } | { readonly problem: string };

/** More than any list, and than any answer in words, has; in characters (own convention). */
const mostText = 2_000_000;
const mostInLine = 2000;

/**
 * Reads what somebody answered about a fact: typed as in a form or behind `own set`, and where the fact is a list of
 * things, as a board's page prints it. Never throws.
 */
export function readTold(path: string, text: string, context: ToldContext): ToldReading {
	const field = fieldOf(path);
	const fact = factAt("board", path);
	if (!field || !fact) return { problem: `A board has no fact "${cleanLine(path)}" that could be told.` };
	if (text.length > mostText) return { problem: "That is too much text for one answer." };
	if (text.length > mostInLine && path !== "supportList") return { problem: "That is too much text for one answer." };
	const line = cleanLine(text);
	if (line === "" || isNoAnswer.test(line)) return { problem: "That is no answer yet, so nothing is noted." };
	// Every temperature here is in degrees C; 78 F taken for 78 C would be wrong by 52 degrees.
	if (/\d\s*(?:\u00b0|degrees?)?\s*(?:F\b|fahrenheit)/i.test(line) && field.title.toLowerCase().includes("temperature"))
		return { problem: "Temperatures are noted in degrees C here. Type them so." };
	const special = Object.hasOwn(specialReaders, path) ? specialReaders[path] : undefined;
	if (special) return special(cleanText(text), context);
	// As it was said; then with the German words that answer the German question.
	for (const words of new Set([line, inEnglish(line, field)])) {
		const typed = readTyped(field, words, {
			asOf: context.asOf,
			readMoney: (sum) => readMoney(sum, context.currency),
		});
		if ("value" in typed) return typed;
		const cell = readCell(words, { kind: "board", fact, readMoney });
		if ("value" in cell && cell.value !== undefined) return cell;
	}
	const onPage = pageLineOf(path);
	if (onPage) return asOnPage(path, onPage, line);
	return {
		problem: isMadeOfParts(path)
			? "This cannot be told in a line. Copy it from the board's page, or type the board in."
			: `${expectedWords(field)}.`,
	};
}

/** Whether an answer says that nothing is known. */
export function saysNothingKnown(text: string): boolean {
	return isNoAnswer.test(cleanLine(text.slice(0, mostInLine)));
}

/** Words of an answer in the terms of the facts; "no" to what is none, one or the other is "none". */
function inEnglish(line: string, { typed }: FormField): string {
	const hasNone = typed.as === "choice" && typed.choices.includes("none");
	const said = line.replace(/[.!]$/, "");
	const words = germanWords.reduce((text, [german, english]) => text.replace(german, english), said);
	return hasNone && /^(?:no|none|nein|keine[nrs]?|kein)$/i.test(words) ? "none" : words;
}

/** What the German questions are answered with, and short forms of the English ones. */
const germanWords: readonly (readonly [RegExp, string])[] = [
	[/(\d) ?-? ?pol(?:ige[nrs]?|ig)\b/gi, "$1-pin"],
	[/\bjahre?\b/gi, "years"],
	[/^(?:auf )?beiden?(?: seiten?)?$|^on both(?: sides)?$/i, "both sides"],
	[/^(?:auf )?einer seite$|^on one side$/i, "one side"],
	[/^(?:mit )?leuchten$|^(?:by|with) lights$/i, "lights"],
	[/^(?:mit )?ziffern$|^(?:by|with) digits$/i, "digits"],
	[/^integriert$/i, "integrated"],
	[/^einzelne schalter$/i, "separate switches"],
	[/^any(?: one)?$|^jede$/i, "ordinary"],
	[/^(?:just|only) one kind$|^nur eine sorte$/i, "one-family-only"],
];

const isNoAnswer =
	/^(?:not known|don'?t know|no idea|not sure|unknown|unbekannt|weiß nicht|weiss nicht|keine angabe|k\. ?a\.|n\/a|[-–—?.]+)$/i;

function isMadeOfParts(path: string): boolean {
	const as = fieldOf(path)?.typed.as;
	return as === "things" || as === "thing";
}

interface PageLine {
	/** How a page begins the line. */
	readonly label: string;
	/** What a bare number counts; null: a number alone says nothing of what they are. */
	readonly noun: string | null;
	/** What stands behind the label. */
	readonly example: string;
}

/** How a page writes each list of things. */
const pageLines: Readonly<Record<string, PageLine>> = {
	m2Sockets: { label: "M.2 sockets", noun: "", example: "2 x PCIe 4.0 x4" },
	cardSlots: { label: "Expansion slots", noun: null, example: "1 x PCIe 4.0 x16, 2 x PCIe 3.0 x1" },
	drivePorts: { label: "Storage", noun: "SATA", example: "4 x SATA" },
	rearUsb: { label: "Back panel", noun: null, example: "4 x USB 5Gbps, 1 x USB-C 10Gbps" },
	wiredGbps: { label: "LAN", noun: "", example: "1 x 2.5 Gb/s" },
	"headers.fans": { label: "Internal connectors", noun: "fan headers", example: "1 CPU fan, 3 case fans" },
	"headers.lights": { label: "Internal connectors", noun: "LED headers", example: "2 x addressable LED header" },
	"headers.typeC": { label: "Internal connectors", noun: "USB-C front header", example: "1 x USB-C front header" },
};

function pageLineOf(path: string): PageLine | null {
	return Object.hasOwn(pageLines, path) ? (pageLines[path] ?? null) : null;
}

function asOnPage(path: string, { label, noun, example }: PageLine, line: string): ToldReading {
	if (/^(?:none|no|0|nein|keine?|keiner)$/i.test(line)) return { value: [] };
	const isBare = /^\d{1,2}$/.test(line);
	if (isBare && noun === null) return { problem: kindsToo };
	const { part, doubts } = readBoard(`${label}: ${isBare ? `${line} ${noun}`.trim() : line}`);
	const value = valueIn(part, path.split("."));
	const isOpen = doubts.some(({ fact }) => fact.replace(/\[.*$/, "") === path.split(".")[0] || fact.startsWith(path));
	if (value === undefined || isOpen)
		return { problem: `This cannot be read. Write it as the board's page does, such as "${example}".` };
	return { value };
}

const kindsToo = 'Say of which kind they are too, such as "2 x PCIe 4.0 x16" or "4 x USB 5Gbps".';

const specialReaders: Readonly<Record<string, (text: string, context: ToldContext) => ToldReading>> = {
	supportList: readSupport,
	"supportList.rows": () => ({ problem: 'Tell it as "supportList": yes, and since which firmware.' }),
	"firmware.oldestInShops": (text) => {
		const version = versionIn(text);
		return version === null ? { problem: "Type the version alone, such as F12." } : { value: version };
	},
	"firmware.releases": readNewestRelease,
	"powerDelivery.measurements": readMeasurement,
	"power.extraPlugs": readExtraPlug,
	"memory.rates": readFullRate,
	"memory.slotOrder": readSlotsForTwo,
	offers: readReturnDay,
};

/** Words around a version that are none themselves. */
const aroundVersion =
	/\b(?:yes|yep|ja|it'?s|it is|is|since|from|on|starting|with|at least|and|newer|or|later|ab|seit|mit|der|die|das|den|the|version|firmware|bios|uefi|listed|supported|unterstützt|es ist|ist)\b/giu;

/** The one word of an answer that may be a firmware version: with a figure in it. Null where none or several are. */
function versionIn(text: string): string | null {
	const left = cleanLine(text)
		.replace(/[,;:!()"“”„]/g, " ")
		.replace(aroundVersion, " ")
		.trim()
		.replace(/\.$/, "");
	const [only, ...more] = left.split(/\s+/).filter((word) => word !== "");
	return only !== undefined && more.length === 0 && /\d/.test(only) && only.length <= 40 ? only : null;
}

/** Whether the processor runs on the board: yes or a version, or the maker's list itself. */
function readSupport(text: string, { board, processor, asOf }: ToldContext): ToldReading {
	if (/\n/.test(text.trim()) || /\t/.test(text)) {
		const list = supportListOf(readSupportList(text), asOf);
		return list.rows.length > 0 ? { value: list } : { problem: "No list of processors was found in this text." };
	}
	const line = cleanLine(text);
	if (processor === null) return { problem: "First say which processor you have. The answer is about that one." };
	if (/^(?:no|nein|not|nicht|does not|nope)\b/i.test(line))
		return {
			problem:
				"Then leave this board aside. To keep it as a fact, paste the maker's list: it holds for other processors too.",
		};
	const rest = line.replace(/[.,!]/g, " ").replace(aroundVersion, " ").trim();
	const isPlainYes = /^(?:yes|yep|ja|y|j)\b/i.test(line) && (rest === "" || everyVersion.test(rest));
	const version = isPlainYes ? null : versionIn(line);
	if (!isPlainYes && version === null)
		return { problem: 'Type yes, or yes and the version since when, such as "yes, since F12".' };
	const row = { processor, ...(version === null ? {} : { fromVersion: version }) };
	return { value: { ...(board.supportList ? {} : { readOn: asOf }), partial: true, rows: [row] } };
}

const everyVersion =
	/^(?:all|any|every|first|the first|erste[nr]?|allen|alle|anfang an|beginning|the beginning)(?: one| versions?)?$/i;

const dateIn = /\b(\d{4}-\d{2}-\d{2}|\d{1,2}\.\d{1,2}\.\d{4})\b/;

/** "F12, 2026-10-01": the newest firmware and its day. */
function readNewestRelease(text: string, context: ToldContext): ToldReading {
	const line = cleanLine(text);
	const day = dateIn.exec(line)?.[0];
	const version = versionIn(line.replace(dateIn, " ").replace(/\b(?:of|vom|dated|newest)\b/gi, " "));
	const date = day === undefined ? undefined : dayOf(day, context);
	if (version === null || date === undefined)
		return { problem: 'Type the newest version and its day, such as "F12, 2026-10-01".' };
	return { value: [{ version, date }] };
}

function dayOf(text: string, { asOf, currency }: Pick<ToldContext, "asOf" | "currency">): string | undefined {
	const field = fieldOf("checkedOn");
	const reading = field && readTyped(field, text, { asOf, readMoney: (sum) => readMoney(sum, currency) });
	return reading && "value" in reading && typeof reading.value === "string" ? reading.value : undefined;
}

/** "78 C at 150 W, room 22 C": a figure for each, in any order. */
function readMeasurement(text: string): ToldReading {
	const line = cleanLine(text).replace(/(\d),(\d)/g, "$1.$2");
	const room =
		/(?:room|air|ambient|raum|luft)\D{0,15}?(\d{1,2}(?:\.\d)?)|(\d{1,2}(?:\.\d)?)\s*°?\s*C?\s*(?:room|air|ambient|raum|luft)/i.exec(
			line,
		);
	const load = /(\d{2,4}(?:\.\d)?)\s*(?:W\b|watts?\b)/i.exec(line);
	const others = line
		.replace(room?.[0] ?? "", " ")
		.replace(load?.[0] ?? "", " ")
		.match(/\d{2,3}(?:\.\d)?/g);
	const [stageC, ...more] = others ?? [];
	const airC = room?.[1] ?? room?.[2];
	if (!load?.[1] || airC === undefined || stageC === undefined || more.length > 0)
		return { problem: 'Type all three figures, such as "78 C at 150 W, room 22 C".' };
	return { value: [{ loadW: Number(load[1]), airC: Number(airC), stageC: Number(stageC) }] };
}

/** Whether a further plug has to be connected: no, or which. */
function readExtraPlug(text: string): ToldReading {
	const line = cleanLine(text);
	if (/^(?:no|none|nein|keine[nrs]?|kein)\b/i.test(line)) return { value: [] };
	const field = fieldAt("board", ["power", "extraPlugs", 0, "plug"]);
	const plugs = field?.typed.as === "choice" ? field.typed.choices.map(String) : [];
	const said = line.toLowerCase().replace(/-?pol(?:ige[nrs]?|ig)\b/g, "-pin");
	const plug = plugs.find((one) => said === one.toLowerCase());
	return plug === undefined ? { problem: `Type no, or the plug: ${plugs.join(", ")}.` } : { value: [{ plug }] };
}

/** The rate with all slots filled; how many modules a channel that is follows from slots and channels. */
function readFullRate(text: string, { board }: ToldContext): ToldReading {
	const { slots, channels } = board.memory ?? {};
	const rate = /^(\d{3,5})(?: ?(?:MT\/s|MHz))?$/i.exec(cleanLine(text))?.[1];
	if (rate === undefined) return { problem: "Type the rate alone, such as 5200." };
	if (!slots || !channels || slots % channels !== 0)
		return { problem: "Note first how many slots and channels of memory it has." };
	return { value: [{ modulesPerChannel: slots / channels, mtPerS: Number(rate) }] };
}

/** "A2, B2": the slots for two modules. */
function readSlotsForTwo(text: string): ToldReading {
	const names = cleanLine(text)
		.replace(/^2\s*:/, "")
		.split(/\s*(?:[,;]|\band\b|\bund\b)\s*/i)
		.map((name) => name.trim())
		.filter((name) => name !== "");
	const isSound = names.length === 2 && names.every((name) => /^[\w-]{1,20}$/.test(name) && /\d/.test(name));
	return isSound ? { value: { "2": names } } : { problem: 'Type both names, such as "A2, B2".' };
}

/** A day until which the board can go back, put into the offer that a buyer would take. */
function readReturnDay(text: string, context: ToldContext): ToldReading {
	const day = dayOf(cleanLine(text).replace(/^(?:until|bis|bis zum)\s+/i, ""), context);
	if (day === undefined) return { problem: "Type the last day it can go back, such as 2026-12-24." };
	const { offers = [], checkedOn } = context.board;
	const price = partPrice(context.board)?.price;
	if (!price) return { problem: "Note first what the shop asks for it: a day alone is no offer." };
	const at = offers.findIndex((one) => one.price.minor === price.minor && one.price.currency === price.currency);
	if (at >= 0) return { value: offers.map((one, index) => (index === at ? { ...one, returnableUntil: day } : one)) };
	const seen = checkedOn ? { seenOn: checkedOn } : {};
	return { value: [...offers, { price, condition: "new", ...seen, returnableUntil: day }] };
}

/** What may be answered, as a sentence; for the person who types it in. */
export function answerWords(path: string): string {
	const onPage = pageLineOf(path);
	if (onPage) return `As the board's page writes it, such as "${onPage.example}".`;
	switch (path) {
		case "supportList":
			return 'Type yes, or yes and since which firmware: "yes, since F12".';
		case "firmware.oldestInShops":
			return "Type the version alone, such as F12.";
		case "firmware.releases":
			return 'Type the version and its day: "F12, 2026-10-01".';
		case "powerDelivery.measurements":
			return 'Type all three figures: "78 C at 150 W, room 22 C".';
		case "power.extraPlugs":
			return "Type no, or which plug it is.";
		case "wireless.moduleSocket":
			return "Type any, just one kind, or none.";
		case "memory.rates":
			return "Type the rate alone, such as 5200.";
		case "memory.slotOrder":
			return 'Type both names, such as "A2, B2".';
		case "offers":
			return "Type the day, such as 2026-12-24.";
		default: {
			const field = fieldOf(path);
			return field && !isMadeOfParts(path) ? `${expectedWords(field)}.` : "Type what they said.";
		}
	}
}
