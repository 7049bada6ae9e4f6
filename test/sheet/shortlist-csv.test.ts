import { parse } from "csv-parse/sync";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Sheet, SheetBoard } from "../../src/sheet/sheet.ts";
import { harmlessCell, shortlistCsv } from "../../src/sheet/shortlist-csv.ts";
import { demo, emptyMarket, scenarios } from "../walk/walk-in-demo.ts";
import { sheetOf } from "./sheet-of.ts";

const read = (csv: string, delimiter = ",") =>
	parse(csv, { bom: true, delimiter, record_delimiter: ["\r\n"] }) as string[][];
const sheets = scenarios.map(({ name, state }) => ({ name, sheet: sheetOf(state, demo) }));
const quiet = sheets.find(({ name }) => name === "quiet-desk")?.sheet as Sheet;

/** The sheet of one board whose every text is this one. */
function sheetNamed(text: string): Sheet {
	const [first] = quiet.shortlist;
	const board: SheetBoard = { ...(first as SheetBoard), name: text, facts: text, for: [text], unknown: [text, text] };
	return { ...quiet, shortlist: [board, board], ofAll: { for: [], against: [text], unknown: [] } };
}

describe.each(sheets)("the shortlist of $name", ({ sheet }) => {
	const csv = shortlistCsv(sheet);
	const [heads = [], ...rows] = read(csv);
	const column = (head: string) => rows.map((row) => row[heads.indexOf(head)]);

	test("is one row a board below the heads, in the sheet's order, all as wide", () => {
		expect(new Set([heads, ...rows].map(({ length }) => length)).size).toBe(1);
		expect(column("board")).toEqual(sheet.shortlist.map(({ name }) => name));
		expect(column("role")).toEqual(sheet.shortlist.map(({ roleWords }) => roleWords));
		expect(["score at least", "score", "score at most"].map(column)).toEqual([
			sheet.shortlist.map(({ score }) => String(score.low)),
			sheet.shortlist.map(({ score }) => String(score.mid)),
			sheet.shortlist.map(({ score }) => String(score.high)),
		]);
	});

	test("tells the price as a number with its currency, as the words do", () => {
		for (const [index, { price, priceWords, forced }] of sheet.shortlist.entries()) {
			const [amount, currency] = [column("price")[index] ?? "", column("currency")[index]];
			expect([amount === "", currency === ""]).toEqual([price === null, price === null]);
			if (price) expect(`${priceWords} `).toContain(`${currency} ${amount} `);
			expect(column("price in words")[index]).toBe(priceWords);
			expect(column("to buy besides")[index]).toBe(forced.join(" "));
		}
	});

	test("says with each board what holds for all of them", () => {
		for (const [head, key] of [
			["for it", "for"],
			["against it", "against"],
			["not known", "unknown"],
		] as const)
			expect(column(head)).toEqual(sheet.shortlist.map((board) => [...board[key], ...sheet.ofAll[key]].join(" ")));
	});

	test("ends each line with CR LF, and breaks none", () => {
		expect(csv.split("\r\n")).toHaveLength(sheet.shortlist.length + 2);
		expect(csv.replaceAll("\r\n", "")).not.toMatch(/[\r\n]/);
	});
});

test("without a board the heads stand alone", () => {
	const state = scenarios[0]?.state;
	if (!state) throw new Error("there are no scenarios");
	expect(read(shortlistCsv(sheetOf(state, emptyMarket)))).toHaveLength(1);
});

test("a byte order mark stands in front only where letters beyond ASCII do", () => {
	expect(shortlistCsv(sheetNamed("Plain"))).toMatch(/^role,/);
	expect(shortlistCsv(sheetNamed("Möwe"))).toMatch(/^\uFEFFrole,/);
});

test.each([
	["=1+1", "'=1+1"],
	["+49 30", "'+49 30"],
	["-2+3", "'-2+3"],
	["@SUM(A1)", "'@SUM(A1)"],
	["  =1", "'  =1"],
	["\t=1", "\t'=1"],
	["\u200d=1", "'\u200d=1"],
	["\u200b\u00a0=1", "'\u200b\u00a0=1"],
	['"=1"', '\'"=1"'],
	["\uff1d1", "'\uff1d1"],
	["\uff0b1", "'\uff0b1"],
	["\uff0d1", "'\uff0d1"],
	["\uff201", "'\uff201"],
	["\ufe621", "'\ufe621"],
	["\u22121+A1", "'\u22121+A1"],
	["a;=1", "a;'=1"],
	['a;"=1', "a;\"'=1"],
	["a ; =1", "a ; '=1"],
	["a|@b", "a|'@b"],
	["-5", "-5"],
	["+5.25", "+5.25"],
	["-5 cm", "'-5 cm"],
	["8-pin + 4-pin", "8-pin + 4-pin"],
	["a, -b", "a, -b"],
	["", ""],
])("the cell %j becomes %j", (text, cell) => {
	expect(harmlessCell(text)).toBe(cell);
});

const nasty = fc.string({
	unit: fc.constantFrom(..."=+-@'\",;|\t\r\n 1aé\u0000\u001b\u200d\u200b\u202e\u2028\ufeff\uff1d\uff0d\u3000\ud800"),
	maxLength: 14,
});

test("no name begins a formula, breaks a row or changes another cell, however a program parts cells", () => {
	const plain = shortlistCsv(sheetNamed("x"));
	fc.assert(
		fc.property(fc.oneof(nasty, fc.string({ unit: "binary" })), (name) => {
			const csv = shortlistCsv(sheetNamed(name));
			expect(csv).not.toMatch(/\p{Cc}(?<![\r\n])|[\u200b\u202a-\u202e\u2028\u2029]|\p{Cs}/u);
			expect(csv.split("\r\n")).toHaveLength(plain.split("\r\n").length);
			const rows = read(csv);
			expect(rows.map(({ length }) => length)).toEqual(read(plain).map(({ length }) => length));
			const heads = rows[0] ?? [];
			const isOurs = (_: string, index: number) =>
				!["board", "which one", "for it", "not known"].includes(heads[index] ?? "");
			// Those that no name stands in stay as they were.
			expect(rows.map((row) => row.filter(isOurs).slice(0, 9))).toEqual(
				read(plain).map((row) => row.filter(isOurs).slice(0, 9)),
			);
			// A program that parts at semicolons or bars takes quotes inside a cell for letters, or for nothing.
			const pieces = csv
				.replace(/^\uFEFF/, "")
				.split(/[;|]|\r\n/)
				.map((piece) => piece.replace(/^[\s"\u200c\u200d]+/, ""));
			const begins = [...rows.flat(), ...pieces].filter(
				(cell) =>
					/^[\s"\p{Cf}\p{Mn}]*[=+\-@\uff1d\uff0b\uff0d\uff20\u2212]/u.test(cell) &&
					!/^[-+]?\d+(\.\d+)?"?$/.test(cell.trim()),
			);
			expect(begins).toEqual([]);
		}),
		{ numRuns: 500 },
	);
});
