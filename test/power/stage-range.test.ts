import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { exactly } from "../../src/maths/interval.ts";
import { stageHeat } from "../../src/power/settled-stage.ts";
import { classCurve, type Delivery, type Group, settleStage, stageRangesOf } from "../../src/power/stage-range.ts";
import { inputVolts, integratedEfficiency, stageClasses } from "../../src/reference/stage-classes.ts";
import { thriftiestAmps } from "./heat-oracle.ts";
import { everyEnd, toldBoards } from "./random-board.ts";

const only = (delivery: Delivery) => {
	const [range, ...others] = stageRangesOf(delivery);
	if (!range || others.length > 0) throw new Error("A known kind of stage has one range.");
	return range;
};

const wholeBoard = {
	coreStages: 10,
	stageRatingA: 70,
	switchingKhz: 450,
	coilMohm: 0.3,
	coilNh: 220,
	highSwitchMohm: 7,
	lowSwitchMohm: 3,
	lowSwitchesPerStage: 2,
} as const satisfies Delivery;

describe("figures of the stages", () => {
	test("that are told are taken as they are", () => {
		const { figures } = only({ ...wholeBoard, stageKind: "separate switches" });
		expect(figures).toMatchObject({
			stages: exactly(10),
			kilohertz: exactly(450),
			highSwitchMohm: exactly(7),
			lowSwitchMohm: exactly(3),
			lowSwitches: exactly(2),
			coilMohm: exactly(0.3),
			coilNh: exactly(220),
		});
		expect(only({ ...wholeBoard, stageKind: "integrated" }).figures).toMatchObject({ ratingA: exactly(70) });
	});

	test("that nobody tells lie in their class, and the assumption names the fact that would do away with it", () => {
		const { figures, assumptions } = only({ stageKind: "separate switches" });
		for (const figure of ["coreVolts", "kilohertz", "highSwitchMohm", "lowSwitchMohm", "lowSwitches"] as const)
			expect(figures[figure]).toEqual({ low: stageClasses[figure].low, high: stageClasses[figure].high });
		for (const figure of ["switchNs", "deadNs", "diodeVolts", "gateNc", "ohmRisePerK", "coilMohm"] as const)
			expect(figures[figure]).toEqual({ low: stageClasses[figure].low, high: stageClasses[figure].high });
		for (const figure of ["coilNh", "coilWarmth", "coilHeatShare", "stages"] as const)
			expect(figures[figure]).toEqual({ low: stageClasses[figure].low, high: stageClasses[figure].high });
		const facts = assumptions.flatMap(({ fact }) => fact ?? []).sort();
		expect(facts).toEqual(
			[
				"coilMohm",
				"coilNh",
				"coreStages",
				"highSwitchMohm",
				"lowSwitchMohm",
				"lowSwitchesPerStage",
				"switchingKhz",
			].map((fact) => `board.powerDelivery.${fact}`),
		);
	});

	test("of integrated stages have a switching time of their own, a rating and a curve, and no switches", () => {
		const { figures, assumptions } = only({ stageKind: "integrated" });
		const { low, high } = stageClasses.integratedSwitchNs;
		expect(figures.switchNs).toEqual({ low, high });
		expect(figures.ratingA).toEqual({ low: 35, high: 90 });
		expect(figures.curveOhm).toEqual({ low: classCurve.better.ohm, high: classCurve.worse.ohm });
		expect(figures.curveFixed).toEqual({ low: classCurve.better.fixed, high: classCurve.worse.fixed });
		for (const figure of ["highSwitchMohm", "lowSwitchMohm", "deadNs", "diodeVolts", "gateNc"] as const)
			expect(figures[figure]).toEqual(exactly(0));
		const facts = assumptions.map(({ fact }) => fact);
		expect(facts).toContain("board.powerDelivery.stageRatingA");
		expect(facts).toContain("board.powerDelivery.efficiencyPercent");
		expect(facts).not.toContain("board.powerDelivery.lowSwitchMohm");
	});

	test("are counted for both kinds where the kind is not known, and that is an assumption", () => {
		const ranges = stageRangesOf(wholeBoard);
		expect(ranges.map(({ kind }) => kind)).toEqual(["integrated", "separate switches"]);
		const facts = ranges.flatMap(({ assumptions }) => assumptions.map(({ fact }) => fact));
		expect(facts.filter((fact) => fact === "board.powerDelivery.stageKind")).toHaveLength(1);
		for (const stageKind of ["integrated", "separate switches"] as const)
			expect(
				only({ ...wholeBoard, stageKind }).assumptions.some(({ fact }) => fact === "board.powerDelivery.stageKind"),
			).toBe(false);
	});

	test("are named, each figure that is assumed by a name of its own", () => {
		const names = (delivery: Delivery) => only(delivery).assumptions.map(({ what }) => what);
		const ofBoth = ["voltage of the cores", "switching frequency", "rise of resistance with heat"];
		const ofCoils = [
			"resistance of a coil",
			"warmth of the coil",
			"inductance of a coil",
			"heat that the coils add to the stages",
		];
		expect(names({ stageKind: "separate switches" }).sort()).toEqual(
			[
				"number of stages",
				...ofBoth,
				"high switch",
				"one low switch",
				"low switches a stage",
				"switching time, separate switches",
				"dead time",
				"voltage in the dead time",
				"charge of the gates",
				...ofCoils,
			].sort(),
		);
		expect(names({ stageKind: "integrated" }).sort()).toEqual(
			[
				"number of stages",
				...ofBoth,
				"switching time, integrated stages",
				"rating of a stage",
				"loss of a stage without load",
				"efficiency of a stage at 60 % of its rating",
				...ofCoils,
			].sort(),
		);
		expect(stageRangesOf({}).flatMap(({ assumptions }) => assumptions)).toContainEqual({
			what: "kind of stage",
			fact: "board.powerDelivery.stageKind",
			low: 0,
			high: 1,
			unit: "",
			source: "common-practice",
			because: "integrated stages and separate switches were both counted",
		});
	});

	test("leave no fact to look up on a board of which all is known", () => {
		for (const stageKind of ["integrated", "separate switches"] as const)
			expect(
				only({ ...wholeBoard, stageKind, efficiencyPercent: 90 }).assumptions.flatMap(({ fact }) => fact ?? []),
			).toEqual([]);
	});
});

describe("number of stages", () => {
	test.each<[string | undefined, number, number]>([
		["14+2+1", 7, 14],
		["16", 8, 16],
		["9+1", 5, 9],
		["1", 1, 1],
		["2+1", 2, 2],
		["twin 8+2", 4, 8],
		["64", 32, 64],
		["65", 3, 24],
		["0+2", 3, 24],
		["many", 3, 24],
		[undefined, 3, 24],
	])("advertised as %s: from %s to %s", (advertised, low, high) => {
		expect(only({ stageKind: "integrated", ...(advertised ? { advertised } : {}) }).figures.stages).toEqual({
			low,
			high,
		});
	});

	test("that are counted go before what is advertised", () => {
		expect(only({ stageKind: "integrated", advertised: "20+2", coreStages: 6 }).figures.stages).toEqual(exactly(6));
	});
});

/** Loss over output of a class at a part of its rating, with its usual switching: 6 ns at 500 kHz into 1.2 V. */
function lossShare({ fixed, ohm }: { readonly fixed: number; readonly ohm: number }, load: number): number {
	return fixed / load + ohm * load + (0.5 * inputVolts * 6e-9 * 500e3) / 1.2;
}

describe("efficiency curve of an integrated stage", () => {
	test.each(["better", "worse"] as const)("%s: goes through both points of its class", (which) => {
		const { peak, atLoad } = integratedEfficiency[which];
		expect(1 / (1 + lossShare(classCurve[which], 0.6))).toBeCloseTo(atLoad, 12);
		const best = Math.max(
			...Array.from({ length: 6000 }, (_, at) => 1 / (1 + lossShare(classCurve[which], (at + 1) / 10_000))),
		);
		expect(best).toBeCloseTo(peak, 6);
		expect(best).toBeLessThanOrEqual(peak + 1e-12);
	});

	// 1 / 0.95 - 1 - 0.015 = 0.0376316, 1 / 0.91 - 1 - 0.015 = 0.0839011; root of the difference of squares 0.0749884;
	// ohm = (0.0839011 + 0.0749884) / 1.2 = 0.1324079; fixed = 0.0376316 squared / 4 / 0.1324079 = 0.00267381.
	test("the better one worked by hand", () => {
		expect(classCurve.better.ohm).toBeCloseTo(0.1324079, 7);
		expect(classCurve.better.fixed).toBeCloseTo(0.00267381, 8);
	});

	const curveAt = (efficiencyPercent: number) => only({ stageKind: "integrated", efficiencyPercent }).figures;

	test.each([89, 89.5, 90, 90.5, 91])(
		"a known %s per cent narrows the rise of the curve inside its class",
		(percent) => {
			const { low, high } = curveAt(percent).curveOhm;
			expect(low).toBeGreaterThanOrEqual(classCurve.better.ohm);
			expect(high).toBeLessThanOrEqual(classCurve.worse.ohm);
			expect(high - low).toBeLessThan(classCurve.worse.ohm - classCurve.better.ohm);
			expect(low).toBeLessThanOrEqual(high);
		},
	);

	// At 90 %: 1 / 0.9 - 1 - 0.015 = 0.0961111. With a best of 95 %: (0.0961111 + root(0.0961111^2 - 0.0376316^2)) / 1.2
	// = 0.1537893. With 93 % (0.0602688): (0.0961111 + 0.0748674) / 1.2 = 0.1424821.
	test("90 % by hand", () => {
		expect(curveAt(90).curveOhm.low).toBeCloseTo(0.142482, 5);
		expect(curveAt(90).curveOhm.high).toBeCloseTo(0.153789, 5);
	});

	test.each([50, 80, 94, 97, 99.5])("a known %s per cent goes before the class", (percent) => {
		const { curveOhm, curveFixed } = curveAt(percent);
		expect(curveFixed).toEqual({ low: classCurve.better.fixed, high: classCurve.worse.fixed });
		expect(curveOhm.low).toBeGreaterThan(0);
		expect(curveOhm.low).toBeLessThanOrEqual(curveOhm.high);
		if (percent < 89) expect(curveOhm.low).toBeGreaterThan(classCurve.worse.ohm);
		else expect(curveOhm.high).toBeLessThan(classCurve.better.ohm);
	});

	test("a stage with a better efficiency has a lower curve", () => {
		for (const end of ["low", "high"] as const) {
			const rises = [99.5, 95, 93, 90.5, 90, 89.5, 80, 50].map((percent) => curveAt(percent).curveOhm[end]);
			expect(rises).toEqual([...rises].sort((one, other) => one - other));
		}
	});
});

describe("ends of a range", () => {
	// Rating and rise may help or harm, by the load and the temperature; see heat-cases.
	const groups = ["stages", "volts", "hertz", "fixed", "perAmp", "ohm"] as const satisfies readonly Group[];

	test.each(groups)("the hot end of %s never heats less, at any load and temperature", (group) => {
		fc.assert(
			fc.property(
				toldBoards,
				fc.double({ min: 1, max: 400, noNaN: true }),
				fc.double({ min: 30, max: 150, noNaN: true }),
				({ delivery }, loadW, stageC) => {
					for (const range of stageRangesOf(delivery))
						for (const others of ["cool", "hot"] as const) {
							const heats = (["cool", "hot"] as const).map((end) => {
								const { fixedW, wattsPerC } = stageHeat(
									settleStage(range, { ...everyEnd(others), [group]: end }),
									loadW,
								);
								return fixedW + wattsPerC * stageC;
							});
							const [cool = 0, hot = 0] = heats;
							expect(hot).toBeGreaterThanOrEqual(cool * (1 - 1e-12));
							if (range.open.includes(group) && !["stages", "ohm"].includes(group)) expect(hot).toBeGreaterThan(cool);
							else if (!range.open.includes(group)) expect(hot).toBe(cool);
						}
				},
			),
		);
	});

	test("a settled board has the figures of its ends", () => {
		const range = only({ stageKind: "separate switches", advertised: "12+2" });
		const [cool, hot] = [settleStage(range, everyEnd("cool")), settleStage(range, everyEnd("hot"))];
		expect([cool.stages, hot.stages]).toEqual([12, 6]);
		expect([cool.outputVolts, hot.outputVolts]).toEqual([1.3, 1.1]);
		expect([cool.risePerK, hot.risePerK]).toEqual([0.004, 0.006]);
		expect([cool.ohmC, hot.ohmC]).toEqual([25, 25]);
		const coil = (stage: typeof cool) => stage.causes.find(({ name }) => name === "coil");
		expect(coil(cool)).toMatchObject({ intoStage: 0, ripples: true, warms: false, ohm: 0.15e-3 });
		expect(coil(hot)?.ohm).toBeCloseTo(0.8e-3 * 1.3, 12);
		expect(coil(hot)?.intoStage).toBe(0.5);
		// 1.1 x (1 - 1.1 / 12) / (470 nH x 600 kHz) = 3.54314 A; 1.3 x (1 - 1.3 / 12) / (150 nH x 300 kHz) = 25.75926 A.
		expect(cool.rippleSquared).toBeCloseTo(3.54314 ** 2 / 12, 4);
		expect(hot.rippleSquared).toBeCloseTo(25.75926 ** 2 / 12, 4);
	});

	test("groups that differ are named, those that are known are not", () => {
		// An efficiency may leave nothing open of the resistance but the coil's part.
		const always: Group[] = ["volts", "fixed", "perAmp", "rise"];
		for (const stageKind of ["integrated", "separate switches"] as const) {
			const { open } = only({ ...wholeBoard, stageKind });
			expect(open).toEqual(expect.arrayContaining(always));
			for (const group of ["stages", "rating", "hertz"] as const) expect(open).not.toContain(group);
		}
		expect(only({ stageKind: "integrated" }).open).toEqual(expect.arrayContaining(["stages", "rating", "hertz"]));
		expect(only({ stageKind: "separate switches" }).open).not.toContain("rating");
	});

	test("the curve of an integrated stage holds where it is warm already: its resistance rises from there", () => {
		const hot = settleStage(only({ stageKind: "integrated" }), everyEnd("hot"));
		expect(hot.ohmC).toBe(50);
		// 0.6 % of the resistance at 25 degrees C is 0.006 / 1.15 of that at 50.
		expect(hot.risePerK).toBeCloseTo(0.0052173913, 9);
	});
});

test("what a stage of the class carries when another one rests is a current that stages have", () => {
	fc.assert(
		fc.property(toldBoards, ({ board }) => {
			const amps = thriftiestAmps(board.stages);
			expect(amps).toBeGreaterThan(2);
			expect(amps).toBeLessThan(40);
		}),
	);
});
