import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { demoFiles } from "../../src/cli/demo-market.ts";
import { parseCsv } from "../../src/files/read-csv.ts";
import { type AnyPart, type PartKind, partKindNames, partKinds } from "../../src/parts/part-kinds.ts";
import { readMoney } from "../../src/questions/read-money.ts";
import { columnFacts, mapColumns } from "../../src/reading/csv-columns.ts";
import { csvParts } from "../../src/reading/csv-parts.ts";
import { factIn, factsKnown, partsCsv } from "../../src/reading/parts-csv.ts";

function readBack(kind: PartKind, text: string) {
	const { head, rows } = parseCsv(text, "a.csv");
	const source = { name: "a.csv", date: "2026-11-28" };
	const { columns, leftOut } = mapColumns(kind, head);
	expect(leftOut).toEqual([]);
	return csvParts(rows, { kind, columns, width: head.length, source, readMoney });
}

const board = (name: string, facts: object = {}) => ({ id: "a", name, ...facts }) as AnyPart;

describe("a table of parts", () => {
	test("has a column for each single fact that any part has", () => {
		const { text, leftOut } = partsCsv("board", [
			board("A, b", { memory: { type: "DDR5" }, price: { minor: 12990, currency: "EUR" }, wiredGbps: [1, 2.5] }),
			{ ...board('"C"', { chipsetFan: false, m2Sockets: [{ name: "M2_1" }] }), id: "c" },
		]);
		expect(text).toBe(
			[
				"id,name,price,memory.type,wiredGbps,chipsetFan",
				'a,"A, b",EUR 129.90,DDR5,"1; 2.5",',
				'c,"""C""",,,,no',
				"",
			].join("\r\n"),
		);
		expect(leftOut).toEqual(["m2Sockets"]);
	});

	test.each(["=1+2", "+1", "-1", "@x", "'=x", "''=x", "\tx"])("has no cell that begins a formula: %j", (name) => {
		const [, row = ""] = partsCsv("board", [board(name)]).text.split("\r\n");
		expect(row).toBe(`a,'${name}`);
	});

	test("keeps numbers numbers", () => {
		expect(partsCsv("board", [board("A", { widthMm: 243.84 })]).text).toContain("a,A,243.84");
	});
});

describe("read again", () => {
	test("a table of the demonstration's parts gives the same facts", () => {
		for (const kind of partKindNames) {
			const parts = demoFiles.flatMap((file) => (file[partKinds[kind].list] ?? []) as AnyPart[]);
			if (parts.length === 0) continue;
			const { text, leftOut } = partsCsv(kind, parts);
			// A chipset row cannot do without its list of generations.
			if (kind === "platform") continue;
			const { parts: again, bad } = readBack(kind, text);
			expect(bad).toEqual([]);
			expect(again).toHaveLength(parts.length);
			for (const [index, part] of parts.entries())
				for (const { path, form } of columnFacts(kind))
					if (!leftOut.includes(path) && (form !== "group" || path === "price"))
						expect(factIn(again[index]?.part as AnyPart, path), `${part.id} ${path}`).toEqual(factIn(part, path));
		}
	});

	test("any name is the same name", () => {
		const name = fc
			.oneof(
				fc.string({ minLength: 1, maxLength: 20 }),
				fc.constantFrom("=x", "'=x", "-", "?", "'-", "n/a", 'a"b', "a;b"),
			)
			.map((text) => text.replace(/\s+/g, " ").trim())
			.filter((text) => /^[\u0020-\u007e]+$/.test(text));
		fc.assert(
			fc.property(name, (text) => {
				const { parts, bad } = readBack("board", partsCsv("board", [board(text)]).text);
				if (["?", "n/a", "na", "unknown"].includes(text.toLowerCase())) expect(bad).toHaveLength(1);
				else expect(parts.map(({ part }) => part.name)).toEqual([text]);
			}),
			{ numRuns: 500 },
		);
	});
});

test("facts known are counted without what a part is called", () => {
	expect(factsKnown("board", board("A"))).toBe(0);
	expect(factsKnown("board", board("A", { memory: { type: "DDR5", slots: 4 }, widthMm: 244, m2Sockets: [] }))).toBe(4);
});
