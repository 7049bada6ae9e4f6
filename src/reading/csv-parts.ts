import { checkParts } from "../parts/check-parts.ts";
import { partsFileSchemaName } from "../parts/market.ts";
import { type AnyPart, type PartKind, partKinds } from "../parts/part-kinds.ts";
import { type MoneyReader, readCell } from "./csv-cells.ts";
import type { MappedColumn } from "./csv-columns.ts";
import { idOf } from "./part-reading.ts";
import { type Plain, withFact } from "./put-fact.ts";

/** A row of a table; `row` is its number as a spreadsheet shows it. */
export interface TableRow {
	readonly row: number;
	readonly cells: readonly string[];
}

/** Something in a row that cannot be. */
export interface BadCell {
	readonly row: number;
	/** The column's head; null where it is about the row as a whole. */
	readonly column: string | null;
	readonly found: string;
	readonly expected: string;
}

export interface CsvParts {
	/** Parts of rows without a bad cell, in the order of the rows. */
	readonly parts: readonly { readonly row: number; readonly part: AnyPart }[];
	readonly bad: readonly BadCell[];
}

export interface CsvTarget {
	readonly kind: PartKind;
	readonly columns: readonly MappedColumn[];
	/** How many columns the head has. */
	readonly width: number;
	/** Where the table lies and the day it was taken in, for the evidence. */
	readonly source: { readonly name: string; readonly date: string };
	readonly readMoney: MoneyReader;
}

/** Makes a part of each row. A row with a bad cell makes none; every bad cell is told. */
export function csvParts(rows: readonly TableRow[], target: CsvTarget): CsvParts {
	const bad: BadCell[] = [];
	const made: { row: number; part: AnyPart }[] = [];
	const rowOfId = new Map<string, number>();
	for (const row of rows) {
		const { part, bad: badHere } = partOfRow(row, target);
		const clash = part ? rowOfId.get(part.id) : undefined;
		if (clash !== undefined) badHere.push(sameId(row.row, part?.id ?? "", clash, target));
		else if (part) rowOfId.set(part.id, row.row);
		if (part && badHere.length === 0) made.push({ row: row.row, part });
		bad.push(...badHere);
	}
	let parts: CsvParts["parts"] = made;
	// The schema is held first, so that leaving rows out can bring further faults to light.
	for (let faults = wholeFaults(parts, target.kind); faults.length > 0; faults = wholeFaults(parts, target.kind)) {
		const faulty = new Set(faults.map(({ row }) => row));
		parts = parts.filter(({ row }) => !faulty.has(row));
		bad.push(...faults);
	}
	return { parts, bad: bad.sort((one, other) => one.row - other.row) };
}

function partOfRow({ row, cells }: TableRow, target: CsvTarget): { part: AnyPart | null; bad: BadCell[] } {
	const tooLong = cells.length > target.width && cells.slice(target.width).some((cell) => cell !== "");
	if (cells.length < target.width || tooLong) {
		const found = `${cells.length} ${cells.length === 1 ? "cell" : "cells"}`;
		return { part: null, bad: [{ row, column: null, found, expected: `${target.width}, as the head has` }] };
	}
	const bad: BadCell[] = [];
	const facts: [path: string, value: unknown][] = [];
	for (const { column, index, fact, unit } of target.columns) {
		const cell = cells[index] ?? "";
		const { kind, readMoney } = target;
		const reading = readCell(cell, { kind, fact, readMoney, ...(unit ? { unit } : {}) });
		if ("expected" in reading) bad.push({ row, column, found: cell, expected: reading.expected });
		else if (reading.value !== undefined) facts.push([fact.path, reading.value]);
	}
	const { kind, source } = target;
	const evidence = { standing: "stated", where: `${source.name}, row ${row}`.slice(0, 400), date: source.date };
	const part = facts.reduce((draft, [path, value]) => withFact(draft, path, value), {} as Plain);
	if (typeof part["name"] !== "string") {
		if (!bad.some(({ column }) => target.columns.some((one) => one.fact.path === "name" && one.column === column)))
			bad.push({ row, column: null, found: "no name", expected: "a name, which every part has" });
		return { part: null, bad };
	}
	const read = facts.filter(([path]) => !withoutEvidence.has(path)).map(([path]) => [path, evidence] as const);
	const id = typeof part["id"] === "string" ? part["id"] : idOf(part["name"], partKinds[kind].noun);
	return { part: { ...part, id, ...(read.length > 0 ? { evidence: Object.fromEntries(read) } : {}) } as AnyPart, bad };
}

/** What a part is called, and prices, which have a date of their own. */
const withoutEvidence: ReadonlySet<string> = new Set(["id", "name", "price", "checkedOn", "offers"]);

function sameId(row: number, id: string, clash: number, { columns }: CsvTarget): BadCell {
	const column = columns.find(({ fact }) => fact.path === "id")?.column;
	return column === undefined
		? {
				row,
				column: null,
				found: `the id "${id}", made of its name`,
				expected: `a name of its own; row ${clash} has it`,
			}
		: { row, column, found: id, expected: `an id of its own; row ${clash} has it` };
}

/** What only shows when all facts of a part are there, such as a connector that two groups share. */
function wholeFaults(made: CsvParts["parts"], kind: PartKind): readonly BadCell[] {
	const { list } = partKinds[kind];
	const { faults } = checkParts({ schema: partsFileSchemaName, [list]: made.map(({ part }) => part) });
	return faults.flatMap(({ path, expected }): readonly BadCell[] => {
		const [, index, inside = ""] = /\[(\d+)\]\.?(.*)$/s.exec(path) ?? [];
		const row = made[Number(index)]?.row;
		return row === undefined ? [] : [{ row, column: null, found: inside, expected }];
	});
}
