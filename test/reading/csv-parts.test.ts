import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { checkParts } from "../../src/parts/check-parts.ts";
import { readMoney } from "../../src/questions/read-money.ts";
import { mapColumns } from "../../src/reading/csv-columns.ts";
import { csvParts } from "../../src/reading/csv-parts.ts";

function partsOf(head: readonly string[], ...cells: readonly (readonly string[])[]) {
	return csvParts(
		cells.map((row, index) => ({ row: index + 2, cells: row })),
		{
			kind: "board",
			columns: mapColumns("board", head).columns,
			width: head.length,
			source: { name: "boards.csv", date: "2026-11-28" },
			readMoney,
		},
	);
}

test("a row is a part, with an id made of its name and where each fact was read", () => {
	const { parts, bad } = partsOf(["Name", "Memory type", "Price (EUR)", "Foo"], ["Größer 7 Fir", "DDR5", "99", "x"]);
	expect(bad).toEqual([]);
	expect(parts).toEqual([
		{
			row: 2,
			part: {
				id: "gro-er-7-fir",
				name: "Größer 7 Fir",
				memory: { type: "DDR5" },
				price: { minor: 9900, currency: "EUR" },
				evidence: { "memory.type": { standing: "stated", where: "boards.csv, row 2", date: "2026-11-28" } },
			},
		},
	]);
});

describe("a row is bad", () => {
	test("for each cell that cannot be, and all of them are told", () => {
		const { parts, bad } = partsOf(["Name", "Width", "Memory type"], ["A", "wide", "DDR9"], ["B", "244", "DDR5"]);
		expect(parts.map(({ part }) => part.name)).toEqual(["B"]);
		expect(bad.map(({ row, column, found }) => [row, column, found])).toEqual([
			[2, "Width", "wide"],
			[2, "Memory type", "DDR9"],
		]);
	});

	test("with fewer cells than the head, or with more that hold something", () => {
		const { parts, bad } = partsOf(["Name", "Width"], ["A"], ["B", "244", ""], ["C", "244", "", "x"]);
		expect(parts.map(({ part }) => part.name)).toEqual(["B"]);
		expect(bad).toEqual([
			{ row: 2, column: null, found: "1 cell", expected: "2, as the head has" },
			{ row: 4, column: null, found: "4 cells", expected: "2, as the head has" },
		]);
	});

	test("without a name", () => {
		expect(partsOf(["Name", "Width"], ["", "244"]).bad).toEqual([
			{ row: 2, column: null, found: "no name", expected: "a name, which every part has" },
		]);
	});

	test("whose id another row has, given or made of the name", () => {
		expect(partsOf(["id", "Name"], ["a", "A"], ["a", "B"]).bad).toEqual([
			{ row: 3, column: "id", found: "a", expected: "an id of its own; row 2 has it" },
		]);
		expect(partsOf(["Name"], ["A b"], ["a-B"]).bad).toMatchObject([
			{ row: 3, column: null, expected: "a name of its own; row 2 has it" },
		]);
	});

	test("whose facts do not go together", () => {
		const { parts, bad } = partsOf(
			["Name", "chipsetUplink.lanes", "chipsetUplink.generation"],
			["A", "8", ""],
			["B", "8", "4"],
		);
		expect(parts.map(({ part }) => part.name)).toEqual(["B"]);
		expect(bad).toEqual([
			{
				row: 2,
				column: null,
				found: "chipsetUplink.generation",
				expected: "a number, but nothing stands there",
			},
		]);
	});
});

test("whatever a table holds, its parts are sound and every other row is told", () => {
	const head = ["Name", "id", "Width (cm)", "Memory type", "M.2 sockets", "wiredGbps", "__proto__"];
	const cell = fc.oneof(
		fc.string(),
		fc.constantFrom("", "a", "24,4", "DDR5", '[{"name":"A"}]', "1; 2.5", "=x", "-", "none"),
	);
	fc.assert(
		fc.property(fc.array(fc.array(cell, { minLength: 6, maxLength: 8 }), { maxLength: 8 }), (rows) => {
			const { parts, bad } = partsOf(head, ...rows);
			expect(checkParts({ schema: "boardwalk/parts@1", boards: parts.map(({ part }) => part) }).faults).toEqual([]);
			const told = new Set([...parts, ...bad].map(({ row }) => row));
			expect(told.size).toBe(rows.length);
			for (const { row } of parts) expect(bad.some((one) => one.row === row)).toBe(false);
		}),
	);
});
