import { expect, test } from "vitest";
import type { AnswerValue } from "../../../src/parts/answers-file.ts";
import { emptyBuildFacts, type WishStrength } from "../../../src/parts/build.ts";
import { router } from "../../../src/questions/features/router.ts";
import { contextOf } from "../made-up-question.ts";

const context = contextOf();

test.each([
	["1", 1, "1 Gb/s"],
	["2.5", 2.5, "2.5 Gb/s"],
	["5", 5, "5 Gb/s"],
	["10", 10, "10 Gb/s"],
])("%j is %d Gb/s", (value, routerGbps, words) => {
	expect(router.expected(value, context)).toBeNull();
	expect(router.sets(emptyBuildFacts, value, context)).toEqual({ ...emptyBuildFacts, routerGbps });
	expect(router.says(value, context)).toBe(words);
});

test("no cable is no rate: the wired network is then not counted", () => {
	expect(router.expected("0", context)).toBeNull();
	expect(router.sets({ ...emptyBuildFacts, routerGbps: 10 }, "0", context)).toEqual({
		...emptyBuildFacts,
		routerGbps: 0,
	});
	expect(router.says("0", context)).toBe("No cable will be used");
});

test("its options are these five, told apart by their words", () => {
	const options = router.options(context, emptyBuildFacts);
	expect(new Map(options.map(({ value, label }) => [value, label]))).toEqual(
		new Map([
			["0", "No cable will be used"],
			["1", "1 Gb/s"],
			["2.5", "2.5 Gb/s"],
			["5", "5 Gb/s"],
			["10", "10 Gb/s"],
		]),
	);
	expect(new Set(options.map(({ explanation }) => explanation)).size).toBe(5);
});

test.each<[AnswerValue]>([[1], [2.5], ["4"], ["1.0"], [""], ["toString"], [["1"]], [{ part: "1" }]])(
	"a file may not hold %j",
	(value) => {
		expect(router.expected(value, context)).toBe("one of 0, 1, 2.5, 5, 10");
	},
);

test.each<[WishStrength | null, boolean]>([
	[null, true],
	["dont-mind", true],
	["would-like", true],
	["must", false],
])("with the wish for wireless at %j it is asked: %j", (strength, asked) => {
	const wishes = strength ? { "features/wireless": strength } : {};
	expect(router.applies({ ...emptyBuildFacts, wishes })).toBe(asked);
});
