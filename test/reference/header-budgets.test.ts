import { describe, expect, test } from "vitest";
import {
	anyFan,
	fansFed,
	lightsAtFullWhite,
	silentFanHeader,
	usualFan,
	whiteLightAmps,
} from "../../src/reference/header-budgets.ts";

describe("fans on one header", () => {
	test.each([
		[1, { surely: 0, usually: 3, atMost: 10 }],
		[0.9, { surely: 0, usually: 3, atMost: 9 }],
		[0.89, { surely: 0, usually: 2, atMost: 8 }],
		[0.3, { surely: 0, usually: 1, atMost: 3 }],
		[0.29, { surely: 0, usually: 0, atMost: 2 }],
		[3, { surely: 2, usually: 10, atMost: 30 }],
	])("%f A", (amps, fans) => {
		expect(fansFed(amps)).toEqual(fans);
	});

	test("usual fans keep to the specification, and a silent header feeds one of them", () => {
		expect(usualFan.leastAmps).toBeLessThan(usualFan.mostAmps);
		expect(usualFan.mostAmps).toBeLessThan(anyFan.steadyAmps);
		expect(silentFanHeader.amps).toBeGreaterThan(usualFan.mostAmps);
	});
});

describe("lights on one header", () => {
	test.each([
		[0.059, 0],
		[0.06, 1],
		[2.99, 49],
		[3, 50],
		[5, 83],
	])("%f A feed %i lights at full white", (amps, lights) => {
		expect(lightsAtFullWhite(amps)).toBe(lights);
	});

	test("what is fed takes no more than there is, and one light more does", () => {
		for (const tenths of Array.from({ length: 200 }, (_, at) => at + 1)) {
			const lights = lightsAtFullWhite(tenths / 10);
			expect(whiteLightAmps(lights)).toBeLessThanOrEqual(tenths / 10 + 1e-9);
			expect(whiteLightAmps(lights + 1)).toBeGreaterThan(tenths / 10 + 1e-9);
		}
	});
});
