import { describe, expect, test } from "vitest";
import * as z from "zod";
import { answersFile } from "../../src/parts/answers-file.ts";
import { partsFile } from "../../src/parts/market.ts";
import { partKindNames, partKinds } from "../../src/parts/part-kinds.ts";

type Json = z.core.JSONSchema.BaseSchema & { unit?: string; whereToFind?: string };

/** Every fact of a kind at any depth, inside lists too, with its path and its JSON Schema. */
function everyFact(schema: Json, path = ""): { path: string; fact: Json }[] {
	const inner = Object.entries(schema.properties ?? {}).flatMap(([key, fact]) => [
		{ path: path === "" ? key : `${path}.${key}`, fact: fact as Json },
		...everyFact(fact as Json, path === "" ? key : `${path}.${key}`),
	]);
	return schema.items ? [...inner, ...everyFact(schema.items as Json, `${path}[]`)] : inner;
}

/** Whether the fact is a number, a list of numbers, or a choice of numbers. */
function isNumeric(fact: Json): boolean {
	if (fact.anyOf) return fact.anyOf.every((option) => isNumeric(option as Json));
	if (fact.items) return isNumeric(fact.items as Json);
	return fact.type === "number" || fact.type === "integer" || typeof fact.const === "number";
}

/** Kept for the program, not filled in by a person: no words of their own. */
const withoutWords = /^sharing\[\]\.modes\[\]\.on$|^conditions\[\]\.when\./;

describe.each(partKindNames)("%s", (kind) => {
	const facts = everyFact(z.toJSONSchema(partKinds[kind].schema) as Json).filter(
		({ path }) => !withoutWords.test(path),
	);

	test("has a JSON Schema that takes no unknown facts", () => {
		const schema = z.toJSONSchema(partKinds[kind].schema) as Json;
		expect(schema.additionalProperties).toBe(false);
		expect(schema.required).toEqual(expect.arrayContaining(["id", "name"]));
		expect(facts.length).toBeGreaterThan(5);
	});

	test("every fact has a name in words: sentence case, no full stop", () => {
		const unnamed = facts.filter(({ fact }) => !/^[A-Z0-9].*[^.]$/.test(fact.title ?? ""));
		expect(unnamed.map(({ path, fact }) => [path, fact.title])).toEqual([]);
	});

	test("every fact says where it is found", () => {
		expect(facts.filter(({ fact }) => !/^[A-Z]\S*/.test(fact.whereToFind ?? "")).map(({ path }) => path)).toEqual([]);
	});

	test("only numbers have units, and a number whose name tells a unit has it", () => {
		expect(facts.filter(({ fact }) => fact.unit !== undefined && !isNumeric(fact)).map(({ path }) => path)).toEqual([]);
		const units: Readonly<Record<string, string>> = {
			Mm: "mm",
			Gb: "GB",
			MtPerS: "MT/s",
			Mohm: "mohm",
			KPerW: "K/W",
			Khz: "kHz",
			Nh: "nH",
		};
		const ending = (path: string) => Object.keys(units).find((unit) => path.endsWith(unit));
		expect(
			facts.flatMap(({ path, fact }) => {
				const unit = ending(path);
				return unit && isNumeric(fact) && fact.unit !== units[unit] ? [`${path}: ${fact.unit}`] : [];
			}),
		).toEqual([]);
	});

	test("every number has bounds, and every text and list an end", () => {
		const unbounded = facts.filter(({ fact }) => {
			if (fact.type === "number" || fact.type === "integer")
				return fact.minimum === undefined || fact.maximum === undefined;
			if (fact.type === "array") return fact.maxItems === undefined;
			return fact.type === "string" && !fact.enum && !fact.format && !fact.pattern && fact.maxLength === undefined;
		});
		expect(unbounded.map(({ path }) => path)).toEqual([]);
	});
});

test("no two lists of a parts file are of one kind, and every kind has one", () => {
	const lists = partKindNames.map((kind) => partKinds[kind].list);
	expect(new Set(lists).size).toBe(lists.length);
	expect(
		Object.keys(partsFile.shape)
			.filter((key) => key !== "schema" && key !== "note")
			.sort(),
	).toEqual([...lists].sort());
});

test("parts files and answers files have a JSON Schema", () => {
	for (const schema of [partsFile, answersFile])
		expect(z.toJSONSchema(schema)).toMatchObject({ type: "object", additionalProperties: false });
});
