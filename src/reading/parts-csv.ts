import { checkJson } from "../parts/check-json.ts";
import { factsOf } from "../parts/fact-list.ts";
import { type Money, moneyText } from "../parts/money.ts";
import type { AnyPart, PartKind } from "../parts/part-kinds.ts";
import { columnFacts } from "./csv-columns.ts";
import { schemaOf } from "./fact-schema.ts";

/** A table of parts as text, and the facts of theirs that no cell can hold. */
export interface PartsTable {
	readonly text: string;
	/** Paths of facts that are lists of groups; only JSON has them. */
	readonly leftOut: readonly string[];
}

/**
 * Parts of one kind as comma-separated values (RFC 4180): one row a part, one column for each single fact and each list
 * of words that any of them has, headed by the path of the fact. No cell can be taken for a formula.
 */
export function partsCsv(kind: PartKind, parts: readonly AnyPart[]): PartsTable {
	const held = columnFacts(kind).filter(
		({ path, form }) =>
			(form !== "group" || path === "price") && parts.some((part) => factIn(part, path) !== undefined),
	);
	const noCell = held.filter(({ path }) => !parts.every((part) => isCell(factIn(part, path)))).map(({ path }) => path);
	const incomplete = noCell.flatMap((path) => groupThatNeeds(kind, path) ?? []);
	const fits = (path: string) => !noCell.includes(path) && !incomplete.some((group) => path.startsWith(`${group}.`));
	const columns = held.filter(({ path }) => fits(path));
	const rows = parts.map((part) => columns.map(({ path }) => cellText(factIn(part, path))));
	const lines = [columns.map(({ path }) => path), ...rows].map((cells) => cells.map(quoted).join(","));
	return { text: `${lines.join("\r\n")}\r\n`, leftOut: held.filter(({ path }) => !fits(path)).map(({ path }) => path) };
}

/** The group that is none without a fact of its: its other facts alone could not be read again. */
function groupThatNeeds(kind: PartKind, path: string): string | null {
	const [, group, key] = /^(.+)\.([^.]+)$/.exec(path) ?? [];
	if (group === undefined) return null;
	return checkJson(schemaOf(kind, group), {}).faults.some((fault) => fault.path === key) ? group : null;
}

/** The fact of a part at a dotted path, or undefined. */
export function factIn(part: AnyPart, path: string): unknown {
	let at: unknown = part;
	for (const key of path.split(".")) {
		if (at === null || typeof at !== "object" || !Object.hasOwn(at, key)) return undefined;
		at = (at as Readonly<Record<string, unknown>>)[key];
	}
	return at;
}

/** How many facts of a part are known, without what it is called, what it costs and the program's own notes. */
export function factsKnown(kind: PartKind, part: AnyPart): number {
	const notCounted = new Set([
		"id",
		"name",
		"invented",
		"evidence",
		"price.minor",
		"price.currency",
		"checkedOn",
		"offers",
	]);
	return factsOf(kind).filter(
		({ path, form }) => form !== "group" && !notCounted.has(path) && factIn(part, path) !== undefined,
	).length;
}

function isMoney(value: unknown): value is Money {
	return typeof value === "object" && value !== null && "minor" in value && "currency" in value;
}

function isCell(value: unknown): boolean {
	return Array.isArray(value) ? value.every(isPlainWord) : typeof value !== "object" || isMoney(value);
}

/** A word that would be split where the list is read again can stand in no cell. */
function isPlainWord(entry: unknown): boolean {
	return typeof entry === "number" || (typeof entry === "string" && !/[;|]/.test(entry) && !entry.startsWith("["));
}

function cellText(value: unknown): string {
	if (value === undefined) return "";
	if (typeof value === "number") return String(value);
	if (typeof value === "boolean") return value ? "yes" : "no";
	if (Array.isArray(value)) return value.length === 0 ? "none" : harmless(listText(value));
	return harmless(isMoney(value) ? moneyText(value) : String(value));
}

/** A comma inside an entry is none between two when a semicolon stands anywhere. */
function listText(entries: readonly unknown[]): string {
	const text = entries.join("; ");
	return entries.length === 1 && text.includes(",") ? `${text};` : text;
}

/** A spreadsheet takes a cell that begins so for a formula; the apostrophe makes it text, and is taken off on import. */
function harmless(text: string): string {
	return /^'*[=+\-@\t\r]/.test(text) ? `'${text}` : text;
}

function quoted(cell: string): string {
	return /[",\r\n;]/.test(cell) ? `"${cell.replaceAll('"', '""')}"` : cell;
}
