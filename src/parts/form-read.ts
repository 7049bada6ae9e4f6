import { cleanLine } from "./clean-text.ts";
import { date } from "./fact.ts";
import type { FormField, TypedAs } from "./form-fields.ts";
import { expectedWords } from "./form-words.ts";
import type { Money } from "./money.ts";

/** What reading a typed fact needs from outside. */
export interface TypedContext {
	/** ISO date that "today" means. */
	readonly asOf: string;
	/** Reads a sum of money, or null. */
	readonly readMoney: (text: string) => Money | null;
}

export type FormReading = { readonly value: unknown } | { readonly problem: string };

/**
 * Reads what was typed for a fact. Every value it gives back is one the fact's definition allows; else the problem says
 * what was expected. Lists of things are never typed.
 */
export function readTyped(field: FormField, text: string, context: TypedContext): FormReading {
	const value = read(field.typed, cleanLine(text), field.unit, context);
	return value === undefined ? { problem: `${expectedWords(field)}.` } : { value };
}

/** Undefined: it cannot be read. */
function read(typed: TypedAs, text: string, unit: string | undefined, context: TypedContext): unknown {
	switch (typed.as) {
		case "choice":
			return choiceOf(typed.choices, text, unit);
		case "several":
			return several(typed, text);
		case "texts": {
			const items = text === "" ? [] : text.split(/\s*[,;]\s*/);
			if (isNone(text)) return typed.least === 0 ? [] : undefined;
			const isSound = items.every((item) => item.length > 0 && item.length <= typed.letters);
			return isSound && isWithin(items.length, typed) && items.length > 0 ? items : undefined;
		}
		case "numbers": {
			if (isNone(text)) return typed.least === 0 ? [] : undefined;
			// Where there are halves, a comma between figures is followed by a space; "2,5" is one figure.
			const between = typed.each.whole ? /\s*[,;/]\s*|\s+and\s+/i : /\s*[;/]\s*|,\s+|\s+and\s+/i;
			const items = text.split(between).map((item) => numberOf(typed.each, item, unit));
			return items.every((item) => item !== undefined) && isWithin(items.length, typed) ? items : undefined;
		}
		case "number":
			return numberOf(typed, text, unit);
		case "yes or no":
			return yesNo[text.toLowerCase()];
		case "text":
			return text.length > 0 && text.length <= typed.letters ? text : undefined;
		case "date":
			return dateOf(text, context.asOf);
		case "money":
			return context.readMoney(text) ?? undefined;
		case "pairs":
			return pairsOf(typed, text, unit, context);
		default:
			return undefined;
	}
}

const yesNo: Readonly<Record<string, boolean>> = Object.assign(Object.create(null), {
	yes: true,
	y: true,
	true: true,
	no: false,
	n: false,
	false: false,
});

function isNone(text: string): boolean {
	return /^(?:none|no|nothing|0)$/i.test(text);
}

function isWithin(count: number, { least, most }: { readonly least: number; readonly most: number }): boolean {
	return count >= least && count <= most;
}

/** Short forms in use for standard names. */
const shortForms: ReadonlyMap<string, string> = new Map([
	["itx", "miniitx"],
	["matx", "microatx"],
	["uatx", "microatx"],
	["dp", "displayport"],
	["typec", "usbc"],
	["pcie", "pciexpress"],
	["nvme", "pciexpress"],
]);

function plain(words: string): string {
	const short = words.toLowerCase().replace(/[^\p{L}\p{N}+]/gu, "");
	return shortForms.get(short) ?? short;
}

function choiceOf<T extends string | number>(choices: readonly T[], text: string, unit = ""): T | undefined {
	const wanted = plain(text);
	if (wanted === "") return undefined;
	return choices.find((choice) => plain(String(choice)) === wanted || plain(`${choice}${unit}`) === wanted);
}

/** "ATX, microATX", "2 x 8-pin", or places in the list of choices: "1, 3". */
function several(
	{ choices, repeats, ...bounds }: Extract<TypedAs, { as: "several" }>,
	text: string,
): readonly string[] | undefined {
	if (isNone(text)) return bounds.least === 0 ? [] : undefined;
	const items = text.split(/\s*[,;]\s*|\s+and\s+/i).flatMap((item): readonly (string | undefined)[] => {
		const whole = choiceOf(choices, item);
		if (whole !== undefined) return [whole];
		const [, times, name] = /^(\d{1,2})\s*[x*]\s*(.+)$/i.exec(item) ?? [];
		if (name !== undefined) return Array<string | undefined>(Number(times) || 1).fill(choiceOf(choices, name));
		return [/^\d{1,2}$/.test(item) ? choices[Number(item) - 1] : undefined];
	});
	if (items.length === 0 || items.some((item) => item === undefined)) return undefined;
	const named = repeats ? (items as string[]) : [...new Set(items as string[])];
	// Lines marked by number have no order of their own.
	const isByPlace = /^[\d\s,;]+$/.test(text);
	const found = isByPlace ? named.toSorted((one, other) => choices.indexOf(one) - choices.indexOf(other)) : named;
	return isWithin(found.length, bounds) ? found : undefined;
}

/** What one of a unit that may be typed is in the fact's own unit. */
const factors: Readonly<Record<string, Readonly<Record<string, number>>>> = {
	mm: { mm: 1, cm: 10, m: 1000, in: 25.4, inch: 25.4, inches: 25.4, '"': 25.4 },
	g: { g: 1, kg: 1000 },
	"Gb/s": { "gb/s": 1, gbps: 1, "gbit/s": 1, "mb/s": 0.001, mbps: 0.001, "mbit/s": 0.001 },
	"MT/s": { "mt/s": 1, mhz: 1 },
	"degrees C": { "degrees c": 1, "°c": 1, c: 1, degrees: 1 },
	years: { years: 1, year: 1 },
	s: { s: 1, seconds: 1 },
	min: { min: 1, minutes: 1 },
	W: { w: 1, watts: 1, watt: 1 },
	"MB/s": { "mb/s": 1, "gb/s": 1000 },
	mohm: { mohm: 1, mω: 1 },
};

/** A figure with or without a unit; decimals by point or comma. Lengths are taken to a tenth of a millimetre. */
function numberOf(
	{ least, most, whole }: Extract<TypedAs, { as: "number" }>,
	text: string,
	unit = "",
): number | undefined {
	const [, figure, behind = ""] = /^(-?\d{1,9}(?:[.,]\d{1,4})?)\s*(.{0,12})$/.exec(text.trim()) ?? [];
	if (figure === undefined) return undefined;
	const typedUnit = behind.trim().toLowerCase();
	const known = factors[unit] ?? { [unit.toLowerCase()]: 1 };
	const factor = typedUnit === "" ? 1 : Object.hasOwn(known, typedUnit) ? known[typedUnit] : undefined;
	if (factor === undefined) return undefined;
	// "6,400" is 6400 where there is no half, and could be either elsewhere.
	const isGrouped = /^-?\d{1,3}[.,]\d{3}$/.test(figure) && factor === 1;
	if (isGrouped && !whole) return figure.includes(".") ? bounded(Number(figure)) : undefined;
	const amount = isGrouped ? Number(figure.replace(/[.,]/, "")) : Number(figure.replace(",", "."));
	return bounded(amount * factor);

	function bounded(raw: number): number | undefined {
		const value = unit === "mm" ? Math.round(raw * 10) / 10 : Math.round(raw * 1e6) / 1e6;
		return value >= least && value <= most && (!whole || Number.isInteger(value)) ? value + 0 : undefined;
	}
}

/** 2026-11-24, 24.11.2026 or today. */
function dateOf(text: string, asOf: string): string | undefined {
	const [, day = "", month = "", year] = /^(\d{1,2})\.(\d{1,2})\.(\d{4})$/.exec(text) ?? [];
	const written = year ? `${year}-${month.padStart(2, "0")}-${day.padStart(2, "0")}` : text;
	const iso = text.toLowerCase() === "today" ? asOf : written;
	return date().safeParse(iso).success ? iso : undefined;
}

/** "2: A2, B2; 4: A1, A2, B1, B2". */
function pairsOf(
	{ isName, each }: Extract<TypedAs, { as: "pairs" }>,
	text: string,
	unit: string | undefined,
	context: TypedContext,
): Readonly<Record<string, unknown>> | undefined {
	const found: [string, unknown][] = [];
	for (const piece of text.split(/\s*;\s*/).filter((item) => item !== "")) {
		const at = piece.lastIndexOf(":");
		const key = piece.slice(0, Math.max(0, at)).trim();
		const value = read(each, piece.slice(at + 1).trim(), unit, context);
		if (value === undefined || !isName(key) || isPrototypeKey(key)) return undefined;
		found.push([key, value]);
	}
	return found.length > 0 ? Object.fromEntries(found) : undefined;
}

function isPrototypeKey(key: string): boolean {
	return key === "__proto__" || key === "constructor" || key === "prototype";
}
