import { expect, test } from "vitest";
import type { AnswerValue } from "../../src/parts/answers-file.ts";
import { emptyBuildFacts } from "../../src/parts/build.ts";
import { countQuestion } from "../../src/questions/count-question.ts";
import { contextOf, madeUpWords } from "./made-up-question.ts";

const context = contextOf();
const fans = countQuestion({ ...madeUpWords, want: "caseFans", least: 2, most: 12 });
const memory = countQuestion({ ...madeUpWords, want: "memoryGb", least: 4, most: 4096, unit: "GB" });

test("is typed, with nothing to pick, and asked of everybody unless it says otherwise", () => {
	expect(fans.kind).toBe("number");
	expect(fans.options(context, emptyBuildFacts)).toEqual([]);
	expect(fans.applies(emptyBuildFacts)).toBe(true);
	const never = countQuestion({ ...madeUpWords, want: "caseFans", least: 2, most: 12, applies: () => false });
	expect(never.applies(emptyBuildFacts)).toBe(false);
});

test.each([
	["2", 2],
	["12", 12],
	[" 7 ", 7],
	["007", 7],
])("%j is read as %i, from the least to the most", (text, value) => {
	expect(fans.read?.(text, context)).toEqual({ value });
	expect(fans.expected(value, context)).toBeNull();
	expect(fans.sets(emptyBuildFacts, value, context)).toEqual({ ...emptyBuildFacts, caseFans: value });
	expect(fans.says(value, context)).toBe(String(value));
});

test.each(["", "1", "13", "-3", "2.5", "2,5", "two", "3 fans", "3 GB", "1e1", "999999"])("%j is not", (text) => {
	expect(fans.read?.(text, context)).toEqual({ problem: "Type a whole number from 2 to 12." });
});

test.each<[AnswerValue]>([[1], [13], [2.5], [Number.NaN], ["7"], [["7"]], [{ part: "seven" }]])(
	"a file may not say %o",
	(value) => {
		expect(fans.expected(value, context)).toBe("a whole number from 2 to 12");
	},
);

test.each(["64", "64 GB", "64gb", " 64  Gb "])("a unit may stand behind it: %j", (text) => {
	expect(memory.read?.(text, context)).toEqual({ value: 64 });
});

test("another unit may not, and the right one is named", () => {
	for (const text of ["64 TB", "64 GBGB", "GB", "64 G"])
		expect(memory.read?.(text, context)).toEqual({ problem: "Type a whole number from 4 to 4096, in GB." });
	expect(memory.says(64, context)).toBe("64 GB");
});
