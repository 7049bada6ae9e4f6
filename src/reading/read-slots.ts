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

/** Card slots of one sort, as a text tells of them. What it does not tell has no key. */
export type SlotReading = {
	readonly bus: "PCI Express" | "PCI";
	readonly count?: number;
	/** Names printed on the board. */
	readonly names?: readonly string[];
	/** How long the slot is, in lanes. */
	readonly lengthLanes?: number;
	/** Lanes that are wired; only where the text says so apart from the length. */
	readonly wiredLanes?: number;
	readonly generation?: number;
	readonly from?: "processor" | "chipset";
	readonly quote: string;
};

const expressWord = /pci[\s-]?e(?:xpress)?(?![a-z])/i;
const expressName = "pci[\\s-]?e(?:xpress)?®?";
const plainBus = /\bpci\b(?![\s-]?e)/i;
/** Other things that a line with "PCI Express" may tell of. */
const falseFriend =
	/\bm\.?2|nvme|\bkey\b|\d[\s-]?(?:pin|pol)|power|strom|\bssd\b|riser|steam|wi-?fi|wlan|\blan\b|u\.2|slimsas|oculink|bandwidth|raid/i;
const laneMark = /(?<![\w.])x\s?(16|8|4|2|1)(?![\d.]|\s?x\s?\d)/gi;
const mechanical = /mechani\w*|physi\w*|\blength\b|\blong\b|\blang\b|baulänge|\bgröße|form\s?factor/i;
const modeMark =
	/x\s?\d{1,2}[\s-]?(?:mode|modus|speed|bandwidth|elektr\w*|electr\w*)|(?:mode|modus|runn?\w*|läuft|mit|at|@|elektrisch|electrical\w*|angebunden|wired)\s?(?:as\s|at\s|mit\s|for\s|als\s)?x\s?\d/i;
const itemStart = new RegExp(
	`(?<![\\w.])\\d{1,2}\\s?x\\s?(?=(?:[a-z]+\\s){0,2}(?:${expressName}|pci\\b))|[,+](?=\\s{0,3}\\d{1,2}\\s?x?\\s?${expressName})`,
	"gi",
);
const nameMark = /\bPCI(?:E|EX|_E)[_]?(?:X\d{1,2}_?)?\d{1,2}(?:_\d{1,2})?\b(?!\.\d|\s?x\d)/g;

/** Generations named in a text, such as "PCIe 5.0", "Gen 4", "Gen4x4". */
export function generationsIn(text: string): readonly number[] {
	const named = [
		...text.matchAll(
			/(?:pci[\s-]?e(?:xpress)?®?[\s-]?)(?:x(?:16|8|4|2|1)\s)?(?:gen\.?\s?|v)?([1-9])(?:\.[0-9])?(?![\d.])(?:\s?\/\s?([1-9])(?:\.[0-9])?(?![\d.]))?/gi,
		),
		...text.matchAll(/\bgen(?:eration)?\.?\s?([1-9])(?:\.0)?(?!\d|\s?%)/gi),
		...text.matchAll(/(?<![\d.]|\d\s?\/\s?)([1-9])\.0(?=\s?x\s?(?:16|8|4|2|1)\b)/gi),
	];
	// "4.0/3.0" is the newer one, where the processor has it.
	return eachOnce(named.map(([, one, other]) => Math.max(Number(one), Number(other ?? one))));
}

/** Lanes named in a text, each with its place. */
export function lanesIn(text: string): readonly { readonly lanes: number; readonly at: number }[] {
	// "Gen4x4" and "3.0x4" have no space in front of the x.
	const glued = text.replace(/(gen\.?\s?[1-9]|[1-9]\.[0-9])x(?=\d)/gi, (all) => `${all.slice(0, -1).slice(0, -1)} x`);
	return [...glued.matchAll(laneMark)].map(({ 1: figure, index }) => ({ lanes: Number(figure), at: index }));
}

/** "processor", "chipset" or nothing, where the text names just one of them. */
export function sourceIn(text: string): "processor" | "chipset" | undefined {
	const processor =
		/\b(?:from|by|via|of|vom|von|aus|über|durch)\s(?:the\s|der\s|den\s)?(?:cpu|processor|prozessor)\b|\(\s?(?:cpu|prozessor|processor)\s?\)|_cpu\b/i;
	const chipset =
		/\b(?:from|by|via|of|vom|von|aus|über|durch)\s(?:the\s|dem\s|den\s)?(?:[\w-]+\s)?chips[eä]t(?:z|s)?\b|\(\s?(?:chipset|chipsatz|pch)\s?\)/i;
	const isProcessor = processor.test(text);
	const isChipset = chipset.test(text);
	if (isProcessor === isChipset) return undefined;
	return isProcessor ? "processor" : "chipset";
}

type SlotsRead = { readonly slots: readonly SlotReading[]; readonly doubts: readonly Doubt[] };

function countOf(text: string): readonly number[] {
	return eachOnce(
		[
			...text.matchAll(/(?<![\w.,])(\d{1,2})\s?x(?!\s?\d)/gi),
			...text.matchAll(/^[\s,+-]{0,4}(\d{1,2})\s(?=(?:[a-z]+\s){0,2}pci)/gi),
			...text.matchAll(/[:=]\s{0,3}(\d{1,2})\s{0,2}[^\d\s,;:]{0,8}\s{0,3}$/gi),
			...text.matchAll(/(?<=slots?|steckpl[aä]tze?)\s?x\s?(\d{1,2})(?!\d)/gi),
		].map(([, figure]) => Number(figure)),
	).filter((count) => count > 0);
}

/** A slot longer than its lanes: "x8 (in x16 slot)". */
function inLonger(
	item: string,
	quote: string,
	lengthLanes: number,
	count: number | undefined,
	from: "processor" | "chipset" | undefined,
): SlotReading {
	const wired = lanesIn(item.replace(nameMark, " "))[0]?.lanes;
	const generation = onlyOf(generationsIn(item.replace(nameMark, " ")));
	const wiredLanes = wired !== undefined && wired <= lengthLanes ? wired : undefined;
	return { bus: "PCI Express", lengthLanes, quote, ...known({ count, wiredLanes, generation, from }) };
}

function readItem(item: string, quote: string, around: "processor" | "chipset" | undefined): SlotsRead {
	const doubts: Doubt[] = [];
	const doubt = (about: string, might: readonly (number | string)[], why: string) =>
		doubts.push({ about, quote, might: eachOnce(might), why });
	const isExpress = expressWord.test(item);
	const counts = countOf(bracketsOf(item).outside);
	if (counts.length > 1) doubt("count", counts, "The text gives more than one count.");
	const names = eachOnce([...item.matchAll(nameMark)].map(([name]) => name));
	const count = onlyOf(counts);
	if (count !== undefined && names.length > 1 && names.length !== count) {
		doubt("count", [count], "The count and the names beside it do not agree.");
	}
	const sureCount = doubts.length > 0 ? undefined : (count ?? (names.length > 0 ? names.length : undefined));
	const from = sourceIn(item) ?? around;
	if (someOfThem.test(item)) {
		doubt("some of them", [], "The text speaks of some of the slots only.");
		return { slots: [{ ...known({ count: sureCount }), bus: isExpress ? "PCI Express" : "PCI", quote }], doubts };
	}
	if (!isExpress) {
		if (counts.length === 0) return { slots: [], doubts };
		return { slots: [{ ...known({ count: sureCount, from }), bus: "PCI", quote }], doubts };
	}
	const generations = generationsIn(item.replace(nameMark, " ")).filter(
		(generation) => generation >= linkGenerations.least && generation <= linkGenerations.most,
	);
	if (generations.length > 1) doubt("generation", generations, "The text names more than one generation.");

	// "x8 (in x16 slot)": the bracket has the length.
	const within = /\((?:in|physical(?:ly)?)\s(?:an?\s|the\s)?x\s?(16|8|4)(?:\sslot)?\)/i.exec(item);
	if (within) return { slots: [inLonger(item, quote, Number(within[1]), sureCount, from)], doubts };
	const marks = lanesIn(item.replace(nameMark, " "));
	// The mark next to "mechanical" is the length; without such a word the first one is.
	const saysLength = mechanical.exec(item.replace(nameMark, " "))?.index;
	const [nearest] =
		saysLength === undefined
			? marks
			: marks.toSorted((one, other) => Math.abs(one.at - saysLength) - Math.abs(other.at - saysLength));
	const others = eachOnce(marks.filter((mark) => mark !== nearest).map(({ lanes }) => lanes));
	// One mark alone that tells a mode tells nothing of the length.
	const isMode = marks.length === 1 && modeMark.test(item);
	const lengthLanes = isMode ? undefined : nearest?.lanes;
	let wiredLanes = isMode ? nearest?.lanes : onlyOf(marks.filter((mark) => mark !== nearest).map(({ lanes }) => lanes));
	if (others.length > 1) doubt("lanes wired", others, "How many lanes are wired depends on something else.");
	// Beside a second generation it is the case of another processor, not a mode.
	if (generations.length > 1) wiredLanes = undefined;
	if (wiredLanes !== undefined && lengthLanes !== undefined && wiredLanes > lengthLanes) {
		doubt("lanes wired", [lengthLanes, wiredLanes], "More lanes than the slot is long for.");
		wiredLanes = undefined;
	}
	if (
		sureCount !== undefined &&
		sureCount > 1 &&
		wiredLanes !== undefined &&
		/\b(?:or|oder|single|dual|shared?|geteilt)\b/i.test(item)
	) {
		doubt("lanes wired", [wiredLanes], "The slots may share their lanes.");
		wiredLanes = undefined;
	}
	return {
		slots: [
			{
				...known({
					count: sureCount,
					names: names.length > 0 ? names : undefined,
					lengthLanes,
					wiredLanes,
					generation: onlyOf(generations),
					from,
				}),
				bus: "PCI Express",
				quote,
			},
		],
		doubts,
	};
}

/**
 * Card slots that a run of text tells of. `around` is where their lanes come from if the section head tells. Drive
 * sockets and power plugs that name PCI Express are left alone. Never throws.
 */
export function readSlots(text: string, around?: "processor" | "chipset"): SlotsRead {
	const even = evenRun(text);
	const read = itemsOf(even, itemStart)
		.filter(({ text: item }) => expressWord.test(item) || plainBus.test(item))
		.filter(({ text: item }) => !falseFriend.test(bracketsOf(item).outside))
		// A sentence about modes or sharing has no slot of its own.
		.filter(({ text: item }) => countOf(item).length > 0 || !footnoteWord.test(item))
		.filter(({ text: item }) => !/\b(?:no|without|kein\w*|ohne)\s(?:pci\b|slots?)/i.test(item))
		.map((item) => readItem(item.text, quoteOf(text, item), around));
	return { slots: read.flatMap(({ slots }) => slots), doubts: read.flatMap(({ doubts }) => doubts) };
}
