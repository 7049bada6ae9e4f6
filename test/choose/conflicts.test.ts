import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { conflictsOf, mostConflicts } from "../../src/choose/conflicts.ts";
import { judge } from "../../src/choose/judge.ts";
import { waysOut } from "../../src/choose/ways-out.ts";
import type { Board } from "../../src/parts/board.ts";
import { allRules } from "../../src/rules/all-rules.ts";
import { runRule } from "../../src/rules/run-rule.ts";
import { buildOf, goodBoard, goodBuild, smallMarket } from "./small-market.ts";

const faults: readonly Partial<Board>[] = [
	{ price: { minor: 20_000, currency: "EUR" } },
	{ socket: "Harbour 2" },
	{ memory: { type: "DDR4", slots: 2 } },
	{ form: "E-ATX" },
	{ pictureSockets: [] },
];

const joined = (sets: readonly (readonly string[])[]) => sets.map((set) => [...set].sort().join(" ")).sort();

function subsets<T>(list: readonly T[]): T[][] {
	return Array.from({ length: 2 ** list.length }, (_, bits) => list.filter((__, index) => bits & (1 << index)));
}

/** A few boards, each with some faults; every one of them has at least one. */
const someBoards = fc.array(fc.subarray([...faults], { minLength: 1, maxLength: 4 }), { minLength: 1, maxLength: 6 });

test("on small catalogues ways out and conflicts are those that trying all subsets of rules finds", () => {
	fc.assert(
		fc.property(someBoards, (given) => {
			const market = smallMarket(given.map((some) => Object.assign({}, goodBoard, ...some) as Partial<Board>));
			const judgement = judge(market, buildOf(goodBuild));
			const stopping = allRules.filter(({ scope, severity }) => scope === "board" && severity === "stops");
			// By the rules alone, board by board; nothing of the judgement but what a rule is held against.
			const failed = judgement.boards.map(({ subject }) =>
				stopping.filter((rule) => runRule(rule, subject).verdict === "does-not-fit").map(({ id }) => id),
			);
			const ids = [...new Set(failed.flat())];
			const all = subsets(ids);
			const isSmallest = (some: readonly (readonly string[])[]) => (set: readonly string[]) =>
				!some.some((other) => other.length < set.length && other.every((id) => set.includes(id)));
			// Without these rules some board fits.
			const corrections = all.filter((set) => failed.some((its) => its.every((id) => set.includes(id))));
			// Every board fails one of these rules.
			const conflicts = all.filter((set) => failed.every((its) => its.some((id) => set.includes(id))));
			const ways = waysOut(judgement);
			expect(joined(ways.map(({ giveUp }) => giveUp))).toEqual(joined(corrections.filter(isSmallest(corrections))));
			const smallest = joined(conflicts.filter(isSmallest(conflicts)));
			const found = conflictsOf(ways);
			expect(found).toHaveLength(Math.min(mostConflicts, smallest.length));
			for (const one of joined(found)) expect(smallest).toContain(one);
		}),
		{ numRuns: 60 },
	);
});

describe("which conflicts are told", () => {
	test("four boards (worked out): r1 with r2, and r1 with r3", () => {
		expect(conflictsOf([{ giveUp: ["r1"] }, { giveUp: ["r2", "r3"] }])).toEqual([
			["r1", "r2"],
			["r1", "r3"],
		]);
	});

	test("none where there is no way out to be had", () => {
		expect(conflictsOf([])).toEqual([]);
	});

	test("at most six, those of fewest demands first", () => {
		const ways = [{ giveUp: ["a", "b", "c"] }, { giveUp: ["a", "d", "e"] }, { giveUp: ["a", "f", "g"] }];
		const found = conflictsOf(ways);
		expect(found).toHaveLength(6);
		expect(found[0]).toEqual(["a"]);
		expect(found.slice(1).every(({ length }) => length === 3)).toBe(true);
	});
});
