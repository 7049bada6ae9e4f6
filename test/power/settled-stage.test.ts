import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { steadyTemperature } from "../../src/power/heat-path.ts";
import {
	dutyOf,
	heatSums,
	type LossCause,
	loadThatHeats,
	type SettledStage,
	stageHeat,
	stageLosses,
} from "../../src/power/settled-stage.ts";
import { type Delivery, settleStage, stageRangesOf } from "../../src/power/stage-range.ts";
import { heatOfAll, lossesOfOne, thriftiestAmps, workingStages } from "./heat-oracle.ts";
import { everyEnd, settledByDraw } from "./random-board.ts";

const loads = fc.oneof(fc.double({ min: 0.5, max: 30, noNaN: true }), fc.double({ min: 1, max: 600, noNaN: true }));
const temperatures = fc.double({ min: -20, max: 150, noNaN: true });

function settleHot(delivery: Delivery): SettledStage {
	const [range] = stageRangesOf(delivery);
	if (!range) throw new Error("There is a range for every kind of stage.");
	return settleStage(range, everyEnd("hot"));
}

function wattsOf(stage: SettledStage, loadW: number, stageC: number): Readonly<Record<string, number>> {
	return Object.fromEntries(stageLosses(stage, loadW, stageC).watts.map(({ name, watts }) => [name, watts]));
}

/** Heat of all stages at a temperature. */
function heatAt(stage: SettledStage, loadW: number, stageC: number): number {
	const { fixedW, wattsPerC } = stageHeat(stage, loadW);
	return fixedW + wattsPerC * stageC;
}

function closeTo(one: number, other: number, part = 1e-9): void {
	expect(Math.abs(one - other)).toBeLessThanOrEqual(part * Math.max(Math.abs(one), Math.abs(other)));
}

// Eight stages of 60 A at 500 kHz, coils of 0.2 mohm and 150 nH; all that is not known at its hot end: 1.1 V, 8 ns,
// 0.6 % a kelvin, curve 0.0054778 / x + 0.165777 x, coil 1.3 times as warm, half of its heat into the stage.
// 132 W / 1.1 V = 120 A, 15 A a stage.
//   conduction at 50 C: 0.165777 x 1.2 V / 60 A = 3.31553 mohm, x 15 squared = 0.74599 W
//     at 90 C: x (1 + 0.006 x 65) / (1 + 0.006 x 25) = x 1.208696 = 0.90168 W
//   switching: 12 V x 15 A x 8 ns / 2 x 500 kHz = 0.36 W
//   standing: 0.0054778 x 1.2 V x 60 A = 0.39440 W
//   ripple at 1.3 V: 1.3 x (1 - 1.3 / 12) / (150 nH x 500 kHz) = 15.4556 A, squared / 12 = 19.906
//   coil: 0.26 mohm x (225 + 19.906) = 0.063676 W
// Heat at 90 C: 8 x (0.90168 + 0.36 + 0.39440 + 0.031838) = 13.5033 W.
// Resting: 20 C: 3.31553 mohm x 0.97 / 1.15 = 2.79655, + 0.13 of the coil; fixed 0.39440 + 0.13 mohm x 19.906 = 0.39699 W;
// root of (0.39699 / 0.00292655) = 11.6468 A.
// Through 2 K/W to 40 C: heat = 10.70098 + 0.0311372 x T, so T = (40 + 21.40197) / (1 - 0.0622743) = 65.4797 C.
describe("eight integrated stages, worked by hand", () => {
	const stage = settleHot({
		coreStages: 8,
		stageKind: "integrated",
		stageRatingA: 60,
		switchingKhz: 500,
		coilMohm: 0.2,
		coilNh: 150,
	});

	test.each([
		[50, 0.745994],
		[90, 0.90168],
	])("watts to each cause at %s degrees C", (stageC, conduction) => {
		const losses = stageLosses(stage, 132, stageC);
		expect(losses.amps).toBeCloseTo(15, 9);
		expect(losses.working).toBe(8);
		const watts = wattsOf(stage, 132, stageC);
		expect(Object.keys(watts)).toEqual(["conduction", "switching", "gate and standing loss", "coil"]);
		expect(watts["conduction"]).toBeCloseTo(conduction, 5);
		expect(watts["switching"]).toBeCloseTo(0.36, 9);
		expect(watts["gate and standing loss"]).toBeCloseTo(0.394398, 5);
		expect(watts["coil"]).toBeCloseTo(0.0636756, 6);
	});

	test("heat of all, and the temperature it comes to", () => {
		expect(heatAt(stage, 132, 90)).toBeCloseTo(13.50333, 4);
		expect(stageHeat(stage, 132).fixedW).toBeCloseTo(10.700984, 4);
		expect(stageHeat(stage, 132).wattsPerC).toBeCloseTo(0.03113716, 7);
		expect(steadyTemperature(40, 2, stageHeat(stage, 132))).toBeCloseTo(65.4797, 3);
	});

	test("stages rest below 11.65 A each: 66 W make 60 A, which 5.15 stages carry", () => {
		const { amps, working } = stageLosses(stage, 66, 60);
		expect(amps).toBeCloseTo(11.6468, 3);
		expect(working).toBeCloseTo(60 / 11.6468, 3);
	});
});

// Six stages at 300 kHz, one high switch of 6 mohm and two low ones of 4 mohm, coils of 0.3 mohm and 220 nH; the rest at
// its hot end: 1.1 V, 31 ns, 60 ns and 0.84 V dead, 72 nC, 0.6 % a kelvin. 99 W / 1.1 V = 90 A, 15 A a stage.
//   ripple at 1.3 V: 1.159167 / (220 nH x 300 kHz) = 17.5631 A, squared / 12 = 25.7053; with 15 squared 250.7053
//   duty 1.1 / 12 = 0.0916667; at 100 C switches have 1 + 0.006 x 75 = 1.45 times their resistance
//   high: 0.0916667 x 6 mohm x 250.7053 x 1.45 = 0.199937 W; low: 0.9083333 x 2 mohm x 250.7053 x 1.45 = 0.660400 W
//   switching: 12 x 15 x 31 ns / 2 x 300 kHz = 0.837 W; dead time: 0.84 x 15 x 60 ns x 300 kHz = 0.2268 W
//   gate: 72 nC x 5 V x 300 kHz = 0.108 W; coil: 0.39 mohm x 250.7053 = 0.0977751 W
// Heat: 6 x (0.199937 + 0.660400 + 0.837 + 0.2268 + 0.108 + 0.0488875) = 12.48615 W.
// Through 3 K/W to 45 C: heat = 10.350138 + 0.02136009 x T, so T = 76.050414 / 0.93591973 = 81.2574 C.
describe("six stages of separate switches, worked by hand", () => {
	const stage = settleHot({
		coreStages: 6,
		stageKind: "separate switches",
		switchingKhz: 300,
		highSwitchMohm: 6,
		lowSwitchMohm: 4,
		lowSwitchesPerStage: 2,
		coilMohm: 0.3,
		coilNh: 220,
	});

	test("watts to each cause", () => {
		const watts = wattsOf(stage, 99, 100);
		const byHand = {
			"conduction, high switch": 0.1999375,
			"conduction, low switch": 0.6603995,
			switching: 0.837,
			"dead time": 0.2268,
			gate: 0.108,
			coil: 0.0977751,
		};
		expect(Object.keys(watts)).toEqual(Object.keys(byHand));
		for (const [name, value] of Object.entries(byHand)) expect(watts[name]).toBeCloseTo(value, 6);
		expect(stage.rippleSquared).toBeCloseTo(25.7053, 4);
		expect(dutyOf(1.1)).toBeCloseTo(0.0916667, 6);
	});

	test("heat of all, and the temperature it comes to", () => {
		expect(heatAt(stage, 99, 100)).toBeCloseTo(12.486147, 5);
		expect(steadyTemperature(45, 3, stageHeat(stage, 99))).toBeCloseTo(81.25741, 4);
	});

	// Of 20 A, 8.31067 A a stage: root of ((0.108 + 25.7053 x (0.195 + 0.97 x 2.366667) mohm) / 2.490667 mohm).
	test("at 22 W 2.4 stages work, and one more costs no more", () => {
		const { amps, working } = stageLosses(stage, 22, 60);
		expect(amps).toBeCloseTo(8.310667, 5);
		expect(working).toBeCloseTo(2.406546, 5);
	});
});

describe("stages of any figures", () => {
	test("lose to each cause what first principles say", () => {
		fc.assert(
			fc.property(settledByDraw, loads, temperatures, ({ stages, settled }, loadW, stageC) => {
				const { amps, working } = stageLosses(settled, loadW, stageC);
				const expected = lossesOfOne(stages, amps, stageC);
				const watts = wattsOf(settled, loadW, stageC);
				expect(Object.keys(watts).sort()).toEqual(Object.keys(expected).sort());
				for (const [name, value] of Object.entries(expected)) closeTo(watts[name] ?? Number.NaN, value);
				closeTo(amps * working, loadW / stages.coreVolts);
				// The search for the thriftiest current is right to half the digits of a double.
				closeTo(working, workingStages(stages, loadW), 1e-5);
			}),
			{ numRuns: 500 },
		);
	});

	test("warm themselves with what first principles say", () => {
		fc.assert(
			fc.property(settledByDraw, loads, temperatures, ({ stages, settled }, loadW, stageC) => {
				closeTo(heatAt(settled, loadW, stageC), heatOfAll(stages, loadW, stageC), 1e-6);
			}),
			{ numRuns: 500 },
		);
	});

	test("give in all what each of them gives, the coil its share only", () => {
		fc.assert(
			fc.property(settledByDraw, loads, temperatures, ({ settled }, loadW, stageC) => {
				const { working, watts } = stageLosses(settled, loadW, stageC);
				const into = watts.map(({ watts }, at) => watts * (settled.causes[at]?.intoStage ?? Number.NaN));
				closeTo(heatAt(settled, loadW, stageC), working * into.reduce((sum, one) => sum + one, 0));
			}),
		);
	});

	test("have heat without a step where the first of them rests", () => {
		fc.assert(
			fc.property(settledByDraw, temperatures, ({ stages, settled }, stageC) => {
				const { working, amps } = stageLosses(settled, 0.01, 20);
				const allWorkW = amps * stages.stages * stages.coreVolts;
				expect(working).toBeLessThan(stages.stages);
				closeTo(amps, thriftiestAmps(stages), 1e-5);
				expect(stageLosses(settled, allWorkW * (1 - 1e-6), 20).working).toBeLessThan(stages.stages);
				expect(stageLosses(settled, allWorkW * (1 + 1e-6), 20).working).toBe(stages.stages);
				const [below, above] = [1 - 1e-9, 1 + 1e-9].map((part) => heatAt(settled, allWorkW * part, stageC));
				closeTo(below ?? 0, above ?? 1, 1e-7);
			}),
		);
	});

	test("while some rest, heat grows in proportion to the load; while all work, faster", () => {
		fc.assert(
			fc.property(settledByDraw, temperatures, fc.double({ min: 0.01, max: 1, noNaN: true }), (drawn, stageC, part) => {
				const { stages, settled } = drawn;
				const allWorkW = stageLosses(settled, 0.01, 20).amps * stages.stages * stages.coreVolts;
				const [whole, twice] = [heatAt(settled, allWorkW, stageC), heatAt(settled, allWorkW * 2, stageC)];
				closeTo(heatAt(settled, allWorkW * part, stageC), part * whole, 1e-7);
				expect(twice).toBeGreaterThan(1.2 * whole);
			}),
		);
	});

	test("come to a heat at the load that gives it, and give no heat without load", () => {
		fc.assert(
			fc.property(settledByDraw, loads, temperatures, ({ settled }, loadW, stageC) => {
				closeTo(loadThatHeats(settled, heatAt(settled, loadW, stageC), stageC), loadW, 1e-7);
				expect(stageHeat(settled, 0)).toEqual({ fixedW: 0, wattsPerC: 0 });
				expect(loadThatHeats(settled, 0, stageC)).toBe(0);
				expect(loadThatHeats(settled, -5, stageC)).toBe(0);
				expect(stageLosses(settled, 0, stageC)).toMatchObject({ amps: 0, working: 0 });
			}),
		);
	});

	test("one stage more never heats more, from 20 degrees C up", () => {
		const warm = fc.double({ min: 20, max: 150, noNaN: true });
		fc.assert(
			fc.property(settledByDraw, loads, warm, ({ settled }, loadW, stageC) => {
				const more = { ...settled, stages: settled.stages + 1 };
				expect(heatAt(more, loadW, stageC)).toBeLessThanOrEqual(heatAt(settled, loadW, stageC) * (1 + 1e-12));
			}),
			{ numRuns: 500 },
		);
	});
});

// Two causes with round numbers. Ripple 6 A peak to peak: 36 / 12 = 3.
// Warm: 0.5 x (2 W + 4 W/A x I + 8 ohm x (I squared + 3)); cold: 1 x (1 W + 5 ohm x (I squared + 3)); last: no ripple.
test("causes are added up by their share, the ripple with the resistance it goes through", () => {
	const cause = (of: Partial<LossCause>): LossCause => ({
		name: "any",
		fixedW: 0,
		wattsPerAmp: 0,
		ohm: 0,
		warms: false,
		ripples: false,
		intoStage: 1,
		...of,
	});
	const causes = [
		cause({ fixedW: 2, wattsPerAmp: 4, ohm: 8, warms: true, ripples: true, intoStage: 0.5 }),
		cause({ fixedW: 1, ohm: 5, ripples: true }),
		cause({ ohm: 7, warms: true }),
	];
	expect(heatSums(causes, 3)).toEqual({
		fixedW: 0.5 * 2 + 1 + 5 * 3,
		wattsPerAmp: 2,
		warmOhm: 4 + 7,
		coldOhm: 5,
		warmRippleW: 12,
	});
});
