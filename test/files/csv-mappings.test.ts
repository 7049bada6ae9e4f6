import { readdirSync, statSync } from "node:fs";
import { expect, test } from "vitest";
import { keepMapping, keptMapping } from "../../src/files/csv-mappings.ts";
import { ownFolder } from "./own-folder.ts";

const { path, write } = ownFolder();

const columns = [
	["Model", "name"],
	["Foo", ""],
] as const;

test("a mapping is found again by its columns in any order, for its kind, and the newest counts", () => {
	expect(keptMapping(path("data"), "board", ["Model", "Foo"])).toBeNull();
	keepMapping(path("data"), "board", columns);
	expect(keptMapping(path("data"), "board", ["Foo", "Model"])).toEqual(columns);
	expect(keptMapping(path("data"), "case", ["Foo", "Model"])).toBeNull();
	expect(keptMapping(path("data"), "board", ["Foo", "Model", "More"])).toBeNull();
	const newer = [
		["Model", "maker"],
		["Foo", "name"],
	] as const;
	keepMapping(path("data"), "board", newer);
	expect(keptMapping(path("data"), "board", ["Model", "Foo"])).toEqual(newer);
	if (process.platform !== "win32") expect(statSync(path("data/csv-mappings.json")).mode & 0o777).toBe(0o600);
});

test("columns may be called like what every object has", () => {
	const odd = [
		["__proto__", "name"],
		["constructor", ""],
	] as const;
	keepMapping(path("data"), "board", odd);
	expect(keptMapping(path("data"), "board", ["constructor", "__proto__"])).toEqual(odd);
});

test("a hundred are kept", () => {
	for (let number = 0; number <= 100; number++) keepMapping(path("data"), "board", [[`Column ${number}`, "name"]]);
	expect(keptMapping(path("data"), "board", ["Column 0"])).toBeNull();
	expect(keptMapping(path("data"), "board", ["Column 1"])).not.toBeNull();
});

test.each([
	"{",
	"[]",
	'{"schema":"boardwalk/csv-mappings@2","mappings":[]}',
	'{"schema":"boardwalk/csv-mappings@1","mappings":[{"kind":1}]}',
])("a file that cannot be used (%s) counts as none, and is set aside when a mapping is kept", (content) => {
	write("data/csv-mappings.json", content);
	expect(keptMapping(path("data"), "board", ["Model", "Foo"])).toBeNull();
	keepMapping(path("data"), "board", columns);
	expect(keptMapping(path("data"), "board", ["Model", "Foo"])).toEqual(columns);
	expect(readdirSync(path("data"))).toContain("csv-mappings.json.damaged");
});
