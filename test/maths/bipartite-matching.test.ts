import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { largestMatching } from "../../src/maths/bipartite-matching.ts";

const placedIn = (matching: readonly (number | null)[]) => matching.filter((place) => place !== null);

/** The most things that can be placed, by trying every way: each thing is left out, or takes a place still free. */
function mostBySearch(placesOf: readonly (readonly number[])[], taken: ReadonlySet<number> = new Set()): number {
	const [places, ...others] = placesOf;
	if (!places) return 0;
	return Math.max(
		mostBySearch(others, taken),
		...places.filter((place) => !taken.has(place)).map((place) => 1 + mostBySearch(others, new Set([...taken, place]))),
	);
}

/** Up to six things, and which of six places each can go to; some can go nowhere. */
const links = fc.array(fc.subarray([0, 1, 2, 3, 4, 5]), { maxLength: 6 });

describe("worked by hand", () => {
	test.each<[string, readonly (readonly string[])[], readonly (string | null)[]]>([
		["nothing to place", [], []],
		["nowhere to go", [[]], [null]],
		["the place liked best", [["left", "right"]], ["left"]],
		["the first one served keeps the only place", [["left"], ["left"]], ["left", null]],
		["the first one moves aside", [["left", "right"], ["left"]], ["right", "left"]],
		[
			"two move aside, one after the other",
			[["left", "middle"], ["middle", "right"], ["left"], ["middle"]],
			["middle", "right", "left", null],
		],
		[
			"three things share two places",
			[
				["left", "right"],
				["left", "right"],
				["left", "right"],
			],
			["left", "right", null],
		],
		["a place named twice is one place", [["left", "left"], ["left"]], ["left", null]],
	])("%s", (_, placesOf, expected) => {
		expect(largestMatching(placesOf)).toEqual(expected);
	});

	test("places are told apart by what they are, not by how they look", () => {
		const [one, other] = [{ name: "socket" }, { name: "socket" }];
		expect(largestMatching([[one, other], [one]])).toEqual([other, one]);
	});
});

describe("of any things and places", () => {
	test("everything goes where it can, and no place is given twice", () => {
		fc.assert(
			fc.property(links, (placesOf) => {
				const matching = largestMatching(placesOf);
				expect(matching).toHaveLength(placesOf.length);
				expect(new Set(placedIn(matching)).size).toBe(placedIn(matching).length);
				for (const [thing, place] of matching.entries()) if (place !== null) expect(placesOf[thing]).toContain(place);
			}),
		);
	});

	test("no other way places more", () => {
		fc.assert(
			fc.property(links, (placesOf) => {
				expect(placedIn(largestMatching(placesOf))).toHaveLength(mostBySearch(placesOf));
			}),
		);
	});

	test("things named first are served first", () => {
		fc.assert(
			fc.property(links, fc.subarray([0, 1, 2, 3, 4, 5]), (placesOf, one) => {
				const before = largestMatching(placesOf);
				const after = largestMatching([...placesOf, one]);
				const isPlaced = (place: number | null | undefined) => place !== null && place !== undefined;
				expect(after.slice(0, -1).map(isPlaced)).toEqual(before.map(isPlaced));
			}),
		);
	});

	test("what is left over finds all its places taken by things that have nowhere else", () => {
		// Hall's condition: from a thing left over, every place within reach is taken, so the things within reach are one
		// more than their places.
		fc.assert(
			fc.property(links, (placesOf) => {
				const matching = largestMatching(placesOf);
				for (const [left, place] of matching.entries()) {
					if (place !== null) continue;
					const [things, places] = [new Set([left]), new Set<number>()];
					for (const thing of things)
						for (const reached of placesOf[thing] ?? []) {
							places.add(reached);
							things.add(matching.indexOf(reached));
						}
					expect(things.has(-1)).toBe(false);
					expect(things.size).toBe(places.size + 1);
				}
			}),
		);
	});
});
