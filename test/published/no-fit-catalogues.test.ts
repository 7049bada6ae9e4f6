import { describe, expect, test } from "vitest";
import { inclusionMinimal, minimalHittingSets } from "../../src/maths/minimal-sets.ts";

// A correction is a smallest set of demands whose dropping lets something fit, a conflict a smallest set that cannot be
// met together; each are the minimal hitting sets of the other (Reiter 1987; Liffiton & Sakallah 2008).

function expectSets(ours: readonly ReadonlySet<string>[], expected: readonly string[]): void {
	const texts = ours.map((set) => [...set].sort().join(" "));
	expect(texts.sort()).toEqual([...expected].sort());
}

/** All the subsets of a list. */
function subsets<T>(list: readonly T[]): T[][] {
	return Array.from({ length: 2 ** list.length }, (_, bits) => list.filter((_, index) => bits & (1 << index)));
}

test("four boards (worked out): corrections r1 and r2+r3, conflicts r1+r2 and r1+r3", () => {
	const failed = [["r1"], ["r2", "r3"], ["r1", "r4"], ["r2", "r3", "r5"]].map((demands) => new Set(demands));
	const corrections = inclusionMinimal(failed);
	expectSets(corrections, ["r1", "r2 r3"]);
	expectSets(minimalHittingSets(corrections), ["r1 r2", "r1 r3"]);
});

describe("car options (O'Sullivan, Papadopoulos, Faltings & Pu 2007; conflicts read in the document, corrections worked out)", () => {
	// The catalogue: every choice of options, where c2 and c3 exclude each other; c1 is the budget of 3000.
	const costs = { c2: 500, c3: 500, c4: 500, c5: 2600 };
	const options = Object.keys(costs) as (keyof typeof costs)[];
	const failed = subsets(options)
		.filter((chosen) => !(chosen.includes("c2") && chosen.includes("c3")))
		.map((chosen) => {
			const cost = chosen.reduce((sum, option) => sum + costs[option], 0);
			return new Set<string>([...options.filter((option) => !chosen.includes(option)), ...(cost > 3000 ? ["c1"] : [])]);
		});
	const corrections = inclusionMinimal(failed);

	test("four conflicts", () => {
		expectSets(minimalHittingSets(corrections), ["c2 c3", "c1 c2 c5", "c1 c3 c5", "c1 c4 c5"]);
	});

	test("five corrections", () => {
		expectSets(corrections, ["c1 c2", "c1 c3", "c2 c5", "c3 c5", "c2 c3 c4"]);
	});

	test("the corrections follow from the conflicts, too", () => {
		const conflicts = [
			["c2", "c3"],
			["c1", "c2", "c5"],
			["c1", "c3", "c5"],
			["c1", "c4", "c5"],
		].map((set) => new Set(set));
		expectSets(minimalHittingSets(conflicts), ["c1 c2", "c1 c3", "c2 c5", "c3 c5", "c2 c3 c4"]);
	});
});

test("options of 500, 500, 800, 500 and 2600 within 3000 (Junker 2004, QuickXplain, table 2; conflict p4+p5 read in the document, the rest worked out)", () => {
	const prices = { p1: 500, p2: 500, p3: 800, p4: 500, p5: 2600 };
	const options = Object.keys(prices) as (keyof typeof prices)[];
	const failed = subsets(options)
		.filter((chosen) => chosen.reduce((sum, option) => sum + prices[option], 0) <= 3000)
		.map((chosen) => new Set<string>(options.filter((option) => !chosen.includes(option))));
	const corrections = inclusionMinimal(failed);
	expectSets(corrections, ["p5", "p1 p2 p3 p4"]);
	expectSets(minimalHittingSets(corrections), ["p1 p5", "p2 p5", "p3 p5", "p4 p5"]);
});

test("five pigeons in three holes: 5 conflicts, 13 corrections (CPMpy, commit 98be9c1, tests; both counts read in the document)", () => {
	// Eight demands: each pigeon sits in some hole, each hole holds one pigeon at the most. The catalogue is every way of
	// sitting, pigeon by pigeon in any of the holes, in none, or in all: 2^15 ways.
	const pigeons = [0, 1, 2, 3, 4];
	const holes = [0, 1, 2];
	const failed = Array.from({ length: 2 ** 15 }, (_, bits) => {
		const sits = (pigeon: number, hole: number) => (bits & (1 << (3 * pigeon + hole))) !== 0;
		const homeless = pigeons.filter((pigeon) => !holes.some((hole) => sits(pigeon, hole)));
		const crowded = holes.filter((hole) => pigeons.filter((pigeon) => sits(pigeon, hole)).length > 1);
		return new Set([...homeless.map((pigeon) => `pigeon ${pigeon}`), ...crowded.map((hole) => `hole ${hole}`)]);
	});
	const corrections = inclusionMinimal(failed);
	expect(corrections).toHaveLength(13);
	expect(minimalHittingSets(corrections)).toHaveLength(5);
});

test("Reiter's hitting sets (Reiter 1987, sets from memory; result worked out by enumeration)", () => {
	const given = ["2 4 5", "1 2 3", "1 3 5", "2 4 6", "2 4", "2 3 5", "1 6"].map((text) => new Set(text.split(" ")));
	const expected = ["1 2", "2 3 6", "2 5 6", "1 3 4", "1 4 5", "3 4 6"];
	expectSets(minimalHittingSets(given), expected);
	const hitting = subsets(["1", "2", "3", "4", "5", "6"]).filter((some) =>
		given.every((set) => some.some((member) => set.has(member))),
	);
	const smallest = hitting.filter(
		(some) => !hitting.some((other) => other.length < some.length && other.every((member) => some.includes(member))),
	);
	expect(smallest.map((some) => some.join(" ")).sort()).toEqual([...expected].sort());
});
