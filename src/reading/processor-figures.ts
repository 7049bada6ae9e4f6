import { clockNamed, powerNamed } from "./processor-topics.ts";

/** A figure of a value and the words that belong to it. */
export interface Figure {
	readonly value: number;
	/** Second end of a range such as "3.7-4.6 GHz". */
	readonly to?: number;
	readonly words: string;
}

const clock =
	/(?<![\w.,])(\d{1,2}(?:[.,]\d{1,3})?|\d{3,5})(?:\s?(?:ghz|mhz))?(?:\s?(?:-|~|to|bis|up to|bis zu)\s?(\d{1,2}(?:[.,]\d{1,3})?|\d{3,5}))?\s?(ghz|mhz)(?![\p{L}])/giu;
const power =
	/(?<![\w.,])(\d{1,4}(?:[.,]\d)?)(?:\s?w)?(?:\s?(?:-|~|to|bis|à|up to)\s?(\d{1,4}(?:[.,]\d)?))?\s?(w|watts?|вт)(?![\p{L}/])/giu;

/** A row with more figures is none of a processor's; own convention, for rubbish. */
const mostFigures = 12;

/** Clocks in GHz, with point or comma, in GHz or MHz. */
export function clocksIn(text: string): readonly Figure[] {
	return figuresIn(text, clock, clockNamed, (digits, unit) => {
		// "4.300 MHz" is written with a point between thousands.
		if (unit.toLowerCase() === "mhz") return Number(digits.replace(/[.,](?=\d{3}$)/, "").replace(",", ".")) / 1000;
		return Number(digits.replace(",", "."));
	}).filter(({ value, to }) => value >= 0.3 && (to ?? value) <= 12);
}

/** Watts. */
export function wattsIn(text: string): readonly Figure[] {
	return figuresIn(text, power, powerNamed, (digits) => Number(digits.replace(",", ".")));
}

/** Where words for one figure end and those for the next begin. */
const borders =
	/[()[\];|/]|,(?!\d)|:|\s(?:and|und|et|y|e|i|та|и|і|a|ve|ed|with|mit)\s|\s-\s|(?<!\b(?:max|min|maks|incl|inkl|freq)|макс|máx)\.\s/giu;

/**
 * Words belong to the figure they stand with between commas, bars, brackets or "and"; to the one in front of their
 * brackets; to the one behind them ("Turbo clock (one core): 4.3 GHz"). Where nothing parts two figures, they belong to
 * the figure behind them ("Turbo 4.3 GHz"), or, if nothing names the first and the last has its name behind it, to the
 * one before them ("3.6 GHz base 4.3 GHz turbo").
 */
function figuresIn(
	text: string,
	pattern: RegExp,
	named: (words: string) => string | undefined,
	numberOf: (digits: string, unit: string) => number,
): Figure[] {
	// "5.2 / 4.0 GHz": the unit counts for both.
	const even = text
		.slice(0, 2000)
		.replace(/[–—‐‑]/g, "-")
		.replace(
			/(?<![\w.,])(\d{1,4}(?:[.,]\d{1,3})?)\s?\/\s?(?=\d{1,4}(?:[.,]\d{1,3})?\s?(ghz|mhz|w)(?![\p{L}/]))/giu,
			"$1 $2 / ",
		);
	const found = [...even.matchAll(pattern)].slice(0, mostFigures);
	if (found.length === 0) return [];
	const words = wordsByBorders(even, pattern, found, named) ?? wordsInRow(even, found, named);
	return found.map((match, place) => {
		const [, digits = "", to, unit = ""] = match;
		const value = round(numberOf(digits, unit));
		return {
			value,
			...(to === undefined ? {} : { to: round(numberOf(to, unit)) }),
			words: (words[place] ?? "").trim(),
		};
	});
}

type Named = (words: string) => string | undefined;

/** Undefined where two figures stand between the same borders. */
function wordsByBorders(
	even: string,
	pattern: RegExp,
	found: readonly RegExpExecArray[],
	named: Named,
): string[] | undefined {
	const hidden = even.replace(pattern, (all) => "¤".repeat(all.length));
	const parts: { words: string; figures: number; isBracket: boolean }[] = [];
	let from = 0;
	let isBracket = false;
	const close = (end: number, opens: boolean) => {
		const piece = hidden.slice(from, end);
		const words = piece.replace(/¤+/g, " ");
		parts.push({ words, figures: found.filter(({ index }) => index >= from && index < end).length, isBracket });
		isBracket = opens;
	};
	for (const border of hidden.matchAll(borders)) {
		close(border.index, border[0] === "(" || border[0] === "[");
		from = border.index + border[0].length;
	}
	close(hidden.length, false);
	if (parts.some(({ figures }) => figures > 1)) return undefined;
	const words: string[] = [];
	for (const [place, { words: own, figures }] of parts.entries()) {
		if (figures === 0) continue;
		let all = own;
		const next = parts[place + 1];
		if (next?.isBracket && next.figures === 0) all = `${all} ${next.words}`;
		for (let at = place - 1; named(all) === undefined && at >= 0; at--) {
			const before = parts[at];
			if (!before || before.figures > 0 || (before.isBracket && (parts[at - 1]?.figures ?? 0) > 0)) break;
			all = `${before.words} ${all}`;
		}
		words.push(all);
	}
	return words;
}

function wordsInRow(even: string, found: readonly RegExpExecArray[], named: Named): string[] {
	const [first, last] = [found[0], found.at(-1)];
	const wordsFollow =
		first !== undefined &&
		last !== undefined &&
		named(even.slice(0, first.index)) === undefined &&
		named(even.slice(last.index + last[0].length)) !== undefined;
	let from = 0;
	return found.map((match, place) => {
		const end = match.index + match[0].length;
		const next = found[place + 1]?.index ?? even.length;
		const before = even.slice(from, match.index).replace(/\([^()]*\)/g, " ");
		const behind = even.slice(end, next);
		const bracket = /^\s*\([^()]*\)/.exec(behind)?.[0] ?? "";
		from = end + bracket.length;
		return wordsFollow ? behind : `${before} ${bracket}`;
	});
}

const round = (value: number): number => Math.round(value * 1000) / 1000;

const countWords: readonly (readonly [RegExp, number])[] = [
	[/\b(?:dual|zwei)[\s-]?(?:core|kern)/i, 2],
	[/\b(?:quad|vier)[\s-]?(?:core|kern)/i, 4],
	[/\b(?:hexa|sechs)[\s-]?(?:core|kern)/i, 6],
	[/\b(?:octa|acht)[\s-]?(?:core|kern)/i, 8],
	[/\b(?:deca|zehn)[\s-]?(?:core|kern)/i, 10],
];

/**
 * All cores that a value gives, each way it tells them: "24", "8P+16E", "24 (8P + 16E)", "24C/32T", "Quad-Core". More
 * than one number if the ways disagree.
 */
export function coresIn(text: string): readonly number[] {
	const even = text.slice(0, 200).replace(/[–—‐‑]/g, "-");
	const found: number[] = [];
	const sum =
		/(?<![\w.,+])(\d{1,3})\s?(?:x\s)?(?:p|performance|perf)?[\s-]?(?:cores?|kerne?|c)?\s?(?:\+|,\s|\/|and|und)\s?(\d{1,3})\s?(?:x\s)?(?:e|efficient|efficiency|c)[\s-]?(?:cores?|kerne?|c)?(?:\s?\+\s?(\d{1,2})\s?(?:lp-?e?|low[ -]power)?)?(?![\p{L}\d.])/iu.exec(
			even,
		) ?? /(?<![\w.,+])(\d{1,3})\s?\+\s?(\d{1,3})(?:\s?\+\s?(\d{1,2}))?(?![\w.,])/.exec(even);
	if (sum) found.push(sum.slice(1).reduce((total, part) => total + Number(part ?? 0), 0));
	const rest = sum ? `${even.slice(0, sum.index)} ${even.slice(sum.index + sum[0].length)}` : even;
	const lead =
		/^\s{0,3}(\d{1,3})(?=\s{0,3}(?:$|[(,;/|]|-?\s?(?:cpu[\s-]?)?(?:cores?|kerne?|kernen|c|núcleos|nhân)(?![\p{L}])))/iu;
	const [, total] = lead.exec(rest) ?? /(?<![\w.,+-])(\d{1,3})[\s-]?(?:cores?|kerne?)\b/i.exec(rest) ?? [];
	const bracket = sum ? /\(\s?(\d{1,3})\s?(?:c(?:ores?)?|kerne)?\s?\)/i.exec(rest) : null;
	for (const digits of [total, bracket?.[1]]) if (digits !== undefined) found.push(Number(digits));
	if (found.length === 0) found.push(...countWords.filter(([words]) => words.test(even)).map(([, count]) => count));
	return [...new Set(found)];
}

const isYes =
	/^(?:yes|ja|supported|unterstützt|✓|✔|true|sí|si|oui|tak|sim|ano|evet|да|так|có|available|vorhanden|included|enthalten|with|mit|inkl|freier|frei|offen|unlocked|free|open)(?![\p{L}])/iu;
const isNo =
	/^(?:no|nein|none|not|nicht|keine?[rns]?|✗|✘|❌|x$|false|non|nie|nee|geen|não|hayır|нет|ні|không|nessun[ao]?|aucune?|sans|sin|brak|yok|немає|unsupported|ohne|without|n\/a|n\.a\.|unavailable|fest|gesperrt|locked)(?![\p{L}])/iu;

/** Yes or no at the beginning of a value; undefined where it begins otherwise. */
export function yesOrNo(text: string): boolean | undefined {
	const value = text.trim();
	if (isNo.test(value)) return false;
	return isYes.test(value) ? true : undefined;
}
