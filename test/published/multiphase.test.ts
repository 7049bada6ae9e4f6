import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
	conductionHighW,
	conductionLowW,
	gateSwitchingSeconds,
	resistanceW,
	rmsSquared,
	switchingW,
} from "../../src/power/buck-losses.ts";
import { outputRippleShare } from "../../src/power/coil-ripple.ts";
import { steadyTemperature } from "../../src/power/heat-path.ts";
import { stageClasses, switchOhmC } from "../../src/reference/stage-classes.ts";

describe("Analog Devices, ADP3162 data sheet, Rev. A, p. 10, two phases, 28 A, duty 36 %, ripple 5.8 A; read in the document", () => {
	const ampsSquared = rmsSquared(28 / 2, 5.8);

	// What a switch of one ohm turns into heat is the square of its current's root mean square.
	test("the high side carries 8.5 A rms, the low side 11.3 A rms", () => {
		expect(Math.sqrt(conductionHighW(ampsSquared, 0.36, 1))).toBeCloseTo(8.5, 1);
		expect(Math.sqrt(conductionLowW(ampsSquared, 0.36, 1))).toBeCloseTo(11.3, 1);
	});

	test("eight times the loss of a high switch of 8.6 mohm, or four times that of a low one of 9.8, is 5.0 W", () => {
		expect(8 * resistanceW(8.5 ** 2, 8.6e-3)).toBeCloseTo(5.0, 1);
		expect(4 * resistanceW(11.3 ** 2, 9.8e-3)).toBeCloseTo(5.0, 1);
	});
});

const volts = fc.double({ min: 1, max: 24, noNaN: true });
const amps = fc.double({ min: 1, max: 300, noNaN: true });
const ripple = fc.double({ min: 0, max: 40, noNaN: true });
const ohm = fc.double({ min: 5e-4, max: 2e-2, noNaN: true });
const duty = fc.double({ min: 0.01, max: 0.99, noNaN: true });
const phases = fc.integer({ min: 1, max: 16 });
const abreast = fc.integer({ min: 1, max: 4 });

/** Whether two figures agree but for the last digits of a double. */
function agree(one: number, other: number): void {
	expect(Math.abs(one - other)).toBeLessThanOrEqual(1e-12 * Math.abs(other));
}

// The documents reckon with all switches of one side, n of them in N phases. Ours reckons with one phase, whose switches
// side by side are one of less resistance. Both must come to the same.
describe("n switches in N phases", () => {
	test("low side: Analog Devices, ADP3166 data sheet, Rev. 0, p. 14 (the same in ADP3193A, p. 23); formula read in the document", () => {
		fc.assert(
			fc.property(amps, ripple, ohm, duty, phases, abreast, (output, coil, switchOhm, on, N, sideBySide) => {
				const n = N * sideBySide;
				const published = (1 - on) * ((output / n) ** 2 + ((N * coil) / n) ** 2 / 12) * switchOhm;
				const phase = conductionLowW(rmsSquared(output / N, coil), on, switchOhm / sideBySide);
				agree(phase / sideBySide, published);
			}),
		);
	});

	test("high side: onsemi, ADP3212/NCP3218 data sheet, p. 32; formula read in the document", () => {
		fc.assert(
			fc.property(amps, ripple, ohm, duty, phases, abreast, (output, coil, switchOhm, on, N, sideBySide) => {
				const n = N * sideBySide;
				const published = on * ((output / n) ** 2 + ((N * coil) / n) ** 2 / 12) * switchOhm;
				const phase = conductionHighW(rmsSquared(output / N, coil), on, switchOhm / sideBySide);
				agree(phase / sideBySide, published);
			}),
		);
	});

	test("going on and off: onsemi, ADP3212/NCP3218 data sheet, p. 32; formula read in the document", () => {
		const hertz = fc.double({ min: 2e5, max: 1e6, noNaN: true });
		const gateOhm = fc.double({ min: 0.5, max: 5, noNaN: true });
		const farad = fc.double({ min: 5e-10, max: 1e-8, noNaN: true });
		fc.assert(
			fc.property(volts, amps, hertz, gateOhm, farad, phases, abreast, (input, output, f, Rg, Ciss, N, sideBySide) => {
				const n = N * sideBySide;
				const published = 2 * f * ((input * output) / n) * Rg * (n / N) * Ciss;
				// All gates of a phase hang on one driver.
				const seconds = gateSwitchingSeconds(Rg, sideBySide * Ciss);
				agree(switchingW(input, output / N, seconds, f) / sideBySide, published);
			}),
		);
	});
});

describe("Linear Technology, LTC3731 data sheet, p. 27; read in the document", () => {
	test.each([2, 3, 4, 5, 6, 7, 8, 9, 10, 12, 16])(
		"%i phases: ripple cancels where duty times phases is whole",
		(count) => {
			for (let times = 1; times < count; times++) expect(outputRippleShare(count, times / count)).toBeCloseTo(0, 12);
		},
	);

	test("three phases from 12 V to 1.3 V: most of it cancels, not all", () => {
		const share = outputRippleShare(3, 1.3 / 12);
		expect(share).toBeGreaterThan(0);
		expect(share).toBeLessThan(1);
	});
});

describe("a switch's resistance rises with its temperature", () => {
	const { low, high } = stageClasses.ohmRisePerK;

	test("by 0.4 to 0.6 % a kelvin (Linear Technology, LTC3735 data sheet, p. 14; read in the document)", () => {
		expect([low, high]).toEqual([0.004, 0.006]);
	});

	/** Where a switch settles that would be at `hotC` with so many times its cold heat, if its heat rises by `perK`. */
	function settles(hotC: number, timesCold: number, perK: number): number {
		const [airC, coldW] = [50, 1.2];
		const kelvinPerWatt = (hotC - airC) / (timesCold * coldW);
		return steadyTemperature(airC, kelvinPerWatt, {
			fixedW: coldW * (1 - perK * switchOhmC),
			wattsPerC: coldW * perK,
		});
	}

	// The two figures lie within that range, so that a switch settles cooler with its low end and hotter with its high end.
	test.each([
		["Linear Technology, LT8705 data sheet, p. 26: 1.5 times at 125 degrees C; read in the document", 125, 1.5],
		["Linear Technology, LTC3731 data sheet, p. 27: 7 mohm, 9 mohm at 90 degrees C; read in the document", 90, 9 / 7],
	])("%s", (_, hotC, timesCold) => {
		expect(settles(hotC, timesCold, low)).toBeLessThan(hotC);
		expect(settles(hotC, timesCold, high)).toBeGreaterThan(hotC);
		// The rise that the figure itself tells of, from 25 degrees C on (derived).
		expect(settles(hotC, timesCold, (timesCold - 1) / (hotC - 25))).toBeCloseTo(hotC, 9);
	});
});
