import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { BrokenCsv, parseCsv, readCsv } from "../../src/files/read-csv.ts";
import { UnreadableFile } from "../../src/files/read-text.ts";
import { ownFolder } from "./own-folder.ts";

const { write } = ownFolder();

const cellsOf = (text: string) => {
	const { head, rows } = parseCsv(text, "a.csv");
	return [head, ...rows.map(({ cells }) => cells)];
};
const reasonFor = (text: string) => {
	try {
		parseCsv(text, "a.csv");
	} catch (error) {
		if (error instanceof BrokenCsv) return error.reason;
		throw error;
	}
	throw new Error("it was read");
};

describe("a table", () => {
	test.each([
		["commas", ",", "name,width\nA,244\nB,305\n"],
		["semicolons and decimal commas", ";", "name;width\nA;24,4\nB;30,5\n"],
		["tabs", "\t", "name\twidth\nA, with comma\t244\n"],
		["semicolons, and commas in the head", ";", "name;width, mm;depth, mm, about\nA;244;244\n"],
		["commas in quotes", ";", '"a,b,c";d\n"1,2,3";4\n'],
		["what its first line says", "\t", "sep=\t\nname\twidth;x;y\nA\t244\n"],
		["nothing: one column", ",", "name\nA\n"],
	])("with %s between cells", (_, delimiter, text) => {
		expect(parseCsv(text, "a.csv").delimiter).toBe(delimiter);
	});

	test("has quotes, line ends in cells, doubled quotes, inches and any line end as RFC 4180 and spreadsheets have them", () => {
		expect(cellsOf('name,size\r\n"A, ""big""","9.6\nx"\rB,9.6"\nC,=1+2\n')).toEqual([
			["name", "size"],
			['A, "big"', "9.6 x"],
			["B", '9.6"'],
			["C", "=1+2"],
		]);
	});

	test("numbers its rows as a spreadsheet does, empty ones too, which are left out", () => {
		const { head, rows } = parseCsv("\nname,width,,\n,,\nA,244\n\n\nB,305,x,y,z\n", "a.csv");
		expect(head).toEqual(["name", "width"]);
		expect(rows).toEqual([
			{ row: 4, cells: ["A", "244"] },
			{ row: 7, cells: ["B", "305", "x", "y", "z"] },
		]);
		expect(parseCsv("sep=;\nname;b\nA;1\n", "a.csv").rows[0]?.row).toBe(3);
	});

	test("has nothing in it that a terminal would obey, and heads like __proto__ are words", () => {
		expect(cellsOf("__proto__,constructor\n\u001b[31mred\u202e,\u0007bell\n")).toEqual([
			["__proto__", "constructor"],
			["red", "bell"],
		]);
	});

	test.each<[string, Uint8Array]>([
		["UTF-8 with a mark", Buffer.from("\ufeffname;Größe\nA;1\n")],
		["UTF-16 with a mark", Buffer.from("\ufeffname;Größe\nA;1\n", "utf16le")],
		["Latin-1", Buffer.from("name;Größe\nA;1\n", "latin1")],
	])("is read in %s", (_, bytes) => {
		expect(readCsv(write("a.csv", bytes)).head).toEqual(["name", "Größe"]);
	});
});

describe("no table", () => {
	test.each(["", "\n\n", ",,,\n,", "\ufeff"])("%j is empty", (text) => {
		expect(reasonFor(text)).toBe("the file is empty, and a table was expected");
	});

	test("has a quote that never closes", () => {
		expect(reasonFor('name,width\n"A,244\nB,305\n')).toMatch(/quotation mark is opened and never closed/);
	});

	test("has more rows than a parts file takes, or a row of thousands of cells", () => {
		expect(parseCsv(`name\n${"A\n".repeat(20_000)}`, "a.csv").rows).toHaveLength(20_000);
		expect(reasonFor(`name\n${"A\n".repeat(20_001)}`)).toBe("the table has more than 20 000 rows");
		expect(reasonFor(`name\n${"\n".repeat(30_000)}A\n`)).toBe("the table has more than 20 000 rows");
		expect(reasonFor(`name,${",".repeat(3000)}\n`)).toBe("one row has more than 2000 cells");
	});

	test("is an empty file or a picture", () => {
		expect(() => readCsv(write("a.csv", ""))).toThrow(UnreadableFile);
		expect(() => readCsv(write("a.csv", Buffer.from([0x50, 0x4b, 3, 4, 0, 0])))).toThrow(UnreadableFile);
	});
});

test("any text is a table or refused with a reason", () => {
	const piece = fc.oneof(
		fc.string(),
		fc.constantFrom(",", ";", "\t", '"', "\n", "\r\n", "\r", "sep=;", "=", "\ufeff", "\0"),
	);
	fc.assert(
		fc.property(fc.array(piece, { maxLength: 60 }), (pieces) => {
			try {
				const { head, rows } = parseCsv(pieces.join(""), "a.csv");
				for (const cell of [head, ...rows.map(({ cells }) => cells)].flat()) expect(cell).not.toMatch(/[\n\r\0]/);
			} catch (error) {
				expect(error).toBeInstanceOf(BrokenCsv);
			}
		}),
		{ numRuns: 500 },
	);
});
