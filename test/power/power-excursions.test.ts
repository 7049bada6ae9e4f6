import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { lowBetweenPeaks, peakShare, promisesPeaks, shortPeaks } from "../../src/power/power-excursions.ts";

describe("what a supply must stand", () => {
	const strong = { ratedW: 451, hasWideLead: true };

	test.each([
		["above 450 W with the lead", strong, 0.001, 1.8],
		["450 W with the lead", { ratedW: 450, hasWideLead: true }, 0.001, 1.45],
		["above 450 W without the lead", { ratedW: 1000, hasWideLead: false }, 0.001, 1.45],
		["a peak between two lengths counts as the longer", strong, 0.002, 1.6],
		["a peak shorter than all", strong, 0.00001, 2],
		["a peak as long as the longest", strong, 0.1, 1.2],
		["longer than the longest is a load like any other", strong, 0.11, 1],
		["made in 2022", { ...strong, bornIn: 2022 }, 0.001, 1.8],
		["made in 2021, a tenth above the rating (from memory)", { ...strong, bornIn: 2021 }, 0.001, 1.1],
		["made in 2021, and longer than the longest", { ...strong, bornIn: 2021 }, 0.11, 1],
	])("%s", (_, supply, seconds, share) => {
		expect(peakShare(supply, seconds)).toBe(share);
	});

	test("without a year it counts as made when the guides ask for peaks", () => {
		expect([undefined, 2022, 2021].map(promisesPeaks)).toEqual([true, true, false]);
	});
});

describe("the load between peaks", () => {
	test("peaks as high as the rating leave the rating", () => {
		expect(lowBetweenPeaks(500, 500, 0.25)).toBeCloseTo(500, 9);
	});

	test("worked by hand: 500 W, peaks of 800 W for a quarter of the time: sqrt((250000 - 160000) / 0.75)", () => {
		expect(lowBetweenPeaks(500, 800, 0.25)).toBeCloseTo(346.41, 2);
	});

	test("peaks that alone come to the rating or above leave nothing", () => {
		expect(lowBetweenPeaks(500, 1000, 0.25)).toBe(0);
		expect(lowBetweenPeaks(500, 1001, 0.25)).toBe(0);
	});

	test("squared and averaged over time, load and peaks come to the rating", () => {
		fc.assert(
			fc.property(
				fc.double({ min: 100, max: 2000, noNaN: true }),
				fc.double({ min: 1, max: 2, noNaN: true }),
				fc.double({ min: 0, max: 0.25, noNaN: true }),
				(ratedW, share, duty) => {
					const lowW = lowBetweenPeaks(ratedW, share * ratedW, duty);
					const meanSquare = duty * (share * ratedW) ** 2 + (1 - duty) * lowW ** 2;
					expect(Math.sqrt(meanSquare) / ratedW).toBeCloseTo(1, 6);
				},
			),
		);
	});
});

describe("short peaks of a load", () => {
	const load = { processorA: 11, cardW: 240, restA: 8 };

	test("the card at twice its watts, the processor at the peak of its class, one at a time", () => {
		expect(shortPeaks(load, 35)).toEqual([
			{ whose: "card", watts: (11 + 40 + 8) * 12, seconds: 0.001 },
			{ whose: "processor", watts: (19 + 20 + 8) * 12, seconds: 0.01 },
		]);
	});

	// 40 A over 37.5 A is the least of the table.
	test.each([undefined, 30])(
		"a label of %s W counts with the least that a class's peak is above its steady current",
		(labelW) => {
			expect(shortPeaks({ ...load, processorA: 15 }, labelW)[1]?.watts).toBeCloseTo((16 + 20 + 8) * 12, 9);
		},
	);

	test("without a card there is no peak of a card", () => {
		expect(shortPeaks({ ...load, cardW: 0 }, 35)[0]?.watts).toBe(19 * 12);
	});
});
