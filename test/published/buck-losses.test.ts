import { describe, expect, test } from "vitest";
import {
	chipW,
	conductionHighW,
	conductionLowW,
	deadTimeW,
	diodeW,
	gateSwitchingSeconds,
	gateW,
	inputRippleAmps,
	resistanceW,
	rmsSquared,
	switchingW,
} from "../../src/power/buck-losses.ts";
import { coilRippleAmps } from "../../src/power/coil-ripple.ts";

// Each figure is right to half a unit of its last printed digit. Where a document cuts digits off instead of rounding,
// its line says so and a whole unit is allowed. Currents in A, ohms, seconds, hertz and coulombs go in, watts come out.

/** What comes out of what goes in, in percent. */
function efficiency(outW: number, lossW: number): number {
	return (100 * outW) / (outW + lossW);
}

function sum(terms: Readonly<Record<string, number>>): number {
	return Object.values(terms).reduce((total, watts) => total + watts, 0);
}

describe("ROHM, Calculation of Power Loss (Synchronous), No. AEK59-D1-0065-2; first page read in the document, inputs and results in a secondary text (open-source reproduction)", () => {
	const [inputV, amps, hertz] = [12, 3, 2e6];
	const duty = 5 / inputV;
	const losses = {
		"conduction, high": conductionHighW(rmsSquared(amps), duty, 0.1),
		"conduction, low": conductionLowW(rmsSquared(amps), duty, 0.07),
		switching: switchingW(inputV, amps, 4e-9 + 6e-9, hertz),
		"dead time": deadTimeW(0.5, amps, 30e-9 + 30e-9, hertz),
		gate: gateW(1e-9 + 1e-9, 5, hertz),
		IC: chipW(inputV, 1e-3),
	};

	test.each<[keyof typeof losses, number]>([
		["conduction, high", 375],
		["conduction, low", 367.5],
		["switching", 360],
		["dead time", 180],
		["gate", 20],
		["IC", 12],
	])("%s: %f mW", (name, milliwatts) => {
		expect(1000 * losses[name]).toBeCloseTo(milliwatts, 9);
	});

	test("gates given as 200 pF each instead of 1 nC each at 5 V: the same 20 mW", () => {
		expect(1000 * gateW((200e-12 + 200e-12) * 5, 5, hertz)).toBeCloseTo(20, 9);
	});

	test("total 1.31 W as printed; 1.3145 W and an efficiency of 91.94 % without the coil (both derived)", () => {
		expect(sum(losses)).toBeCloseTo(1.31, 2);
		expect(sum(losses)).toBeCloseTo(1.3145, 9);
		expect(efficiency(5 * amps, sum(losses))).toBeCloseTo(91.94, 2);
	});
});

describe("Analog Devices, ADP1872/ADP1873 data sheet, Rev. B, p. 29 (the same in ADP1882/ADP1883, Rev. 0, p. 30); read in the document", () => {
	const [inputV, amps, hertz, ohm] = [12, 15, 300e3, 5.4e-3];
	const [gateFarad, driverV, chipV, biasA] = [3.3e-9, 5.12, 5.5, 2e-3];
	const duty = 1.8 / inputV;
	const losses = {
		channel: conductionHighW(rmsSquared(amps), duty, ohm) + conductionLowW(rmsSquared(amps), duty, ohm),
		"body diode": deadTimeW(0.84, amps, 20e-9 + 20e-9, hertz),
		switching: switchingW(inputV, amps, gateSwitchingSeconds(1.5, gateFarad), hertz),
		driver: [driverV, chipV].reduce(
			(watts, volts) => watts + gateW(gateFarad * volts, volts, hertz) + chipW(volts, biasA),
			0,
		),
		"output capacitor": resistanceW(1.5 ** 2, 1.4e-3),
		inductor: resistanceW(rmsSquared(amps), 3e-3),
		"input capacitor": resistanceW(7.5 ** 2, 1e-3),
	};

	test.each<[keyof typeof losses, number, number]>([
		["channel", 1215, 0],
		["body diode", 151.2, 1],
		["switching", 534.6, 1],
		["output capacitor", 3.15, 2],
		["inductor", 675, 0],
		["input capacitor", 56.25, 2],
	])("%s: %f mW", (name, milliwatts, digits) => {
		expect(1000 * losses[name]).toBeCloseTo(milliwatts, digits);
	});

	test("driver: 77.13 mW as printed, cut off; 77.14 mW as recomputed (derived)", () => {
		expect(Math.abs(1000 * losses.driver - 77.13)).toBeLessThan(0.01);
		expect(1000 * losses.driver).toBeCloseTo(77.14, 2);
	});

	// The total that is printed is not the sum of its own terms, so it is left out.
	test("the seven terms: 2.712 W, an efficiency of 90.87 % (both derived)", () => {
		expect(sum(losses)).toBeCloseTo(2.712, 3);
		expect(efficiency(1.8 * amps, sum(losses))).toBeCloseTo(90.87, 2);
	});
});

// The loss of the input capacitors is left out, since what is printed is not its own arithmetic; so is the sum with it.
describe("Texas Instruments, LM2727/LM2737 data sheet, SNVS205D (rev. March 2013), p. 15; read in the document", () => {
	const [inputV, amps, hertz] = [5, 10, 300e3];
	const duty = 1.2 / inputV;
	// Both switches have 4.1 mohm cold, and 1.3 times that when warm.
	const warmOhm = 4.1e-3 * 1.3;

	test.each<[string, number, number, number]>([
		["chip", chipW(inputV, 2e-3), 0.01, 2],
		["gate", gateW(2 * 36e-9, 5, hertz), 0.108, 3],
		["switching", switchingW(inputV, amps, 11e-9 + 47e-9, hertz), 0.435, 3],
		[
			"conduction (arithmetic derived)",
			conductionHighW(rmsSquared(amps), duty, warmOhm) + conductionLowW(rmsSquared(amps), duty, warmOhm),
			0.533,
			3,
		],
		["output inductor", resistanceW(rmsSquared(amps), 4e-3), 0.4, 1],
	])("%s: %f W is printed as %f W", (_, watts, printed, digits) => {
		expect(watts).toBeCloseTo(printed, digits);
	});

	test("input inductor, 2.82 A rms: 0.055 W, cut off", () => {
		expect(Math.abs(resistanceW(2.82 ** 2, 7e-3) - 0.055)).toBeLessThan(0.001);
	});
});

describe("Texas Instruments, LM2745/LM2748 data sheet, SNOSAL2E, p. 25; read in the document", () => {
	const [inputV, amps, hertz, duty] = [3.3, 4, 300e3, 0.364];
	const warmOhm = 13e-3 * 1.3;
	const high = 1000 * conductionHighW(rmsSquared(amps), duty, warmOhm);
	const low = 1000 * conductionLowW(rmsSquared(amps), duty, warmOhm);
	const switching = 1000 * switchingW(inputV, amps, 31e-9, hertz);

	test.each<[string, number, number, number]>([
		["switching", switching, 61.38, 2],
		["conduction, low", low, 172, 0],
		["conduction, low (recomputed, derived)", low, 171.97, 2],
		["conduction, high (recomputed, derived)", high, 98.43, 2],
		["IC", 1000 * chipW(inputV, 1.7e-3), 5.61, 2],
		["gate", 1000 * gateW(2 * 3e-9, inputV, hertz), 5.94, 2],
		["both switches with switching", high + low + switching, 331.8, 1],
	])("%s: %f mW is printed as %f mW", (_, milliwatts, printed, digits) => {
		expect(milliwatts).toBeCloseTo(printed, digits);
	});

	test("input ripple at a duty of 0.364: 1.92 A printed (p. 18)", () => {
		// 1.925 recomputed, cut off as printed.
		expect(Math.abs(inputRippleAmps(amps, duty) - 1.92)).toBeLessThan(0.01);
	});

	test("conduction, high: 98.42 mW, cut off", () => {
		expect(Math.abs(high - 98.42)).toBeLessThan(0.01);
	});

	// The document adds the terms as it printed them, one of which is rounded to a whole milliwatt.
	test("both: 270.42 mW, the sum of 98.42 and 172", () => {
		expect(Math.abs(high + low - 270.42)).toBeLessThan(0.5);
	});
});

describe("Texas Instruments, LMR12015 data sheet, sec. 8.2.1.10.8, a diode in place of the low switch; read in the document", () => {
	const [inputV, amps, hertz, duty] = [12, 2, 2e6, 0.314];
	const internal = {
		conduction: conductionHighW(rmsSquared(amps), duty, 0.15),
		// Ten nanoseconds of falling; rising counts as much.
		switching: switchingW(inputV, amps, 10e-9 + 10e-9, hertz),
		quiescent: chipW(inputV, 2.4e-3),
		boost: chipW(4.5, 8.2e-3),
	};
	const outside = { diode: diodeW(0.5, amps, duty), inductor: resistanceW(rmsSquared(amps), 20e-3) };

	test.each<[string, number, number]>([
		["conduction", internal.conduction, 188],
		["switching", internal.switching, 480],
		["quiescent", internal.quiescent, 29],
		["boost", internal.boost, 37],
		["diode", outside.diode, 686],
		["inductor", outside.inductor, 80],
	])("%s: %f W is printed as %i mW", (_, watts, milliwatts) => {
		expect(1000 * watts).toBeCloseTo(milliwatts, 0);
	});

	// The four terms as printed add up to 734. Each may be off by half a milliwatt, and so may the sum.
	test("inside the chip: 733 mW", () => {
		expect(Math.abs(1000 * sum(internal) - 733)).toBeLessThan(5 * 0.5);
	});

	test("total: 733 + 686 + 80 = 1499 mW, an efficiency of 81.5 % (derived)", () => {
		const total = sum(internal) + sum(outside);
		expect(Math.abs(1000 * total - 1499)).toBeLessThan(7 * 0.5);
		expect(efficiency(3.3 * amps, total)).toBeCloseTo(81.5, 1);
	});
});

// Only the first result is printed where it was read; the others follow from the note's formulas and inputs.
describe("ROHM, Efficiency of Buck Converter, 64AN035E Rev.002, April 2021; start read in the document, inputs and first result in a secondary text (open-source notebook)", () => {
	const [inputV, outputV, amps, hertz] = [12, 5, 3, 1e6];
	const duty = outputV / inputV;
	const ripple = coilRippleAmps({ inputVolts: inputV, outputVolts: outputV, henry: 4.7e-6, hertz });

	test("ripple 0.6206 A (derived)", () => {
		expect(ripple).toBeCloseTo(0.6206, 4);
	});

	test("conduction of the high switch, with ripple: 376 mW; without it would be 375 mW", () => {
		expect(1000 * conductionHighW(rmsSquared(amps, ripple), duty, 0.1)).toBeCloseTo(376, 0);
		expect(Math.round(1000 * conductionHighW(rmsSquared(amps), duty, 0.1))).toBe(375);
	});

	test.each<[string, number, number, number]>([
		["conduction, high", conductionHighW(rmsSquared(amps, ripple), duty, 0.1), 376.3, 1],
		["conduction, low", conductionLowW(rmsSquared(amps, ripple), duty, 0.07), 368.8, 1],
		["switching of the high switch", switchingW(inputV, amps, 4e-9 + 6e-9, hertz), 180, 0],
		["switching of the low switch, across its diode", switchingW(0.5, amps, 2e-9 + 2e-9, hertz), 3, 0],
		["dead time", deadTimeW(0.5, amps, 30e-9 + 30e-9, hertz), 90, 0],
		["gate", gateW(1e-9 + 1e-9, 5, hertz), 10, 0],
		["IC", chipW(inputV, 1e-3), 12, 0],
		["inductor", resistanceW(rmsSquared(amps, ripple), 80e-3), 722.6, 1],
		["output capacitor", resistanceW(rmsSquared(0, ripple), 1e-3), 0.032, 3],
	])("%s: %f W comes to %f mW (derived)", (_, watts, milliwatts, digits) => {
		expect(1000 * watts).toBeCloseTo(milliwatts, digits);
	});
});
