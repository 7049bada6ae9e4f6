import { labelledLines } from "./labelled-lines.ts";
import type { ReadAt, UnreadLine } from "./part-reading.ts";
import type { TextLine } from "./text-lines.ts";

/** A row of a support list by its columns; nothing is judged yet. */
export interface TableRow extends ReadAt {
	readonly processor: string;
	/** What stands in the columns of versions, empty places too. */
	readonly versions: readonly string[];
	readonly hasVersions: boolean;
	readonly note: string | undefined;
}

type Column = "processor" | "model" | "family" | "version" | "note" | "other";
type Border = "tab" | "bar" | "comma" | "semicolon" | "spaces";

interface Cells {
	readonly cells: readonly string[];
	/** Where each begins in the line. */
	readonly starts: readonly number[];
}

/** What a head of a column names; undefined where it is none of a support list. */
function columnOf(head: string): Column | undefined {
	const text = head
		.toLowerCase()
		.replace(/[*#®™:.()]/g, " ")
		.replace(/[\s_-]+/g, " ")
		.trim();
	if (text === "" || text.length > 40) return undefined;
	if (
		/^(?:(?:supported|unterstützte[rs]?) )?(?:cpus?|processors?|prozessor(?:en)?)(?: ?(?:name|model|modell|type|typ|support))?$/.test(
			text,
		)
	)
		return "processor";
	if (/^(?:model|modell|name|model name|modellname|model no|model number|bezeichnung|typ|type)$/.test(text))
		return "model";
	if (/^(?:(?:cpu|processor) )?(?:family|familie|series|serie|brand|product line|marke)$/.test(text)) return "family";
	if (/\b(?:pcb|board|mainboard)\b|\bdate\b|datum|\bmicrocode|agesa/.test(text)) return "other";
	if (/note|remark|comment|bemerk|hinweis|anmerk|kommentar/.test(text)) return "note";
	if (
		/bios|uefi|firmware|^version$|^since(?: version)?$|^seit(?: version)?$|^ab(?: version)?$|validated since|supported since|unterstützt (?:seit|ab)|^(?:min(?:imum)?|from) version$/.test(
			text,
		)
	)
		return "version";
	const other =
		/step|revision|\brev\b|watt|tdp|power|leistung|core|kern|cache|l[23]\b|freq|clock|takt|speed|process|code ?name|vendor|maker|hersteller|part|opn|spec|order|socket|sockel|gpu|grafik|graphic|bus|memory|status|support|download|thread|vcore|generation|launch|fsb|^no$|^nr$/;
	return other.test(text) ? "other" : undefined;
}

/** Which of several columns of versions counts: the one that says since when. */
const saysSince = /since|seit|\bab\b|min|from|first|validat|support/i;
const saysLater = /latest|newest|recommend|neueste|empfohlen|beta/i;

interface Table {
	readonly border: Border;
	readonly heads: readonly string[];
	readonly starts: readonly number[];
	readonly columns: readonly Column[];
	readonly versions: readonly number[];
	readonly rows: { readonly cells: readonly string[]; readonly at: ReadAt }[];
}

interface Found {
	readonly tableRows: readonly TableRow[];
	readonly unread: readonly UnreadLine[];
	/** Lines within a table that could be rows and could not be told apart. */
	readonly lost: number;
}

/** All tables of a text that name processors; where there is none, lines of label and value. */
export function supportTables(lines: readonly TextLine[]): Found {
	const tables: Table[] = [];
	const unread: UnreadLine[] = [];
	let lost = 0;
	let table: Table | undefined;
	for (const { number, text } of lines) {
		const inner = text.trim();
		if (inner === "" || /^[\s:|+=-]+$/.test(inner)) continue;
		const next = headOf(text);
		if (next) {
			table = next;
			tables.push(table);
			continue;
		}
		const at = { line: number, quote: inner };
		const cells = table && cellsFor(table, text);
		if (table && cells) table.rows.push({ cells, at });
		else {
			if (table && splitAt(text, table.border).cells.length > 1) lost++;
			unread.push({ line: number, text: inner });
		}
	}
	const tableRows = tables.flatMap(rowsOfTable);
	if (tableRows.length > 0) return { tableRows, unread, lost };
	const listed = labelledRows(lines) ?? stackedRows(lines);
	return listed ? { ...listed, lost: 0 } : { tableRows, unread, lost };
}

function headOf(line: string): Table | undefined {
	for (const border of ["tab", "bar", "semicolon", "comma", "spaces"] as const) {
		const { cells, starts } = splitAt(line, border);
		if (cells.length < 2) continue;
		const columns = cells.map(columnOf);
		const known = columns.filter((column) => column !== undefined).length;
		const names = columns.some((column) => column === "processor" || column === "model" || column === "family");
		if (!names || known < 2 || known < cells.filter((cell) => cell !== "").length * 0.6) continue;
		const all = cells.flatMap((_cell, place) => (columns[place] === "version" ? [place] : []));
		const since = all.filter((place) => saysSince.test(cells[place] ?? ""));
		const plain = all.filter((place) => !saysLater.test(cells[place] ?? ""));
		const versions = since.length === 1 ? since : plain.length > 0 ? plain : all;
		return { border, heads: cells, starts, columns: columns.map((column) => column ?? "other"), versions, rows: [] };
	}
	return undefined;
}

/** The cells of a line by the table's columns; nothing where it cannot be told which cell is which. */
function cellsFor(table: Table, line: string): readonly string[] | undefined {
	const { cells, starts } = splitAt(line, table.border);
	const many = table.heads.length;
	if (cells.length === many) return cells;
	if (table.border === "spaces") {
		if (cells.length > many || cells.length < 2) return undefined;
		// Empty places leave no trace but where the others stand.
		const placed = Array.from({ length: many }, () => "");
		for (const [index, cell] of cells.entries()) {
			const column = table.starts.findIndex((start) => Math.abs(start - (starts[index] ?? 0)) <= 1);
			if (column < 0 || placed[column] !== "") return undefined;
			placed[column] = cell;
		}
		return placed;
	}
	// Empty cells at the end get lost when a text is copied; where cells lack before a version, it could be any.
	const last = Math.max(...table.versions, table.columns.indexOf("processor"), table.columns.indexOf("model"));
	if (cells.length < many && cells.length > last && cells.length > 1) return cells;
	const rest = cells.slice(many);
	return cells.length > many && rest.every((cell) => cell === "") ? cells.slice(0, many) : undefined;
}

function splitAt(line: string, border: Border): Cells {
	if (border === "spaces") {
		const found = [...line.matchAll(/\S+(?:\s\S+)*/g)];
		return { cells: found.map(([cell]) => cell.trim()), starts: found.map(({ index }) => index) };
	}
	if (border === "bar") {
		if (!line.includes("|")) return { cells: [line.trim()], starts: [0] };
		const inner = line.trim().replace(/^\|/, "").replace(/\|$/, "");
		return { cells: inner.split("|").map(plain), starts: [] };
	}
	if (border === "tab") return { cells: line.split("\t").map(plain), starts: [] };
	return { cells: quotedCells(line, border === "comma" ? "," : ";"), starts: [] };
}

const plain = (cell: string): string =>
	cell
		.replace(/\*\*|`/g, "")
		.replace(/\s+/g, " ")
		.trim();

/** Cells of a line of comma- or semicolon-separated values; a doubled quote within quotes is one. */
function quotedCells(line: string, border: string): string[] {
	const cells: string[] = [];
	let cell = "";
	let isQuoted = false;
	for (let at = 0; at < line.length; at++) {
		const letter = line[at] ?? "";
		if (letter === '"' && isQuoted && line[at + 1] === '"') {
			cell += letter;
			at++;
		} else if (letter === '"' && (isQuoted || cell.trim() === "")) isQuoted = !isQuoted;
		else if (letter === border && !isQuoted) {
			cells.push(plain(cell));
			cell = "";
		} else cell += letter;
	}
	cells.push(plain(cell));
	return cells;
}

function rowsOfTable({ columns, versions, rows }: Table): readonly TableRow[] {
	const [own, model, family] = (["processor", "model", "family"] as const).map((column) => columns.indexOf(column));
	const columnAt = (cells: readonly string[], place: number | undefined) =>
		place === undefined || place < 0 ? "" : (cells[place] ?? "");
	// Where many rows share what stands under "processor", it is a family, and the model tells which.
	const names = rows.map(({ cells }) => columnAt(cells, own));
	const isFamily = (model ?? -1) >= 0 && (own ?? -1) >= 0 && new Set(names).size < rows.length * 0.7;
	let before = "";
	return rows.map(({ cells, at }) => {
		const parts = [columnAt(cells, own), columnAt(cells, model), columnAt(cells, family)] as const;
		const [processor, modelName, familyName] = parts;
		const front = isFamily ? processor || before : familyName || before;
		if (isFamily ? processor : familyName) before = front;
		const name = isFamily || (own ?? -1) < 0 ? joined(front, modelName) : processor;
		const note = columns.flatMap((column, place) => (column === "note" ? [columnAt(cells, place)] : [])).join("; ");
		return {
			processor: name,
			versions: versions.map((place) => columnAt(cells, place)),
			hasVersions: versions.length > 0,
			note: note === "" ? undefined : note,
			...at,
		};
	});
}

const joined = (family: string, model: string): string =>
	model === "" || model.toLowerCase().startsWith(family.toLowerCase()) ? model : `${family} ${model}`.trim();

type Listed = Pick<Found, "tableRows" | "unread">;

/** "CPU: ...", "BIOS: ..." one below the other. */
function labelledRows(lines: readonly TextLine[]): Listed | undefined {
	const rows: { processor: string; versions: string[]; note: string | undefined; line: number; quote: string }[] = [];
	const unread: UnreadLine[] = [];
	for (const { label, value, line, quote, names } of labelledLines(lines)) {
		const column = label === undefined || names ? undefined : columnOf(label);
		const last = rows.at(-1);
		if (column === "processor" || (column === "model" && !last)) {
			rows.push({ processor: value, versions: [], note: undefined, line, quote });
		} else if (column === "version" && last && last.versions.length === 0) {
			last.versions.push(value);
			last.quote = `${last.quote}\n${quote}`;
		} else if (column === "note" && last) last.note = value;
		else if (column === undefined) unread.push({ line, text: quote });
	}
	const hasVersions = rows.some(({ versions }) => versions.length > 0);
	return hasVersions ? { tableRows: rows.map((row) => ({ ...row, hasVersions })), unread } : undefined;
}

/** A table of which each cell came as a line of its own: heads first, then as many lines a row, none missing. */
function stackedRows(lines: readonly TextLine[]): Listed | undefined {
	const filled = lines
		.filter(({ text }) => text.trim() !== "")
		.map(({ number, text }) => ({ number, text: text.trim() }));
	const from = filled.findIndex(({ text }) => columnOf(text) !== undefined);
	if (from < 0) return undefined;
	let to = from;
	while (to < filled.length && columnOf(filled[to]?.text ?? "") !== undefined) to++;
	const columns = filled.slice(from, to).map(({ text }) => columnOf(text) ?? "other");
	const cells = filled.slice(to);
	const [name, version] = [columns.indexOf("processor"), columns.indexOf("version")];
	const isSound =
		columns.length >= 2 && name >= 0 && version >= 0 && columns.filter((one) => one === "version").length === 1;
	if (!isSound || cells.length === 0 || cells.length % columns.length > 0) return undefined;
	const tableRows: TableRow[] = [];
	for (let at = 0; at < cells.length; at += columns.length) {
		const row = cells.slice(at, at + columns.length);
		const [processor, since] = [row[name]?.text ?? "", row[version]?.text ?? ""];
		// One line too few shifts all that follow.
		if (!/\d{2}/.test(processor) || since.includes(" ") || since.length > 20 || !/\d/.test(since)) return undefined;
		tableRows.push({
			processor,
			versions: [since],
			hasVersions: true,
			note: row[columns.indexOf("note")]?.text,
			line: row[0]?.number ?? 0,
			quote: row.map(({ text }) => text).join("\n"),
		});
	}
	return { tableRows, unread: filled.slice(0, from).map(({ number, text }) => ({ line: number, text })) };
}
