import { describe, expect, test } from "vitest";
import * as z from "zod";
import { factAt, factsOf } from "../../src/parts/fact-list.ts";
import { partKindNames, partKinds } from "../../src/parts/part-kinds.ts";

describe.each(partKindNames)("%s", (kind) => {
	/** Every path of the JSON Schema outside lists, walked without factsOf. */
	function paths(schema: z.core.JSONSchema.BaseSchema, prefix = ""): string[] {
		return Object.entries(schema.properties ?? {}).flatMap(([key, inner]) => [
			prefix + key,
			...(typeof inner === "object" ? paths(inner, `${prefix}${key}.`) : []),
		]);
	}

	test("every fact of the JSON Schema is listed once, groups before their members", () => {
		const jsonSchema = z.toJSONSchema(partKinds[kind].schema) as z.core.JSONSchema.BaseSchema;
		expect(factsOf(kind).map(({ path }) => path)).toEqual(paths(jsonSchema));
	});

	test("the JSON Schema carries title and where to find it", () => {
		const { properties } = z.toJSONSchema(partKinds[kind].schema) as { properties: Record<string, object> };
		for (const { path, title, whereToFind } of factsOf(kind))
			if (!path.includes(".")) expect(properties[path]).toMatchObject({ title, whereToFind });
	});
});

test.each([
	["socket", "text"],
	["widthMm", "number"],
	["memory.slots", "whole number"],
	["connectorsOnBack", "yes or no"],
	["form", "choice"],
	["rearUsb", "list"],
	["pictureSockets", "list"],
	["memory", "group"],
	["memory.slotOrder", "other"],
	["checkedOn", "text"],
] as const)("a board's %s is a %s", (path, form) => {
	expect(factAt("board", path)?.form).toBe(form);
});

test("choices of a choice, of a list of choices, and of numbers", () => {
	expect(factAt("memory", "type")?.choices).toEqual(["DDR3", "DDR4", "DDR5"]);
	expect(factAt("supply", "processorPlugs")?.choices).toEqual(["4-pin", "8-pin"]);
	expect(factAt("lighting", "volts")?.choices).toEqual([5, 12]);
	expect(factAt("board", "socket")?.choices).toBeUndefined();
});

test.each(["", "nothing", "memory.nothing", "rearUsb.gbps", "rearUsb[0].gbps", "constructor"])(
	"a board has no fact %j",
	(path) => {
		expect(factAt("board", path)).toBeUndefined();
	},
);
