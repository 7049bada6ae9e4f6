import { describe, expect, test } from "vitest";
import { lowBetweenPeaks, peakShare } from "../../src/power/power-excursions.ts";
import { budgetAmps, processorAmps, processorClass } from "../../src/power/supply-budget.ts";
import { excursionLimits, processorInput, restOfPlatform, stagesPassOn } from "../../src/reference/supply-budget.ts";

describe("ATX Version 3.0 Multi Rail Desktop Platform Power Supply Design Guide, doc. 336521, rev. 2.0, table 2-1; read in the document", () => {
	const rows = [
		[165, 37.5, 40, 420],
		[125, 26, 39, 291.2],
		[65, 23, 34, 257.6],
		[35, 11, 19, 123.2],
	] as const;

	test.each(rows)(
		"%i W: %f A continuous, %i A peak; %f W at 11.2 V (p. 23; product derived)",
		(labelW, amps, peakA, watts) => {
			expect(processorClass(labelW)).toEqual({ labelW, continuousA: amps, peakA });
			expect(amps * processorInput.volts).toBeCloseTo(watts, 9);
		},
	);

	// Own convention against the guide: what the table's continuous power leaves at the processor when the board's stages
	// pass on 0.87 of it, over the label. The guide itself gives no efficiency.
	test.each([
		[165, 2.21],
		[125, 2.03],
		[65, 3.45],
		[35, 3.06],
	])("%i W: behind the stages the table leaves %f times the label", (labelW, ratio) => {
		const amps = processorClass(labelW)?.continuousA ?? Number.NaN;
		expect((amps * processorInput.volts * stagesPassOn.share) / labelW).toBeCloseTo(ratio, 2);
	});

	// The ratio of highest to label watts in that class is from memory, 253 / 125 = 2.02; so it is no ground on its own.
	test("a processor that takes 2.02 times its 125 W is counted with the table's 26 A", () => {
		expect(processorAmps({ baseW: 125, peakW: 2.02 * 125 })?.high).toBeCloseTo(26, 0);
	});

	test.each(rows)("%i W: a guess from the label reaches the table's current", (labelW, amps) => {
		expect(processorAmps({ baseW: labelW })?.low).toBeLessThan(amps);
		expect(processorAmps({ baseW: labelW })?.high).toBeGreaterThanOrEqual(amps);
	});
});

describe('ATX12V and ATX12VO Power Supply Design Guide Addendum, doc. 621484, rev. 004, "Power Supplies with 12V Rails Listed Together"; read in the document', () => {
	const classAmps = (labelW: number) => processorClass(labelW)?.continuousA ?? Number.NaN;

	test("integrated graphics: 23 A + 4 A = 27 A", () => {
		expect(budgetAmps({ processorA: classAmps(65), cardW: 0, restA: restOfPlatform.simpleA })).toBe(27);
	});

	test("a card of 300 W: 26 A + 300 W / 12 V + 8 A = 59 A", () => {
		expect(budgetAmps({ processorA: classAmps(125), cardW: 300, restA: restOfPlatform.medianA })).toBe(59);
	});

	test("the rest of the platform: 4, 8 or 14 A", () => {
		expect(restOfPlatform).toMatchObject({ simpleA: 4, medianA: 8, largeA: 14 });
	});
});

describe("ATX12VO power supply design guide, doc. 613768, rev. 2.01, tables 3-3 and 3-4; read in the document", () => {
	const printed = [
		[0.0001, 0.05, 200, 150, 2000, 918],
		[0.001, 0.08, 180, 145, 1800, 897],
		[0.01, 0.125, 160, 135, 1600, 882],
		[0.1, 0.25, 120, 110, 1200, 924],
	] as const;

	test.each(printed)("%f s, part of the time %f: %i %% and %i %%", (seconds, duty, strong, usual) => {
		expect(peakShare({ ratedW: 1000, hasWideLead: true }, seconds) * 100).toBeCloseTo(strong, 9);
		expect(peakShare({ ratedW: 1000, hasWideLead: false }, seconds) * 100).toBeCloseTo(usual, 9);
		expect(peakShare({ ratedW: 450, hasWideLead: true }, seconds) * 100).toBeCloseTo(usual, 9);
		expect(excursionLimits.strong.find((one) => one.seconds === seconds)?.duty).toBe(duty);
	});

	test.each(printed)(
		"1000 W unit, peaks of %f s, part of the time %f (%i %%, %i %%): %i W, then %i W",
		(seconds, duty, _strong, _usual, peakW, lowW) => {
			expect(peakShare({ ratedW: 1000, hasWideLead: true }, seconds) * 1000).toBeCloseTo(peakW, 9);
			expect(Math.abs(lowBetweenPeaks(1000, peakW, duty) - lowW)).toBeLessThanOrEqual(0.5);
		},
	);

	// Low times of the table: 1900 us, 11.5 ms, 70 ms, 300 ms.
	test.each([
		[0.0001, 0.0019],
		[0.001, 0.0115],
		[0.01, 0.07],
		[0.1, 0.3],
	])("peaks of %f s, then %f s: the table's part of the time", (seconds, lowSeconds) => {
		const duty = excursionLimits.strong.find((one) => one.seconds === seconds)?.duty;
		expect(seconds / (seconds + lowSeconds)).toBeCloseTo(duty ?? Number.NaN, 9);
	});
});
