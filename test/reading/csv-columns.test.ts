import { describe, expect, test } from "vitest";
import { factsOf } from "../../src/parts/fact-list.ts";
import { partKindNames } from "../../src/parts/part-kinds.ts";
import { columnFacts, mapColumns } from "../../src/reading/csv-columns.ts";
import { csvWords } from "../../src/reading/csv-words.ts";

const pathOf = (kind: Parameters<typeof mapColumns>[0], column: string) => {
	const [found] = mapColumns(kind, [column]).columns;
	return found ? [found.fact.path, found.unit].filter(Boolean).join(" ") : null;
};
const whyNot = (kind: Parameters<typeof mapColumns>[0], ...head: string[]) =>
	mapColumns(kind, head).leftOut.map(({ why }) => why);

describe("a column gives", () => {
	test.each([
		["memory.type", "memory.type"],
		["Memory type", "memory.type"],
		["MEMORY_TYPE", "memory.type"],
		["Speichertyp", "memory.type"],
		["Modell", "name"],
		["Sockel", "socket"],
		["widthMm", "widthMm"],
		["width", "widthMm"],
		["Breite (cm)", "widthMm cm"],
		["Breite [mm]", "widthMm mm"],
		["Width in inches", "widthMm inches"],
		["Width, cm", "widthMm cm"],
		["Width/cm", "widthMm cm"],
		["Width/mm", "widthMm"],
		["max. RAM (GB)", "memory.maxGb GB"],
		["Preis", "price"],
		["Price (EUR)", "price EUR"],
		["Price EUR", "price EUR"],
		["Preis in €", "price €"],
		["LAN", "wiredGbps"],
	])("%s: %s", (column, path) => {
		expect(pathOf("board", column)).toBe(path);
	});

	test("each fact by its own path, in every kind", () => {
		for (const kind of partKindNames)
			for (const { path } of columnFacts(kind)) expect(pathOf(kind, path), `${kind} ${path}`).toBe(path);
	});

	test("what it gives for its kind: one word is several facts", () => {
		expect(pathOf("processor", "TDP (W)")).toBe("baseW W");
		expect(pathOf("graphicsCard", "TDP")).toBe("watts");
		expect(pathOf("board", "TDP")).toBeNull();
		expect(pathOf("drive", "Kapazität (TB)")).toBe("gb TB");
	});
});

describe("a column is left out", () => {
	test("that nobody knows, that has no name, and that reaches for what objects inherit", () => {
		expect(whyNot("board", "Foo", "", "__proto__", "constructor")).toEqual([
			"not understood",
			"it has no name",
			"not understood",
			"not understood",
		]);
		expect(whyNot("board", "x".repeat(300))).toEqual(["its name is too long"]);
	});

	test("whose unit measures something else", () => {
		expect(whyNot("board", "Width (W)")).toEqual(['it looks like widthMm in mm, but "W" is not understood']);
		expect(whyNot("processor", "Cores (performance)")).toEqual([
			'it looks like cores, but "performance" is not understood',
		]);
	});

	test("that gives a fact which another gives already, or one inside it", () => {
		expect(whyNot("board", "Width", "Breite (cm)", "memory", "memory.type")).toEqual([
			'"Width" gives widthMm already',
			'"memory" gives memory already',
		]);
	});

	test("for what only the program sets", () => {
		for (const path of ["invented", "evidence", "price.minor"]) expect(pathOf("board", path)).toBeNull();
	});
});

test("what is given counts first, keeps the unit of the head, and an empty path leaves out", () => {
	const given = new Map([
		["A (cm)", "widthMm"],
		["Model", ""],
		["B", "nowhere"],
	]);
	const { columns, leftOut } = mapColumns("board", ["A (cm)", "Model", "B", "Socket"], given);
	expect(columns.map(({ fact, unit, index }) => [fact.path, unit, index])).toEqual([
		["widthMm", "cm", 0],
		["socket", undefined, 3],
	]);
	expect(leftOut.map(({ why }) => why)).toEqual(["left out as asked", 'there is no fact "nowhere"']);
});

test("every usual word is for a fact of some kind, and is no word for two facts of one", () => {
	const paths = new Set(partKindNames.flatMap((kind) => factsOf(kind).map(({ path }) => path)));
	for (const [path, words] of Object.entries(csvWords)) {
		expect(paths, path).toContain(path);
		for (const kind of partKindNames)
			if (columnFacts(kind).some((fact) => fact.path === path))
				for (const word of words) expect(whyNot(kind, word).join(), `${kind} ${word}`).not.toContain("could be");
	}
});
