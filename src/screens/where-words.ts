import type { FormField } from "../parts/form-fields.ts";

/** Where a fact is found, in short sentences; empty where its definition does not say. */
export function whereWords({ whereToFind }: FormField): string {
	if (whereToFind === "") return "";
	const short = whereToFind
		.replace(/ \.\.\. /g, " so many ")
		.replace(/; ([a-z])/g, (_, letter: string) => `. ${letter.toUpperCase()}`);
	return /[.!?]$/.test(short) ? short : `${short}.`;
}

/** Quotes longer than this are cut; own convention. */
const longestQuote = 70;

/** The words of a page, short enough for one or two lines. */
export function cutQuote(quote: string): string {
	const line = quote.replace(/\s+/g, " ").trim();
	return line.length <= longestQuote ? line : `${line.slice(0, longestQuote).trimEnd()} (goes on)`;
}
