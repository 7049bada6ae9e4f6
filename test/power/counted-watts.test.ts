import { describe, expect, test } from "vitest";
import { limitPolicies } from "../../src/parts/processor.ts";
import { activities, sessionLengths } from "../../src/parts/wants.ts";
import { countedWatts, fullLoadWatts, type UseOfProcessor } from "../../src/power/counted-watts.ts";

describe("watts at full load", () => {
	test.each<[string, UseOfProcessor, number, number]>([
		["measured for hours", { sustainedW: 142 }, 142, 142],
		["measured goes before label and peak", { sustainedW: 142, baseW: 105, peakW: 230 }, 142, 142],
		["label to peak", { baseW: 105, peakW: 230 }, 105, 230],
		["label alone: up to twice as much", { baseW: 65 }, 65, 130],
		["peak alone: down to half as much", { peakW: 90 }, 45, 90],
		["a fixed limit holds at the label", { baseW: 65, limitPolicy: "fixed" }, 65, 65],
		["a fixed limit, whatever the peak", { baseW: 65, peakW: 88, limitPolicy: "fixed" }, 65, 65],
		["a fixed limit nobody gives in watts", { peakW: 88, limitPolicy: "fixed" }, 44, 88],
		["a peak below the label: a range all the same", { baseW: 120, peakW: 65 }, 65, 120],
		["a peak equal to the label", { baseW: 65, peakW: 65 }, 65, 65],
	])("%s", (_, use, low, high) => {
		expect(fullLoadWatts(use)).toEqual({ low, high });
	});

	test.each(limitPolicies.filter((policy) => policy !== "fixed"))("%s leaves the range open", (limitPolicy) => {
		expect(fullLoadWatts({ baseW: 65, limitPolicy })).toEqual({ low: 65, high: 130 });
	});

	test("nothing known is nothing said, whatever the use", () => {
		expect(fullLoadWatts({ limitPolicy: "fixed" })).toBeNull();
		expect(countedWatts({ activities: ["games"], sessionLength: "minutes" })).toBeNull();
	});
});

// Worked by hand: 100 W x share of full load x (1 - e^(-t / 10 min)); e^-0.8 = 0.4493, e^-6 = 0.0025.
describe("watts that count for the board, of 100 W at full load", () => {
	test.each<[string, Omit<UseOfProcessor, "sustainedW">, number]>([
		["nothing said: full load all day", {}, 100],
		["full load all day", { activities: ["building"], sessionLength: "all-day" }, 100],
		["full load for an hour", { activities: ["building"], sessionLength: "an-hour" }, 99.75],
		["full load for some minutes", { activities: ["building"], sessionLength: "minutes" }, 55.07],
		["games all day", { activities: ["games"], sessionLength: "all-day" }, 60],
		["games for some minutes", { activities: ["games"], sessionLength: "minutes" }, 33.04],
		["editing for an hour", { activities: ["pictures"], sessionLength: "an-hour" }, 79.8],
		["writing for some minutes", { activities: ["writing"], sessionLength: "minutes" }, 16.52],
		["recording, length not said", { activities: ["sound-recording"] }, 40],
		["the heaviest of several, wherever it stands", { activities: ["films", "pictures", "writing"] }, 80],
		["none of these: light use", { activities: [] }, 30],
	])("%s", (_, use, watts) => {
		const counted = countedWatts({ sustainedW: 100, ...use });
		expect(counted?.low).toBeCloseTo(watts, 1);
		expect(counted?.high).toBe(counted?.low);
	});

	test("a range keeps both ends", () => {
		const counted = countedWatts({ baseW: 50, peakW: 150, activities: ["games"] });
		expect(counted?.low).toBeCloseTo(30, 9);
		expect(counted?.high).toBeCloseTo(90, 9);
	});
});

test("longer and heavier use never counts less, and never more than full load", () => {
	const watts = (use: UseOfProcessor) => countedWatts({ sustainedW: 100, ...use })?.high ?? Number.NaN;
	for (const activity of activities) {
		const byLength = sessionLengths.map((sessionLength) => watts({ activities: [activity], sessionLength }));
		expect([...byLength].sort((one, other) => one - other)).toEqual(byLength);
		expect(new Set(byLength).size).toBe(sessionLengths.length);
		expect(byLength.at(-1)).toBeLessThanOrEqual(100);
		for (const other of activities)
			expect(watts({ activities: [activity, other] })).toBe(
				Math.max(watts({ activities: [activity] }), watts({ activities: [other] })),
			);
	}
});
