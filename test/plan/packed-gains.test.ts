import fc from "fast-check";
import { expect, test } from "vitest";
import { addGains, compareGains, type Gains } from "../../src/maths/best-assignment.ts";
import { gainsPacking } from "../../src/plan/packed-gains.ts";

/** Bounds of each place, and some lists that never come to more together. */
const boundsAndLists = fc
	.array(fc.integer({ min: 0, max: 1_000_000 }), { minLength: 1, maxLength: 12 })
	.chain((bounds) =>
		fc.tuple(
			fc.constant(bounds),
			fc.array(
				fc.tuple(...bounds.map((bound) => fc.integer({ min: -Math.floor(bound / 8), max: Math.floor(bound / 8) }))),
				{ minLength: 2, maxLength: 8 },
			),
		),
	);

test("packed lists compare and add up as the lists do", () => {
	fc.assert(
		fc.property(boundsAndLists, ([bounds, lists]) => {
			const pack = gainsPacking(bounds);
			const [one = [], other = []]: readonly Gains[] = lists;
			expect(Math.sign(compareGains(pack(one), pack(other)))).toBe(Math.sign(compareGains(one, other)));
			const sum = lists.reduce<Gains>((total, list) => addGains(total, list), []);
			const packedSum = lists.reduce<Gains>((total, list) => addGains(total, pack(list)), []);
			expect(packedSum.map((value) => value + 0)).toEqual(pack(sum).map((value) => value + 0));
		}),
	);
});

test("many small places become one number, and what is too large stands alone", () => {
	const pack = gainsPacking([2, 5, 5, 1, 2 ** 50, 3]);
	expect(pack([1, 0, 0, 0, 0, 0])).toHaveLength(3);
	expect(pack([0, 0, 0, 0, 2 ** 50, 0])).toEqual([0, 2 ** 50, 0]);
	// At the bounds, where one digit stands against all that come after it.
	expect(compareGains(pack([1, -5, -5, -1, 0, 0]), pack([0, 5, 5, 1, 0, 0]))).toBeGreaterThan(0);
});

test("sums stay whole numbers that are exact, with room for what a matching adds up on its way", () => {
	fc.assert(
		fc.property(fc.array(fc.integer({ min: 0, max: 200_000 }), { minLength: 1, maxLength: 40 }), (bounds) => {
			for (const value of gainsPacking(bounds)(bounds)) expect(Number.isSafeInteger(value * 32)).toBe(true);
		}),
	);
});
