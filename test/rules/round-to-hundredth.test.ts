import { expect, test } from "vitest";
import { roundToHundredth } from "../../src/rules/round-to-hundredth.ts";

test.each([
	[31.508, 31.51],
	[0.1 + 0.2, 0.3],
	[7.876, 7.88],
	[0.004, 0],
	[12, 12],
])("%f is %f", (value, rounded) => {
	expect(roundToHundredth(value) === rounded).toBe(true);
});
