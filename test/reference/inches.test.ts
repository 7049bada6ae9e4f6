import { expect, test } from "vitest";
import { mmOfInches } from "../../src/reference/inches.ts";

test.each([
	[0, 0],
	[1, 25.4],
	[-0.65, -16.51],
	// 4.9 x 25.4 is 124.46000000000001 in binary fractions.
	[4.9, 124.46],
	[6.25, 158.75],
])("%f in is %f mm", (inches, mm) => {
	expect(mmOfInches(inches)).toBe(mm);
});
