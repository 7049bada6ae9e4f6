import { existsSync, readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { readArguments } from "../../src/cli/arguments.ts";
import { CommandError } from "../../src/cli/exit-codes.ts";
import { own } from "../../src/cli/own-parts-command.ts";
import { ownFolder } from "../files/own-folder.ts";

const { path, write } = ownFolder();

/** Runs `own import`; the code is 0 where it was taken. */
function run(...words: readonly string[]): { readonly code: number; readonly out: string; readonly err: string } {
	const said = { out: "", err: "" };
	const streams = {
		out: (text: string) => {
			said.out += text;
		},
		err: (text: string) => {
			said.err += text;
		},
	};
	try {
		own(readArguments(["own", "import", ...words]), streams, "2026-11-28", path("data"));
		return { code: 0, ...said };
	} catch (error) {
		if (!(error instanceof CommandError)) throw error;
		return { code: error.code, out: said.out, err: said.err + error.message };
	}
}

const boards = () =>
	existsSync(path("data/parts.json")) ? JSON.parse(readFileSync(path("data/parts.json"), "utf8")).boards : [];
const namesKept = () => boards().map(({ name }: { name: string }) => name);
const table = "Modell;Breite (cm);Speichertyp;Foo\nFir 7;24,4;DDR5;x\nAsh 2;30,5;ddr4;y\n";

describe("a table", () => {
	test("is shown as it is understood before anything is taken", () => {
		const { code, out, err } = run(write("a.csv", table), "--kind", "board");
		expect([code, boards()]).toEqual([64, []]);
		expect(out.replace(/\n {2}/g, " ")).toContain(
			'- Breite (cm) gives widthMm (Width along the back edge); first "24,4", read as 244 mm',
		);
		expect(out).toContain("a.csv: 2 rows, cells between semicolons.");
		expect(out).toContain("Left out\n- Foo: not understood\n");
		expect(err).toBe(
			'Nothing was imported yet. If this is right, add --yes. Else say it better: --map "Column=fact.path,Other="',
		);
	});

	test("is taken with --yes, and the next of the same columns without a word", () => {
		expect(run(write("a.csv", table), "--kind", "board", "--yes").out).toContain("Imported: 2 parts.");
		const again = run(write("b.csv", "Foo;Modell;Speichertyp;Breite (cm)\nx;Oak;DDR5;24,4\n"), "--kind", "board");
		expect(again).toMatchObject({ code: 0, err: expect.stringContaining("as last time") });
		expect(boards()).toMatchObject([
			{ id: "fir-7", name: "Fir 7", widthMm: 244, memory: { type: "DDR5" } },
			{ id: "ash-2", widthMm: 305, memory: { type: "DDR4" } },
			{ id: "oak", widthMm: 244 },
		]);
		expect(run(path("b.csv"), "--kind", "case").code).toBe(64);
	});

	test("is taken as --map says, which is remembered and can be mended", () => {
		const file = write("a.csv", table);
		run(file, "--kind", "board", "--map", "Foo=revision,speichertyp=");
		expect(boards()[0]).toEqual({
			...{ id: "fir-7", name: "Fir 7", widthMm: 244, revision: "x" },
			evidence: expect.objectContaining({ revision: expect.anything() }),
		});
		expect(run(file, "--kind", "board", "--map", '{"Foo":"maker"}', "--replace").code).toBe(0);
		expect(boards()[0]).toMatchObject({ revision: "x", maker: "x" });
	});

	test("gives a price the day it came in, and cuts a column's name that has no end", () => {
		const long = "x".repeat(100_000);
		const file = write("p.csv", `Modell;Preis;${long}\nFir 7;"189,90 EUR";1\nAsh 2;;1\n`);
		const seen = run(file, "--kind", "board", "--map", "Modell=name,Preis=price");
		expect(seen).toMatchObject({ code: 0, err: "" });
		expect(boards()).toMatchObject([
			{ price: { minor: 18_990, currency: "EUR" }, checkedOn: "2026-11-28" },
			{ id: "ash-2" },
		]);
		expect(boards()[1]).not.toHaveProperty("checkedOn");
		expect(run(write("q.csv", `Modell;${long}\nFir 9;1\n`), "--kind", "board").out.length).toBeLessThan(2000);
	});

	test("without a column of names asks for it", () => {
		const { code, err } = run(write("a.csv", "A,Width\nFir,244\n"), "--kind", "board", "--yes");
		expect([code, err]).toEqual([64, expect.stringContaining('--map "Column=name"')]);
		expect(run(path("a.csv"), "--kind", "board", "--map", "A=name").code).toBe(0);
		expect(namesKept()).toEqual(["Fir"]);
	});

	test.each<[string, RegExp]>([
		["Brei=widthMm", /^The table has no column "Brei"/],
		["Foo=wdthMm", /^A board has no fact "wdthMm"\. Did you mean widthMm/],
		["Foo", /^--map is such as/],
		["{", /^--map as JSON is such as/],
		['{"Foo":1}', /^--map as JSON is such as/],
	])("with --map %s is refused", (map, message) => {
		const { code, err } = run(write("a.csv", table), "--kind", "board", "--map", map);
		expect([code, err]).toEqual([64, expect.stringMatching(message)]);
	});

	const withBad = "Name,Width,Memory type\nFir,wide,DDR5\nAsh,305,DDR4\nOak,244\nAsh,244,DDR5\n";

	test("with a bad cell is taken not at all, and every one is told by row and column", () => {
		const { code, err } = run(write("a.csv", withBad), "--kind", "board", "--yes");
		expect([code, boards()]).toEqual([65, []]);
		expect(err.split("\n")).toEqual([
			expect.stringMatching(/^Row 2, Width: found "wide", expected a number in mm/),
			"Row 4: found 2 cells, expected 3, as the head has.",
			'Row 5: found the id "ash", made of its name, expected a name of its own; row 3 has it.',
			"Nothing was imported. Mend them, or add --sound-only to take the other rows.",
		]);
		expect(existsSync(path("data/csv-mappings.json"))).toBe(false);
	});

	test("gives its sound rows with --sound-only, and tells the others", () => {
		const { code, err } = run(write("a.csv", withBad), "--kind", "board", "--yes", "--sound-only");
		expect([code, namesKept()]).toEqual([0, ["Ash"]]);
		expect(err).toContain("Row 2, Width");
		expect(err).toContain("These rows were left out.");
	});

	test("with a part that is there already changes it only when asked, and keeps facts it has no column for", () => {
		run(write("a.csv", table), "--kind", "board", "--yes");
		const file = write("b.csv", "Name,Memory type\nFir 7,DDR4\nElm,DDR4\n");
		const refused = run(file, "--kind", "board", "--yes");
		expect([refused.code, namesKept()]).toEqual([65, ["Fir 7", "Ash 2"]]);
		expect(refused.err).toContain('row 2: you have a board "fir-7" already.');
		expect(run(file, "--kind", "board", "--yes", "--sound-only").code).toBe(0);
		expect(boards()[0]).toMatchObject({ memory: { type: "DDR5" } });
		run(file, "--kind", "board", "--replace");
		expect(boards()[0]).toMatchObject({ widthMm: 244, memory: { type: "DDR4" } });
		expect(namesKept()).toEqual(["Fir 7", "Ash 2", "Elm"]);
	});

	test("of nothing, of no known kind, or none at all is refused", () => {
		expect(run(write("a.csv", table))).toMatchObject({ code: 64, err: expect.stringContaining("--kind board") });
		expect(run(path("a.csv"), "--kind", "bord").err).toContain("Did you mean board?");
		expect(run(write("b.csv", ""), "--kind", "board")).toMatchObject({ code: 66 });
		expect(run(write("c.csv", 'a,b\n"x'), "--kind", "board")).toMatchObject({ code: 65 });
		expect(run(write("d.csv", "Name\n"), "--kind", "board", "--yes")).toMatchObject({ code: 65 });
		expect(run(path("none.csv"), "--kind", "board")).toMatchObject({ code: 66 });
	});
});

describe("a parts file", () => {
	const file = (...list: readonly object[]) =>
		write("a.json", JSON.stringify({ schema: "boardwalk/parts@1", boards: list }));

	test("is taken whole, and what it calls invented is not called so any more", () => {
		expect(run(file({ id: "a", name: "A", invented: true }, { id: "b", name: "B" })).out).toContain(
			"Imported: 2 parts.",
		);
		expect(boards()).toEqual([
			{ id: "a", name: "A" },
			{ id: "b", name: "B" },
		]);
		expect(run(path("a.json")).err).toContain('you have a board "a" already.');
		expect(run(file({ id: "a", name: "New" }), "--replace").code).toBe(0);
		expect(namesKept()).toEqual(["New", "B"]);
	});

	test("with a fault is taken not at all, or its sound parts with --sound-only", () => {
		const faulty = file({ id: "a", name: "A", widthMm: "wide" }, { id: "b", name: "B" });
		expect(run(faulty)).toMatchObject({ code: 65, err: expect.stringMatching(/boards\[0\]\.widthMm.*--sound-only/) });
		expect(boards()).toEqual([]);
		expect(run(faulty, "--sound-only")).toMatchObject({ code: 0, err: expect.stringContaining("Left out: ") });
		expect(namesKept()).toEqual(["B"]);
		expect(run(write("b.json", '{"schema":"other"}'), "--sound-only").code).toBe(65);
		expect(run(write("c.json", "{"), "--sound-only").code).toBe(65);
	});
});
