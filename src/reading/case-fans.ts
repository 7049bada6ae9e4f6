import { type CasePlace, runsByPlace } from "./case-topics.ts";
import { evenRun } from "./quantities.ts";

/** Fans that fit at a place, or are there when it is sold. */
export interface FansTold {
	readonly place: CasePlace;
	readonly sizeMm: number;
	/** Nothing where only those that are fitted are told of. */
	readonly count?: number;
	readonly fitted?: number;
}

export interface FansRead {
	readonly told: readonly FansTold[];
	readonly doubts: readonly { readonly might: readonly FansTold[]; readonly why: string }[];
}

/** Sizes that case fans have (common practice, no source). */
const fanSizes: ReadonlySet<number> = new Set([40, 60, 70, 80, 92, 120, 140, 160, 180, 200, 230]);
const countWords = ["one|eine?n?", "two|zwei", "three|drei", "four|vier", "five|fünf", "six|sechs"];
const aCount = `(\\d{1,2}|${countWords.join("|")})`;
const aSize = "(\\d{1,3}(?:[.,]\\d)?)\\s?-?(mm|cm)?(?![\\d.,]\\d|\\w)";
const orSize = `((?:\\s?(?:/|or|oder)\\s?(?!\\d{1,2}\\s?x)\\d{2,3}(?:\\s?mm|\\s?cm)?(?![\\w.]|\\s?x\\s?\\d))*)`;
const countFirst = new RegExp(
	`(?<![\\w.,]|x\\s?)${aCount}\\s?(?:pcs\\s?)?(?:x\\s?|\\s(?!or\\b|oder\\b|and\\b|und\\b)(?=[a-z\\s-]{0,20}\\d{2,3}\\s?-?(?:mm|cm)))(?:[a-z]+\\s){0,2}?${aSize}${orSize}`,
	"gi",
);
const sizeFirst =
	/(?<![\w.,])(\d{1,3}(?:[.,]\d)?)\s?-?(mm|cm)?((?:\s?\/\s?\d{2,3}(?:\s?mm|\s?cm)?)*)\s?(?:[a-zäöü-]+\s){0,2}(?:fans?|lüfter)?\s?(?:x\s?|:\s?)(\d{1,2})(?![\d.,]|\s?(?:mm|cm|x\s?\d))/gi;
const sizeAlone = /(?<![\w.,])(\d{2,3}(?:[.,]\d)?)\s?-?(mm|cm)/gi;
const threeSides = /(?<![\w.,])(\d{2,3}(?:mm)?)\s?x\s?\1\s?x\s?\d{2}(?:\s?mm)?/gi;
const notFitted =
	/\bnone\s(?:fitted|included|installed|supplied)|\bnot\sfitted|\bnot?\s(?:included|installed)|\boptional\b|nicht\s(?:enthalten|im\slieferumfang|vorinstalliert)|\bsold\sseparately/i;
const fittedWord =
	/\binclud\w+|\binclus\w*|\bincl\b|\binkl\w*|\bpre-?\s?(?:installed|fitted|mounted)|\bvorinstalliert\w*|\bvormontiert\w*|\bmitgeliefert\w*|\benthalten\b|\binstalled\b|\bfitted\b|\bsupplied\b/i;

function sizeOf(digits: string, unit: string | undefined): number | undefined {
	const value = Number(digits.replace(",", "."));
	const mm = Math.round(unit?.toLowerCase() === "cm" || (unit === undefined && value <= 25) ? value * 10 : value);
	// 90 mm is what the trade calls 92.
	return mm === 90 ? 92 : fanSizes.has(mm) ? mm : undefined;
}

function countOf(text: string): number {
	const word = countWords.findIndex((words) => new RegExp(`^(?:${words})$`, "i").test(text));
	return word >= 0 ? word + 1 : Number(text);
}

interface Quantity {
	readonly sizesMm: readonly number[];
	readonly count: number;
	readonly from: number;
	readonly to: number;
}

/** "3 x 120 / 140 mm", "120 mm x 3", "12 cm: 3": counts with sizes, in the order of the text. */
function quantitiesIn(text: string): readonly Quantity[] {
	const found: Quantity[] = [];
	const add = (count: number, first: number | undefined, rest: string, from: number, to: number) => {
		const more = [...rest.matchAll(/(\d{2,3})\s?(mm|cm)?/gi)].map(([, digits = "", unit]) => sizeOf(digits, unit));
		const sizesMm = [first, ...more].filter((size) => size !== undefined);
		if (first !== undefined && count >= 1 && count <= 12)
			found.push({ sizesMm: [...new Set(sizesMm)], count, from, to });
	};
	const left = text.replace(
		countFirst,
		(match: string, count: string, size: string, unit: string | undefined, rest: string, at: number) => {
			// The unit may stand behind the last of "120 / 140 mm".
			const ofAll = unit ?? (/mm/i.test(rest) ? "mm" : /cm/i.test(rest) ? "cm" : undefined);
			add(countOf(count), sizeOf(size, ofAll), rest, at, at + match.length);
			return "_".repeat(match.length);
		},
	);
	for (const { 0: match, 1: size = "", 2: unit, 3: rest = "", 4: count = "", index } of left.matchAll(sizeFirst)) {
		add(Number(count), sizeOf(size, unit ?? (/mm/i.test(rest) ? "mm" : undefined)), rest, index, index + match.length);
	}
	return found.toSorted((one, other) => one.from - other.from);
}

/**
 * Fans by place. `around`: places that the label or head names. `areFitted`: the label says that these are in the box.
 */
export function fansIn(text: string, around: readonly CasePlace[], areFitted: boolean): FansRead {
	const run = evenRun(text).replace(threeSides, (match, side: string) => side.padEnd(match.length));
	const told: FansTold[] = [];
	const doubts: { might: readonly FansTold[]; why: string }[] = [];
	for (const placed of runsByPlace(run, around)) {
		const quantities = quantitiesIn(placed.text);
		const [place, ...others] = placed.places;
		const all = (count: number, sizesMm: readonly number[]) =>
			placed.places.flatMap((one) => sizesMm.map((sizeMm): FansTold => ({ place: one, sizeMm, count })));
		if (place === undefined || others.length > 0 || placed.isUnclear) {
			if (quantities.length > 0)
				doubts.push({
					might: quantities.flatMap(({ count, sizesMm }) => all(count, sizesMm)),
					why: "The text does not say clearly at which place these fans are.",
				});
			continue;
		}
		if (quantities.length === 0) {
			const [, digits = "", unit] = sizeAlone.exec(placed.text) ?? [];
			sizeAlone.lastIndex = 0;
			const sizeMm = sizeOf(digits, unit);
			if (sizeMm !== undefined)
				doubts.push({ might: [{ place, sizeMm, count: 1 }], why: "The text does not say how many fans fit there." });
			continue;
		}
		readPlace(placed.text, place, quantities, areFitted, told);
	}
	return { told, doubts };
}

function readPlace(
	text: string,
	place: CasePlace,
	quantities: readonly Quantity[],
	areFitted: boolean,
	told: FansTold[],
): void {
	const brackets = [...text.matchAll(/\(([^()]*)\)/g)].map(({ index, 0: whole, 1: inside = "" }) => ({
		from: index,
		to: index + whole.length,
		inside,
	}));
	const isNot = notFitted.test(text);
	const said = (some: string) => fittedWord.test(some.replace(notFitted, ""));
	const inBracket = (quantity: Quantity) =>
		brackets.find(({ from, to, inside }) => quantity.from >= from && quantity.to <= to && said(inside));
	const supported = quantities.filter((one) => !inBracket(one));
	const outside = brackets.reduce(
		(left, { from, to }) => left.slice(0, from) + "_".repeat(to - from) + left.slice(to),
		text,
	);
	const single = supported.length === 1 && supported[0]?.sizesMm.length === 1;
	for (const quantity of quantities) {
		const { sizesMm, count } = quantity;
		const [sizeMm] = sizesMm;
		if (inBracket(quantity) || areFitted) {
			if (sizesMm.length === 1 && sizeMm !== undefined) told.push({ place, sizeMm, fitted: count });
			continue;
		}
		// A bracket tells of the quantity right before it.
		const next = quantities.find(({ from }) => from >= quantity.to)?.from ?? text.length;
		const own = brackets.find(({ from }) => from >= quantity.to && from < next);
		const fitted = fittedOf(own?.inside ?? "", count) ?? (single && said(outside) && !isNot ? count : undefined);
		const none = isNot && !said(text) ? 0 : undefined;
		for (const one of sizesMm) {
			const here = sizesMm.length === 1 ? (fitted ?? none) : none;
			told.push({ place, sizeMm: one, count, ...(here !== undefined && { fitted: here }) });
		}
	}
}

/** How many of `count` fans a bracket says are fitted: "2 included", "pre-installed". */
function fittedOf(inside: string, count: number): number | undefined {
	if (notFitted.test(inside) || !fittedWord.test(inside)) return undefined;
	const number = /^\D{0,16}(\d{1,2})\s?x?\s?(?![\d.]|mm|cm)/.exec(inside)?.[1];
	if (/\d/.test(inside) && (number === undefined || /\d{2,3}/.test(inside))) return undefined;
	return number === undefined ? count : Number(number);
}

/** Radiators that fit at a place. */
export interface RadiatorsTold {
	readonly place: CasePlace;
	readonly lengthsMm: readonly number[];
	readonly maxThicknessMm?: number;
}

export interface RadiatorsRead {
	readonly told: readonly RadiatorsTold[];
	readonly doubts: readonly { readonly might: readonly RadiatorsTold[]; readonly why: string }[];
	/** The text says that none fits. */
	readonly isNone: boolean;
}

/** Lengths that radiators are sold by: fans of 80, 92, 120, 140, 180, 200 mm in a row (common practice, no source). */
const radiatorLengths: ReadonlySet<number> = new Set([
	80, 92, 120, 140, 160, 180, 200, 240, 280, 360, 400, 420, 480, 540, 560,
]);
const noneWord =
	/^\W*(?:none|no|not\s(?:supported|possible)|n\/?a|kein\w*|nicht\s(?:unterstützt|möglich)|nein|0|-+|✗|✘)\W*$/i;
const severalFans =
	/(?<![\w.,])(?:[2-9])\s?x\s?(?:80|92|120|140|180|200)(?!\d)|(?<![\d.,])(?:120|140|180|200)\s?(?:mm)?\s?x\s?[2-9](?!\d)/i;

/** Radiators by place. `isShared`: fans stand in the same text, so that only lengths no fan has are read. */
export function radiatorsIn(text: string, around: readonly CasePlace[], isShared: boolean): RadiatorsRead {
	const run = evenRun(text);
	const told: RadiatorsTold[] = [];
	const doubts: { might: readonly RadiatorsTold[]; why: string }[] = [];
	if (noneWord.test(run) && around.length === 0) return { told, doubts, isNone: true };
	for (const placed of runsByPlace(run, around)) {
		const lengthsMm = [
			...new Set(
				[...placed.text.matchAll(/(?<![\d.,])(?<![2-9]\s?x\s?)(\d{2,3})(?:\s?-?(mm|cm)\b|(?![\d.,]\d|\w|\s?["″”]))/gi)]
					.map(([, digits = "", unit]) => Number(digits) * (unit?.toLowerCase() === "cm" ? 10 : 1))
					.filter((mm) => radiatorLengths.has(mm) && (!isShared || mm > 230)),
			),
		];
		const thick = thicknessWithFans(placed.text);
		const might = placed.places.map(
			(place): RadiatorsTold => ({ place, lengthsMm, ...(thick !== undefined && { maxThicknessMm: thick }) }),
		);
		if (!isShared && severalFans.test(placed.text)) {
			doubts.push({ might: [], why: "The text counts fans, and does not say how long a radiator may be." });
		} else if (lengthsMm.length === 0) {
			const other = /(?<![\d.,])\d{2,3}\s?mm/i.test(placed.text);
			if (other && !isShared && placed.places.length > 0)
				doubts.push({ might: [], why: "The figure is no length of a radiator; it may be how thick one can be." });
		} else if (placed.places.length === 0 || placed.isUnclear) {
			doubts.push({ might, why: "The text does not say clearly at which place these radiators fit." });
		} else if (notHere.test(placed.text)) {
			doubts.push({ might, why: "The text says what does not fit, in words that are not understood." });
		} else told.push(...might);
	}
	return { told, doubts, isNone: false };
}

const notHere = /\bnot\b|\bnicht\b|\bkein\w*\b|\bno\b|\bonly\sif\b|\bunless\b/i;

/** Room for radiator and fans, in mm, where it is said to be for both. */
function thicknessWithFans(text: string): number | undefined {
	const found =
		/(?:(?<![\d.,])(\d{2,3})\s?mm\s?(?:thick\w*|dick\w*)|(?:thick\w*|dicke?|stärke)[^\d,;]{0,20}(\d{2,3})\s?mm)[^,;]{0,12}?(?:incl\w*|inkl\w*|with|mit)\.?\s(?:the\s|den\s)?(?:fans?|lüfter)/i.exec(
			text,
		);
	const digits = found?.[1] ?? found?.[2];
	return digits === undefined ? undefined : Number(digits);
}
