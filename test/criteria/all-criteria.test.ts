import { expect, test } from "vitest";
import { allCriteria, criterionById } from "../../src/criteria/all-criteria.ts";

test.each(allCriteria)("$id is found by its id", (criterion) => {
	expect(criterionById(criterion.id)).toBe(criterion);
});

test.each(["", "price", "constructor"])("no criterion is called %j", (id) => {
	expect(criterionById(id)).toBeUndefined();
});
