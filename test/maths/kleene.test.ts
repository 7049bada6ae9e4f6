import fc from "fast-check";
import { expect, test } from "vitest";
import { kleeneAnd, kleeneNot, kleeneOr, type ThreeValued } from "../../src/maths/kleene.ts";

const value = fc.constantFrom<ThreeValued>("yes", "unknown", "no");

test("none at all: and is yes, or is no", () => {
	expect(kleeneAnd()).toBe("yes");
	expect(kleeneOr()).toBe("no");
});

test("one alone stays what it is", () => {
	fc.assert(
		fc.property(value, (one) => {
			expect(kleeneAnd(one)).toBe(one);
			expect(kleeneOr(one)).toBe(one);
		}),
	);
});

test("not (a and b) is not a or not b, for any number", () => {
	fc.assert(
		fc.property(fc.array(value, { maxLength: 6 }), (values) => {
			expect(kleeneNot(kleeneAnd(...values))).toBe(kleeneOr(...values.map(kleeneNot)));
		}),
	);
});

test("many at once is the same as two by two, in any order", () => {
	fc.assert(
		fc.property(fc.array(value, { minLength: 1, maxLength: 6 }), (values) => {
			const backwards = [...values].reverse();
			expect(backwards.reduce((a, b) => kleeneAnd(a, b))).toBe(kleeneAnd(...values));
			expect(backwards.reduce((a, b) => kleeneOr(a, b))).toBe(kleeneOr(...values));
		}),
	);
});

test("what is certain stays so however the unknowns turn out", () => {
	fc.assert(
		fc.property(fc.array(fc.tuple(value, fc.constantFrom<ThreeValued>("yes", "no")), { maxLength: 6 }), (pairs) => {
			const before = pairs.map(([known]) => known);
			const after = pairs.map(([known, settled]) => (known === "unknown" ? settled : known));
			const and = kleeneAnd(...before);
			const or = kleeneOr(...before);
			expect(and === "unknown" || and === kleeneAnd(...after)).toBe(true);
			expect(or === "unknown" || or === kleeneOr(...after)).toBe(true);
		}),
	);
});
