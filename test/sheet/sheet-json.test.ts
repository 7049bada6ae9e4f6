import { describe, expect, expectTypeOf, test } from "vitest";
import * as z from "zod";
import { checkJson } from "../../src/parts/check-json.ts";
import { sheetFile, sheetFileSchemaName } from "../../src/parts/sheet-file.ts";
import type { Sheet } from "../../src/sheet/sheet.ts";
import { sheetJson } from "../../src/sheet/sheet-json.ts";
import { savedWalk } from "../../src/walk/saved-walk.ts";
import { demo, emptyMarket, scenarios } from "../walk/walk-in-demo.ts";
import { sheetOf } from "./sheet-of.ts";

/** A type without its `readonly`s, to its depth: schemas know none. */
type Changeable<T> = T extends object ? { -readonly [K in keyof T]: Changeable<T[K]> } : T;

test("the schema has the keys of a sheet and no others, of the same types", () => {
	expectTypeOf<Omit<z.infer<typeof sheetFile>, "schema" | "answersFile">>().toEqualTypeOf<Changeable<Sheet>>();
});

describe.each([
	["the demonstration", demo],
	["a market without any part", emptyMarket],
] as const)("in %s", (_, context) => {
	test.each(scenarios)("the JSON of $name is sound, and says all that the sheet does", ({ state }) => {
		const sheet = sheetOf(state, context);
		const kept = savedWalk(context, state);
		const json = JSON.parse(sheetJson(sheet, kept));
		expect(json).toEqual({ schema: sheetFileSchemaName, ...sheet, answersFile: kept });
		const { value, faults } = checkJson(sheetFile, json);
		expect(faults).toEqual([]);
		// The schema takes out what it does not know, so that nothing is there without being told of.
		expect(value).toEqual(json);
	});
});

test("what a later program adds does not stop an older one, what is gone does", () => {
	const [first] = scenarios;
	if (!first) throw new Error("there are no scenarios");
	const json = JSON.parse(sheetJson(sheetOf(first.state), null));
	expect(checkJson(sheetFile, { ...json, later: [1] }).faults).toEqual([]);
	const { shortlist, ...without } = json;
	expect(shortlist).toBeDefined();
	expect(checkJson(sheetFile, without).faults.map(({ path }) => path)).toEqual(["shortlist"]);
	expect(checkJson(sheetFile, { ...json, schema: "boardwalk/sheet@2" }).faults.map(({ path }) => path)).toEqual([
		"schema",
	]);
});

test("the published schema tells each key, and lets later ones be", () => {
	const published = z.toJSONSchema(sheetFile, { io: "input" });
	expect(published.additionalProperties).toBeUndefined();
	const [first] = scenarios;
	if (!first) throw new Error("there are no scenarios");
	expect(Object.keys(published.properties ?? {}).sort()).toEqual(
		Object.keys(JSON.parse(sheetJson(sheetOf(first.state), null))).sort(),
	);
});
