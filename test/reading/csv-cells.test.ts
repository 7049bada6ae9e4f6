import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { factAt, factsOf } from "../../src/parts/fact-list.ts";
import { type PartKind, partKindNames, partKinds } from "../../src/parts/part-kinds.ts";
import { readMoney } from "../../src/questions/read-money.ts";
import { readCell } from "../../src/reading/csv-cells.ts";
import { withFact } from "../../src/reading/put-fact.ts";

function read(kind: PartKind, path: string, text: string, unit?: string) {
	const fact = factAt(kind, path);
	if (!fact) throw new Error(`${kind} has no ${path}`);
	return readCell(text, { kind, fact, readMoney, ...(unit ? { unit } : {}) });
}

describe("a cell is read", () => {
	test.each<[PartKind, string, string, unknown, string?]>([
		["board", "widthMm", "244", 244],
		["board", "widthMm", "24,4", 244, "cm"],
		["board", "widthMm", "24,4 cm", 244],
		["board", "widthMm", '9.6"', 243.84],
		["board", "widthMm", "305.000", 305],
		["board", "memory.highestMtPerS", "7.200", 7200],
		["board", "memory.highestMtPerS", "7,200 MT/s", 7200],
		["board", "memory.maxGb", "0.25 TB", 256],
		["drive", "gb", "2", 2000, "TB"],
		["drive", "gb", "1.234,5", 1234.5],
		["drive", "gb", "1,234.5", 1234.5],
		["board", "warrantyYears", "24 Monate", 2],
		["processor", "hottestC", "95 °C", 95],
		["processor", "unlocked", "Ja", true],
		["processor", "unlocked", "nein", false],
		["processor", "unlocked", "x", true],
		["board", "form", "micro ATX", "microATX"],
		["board", "form", "mATX", "microATX"],
		["board", "memory.type", "ddr5", "DDR5"],
		["lighting", "volts", "5 V", 5],
		["board", "wiredGbps", "2,5 G; 1", [2.5, 1]],
		["board", "wiredGbps", "none", []],
		["case", "boardForms", "ATX / microATX, Mini-ITX", ["ATX", "microATX", "Mini-ITX"]],
		["supply", "processorPlugs", "2 x 8-pin; 4 pin", ["8-pin", "8-pin", "4-pin"]],
		["board", "inTheBox", "two cables, long; M.2 screw", ["two cables, long", "M.2 screw"]],
		["board", "m2Sockets", '[{"name":"M2_1","generation":4}]', [{ name: "M2_1", generation: 4 }]],
		["board", "chipsetUplink", '{"lanes":8,"generation":4}', { lanes: 8, generation: 4 }],
		["board", "price", "149,90 €", { minor: 14990, currency: "EUR" }],
		["board", "price", "1.149,90", { minor: 114990, currency: "EUR" }, "€"],
		["board", "checkedOn", "24.11.2026", "2026-11-24"],
		["board", "name", "=1+2", "=1+2"],
		["board", "name", "'=1+2", "=1+2"],
		["board", "name", "O'Hara", "O'Hara"],
	])("%s %s %j as %j", (kind, path, text, value, unit) => {
		expect(read(kind, path, text, unit)).toEqual({ value });
	});

	test.each(["", " ", "-", "n/a", "k. A.", "?", "unbekannt"])("as not known where it says %j", (text) => {
		for (const path of ["widthMm", "form", "name", "wiredGbps"])
			expect(read("board", path, text)).toEqual({ value: undefined });
	});
});

describe("a cell is refused, saying what was expected,", () => {
	test.each<[PartKind, string, string, RegExp, string?]>([
		["board", "widthMm", "wide", /^a number in mm/],
		["board", "widthMm", "12 W", /^a number in mm/],
		["board", "widthMm", "1e309", /^a number in mm/],
		["board", "widthMm", "30.5", /^at least 80$/],
		["board", "memory.slots", "4.5", /whole number/],
		["drive", "readMBytesPerS", "7.000", /without signs between thousands$/],
		["processor", "unlocked", "perhaps", /^yes or no$/],
		["board", "form", "__proto__", /^one of Mini-ITX/],
		["board", "form", "constructor", /^one of/],
		["case", "boardForms", "ATX, ITX", /^some of Mini-ITX/],
		["board", "m2Sockets", "3", /^a list in \[ \] as JSON$/],
		["board", "m2Sockets", '[{"name":"A","bad":1}]', /^no "bad"; known there: name, /],
		["board", "m2Sockets", '[{"key":"M"}]', /but nothing stands there at \[0\]\.name$/],
		["board", "price", "149.90", /^a price with its currency/],
		["board", "price", "0 EUR", /^a price with its currency/],
		["board", "price", "cheap", /\(EUR\)$/, "EUR"],
		["board", "checkedOn", "11/24/2026", /^a date such as/],
		["board", "name", "x".repeat(121), /^at most 120 letters$/],
	])("%s %s %j", (kind, path, text, expected, unit) => {
		expect(read(kind, path, text, unit)).toEqual({ expected: expect.stringMatching(expected) });
	});
});

test("whatever a cell holds, a value is one the fact can have, and nothing is thrown", () => {
	const facts = partKindNames.flatMap((kind) => factsOf(kind).map((fact) => ({ kind, fact })));
	const text = fc.oneof(
		fc.string(),
		fc.json(),
		fc.double().map(String),
		fc
			.tuple(fc.nat(99_999), fc.constantFrom("", " mm", " cm", ",5", ".250", " GB", " x ATX", " EUR"))
			.map((both) => both.join("")),
		fc.constantFrom("ATX; mATX", "yes", "24.12.2026", "none", "[]", "{}", "[[]]", "'=x", "1/2", "__proto__"),
	);
	fc.assert(
		fc.property(
			fc.constantFrom(...facts),
			text,
			fc.constantFrom(undefined, "cm", "EUR", "x"),
			({ kind, fact }, cell, unit) => {
				const reading = readCell(cell, { kind, fact, readMoney, ...(unit ? { unit } : {}) });
				if ("expected" in reading) expect(reading.expected).not.toBe("");
				else if (reading.value !== undefined) {
					const part = withFact({ id: "x", name: "x" }, fact.path, reading.value);
					const issues = partKinds[kind].schema.safeParse(part).error?.issues ?? [];
					const keys = fact.path.split(".");
					// A group may still want facts beside this one.
					expect(issues.filter(({ path }) => keys.every((key, place) => path[place] === key))).toEqual([]);
				}
			},
		),
		{ numRuns: 3000 },
	);
});
