import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { boostSeconds } from "../../src/power/boost-seconds.ts";

/**
 * Seconds for which the peak is held, found by stepping the moving average of the limit, not by a logarithm. In each
 * step the average goes a small part of the way to what is taken now.
 */
function steppedSeconds(peakW: number, heldW: number, beforeW: number, averagingS: number): number {
	const stepS = averagingS / 50_000;
	let average = beforeW;
	let steps = 0;
	while (average < heldW) {
		average += (stepS / averagingS) * (peakW - average);
		steps++;
	}
	return steps * stepS;
}

// The limit is on an exponentially weighted moving average: processor data sheet, doc. 759603, vol. 1, "Package Power
// Control", January 2023; read in the document. The time that follows from it is derived.
describe("time above the lower limit (processor data sheet, doc. 759603, vol. 1, January 2023; time derived)", () => {
	test("125 W held, 253 W at the peak, 10 W before, 56 s (figures from memory): 56 x ln(243 / 128) = 35.9 s", () => {
		expect(boostSeconds({ peakW: 253, heldW: 125, beforeW: 10, averagingS: 56 })).toBeCloseTo(35.9, 1);
		expect(steppedSeconds(253, 125, 10, 56)).toBeCloseTo(35.9, 1);
	});

	test("from the limit itself: 0 s", () => {
		expect(boostSeconds({ peakW: 253, heldW: 125, beforeW: 125, averagingS: 56 })).toBe(0);
	});

	test("a peak that is no higher than the limit: without end", () => {
		expect(boostSeconds({ peakW: 125, heldW: 125, beforeW: 10, averagingS: 56 })).toBe(Number.POSITIVE_INFINITY);
	});

	test("the same as the average itself, step by step, whatever the limits", () => {
		const watts = fc.double({ min: 5, max: 300, noNaN: true });
		const share = fc.double({ min: 0.05, max: 1, noNaN: true });
		fc.assert(
			fc.property(
				watts,
				share,
				share,
				fc.double({ min: 1, max: 128, noNaN: true }),
				(heldW, above, below, averagingS) => {
					const [peakW, beforeW] = [heldW * (1 + above), heldW * (1 - below)];
					const stepped = steppedSeconds(peakW, heldW, beforeW, averagingS);
					const ours = boostSeconds({ peakW, heldW, beforeW, averagingS });
					expect(Math.abs(ours - stepped)).toBeLessThan(1e-3 * averagingS);
				},
			),
			{ numRuns: 40 },
		);
	});
});

describe("a 4th-generation processor's data sheet, p. 84: peak 1.25 times the limit, 28 s; read in the document", () => {
	test("from nothing: 28 x ln(1.25 / 0.25) = 45.1 s, at any watts (derived)", () => {
		for (const heldW of [15, 65, 84])
			expect(boostSeconds({ peakW: 1.25 * heldW, heldW, beforeW: 0, averagingS: 28 })).toBeCloseTo(45.1, 1);
	});

	test("which is longer than the averaging time, as a desktop processor's data sheet, p. 90, says it may be (read in the document)", () => {
		expect(boostSeconds({ peakW: 1.25 * 65, heldW: 65, beforeW: 0, averagingS: 28 })).toBeGreaterThan(28);
	});
});
