import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { heatToReach, sideBySide, steadyTemperature, warmedUp } from "../../src/power/heat-path.ts";

const airC = fc.double({ min: -10, max: 60, noNaN: true });
const kelvinPerWatt = fc.double({ min: 0.1, max: 90, noNaN: true });
const fixedW = fc.double({ min: 0, max: 20, noNaN: true });

describe("the temperature at which heat and cooling are even", () => {
	test.each([
		["no heat: as warm as the air", 31, 40, 0, 0, 31],
		["heat that stays the same", 50, 20, 3, 0, 110],
		["no way for heat to stay: as warm as the air", 50, 0, 3, 0.1, 50],
		["half of each kelvin comes back: twice the rise above 0", 30, 10, 2, 0.05, 100],
	])("%s", (_, air, resistance, fixed, wattsPerC, settled) => {
		expect(steadyTemperature(air, resistance, { fixedW: fixed, wattsPerC })).toBeCloseTo(settled, 9);
	});

	// Warm up, reckon the heat anew, warm up again: what a body does, without solving anything.
	test("is where air + resistance x heat arrives when it is reckoned again and again", () => {
		const gain = fc.double({ min: 0, max: 0.95, noNaN: true });
		fc.assert(
			fc.property(airC, kelvinPerWatt, fixedW, gain, (air, resistance, fixed, part) => {
				const wattsPerC = part / resistance;
				let warm = air;
				for (let count = 0; count < 1_000; count++) warm = air + resistance * (fixed + wattsPerC * warm);
				const settled = steadyTemperature(air, resistance, { fixedW: fixed, wattsPerC });
				expect(Math.abs(settled - warm)).toBeLessThan(1e-6 * (1 + Math.abs(warm)));
			}),
		);
	});

	test("is infinite where each kelvin brings at least as much heat as it carries off, and reckoned again it has no end", () => {
		expect(steadyTemperature(25, 20, { fixedW: 1, wattsPerC: 1 / 20 })).toBe(Number.POSITIVE_INFINITY);
		const gain = fc.double({ min: 1.01, max: 3, noNaN: true });
		fc.assert(
			fc.property(
				fc.double({ min: 5, max: 60, noNaN: true }),
				kelvinPerWatt,
				fixedW,
				gain,
				(air, resistance, fixed, part) => {
					const wattsPerC = part / resistance;
					expect(steadyTemperature(air, resistance, { fixedW: fixed, wattsPerC })).toBe(Number.POSITIVE_INFINITY);
					let warm = air;
					for (let count = 0; count < 1_000; count++) warm = air + resistance * (fixed + wattsPerC * warm);
					expect(warm).toBeGreaterThan(10_000);
				},
			),
		);
	});

	test("is where the heat that gets there is the heat there is", () => {
		const gain = fc.double({ min: 0, max: 0.95, noNaN: true });
		fc.assert(
			fc.property(airC, kelvinPerWatt, fixedW, gain, (air, resistance, fixed, part) => {
				const wattsPerC = part / resistance;
				const settled = steadyTemperature(air, resistance, { fixedW: fixed, wattsPerC });
				const watts = fixed + wattsPerC * settled;
				expect(Math.abs(heatToReach(settled, air, resistance) - watts)).toBeLessThan(1e-9 * (1 + 1e3 / resistance));
			}),
		);
	});

	test("rises with warmer air, more heat, more rise of heat and a worse way", () => {
		const heat = { fixedW: 2, wattsPerC: 0.01 };
		const settled = steadyTemperature(40, 20, heat);
		expect(steadyTemperature(41, 20, heat)).toBeGreaterThan(settled);
		expect(steadyTemperature(40, 21, heat)).toBeGreaterThan(settled);
		expect(steadyTemperature(40, 20, { ...heat, fixedW: 2.1 })).toBeGreaterThan(settled);
		expect(steadyTemperature(40, 20, { ...heat, wattsPerC: 0.011 })).toBeGreaterThan(settled);
		// More than one kelvin for each kelvin of air, since the warmer source gives more heat.
		expect(steadyTemperature(41, 20, heat) - settled).toBeCloseTo(1.25, 9);
	});
});

describe("watts that bring a source to a temperature", () => {
	test.each([
		[105, 45, 20, 3],
		[45, 45, 20, 0],
		[35, 45, 20, -0.5],
	])("to %i from air at %i degrees C through %i K/W takes %f W", (hotC, air, resistance, watts) => {
		expect(heatToReach(hotC, air, resistance)).toBeCloseTo(watts, 12);
	});
});

describe("two ways side by side", () => {
	const way = fc.double({ min: 0.1, max: 200, noNaN: true });

	test.each([
		[20, 20, 10],
		[30, 60, 20],
		[16, Number.POSITIVE_INFINITY, 16],
		[Number.POSITIVE_INFINITY, 16, 16],
		[Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY],
	])("%f and %f K/W are %f K/W", (one, other, together) => {
		expect(sideBySide(one, other)).toBeCloseTo(together, 9);
	});

	test("carry together what each carries at the same temperature", () => {
		fc.assert(
			fc.property(way, way, (one, other) => {
				const apart = heatToReach(95, 45, one) + heatToReach(95, 45, other);
				expect(heatToReach(95, 45, sideBySide(one, other)) / apart).toBeCloseTo(1, 9);
			}),
		);
	});

	test("are better than the better, by half at the most; their order does not matter", () => {
		fc.assert(
			fc.property(way, way, (one, other) => {
				const together = sideBySide(one, other);
				expect(together).toBeLessThan(Math.min(one, other));
				expect(together).toBeGreaterThanOrEqual(0.5 * Math.min(one, other) * (1 - 1e-12));
				expect(sideBySide(other, one)).toBe(together);
			}),
		);
	});
});

// The table of the step response is in test/published/warm-up.test.ts.
test("a body warms up from nothing to all, never back, the slower the longer its time constant", () => {
	const minutes = fc.double({ min: 0, max: 90, noNaN: true });
	const timeConstant = fc.double({ min: 1, max: 30, noNaN: true });
	fc.assert(
		fc.property(minutes, minutes, timeConstant, timeConstant, (time, longer, one, other) => {
			const warm = warmedUp(time, one);
			expect(warm).toBeGreaterThanOrEqual(0);
			expect(warm).toBeLessThanOrEqual(1);
			expect(warmedUp(time + longer, one)).toBeGreaterThanOrEqual(warm);
			expect(warmedUp(time, Math.max(one, other))).toBeLessThanOrEqual(warmedUp(time, Math.min(one, other)));
		}),
	);
});
