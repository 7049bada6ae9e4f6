import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { longestList, sizeOfChange, smallerAnswers, smallestCount } from "../../src/choose/smaller-answers.ts";
import type { AnswerValue } from "../../src/parts/answers-file.ts";
import { type BuildFacts, emptyBuildFacts } from "../../src/parts/build.ts";
import { questionById } from "../../src/questions/all-questions.ts";
import { demoContext } from "./demo.ts";

const eur = (units: number) => ({ minor: units * 100, currency: "EUR" });

function smaller(id: string, value: AnswerValue, facts: Partial<BuildFacts> = {}, prices = [eur(225), eur(180)]) {
	const question = questionById(id);
	if (!question) throw new Error(`no question ${id}`);
	return smallerAnswers(question, value, { ...emptyBuildFacts, ...facts }, demoContext, prices);
}

describe("answers that ask for less", () => {
	test("a wish weakens step by step", () => {
		expect(smaller("features/wireless", "must")).toEqual(["would-like", "dont-mind"]);
		expect(smaller("features/wireless", "would-like")).toEqual(["dont-mind"]);
		expect(smaller("features/wireless", "dont-mind")).toEqual([]);
	});

	test("a limit rises to the next prices, the nearest first, each once, and never falls", () => {
		expect(smaller("about/budget", eur(210), {}, [eur(300), eur(225), eur(180), eur(225)])).toEqual([
			eur(225),
			eur(300),
		]);
	});

	test("prices in another currency are no sum of this one", () => {
		expect(smaller("about/budget", eur(210), {}, [{ minor: 25_000, currency: "USD" }])).toEqual([]);
	});

	test("no limit cannot rise", () => {
		expect(smaller("about/budget", "no-limit")).toEqual([]);
	});

	test("money in all must pay for what is spent and planned, and for the board", () => {
		const gone = { moneySpent: eur(400), moneyPlanned: eur(300) };
		expect(smaller("about/money-in-all", eur(900), gone)).toEqual([eur(925)]);
		expect(smaller("about/money-in-all", eur(500), gone)).toEqual([eur(880), eur(925)]);
	});

	test("of a few answers the nearest lines come first", () => {
		expect(smaller("features/raise-clock", "done-before")).toEqual(["maybe", "no"]);
		expect(smaller("features/raise-clock", "maybe")).toEqual(["no", "done-before"]);
	});
});

describe("counts", () => {
	test("the highest that is enough, by halving", () => {
		fc.assert(
			fc.property(fc.integer({ min: 0, max: 400 }), fc.integer({ min: 1, max: 400 }), (limit, value) => {
				const found = smallestCount(value, 0, (count) => count <= limit);
				if (value > 0) expect(found).toBe(Math.min(limit, value - 1));
			}),
		);
	});

	test("null where not even the least is enough, or nothing is less", () => {
		expect(smallestCount(8, 1, () => false)).toBeNull();
		expect(smallestCount(1, 1, () => true)).toBeNull();
	});
});

describe("lists", () => {
	test("as much stays as there is room for, what is named first before the rest", () => {
		const room = (list: readonly string[]) => list.filter((one) => one === "stick").length <= 2;
		expect(longestList(["stick", "brick", "stick", "stick", "slab"], room)?.list).toEqual([
			"stick",
			"brick",
			"stick",
			"slab",
		]);
	});

	test("null where even nothing is too much", () => {
		expect(longestList(["stick"], () => false)).toBeNull();
	});

	test("in sockets that each hold one thing it is the longest there is, by trying all of them", () => {
		const things = ["a", "b", "c", "d", "e"];
		const sockets = fc.array(fc.subarray(things), { maxLength: 4 });
		fc.assert(
			fc.property(sockets, (given) => {
				const fits = (list: readonly string[], free: readonly (readonly string[])[]): boolean => {
					const [first, ...rest] = list;
					if (first === undefined) return true;
					return free.some((socket, at) => socket.includes(first) && fits(rest, free.toSpliced(at, 1)));
				};
				const isEnough = (list: readonly string[]) => fits(list, given);
				const longest = Math.max(
					...Array.from({ length: 32 }, (_, bits) => things.filter((__, at) => bits & (1 << at)))
						.filter(isEnough)
						.map(({ length }) => length),
				);
				expect(longestList(things, isEnough)?.list).toHaveLength(longest);
			}),
			{ numRuns: 100 },
		);
	});
});

test("changes are measured as a share of what was answered", () => {
	expect(sizeOfChange(eur(200), eur(210))).toBeCloseTo(0.05, 12);
	expect(sizeOfChange(["a", "b", "c", "d"], ["a", "b", "c"])).toBe(0.25);
	expect(sizeOfChange(128, 96)).toBe(0.25);
	expect(sizeOfChange("must", "would-like")).toBe(0.5);
	expect(sizeOfChange("must", "dont-mind")).toBe(1);
	expect(sizeOfChange({ part: "shoebox" }, null)).toBe(1);
	expect(sizeOfChange(null, "open")).toBe(1);
});
