import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { evidencePath, newEntry, valueIn, withoutValue, withValue } from "../../src/parts/form-draft.ts";
import { type FormField, fieldAt, formFields, leadingFields, type TypedAs } from "../../src/parts/form-fields.ts";
import { leadingFacts } from "../../src/parts/form-order.ts";
import { readTyped, type TypedContext } from "../../src/parts/form-read.ts";
import { expectedWords, wordsOf } from "../../src/parts/form-words.ts";
import { type PartKind, partKindNames, partKinds } from "../../src/parts/part-kinds.ts";
import { readMoney } from "../../src/questions/read-money.ts";

const context: TypedContext = { asOf: "2026-11-24", readMoney: (text) => readMoney(text, "EUR") };

/** A field that is typed, the way to it, and the value that puts what was typed into a whole part. */
interface Leaf {
	readonly kind: PartKind;
	readonly field: FormField;
	readonly name: string;
	readonly partWith: (value: unknown) => unknown;
}

/** A value that a definition allows, as small as can be. */
function smallest(typed: TypedAs): unknown {
	switch (typed.as) {
		case "choice":
			return typed.choices[0];
		case "several":
			return typed.choices.slice(0, typed.least);
		case "texts":
			return Array.from({ length: typed.least }, (_, index) => `name ${index}`);
		case "numbers":
			return Array(typed.least).fill(typed.each.least);
		case "number":
			return typed.least;
		case "yes or no":
			return true;
		case "text":
			return "a";
		case "date":
			return "2026-01-31";
		case "money":
			return { minor: 1, currency: "EUR" };
		case "pairs":
			return {};
		case "things":
			return Array.from({ length: typed.least }, () => thing(typed.fields));
		case "thing":
			return thing(typed.fields);
	}
}

function thing(fields: readonly FormField[]): Record<string, unknown> {
	return Object.fromEntries(
		fields.filter(({ required }) => required).map(({ path, typed }) => [path[0], smallest(typed)]),
	);
}

function leavesOf(
	kind: PartKind,
	fields: readonly FormField[],
	name: string,
	partWith: (field: FormField, value: unknown) => unknown,
): readonly Leaf[] {
	return fields.flatMap((field): readonly Leaf[] => {
		const at = `${name}.${field.path.join(".")}`;
		const { typed } = field;
		const inside = (inner: FormField, value: unknown) =>
			withValue(thing(typed.as === "things" || typed.as === "thing" ? typed.fields : []), inner.path, value);
		if (typed.as === "thing")
			return leavesOf(kind, typed.fields, at, (inner, value) => partWith(field, inside(inner, value)));
		if (typed.as === "things")
			return leavesOf(kind, typed.fields, at, (inner, value) =>
				partWith(
					field,
					Array.from({ length: Math.max(1, typed.least) }, () => inside(inner, value)),
				),
			);
		return [{ kind, field, name: at, partWith: (value) => partWith(field, value) }];
	});
}

const leaves = partKindNames.flatMap((kind) => {
	const start = { ...thing(formFields(kind)), id: "own", name: "Own" };
	return leavesOf(kind, formFields(kind), kind, (field, value) => withValue(start, field.path, value));
});

/** Texts as a person may type them for a fact, right and wrong. */
function typedFor(typed: TypedAs, unit: string | undefined): fc.Arbitrary<string> {
	const nonsense = fc.oneof(fc.string({ unit: "grapheme", maxLength: 30 }), fc.constantFrom("", "none", "0", "1e309"));
	const some = (right: fc.Arbitrary<string>) => fc.oneof({ weight: 4, arbitrary: right }, nonsense);
	const units = fc.constantFrom("", ` ${unit ?? ""}`, " cm", '"', " inch", unit ?? "");
	const figure = fc.oneof(
		fc.integer({ min: -10, max: 30000 }).map(String),
		fc.double({ min: -5, max: 2000, noNaN: true }).map((value) => value.toFixed(2)),
		fc.constantFrom("2,5", "6,400", "1.250"),
	);
	switch (typed.as) {
		case "choice":
			return some(fc.constantFrom(...typed.choices.map(String)));
		case "several":
			return some(fc.array(fc.constantFrom(...typed.choices, "2 x 8-pin", "1", "99")).map((items) => items.join(", ")));
		case "texts":
			return some(fc.array(fc.string({ maxLength: 50 }), { maxLength: 12 }).map((items) => items.join(", ")));
		case "number":
			return some(fc.tuple(figure, units).map((pieces) => pieces.join("")));
		case "numbers":
			return some(fc.array(figure, { maxLength: 10 }).map((items) => items.join("; ")));
		case "yes or no":
			return some(fc.constantFrom("yes", "No", "__proto__", "constructor"));
		case "date":
			return some(fc.constantFrom("today", "2026-02-30", "2026-02-28", "31.12.2026", "1.1.2026"));
		case "money":
			return some(figure.map((sum) => `EUR ${sum}`));
		case "pairs":
			return some(
				fc
					.array(fc.tuple(fc.constantFrom("2", "A", "M2_1", "__proto__"), fc.constantFrom("4", "A2, B2", "99", "x")))
					.map((rows) => rows.map((row) => row.join(": ")).join("; ")),
			);
		default:
			return some(fc.string({ maxLength: 500 }));
	}
}

describe("for every fact of every kind", () => {
	test("a value that reading takes keeps a part valid", () => {
		const accepted = new Set<string>();
		fc.assert(
			fc.property(
				fc
					.constantFrom(...new Set(leaves.map(({ field }) => field.typed.as)))
					.chain((as) => fc.constantFrom(...leaves.filter(({ field }) => field.typed.as === as)))
					.chain((leaf) => typedFor(leaf.field.typed, leaf.field.unit).map((text) => ({ leaf, text }))),
				({ leaf: { kind, field, name, partWith }, text }) => {
					const reading = readTyped(field, text, context);
					if ("problem" in reading) {
						expect(reading.problem).toMatch(/^Type .*\.$/);
						return;
					}
					accepted.add(field.typed.as);
					const checked = partKinds[kind].schema.safeParse(partWith(reading.value));
					expect(checked.error?.issues ?? [], `${name}: ${JSON.stringify(text)}`).toEqual([]);
					expect(wordsOf(field, reading.value)).toMatch(/\S/);
				},
			),
			{ numRuns: 6000 },
		);
		// Every way of typing was taken at least once, else the test would hold of nothing.
		expect([...accepted].sort()).toEqual([...new Set(leaves.map(({ field }) => field.typed.as))].sort());
	});

	test("its bounds are taken and one past them is not", () => {
		for (const { field, name } of leaves) {
			if (field.typed.as !== "number") continue;
			const { least, most, whole } = field.typed;
			for (const value of [least, most])
				expect(readTyped(field, String(value), context), `${name} ${value}`).toEqual({ value });
			const step = whole ? 1 : 0.1;
			for (const value of [least - step, most + step])
				expect(readTyped(field, value.toFixed(4), context), `${name} ${value}`).toHaveProperty("problem");
		}
	});

	test("it has words: a title, where to find it, and what may be typed", () => {
		for (const { field, name } of leaves) {
			expect(field.title, name).toMatch(/^\p{Lu}|^\d/u);
			expect(expectedWords(field), name).toMatch(/^Type \S.*[^.]$/);
		}
		for (const kind of partKindNames)
			for (const { whereToFind, path } of formFields(kind))
				expect(whereToFind, `${kind}.${path.join(".")}`).toMatch(/\S/);
	});
});

test("a form asks what matters most first, everything once, and nothing the program keeps for itself", () => {
	for (const kind of partKindNames) {
		const paths = formFields(kind).map(({ path }) => path.join("."));
		expect(leadingFields(kind).map(({ path }) => path.join("."))).toEqual(leadingFacts[kind]);
		expect(new Set(paths).size).toBe(paths.length);
		expect(paths).not.toContain("id");
		expect(paths).not.toContain("evidence");
		expect(paths).not.toContain("invented");
	}
});

describe("reading", () => {
	const read = (kind: PartKind, path: string, text: string) => {
		const field = fieldAt(
			kind,
			path.split(".").map((key) => (/^\d+$/.test(key) ? Number(key) : key)),
		);
		if (!field) throw new Error(`no field ${path}`);
		const reading = readTyped(field, text, context);
		return "value" in reading ? reading.value : reading.problem;
	};

	test.each([
		["graphicsCard", "lengthMm", "304", 304],
		["graphicsCard", "lengthMm", "30.4 cm", 304],
		["graphicsCard", "lengthMm", '12"', 304.8],
		["graphicsCard", "weightG", "1,5 kg", 1500],
		["board", "memory.highestMtPerS", "6,400 MT/s", 6400],
		["board", "memory.highestMtPerS", "6400 MHz", 6400],
		["board", "rearUsb.0.gbps", "480 Mbps", 0.48],
		["board", "form", "matx", "microATX"],
		["board", "power.processorPlugs", "2 x 8-pin", ["8-pin", "8-pin"]],
		["case", "boardForms", "atx, ATX and mITX", "Type the lines that are there, with commas."],
		["case", "boardForms", "atx, ATX and ITX", ["ATX", "Mini-ITX"]],
		["board", "wiredGbps", "2,5; 1", [2.5, 1]],
		["board", "m2Sockets.0.lengthsMm", "60,80, 110", [60, 80, 110]],
		["board", "price", "EUR 189.50", { minor: 18950, currency: "EUR" }],
		["board", "checkedOn", "today", "2026-11-24"],
		["board", "checkedOn", "3.1.2026", "2026-01-03"],
		["board", "memory.slotOrder", "2: A2, B2; 4: A1, A2, B1, B2", { 2: ["A2", "B2"], 4: ["A1", "A2", "B1", "B2"] }],
		["board", "sharing.0.modes.0.on", "M2_1: 4; SLOT_2: 8", { M2_1: 4, SLOT_2: 8 }],
		["lighting", "volts", "12 V", 12],
		["lighting", "volts", "6", "Type 5 V or 12 V."],
		["board", "memory.slots", "many", "Type a whole number from 0 to 32."],
		["graphicsCard", "lengthMm", "3 m", "Type a length from 50 to 600 mm, also as cm or inches."],
		["graphicsCard", "watts", "1,250", "Type a number from 5 to 1500 W."],
	] as const)("%s %s: %s", (kind, path, text, wanted) => {
		expect(read(kind, path, text)).toEqual(wanted);
	});
});

describe("a draft", () => {
	test("takes values at any depth and gives them back; a group left empty goes, an emptied entry stays", () => {
		const one = withValue({}, ["memory", "slots"], 4);
		const two = withValue(one, ["m2Sockets", 0, "name"], "M2_1");
		expect(two).toEqual({ memory: { slots: 4 }, m2Sockets: [{ name: "M2_1" }] });
		expect(valueIn(two, ["m2Sockets", 0, "name"])).toBe("M2_1");
		expect(valueIn(two, ["constructor"])).toBeUndefined();
		expect(withoutValue(two, ["memory", "slots"])).toEqual({ m2Sockets: [{ name: "M2_1" }] });
		expect(withoutValue(two, ["m2Sockets", 0, "name"])).toEqual({ memory: { slots: 4 }, m2Sockets: [{}] });
		expect(withoutValue(two, ["m2Sockets", 0])).toEqual({ memory: { slots: 4 } });
	});

	test("a new entry has the next name nobody has, and else what the one before has", () => {
		const field = fieldAt("board", ["m2Sockets"]) as FormField;
		expect(newEntry(["m2Sockets"], field, [])).toEqual({ name: "M2_1" });
		expect(newEntry(["m2Sockets"], field, [{ name: "M2_2", key: "M" }], { name: "M2_2", key: "M" })).toEqual({
			name: "M2_3",
			key: "M",
		});
		expect(newEntry(["rearUsb"], fieldAt("board", ["rearUsb"]) as FormField, [])).toEqual({});
	});

	test("evidence stands under the fact, or under the list it is in", () => {
		expect(evidencePath(["memory", "slots"])).toBe("memory.slots");
		expect(evidencePath(["m2Sockets", 2, "key"])).toBe("m2Sockets");
		expect(evidencePath(["supportList", "rows", 0, "processor"])).toBe("supportList.rows");
	});
});
