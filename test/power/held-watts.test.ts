import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Interval } from "../../src/maths/interval.ts";
import { limitPolicies } from "../../src/parts/processor.ts";
import { heldWatts, type ProcessorWatts, peakWatts } from "../../src/power/held-watts.ts";
import { labelHeldAfterBoost, leastOfPeakHeld, peakOverBase } from "../../src/reference/activity-loads.ts";

/** Every combination of what a page may say of the limit, silence included. */
const policies = [undefined, ...limitPolicies] as const;

/** Whether one range lies within another, but for the last digits of a double. */
function lieWithin(inner: Interval, outer: Interval): void {
	expect(inner.low).toBeGreaterThanOrEqual(outer.low * (1 - 1e-9));
	expect(inner.high).toBeLessThanOrEqual(outer.high * (1 + 1e-9));
}

describe("the highest watts", () => {
	test("are stated, or guessed wide open from the label: 1.35 to 3.5 times", () => {
		expect(peakWatts({ baseW: 65, peakW: 90 })).toEqual({ low: 90, high: 90, guessed: false });
		expect(peakWatts({ peakW: 90 })).toEqual({ low: 90, high: 90, guessed: false });
		const guess = peakWatts({ baseW: 100 });
		expect(guess?.low).toBeCloseTo(135, 9);
		expect(guess?.high).toBeCloseTo(350, 9);
		expect(guess?.guessed).toBe(true);
	});

	test("are no less than a measured figure of hours, and no more than 3.5 times that", () => {
		expect(peakWatts({ sustainedW: 80 })).toEqual({ low: 80, high: 280, guessed: true });
		expect(peakWatts({ sustainedW: 80, baseW: 50 })).toEqual({ low: 80, high: 175, guessed: true });
		expect(peakWatts({ sustainedW: 180, baseW: 50 })).toEqual({ low: 180, high: 180, guessed: true });
	});

	test("are not told by how the limit behaves", () => {
		expect(peakWatts({ limitPolicy: "fixed" })).toBeNull();
	});
});

// Worked by hand from the factors 1.35, 3.5 (label to peak), 0.85 (lifted) and 1.1 (after a boost).
describe("watts held for hours", () => {
	test.each<[string, ProcessorWatts, number, number]>([
		["label and peak, nothing of the limit", { baseW: 100, peakW: 200 }, 100, 200],
		["fixed: the peak is held", { baseW: 100, peakW: 200, limitPolicy: "fixed" }, 200, 200],
		["lifted by the board: most of the peak", { baseW: 100, peakW: 200, limitPolicy: "lifted-by-board" }, 170, 200],
		["lifted, label near the peak", { baseW: 100, peakW: 110, limitPolicy: "lifted-by-board" }, 100, 110],
		["timed boost: back to the label", { baseW: 100, peakW: 200, limitPolicy: "timed-boost" }, 100, 110],
		["timed boost, peak near the label", { baseW: 100, peakW: 105, limitPolicy: "timed-boost" }, 100, 105],
		["up to the firmware", { baseW: 100, peakW: 200, limitPolicy: "enforced-by-firmware" }, 100, 200],

		["label only", { baseW: 100 }, 100, 350],
		["label only, fixed", { baseW: 100, limitPolicy: "fixed" }, 100, 350],
		["label only, lifted", { baseW: 100, limitPolicy: "lifted-by-board" }, 100, 350],
		["label only, timed boost", { baseW: 100, limitPolicy: "timed-boost" }, 100, 110],
		["label only, up to the firmware", { baseW: 100, limitPolicy: "enforced-by-firmware" }, 100, 350],

		["peak only", { peakW: 90 }, 90 / 3.5, 90],
		["peak only, fixed", { peakW: 90, limitPolicy: "fixed" }, 90, 90],
		["peak only, lifted", { peakW: 90, limitPolicy: "lifted-by-board" }, 76.5, 90],
		["peak only, timed boost", { peakW: 90, limitPolicy: "timed-boost" }, 90 / 3.5, 90],
		["peak only, up to the firmware", { peakW: 90, limitPolicy: "enforced-by-firmware" }, 90 / 3.5, 90],

		// No page should say so; then the range is from one to the other, and the verdict stays open.
		["peak below the label", { baseW: 120, peakW: 65 }, 65, 120],
		["peak below the label, fixed", { baseW: 120, peakW: 65, limitPolicy: "fixed" }, 65, 120],
		["peak below the label, lifted", { baseW: 120, peakW: 65, limitPolicy: "lifted-by-board" }, 65, 120],
		["peak below the label, timed boost", { baseW: 120, peakW: 65, limitPolicy: "timed-boost" }, 65, 120],
		[
			"peak below the label, up to the firmware",
			{ baseW: 120, peakW: 65, limitPolicy: "enforced-by-firmware" },
			65,
			120,
		],
		["peak equal to the label", { baseW: 65, peakW: 65 }, 65, 65],
	])("%s", (_, processor, low, high) => {
		const held = heldWatts(processor);
		expect(held?.low).toBeCloseTo(low, 9);
		expect(held?.high).toBeCloseTo(high, 9);
	});

	test.each(policies)("a measured figure goes before all (%s)", (limitPolicy) => {
		for (const others of [{}, { baseW: 65 }, { peakW: 150 }, { baseW: 65, peakW: 150 }, { baseW: 200, peakW: 80 }])
			expect(heldWatts({ ...others, sustainedW: 110, limitPolicy })).toEqual({ low: 110, high: 110 });
	});

	test.each(policies)("nothing known is nothing said (%s)", (limitPolicy) => {
		expect(heldWatts({ limitPolicy })).toBeNull();
	});
});

// A processor as it is: its label, its peak, how its limit behaves, and what it does hold under that limit.
const truth = fc
	.record({
		baseW: fc.double({ min: 5, max: 300, noNaN: true }),
		over: fc.double({ min: peakOverBase.low, max: peakOverBase.high, noNaN: true }),
		limitPolicy: fc.constantFrom(...limitPolicies),
		share: fc.double({ min: 0, max: 1, noNaN: true }),
	})
	.map(({ baseW, over, limitPolicy, share }) => {
		const peakW = baseW * over;
		const ends = {
			fixed: [peakW, peakW],
			"timed-boost": [baseW, baseW * labelHeldAfterBoost],
			"lifted-by-board": [Math.max(baseW, peakW * leastOfPeakHeld), peakW],
			"enforced-by-firmware": [baseW, peakW],
		} as const;
		const [least, most] = ends[limitPolicy];
		return { baseW, peakW, limitPolicy, holdsW: least + share * (most - least) };
	});

/** What a page may keep back. */
const silence = fc.subarray(["baseW", "peakW", "limitPolicy"] as const);

function without(processor: ProcessorWatts, silent: readonly (keyof ProcessorWatts)[]): ProcessorWatts {
	return Object.fromEntries(Object.entries(processor).filter(([key]) => !(silent as readonly string[]).includes(key)));
}

describe("a page that keeps things back", () => {
	test("never leads to a range without what the processor does hold", () => {
		fc.assert(
			fc.property(truth, silence, ({ holdsW, ...page }, silent) => {
				const held = heldWatts(without(page, silent));
				if (held) lieWithin({ low: holdsW, high: holdsW }, held);
				else expect(silent).toEqual(expect.arrayContaining(["baseW", "peakW"]));
			}),
		);
	});

	test("never leads to a narrower range than one that says more", () => {
		fc.assert(
			fc.property(truth, silence, silence, ({ holdsW, ...page }, silent, alsoSilent) => {
				const more = heldWatts(without(page, silent));
				const less = heldWatts(without(page, [...silent, ...alsoSilent]));
				if (less) lieWithin(more as Interval, less);
				lieWithin(heldWatts({ ...page, sustainedW: holdsW }) as Interval, heldWatts(page) as Interval);
			}),
		);
	});
});

test("whatever a page says, the low end is not above the high one, and neither is above all that was said", () => {
	const watts = fc.option(fc.double({ min: 1, max: 2000, noNaN: true }), { nil: undefined });
	fc.assert(
		fc.property(watts, watts, fc.constantFrom(...policies), (baseW, peakW, limitPolicy) => {
			fc.pre(baseW !== undefined || peakW !== undefined);
			const { low, high } = heldWatts({ baseW, peakW, limitPolicy }) as Interval;
			expect(low).toBeGreaterThan(0);
			expect(low).toBeLessThanOrEqual(high);
			const said = [baseW ?? 0, peakW ?? (baseW as number) * peakOverBase.high];
			expect(high).toBeLessThanOrEqual(Math.max(...said));
		}),
	);
});
