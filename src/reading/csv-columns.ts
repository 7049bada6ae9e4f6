import { canonicalName } from "../parts/canonical-name.ts";
import { type FactEntry, factAt, factsOf } from "../parts/fact-list.ts";
import type { PartKind } from "../parts/part-kinds.ts";
import { unitFactor } from "./csv-units.ts";
import { csvWords } from "./csv-words.ts";
import { entriesOf } from "./fact-schema.ts";

/** A column of a table and the fact it gives. */
export interface MappedColumn {
	readonly column: string;
	/** Place in a row, from 0. */
	readonly index: number;
	readonly fact: FactEntry;
	/** Unit or currency that the head names, as it stands there. */
	readonly unit?: string;
}

export interface LeftOutColumn {
	readonly column: string;
	readonly why: string;
}

export interface ColumnMapping {
	readonly columns: readonly MappedColumn[];
	readonly leftOut: readonly LeftOutColumn[];
}

/** Columns that a person, or an earlier import, has given a fact; an empty path leaves the column out. */
export type GivenColumns = ReadonlyMap<string, string>;

/**
 * Finds the fact that each column of a table gives: as given, else by the path of the fact, its title, or a usual word
 * for it, with the unit in the head. What could be two facts is left out, and told.
 */
export function mapColumns(kind: PartKind, head: readonly string[], given: GivenColumns = new Map()): ColumnMapping {
	const columns: MappedColumn[] = [];
	const leftOut: LeftOutColumn[] = [];
	for (const [index, column] of head.entries()) {
		const leave = (why: string) => leftOut.push({ column, why });
		const found = given.has(column) ? givenFact(kind, column, given.get(column) ?? "") : factOfHead(kind, column);
		if (typeof found === "string") {
			leave(found);
			continue;
		}
		const before = columns.find(({ fact }) => overlaps(fact.path, found.fact.path));
		if (before) leave(`"${before.column}" gives ${before.fact.path} already`);
		else columns.push({ column, index, ...found });
	}
	return { columns, leftOut };
}

/** Facts that a column may give, for the words where there is no such fact. */
export function columnFacts(kind: PartKind): readonly FactEntry[] {
	return factsOf(kind).filter(({ path }) => !notInTables.has(path));
}

/** The mark of invented parts and the evidence are the program's; a price is one cell. */
const notInTables: ReadonlySet<string> = new Set(["invented", "evidence", "price.minor", "price.currency"]);

const longestHead = 200;
const notUnderstood = "not understood";

type Found = Pick<MappedColumn, "fact" | "unit">;

/** One fact lies inside the other, so that the second would overwrite the first. */
function overlaps(one: string, other: string): boolean {
	return one === other || one.startsWith(`${other}.`) || other.startsWith(`${one}.`);
}

function givenFact(kind: PartKind, column: string, path: string): Found | string {
	if (path === "") return "left out as asked";
	const fact = factAt(kind, path);
	if (!fact || notInTables.has(path)) return `there is no fact "${path}"`;
	const unit = possibleUnits(column).find(({ unit: one }) => isUnitOf(fact, one))?.unit;
	return { fact, ...(unit ? { unit } : {}) };
}

/** The fact of a head, or why there is none. */
function factOfHead(kind: PartKind, column: string): Found | string {
	if (column === "") return "it has no name";
	if (column.length > longestHead) return "its name is too long";
	const index = indexOf(kind);
	const whole = index.get(headKey(column)) ?? [];
	if (whole.length > 1) return `it could be ${whole.map(({ path }) => path).join(" or ")}`;
	if (whole[0]) return { fact: whole[0] };
	let why = notUnderstood;
	for (const { base, unit } of possibleUnits(column)) {
		const facts = index.get(headKey(base)) ?? [];
		const fitting = facts.filter((fact) => isUnitOf(fact, unit));
		if (fitting.length > 1) return `it could be ${fitting.map(({ path }) => path).join(" or ")}`;
		if (fitting[0]) return { fact: fitting[0], unit };
		if (facts[0] && why === notUnderstood)
			why = `it looks like ${facts[0].path}${facts[0].unit ? ` in ${facts[0].unit}` : ""}, but "${unit}" is not understood`;
	}
	return why;
}

/** Ways to take a unit off a head: "Width (mm)", "Width [mm]", "Width in mm", "Width, mm", "Width/mm", "Price EUR". */
function possibleUnits(column: string): readonly { readonly base: string; readonly unit: string }[] {
	return [
		/^([^([]+)[([]\s*([^()[\]]+?)\s*[)\]]$/,
		/^(.+) in ([^ ]+)$/i,
		/^([^,]+), ?([^ ,]+)$/,
		/^([^/]+) ?\/ ?([^ ]+)$/,
		/^(.+) ([^ ]+)$/,
	].flatMap((pattern) => {
		const [, base, unit] = pattern.exec(column) ?? [];
		return base !== undefined && unit !== undefined ? [{ base, unit }] : [];
	});
}

function isUnitOf(fact: FactEntry, unit: string): boolean {
	return fact.path === "price" ? /^(?:[A-Za-z]{3}|[€$£])$/.test(unit) : unitFactor(fact, unit) !== null;
}

const indexes = new Map<PartKind, ReadonlyMap<string, readonly FactEntry[]>>();

/** Facts by every way a head may name them. An exact path goes before a title, a title before a usual word. */
function indexOf(kind: PartKind): ReadonlyMap<string, readonly FactEntry[]> {
	const known = indexes.get(kind);
	if (known) return known;
	const index = new Map<string, readonly FactEntry[]>();
	const facts = columnFacts(kind);
	const waysToName: readonly ((fact: FactEntry) => readonly string[])[] = [
		({ path }) => [path],
		({ path, unit }) => (unit ? [path.replace(/(?:Mm|Gb|MtPerS|MBytesPerS|[WACSG])$/, "")] : []),
		({ title }) => [title],
		// What a usual word counts, such as slots, is no list of things with names.
		({ path }) => (entriesOf(kind, path) === "groups" ? [] : (csvWords[path] ?? [])),
	];
	for (const names of waysToName) {
		const more = new Map<string, FactEntry[]>();
		for (const fact of facts)
			for (const key of new Set(names(fact).map(headKey)))
				if (key !== "" && !index.has(key)) more.set(key, [...(more.get(key) ?? []), fact]);
		for (const [key, entries] of more) index.set(key, entries);
	}
	indexes.set(kind, index);
	return index;
}

/** Letters and digits only, small, with umlauts in two letters: "Größe" and "GROESSE" are one. */
export function headKey(head: string): string {
	return canonicalName(
		head
			.toLowerCase()
			.replace(/ß/g, "ss")
			.normalize("NFC")
			.replace(/[äöü]/g, (letter) => ({ ä: "ae", ö: "oe", ü: "ue" })[letter] ?? letter),
	);
}
