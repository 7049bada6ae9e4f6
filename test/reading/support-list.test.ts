import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { board } from "../../src/parts/board.ts";
import { rowsFor } from "../../src/parts/support-rows.ts";
import { readSupportList, supportListOf } from "../../src/reading/support-list.ts";

const rows = (text: string) =>
	readSupportList(text).rows.map(({ processor, fromVersion, note, versionOpen }) =>
		[processor, fromVersion ?? (versionOpen ? "open" : "none"), note].filter((one) => one !== undefined).join(" = "),
	);

describe("a list", () => {
	test.each([
		["tabs", "CPU\tStep\tWatts\tBIOS\tNote\nCadmor 7 2400\tB2\t65\tF12\t\nCadmor 7 2400X\tB2\t105\tF14\tno graphics"],
		["tabs and trade marks", "Processor\tSince BIOS\tNote\nCadmor™ 7 2400\tF12\nCadmor™ 7 2400X\tF14\tno graphics"],
		[
			"bars",
			"| BIOS ab Version | TDP | Prozessor | Bemerkung |\n|---|---|---|---|\n| F12 | 65W | Cadmor 7 2400 | |\n| F14 | 105W | Cadmor 7 2400X | no graphics |",
		],
		["commas", 'Model,Cores,"Validated since BIOS",Remark\n"Cadmor 7 2400",8,F12,\nCadmor 7 2400X,8,F14,no graphics'],
		["semicolons", "CPU;seit;Hinweis\nCadmor 7 2400;F12;\nCadmor 7 2400X;F14;no graphics"],
		[
			"spaces, with an empty place",
			"CPU             Power   BIOS   Note\nCadmor 7 2400   65W     F12\nCadmor 7 2400X          F14    no graphics",
		],
		["a family shared by rows", "CPU\tModel\tBIOS\tNote\nCadmor 7\t2400\tF12\t\nCadmor 7\t2400X\tF14\tno graphics"],
		["label and value", "CPU: Cadmor 7 2400\nBIOS: F12\n\nCPU: Cadmor 7 2400X\nBIOS: F14\nNote: no graphics"],
		[
			"HTML",
			"<table><tr><th>CPU</th><th>BIOS</th><th>Note</th></tr><tr><td>Cadmor 7 2400</td><td>F12</td><td></td></tr><tr><td>Cadmor 7 2400X</td><td>F14</td><td>no graphics</td></tr></table>",
		],
	])("with %s", (_name, text) => {
		expect(rows(text)).toEqual(["Cadmor 7 2400 = F12", "Cadmor 7 2400X = F14 = no graphics"]);
	});

	test("of which each cell is a line", () => {
		expect(rows("Processor\nTDP\nSince version\nCadmor 7 2400\n65W\n1.20\nCadmor 7 2500\n65W\n1.30")).toEqual([
			"Cadmor 7 2400 = 1.20",
			"Cadmor 7 2500 = 1.30",
		]);
	});
	test("of which each cell is a line, and one lacks, gives nothing", () => {
		expect(rows("Processor\nTDP\nSince version\nCadmor 7 2400\n1.20\nCadmor 7 2500\n65W\n1.30\nx")).toEqual([]);
	});
	test("takes the column that says since when, not the newest or the board's revision", () => {
		expect(rows("CPU\tPCB rev.\tLatest BIOS\tSince BIOS\nCadmor 7 2400\t1.1\tF30\tF12")).toEqual([
			"Cadmor 7 2400 = F12",
		]);
	});
	test.each(["all", "Alle Versionen", "initial"])("%s is any version", (version) => {
		expect(rows(`CPU\tBIOS\nCadmor 7 2400\t${version}`)).toEqual(["Cadmor 7 2400 = none"]);
	});
	test.each(["", "-", "N/A"])("an empty place (%s) is left open", (version) => {
		expect(rows(`CPU\tBIOS\tWatts\nCadmor 7 2400\t${version}\t65`)).toEqual(["Cadmor 7 2400 = open"]);
	});
	test("with two versions in one place leaves it open and says both", () => {
		expect(rows("CPU\tNew BIOS\tOld BIOS\nCadmor 7 2400\tF1\tF2")).toEqual(["Cadmor 7 2400 = open = F1; F2"]);
	});
	test("does not count processors that do not run", () => {
		const { rows: found, unread } = readSupportList("CPU\tBIOS\nCadmor 7 2400\tNot supported\nCadmor 7 2500\tF3");
		expect(found.map(({ processor }) => processor)).toEqual(["Cadmor 7 2500"]);
		expect(unread).toEqual([{ line: 2, text: "Cadmor 7 2400\tNot supported" }]);
	});
	test("without heads gives no rows", () => {
		expect(rows("Cadmor 7 2400\t65\tF12\nCadmor 7 2500\t65\tF13")).toEqual([]);
	});
	test("keeps lines and quotes", () => {
		expect(readSupportList("Support\n\nCPU | BIOS\nCadmor 7 2400 | F12").rows).toEqual([
			{ processor: "Cadmor 7 2400", fromVersion: "F12", line: 4, quote: "Cadmor 7 2400 | F12" },
		]);
	});
});

describe("a list that is not whole", () => {
	const table = "CPU\tCore\tBIOS\nCadmor 7 2400\tAsh\tF12";
	test.each([
		[table, false],
		[`${table}\nShowing 1 to 1 of 1 entries`, false],
		[`${table}\nShowing 1 to 50 of 312 entries`, true],
		[`${table}\nPage 2 of 7`, true],
		// A cell that two rows share moves the others: the version would stand under another head.
		[`${table}\nCadmor 7 2500\tF14`, true],
	])("%j: %s", (text, partial) => {
		expect(readSupportList(text).partial).toBe(partial);
		expect(rows(text)).toEqual(["Cadmor 7 2400 = F12"]);
		expect(supportListOf(readSupportList(text), "2026-11-28")).toEqual({
			readOn: "2026-11-28",
			...(partial ? { partial: true } : {}),
			rows: [{ processor: "Cadmor 7 2400", fromVersion: "F12" }],
		});
	});
	test("is cut at 5000 rows", () => {
		const many = `CPU\tBIOS\n${Array.from({ length: 5001 }, (_, at) => `Cadmor ${at + 1000}\tF1`).join("\n")}`;
		const list = supportListOf(readSupportList(many), "2026-11-28");
		expect([list.rows.length, list.partial]).toEqual([5000, true]);
	});
});

test.each([
	["Cadmor 7 2400", "Cadmor 7 2400", true],
	["Cadmor 7 2400", "CADMOR-7-2400", true],
	["Cadmor 7 2400", "Ostlea® Cadmor™ 7 2400 (AB-1234), 65W", true],
	["Cadmor 7 2400", "Cadmor 7 2400 65 W", true],
	["Cadmor 7 2400", "Cadmor 7 2400 3.4GHz", true],
	["Cadmor 7 2400", "Cadmor 7 2400 Processor", true],
	["Ostlea Cadmor 7 2400", "Cadmor 7 2400", true],
	["Cadmor 7 2400", "Cadmor 7 2400X", false],
	["Cadmor 7 2400", "Cadmor 7 2400 X", false],
	["Cadmor 7 2400", "Cadmor 7 2400-F", false],
	["Cadmor 7 2400", "Cadmor 7 2400 Pro", false],
	["Cadmor 7 2400X", "Cadmor 7 2400", false],
	["Cadmor 7 2400", "Cadmor 7 240", false],
	["Cadmor 7 240", "Cadmor 7 2400", false],
	["Cadmor 7 2400", "Cadmor 5 2400", false],
	["Cadmor 7 2400", "Cadmor 7", false],
	["Cadmor 7", "Cadmor 7 2400", false],
	["Cadmor 7 2400", "2400", false],
	["Lark 3+", "Lark 3", false],
])("%s in a list with %s: %s", (name, processor, isNamed) => {
	expect(rowsFor([{ processor }], name)).toEqual(isNamed ? [{ processor }] : []);
});

test("all rows that name a processor are given", () => {
	const reading = readSupportList(
		"CPU\tStep\tBIOS\nCadmor 7 2400\tB1\tF2\nCadmor 7 2400\tB2\tF9\nCadmor 7 2400X\tB2\tF9",
	);
	expect(rowsFor(reading, "Cadmor 7 2400").map(({ fromVersion }) => fromVersion)).toEqual(["F2", "F9"]);
});

test("any text gives rows that stand in it and that a board can hold", () => {
	const word = fc.constantFrom(
		...[
			"CPU",
			"BIOS",
			"Note",
			"Model",
			"Cadmor 7 2400",
			"F12",
			"65W",
			"\t",
			" | ",
			",",
			";",
			"  ",
			"\n",
			"\n",
			'"',
			"-",
			":",
		],
	);
	fc.assert(
		fc.property(
			fc.oneof(
				fc.array(word, { maxLength: 60 }).map((words) => words.join("")),
				fc.string(),
			),
			(text) => {
				const reading = readSupportList(text);
				for (const { fromVersion, quote } of reading.rows) expect(quote).toContain(fromVersion ?? "");
				const supportList = supportListOf(reading, "2026-11-28");
				expect(board.safeParse({ id: "b", name: "b", supportList }).success).toBe(true);
			},
		),
		{ numRuns: 1000 },
	);
});
