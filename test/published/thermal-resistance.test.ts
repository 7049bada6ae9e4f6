import { describe, expect, test } from "vitest";
import { chipW, gateW } from "../../src/power/buck-losses.ts";
import { heatToReach, steadyTemperature } from "../../src/power/heat-path.ts";
import { type SwitchMounting, switchToAir } from "../../src/reference/heat-paths.ts";

/** Degrees C of a source whose heat stays the same however warm it is. */
function warmed(airC: number, kelvinPerWatt: number, watts: number): number {
	return steadyTemperature(airC, kelvinPerWatt, { fixedW: watts, wattsPerC: 0 });
}

describe("Fairchild, FDMS8570SDC data sheet, Rev. C2, p. 3: K/W to the air; read in the document, watts derived", () => {
	// On 1 square inch of 2 oz copper, on the least copper, and the watts that take the first from 50 to 125 degrees C.
	test.each<["still" | "moving", SwitchMounting, number, number, number]>([
		["still", "bare", 38, 81, 1.97],
		["still", "small sink", 27, 34, 2.78],
		["still", "large sink", 16, 19, 4.69],
		["moving", "bare", 26, 61, 2.88],
		["moving", "small sink", 16, 23, 4.69],
		["moving", "large sink", 11, 13, 6.82],
	])("%s air, %s: %i and %i K/W; %f W on copper", (air, mounting, copper, least, watts) => {
		expect(switchToAir[air][mounting]).toEqual({ copper, least });
		expect(heatToReach(125, 50, copper)).toBeCloseTo(watts, 2);
		// Half a unit of the last digit of the watts, through so many K/W.
		expect(Math.abs(warmed(50, copper, watts) - 125)).toBeLessThan(0.005 * copper);
	});

	test("from its inside to its top 4.4 K/W", () => {
		expect(switchToAir.toTop).toBe(4.4);
	});

	test("a large sink in still air lets more heat go than air alone (derived)", () => {
		const { still, moving } = switchToAir;
		for (const board of ["copper", "least"] as const)
			expect(heatToReach(125, 50, still["large sink"][board])).toBeGreaterThan(
				heatToReach(125, 50, moving.bare[board]),
			);
	});
});

// Each line of these data sheets checks itself: it gives the limit, the way to the air or case, and the watts.
describe("the heat that a data sheet allows; read in the document", () => {
	test.each([
		["Infineon, BSC059N03S data sheet, Rev. 1.11: case at 25 degrees C", 150, 25, 2.6, 48, 0],
		["the same, recomputed (derived)", 150, 25, 2.6, 48.1, 1],
		["the same data sheet: air at 25 degrees C, 6 square cm of copper", 150, 25, 45, 2.8, 1],
		["the same, recomputed (derived)", 150, 25, 45, 2.78, 2],
		["Infineon, IPD050N03L G data sheet, Rev. 2.0: case at 25 degrees C", 175, 25, 2.2, 68, 0],
		["GF4126 data sheet (2001): air at 25 degrees C", 150, 25, 50, 2.5, 1],
		["GF4126 data sheet (2001): air at 70 degrees C", 150, 70, 50, 1.6, 1],
	])("%s: up to %i from %i degrees C through %f K/W takes %f W", (_, limitC, fromC, kelvinPerWatt, watts, digits) => {
		expect(heatToReach(limitC, fromC, kelvinPerWatt)).toBeCloseTo(watts, digits);
	});
});

// The line for 43 K/W on the same page is left out: it is not its own arithmetic.
describe("Analog Devices, ADP3654 data sheet, p. 11: a whole way from charge to temperature; read in the document", () => {
	const gate = gateW(120e-9, 12, 300e3);
	const total = 2 * gate + chipW(12, 1.2e-3);

	test("each gate 432 mW, both and the chip 878.4 mW", () => {
		expect(1000 * gate).toBeCloseTo(432, 9);
		expect(1000 * total).toBeCloseTo(878.4, 9);
	});

	test("through 59 K/W: 51.8 K, and from 85 degrees C to 136.8 degrees C", () => {
		expect(warmed(0, 59, total)).toBeCloseTo(51.8, 1);
		expect(warmed(85, 59, total)).toBeCloseTo(136.8, 1);
		expect(heatToReach(136.8, 85, 59)).toBeCloseTo(total, 3);
	});
});
