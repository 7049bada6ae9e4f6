import { expect, test } from "vitest";
import { labelledLines } from "../../src/reading/labelled-lines.ts";
import { textLines } from "../../src/reading/text-lines.ts";
import { wideRows } from "../../src/reading/wide-rows.ts";

const read = (...rows: readonly string[]) =>
	wideRows(labelledLines(textLines(rows.join("\n")).lines))
		.filter(({ names }) => !names)
		.map(({ label, value, line }) => [line, label, value]);

test("columns that count give a line a count, a column's lines together", () => {
	expect(
		read(
			"| Interface | Ports at the back | Ports by header |",
			"| --- | --- | --- |",
			"| USB 5Gbps | 4 | 2 |",
			"| USB 2.0 | 0 | 4 |",
		),
	).toEqual([
		[3, "Ports at the back", "4 x USB 5Gbps"],
		[3, "Ports by header", "2 x USB 5Gbps"],
		[4, "Ports by header", "4 x USB 2.0"],
	]);
});

test("a table with one row is a line a cell", () => {
	expect(read("| Socket | Chipset | Form factor |", "| --- | --- | --- |", "| KT7 | K720 | ATX |")).toEqual([
		[3, "Socket", "KT7"],
		[3, "Chipset", "K720"],
		[3, "Form factor", "ATX"],
	]);
});

test("rows that count nothing stay one line", () => {
	const rows = read(
		"| Slot | Length | Lanes |",
		"| --- | --- | --- |",
		"| PCIE_1 | x16 | x16 |",
		"| PCIE_2 | x16 | x4 |",
	);
	expect(rows).toEqual([
		[3, "PCIE_1", "x16 | x16"],
		[4, "PCIE_2", "x16 | x4"],
	]);
});

test("a table with two columns and lines that are no table are left alone", () => {
	expect(read("| Feature | Value |", "| --- | --- |", "| Socket | KT7 |")).toEqual([[3, "Socket", "KT7"]]);
	expect(read("Socket: KT7")).toEqual([[1, "Socket", "KT7"]]);
});
