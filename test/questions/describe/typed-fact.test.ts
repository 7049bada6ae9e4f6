import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { partBasics } from "../../../src/parts/part-basics.ts";
import { finishDraft, putAt } from "../../../src/questions/describe/typed-fact.ts";

test.each([
	[{}, "name", { name: 1 }],
	[{}, "memory.type", { memory: { type: 1 } }],
	[{ memory: { slots: 2 }, name: "A" }, "memory.type", { memory: { slots: 2, type: 1 }, name: "A" }],
	[{ memory: { type: 2 } }, "memory.type", { memory: { type: 1 } }],
	[{}, "a.b.c", { a: { b: { c: 1 } } }],
])("%o with a value at %s", (draft, path, after) => {
	const before = structuredClone(draft);
	expect(putAt(draft, path, 1)).toEqual(after);
	expect(draft).toEqual(before);
});

describe("the id a typed part gets", () => {
	const idOf = (name: string | undefined, ...taken: string[]) =>
		finishDraft(name === undefined ? {} : { name }, "graphics card", new Set(taken)).id;

	test.each([
		["Copperbeech Bench", "copperbeech-bench"],
		["  Bench -- 2! ", "bench-2"],
		["Éclair Größe", "e-clair-gro-e"],
		["...", "graphics-card"],
		["\u0434\u043e\u0441\u043a\u0430", "graphics-card"],
		[undefined, "my-graphics-card"],
		["a".repeat(90), "a".repeat(60)],
	])("%j: %s", (name, id) => {
		expect(idOf(name)).toBe(id);
	});

	test("one that nobody has", () => {
		expect(idOf("Bench", "bench")).toBe("bench-2");
		expect(idOf("Bench", "bench", "bench-2", "bench-3")).toBe("bench-4");
		expect(idOf("Bench", "bench-2")).toBe("bench");
	});

	// Any code points; fast-check's own "binary" strings take half a second to set up.
	const anyName = fc
		.array(fc.integer({ min: 1, max: 0xffff }), { minLength: 1, maxLength: 24 })
		.map((units) => String.fromCharCode(...units));

	test("whatever the name, a sound one, and not one of those taken", () => {
		fc.assert(
			fc.property(anyName, fc.array(fc.string({ maxLength: 8 }), { maxLength: 4 }), (name, others) => {
				const first = idOf(name);
				const second = idOf(name, first, ...others);
				expect(partBasics.id.safeParse(first).success).toBe(true);
				expect(partBasics.id.safeParse(second).success).toBe(true);
				expect([first, ...others]).not.toContain(second);
			}),
		);
	});
});

test("the name is kept, or one is made", () => {
	expect(finishDraft({ name: "Bench", socket: "Kettle 7" }, "board", new Set())).toEqual({
		id: "bench",
		name: "Bench",
		socket: "Kettle 7",
	});
	expect(finishDraft({}, "board", new Set()).name).toBe("my board");
});
