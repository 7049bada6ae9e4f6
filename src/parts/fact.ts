import * as z from "zod";

/** What a person needs to know to give one fact: its name in words, its unit, and where it stands on page or part. */
export interface FactWords {
	/** Short noun phrase, sentence case, no full stop. */
	title: string;
	/** Unit as it is printed after the number, such as "mm" or "W". */
	unit?: string;
	/** Where a person finds it: the page, the label, a tape measure. One sentence. */
	whereToFind: string;
}

/**
 * Marks a schema as one fact. Types, JSON Schema, forms, CSV columns and the reader's targets all derive from the
 * schema and these words, so that a fact is described in one place only.
 */
export function fact<S extends z.ZodType>(schema: S, words: FactWords): S {
	return schema.meta({ ...words }) as S;
}

/** A finite number within bounds that no real part leaves; a slip of a decimal point is caught, a rare part is not. */
export function amount(least: number, most: number): z.ZodNumber {
	return z.number().min(least).max(most);
}

/** A whole number within bounds. */
export function count(least: number, most: number): z.ZodNumber {
	return z.number().int().min(least).max(most);
}

/** One line of text; 120 characters hold every name and label a spec page prints. */
export function line(most = 120): z.ZodString {
	// A line break inside a name would let it forge lines of a sheet.
	return z
		.string()
		.overwrite((text) => text.replace(/\s+/g, " "))
		.trim()
		.min(1)
		.max(most);
}

/** A calendar date as ISO 8601 writes it, such as 2026-11-24. */
export function date(): z.ZodISODate {
	return z.iso.date();
}
