import { expect, test } from "vitest";
import { allRules, ruleById } from "../../src/rules/all-rules.ts";

test.each(allRules)("$id is found by its id and by those it formerly had", (rule) => {
	for (const id of [rule.id, ...(rule.formerly ?? [])]) expect(ruleById(id)).toBe(rule);
});

test.each(["", "fit/nothing", "socket", "constructor"])("no rule is called %j", (id) => {
	expect(ruleById(id)).toBeUndefined();
});
