import { expect, test } from "vitest";
import { allCriteria } from "../../src/criteria/all-criteria.ts";
import { emptyBuildFacts, importanceTiers } from "../../src/parts/build.ts";
import { allQuestions } from "../../src/questions/all-questions.ts";
import { demoContext } from "../choose/demo.ts";

test.each(allCriteria)("$id is asked about once, by its own words and with both ends shown", (criterion) => {
	const asking = allQuestions.filter(({ ask }) => ask === criterion.asks);
	expect(asking).toHaveLength(1);
	const [question] = asking;
	expect(question?.hint).toBe(`From "${criterion.ends.worst}" to "${criterion.ends.best}"`);
	expect(question?.why).toBe(criterion.why);
	expect(question?.options(demoContext, emptyBuildFacts).map(({ value }) => value)).toEqual(importanceTiers);
	for (const tier of importanceTiers) {
		expect(question?.expected(tier, demoContext)).toBeNull();
		expect(question?.sets(emptyBuildFacts, tier, demoContext).importance).toEqual({ [criterion.id]: tier });
		expect(question?.says(tier, demoContext)).not.toBe(tier);
	}
	for (const other of ["", "a lot", "constructor", 3])
		expect(question?.expected(other, demoContext)).toBe("one of a-lot, somewhat, a-little, not-at-all");
	expect(question?.possibilities).toBeUndefined();
});

test("one answer leaves the others as they are", () => {
	const [first, second] = allQuestions.filter(({ ask }) => allCriteria.some(({ asks }) => asks === ask));
	const once = first?.sets(emptyBuildFacts, "a-lot", demoContext) ?? emptyBuildFacts;
	const twice = second?.sets(once, "a-little", demoContext);
	expect(Object.values(twice?.importance ?? {}).sort()).toEqual(["a-little", "a-lot"]);
});
