import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { coilRippleAmps, outputRippleShare, outputRippleShares } from "../../src/power/coil-ripple.ts";

const converter = fc.record({
	inputVolts: fc.constantFrom(5, 12, 19),
	outputVolts: fc.double({ min: 0.6, max: 4.5, noNaN: true }),
	henry: fc.double({ min: 1e-7, max: 1e-5, noNaN: true }),
	hertz: fc.double({ min: 2e5, max: 2e6, noNaN: true }),
});

describe("ripple in one coil", () => {
	// 150 nH and 500 kHz from 12 V to 1.2 V, by hand: 10.8 V for 0.2 microseconds over 150 nH.
	test("10.8 V for 0.2 microseconds over 150 nH is 14.4 A", () => {
		expect(coilRippleAmps({ inputVolts: 12, outputVolts: 1.2, henry: 150e-9, hertz: 5e5 })).toBeCloseTo(14.4, 9);
	});

	test("rises as far while the input is on as it falls while it is off", () => {
		fc.assert(
			fc.property(converter, (stage) => {
				const { inputVolts, outputVolts, henry, hertz } = stage;
				const onSeconds = outputVolts / inputVolts / hertz;
				const ripple = coilRippleAmps(stage);
				expect(ripple / (((inputVolts - outputVolts) / henry) * onSeconds)).toBeCloseTo(1, 9);
				expect(ripple / ((outputVolts / henry) * (1 / hertz - onSeconds))).toBeCloseTo(1, 9);
			}),
		);
	});

	test("is greatest at half the input, and nothing where the output is the input", () => {
		const at = (outputVolts: number) => coilRippleAmps({ inputVolts: 12, outputVolts, henry: 1e-6, hertz: 1e6 });
		expect(at(12)).toBe(0);
		expect(at(6)).toBe(3);
		for (const away of [0.5, 2, 5]) {
			expect(at(6 - away)).toBeLessThan(3);
			expect(at(6 + away)).toBeCloseTo(at(6 - away), 12);
		}
	});
});

/** A triangle from 0 to 1 and back: up for a share `duty` of the period, down for the rest. `time` in periods. */
function triangle(time: number, duty: number): number {
	const within = time - Math.floor(time);
	return within < duty ? within / duty : (1 - within) / (1 - duty);
}

/** Peak-to-peak of so many triangles, each a part of the period later, over that of one: sampled, not reckoned. */
function sampledShare(phases: number, duty: number): number {
	const samples = 20_000;
	let [least, most] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
	for (let index = 0; index < samples; index++) {
		let sum = 0;
		for (let phase = 0; phase < phases; phase++) sum += triangle(index / samples + phase / phases, duty);
		least = Math.min(least, sum);
		most = Math.max(most, sum);
	}
	return most - least;
}

describe("ripple at the output of phases that take turns", () => {
	const phases = fc.integer({ min: 1, max: 16 });
	const duty = fc.double({ min: 0.02, max: 0.98, noNaN: true });

	test.each([1, 2, 3, 4, 6, 7, 8, 12, 16])("%i phases: what is left of the sum of their triangles", (count) => {
		for (const on of [0.05, 0.1, 1.3 / 12, 0.2, 0.27, 0.36, 0.45, 0.55, 0.71, 0.9])
			expect(Math.abs(outputRippleShare(count, on) - sampledShare(count, on)), `duty ${on}`).toBeLessThan(0.01);
	});

	test("the same at any duty, within 1 % of one coil's ripple", () => {
		fc.assert(
			fc.property(phases, duty, (count, on) => {
				expect(Math.abs(outputRippleShare(count, on) - sampledShare(count, on))).toBeLessThan(0.01);
			}),
			{ numRuns: 60 },
		);
	});

	test("one phase keeps all of it, more never have more, and on and off are alike", () => {
		fc.assert(
			fc.property(phases, duty, (count, on) => {
				const share = outputRippleShare(count, on);
				expect(outputRippleShare(1, on)).toBeCloseTo(1, 12);
				expect(share).toBeGreaterThan(-1e-12);
				expect(share).toBeLessThan(1 + 1e-12);
				expect(outputRippleShare(count, 1 - on)).toBeCloseTo(share, 9);
			}),
		);
	});
});

describe("what is left over a range of duties", () => {
	// 12 phases at a duty of 1 / 12 cancel fully; between 1 / 12 and 1.3 / 12 of a period the most is at its upper end.
	test("has its least where ripple cancels fully, and its most where one share says", () => {
		const { low, high } = outputRippleShares(12, 1 / 12, 1.3 / 12);
		expect(low).toBeCloseTo(0, 9);
		expect(high).toBeCloseTo(outputRippleShare(12, 1.3 / 12), 9);
		expect(outputRippleShares(1, 0.09, 0.11)).toEqual({ low: expect.closeTo(1, 12), high: expect.closeTo(1, 12) });
	});

	test("holds every duty between the ends, to a hundredth", () => {
		fc.assert(
			fc.property(fc.integer({ min: 1, max: 24 }), fc.double({ min: 0, max: 1, noNaN: true }), (phases, at) => {
				const { low, high } = outputRippleShares(phases, 1.1 / 12, 1.3 / 12);
				const share = outputRippleShare(phases, (1.1 + 0.2 * at) / 12);
				expect(share).toBeGreaterThanOrEqual(low - 0.01);
				expect(share).toBeLessThanOrEqual(high + 0.01);
			}),
		);
	});
});
