import type { FormField, TypedAs } from "./form-fields.ts";
import { type Money, moneyText } from "./money.ts";

/** What may be typed for a fact, as a sentence without a full stop: "Type a whole number from 0 to 32". */
export function expectedWords({ typed, unit }: FormField): string {
	return `Type ${expected(typed, unit)}`;
}

function expected(typed: TypedAs, unit: string | undefined): string {
	switch (typed.as) {
		case "choice":
			return listed(typed.choices.map((choice) => withUnit(choice, unit)));
		case "several": {
			const most = typed.repeats ? `, ${typed.most} at most` : "";
			return `the lines that are there, with commas${most}${typed.least === 0 ? ", or none" : ""}`;
		}
		case "texts":
			return `them with commas in between, ${typed.most} at most${typed.least === 0 ? ", or none" : ""}`;
		case "numbers":
			return `figures with semicolons, each from ${bounds(typed.each, unit)}${typed.least === 0 ? ", or none" : ""}`;
		case "number": {
			const kind = unit === "mm" ? "a length" : typed.whole ? "a whole number" : "a number";
			return `${kind} from ${bounds(typed, unit)}${unit === "mm" ? ", also as cm or inches" : ""}`;
		}
		case "yes or no":
			return "yes or no";
		case "text":
			return `the words as they are printed, ${typed.letters} letters at most`;
		case "date":
			return "a date such as 2026-11-24, or today";
		case "money":
			return "a sum such as 189 or EUR 189";
		case "pairs":
			return typed.by === "name"
				? "a name, a colon and a number; then a semicolon and the next"
				: "a number, a colon and names with commas; then a semicolon and the next";
		default:
			return "nothing here: pick a line";
	}
}

function bounds({ least, most }: Extract<TypedAs, { as: "number" }>, unit: string | undefined): string {
	return `${least} to ${withUnit(most, unit)}`;
}

function withUnit(value: string | number, unit: string | undefined): string {
	return unit ? `${value} ${unit}` : String(value);
}

function listed(words: readonly string[]): string {
	return words.length < 2 ? words.join("") : `${words.slice(0, -1).join(", ")} or ${words.at(-1)}`;
}

/** The value of a fact in words, with its unit. */
export function wordsOf({ typed, unit }: FormField, value: unknown): string {
	return wordsAs(typed, value, unit);
}

function wordsAs(typed: TypedAs, value: unknown, unit: string | undefined): string {
	switch (typed.as) {
		case "yes or no":
			return value === true ? "yes" : "no";
		case "money":
			return isMoneyLike(value) ? moneyText(value) : "a sum";
		case "several":
		case "texts":
			return listOf(value).length === 0 ? "none" : counted(listOf(value).map(String)).join(", ");
		case "numbers":
			return listOf(value).length === 0 ? "none" : withUnit(listOf(value).join("; "), unit);
		case "pairs":
			return Object.entries((value ?? {}) as object)
				.map(([name, one]) => `${name}: ${wordsAs(typed.each, one, undefined)}`)
				.join("; ");
		case "things": {
			const entries = listOf(value);
			if (entries.length === 0) return "none";
			const names = entries.map((entry) => (entry as { name?: unknown } | null)?.name);
			if (names.every((name) => typeof name === "string")) return `${entries.length} (${names.join(", ")})`;
			const inside = entries.slice(0, 3).map((entry) => shortWords(typed.fields, entry));
			const more = entries.length > 3 ? [`and ${entries.length - 3} more`] : [];
			return `${entries.length} (${[...inside, ...more].join("; ")})`;
		}
		case "thing":
			return thingWords(typed.fields, value);
		default:
			return withUnit(String(value), unit);
	}
}

/** Two 8-pin plugs are "2 x 8-pin". */
function counted(words: readonly string[]): readonly string[] {
	return [...new Set(words)].map((word) => {
		const times = words.filter((other) => other === word).length;
		return times > 1 ? `${times} x ${word}` : word;
	});
}

function listOf(value: unknown): readonly unknown[] {
	return Array.isArray(value) ? value : [];
}

function isMoneyLike(value: unknown): value is Money {
	const { minor, currency } = (value ?? {}) as Partial<Money>;
	return typeof minor === "number" && typeof currency === "string";
}

/** All that is known of a thing, in short sentences: "M2_1. Key: M. Lanes wired: 4". */
export function thingWords(fields: readonly FormField[], value: unknown): string {
	const known = knownOf(fields, value).map(({ field, inner }) => {
		const words = wordsOf(field, inner);
		return field.path[0] === "name" ? words : `${field.title}: ${words}`;
	});
	return known.length > 0 ? known.join(". ") : "nothing known yet";
}

/** The first short facts of a thing without their titles: "A, 10 Gb/s, 4". */
function shortWords(fields: readonly FormField[], value: unknown): string {
	const known = knownOf(fields, value).filter(
		({ field, inner }) => field.typed.as !== "yes or no" && wordsOf(field, inner).length <= 40,
	);
	return known.length > 0
		? known
				.slice(0, 3)
				.map(({ field, inner }) => wordsOf(field, inner))
				.join(", ")
		: "nothing known yet";
}

function knownOf(fields: readonly FormField[], value: unknown) {
	return fields.flatMap((field) => {
		const inner = field.path.reduce<unknown>(
			(at, key) => (at !== null && typeof at === "object" && Object.hasOwn(at, key) ? at[key as never] : undefined),
			value,
		);
		return inner === undefined ? [] : [{ field, inner }];
	});
}
