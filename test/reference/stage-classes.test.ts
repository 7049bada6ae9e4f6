import { describe, expect, test } from "vitest";
import { powerDelivery } from "../../src/parts/board-power-delivery.ts";
import {
	type Assumed,
	classHertz,
	classOutputVolts,
	classStageC,
	gateVolts,
	inputVolts,
	integratedEfficiency,
	stageClasses,
	switchOhmC,
} from "../../src/reference/stage-classes.ts";

const classes: readonly (readonly [string, Assumed])[] = Object.entries(stageClasses);

describe.each(classes)("%s", (_, { low, high, unit, because }) => {
	test("has two ends, a unit and a reason", () => {
		expect(low).toBeGreaterThanOrEqual(0);
		expect(high).toBeGreaterThan(low);
		expect(Number.isFinite(high)).toBe(true);
		expect(unit).not.toBe("");
		expect(because.split(/\s+/).length).toBeLessThanOrEqual(25);
	});
});

// What stands in for a fact must be what a page may say of it.
test.each([
	["stages", "coreStages"],
	["kilohertz", "switchingKhz"],
	["highSwitchMohm", "highSwitchMohm"],
	["lowSwitchMohm", "lowSwitchMohm"],
	["lowSwitches", "lowSwitchesPerStage"],
	["ratingA", "stageRatingA"],
	["coilMohm", "coilMohm"],
	["coilNh", "coilNh"],
] as const)("%s stays inside what the schema takes as %s", (name, fact) => {
	for (const value of [stageClasses[name].low, stageClasses[name].high])
		expect(powerDelivery.safeParse({ [fact]: value }).success).toBe(true);
});

// The figures of the sources, each read from its worked example; see test/published/buck-losses.test.ts.
test("classes run from the least to the most of the examples they name", () => {
	expect([stageClasses.highSwitchMohm.low, stageClasses.highSwitchMohm.high]).toEqual([4.1, 9.8]);
	expect(stageClasses.lowSwitchMohm.high).toBe(9.8);
	expect([stageClasses.switchNs.low, stageClasses.switchNs.high]).toEqual([10, 31]);
	expect([stageClasses.deadNs.low, stageClasses.deadNs.high]).toEqual([20 + 20, 30 + 30]);
	expect([stageClasses.diodeVolts.low, stageClasses.diodeVolts.high]).toEqual([0.5, 0.84]);
	expect([stageClasses.gateNc.low, stageClasses.gateNc.high]).toEqual([2 * 17, 2 * 36]);
	expect([stageClasses.ohmRisePerK.low, stageClasses.ohmRisePerK.high]).toEqual([0.4 / 100, 0.6 / 100]);
	expect(stageClasses.ratingA.low).toBe(35);
});

// Copper gains 0.39 % a kelvin from 20 degrees C (physics): 1.31 times at 100 degrees C.
test("a coil gets as warm as copper at 100 degrees C makes of it, and never better than cold", () => {
	expect(stageClasses.coilWarmth.low).toBe(1);
	expect(stageClasses.coilWarmth.high).toBeCloseTo(1 + 0.0039 * (100 - 20), 1);
});

test("what has no page is marked so", () => {
	for (const name of ["coreVolts", "kilohertz", "integratedSwitchNs", "coilMohm", "coilWarmth", "coilNh"] as const)
		expect(stageClasses[name].source).toBe("from-memory");
	expect(stageClasses.coilHeatShare.source).toBe("own-convention");
	expect(stageClasses.stages.source).toBe("common-practice");
	expect(stageClasses.advertisedStages.source).toBe("common-practice");
	expect(integratedEfficiency.source).toBe("from-memory");
});

describe("integrated stages", () => {
	const { better, worse, load } = integratedEfficiency;

	test("are most efficient at less than the load of the second point", () => {
		for (const { peak, atLoad } of [better, worse]) {
			expect(atLoad).toBeLessThan(peak);
			expect(peak).toBeLessThan(1);
		}
		expect(load).toBe(0.6);
	});

	test("of the better class are better at both points, and both may be told by a page", () => {
		expect(better.peak).toBeGreaterThan(worse.peak);
		expect(better.atLoad).toBeGreaterThan(worse.atLoad);
		for (const { atLoad } of [better, worse])
			expect(powerDelivery.safeParse({ efficiencyPercent: 100 * atLoad }).success).toBe(true);
	});

	// Switching of 4 to 8 ns is 0.5 x 12 V x 4 to 8 ns x 500 kHz / 1.2 V = 1 to 2 % of the output.
	test("lose more than what switching alone takes", () => {
		const switching = (0.5 * inputVolts * stageClasses.integratedSwitchNs.high * 1e-9 * classHertz) / classOutputVolts;
		expect(switching).toBeCloseTo(0.02, 12);
		for (const { peak } of [better, worse]) expect(1 / peak - 1).toBeGreaterThan(switching);
	});
});

test("temperatures and voltages of the classes stand in their order", () => {
	expect(switchOhmC).toBe(25);
	expect(classStageC).toBeGreaterThan(switchOhmC);
	expect(inputVolts).toBe(12);
	expect(gateVolts).toBe(5);
	expect(stageClasses.coreVolts.high).toBeLessThan(inputVolts / 4);
	expect(stageClasses.coreVolts.low).toBeLessThan(classOutputVolts);
	expect(stageClasses.coreVolts.high).toBeGreaterThan(classOutputVolts);
});
