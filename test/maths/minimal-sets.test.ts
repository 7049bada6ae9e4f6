import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { inclusionMinimal, minimalHittingSets } from "../../src/maths/minimal-sets.ts";

const memberCount = 6;

/** Families of up to seven sets over the members 0 to 5, some of them empty or equal. */
const families = fc.array(fc.subarray([0, 1, 2, 3, 4, 5]), { maxLength: 7 });

function setsOf<K>(lists: readonly (readonly K[])[]): ReadonlySet<K>[] {
	return lists.map((list) => new Set(list));
}

/** Sets as sorted texts, in an order of their own, to compare families whatever their order. */
function texts(sets: readonly ReadonlySet<number>[]): string[] {
	return sets.map((set) => [...set].sort((a, b) => a - b).join(" ")).sort();
}

/** Every set over the members 0 to 5. */
const allSets = Array.from(
	{ length: 2 ** memberCount },
	(_, bits) => new Set([0, 1, 2, 3, 4, 5].filter((member) => bits & (1 << member))),
);

function hitsAll(candidate: ReadonlySet<number>, family: readonly (readonly number[])[]): boolean {
	return family.every((list) => list.some((member) => candidate.has(member)));
}

describe("inclusion-minimal sets", () => {
	test.each<[string, number[][], number[][]]>([
		["none of none", [], []],
		["the empty set is inside every other", [[1], [], [2, 3]], [[]]],
		[
			"equal sets count once",
			[
				[1, 2],
				[2, 1],
			],
			[[1, 2]],
		],
		["a set inside another stands for both", [[1, 2, 3], [4], [2, 3]], [[4], [2, 3]]],
		[
			"sets that only overlap both stay",
			[
				[1, 2],
				[2, 3],
			],
			[
				[1, 2],
				[2, 3],
			],
		],
	])("%s", (_, given, expected) => {
		expect(inclusionMinimal(setsOf(given))).toEqual(setsOf(expected));
	});

	test("keeps the sets given, none inside another, one inside each", () => {
		fc.assert(
			fc.property(families, (family) => {
				const kept = inclusionMinimal(setsOf(family));
				const isInside = (part: ReadonlySet<number>, whole: ReadonlySet<number>) =>
					[...part].every((m) => whole.has(m));
				for (const set of kept) expect(kept.filter((other) => isInside(other, set))).toEqual([set]);
				for (const list of family) expect(kept.some((set) => isInside(set, new Set(list)))).toBe(true);
				const given = new Set(texts(setsOf(family)));
				for (const text of texts(kept)) expect(given).toContain(text);
			}),
		);
	});
});

describe("minimal hitting sets", () => {
	test.each<[string, number[][], number[][]]>([
		["nothing to hit: the empty set does", [], [[]]],
		["nothing hits the empty set", [[1], []], []],
		["one set: any one member", [[1, 2]], [[1], [2]]],
		[
			"a shared member hits both alone",
			[
				[1, 2],
				[2, 3],
			],
			[[2], [1, 3]],
		],
	])("%s", (_, given, expected) => {
		expect(texts(minimalHittingSets(setsOf(given)))).toEqual(texts(setsOf(expected)));
	});

	test("are all the sets that hit and would not with a member less", () => {
		fc.assert(
			fc.property(families, (family) => {
				const bySearch = allSets.filter(
					(candidate) =>
						hitsAll(candidate, family) &&
						[...candidate].every((member) => !hitsAll(new Set([...candidate].filter((m) => m !== member)), family)),
				);
				expect(texts(minimalHittingSets(setsOf(family)))).toEqual(texts(bySearch));
			}),
		);
	});

	test("taken twice give back the minimal sets", () => {
		fc.assert(
			fc.property(families, (family) => {
				const sets = setsOf(family);
				expect(texts(minimalHittingSets(minimalHittingSets(sets)))).toEqual(texts(inclusionMinimal(sets)));
			}),
		);
	});

	test("turn smallest corrections into smallest conflicts, and back", () => {
		// A catalogue: what each board fails. A conflict is a set of demands no board meets together; a correction is a
		// set of demands whose dropping lets a board fit. Both are searched for here one set at a time.
		fc.assert(
			fc.property(families, (failedByBoard) => {
				const isConflict = (demands: ReadonlySet<number>) =>
					failedByBoard.every((failed) => failed.some((demand) => demands.has(demand)));
				const isCorrection = (dropped: ReadonlySet<number>) =>
					failedByBoard.some((failed) => failed.every((demand) => dropped.has(demand)));
				const corrections = inclusionMinimal(setsOf(failedByBoard));
				expect(texts(corrections)).toEqual(texts(inclusionMinimal(allSets.filter(isCorrection))));
				expect(texts(minimalHittingSets(corrections))).toEqual(texts(inclusionMinimal(allSets.filter(isConflict))));
			}),
		);
	});
});
