import { CsvError, parse } from "csv-parse/sync";
import { cleanLine } from "../parts/clean-text.ts";
import { readForeignText } from "./read-text.ts";

/** A text that is no sound table of comma-separated values; `reason` says what and where. */
export class BrokenCsv extends Error {
	readonly path: string;
	readonly reason: string;

	constructor(path: string, reason: string) {
		super(`${path}: ${reason}`);
		this.path = path;
		this.reason = reason;
	}
}

export interface CsvRow {
	/** As a spreadsheet numbers it: the head is row 1. */
	readonly row: number;
	readonly cells: readonly string[];
}

/** A table as it stands in the file: cells are cleaned lines of text, rows may have more or fewer than the head. */
export interface CsvTable {
	readonly delimiter: string;
	readonly head: readonly string[];
	readonly rows: readonly CsvRow[];
}

/** As many parts of a kind as a parts file holds, and its head. */
const mostRows = 20_001;
const mostEmptyRows = 1000;
/** A part has some hundred facts. */
const mostCells = 2000;
const delimiters = [",", ";", "\t"] as const;

/**
 * The table in a file; see parseCsv.
 *
 * @throws UnreadableFile as readForeignText does
 * @throws BrokenCsv
 */
export function readCsv(path: string): CsvTable {
	return parseCsv(readForeignText(path), path);
}

/**
 * The table in a text as RFC 4180 has it, with comma, semicolon or tab between cells: whichever its rows have most of.
 * Rows without any text are left out. A formula is text like any other.
 *
 * @param path names the text in messages
 * @throws BrokenCsv for a text without rows, a quote that is never closed, and more than 20 000 rows
 */
export function parseCsv(text: string, path: string): CsvTable {
	const marked = /^\uFEFF?sep=([,;\t])\r?\n/i.exec(text);
	const body = marked ? text.slice(marked[0].length) : text.replace(/^\uFEFF/, "");
	const delimiter = marked?.[1] ?? delimiterOf(body);
	if (hasEndlessRow(body, delimiter)) throw new BrokenCsv(path, `one row has more than ${mostCells} cells`);
	const records = recordsOf(body, delimiter, path);
	if (records.length > mostRows + mostEmptyRows) throw new BrokenCsv(path, "the table has more than 20 000 rows");
	const [head, ...rows] = records
		.map((cells, index) => ({ row: index + (marked ? 2 : 1), cells: cells.map(cleanLine) }))
		.filter(({ cells }) => cells.some((cell) => cell !== ""));
	if (!head) throw new BrokenCsv(path, "the file is empty, and a table was expected");
	if (rows.length >= mostRows) throw new BrokenCsv(path, "the table has more than 20 000 rows");
	return { delimiter, head: withoutEmptyEnd(head.cells), rows };
}

function recordsOf(text: string, delimiter: string, path: string): readonly (readonly string[])[] {
	try {
		// A ragged row is told as such where its cells are read; a quote inside a cell is an inch.
		return parse(text, {
			delimiter,
			record_delimiter: ["\r\n", "\n", "\r"],
			relax_column_count: true,
			relax_quotes: true,
			to: mostRows + mostEmptyRows + 1,
		});
	} catch (error) {
		if (!(error instanceof CsvError)) throw error;
		const line = (error as { lines?: unknown }).lines;
		const place = typeof line === "number" ? `, at line ${line}` : "";
		if (error.code === "CSV_QUOTE_NOT_CLOSED")
			throw new BrokenCsv(path, "a quotation mark is opened and never closed, so the rows cannot be told apart");
		throw new BrokenCsv(path, `this is no sound table${place}`);
	}
}

/** So many cells would take more memory than the file's size tells. */
function hasEndlessRow(text: string, delimiter: string): boolean {
	let cells = 0;
	for (const letter of text)
		if (letter === delimiter) {
			cells++;
			if (cells > mostCells) return true;
		} else if (letter === "\n" || letter === "\r") cells = 0;
	return false;
}

/** Spreadsheets write empty columns that somebody once touched. */
function withoutEmptyEnd(cells: readonly string[]): readonly string[] {
	const last = cells.findLastIndex((cell) => cell !== "");
	return cells.slice(0, last + 1);
}

/** The one that even the row with fewest has most of; then the one the head has most of. */
function delimiterOf(text: string): string {
	const records = beginningsOf(text, 20);
	const counted = delimiters.map((delimiter) => {
		const counts = records.map((record) => record.split(delimiter).length - 1);
		return { delimiter, least: Math.min(...counts), inHead: counts[0] ?? 0 };
	});
	return counted.reduce((best, one) =>
		one.least > best.least || (one.least === best.least && one.inHead > best.inHead) ? one : best,
	).delimiter;
}

/** The first rows, without what stands in quotes. */
function beginningsOf(text: string, most: number): readonly string[] {
	return text
		.slice(0, 200_000)
		.replace(/"[^"]*"/g, "")
		.split(/\r\n?|\n/)
		.filter((line) => line.trim() !== "")
		.slice(0, most);
}
