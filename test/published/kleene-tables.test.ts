import { describe, expect, test } from "vitest";
import { kleeneAnd, kleeneNot, kleeneOr, type ThreeValued } from "../../src/maths/kleene.ts";

// The standard tables; see Console, Guagliardo & Libkin, KR 2016 (abstract read).
describe("strong Kleene tables (standard)", () => {
	test.each<[ThreeValued, ThreeValued, ThreeValued, ThreeValued]>([
		["yes", "yes", "yes", "yes"],
		["yes", "unknown", "unknown", "yes"],
		["yes", "no", "no", "yes"],
		["unknown", "yes", "unknown", "yes"],
		["unknown", "unknown", "unknown", "unknown"],
		["unknown", "no", "no", "unknown"],
		["no", "yes", "no", "yes"],
		["no", "unknown", "no", "unknown"],
		["no", "no", "no", "no"],
	])("%s with %s: and %s, or %s", (one, other, and, or) => {
		expect(kleeneAnd(one, other)).toBe(and);
		expect(kleeneOr(one, other)).toBe(or);
	});

	test.each<[ThreeValued, ThreeValued]>([
		["yes", "no"],
		["unknown", "unknown"],
		["no", "yes"],
	])("not %s is %s", (value, opposite) => {
		expect(kleeneNot(value)).toBe(opposite);
	});
});

test("p or not p is unknown for an unknown p, but yes in each of its worlds", () => {
	const pOrNotP = (p: ThreeValued) => kleeneOr(p, kleeneNot(p));
	expect(pOrNotP("unknown")).toBe("unknown");
	expect([pOrNotP("yes"), pOrNotP("no")]).toEqual(["yes", "yes"]);
});
