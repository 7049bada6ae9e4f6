import { describe, expect, test } from "vitest";
import type { AnswerValue } from "../../../src/parts/answers-file.ts";
import { type BuildFacts, emptyBuildFacts } from "../../../src/parts/build.ts";
import { returnUntil } from "../../../src/questions/fit/return-until.ts";
import { withOwnership } from "../../../src/questions/owned-parts.ts";
import { buildFacts } from "../../rules/rule-subject.ts";
import { contextOf } from "../made-up-question.ts";

const context = contextOf();
const picked = buildFacts({ processor: {}, case: {}, memory: {} });
/** The processor can go back, the case is bought, the memory is planned. */
const mixed = withOwnership(picked, (kind) =>
	kind === "processor" ? "returnable" : kind === "case" ? "bought" : null,
);
const owned = ({ processor, case: pcCase, memory }: BuildFacts) =>
	[processor, pcCase, memory].map((have) => (have.state === "have" ? have.ownership : have.state));

test("is asked only where something can go back", () => {
	expect(returnUntil.applies(mixed)).toBe(true);
	for (const facts of [emptyBuildFacts, picked, withOwnership(picked, () => "bought")])
		expect(returnUntil.applies(facts)).toBe(false);
});

describe("a day", () => {
	test.each([
		["2026-12-24", "2026-12-24"],
		[" 2026-12-24 ", "2026-12-24"],
		["2026-1-5", "2026-01-05"],
		["24.12.2026", "2026-12-24"],
		["5. 1. 2027", "2027-01-05"],
		["2028-02-29", "2028-02-29"],
	])("%j is %s", (text, value) => {
		expect(returnUntil.read?.(text, context)).toEqual({ value });
		expect(returnUntil.expected(value, context)).toBeNull();
		expect(returnUntil.says(value, context)).toBe(value);
	});

	test.each([
		"",
		"tomorrow",
		"2026-12",
		"24.12.26",
		"2026-13-01",
		"2026-00-10",
		"2026-02-30",
		"2027-02-29",
		"31.11.2026",
		"2026-12-24 2026-12-25",
		"2026/12/24",
		"12-24-2026",
	])("%j is none", (text) => {
		expect(returnUntil.read?.(text, context)).toEqual({
			problem: "Type the day as year-month-day, such as 2026-12-24.",
		});
	});

	test.each<[AnswerValue]>([["2026-1-5"], ["24.12.2026"], ["2026-02-30"], ["soon"], [20261224], [["2026-12-24"]]])(
		"a file may not hold %j",
		(value) => {
			expect(returnUntil.expected(value, context)).toBe("a day such as 2026-12-24");
		},
	);
});

describe("what it sets", () => {
	test.each([
		["a day to come", "2026-11-25", "returnable"],
		["today, which is the last day", "2026-11-24", "returnable"],
		["yesterday: too late, bought for good", "2026-11-23", "bought"],
		["a day of the year before", "2025-12-31", "bought"],
	])("%s", (_, day, ownership) => {
		const after = returnUntil.sets(mixed, day, context);
		expect(after.returnableUntil).toBe(day);
		expect(owned(after)).toEqual([ownership, "bought", "planned"]);
	});

	test("nothing but the day and who owns what", () => {
		const after = returnUntil.sets(mixed, "2026-11-23", context);
		expect(after).toEqual({
			...mixed,
			processor: { ...mixed.processor, ownership: "bought" },
			returnableUntil: "2026-11-23",
		});
		expect(owned(mixed)).toEqual(["returnable", "bought", "planned"]);
	});
});
