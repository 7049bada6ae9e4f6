import { sumLine, topicOf } from "./board-topics.ts";
import { type LabelledLine, splitLabel } from "./labelled-lines.ts";

/** A line or a piece of one. */
export interface CutLine extends LabelledLine {
	/** Sums up what other lines tell one by one. */
	readonly isSum: boolean;
}

/** Lines that tell several things, as one line for each: run-on paragraphs, lists with commas, things without any border. */
export function cutLines(lines: readonly LabelledLine[]): readonly CutLine[] {
	return lines
		.flatMap(atProcessors)
		.flatMap((one) => (one.names ? [one] : atLabels(one).flatMap(atSentences)))
		.flatMap((one): readonly CutLine[] => {
			if (one.names) return [{ ...one, isSum: false }];
			return atDashes(one)
				.flatMap(atCounts)
				.flatMap((part) => {
					// A longer line has more in it than its sum.
					const isSum = sumLine.test(part.value) || (one.value.length < shortestRunOn && sumLine.test(one.value));
					return atBorders(part).map((piece) => ({ ...piece, isSum }));
				});
		});
}

/** A row with a column for each sort of processors, as a row for each: "PCIE1 | PCIe 5.0 x16 | PCIe 4.0 x8". */
function atProcessors(one: LabelledLine): readonly LabelledLine[] {
	const lanes = one.cells.filter((cell) => /\bpci[\s-]?e.*\bx\d/i.test(cell));
	if (lanes.length < 2 || lanes.length < one.cells.length || !/^\S*\d/.test(one.label ?? "")) return [one];
	const length = /\(([^)]*slot)\)$/i.exec(one.label ?? "")?.[1];
	return lanes.map((cell) => ({
		...one,
		value: length === undefined ? cell : `${length}, ${cell.replace(/x(\d{1,2})\s*$/i, "x$1 mode")}`,
		cells: [],
	}));
}

/** A paragraph shorter than this has no labels within it; own convention. */
const shortestRunOn = 160;
const labelWithin = /(?<=^|[\s.])(\p{Lu}[\p{L}.-]{1,24}(?:\s(?:\p{L}[\p{L}.-]{0,20}|\/)){0,3}):\s/gu;

function piece(one: LabelledLine, value: string): LabelledLine {
	return { ...one, value, quote: one.quote.length > 300 ? quoteOf(one.quote, value) : one.quote };
}

/** Where a piece stands in its line. The line has the page's own words, the piece may have standard terms for some. */
function quoteOf(line: string, text: string): string {
	const found = placeOf(line, text.split(" "));
	return found < 0 ? line.slice(0, 400) : line.slice(found, found + text.length).slice(0, 400);
}

/** The place of the most words from the first on that stand together, two at the least; -1 if there are none. */
function placeOf(line: string, words: readonly string[]): number {
	for (let count = Math.min(words.length, 12); count >= Math.min(2, words.length); count--) {
		const at = line.indexOf(words.slice(0, count).join(" "));
		if (at >= 0) return at;
	}
	return -1;
}

/** A paragraph with several labels in it, cut at them. */
function atLabels(one: LabelledLine): readonly LabelledLine[] {
	const whole = one.label === undefined ? one.value : `${one.label}: ${one.value}`;
	if (whole.length < shortestRunOn) return [one];
	const cuts = [...whole.matchAll(labelWithin)].flatMap(({ index, 1: found = "" }) => {
		const short = startsFresh(whole, index) && topicOf(found) !== undefined ? found : shortestTopic(found);
		const at = short === undefined ? 0 : index + found.length - short.length;
		return short === undefined || at === 0 ? [] : [{ at, label: short }];
	});
	if (cuts.length < 2) return [one];
	const bounds: readonly { at: number; label: string | undefined }[] = [{ at: 0, label: one.label }, ...cuts];
	return bounds.flatMap(({ at, label }, index) => {
		const text = whole.slice(at, bounds[index + 1]?.at ?? whole.length).trim();
		const value = label !== undefined && text.startsWith(`${label}:`) ? text.slice(label.length + 1).trim() : text;
		// The full stop before the next label ends a sentence; it is no part of the value.
		const plain = value.replace(/\.$/, "");
		return plain === "" ? [] : [{ ...one, label, value: plain, quote: quoteOf(one.quote, text) }];
	});
}

/** Behind the end of a sentence or an item all words up to the colon are the label. */
const startsFresh = (text: string, at: number): boolean =>
	/(?:^|[.,;|])\s{0,2}$/.test(text.slice(Math.max(0, at - 3), at));

/** Of words before a colon the shortest tail that tells a topic, for what is before it belongs to the line before. */
function shortestTopic(text: string): string | undefined {
	const all = text.split(" ");
	const isTopic = (words: string) => /^\p{Lu}/u.test(words) && topicOf(words) !== undefined;
	for (let from = all.length - 1; from >= 0; from--) {
		if (!isTopic(all.slice(from).join(" "))) continue;
		// A joined name is taken whole: "Slots de Expansión".
		let start = from;
		while (start > 0 && isTopic(all[start - 1] ?? "")) start--;
		return all.slice(start).join(" ");
	}
	return undefined;
}

const sentenceEnd = /(?<=[)\d]|\p{L}{4})\.\s(?=\p{Lu}|\p{L}[\p{L}.\d]{0,8}:)/gu;

/** "4 x SATA. M.2: none": sentences, the later ones with labels of their own. */
function atSentences(one: LabelledLine): readonly LabelledLine[] {
	const parts = cutOutside(one.value, sentenceEnd);
	return parts.length < 2
		? [one]
		: parts.map((part, index) => {
				const split = index > 0 ? splitLabel(part) : undefined;
				return split && split.value !== "" ? { ...piece(one, split.value), label: split.label } : piece(one, part);
			});
}

const isOpenEnd = /^(?:supports?|total|suporta|soporta|unterstützt|insgesamt|in\sall)$|\s(?:and|und|e|y|et|i|&|\+)$/iu;
/** A count with a thing, or the name of a drive's socket, where something stands before it. */
const itemStart =
	/(?<=[\s)\].,;])(?<!\b(?:support|supports|for|to|für|gives)\s)(?=\d{1,2}\s?[x×]\s(?:\p{L}|\d))|(?<=\s)(?=(?:\p{Lu}+\.)?\p{Lu}?M\.?2_?\d\S*\s(?:(?:slot|socket)\b|PCIe?\s\d))|(?<=\s)(?=\p{Lu}{2,6}\.\d_\d\s(?:slot|socket)\b)/gu;

/** Several counted things without a border between them: "1 x HDMI 1 x VGA". */
function atCounts(one: LabelledLine): readonly LabelledLine[] {
	const starts = [...one.value.matchAll(itemStart)]
		.map(({ index }) => index)
		.filter((at) => !isInBrackets(one.value, at));
	const bounds = [0, ...starts.filter((at) => at > 0)];
	const parts: string[] = [];
	for (const [index, from] of bounds.entries()) {
		const part = one.value.slice(from, bounds[index + 1] ?? one.value.length).trim();
		const before = parts.at(-1);
		// "Supports 5 x A and 6 x B" is one sum.
		if (before !== undefined && isOpenEnd.test(before)) parts[parts.length - 1] = `${before} ${part}`;
		else if (part !== "") parts.push(part);
	}
	const counted = parts.filter((part) => /^\d{1,2}\s?[x×]\s/i.test(part) || /^\S*\.?2_\d/.test(part)).length;
	return parts.length < 2 || counted < 2
		? [one]
		: parts.map((part) => piece(one, part.replace(/[,;]$/, "").trim())).filter(({ value }) => value !== "");
}

const listBorder =
	/[,;|](?=\s{0,2}(?:and\s|und\s)?(?:\d{1,2}\s?[x×]\s?[\p{L}(+]|\d{1,2}\s?[x×]\s?\d{1,2}[\s-]?pin|\d{1,2}[\s-]?pin|\d{1,2}\s(?:audio|cpu|system|sys|chassis|case|pump|usb|ports?|ddr|sata|m\.2|pci|hdmi|fan)))|\s(?:and|und|et|y|e|oraz|sowie)\s(?=\d{1,2}\s?[x×]\s?\p{L})/giu;
const countedStart = /^\W{0,3}(?:\d{1,2}\s?[x×]|\d{1,2}[\s-]?pin|\d{1,2}\s\p{L})/iu;
const countBehind = /\s[x×]\s\d{1,2}(?:\s?\([^)]*\))?$/iu;
/** A socket that a list may name without a count, where it means one. */
const soleSocket = /^(?:hdmi|display\s?port|dp|vga|d-sub|dvi(?:-[di])?|usb-[ac]|usb\s(?:type-)?[ac])(?![\p{L}])/iu;

/** A header that a list may name without a count, where it means one. */
const soleHeader = /^(?:cpu|processor|chassis|system|pump|aio)[\s_]?(?:fan|pump)(?:\s(?:header|connector))?$/iu;

/** "A - 2 x B - C": a title that strings things together. */
function atDashes(one: LabelledLine): readonly LabelledLine[] {
	const parts = cutOutside(one.value, /\s[-–·|]\s/gu);
	return parts.length > 3 ? parts.map((part) => piece(one, part)) : [one];
}

/** "1 x A, 2 x B (1 x C)": counted things of one line, each by itself; what stands in brackets stays with its thing. */
function atBorders(one: LabelledLine): readonly LabelledLine[] {
	const commas = cutOutside(one.value, /[,;]\s/gu);
	if (commas.length > 1 && commas.every((part) => countBehind.test(part)))
		return commas.map((part) => piece(one, part));
	const isBack = topicOf(one.label ?? one.sections.at(-1) ?? "") === "back";
	if (isBack && commas.length > 2 && commas.some((part) => soleSocket.test(part)))
		return commas.map((part) => piece(one, soleSocket.test(part) ? `1 x ${part}` : part));
	if (topicOf(one.label ?? one.sections.at(-1) ?? "") === "internal" && commas.some((part) => soleHeader.test(part)))
		return commas.flatMap((part) => atBorders(piece(one, soleHeader.test(part) ? `1 x ${part}` : part)));
	// "7 x fan 4-pin: 1 CPU, 1 pump, 5 chassis" counts them once, and then tells which.
	const all = /^(\d{1,2}\s?[x×]\s[^:,]{0,40}\bfans?\b[^:,]{0,30}):\s\d/i.exec(one.value)?.[1];
	if (all !== undefined) return [piece(one, all)];
	const parts = cutOutside(one.value, listBorder);
	if (parts.length < 2 || parts.filter((part) => countedStart.test(part)).length < 2) return [one];
	return parts.map((part) => piece(one, part));
}

function cutOutside(text: string, border: RegExp): readonly string[] {
	const parts: string[] = [];
	let from = 0;
	for (const { 0: found, index } of text.matchAll(border)) {
		if (isInBrackets(text, index)) continue;
		parts.push(text.slice(from, index).trim());
		from = index + found.length;
	}
	parts.push(text.slice(from).trim());
	return parts.filter((part) => part !== "");
}

function isInBrackets(text: string, at: number): boolean {
	let depth = 0;
	for (let index = 0; index < at; index++) {
		if (text[index] === "(") depth++;
		else if (text[index] === ")" && depth > 0) depth--;
	}
	return depth > 0;
}
