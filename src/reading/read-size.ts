import type { BoardForm } from "../parts/vocabulary.ts";
import { boardForms } from "../reference/board-forms.ts";
import { mmOfInches } from "../reference/inches.ts";
import { type Doubt, eachOnce, evenRun, known, onlyOf } from "./quantities.ts";

/** Form and sides of a board, as a text tells of them. What it does not tell has no key. */
export type SizeReading = {
	readonly form?: BoardForm;
	/** Both sides in mm, in the order printed: pages differ on which comes first. */
	readonly sidesMm?: readonly [number, number];
};

/** Spellings of the forms. Longer names come first, and what they match is taken away before the next is looked for. */
const spellings: readonly (readonly [RegExp, BoardForm | undefined])[] = [
	[
		/\batx\s?(?:12\s?v|\d\.\d)\w*|\batx[\s-]?(?:power|netzteil|stecker|main\s?power)\w*|\batx[\s-]\d{1,2}[\s-]?(?:pin|pol)\w*|\d{1,2}[\s-]?(?:pin|pol\w*)\s(?:e?atx|eps)\b/gi,
		undefined,
	],
	[/\bssi[\s-]?ceb\b|\bceb\b/gi, "SSI CEB"],
	[/\bssi[\s-]?eeb\b|\beeb\b/gi, "SSI EEB"],
	[/\bmini[\s-]?itx\b|\bm-?itx\b/gi, "Mini-ITX"],
	[/\bmini[\s-]?dtx\b/gi, "Mini-DTX"],
	[/\bdtx\b/gi, "DTX"],
	[/\bflex[\s-]?atx\b/gi, "FlexATX"],
	[/(?<!\w)(?:micro|mikro|[muµμ])[\s-]?atx\b/gi, "microATX"],
	[/\be[\s-]?atx\b|\bextended[\s-]?atx\b/gi, "E-ATX"],
];
/** Forms that the parts have no word for. */
const otherForms =
	/\b(?:xl-?atx|mini-?atx|nano-?itx|pico-?itx|mini-?stx|(?:ssi[\s-]?)?meb|wtx|hptx|ultra\s?atx|b?tx)\b/gi;

/** How far printed sides may lie apart and be the same: half of the last digit, in cm and in tenths of an inch (own convention). */
const sameWithinMm = 2;

type SizeRead = { readonly size: SizeReading; readonly doubts: readonly Doubt[] };
type Sides = readonly [number, number];

const unitMark = "mm|cm|in(?:ch(?:es)?)?\\b\\.?|zoll|''|[\"″”]";
const figure = "(\\d{1,4}(?:[.,]\\d{1,2})?)";
const sideWord = "(?:\\s?\\(?[whdlbt]\\)?)?";
/** "PCIe 4.0 x16 in ..." tells of a slot, not of sides. */
const notASlot = "(?<!(?:pcie?|express|gen\\.?)\\s?)";
const pairMark = new RegExp(
	`${notASlot}(?<![\\w.,])${figure}\\s?-?(${unitMark})?${sideWord}\\s?(?:x|by)\\s?${figure}(?![\\d])(?:\\s?x\\s?\\d{1,3}(?:[.,]\\d)?)?\\s?-?(${unitMark})?`,
	"gi",
);

const numberOf = (text: string): number => Number(text.replace(",", "."));

function unitOf(text: string | undefined): "mm" | "cm" | "in" | undefined {
	if (text === undefined) return undefined;
	const unit = text.toLowerCase();
	return unit === "mm" || unit === "cm" ? unit : "in";
}

function inMm(value: number, unit: "mm" | "cm" | "in"): number {
	if (unit === "in") return Math.round(mmOfInches(value));
	return unit === "cm" ? Math.round(value * 1000) / 100 : value;
}

const agree = (one: Sides, other: Sides): boolean => {
	const near = (a: number, b: number) => Math.abs(a - b) <= sameWithinMm;
	return (near(one[0], other[0]) && near(one[1], other[1])) || (near(one[0], other[1]) && near(one[1], other[0]));
};

/** Boards are between a hand and half a metre long, as the part's facts have it. */
const isBoardSize = ([one, other]: Sides): boolean => Math.min(one, other) >= 80 && Math.max(one, other) <= 500;

/** The forms that a run of text names, each once; others by the name printed. The order is not that of the text. */
export function boardFormsIn(text: string): {
	readonly forms: readonly BoardForm[];
	readonly others: readonly string[];
} {
	let left = text;
	const forms: BoardForm[] = [];
	for (const [spelling, form] of spellings) {
		const before = left;
		left = left.replace(spelling, " ");
		if (form !== undefined && left !== before) forms.push(form);
	}
	const others = [...left.matchAll(otherForms)].map(([name]) => name);
	left = left.replace(otherForms, " ");
	if (/\batx\b/i.test(left)) forms.push("ATX");
	return { forms, others };
}

/**
 * Form and sides that a run of text tells of, in mm, cm or inches. Without a unit, with two that do not agree, or with
 * a form that the sides do not fit, it is a doubt. Never throws.
 */
export function readSize(text: string): SizeRead {
	// "170 mm (6.7") x 170 mm (6.7")": each side once more in inches.
	const even = evenRun(text.replace(/(?<=\d\s?(?:mm|cm))\s?\([\d.,]{1,6}\s?(?:in(?:ch)?|["″”])\)/gi, ""));
	const quote = text.slice(0, even.length).trim();
	const doubts: Doubt[] = [];
	const doubt = (about: string, might: readonly (number | string)[], why: string) =>
		doubts.push({ about, quote, might, why });

	const { forms, others } = boardFormsIn(even);
	let form = onlyOf(forms);
	if (others.length > 0) {
		doubt("form", eachOnce([...forms, ...others]), "This name is no form that is known here.");
		form = undefined;
	} else if (forms.length > 1) doubt("form", eachOnce(forms), "The text names more than one form.");

	const printed: { readonly sides: Sides; readonly unit: "mm" | "cm" | "in" }[] = [];
	for (const [all, first = "", firstUnit, second = "", secondUnit] of even.matchAll(pairMark)) {
		const [one, other] = [unitOf(firstUnit), unitOf(secondUnit)];
		const unit = one ?? other;
		if (unit === undefined || (one !== undefined && other !== undefined && one !== other)) {
			const guess: Sides = [numberOf(first), numberOf(second)];
			if (isBoardSize(guess) || unit !== undefined) doubt("sides", [all.trim()], "The sides have no unit, or two.");
			continue;
		}
		const sides: Sides = [inMm(numberOf(first), unit), inMm(numberOf(second), unit)];
		if (isBoardSize(sides)) printed.push({ sides, unit });
		else doubt("sides", [all.trim()], "No board has these sides.");
	}
	// Inches are rounded more coarsely, so metric figures go first.
	const best = (printed.find(({ unit }) => unit !== "in") ?? printed[0])?.sides;
	let sidesMm = best;
	if (best !== undefined && printed.some(({ sides }) => !agree(best, sides))) {
		doubt(
			"sides",
			printed.map(({ sides }) => sides.join(" x ")),
			"The text gives sides that do not agree.",
		);
		sidesMm = undefined;
	}
	if (form !== undefined && sidesMm !== undefined && !fitsForm(sidesMm, form)) {
		doubt("form", [form, sidesMm.join(" x ")], "The sides are not those of this form.");
		form = undefined;
		sidesMm = undefined;
	}
	return { size: known({ form, sidesMm }), doubts };
}

/** Forms with a fixed size must have it; of the others no side may be longer. E-ATX is held against nothing. */
function fitsForm(sides: Sides, form: BoardForm): boolean {
	if (form === "E-ATX" || form === "FlexATX") return true;
	const { widthMm, depthMm, isMaximum } = boardForms[form];
	const [short, long] = [Math.min(...sides), Math.max(...sides)];
	const [mostShort, mostLong] = [Math.min(widthMm, depthMm), Math.max(widthMm, depthMm)];
	if (short > mostShort + sameWithinMm || long > mostLong + sameWithinMm) return false;
	return isMaximum || agree(sides, [mostShort, mostLong]);
}
