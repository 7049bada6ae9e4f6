import { describe, expect, test } from "vitest";
import { columnsAsTabs } from "../../src/reading/column-text.ts";
import { pageLines } from "../../src/reading/page-lines.ts";
import { textLines } from "../../src/reading/text-lines.ts";

const linesOf = (text: string) => pageLines(text).lines.map(({ text: line }) => line);
const columns = (text: string) => columnsAsTabs(textLines(text).lines).map(({ text: line }) => line);

describe("columns", () => {
	const rows = [
		["Socket", "KT7"],
		["Chipset", "K720"],
		["Memory", "4 x DDR5"],
		["SATA", "4 ports"],
		["Form", "ATX"],
	];
	test.each([
		["dots", " ........ "],
		["spaces", "      "],
		["semicolons", ";"],
	])("made by %s become tabs", (_, border) => {
		expect(columns(rows.map((row) => row.join(border)).join("\n"))).toEqual(rows.map((row) => row.join("\t")));
	});
	test("a line set in goes on with the value above", () => {
		const text = [...rows.map((row) => row.join(" .... ")), "            and 1 more"].join("\n");
		expect(columns(text).at(-1)).toBe("\tand 1 more");
	});
	test("units in a cell of their own stay with their figure", () => {
		expect(columns("Width;244;mm\nDepth;305;mm\nSocket;KT7\nSATA;4\nForm;ATX")[0]).toBe("Width\t244 mm");
	});
	test.each([
		[
			"of four lines",
			rows
				.slice(0, 4)
				.map((row) => row.join("      "))
				.join("\n"),
		],
		["with tabs", rows.map((row) => row.join("\t")).join("\n")],
		["of sentences", "One thing.\nTwo  things here.\nThree things.\nFour.\nFive."],
	])("a text %s is left alone", (_, text) => {
		expect(columns(text)).toEqual(text.split("\n"));
	});
});

describe("tables of other kinds", () => {
	test("source of a wiki's table", () => {
		expect(linesOf("{|\n|-\n| Socket || [[KT7 family|KT7]]<ref>note</ref>\n|-\n| SATA || 4 ports\n|}")).toEqual([
			"Socket\tKT7",
			"SATA\t4 ports",
		]);
	});
	test("rows of quoted cells", () => {
		const rows = ["Socket", "Chipset", "Slots", "SATA", "Form"].map((label) => `"Board","${label}","1 ""x"""`);
		expect(linesOf(rows.join("\n"))[0]).toBe('Board Socket\t1 "x"');
	});
});

describe("what is behind the page", () => {
	const page = Array.from({ length: 12 }, (_, index) => `Row ${index}: value`);
	test.each(["Customer reviews", "Similar boards", "Kundenrezensionen", "You may also like", "-- "])("%s", (head) => {
		const { lines, tail } = pageLines([...page, head, "I have 8 x SATA ports"].join("\n"));
		expect(lines).toHaveLength(12);
		expect(tail.map(({ text, number }) => [number, text])).toEqual([
			[13, head.trim()],
			[14, "I have 8 x SATA ports"],
		]);
	});
	test("such a word in a menu at the top ends nothing", () => {
		expect(linesOf(["Reviews", ...page].join("\n"))).toHaveLength(13);
	});
	test("no page is longer than 1500 lines or 60 000 letters", () => {
		const long = pageLines(Array.from({ length: 2000 }, (_, row) => `Row ${row}: b`).join("\n"));
		expect([long.lines.length, long.tail.length]).toEqual([1500, 500]);
		const wide = pageLines(Array.from({ length: 40_000 }, (_, at) => 10_000 + at).join(" "));
		const letters = (lines: readonly { readonly text: string }[]) =>
			lines.reduce((sum, { text }) => sum + text.replaceAll(" ", "").length, 0);
		expect(wide.lines.reduce((sum, { text }) => sum + text.length, 0)).toBeLessThanOrEqual(60_000);
		expect(letters(wide.lines) + letters(wide.tail)).toBe(200_000);
	});
});

describe("a page copied twice, one below the other", () => {
	const page = ["Socket: KT7", "Chipset: K720", "Memory: 4 x DDR5", "SATA: 4 ports", "Form: ATX"];
	test("is read once", () => {
		const { lines, tail } = pageLines([...page, "", ...page].join("\n"));
		expect(lines.map(({ text }) => text).filter((text) => text !== "")).toEqual(page);
		expect(tail).toEqual([]);
	});
	test("two like lines of a short text are two things", () => {
		expect(linesOf("1 x PCIe x1 slot\n1 x PCIe x1 slot")).toHaveLength(2);
	});
	test("one line that differs makes it no copy", () => {
		expect(linesOf([...page, ...page.slice(0, 4), "Form: microATX"].join("\n"))).toHaveLength(10);
	});
});

describe("labels in lines of their own", () => {
	const pairs = ["Sockel", "KT7", "Chipsatz", "K720", "Arbeitsspeicher", "DDR5", "Netzwerk", "2,5 GbE"];
	test("get their colon where each has one value", () => {
		const lines = linesOf([...pairs, "Maximaler Speicher", "128 GB", "Formfaktor", "ATX"].join("\n"));
		expect(lines.filter((line) => line.endsWith(":"))).toHaveLength(6);
		expect(lines.slice(8, 10)).toEqual(["Maximaler Speicher:", "128 GB"]);
	});
	test("a text with colons of its own is left alone", () => {
		const text = [...pairs, "Farbe: schwarz", "Höhe: 3 mm"];
		expect(linesOf(text.join("\n"))).toEqual(text);
	});
});

test.each(["[[", "{|\n|-\n[[", '"a",', "a;", "a  b\n", "| "])("is quick over %j", (piece) => {
	const before = performance.now();
	pageLines(piece.repeat(1_000_000 / piece.length));
	expect(performance.now() - before).toBeLessThan(3000);
});
