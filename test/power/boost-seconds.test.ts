import fc from "fast-check";
import { expect, test } from "vitest";
import { boostSeconds } from "../../src/power/boost-seconds.ts";

// The published figures, and the average stepped through, are in test/published/boost-seconds.test.ts.

const limits = fc
	.record({
		beforeW: fc.double({ min: 0, max: 60, noNaN: true }),
		rise: fc.double({ min: 1, max: 200, noNaN: true }),
		above: fc.double({ min: 1, max: 200, noNaN: true }),
		averagingS: fc.double({ min: 0.1, max: 200, noNaN: true }),
	})
	.map(({ beforeW, rise, above, averagingS }) => ({
		beforeW,
		heldW: beforeW + rise,
		peakW: beforeW + rise + above,
		averagingS,
	}));

test.each([
	["half of the way to the peak", { peakW: 200, heldW: 150, beforeW: 100, averagingS: 10 }, 6.931],
	["the average stands at the limit", { peakW: 200, heldW: 150, beforeW: 150, averagingS: 10 }, 0],
	["the average stands above the limit", { peakW: 200, heldW: 150, beforeW: 170, averagingS: 10 }, 0],
	["the peak is the limit", { peakW: 150, heldW: 150, beforeW: 20, averagingS: 10 }, Number.POSITIVE_INFINITY],
	[
		"the peak is just below the limit",
		{ peakW: 149.9, heldW: 150, beforeW: 20, averagingS: 10 },
		Number.POSITIVE_INFINITY,
	],
	["the peak is below the limit", { peakW: 100, heldW: 150, beforeW: 20, averagingS: 10 }, Number.POSITIVE_INFINITY],
])("%s: %o lasts %f s", (_, of, seconds) => {
	expect(boostSeconds(of)).toBeCloseTo(seconds, 3);
});

test("it lasts as many times longer as the averaging time is", () => {
	fc.assert(
		fc.property(limits, fc.double({ min: 0.1, max: 10, noNaN: true }), (of, times) => {
			const longer = boostSeconds({ ...of, averagingS: times * of.averagingS });
			expect(longer / boostSeconds(of)).toBeCloseTo(times, 9);
		}),
	);
});

test("a way of the average in two parts takes as long as both parts", () => {
	fc.assert(
		fc.property(limits, fc.double({ min: 0, max: 1, noNaN: true }), (of, share) => {
			const betweenW = of.beforeW + share * (of.heldW - of.beforeW);
			const parts = boostSeconds({ ...of, heldW: betweenW }) + boostSeconds({ ...of, beforeW: betweenW });
			expect(Math.abs(parts - boostSeconds(of))).toBeLessThan(1e-9 * of.averagingS);
		}),
	);
});

test("a higher limit lasts longer; a higher peak, or more taken before, less long", () => {
	fc.assert(
		fc.property(limits, fc.double({ min: 0.05, max: 0.95, noNaN: true }), (of, share) => {
			const seconds = boostSeconds(of);
			expect(seconds).toBeGreaterThan(0);
			const between = (low: number, high: number) => low + share * (high - low);
			expect(boostSeconds({ ...of, heldW: between(of.heldW, of.peakW) })).toBeGreaterThan(seconds);
			expect(boostSeconds({ ...of, peakW: of.peakW + 100 * share })).toBeLessThan(seconds);
			expect(boostSeconds({ ...of, beforeW: between(of.beforeW, of.heldW) })).toBeLessThan(seconds);
		}),
	);
});
