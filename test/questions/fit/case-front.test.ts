import { expect, test } from "vitest";
import { emptyBuildFacts } from "../../../src/parts/build.ts";
import { pcCase } from "../../../src/parts/case.ts";
import { caseFront } from "../../../src/questions/fit/case-front.ts";
import { buildFacts } from "../../rules/rule-subject.ts";
import { contextOf } from "../made-up-question.ts";

const context = contextOf();
const facts = buildFacts({ case: { boardForms: ["ATX"] } });

test("is asked of a case whose front is not known, and of no other", () => {
	expect(caseFront.applies(facts)).toBe(true);
	expect(caseFront.applies(buildFacts({ case: { frontOpen: "mesh" } }))).toBe(false);
	for (const state of ["open", "unknown"] as const) expect(caseFront.applies(buildFacts({ case: state }))).toBe(false);
});

test.each([
	["mesh", "Open mesh"],
	["slits", "Narrow slits"],
	["solid", "Solid"],
])("%s becomes a fact of the case, and all else stays", (value, words) => {
	const after = caseFront.sets(facts, value, context);
	const part = facts.case.state === "have" ? facts.case.part : null;
	expect(after).toEqual({ ...facts, case: { ...facts.case, part: { ...part, frontOpen: value } } });
	expect(part).not.toHaveProperty("frontOpen");
	expect(pcCase.safeParse(after.case.state === "have" ? after.case.part : null).success).toBe(true);
	expect(caseFront.expected(value, context)).toBeNull();
	expect(caseFront.says(value, context)).toBe(words);
});

test("nothing where there is no case, and nothing else is taken", () => {
	expect(caseFront.sets(emptyBuildFacts, "mesh", context)).toEqual(emptyBuildFacts);
	expect(caseFront.expected("glass", context)).toBe("one of mesh, slits, solid");
});
