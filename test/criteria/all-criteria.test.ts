import { expect, test } from "vitest";
import { allCriteria, criterionById } from "../../src/criteria/all-criteria.ts";

test.each(allCriteria)("$id is found by its id", (criterion) => {
	expect(criterionById(criterion.id)).toBe(criterion);
});

test("each is found by the ids it formerly had", () => {
	for (const criterion of allCriteria)
		for (const id of criterion.formerly ?? []) expect(criterionById(id)).toBe(criterion);
	expect(criterionById("stage-load")?.id).toBe("steady-power");
});

test.each(["", "price", "constructor"])("no criterion is called %j", (id) => {
	expect(criterionById(id)).toBeUndefined();
});
