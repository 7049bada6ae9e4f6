import { mmOfInches } from "../reference/inches.ts";
import { evenRun } from "./quantities.ts";

/** What a length is said to hold for, or which way it runs. */
type Condition =
	| "with radiator"
	| "without radiator"
	| "with cage"
	| "without cage"
	| "with fan"
	| "without fan"
	| "unclear"
	| "upright"
	| "length"
	| "height"
	| "thickness";

export interface TextLength {
	readonly mm: number;
	readonly given: ReadonlySet<Condition>;
}

/** Lengths that a text gives, or that it cannot be told which they are. */
export interface LengthsRead {
	readonly lengths: readonly TextLength[];
	/** Figures that are not clear: a range, or inches and mm that do not agree. */
	readonly isUnclear: boolean;
}

const things = {
	radiator: "radiators?|(?:water|liquid)[\\s-]?cool(?:er|ers|ing)|aios?|wasserkühl\\w{0,6}|wakü|rad",
	cage: "(?:hdd|ssd|drive|disk|festplatten|laufwerks?)[\\s-]?(?:cages?|käfige?s?|bays?|racks?|trays?|brackets?)|cages?|käfige?s?|laufwerkskäfige?s?|festplattenkäfige?s?|hdds?",
	fan: "fans?|lüftern?",
} as const;
const oneThing = `(?:${things.radiator}|${things.cage}|${things.fan})`;
const tail =
	"([^,;()|:\\d]{0,24}?\\b(?:removed|uninstalled|taken\\sout|entfernt\\w{0,3}|ausgebaut\\w{0,3}))?([^,;()|:\\d]{0,16}?\\b(?:installed|mounted|fitted|included|in\\splace|verbaut\\w{0,3}|eingebaut\\w{0,3}|montiert\\w{0,3})\\b)?";
const more = `((?:\\s?(?:[+&/]|and|und|or|oder)\\s?(?:front\\s?)?${oneThing}\\b){0,2})`;
const condition = new RegExp(
	`(?<![\\w/])(with(?:\\s?/\\s?|\\sor\\s)without|mit\\s?/\\s?ohne|w/o|without|ohne|excluding|exkl\\.?|no|w/|with|mit|incl\\.?|including|inkl\\.?|when|if|wenn|falls|bei|behind|hinter|using)(?!\\w)([^,;()|:]{0,40}?)\\b(${oneThing})\\b${more}${tail}`,
	"gi",
);
/** A thing without such a word: clear only where it is said to be in or out. */
const bareThing = new RegExp(`()()\\b(${oneThing})\\b${more}${tail}`, "gi");
const isRadiator = new RegExp(`\\b(?:${things.radiator})\\b`, "i");
const isFan = new RegExp(`^(?:${things.fan})$`, "i");
const words: readonly (readonly [Condition, RegExp])[] = [
	["upright", /\bvertical\w*|\bupright\b|\bvertikal\w*|\bsenkrecht\w*|\briser\b/gi],
	["height", /\bheights?\b|\bhigh\b|\btall\b|\bhöhe\b|\bhoch\b|\bwidth\b|\bwide\b|\bbreite?\b/gi],
	["thickness", /\bthick\w*|\bdicke?\b|\bstärke\b/gi],
	["length", /\blengths?\b|\blong\b|\blänge\b|\blang\b/gi],
];
const isWay: ReadonlySet<Condition> = new Set(["length", "height", "thickness", "upright"]);
const separator = /[,;()|]|\/(?!o\b)|\.\s|\s(?:and|und|or|oder|bzw\.?)\s/gi;
const inchMark = "in(?:ch(?:es)?)?\\b\\.?|zoll\\b|''|[\"″”]";
const figures = new RegExp(
	`(?<![\\w.,]|\\dx\\s|\\d\\sx\\s)(\\d{1,4}(?:[.,]\\d{1,2})?)(?:\\s?-?(mm|cm|${inchMark})|(?=\\s?/\\s?\\d{2,4}(?:[.,]\\d)?\\s?(mm|cm)))`,
	"gi",
);
const range = /\d\s?(?:mm|cm)?\s?-\s?\d{1,3}(?:[.,]\d)?\s?(?:mm|cm)/i;

interface Figure {
	readonly mm: number;
	readonly from: number;
	readonly to: number;
	/** How far it may be off by rounding; 0 where it is metric. */
	readonly offMm: number;
}

/**
 * The lengths of a text in mm, each with the conditions that stand by it. `bareIsMm`: a text that is a number and no
 * more gives mm, since its label leaves no other unit.
 */
export function lengthsIn(text: string, label: string, bareIsMm: boolean): LengthsRead {
	const value = evenRun(text);
	const head = label === "" ? "" : `${evenRun(label)}: `;
	const run = head + value;
	const marks: { readonly condition: Condition; readonly from: number; readonly to: number }[] = [];
	const mark = (match: string, ...found: unknown[]) => {
		const [word = "", , thing = "", others = "", removed, installed] = found as (string | undefined)[];
		const at = found.find((one) => typeof one === "number") as number;
		const isBoth = /without\b|ohne\b/i.test(word) && /with(?!out)|mit/i.test(word);
		const isWithout = /^(?:w\/o|without|ohne|excluding|exkl\.?|no)$/i.test(word) !== (removed !== undefined);
		const isClear = !isBoth && (word !== "" || removed !== undefined || installed !== undefined);
		const kind = isRadiator.test(`${thing}${others}`) ? "radiator" : isFan.test(thing) ? "fan" : "cage";
		marks.push({
			condition: isClear ? `${isWithout ? "without" : "with"} ${kind}` : "unclear",
			from: at,
			to: at + match.length,
		});
		return "_".repeat(match.length);
	};
	let blanked = run.replace(condition, mark).replace(bareThing, mark);
	for (const [what, pattern] of words) {
		for (const found of blanked.matchAll(pattern))
			marks.push({ condition: what, from: found.index, to: found.index + found[0].length });
		blanked = blanked.replace(pattern, (match) => "_".repeat(match.length));
	}
	const dimensions = /(?<![\w.,])(\d{2,4})(?:\s?mm)?\s?(?:\([a-z]\)\s?)?x\s?\d{2,4}/i.exec(blanked);
	const found = figuresIn(blanked);
	const bare = /^\W*(?:max\.?|maximum|up\sto|bis(?:\szu)?)?\W*(\d{2,3}(?:\.\d)?)\W*$/i.exec(value);
	const unitOfHead = /[([]\s?(mm|cm)\s?[)\]]|\bin\s(mm|cm)\b/i.exec(head);
	const unit = (unitOfHead?.[1] ?? unitOfHead?.[2])?.toLowerCase() ?? (bareIsMm ? "mm" : undefined);
	if (found.kept.length === 0 && bare && unit !== undefined) {
		const mm = Number(bare[1]) * (unit === "cm" ? 10 : 1);
		found.kept.push({ mm, from: head.length, to: run.length, offMm: 0 });
	}
	if (dimensions) return { lengths: [], isUnclear: true };
	const cuts = [...blanked.matchAll(separator)].map(({ index, 0: sign }) => ({ index, sign }));
	const clauseOf = (at: number) => cuts.filter(({ index }) => index < at).length;
	const given = found.kept.map(() => new Set<Condition>());
	// A label's words hold for all of its value, unless the value has words of its own.
	for (const mark of marks.filter(({ from }) => from >= head.length)) {
		const clause = clauseOf(mark.from);
		const same = found.kept.flatMap(({ from }, index) => (clauseOf(from) === clause ? [index] : []));
		const before = found.kept.findLastIndex(({ to }) => to <= mark.from);
		const behind = found.kept.findIndex(({ from }) => from >= mark.to);
		if (same.length > 0) for (const index of same) given[index]?.add(mark.condition);
		else if (/^\s?[:=]/.test(run.slice(mark.to, mark.to + 2)) && behind >= 0) given[behind]?.add(mark.condition);
		else given[before >= 0 ? before : behind]?.add(mark.condition);
	}
	for (const { condition } of marks.filter(({ from }) => from < head.length)) {
		for (const own of given) if (!isWay.has(condition) || ![...own].some((name) => isWay.has(name))) own.add(condition);
	}
	return {
		lengths: found.kept.map(({ mm }, index) => ({ mm, given: given[index] ?? new Set() })),
		isUnclear: found.isUnclear || range.test(blanked),
	};
}

function figuresIn(text: string): { kept: Figure[]; isUnclear: boolean } {
	const all: Figure[] = [];
	for (const found of text.matchAll(figures)) {
		const [whole, digits = "", own, next] = found;
		const unit = (own ?? next ?? "").toLowerCase();
		const value = Number(digits.replace(",", "."));
		const decimals = /[.,](\d+)$/.exec(digits)?.[1]?.length ?? 0;
		const isInch = unit !== "mm" && unit !== "cm";
		// 3.5 inch and 2.5 inch name drives.
		if (isInch && /^[23][.,]5$/.test(digits)) continue;
		const mm = isInch
			? Math.round(mmOfInches(value) * 10) / 10
			: Math.round(value * (unit === "cm" ? 10 : 1) * 10) / 10;
		all.push({ mm, from: found.index, to: found.index + whole.length, offMm: isInch ? 12.7 / 10 ** decimals + 1 : 0 });
	}
	const metric = all.filter(({ offMm }) => offMm === 0);
	if (metric.length === 0) return { kept: all, isUnclear: false };
	// Inches beside mm tell the same once more.
	const isUnclear = all.some(({ mm, offMm }) => offMm > 0 && !metric.some((one) => Math.abs(one.mm - mm) <= offMm));
	return { kept: metric, isUnclear };
}

/** One length as the case is sold: the drive cage in, no radiator at the front. */
export interface SoldLength {
	readonly mm?: number;
	readonly withRadiatorMm?: number;
	readonly heightMm?: number;
	/** What it might be where that is not clear; empty if there is nothing to ask. */
	readonly might: readonly number[];
}

/** Which of several lengths holds for the case as sold. Only lengths from `least` to `most` mm count. */
export function soldLength(
	{ lengths, isUnclear }: LengthsRead,
	wanted: "length" | "height",
	least: number,
	most: number,
): SoldLength {
	const other = wanted === "length" ? "height" : "length";
	const fits = lengths.filter(({ mm }) => mm >= least && mm <= most);
	const along = fits.filter(({ given }) => !given.has("thickness") && !given.has("upright") && !given.has(other));
	const across = lengths.filter(
		({ given, mm }) => given.has("height") && !given.has("length") && mm >= 60 && mm <= 300,
	);
	const has = (conditions: readonly Condition[]) => (one: TextLength) => conditions.some((name) => one.given.has(name));
	const mmOf = (some: readonly TextLength[]) => [...new Set(some.map(({ mm }) => mm))];
	const contradict = along.filter(
		(one) => one.given.has("unclear") || (one.given.has("with radiator") && one.given.has("without radiator")),
	);
	if (isUnclear || contradict.length > 0) return { might: mmOf(along) };
	const withRadiator = mmOf(along.filter(has(["with radiator"])));
	const rest = along.filter((one) => !has(["with radiator", "without cage"])(one));
	const withCage = rest.filter(has(["with cage"]));
	const withFan = rest.some(has(["with fan"])) && rest.length > 1;
	const sold = mmOf(withCage.length > 0 ? withCage : rest);
	const heights = mmOf(across);
	const onlyWithoutCage = rest.length === 0 && along.some(has(["without cage"]));
	const onlyWithoutFan = rest.length > 0 && rest.every(has(["without fan"]));
	const isOpen =
		onlyWithoutFan || sold.length > 1 || (withFan && sold.length > 0) || onlyWithoutCage || withRadiator.length > 1;
	return {
		...(sold.length === 1 && !isOpen && { mm: sold[0] as number }),
		...(withRadiator.length === 1 && !isOpen && { withRadiatorMm: withRadiator[0] as number }),
		...(wanted === "length" && heights.length === 1 && { heightMm: heights[0] as number }),
		might: isOpen ? mmOf(along) : [],
	};
}
