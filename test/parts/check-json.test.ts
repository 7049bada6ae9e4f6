import { describe, expect, test } from "vitest";
import * as z from "zod";
import { answersFile } from "../../src/parts/answers-file.ts";
import { checkJson } from "../../src/parts/check-json.ts";

const schema = z.strictObject({
	name: z.string().min(1).max(5),
	form: z.enum(["ATX", "Mini-ITX"]),
	only: z.literal("this"),
	volts: z.union([z.literal(5), z.literal(12)]).optional(),
	widthMm: z.number().min(80).max(500).optional(),
	slots: z.number().int().optional(),
	lit: z.boolean().optional(),
	seenOn: z.iso.date().optional(),
	plugs: z
		.array(z.strictObject({ pins: z.number() }))
		.min(1)
		.max(2)
		.optional(),
	inner: z.strictObject({ deep: z.strictObject({ fact: z.string() }).optional() }).optional(),
	byKey: z.record(z.string(), z.strictObject({ quote: z.string() })).optional(),
	code: z
		.string()
		.regex(/^[A-Z]{3}$/, "three capital letters")
		.optional(),
});
const sound = { name: "A", form: "ATX", only: "this" };
const faultsIn = (facts: object) => checkJson(schema, JSON.parse(JSON.stringify({ ...sound, ...facts }))).faults;

test("a sound value comes back, without faults", () => {
	const checked = checkJson(schema, { ...sound, plugs: [{ pins: 8 }] });
	expect(checked).toEqual({ value: { ...sound, plugs: [{ pins: 8 }] }, faults: [] });
});

describe("one fault each: where, and what was expected", () => {
	test.each([
		["a number for a text", { name: 3 }, "name", "a text in quotes"],
		["null for a text", { name: null }, "name", "a text in quotes"],
		["nothing where something must stand", { name: undefined }, "name", "a text in quotes, but nothing stands there"],
		["a text too long", { name: "sixsix" }, "name", "at most 5 letters"],
		["a name that is not in the list", { form: "BTX" }, "form", 'one of "ATX", "Mini-ITX"'],
		["a name in other letters", { form: "atx" }, "form", 'one of "ATX", "Mini-ITX"'],
		["another fixed word", { only: "that" }, "only", '"this"'],
		[
			"a number that is not in the list",
			{ volts: 9 },
			"volts",
			"one of the forms the schema lists (see: boardwalk schema)",
		],
		["a number too small", { widthMm: 79.9 }, "widthMm", "at least 80"],
		["a number too large", { widthMm: 500.1 }, "widthMm", "at most 500"],
		["a text for a number", { widthMm: "305" }, "widthMm", "a number"],
		["a broken number", { slots: 2.5 }, "slots", "a whole number"],
		["a word for yes or no", { lit: "yes" }, "lit", "true or false"],
		["a day there is not", { seenOn: "2026-02-30" }, "seenOn", "a date such as 2026-11-24"],
		["a day the other way round", { seenOn: "24.11.2026" }, "seenOn", "a date such as 2026-11-24"],
		["a group for a list", { plugs: {} }, "plugs", "a list in [ ]"],
		["a list too short", { plugs: [] }, "plugs", "at least 1 of them"],
		["a list too long", { plugs: [{ pins: 1 }, { pins: 2 }, { pins: 3 }] }, "plugs", "at most 2 of them"],
		["a fault inside a list", { plugs: [{ pins: 4 }, { pins: "8" }] }, "plugs[1].pins", "a number"],
		["a list for a group", { inner: [] }, "inner", "a group in { }"],
		["a fault deep inside", { inner: { deep: { fact: 3 } } }, "inner.deep.fact", "a text in quotes"],
		["a form of its own", { code: "eur" }, "code", "three capital letters"],
	])("%s", (_, facts, path, expected) => {
		expect(faultsIn(facts)).toEqual([{ path, expected }]);
	});

	// JSON has no infinity, but 1e309 reads as one.
	test("a number beyond all bounds", () => {
		const json = JSON.parse(`{"name":"A","form":"ATX","only":"this","widthMm":1e309}`) as unknown;
		expect(checkJson(schema, json).faults).toEqual([{ path: "widthMm", expected: "a number" }]);
	});

	test("the whole is no group", () => {
		expect(checkJson(schema, [1]).faults).toEqual([{ path: "", expected: "a group in { }" }]);
		expect(checkJson(schema, null).faults).toEqual([{ path: "", expected: "a group in { }" }]);
	});
});

describe("a key that is not known: the keys known there", () => {
	test.each([
		["at the top", { widthMM: 305 }, "widthMM", "widthMM", Object.keys(schema.shape)],
		["in a list", { plugs: [{ pins: 4, pin: 1 }] }, "plugs[0].pin", "pin", ["pins"]],
		["deep inside", { inner: { deep: { fact: "x", fakt: 1 } } }, "inner.deep.fakt", "fakt", ["fact"]],
		[
			"in a group with keys of its own",
			{ byKey: { "memory.type": { quot: "x", quote: "" } } },
			"byKey.memory.type.quot",
			"quot",
			["quote"],
		],
	])("%s", (_, facts, path, unknownKey, knownKeys) => {
		expect(faultsIn(facts)).toEqual([{ path, expected: "no such fact", unknownKey, knownKeys }]);
	});

	test("two of them are two faults", () => {
		expect(faultsIn({ one: 1, two: 2 }).map(({ path }) => path)).toEqual(["one", "two"]);
	});

	test("in a part of one's own, the keys of that kind of part", () => {
		const file = {
			schema: "boardwalk/answers@2",
			asOf: "2026-11-24",
			market: { version: "demo", fingerprint: "0" },
			answers: {},
			parts: [{ kind: "case", part: { id: "a", name: "A", boardForm: ["ATX"] } }],
		};
		const [fault, ...others] = checkJson(answersFile, file).faults;
		expect(others).toEqual([]);
		expect(fault).toMatchObject({ path: "parts[0].part.boardForm", unknownKey: "boardForm" });
		expect(fault?.knownKeys).toContain("boardForms");
		expect(fault?.knownKeys).not.toContain("socket");
	});
});

test("no fault hides another", () => {
	const faults = faultsIn({ name: 3, form: "BTX", widthMm: 1, plugs: [{ pins: "x" }], strange: true });
	expect(faults.map(({ path }) => path).sort()).toEqual(["form", "name", "plugs[0].pins", "strange", "widthMm"]);
});
