import { expect, test } from "vitest";
import { emptyBuildFacts, wishStrengths } from "../../src/parts/build.ts";
import { allQuestions } from "../../src/questions/all-questions.ts";
import { demoContext } from "../choose/demo.ts";

const wishes = allQuestions.filter(({ isWish }) => isWish);

test("there are wishes", () => {
	expect(wishes.length).toBeGreaterThan(0);
});

test.each(wishes)("$id: must, would like, don't mind, kept under its id", (question) => {
	expect(question.options(demoContext, emptyBuildFacts).map(({ value }) => value)).toEqual(wishStrengths);
	for (const strength of wishStrengths) {
		expect(question.expected(strength, demoContext)).toBeNull();
		expect(question.sets(emptyBuildFacts, strength, demoContext).wishes).toEqual({ [question.id]: strength });
		expect(question.says(strength, demoContext)).toBe(
			question.options(demoContext, emptyBuildFacts).find(({ value }) => value === strength)?.label,
		);
	}
	for (const other of ["", "Must", "toString", 1])
		expect(question.expected(other, demoContext)).toBe("one of must, would-like, dont-mind");
	expect(question.says("gone", demoContext)).toBe("gone");
});
