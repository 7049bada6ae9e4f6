import { describe, expect, test } from "vitest";
import {
	beforePeaks,
	cardPeak,
	excursionLimits,
	processorClasses,
	processorInput,
	restOfPlatform,
	stagesPassOn,
} from "../../src/reference/supply-budget.ts";

const rises = (values: readonly number[]) => values.every((value, at) => at === 0 || value > (values[at - 1] ?? value));

test("heavier classes of processors take more, and their peaks more than that", () => {
	const { classes } = processorClasses;
	for (const figure of ["labelW", "continuousA", "peakA"] as const)
		expect(rises(classes.map((one) => one[figure]))).toBe(true);
	for (const { continuousA, peakA } of classes) expect(peakA).toBeGreaterThan(continuousA);
});

test("a larger rest of the platform takes more, within the guide's span of 2 to 30 A", () => {
	const { simpleA, medianA, largeA } = restOfPlatform;
	expect(rises([2, simpleA, medianA, largeA, 30])).toBe(true);
});

// Own convention: stages of today turn a tenth of the power into heat at full load (from memory), and the board's copper
// and the supply's cable some more.
test("the board's stages pass on most of the power, and not all", () => {
	expect(stagesPassOn).toEqual({ share: 0.87, source: "own-convention" });
	expect(processorInput.volts).toBeLessThan(12);
});

describe("power excursions", () => {
	const { strong, usual } = excursionLimits;

	test.each(["strong", "usual"] as const)("%s: the longer a peak, the smaller, and never below the rating", (name) => {
		const rows = excursionLimits[name];
		expect(rises(rows.map(({ seconds }) => seconds))).toBe(true);
		expect(rises(rows.map(({ share }) => -share))).toBe(true);
		for (const { share } of rows) expect(share).toBeGreaterThan(1);
	});

	test("strong supplies must stand more at every length", () => {
		expect(strong.map(({ seconds, duty }) => ({ seconds, duty }))).toEqual(
			usual.map(({ seconds, duty }) => ({ seconds, duty })),
		);
		for (const [at, { share }] of strong.entries()) expect(share).toBeGreaterThan(usual[at]?.share ?? share);
	});

	test("a supply from before the guides is counted on for no more than the least of them", () => {
		expect(beforePeaks.share).toBeLessThanOrEqual(Math.min(...usual.map(({ share }) => share)));
		expect(beforePeaks.source).toBe("from-memory");
	});

	test("a card's short peak is one the table knows, and marked as from memory", () => {
		expect(usual.map(({ seconds }) => seconds)).toContain(cardPeak.seconds);
		expect(cardPeak.source).toBe("from-memory");
	});
});
