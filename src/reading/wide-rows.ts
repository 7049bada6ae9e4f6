import type { LabelledLine } from "./labelled-lines.ts";

/**
 * Rows of tables with several columns, as lines of one value each. A table with one row, or with figures in its first
 * column, is a line a cell under the column's name. In others a row stays one line; where columns count, such as "ports at the
 * back" and "ports by header", it is a line for each count.
 */
export function wideRows(lines: readonly LabelledLine[]): readonly LabelledLine[] {
	const found: LabelledLine[] = [];
	for (let index = 0; index < lines.length; index++) {
		const head = lines[index] as LabelledLine;
		const names = namesOf(head);
		const rows = names ? rowsBelow(lines, index + 1) : [];
		if (!names || rows.length === 0 || names.length < 3) {
			found.push(head);
			continue;
		}
		const told = rows.flatMap((row) => linesOf(row, names, rows.length));
		// What one column counts stands together, so that it makes one list.
		const column = ({ cells, label }: LabelledLine) => (cells.length === 0 ? names.indexOf(label ?? "") : -1);
		found.push(head, ...(rows.length === 1 ? told : told.toSorted((one, other) => column(one) - column(other))));
		index += rows.length;
	}
	return found;
}

function namesOf({ names, value, label }: LabelledLine): readonly string[] | undefined {
	if (!names) return undefined;
	const all = [...(label === undefined ? [] : [label]), ...value.split(" | ")].map((name) => name.trim());
	return all.length >= 3 ? all : undefined;
}

function rowsBelow(lines: readonly LabelledLine[], from: number): readonly LabelledLine[] {
	const rows: LabelledLine[] = [];
	for (let index = from; index < lines.length; index++) {
		const line = lines[index] as LabelledLine;
		if (line.names || line.cells.length < 2 || line.label === undefined) break;
		rows.push(line);
	}
	return rows;
}

const countColumn =
	/\b(?:ports?|number|count|quantity|qty|how\smany|anzahl|stück)\b|\bat\sthe\sback\b|\brear\b|\bby\sheader\b|\bheaders?\b/i;

function linesOf(row: LabelledLine, names: readonly string[], rows: number): readonly LabelledLine[] {
	const cells = [row.label ?? "", ...row.cells];
	if (rows === 1 || /^\d+$/.test(cells[0] ?? "")) {
		const section = row.sections.at(-1) ?? "";
		return cells
			.map((value, index) => ({ ...row, label: `${section} ${names[index] ?? ""}`.trim(), value, cells: [] }))
			.filter(({ value }) => value !== "");
	}
	const counts = cells.flatMap((cell, index) =>
		index > 0 && /^\d{1,2}$/.test(cell) && countColumn.test(names[index] ?? "")
			? [{ count: Number(cell), name: names[index] ?? "" }]
			: [],
	);
	if (counts.length === 0) return [row];
	const thing = cells
		.filter((_, index) => !(index > 0 && /^\d{1,2}$/.test(cells[index] ?? "") && countColumn.test(names[index] ?? "")))
		.join(" ");
	return counts
		.filter(({ count }) => count > 0)
		.map(({ count, name }) => ({ ...row, label: name, value: `${count} x ${thing}`, cells: [] }));
}
