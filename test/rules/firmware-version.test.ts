import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { compareFirmware } from "../../src/rules/firmware-version.ts";

// Common practice, no source: no standard puts firmware versions in order.
test.each([
	["F9", "F10"],
	["1.20", "1.30"],
	["1.9", "1.20"],
	["9.99", "10.00"],
	["7D75vA1", "7D75vA2"],
	["7d75VA1", "7D75va2"],
	["1.2", "1.2.1"],
	["1.2.0", "1.2.1"],
	["a", "b"],
	["2.04", "2.20"],
])("%s comes before %s", (one, other) => {
	expect(compareFirmware(one, other)).toBeLessThan(0);
	expect(compareFirmware(other, one)).toBeGreaterThan(0);
});

test.each([
	["F10", "f10"],
	["1.20", "1.20"],
	["1.20", "1-20"],
	["0020", "20"],
	["v1.2", "V 1.2"],
])("%s and %s are one", (one, other) => {
	expect(compareFirmware(one, other)).toBe(0);
	expect(compareFirmware(other, one)).toBe(0);
});

test.each([
	["F10", "1.20"],
	["1.20", "1.20a"],
	["", "1"],
	["1", "..."],
	["", ""],
])("%j and %j are not built alike", (one, other) => {
	expect(compareFirmware(one, other)).toBeNull();
	expect(compareFirmware(other, one)).toBeNull();
});

describe("in general", () => {
	const version = fc
		.array(fc.oneof(fc.nat({ max: 12 }).map(String), fc.constantFrom("a", "b", "v", ".", "-")), { maxLength: 5 })
		.map((parts) => parts.join(""));
	const sign = (order: number | null) => (order === null ? null : Math.sign(order));

	test("turning the two round turns the order round", () => {
		fc.assert(
			fc.property(version, version, (one, other) => {
				const order = sign(compareFirmware(one, other));
				expect(sign(compareFirmware(other, one))).toBe(order === null ? null : 0 - order);
			}),
		);
	});

	test("what comes before the second, and that before the third, comes before the third", () => {
		fc.assert(
			fc.property(version, version, version, (one, two, three) => {
				const [first, second] = [compareFirmware(one, two), compareFirmware(two, three)];
				fc.pre(first !== null && second !== null && first <= 0 && second <= 0);
				const both = compareFirmware(one, three);
				// Of lengths that differ, a third may be built otherwise than the first; it never comes before it.
				if (both !== null) expect(both).toBeLessThanOrEqual(0);
			}),
		);
	});
});
