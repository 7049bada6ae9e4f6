import fc from "fast-check";
import { expect, test } from "vitest";
import { editDistance } from "../../src/maths/edit-distance.ts";

test.each([
	["the same word", "socket", "socket", 0],
	["one letter left out", "socket", "soket", 1],
	["one letter put in", "socket", "sockett", 1],
	["one letter changed", "socket", "sicket", 1],
	["two neighbours swapped", "socket", "scoket", 1],
	["the first two swapped", "ab", "ba", 1],
	["letters two apart are two changes", "abc", "cba", 2],
	["three slips", "kitten", "sitting", 3],
	["no letter is changed twice", "ca", "abc", 3],
	["nothing to a word", "", "abc", 3],
	["case counts", "A", "a", 1],
	["a letter outside the basic plane is one letter", "a𝄞", "a", 1],
])("%s", (_, one, other, expected) => {
	expect(editDistance(one, other)).toBe(expected);
	expect(editDistance(other, one)).toBe(expected);
});

test("lies between the difference in length and the longer length, and is 0 only for equal words", () => {
	const word = fc.string({ unit: fc.constantFrom("a", "b", "c"), maxLength: 7 });
	fc.assert(
		fc.property(word, word, (one, other) => {
			const distance = editDistance(one, other);
			expect(distance).toBeGreaterThanOrEqual(Math.abs(one.length - other.length));
			expect(distance).toBeLessThanOrEqual(Math.max(one.length, other.length));
			expect(distance === 0).toBe(one === other);
		}),
	);
});
