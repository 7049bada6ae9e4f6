import fc from "fast-check";
import { cleanLine } from "../../src/parts/clean-text.ts";

/** Few words for what parts must name alike; the last of each is an odd one. */
const pools = {
	socket: ["Larder 3", "Pantry 9", "larder-3", "=LARDER(3)"],
	chipset: ["Shelf 20", "Shelf 40", "<b>Shelf</b>"],
	generation: ["Copper", "Tin", "*Zinc*"],
	series: ["Robin 5", "Wren 7", "| Owl |"],
	processor: ["Robin 5 210", "Wren 7 330", "Robin 5 210X", "Owl \\ 1"],
	connector: ["SLOT_1", "SLOT_2", "M2_1", "M2_2", "PORT_1", "FAN_1", "_lane_*", "tostring"],
	memorySlot: ["A1", "A2", "B1", "B2"],
	currency: ["EUR", "EUR", "EUR", "USD", "JPY", "KWD", "XQZ"],
} as const;

export const poolOf = (name: keyof typeof pools): fc.Arbitrary<string> => fc.constantFrom(...pools[name]);

/** Ids that an object may have by itself, or that an answer has as a word. */
export const hardIds = [
	"constructor",
	"tostring",
	"valueof",
	"none",
	"open",
	"0",
	"no-limit",
	"a.b..c",
	"a".repeat(80),
];

/** Names in which some form of a sheet, or some reader, could see more than a name. */
const hardNames = [
	"<script>alert(1)</script>",
	"=1+1",
	"@sum",
	"-2+3",
	"**bold** _it_ `code`",
	"a | b || c",
	"[x](http://a)",
	"# head",
	"- [ ] box",
	"1. one",
	"\"quoted\" 'single'",
	"back\\slash\\",
	"&amp; &lt;",
	"~~~",
	"{{name}} $& $1 %s %d",
	"0",
	"-0",
	"NaN",
	"null",
	"undefined",
	"EUR 12.00",
	"12.5 mm",
	"100 of 100 points",
	"קופסה שקטה",
	"静かな箱",
	"e\u0301\u0327\u0330",
	"👩‍👩‍👧‍👦",
	"toString",
	"hasOwnProperty",
	"x".repeat(120),
	"two  words",
	"Board, with; signs",
];

/** A line of text as a file may hold it: cleaned, not empty, of at most so many UTF-16 units. */
export const anyLine = (most: number): fc.Arbitrary<string> =>
	fc
		.oneof(
			{ weight: 4, arbitrary: fc.constantFrom("Plain", "Kettle and Sons", "as the label says", "rev. 1.0", "grey") },
			{ weight: 2, arbitrary: fc.constantFrom(...hardNames) },
			{ weight: 1, arbitrary: fc.string({ unit: "grapheme", maxLength: 20 }) },
			{ weight: 1, arbitrary: fc.string({ unit: "binary", maxLength: 20 }) },
		)
		.map((text) => cleanLine(cleanLine(text).slice(0, most)) || "x");

/** Days of the calendar, its ends among them. */
export const anyDate: fc.Arbitrary<string> = fc.oneof(
	{ weight: 4, arbitrary: fc.constantFrom("2026-11-24", "2026-11-23", "2026-11-25", "2026-12-24", "2025-01-01") },
	{ weight: 1, arbitrary: fc.constantFrom("0000-01-01", "0001-01-01", "9999-12-31", "2024-02-29", "1970-01-01") },
);

export const anyVersion: fc.Arbitrary<string> = fc.oneof(
	{ weight: 5, arbitrary: fc.constantFrom("1.10", "1.20", "1.3", "2.0", "F4", "F10", "F10a") },
	{ weight: 1, arbitrary: fc.constantFrom("0", "9".repeat(40), "...", "beta", "1.2.3.4.5.6") },
	{ weight: 1, arbitrary: anyLine(40) },
);
