import fc from "fast-check";
import { expect, test } from "vitest";
import { fingerprintOf } from "../../src/parts/fingerprint.ts";

/**
 * FNV-1a, 64 bit, over bytes, after G. Fowler, L. C. Noll and K.-P. Vo, in whole numbers without bounds. Their published
 * test vectors cannot be held against fingerprintOf directly: it hashes the JSON of a value, two bytes a UTF-16 unit.
 * They are held against this function, and this one against fingerprintOf.
 */
function fnv1a64(bytes: Iterable<number>): string {
	let hash = 0xcbf29ce484222325n;
	for (const byte of bytes) hash = ((hash ^ BigInt(byte)) * 0x100000001b3n) & 0xffff_ffff_ffff_ffffn;
	return hash.toString(16).padStart(16, "0");
}

// The first entries of the authors' own list of 64-bit FNV-1a test vectors (from memory).
test.each([
	["", "cbf29ce484222325"],
	["a", "af63dc4c8601ec8c"],
	["b", "af63df4c8601f1a5"],
	["foobar", "85944171f73967e8"],
])("the published vector for %j", (text, hash) => {
	expect(fnv1a64(Buffer.from(text, "utf8"))).toBe(hash);
});

const sortKeys = (value: unknown): unknown =>
	Array.isArray(value)
		? value.map(sortKeys)
		: value !== null && typeof value === "object"
			? Object.fromEntries(
					Object.entries(value)
						.sort(([one], [other]) => (one < other ? -1 : 1))
						.map(([key, inner]) => [key, sortKeys(inner)]),
				)
			: value;

test("is FNV-1a over the sorted JSON, low byte of each UTF-16 unit first", () => {
	fc.assert(
		fc.property(fc.jsonValue({ maxDepth: 4, stringUnit: "grapheme" }), (value) => {
			expect(fingerprintOf(value)).toBe(fnv1a64(Buffer.from(JSON.stringify(sortKeys(value)), "utf16le")));
		}),
		{ numRuns: 300 },
	);
});

test("the order of keys does not matter, at any depth", () => {
	expect(fingerprintOf({ a: 1, b: { c: 2, d: [3] } })).toBe(fingerprintOf({ b: { d: [3], c: 2 }, a: 1 }));
	const shuffled = fc
		.dictionary(fc.string({ maxLength: 4 }), fc.jsonValue({ maxDepth: 2 }))
		.chain((object) =>
			fc.tuple(
				fc.constant(object),
				fc.shuffledSubarray(Object.entries(object), { minLength: Object.keys(object).length }),
			),
		);
	fc.assert(
		fc.property(shuffled, ([object, entries]) => {
			expect(fingerprintOf(Object.fromEntries(entries))).toBe(fingerprintOf(object));
		}),
	);
});

test.each([
	[{ a: 1 }, { a: 2 }],
	[{ a: 1 }, { b: 1 }],
	[{ a: 1 }, { a: "1" }],
	[
		[1, 2],
		[2, 1],
	],
	[[1, 2], [12]],
	[{ a: null }, {}],
	[
		["ab", "c"],
		["a", "bc"],
	],
	["é", "e\u0301"],
	["\u0100", "\u0001"],
	[{ a: { b: 1 } }, { a: {}, b: 1 }],
])("%o and %o differ", (one, other) => {
	expect(fingerprintOf(one)).not.toBe(fingerprintOf(other));
});

test("sixteen digits, leading zeros kept", () => {
	const prints = Array.from({ length: 2000 }, (_, number) => fingerprintOf(`board ${number * 7919}`));
	expect(prints.filter((print) => !/^[0-9a-f]{16}$/.test(print))).toEqual([]);
	expect(prints.some((print) => print.startsWith("0"))).toBe(true);
	expect(new Set(prints).size).toBe(2000);
});
