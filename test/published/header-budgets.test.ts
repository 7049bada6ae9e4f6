import { describe, expect, test } from "vitest";
import { anyFan, fansFed, lightsAtFullWhite, whiteLightAmps } from "../../src/reference/header-budgets.ts";

describe("4-Wire Pulse Width Modulation (PWM) Controlled Fans Specification, sec. 2, p. 9-10; read in the document", () => {
	test("at most 1.5 A steady, at most 2.2 A at the start", () => {
		expect(anyFan).toMatchObject({ steadyAmps: 1.5, startAmps: 2.2 });
	});
});

// The limits are read; how many usual fans of 0.3 A they feed is derived, and 0.3 A is from memory.
describe("a desktop board's technical product specification, table 29, p. 54; read in the document", () => {
	test.each([
		["processor fan", 2, 6],
		["system fan", 1.5, 5],
	])("%s header, %f A: one fan of the specification, %i usual ones", (_, amps, usually) => {
		expect(fansFed(amps)).toMatchObject({ surely: 1, usually });
	});
});

describe("5 V lights, 60 mA each at full white; read in a secondary text", () => {
	test.each([
		[60, 3.6],
		[5 * 60, 18],
		[144, 8.64],
	])("%i lights take %f A", (lights, amps) => {
		expect(whiteLightAmps(lights)).toBeCloseTo(amps, 9);
	});

	// The header's 3 A and 256 lights, and 5 A and 1000 lights, are read in two desktop boards' manuals, p. 21 and 22.
	test.each([
		[3, 256, 50],
		[5, 1000, 83],
	])("a header of %f A and %i lights feeds %i of them at full white (derived)", (amps, printed, white) => {
		expect(lightsAtFullWhite(amps)).toBe(white);
		expect(whiteLightAmps(printed)).toBeGreaterThan(amps);
	});
});
