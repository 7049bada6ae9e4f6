import type { ReadAt } from "./part-reading.ts";
import { clocksIn, coresIn, wattsIn } from "./processor-figures.ts";
import { memoryTypesIn } from "./processor-memory.ts";
import { clockWithoutName, type ProcessorNotes } from "./processor-notes.ts";
import { inProcessorTerms } from "./processor-terms.ts";
import { clockNamed, isOfGraphics, isOfSmallCores, powerNamed } from "./processor-topics.ts";
import { generationsIn, readMemoryWords, saysNoGraphics, socketsIn } from "./processor-values.ts";

/** Words with which a sentence speaks of something else, or only perhaps of this. */
const elsewhere =
	/\b(?:more|mehr|twice|doppelt|if|when|wenn|falls|other|andere\w*|similar|ähnlich\w*|alternativ\w*|instead|statt|recommended|empfohlen\w*|empfehl\w*|mainboard|motherboard|power supply|netzteil|graphics card(?! (?:is )?(?:required|needed))|grafikkarte(?! (?:erforderlich|benötigt|notwendig)))\b|\?/i;

/** Words that compare with another processor: all that follows in the sentence may be that one's. */
const compares =
	/\b(?:than|als|compared|vergl\w+|unlike|anders|predecessor|vorgänger\w*|previous|vorherige\w*|last generation|hatten?|had)\b/i;

const ofCooler = /cooler|cooling|kühler|kühlung|heat ?sink|\bfan\b|lüfter|radiator/i;

const hasGraphics =
	/\b(?:integrated|integrierte[rn]?|with|mit|built-in|onboard) (?:graphics|grafik\w*|i?gpu)\b|\b(?:with|mit|includes) i?gpu\b|\bgraphics (?:are |is )?(?:built[ -]in|integrated|included)\b/i;
const denies = /\b(?:not?|without|lacks?|needs?|requires?|required|nicht|kein\w*|ohne|models|versions|varianten)\b/i;

/** What a sentence tells without a name. */
interface Nameless {
	readonly clocks: Set<number>;
	readonly watts: Set<number>;
	/** How many kinds of facts it tells besides. */
	kinds: number;
	hasBase: boolean;
	readonly boosts: Set<number>;
}

/** A line without a label, as titles and lists in a row are: "LGA1432, turbo 4.30 GHz, 4C/8T, box". */
export function readRunOn(text: string, at: ReadAt, notes: ProcessorNotes): boolean {
	// What somebody said, and what another thing costs, is no word of the page on this processor.
	if (/^["„“”«»'‘]/.test(text.trim())) return false;
	let isRead = false;
	for (const pieces of sentencesOf(inProcessorTerms(text))) {
		const nameless: Nameless = { clocks: new Set(), watts: new Set(), kinds: 0, hasBase: false, boosts: new Set() };
		if (!notes.mayRead(pieces.length)) return isRead;
		for (const piece of pieces) {
			if (compares.test(piece)) break;
			if (elsewhere.test(piece)) continue;
			isRead = readPiece(piece, at, notes, nameless) || isRead;
		}
		settle(nameless, pieces, at, notes);
	}
	return isRead;
}

/** Titles of the trade give one clock and the watts of the label bare: "6C/12T, 3.8 GHz (boost 5.1 GHz), 65W, tray". */
function settle(nameless: Nameless, pieces: readonly string[], at: ReadAt, notes: ProcessorNotes): void {
	const longest = Math.max(...pieces.map((piece) => piece.split(/\s+/).length));
	const isTitle = pieces.length >= 3 ? nameless.kinds >= 2 && longest <= 9 : nameless.kinds >= 3 && longest <= 14;
	const [clock] = nameless.clocks;
	const boost = Math.max(...nameless.boosts);
	if (clock !== undefined && nameless.clocks.size === 1 && !nameless.hasBase && clock < boost)
		notes.found("baseGhz", clock, at);
	else if (!nameless.hasBase && isTitle && nameless.clocks.size === 1 && clock !== undefined)
		notes.plainClock(clock, at);
	else if (!nameless.hasBase) for (const ghz of nameless.clocks) notes.hinted("baseGhz", [ghz], at, clockWithoutName);
	const [watts] = nameless.watts;
	if (watts !== undefined && nameless.watts.size === 1 && isTitle) notes.otherwise("baseW", watts, at);
	else
		for (const one of nameless.watts) notes.hinted("baseW", [one], at, "The text gives watts and does not say which.");
}

/** A line of more pieces is no title; own convention, for rubbish. */
const mostPieces = 60;

/** At stops, then at commas, bars and dashes, but not within numbers or brackets. */
function sentencesOf(text: string): readonly (readonly string[])[] {
	const sentences: string[][] = [[]];
	let count = 0;
	let depth = 0;
	let from = 0;
	const even = text.slice(0, 2000);
	const close = (end: number) => {
		const piece = even.slice(from, end).trim();
		from = end + 1;
		if (piece === "" || count >= mostPieces) return;
		count++;
		sentences.at(-1)?.push(piece);
	};
	for (const { 0: letter, index: at } of even.matchAll(/[()[\],;|•·.!?/–—-]/g)) {
		if (letter === "(" || letter === "[") depth++;
		if ((letter === ")" || letter === "]") && depth > 0) depth--;
		if (depth > 0) continue;
		const isDash = /[-–—]/.test(letter) && even[at - 1] === " " && /^ \D/.test(even.slice(at + 1, at + 3));
		const isComma = letter === "," && !/\d/.test(even[at + 1] ?? "");
		const isStop = /[.!?]/.test(letter) && /^(?:\s|$)/.test(even.slice(at + 1, at + 2)) && !isShortened(even, at);
		// A slash between spaces, and one between a unit and the next figure.
		const isSlash = letter === "/" && even[at - 1] === " " && even[at + 1] === " ";
		if (!isDash && !isComma && !isStop && !isSlash && !/[;|•·]/.test(letter)) continue;
		close(letter === "?" ? at + 1 : at);
		if (isStop) sentences.push([]);
	}
	close(even.length);
	return sentences.filter((pieces) => pieces.length > 0);
}

/** "max. 5 GHz": the stop ends a word, no sentence. */
const isShortened = (text: string, at: number): boolean =>
	text[at] === "." &&
	/(?:^|[\s(])(?:max|min|inkl|incl|ca|approx|bzw|no|nr|vs|gen|freq|proc)$/i.test(text.slice(Math.max(0, at - 8), at));

function readPiece(piece: string, at: ReadAt, notes: ProcessorNotes, nameless: Nameless): boolean {
	const isShort = piece.split(/\s+/).length <= 10;
	const isOwn = piece.split(/\s+/).length <= 30;
	let isRead = false;
	const found = (fact: string, value: unknown) => {
		notes.found(fact, value, at);
		nameless.kinds++;
		isRead = true;
	};
	if (saysNoGraphics(piece)) found("graphics", false);
	else if (isOwn && hasGraphics.test(piece) && !denies.test(piece)) found("graphics", true);

	const isGraphics = isOfGraphics(piece.replace(hasGraphics, " ")) && !saysNoGraphics(piece);
	const isCooler = ofCooler.test(piece.replace(/\([^()]*\)/g, " ")) && !/\bprocessor|prozessor|\bcores?\b/i.test(piece);
	if (!isGraphics && !isCooler) {
		const both = /(?<![\w.,+])(\d{1,3})\s?c\s?\/\s?(\d{1,3})\s?t\b/i.exec(piece);
		if (both) {
			found("cores", Number(both[1]));
			found("threads", Number(both[2]));
		}
		const words =
			/(?<![\w.,+-])(?:\d{1,3}[\s-]?(?:cores?\b|kerne?\b)|(?:dual|quad|hexa|octa|deca)[\s-]?core\b)(?:\s?\([^()]{1,60}\))?/i.exec(
				piece,
			) ?? /(?<![\w.,+])\d{1,3}\s?p\s?\+\s?\d{1,3}\s?e\b(?:\s?\([^()]{1,40}\))?/i.exec(piece);
		if (words && !both) {
			const all = coresIn(words[0]);
			if (all.length === 1) found("cores", all[0]);
			else if (all.length > 1) notes.doubted("cores", all, at, "The line gives more than one number.");
		}
		const threads = /(?<![\w.,])(\d{1,4})[\s-]?threads?\b/i.exec(piece);
		if (threads) found("threads", Number(threads[1]));
		const clocks = isOfSmallCores(piece) && !words ? [] : clocksIn(piece);
		for (const { value, to, words: beside } of clocks) {
			const named = clockNamed(beside) ?? (isShort && clocks.length === 1 ? clockNamed(piece) : undefined);
			if (named === "other" || memoryTypesIn(piece).length > 0) continue;
			isRead = true;
			nameless.kinds++;
			if (named === "boost") {
				notes.highest("boostGhz", to ?? value, at);
				nameless.boosts.add(to ?? value);
			} else if (to !== undefined && named === undefined) {
				nameless.hasBase = true;
				notes.found("baseGhz", value, at);
				notes.highest("boostGhz", to, at);
			} else if (named === "base" && to === undefined && value >= 0.5) {
				notes.found("baseGhz", value, at);
				nameless.hasBase = true;
			} else nameless.clocks.add(value);
		}
		const watts = wattsIn(piece);
		for (const { value, to, words: beside } of watts) {
			const named = powerNamed(beside) ?? (isShort && watts.length === 1 ? powerNamed(piece) : undefined);
			if (named === "other" || to !== undefined) continue;
			isRead = true;
			if (named) notes.found(named === "base" ? "baseW" : "peakW", value, at);
			else nameless.watts.add(value);
		}
	}

	const sockets = isCooler
		? []
		: [
				...piece.matchAll(/(?<![\w-])(?:fc-?)?[lp]ga[\s-]?\d{3,5}(?![\w.])/gi),
				...piece.matchAll(
					/\b(?:socket|sockel)(?: type)?\s(?!lga|pga|fc|ddr|pci)(?:the )?[a-z]{1,5}-?\d{1,4}[a-z]?\+?(?![\w.])/gi,
				),
				...piece.matchAll(
					/(?<![\w-])(?!lga|pga|fc|ddr|pci)[A-Z]{1,5}\d{1,4}\+?(?=[\s-](?:socket|sockel)(?!\s[A-Z]{1,5}\d))/gi,
				),
			];
	// "Lantern 4 (LGA1432)": the pins in brackets are another name of what is in front.
	for (const { 0: name, index } of sockets) {
		if (/\(\s*$/.test(piece.slice(0, index)) && !/^(?:cpu|socket|sockel)/i.test(name))
			notes.hinted("socket", socketsIn(name), at, "The pins of a package stand in brackets.");
		else for (const one of socketsIn(name)) found("socket", one);
	}
	if (
		isShort &&
		/\bunlocked\b|freier multiplikator|multiplikator (?:frei|offen)/i.test(piece) &&
		!/\b(?:not|nicht|no)\b/i.test(piece)
	)
		found("unlocked", true);
	if (
		isShort &&
		/(?:without|ohne|no|w\/o) (?:a )?(?:cpu[\s-]?)?(?:cooler|kühler|fan\b|lüfter|heatsink)|cooler (?:is )?not included|kühler nicht (?:enthalten|im)/i.test(
			piece,
		)
	)
		found("coolerInBox", false);
	else if (
		isShort &&
		/(?:\bwith|inkl\w*\.?|including|\bmit) (?:\S+ ){0,2}(?:cpu[\s-]?)?(?:cooler|kühler|heatsink)|(?<!not )cooler included|kühler enthalten/i.test(
			piece,
		)
	)
		found("coolerInBox", true);
	if (memoryTypesIn(piece).length > 0 || /\b(?:memory|speicher)/i.test(piece))
		isRead = readMemoryWords({ value: piece, context: "", label: "", at }, notes) || isRead;
	if (isOwn && /\bpcie?\b|pci express/i.test(piece) && !/chipset|chipsatz|ssd|m\.2|drive/i.test(piece)) {
		for (const generation of generationsIn(piece)) {
			notes.highest("lanes.generation", generation, at);
			isRead = true;
		}
	}
	return isRead;
}
