import { cleanLine } from "../parts/clean-text.ts";
import { type Money, minorDigits } from "../parts/money.ts";
import type { Sheet, SheetBoard, SheetOfAll } from "./sheet.ts";

type Cell = string | number;

/** The columns in order: what a board is, what it costs, how it does, and why. Lists of reasons are one cell each. */
const columns: readonly { readonly head: string; readonly of: (board: SheetBoard, ofAll: SheetOfAll) => Cell }[] = [
	{ head: "role", of: ({ roleWords }) => roleWords },
	{ head: "board", of: ({ name }) => name },
	{ head: "invented", of: ({ invented }) => (invented ? "yes" : "no") },
	{ head: "which one", of: ({ facts }) => facts },
	{ head: "fit", of: ({ verdictWords }) => verdictWords },
	{ head: "price", of: ({ price }) => (price ? decimal(price) : "") },
	{ head: "currency", of: ({ price }) => price?.currency ?? "" },
	{ head: "price in words", of: ({ priceWords }) => priceWords },
	{ head: "to buy besides", of: ({ forced }) => forced.join(" ") },
	{ head: "score", of: ({ score }) => score.mid },
	{ head: "score at least", of: ({ score }) => score.low },
	{ head: "score at most", of: ({ score }) => score.high },
	{ head: "score in words", of: ({ scoreWords }) => scoreWords },
	{ head: "its points", of: ({ pointsWords }) => pointsWords },
	{ head: "beside the first", of: ({ behind }) => behind.join(" ") },
	{ head: "power and heat", of: ({ power }) => power ?? "" },
	{ head: "for it", of: (board, ofAll) => [...board.for, ...ofAll.for].join(" ") },
	{ head: "against it", of: (board, ofAll) => [...board.against, ...ofAll.against].join(" ") },
	{ head: "not known", of: (board, ofAll) => [...board.unknown, ...ofAll.unknown].join(" ") },
];

/**
 * The shortlist as a table of comma-separated values (RFC 4180), one row a board in the sheet's order, below a row of
 * heads. Each row stands for itself: what holds for every board is in each. Lines end in CR LF.
 *
 * A byte order mark stands in front only where the text has letters beyond ASCII. Table programs guess another encoding
 * without it; where there are none, every encoding gives the same letters.
 */
export function shortlistCsv({ shortlist, ofAll }: Sheet): string {
	const rows: readonly (readonly Cell[])[] = [
		columns.map(({ head }) => head),
		...shortlist.map((board) => columns.map(({ of }) => of(board, ofAll))),
	];
	const text = rows.map((cells) => `${cells.map(cellText).join(",")}\r\n`).join("");
	return beyondAscii.test(text) ? `\uFEFF${text}` : text;
}

/** "189.00": a sum without its currency, with as many digits as that one has. */
function decimal({ minor, currency }: Money): string {
	const digits = minorDigits(currency);
	return (minor / 10 ** digits).toFixed(digits);
}

const beyondAscii = /[\u0080-\uffff]/;

function cellText(cell: Cell): string {
	if (typeof cell === "number") return String(cell);
	const harmless = harmlessCell(cleanLine(cell));
	// Quoted also for what parts cells elsewhere: semicolons where the comma is a decimal sign, tabs, bars.
	return /[",;|]/.test(harmless) ? `"${harmless.replaceAll('"', '""')}"` : harmless;
}

/**
 * Text that no table program takes for a formula: an apostrophe goes in front where its first visible character begins
 * one. A program that parts cells elsewhere begins one in the middle of ours, so the same goes for each piece. A number
 * stays one.
 */
export function harmlessCell(text: string): string {
	if (plainNumber.test(text)) return text;
	return text
		.split(/([;|\t]["\s]*)/)
		.map((piece, index) => (index % 2 === 0 && beginsFormula(piece) ? `'${piece}` : piece))
		.join("");
}

/** Signs that begin a formula. Their wide and small forms count too: some programs turn them into the plain ones. */
const formulaSigns = new Set(["=", "+", "-", "@", "\u2212"]);
const unseen = /^[\s"\p{Cf}\p{Cc}\p{Mn}\p{Me}\u115f\u1160\u3164\uffa0]+/u;
const plainNumber = /^[-+]?\d+(?:\.\d+)?$/;

function beginsFormula(text: string): boolean {
	const [first = ""] = text.replace(unseen, "");
	return formulaSigns.has(first.normalize("NFKC"));
}
