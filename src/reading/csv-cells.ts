import { canonicalName } from "../parts/canonical-name.ts";
import { checkJson } from "../parts/check-json.ts";
import { cleanJson } from "../parts/clean-text.ts";
import type { FactEntry } from "../parts/fact-list.ts";
import { isCurrency, type Money } from "../parts/money.ts";
import type { PartKind } from "../parts/part-kinds.ts";
import { unitFactor } from "./csv-units.ts";
import { entriesOf, schemaOf } from "./fact-schema.ts";

/** How a price is read; the same reader as everywhere else, which lives where prices are asked for. */
export type MoneyReader = (text: string, defaultCurrency: string) => Money | null;

export interface CellContext {
	readonly kind: PartKind;
	readonly fact: FactEntry;
	/** Unit or currency that the head names. */
	readonly unit?: string;
	readonly readMoney: MoneyReader;
}

/** A fact's value, undefined where the cell says that it is not known, or what was expected instead. */
export type CellReading = { readonly value: unknown } | { readonly expected: string };

/** Reads a fact from one cell of a table, or from what was typed behind a command. Never throws. */
export function readCell(text: string, context: CellContext): CellReading {
	const typed = text.trim();
	if (notKnown.has(typed.toLowerCase())) return { value: undefined };
	const unguarded = typed.replace(/^'(?='*[=+\-@\t])/, "");
	const readings = possibleValues(unguarded, context);
	const schema = schemaOf(context.kind, context.fact.path);
	const fitting = readings.flatMap((value) => {
		const { value: checked, faults } = checkJson(schema, value);
		return faults.length === 0 ? [checked] : [];
	});
	const [only, ...more] = fitting;
	if (only !== undefined && more.length === 0) return { value: only };
	return { expected: expectedWords(context, more.length > 0 ? [] : readings) };
}

/** What tables write where nothing is known; it is never taken for "none". */
const notKnown: ReadonlySet<string> = new Set([
	...["", "-", "--", "–", "—", "?", "n/a", "na", "n. a.", "n.a.", "unknown"],
	...["k. a.", "k.a.", "unbekannt", "keine angabe"],
]);

/** Every value the text may mean; the schema then tells which of them the fact can have. */
function possibleValues(text: string, context: CellContext): readonly unknown[] {
	const { fact } = context;
	if (fact.path === "price") return moneyOf(text, context);
	switch (fact.form) {
		case "number":
		case "whole number":
			return figuresOf(text, context);
		case "yes or no":
			return truthOf(text);
		case "choice":
			return choiceOf(text, context);
		case "list":
			return listOf(text, context);
		case "group":
		case "other":
			return jsonOf(text);
		case "text":
			return [text, ...germanDate(text)];
	}
}

function moneyOf(text: string, { unit = "", readMoney }: CellContext): readonly unknown[] {
	if (text.length > 60) return [];
	const ofHead = (signs[unit] ?? unit).toUpperCase();
	const namesCurrency = /^[A-Za-z]{3}\b|\b[A-Za-z]{3}$|[€$£]/.test(text);
	const money = namesCurrency || isCurrency(ofHead) ? readMoney(text, namesCurrency ? "EUR" : ofHead) : null;
	return money ? [money] : [];
}

const signs: Readonly<Record<string, string>> = { "€": "EUR", $: "USD", "£": "GBP" };

/** "24,5 cm": one figure, or two where a single point or comma may group thousands as well as begin a fraction. */
function figuresOf(text: string, { fact, unit }: CellContext): readonly number[] {
	const [, figure = "", behind = ""] = /^([+-]?[\d.,'\s]*\d)\s*([^\d\s].{0,19})?$/.exec(text.slice(0, 60)) ?? [];
	if (text.length > 60 || figure === "") return [];
	const spelling = behind.trim() || unit;
	const factor = spelling === undefined ? 1 : unitFactor(fact, spelling);
	if (factor === null) return [];
	const inUnit = (value: number) => (factor === 1 ? value : Math.round(value * factor * 1000) / 1000);
	return [...new Set(decimalsOf(figure).map(inUnit))].filter(Number.isFinite);
}

function decimalsOf(figure: string): readonly number[] {
	const digits = figure.replace(/['\s](?=\d{3}(?!\d))/g, "");
	const [, sign = "", whole = "", fraction] = /^([+-]?)(\d+)(?:[.,](\d+))?$/.exec(digits) ?? [];
	if (whole !== "") {
		const asFraction = Number(`${sign}${whole}${fraction === undefined ? "" : `.${fraction}`}`);
		const groups = fraction?.length === 3 && whole.length <= 3 && !whole.startsWith("0");
		return groups ? [asFraction, Number(`${sign}${whole}${fraction}`)] : [asFraction];
	}
	// Two kinds of sign, or one of them several times: the last kind is the decimal sign, if it stands once.
	const grouped = /^([+-]?\d{1,3}(?:([.,])\d{3})(?:\2\d{3})*)(?:(?!\2)[.,](\d+))?$/.exec(digits);
	if (!grouped) return [];
	return [Number(`${grouped[1]?.replace(/[.,]/g, "")}.${grouped[3] ?? "0"}`)];
}

const yes: ReadonlySet<string> = new Set(["yes", "y", "true", "ja", "j", "wahr", "1", "x", "✓", "✔"]);
const no: ReadonlySet<string> = new Set(["no", "n", "false", "nein", "falsch", "0", "none", "kein", "keine", "✗", "✘"]);

function truthOf(text: string): readonly boolean[] {
	const word = text.toLowerCase();
	return yes.has(word) ? [true] : no.has(word) ? [false] : [];
}

/** Spellings of the trade that are no choice letter by letter. */
const otherSpellings: Readonly<Record<string, string>> = {
	matx: "microatx",
	μatx: "microatx",
	uatx: "microatx",
	mitx: "miniitx",
	extendedatx: "eatx",
	eatxssi: "eatx",
};

function choiceOf(text: string, context: CellContext): readonly (string | number)[] {
	const { choices = [] } = context.fact;
	if (choices.some((choice) => typeof choice === "number")) {
		const figures = figuresOf(text.replace(/G$/, ""), context);
		return choices.filter((choice) => typeof choice === "number" && figures.includes(choice));
	}
	const typed = canonicalName(text);
	const wanted = Object.hasOwn(otherSpellings, typed) ? otherSpellings[typed] : typed;
	return choices.filter((choice) => canonicalName(String(choice)) === wanted);
}

/** "ATX, microATX", "2 x 8-pin", "none", or the JSON of the list. */
function listOf(text: string, context: CellContext): readonly unknown[] {
	if (text.startsWith("[")) return jsonOf(text);
	if (/^(?:none|no|kein|keine|keiner|nein)$/i.test(text)) return [[]];
	if (text.length > 20_000) return [];
	const hold = entriesOf(context.kind, context.fact.path);
	if (hold === "groups") return [];
	if (hold === "words") return [piecesOf(text, /[;|]/.test(text) ? /[;|]/ : /,/)];
	const one = (piece: string) => {
		const found = hold === "figures" ? figuresOf(piece.replace(/(\d) ?G$/, "$1"), context) : choiceOf(piece, context);
		return found.length === 1 ? found[0] : undefined;
	};
	const several = (piece: string): readonly unknown[] => {
		const whole = one(piece);
		if (whole !== undefined) return [whole];
		const [, times, rest] = /^(\d{1,2}) ?[x×] ?(.+)$/i.exec(piece) ?? [];
		const counted = rest === undefined ? undefined : one(rest);
		return counted === undefined ? [] : new Array(Number(times)).fill(counted);
	};
	// A decimal comma stands between two digits with nothing beside it; a slash may belong to a name.
	const entries = piecesOf(text, /[;|]|,(?!\d)|(?<!\d),/).flatMap((piece) => {
		const whole = several(piece);
		return whole.length > 0 ? [whole] : piecesOf(piece, /\//).map(several);
	});
	return entries.some((entry) => entry.length === 0) ? [] : [entries.flat()];
}

function piecesOf(text: string, between: RegExp): readonly string[] {
	return text
		.split(between)
		.map((piece) => piece.trim())
		.filter((piece) => piece !== "");
}

function jsonOf(text: string): readonly unknown[] {
	try {
		return [cleanJson(JSON.parse(text))];
	} catch {
		return [];
	}
}

/** 24.11.2026; the other order with slashes could be two days. */
function germanDate(text: string): readonly string[] {
	const [, day, month, year] = /^(\d{1,2})\.(\d{1,2})\.(\d{4})$/.exec(text) ?? [];
	return day && month && year ? [`${year}-${month.padStart(2, "0")}-${day.padStart(2, "0")}`] : [];
}

function expectedWords(context: CellContext, readings: readonly unknown[]): string {
	const { kind, fact, unit } = context;
	if (fact.path === "price")
		return unit ? `a price such as 129.90 (${unit})` : "a price with its currency, such as 129.90 EUR";
	const bySchema = readings.flatMap((value) => checkJson(schemaOf(kind, fact.path), value).faults)[0];
	if (bySchema?.unknownKey !== undefined)
		return `no "${bySchema.unknownKey}"; known there: ${bySchema.knownKeys?.join(", ")}`;
	const inside = bySchema?.path ? ` at ${bySchema.path}` : "";
	if (bySchema && fact.form !== "choice") return `${bySchema.expected}${inside}`;
	switch (fact.form) {
		case "number":
		case "whole number":
			return `${fact.form === "number" ? "a number" : "a whole number"}${fact.unit ? ` in ${fact.unit}` : ""}, without signs between thousands`;
		case "yes or no":
			return "yes or no";
		case "choice":
			return `one of ${fact.choices?.join(", ")}`;
		case "list":
			if (fact.choices) return `some of ${fact.choices.join(", ")}`;
			return entriesOf(kind, fact.path) === "figures" ? "numbers with ; between" : "a list in [ ] as JSON";
		case "group":
		case "other":
			return "a group in { } as JSON";
		case "text":
			return "a line of text";
	}
}
