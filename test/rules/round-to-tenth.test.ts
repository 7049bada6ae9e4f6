import { expect, test } from "vitest";
import { roundToTenth } from "../../src/rules/round-to-tenth.ts";

test.each([
	[300.3 - 300.2, 0.1],
	[160.1 - 158.1, 2],
	[40.64, 40.6],
	[-0.04, 0],
	[12, 12],
])("%f is %f", (value, rounded) => {
	expect(roundToTenth(value) === rounded).toBe(true);
});
