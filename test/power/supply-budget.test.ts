import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { budgetAmps, processorAmps, processorClass, restAmps } from "../../src/power/supply-budget.ts";
import { peakOverBase } from "../../src/reference/activity-loads.ts";
import { processorClasses } from "../../src/reference/supply-budget.ts";

/** Watts at the processor for so many A at 12 V, worked by hand: 0.87 of the power at 11.2 V. */
const wattsFor = (amps: number) => amps * 11.2 * 0.87;

describe("the current of a processor", () => {
	test("stated highest watts give one figure: 121.8 W at 0.87 and 11.2 V are 12.5 A", () => {
		const amps = processorAmps({ peakW: 121.8, baseW: 65 });
		expect(amps?.low).toBeCloseTo(12.5, 9);
		expect(amps?.high).toBe(amps?.low);
		expect(amps?.guessed).toBe(false);
	});

	test("the label alone gives a range: 1.35 to 3.5 times 100 W", () => {
		const amps = processorAmps({ baseW: 100 });
		expect(wattsFor(amps?.low ?? 0)).toBeCloseTo(135, 9);
		expect(wattsFor(amps?.high ?? 0)).toBeCloseTo(350, 9);
		expect(amps?.guessed).toBe(true);
	});

	test("no watts, no current", () => {
		expect(processorAmps({})).toBeNull();
		expect(processorAmps({ limitPolicy: "fixed" })).toBeNull();
	});

	test("a heavier label never counts less, and the range holds whatever the highest watts turn out to be", () => {
		fc.assert(
			fc.property(
				fc.double({ min: 1, max: 400, noNaN: true }),
				fc.double({ min: 0, max: 100, noNaN: true }),
				fc.double({ min: peakOverBase.low, max: peakOverBase.high, noNaN: true }),
				(baseW, more, factor) => {
					const [one, heavier] = [processorAmps({ baseW }), processorAmps({ baseW: baseW + more })];
					expect(heavier?.low).toBeGreaterThanOrEqual(one?.low ?? 0);
					expect(heavier?.high).toBeGreaterThanOrEqual(one?.high ?? 0);
					const stated = processorAmps({ baseW, peakW: baseW * factor })?.high ?? 0;
					expect(stated).toBeGreaterThanOrEqual((one?.low ?? 0) - 1e-9);
					expect(stated).toBeLessThanOrEqual((one?.high ?? 0) + 1e-9);
				},
			),
		);
	});
});

test.each([
	[undefined, null],
	[34.9, null],
	[35, 35],
	[64.9, 35],
	[65, 65],
	[124, 65],
	[125, 125],
	[500, 165],
])("a label of %s W belongs to class %s", (labelW, classW) => {
	expect(processorClass(labelW)).toBe(processorClasses.classes.find((one) => one.labelW === classW) ?? null);
});

test("the budget adds up: 10 A, 120 W at 12 V and 4 A are 24 A", () => {
	expect(budgetAmps({ processorA: 10, cardW: 120, restA: 4 })).toBe(24);
});

test("the rest is simple without a graphics card and median with one; large is never assumed", () => {
	expect([restAmps(false), restAmps(true)]).toEqual([4, 8]);
});
