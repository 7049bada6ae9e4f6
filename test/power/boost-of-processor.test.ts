import { describe, expect, test } from "vitest";
import { limitPolicies } from "../../src/parts/processor.ts";
import { type Boost, boostOf } from "../../src/power/boost-of-processor.ts";
import type { UseOfProcessor } from "../../src/power/counted-watts.ts";

const boosting = { baseW: 100, peakW: 200, limitPolicy: "timed-boost", averagingS: 28 } as const;

describe("a boost that ends", () => {
	// t = tau x ln((peak - before) / (peak - held)). Shortest: after light work of 0.3 x the label, to the label itself.
	// Longest: from 10 W of nothing done, to a tenth over the label, but no more than half way up to the peak.
	test.each<[string, UseOfProcessor, number, number]>([
		// 28 x ln(170 / 100) = 14.8576; 28 x ln(190 / 90) = 20.9220.
		["a known averaging time", boosting, 14.8576, 20.922],
		// 28 s at the least, 56 at the most: 56 x ln(190 / 90) = 41.8441.
		["none known", { ...boosting, averagingS: undefined }, 14.8576, 41.8441],
		// 28 x ln((110 - 30) / 10) = 58.2244; held 105, half way: 28 x ln(100 / 5) = 83.8805.
		["a peak near the label", { ...boosting, peakW: 110 }, 58.2244, 83.8805],
		// 0.3 x 20 W is less than the 10 W of nothing done: 28 x ln(30 / 20) = 11.3530; held 22: 28 x ln(30 / 18) = 14.3031.
		["a small label", { ...boosting, baseW: 20, peakW: 40 }, 11.353, 14.3031],
	])("%s", (_, use, low, high) => {
		const boost = boostOf(use);
		expect(boost?.seconds?.low).toBeCloseTo(low, 3);
		expect(boost?.seconds?.high).toBeCloseTo(high, 3);
		expect(boost).toMatchObject({ peakW: use.peakW, thenW: use.baseW, after: "falls back" });
	});

	test("is at the limit from the start where nothing done takes as much as the label", () => {
		expect(boostOf({ ...boosting, baseW: 8 })?.seconds?.low).toBe(0);
	});

	test("may fall back or not where that depends on the firmware", () => {
		const { seconds } = boostOf(boosting) ?? {};
		expect(boostOf({ ...boosting, limitPolicy: "enforced-by-firmware" })).toEqual({
			peakW: 200,
			seconds,
			thenW: 100,
			after: "may fall back",
		});
	});
});

describe("a boost that has no end", () => {
	const holds: Boost = { peakW: 200, seconds: null, thenW: null, after: "holds" };

	test.each<[string, UseOfProcessor]>([
		["a fixed limit", { ...boosting, limitPolicy: "fixed" }],
		["a limit that the board lifts", { ...boosting, limitPolicy: "lifted-by-board" }],
		["a fixed limit without a label", { peakW: 200, limitPolicy: "fixed" }],
		["a clock that is raised", { ...boosting, raisesClock: true }],
	])("%s", (_, use) => {
		expect(boostOf(use)).toEqual(holds);
	});
});

describe("nothing to tell", () => {
	test.each<[string, UseOfProcessor]>([
		["no peak", { ...boosting, peakW: undefined }],
		["no word of the limit", { ...boosting, limitPolicy: undefined }],
		["no label to fall back to", { ...boosting, baseW: undefined }],
		["a peak no higher than the label", { ...boosting, peakW: 100 }],
		["nothing at all", {}],
	])("%s", (_, use) => {
		expect(boostOf(use)).toBeNull();
	});
});

test.each(limitPolicies)("what was measured of hours changes nothing of the boost (%s)", (limitPolicy) => {
	const use = { ...boosting, limitPolicy };
	expect(boostOf({ ...use, sustainedW: 130 })).toEqual(boostOf(use));
});
