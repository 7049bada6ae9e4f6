import { type BoardForm, boardForms, type supplyForms } from "../parts/vocabulary.ts";
import { mmOfInches } from "../reference/inches.ts";
import { evenRun } from "./quantities.ts";
import { boardFormsIn } from "./read-size.ts";

type SupplyForm = (typeof supplyForms)[number];

export interface CaseBoardsRead {
	/** Forms that are listed, largest first; empty if none is named. */
	readonly forms: readonly BoardForm[];
	/** "Up to ATX": the smaller ones follow, they are not named. */
	readonly isUpTo: boolean;
	/** The text says that a form does not fit, or that it may. */
	readonly isUnclear: boolean;
	/** Deepest board, from the words beside "E-ATX". */
	readonly maxDepthMm?: number;
}

/** The usual forms, largest first: each goes into a case for one before it (microATX specification 1.2 for the holes). */
const nested: readonly BoardForm[] = ["E-ATX", "ATX", "microATX", "Mini-ITX"];
const upTo =
	/\b(?:up\sto|bis(?:\szu)?|max(?:imum|imal|\.)?(?:\ssize)?:?|no\slarger\sthan|jusqu['’]à|hasta|fino\sa)\s(?:an?\s|full[\s-]size\s|standard[\s-])?(?:\(?(?:e-?|extended\s|micro-?\s?|m-?|mini-?\s?)?(?:atx|itx)\b)/i;
const orSmaller = /\b(?:or|and|oder|und|&)\s(?:smaller|kleiner\w*)\b/i;
const span = /\bfrom\b.+\bto\b|\bvon\b.+\bbis\b|[ix]tx\s?(?:to|bis|through|-|~|…)\s(?:\w+[\s-])?(?:e-?)?a?[ti]?tx/i;
const notWord = /\bnot\b|\bno\b|\bnicht\b|\bkein\w*\b|\bwithout\b|\bexcept\b|\baußer\b|\bpartial\w*|\blimited\b/i;
const itxAlone = /(?<![\w-])(?<!mini\s)itx\b/gi;

/** Board forms that a run of text lists for a case. */
export function caseBoardsIn(text: string): CaseBoardsRead {
	const run = evenRun(text)
		// A footnote's mark stands right behind a name.
		.replace(/tx[\d]?\)/gi, "tx)")
		.replace(/\b(?:micro|mini|m)\s?-\s?(?=[ai]tx)/gi, (match) => match.replace(/\s/g, ""))
		.replace(itxAlone, (match, at: number, whole: string) =>
			/(?:mini|m)[\s-]$/i.test(whole.slice(0, at)) ? match : "Mini-ITX",
		);
	const listed = boardFormsIn(run).forms;
	const depth = depthBeside(run);
	const isUnclear = notWord.test(run.replace(/\(.*?\)/g, (bracket) => (/tx/i.test(bracket) ? bracket : " ")));
	const isSpan = listed.length === 2 && span.test(run);
	const isUpTo = (listed.length === 1 && (upTo.test(run) || orSmaller.test(run))) || isSpan;
	const largest = sorted(listed)[0];
	const all =
		isUpTo && largest !== undefined ? [...listed, ...nested.slice(Math.max(0, nested.indexOf(largest)))] : listed;
	return { forms: sorted(all), isUpTo, isUnclear, ...(depth !== undefined && { maxDepthMm: depth }) };
}

/** Each form once, largest first. */
export function sorted(forms: readonly BoardForm[]): readonly BoardForm[] {
	return boardForms.filter((form) => forms.includes(form)).toReversed();
}

const eAtx = /\b(?:e[\s-]?atx|extended[\s-]?atx)\b/i;
const side = `(\\d{1,3}(?:[.,]\\d{1,2})?)\\s?(mm|cm|in(?:ch(?:es)?)?\\b|["″”]|zoll|'')?`;
const pair = new RegExp(`${side}\\s?(?:\\([a-z]\\)\\s?)?x\\s?${side}`, "i");
const alone = new RegExp(`(?<![\\d.,])${side}`, "i");

/** "E-ATX (up to 280 mm)", "E-ATX (12 x 10.7 in)": how deep a board may be. The other side of such boards is 305 mm. */
function depthBeside(run: string): number | undefined {
	const found = eAtx.exec(run);
	if (!found) return undefined;
	const behind = run.slice(found.index + found[0].length);
	const text =
		(/^\s?\([^)]{0,60}\)/.exec(behind)?.[0] ?? /^[^,;/|(]{0,40}/.exec(behind)?.[0] ?? "").split(/[ai]tx/i)[0] ?? "";
	const two = pair.exec(text);
	if (two) {
		const [, one = "", oneUnit, other = "", otherUnit] = two;
		const unit = otherUnit ?? oneUnit;
		const sides = [inMm(one, unit), inMm(other, unit)].map((mm) => Math.round(mm * 10) / 10);
		const [depth, ...more] = sides.filter((mm) => Math.abs(mm - 305) > 2);
		return more.length === 0 && depth !== undefined && isDepth(depth) ? depth : undefined;
	}
	const one = alone.exec(text);
	if (!one?.[2]) return undefined;
	const depth = Math.round(inMm(one[1] ?? "", one[2]) * 10) / 10;
	return isDepth(depth) ? depth : undefined;
}

/** Deeper than ATX, and no deeper than the largest form known. */
const isDepth = (mm: number): boolean => mm > 244 && mm <= 350;

function inMm(digits: string, unit: string | undefined): number {
	const value = Number(digits.replace(",", "."));
	if (unit === undefined || /^mm$/i.test(unit)) return value;
	return /^cm$/i.test(unit) ? value * 10 : mmOfInches(value);
}

const supplySpellings: readonly (readonly [SupplyForm | undefined, RegExp])[] = [
	[undefined, /\b(?:micro|mini|m|e|extended)[\s-]?atx\b/gi],
	["Flex ATX", /\bflex[\s-]?atx\b/gi],
	["SFX-L", /\bsfx[\s-]?l\b/gi],
	["SFX", /\bsfx\b/gi],
	["TFX", /\btfx\b/gi],
	["ATX", /\bps[\s/-]?(?:2|ii)\b|\batx(?:\s?12v(?:o)?)?\b/gi],
];

export interface CaseSupplyRead {
	readonly forms: readonly SupplyForm[];
	/** Watts of a supply in the box; 0 where the text says that none is. */
	readonly includedW?: number;
}

/** Forms of supply that a run of text lists, and whether one is in the box. */
export function caseSupplyIn(text: string): CaseSupplyRead {
	let left = evenRun(text);
	const forms: SupplyForm[] = [];
	if (
		!notWord.test(
			left.replace(
				/\bnot\sincluded\b|\bwithout\s(?:psu|power)|\b(?:without|no)\s\w*\s?(?:hdd|drive)?\s?cages?|\bno\spsu\b/gi,
				" ",
			),
		)
	) {
		for (const [form, spelling] of supplySpellings) {
			const before = left;
			left = left.replace(spelling, " ");
			if (form && before !== left) forms.push(form);
		}
	}
	const isOut =
		/\bnot\sincluded\b|\bnicht\s(?:enthalten|im\slieferumfang|inklusive)|\boptional\b|\bsold\sseparately\b|\b(?:without|ohne)\s(?:psu|power|netzteil)|\bno\spsu\b|^\W*(?:none|without|ohne|kein\w*|no)\W*$/i.test(
			text,
		);
	const watts = /(?<![\d.,])(\d{3,4})\s?w(?:att)?\b/i.exec(text)?.[1];
	const isIn = /\binclud\w+|\bincl\b|\binkl\w*|\bpre-?installed|\bvorinstalliert|\benthalten\b|\bwith\s\d/i.test(text);
	if (isOut) return { forms, includedW: 0 };
	return watts !== undefined && isIn ? { forms, includedW: Number(watts) } : { forms };
}
