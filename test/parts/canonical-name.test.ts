import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { canonicalName, canonicalSocket } from "../../src/parts/canonical-name.ts";

describe("one socket in many spellings", () => {
	test.each([
		[
			"Kettle 7",
			[
				"kettle7",
				"KETTLE-7",
				"Socket Kettle 7",
				"socket kettle7",
				"Kettle 7 socket",
				"SocketKettle7",
				"Kettle\u00a07",
				"Ｋettle 7",
			],
		],
		["LGA 42", ["LGA42", "FCLGA42", "FC-LGA 42", "fclga42", "Socket LGA42", "Socket FCLGA42"]],
		["PGA 42", ["FCPGA42", "pga-42"]],
		["BGA 42", ["FCBGA42"]],
	])("%s", (one, others) => {
		for (const other of others) expect(canonicalSocket(other)).toBe(canonicalSocket(one));
	});
});

test.each([
	["Kettle 7", "Kettle 8"],
	["Kettle 7", "Kettle 7+"],
	["Kettle 7", "Kettle 7-3"],
	["LGA 42", "PGA 42"],
	["FC 7", "7"],
	["FCLGA", "LGA"],
	["Rocket 7", "7"],
])("%s and %s are two", (one, other) => {
	expect(canonicalSocket(one)).not.toBe(canonicalSocket(other));
});

test.each([
	["Deckhand 6", "deckhand6"],
	["DECKHAND-6(K)", "deckhand6k"],
	["Deckhand 6+", "deckhand6+"],
	["Éclair ６", "éclair6"],
	["...", ""],
	["Deckhand™ 6", "deckhand6"],
	["Deckhand® 6℠ ©", "deckhand6"],
])("%j is %j", (name, canonical) => {
	expect(canonicalName(name)).toBe(canonical);
});

test("spaces, hyphens and the size of letters make no difference", () => {
	const letters = fc.string({ unit: fc.constantFrom(..."abz019+"), minLength: 1, maxLength: 8 });
	fc.assert(
		fc.property(letters, fc.array(fc.constantFrom("", " ", "-", "_", "  ")), (name, gaps) => {
			const spelt = [...name].map((letter, at) => letter.toUpperCase() + (gaps[at] ?? "")).join("");
			expect(canonicalName(spelt)).toBe(name);
			expect(canonicalName(canonicalName(spelt))).toBe(canonicalName(spelt));
		}),
	);
});
