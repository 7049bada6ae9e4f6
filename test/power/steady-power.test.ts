import { describe, expect, test } from "vitest";
import type { UseOfProcessor } from "../../src/power/counted-watts.ts";
import type { Measurement } from "../../src/power/measured-path.ts";
import type { Delivery } from "../../src/power/stage-range.ts";
import { type PowerVerdict, type SteadyPower, steadyPowerOf, verdictOf } from "../../src/power/steady-power.ts";

const air = { summerRoom: "warm", frontOpen: "slits", coolerKind: "air", caseFans: 2 } as const;
const board = {
	coreStages: 8,
	stageKind: "integrated",
	stageRatingA: 60,
	switchingKhz: 500,
	coilMohm: 0.2,
	coilNh: 150,
	heatSink: "both sides",
	layers: 6,
	copperOz: 1,
} as const satisfies Delivery;

function powerOf(delivery: Delivery, use: UseOfProcessor, inAir: Parameters<typeof steadyPowerOf>[0]["air"] = air) {
	const power = steadyPowerOf({ delivery, use, air: inAir });
	if (!power) throw new Error("The watts of the processor are known here.");
	return power;
}

// Lines at 90 and 105 degrees C; 15 K to spare are plenty.
describe("verdict", () => {
	test.each<[number, number, SteadyPower["beyondRating"], PowerVerdict]>([
		[30, 75, null, "ample"],
		[30, 75.01, null, "enough"],
		[89, 90, null, "enough"],
		[90, 90, null, "enough"],
		[30, 90.01, null, "tight"],
		[90, 104.99, null, "tight"],
		[30, 105, null, "cannot tell"],
		[90, Number.POSITIVE_INFINITY, null, "cannot tell"],
		[90.01, 91, null, "tight"],
		[90.01, 200, null, "tight"],
		[104.99, 106, null, "tight"],
		[105, 105, null, "not enough"],
		[105, 120, null, "not enough"],
		[Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY, null, "not enough"],
		[30, 40, "at the peak", "tight"],
		[30, 90, "at the peak", "tight"],
		[30, 90.01, "at the peak", "tight"],
		[30, 105, "at the peak", "cannot tell"],
		[95, 100, "at the peak", "tight"],
		[105, 110, "at the peak", "not enough"],
		[30, 40, "steadily", "not enough"],
		[30, 120, "steadily", "not enough"],
		[95, 100, "steadily", "not enough"],
	])("%s to %s degrees C, beyond the rating %s: %s", (low, high, beyond, verdict) => {
		expect(verdictOf({ low, high }, beyond)).toBe(verdict);
	});

	test("is that of the range and the rating", () => {
		const power = powerOf(board, { sustainedW: 60 });
		expect(power.verdict).toBe(verdictOf(power.hotSpotC, null));
		expect(power.verdict).toBe("ample");
		expect(powerOf({ ...board, stageRatingA: 5 }, { sustainedW: 60 }).verdict).toBe("not enough");
	});
});

describe("a stage beyond its rating", () => {
	// Only what is certain: most stages, most volts. 4 x 30 A x 1.3 V = 156 W; 24 stages make 936 W.
	const four: Delivery = { coreStages: 4, stageRatingA: 30 };

	test.each<[Delivery, UseOfProcessor, SteadyPower["beyondRating"]]>([
		[four, { sustainedW: 155.9 }, null],
		[four, { sustainedW: 156.1 }, "steadily"],
		[four, { sustainedW: 100, peakW: 155.9 }, null],
		[four, { sustainedW: 100, peakW: 156.1 }, "at the peak"],
		[four, { sustainedW: 156.1, peakW: 300 }, "steadily"],
		// 100 to 300 W by the label alone: it may stay below.
		[four, { baseW: 100 }, null],
		[four, { baseW: 156.1, limitPolicy: "timed-boost" }, "steadily"],
		[{ advertised: "8+2", stageRatingA: 15 }, { sustainedW: 155.9 }, null],
		[{ advertised: "8+2", stageRatingA: 15 }, { sustainedW: 156.1 }, "steadily"],
		[{ stageRatingA: 30 }, { sustainedW: 935.9 }, null],
		[{ stageRatingA: 30 }, { sustainedW: 936.1 }, "steadily"],
		[{ coreStages: 1 }, { sustainedW: 400 }, null],
	])("%o with %o: %s", (delivery, use, beyond) => {
		expect(powerOf(delivery, use).beyondRating).toBe(beyond);
	});

	test("is told by what the activities take, not by full load", () => {
		expect(powerOf(four, { sustainedW: 200, activities: ["building"] }).beyondRating).toBe("steadily");
		expect(powerOf(four, { sustainedW: 200, activities: ["games"] }).beyondRating).toBeNull();
	});
});

describe("figures of a board", () => {
	test("are none where nothing is known of the watts", () => {
		expect(steadyPowerOf({ delivery: board, use: {}, air })).toBeNull();
	});

	const power = powerOf(board, { sustainedW: 132 });

	test("tell the watts and the air that were counted", () => {
		expect(power.watts).toEqual({ low: 132, high: 132 });
		expect(power.airC).toEqual({ low: 40, high: 40 });
	});

	test("leave to the comfortable line what is left of 90 degrees C", () => {
		expect(power.spareK.low).toBeCloseTo(90 - power.hotSpotC.high, 12);
		expect(power.spareK.high).toBeCloseTo(90 - power.hotSpotC.low, 12);
	});

	// 4.4 / 8 + 20.42258 / 6 beside 46.6 / 8 is 2.35520 K/W, at best 0.684211 of it; 4.08521 and 0.892767 at worst.
	test("lead the heat away by copper and sinks, in moving air", () => {
		expect(power.kelvinPerWatt.low).toBeCloseTo(2.3552 * 0.684211, 4);
		expect(power.kelvinPerWatt.high).toBeCloseTo(4.08521 * 0.892767, 4);
	});

	// 1.1 V x (1 - 1.1 / 12) / (220 nH x 500 kHz) and the same at 1.3 V, if the board says 220 nH and 500 kHz.
	test("tell the ripple of a coil, and what the controller's phases leave of it", () => {
		const { ripple } = powerOf({ ...board, coilNh: 220, switchingKhz: 500, controllerPhases: 8 }, { sustainedW: 120 });
		expect(ripple.coilA.low).toBeCloseTo((1.1 * (1 - 1.1 / 12)) / 0.11, 9);
		expect(ripple.coilA.high).toBeCloseTo((1.3 * (1 - 1.3 / 12)) / 0.11, 9);
		// 8 phases: 8 x 1.1 / 12 = 0.733 and 0.867 of the way to the first cancellation; the share falls on that way.
		expect(ripple.leftAtOutput?.high).toBeCloseTo(
			(8 * (1.1 / 12) * (1 / 8 - 1.1 / 12)) / ((1.1 / 12) * (1 - 1.1 / 12)),
			9,
		);
		expect(ripple.leftAtOutput?.low).toBeCloseTo(
			(8 * (1.3 / 12) * (1 / 8 - 1.3 / 12)) / ((1.3 / 12) * (1 - 1.3 / 12)),
			9,
		);
		const { controllerPhases: _, ...silent } = { ...board, controllerPhases: 8 };
		expect(powerOf(silent, { sustainedW: 120 }).ripple.leftAtOutput).toBeNull();
	});

	// 8 stages of a rating of 60 A at 1.1 to 1.3 V, as the board says.
	test("name what all stages are rated for, where a page tells it", () => {
		const { coreStages = 0, stageRatingA = 0 } = board;
		const { ratedW } = powerOf(board, { sustainedW: 120 });
		expect(ratedW?.low).toBeCloseTo(coreStages * stageRatingA * 1.1, 9);
		expect(ratedW?.high).toBeCloseTo(coreStages * stageRatingA * 1.3, 9);
		const { stageRatingA: _, ...unrated } = board;
		expect(powerOf(unrated, { sustainedW: 120 }).ratedW).toBeNull();
	});

	test("count a test only where it can be right, and lasts, and heats", () => {
		const counted = (change: object) =>
			powerOf({ ...board, measurements: [{ loadW: 120, airC: 22, stageC: 50, ...change }] }, { sustainedW: 120 })
				.measured;
		expect(counted({})).not.toBeNull();
		for (const change of [{ stageC: 22 }, { stageC: 15 }, { minutes: 4.9 }, { loadW: 9.9 }])
			expect(counted(change)).toBeNull();
		for (const change of [{ stageC: 22.1 }, { minutes: 5 }, { loadW: 10 }]) expect(counted(change)).not.toBeNull();
	});

	test("are even: the rise over the air is resistance times heat, at both ends", () => {
		for (const end of ["low", "high"] as const)
			expect(power.hotSpotC[end] - 40).toBeCloseTo(power.kelvinPerWatt[end] * power.heatW[end], 9);
	});

	test("tell one stage at either end, and what all of them lose", () => {
		for (const [stage, end] of [
			[power.coolest, "low"],
			[power.hottest, "high"],
		] as const) {
			const lost = stage.working * stage.watts.reduce((sum, { watts }) => sum + watts, 0);
			expect(power.lossW[end]).toBeCloseTo(lost, 9);
			expect(power.lossW[end]).toBeGreaterThanOrEqual(power.heatW[end]);
			const other = end === "low" ? "high" : "low";
			expect(power.efficiency[other]).toBeCloseTo(132 / (132 + power.lossW[end]), 12);
		}
		expect(power.hottest.amps).toBeCloseTo(132 / 1.1 / 8, 9);
		expect(power.coolest.amps).toBeCloseTo(132 / 1.3 / 8, 9);
	});

	// Half of the coil's heat goes into the stage at the hot end, none at the cool end.
	test("count the coil's heat in full as lost, and by its share as heat", () => {
		const coil = (stage: SteadyPower["hottest"]) => stage.watts.find(({ name }) => name === "coil")?.watts ?? 0;
		expect(power.lossW.high - power.heatW.high).toBeCloseTo(8 * 0.5 * coil(power.hottest), 9);
		expect(power.lossW.low - power.heatW.low).toBeCloseTo(8 * coil(power.coolest), 9);
	});

	test("count a stage past every limit as one of 150 degrees C, so that heat has an end", () => {
		const burning = powerOf({ coreStages: 2, stageKind: "separate switches", heatSink: "none" }, { sustainedW: 300 });
		expect(burning.hotSpotC.high).toBe(Number.POSITIVE_INFINITY);
		expect(Number.isFinite(burning.heatW.high)).toBe(true);
		expect(burning.verdict).toBe("not enough");
	});

	test("have the lost watts in order even where odd coils lose most of them", () => {
		const { lossW, efficiency } = powerOf({ switchingKhz: 50, coilNh: 10 }, { sustainedW: 1 }, {});
		expect(lossW.low).toBeLessThanOrEqual(lossW.high);
		expect(efficiency.low).toBeLessThanOrEqual(efficiency.high);
	});

	test("keep what was worked out: a second look is the same", () => {
		expect(power.hotSpotC).toBe(power.hotSpotC);
		expect(power.coolest).toBe(power.coolest);
	});

	test("tell the boost of the processor", () => {
		expect(power.boost).toBeNull();
		expect(powerOf(board, { peakW: 180, limitPolicy: "fixed" }).boost).toMatchObject({ peakW: 180, after: "holds" });
	});

	// With coils of 0.8 mohm that warm the stages, a larger rating costs more at light load than it saves.
	test("leave open the rating that heats most: 90 A is not left out by not knowing it", () => {
		const bare: Delivery = {
			coreStages: 12,
			stageKind: "integrated",
			heatSink: "none",
			layers: 4,
			copperOz: 1,
			coilMohm: 0.8,
			switchingKhz: 600,
		};
		const inAir = { ...air, coolerKind: "liquid" } as const;
		const open = powerOf(bare, { sustainedW: 95 }, inAir).hotSpotC;
		const rated = powerOf({ ...bare, stageRatingA: 90 }, { sustainedW: 95 }, inAir).hotSpotC;
		expect(open.high).toBeGreaterThanOrEqual(rated.high - 1e-9);
	});
});

describe("with tests", () => {
	const bench: Measurement = {
		loadW: 150,
		airC: 22,
		stageC: 50,
		airflow: "case fans",
		minutes: 60,
		measuredAt: "top of a stage",
	};
	const withTests = (measurements: Measurement[], sustainedW = 150) =>
		powerOf({ ...board, measurements }, { sustainedW });
	const estimate = powerOf(board, { sustainedW: 150 });

	test("none: nothing was measured", () => {
		expect(estimate.measured).toBeNull();
		expect(withTests([]).measured).toBeNull();
		expect(withTests([]).hotSpotC).toEqual(estimate.hotSpotC);
	});

	test("one that agrees leaves what both allow, and the estimate is still told", () => {
		const { measured, hotSpotC, kelvinPerWatt, comfortableW, holdingBackW } = withTests([bench]);
		expect(measured).toMatchObject({ test: bench, estimateC: estimate.hotSpotC, agrees: true });
		expect(hotSpotC.low).toBeGreaterThanOrEqual(estimate.hotSpotC.low);
		expect(hotSpotC.high).toBeLessThan(estimate.hotSpotC.high - 5);
		expect(kelvinPerWatt.low).toBeGreaterThanOrEqual(estimate.kelvinPerWatt.low);
		expect(kelvinPerWatt.high).toBeLessThanOrEqual(estimate.kelvinPerWatt.high);
		expect(comfortableW.low).toBeGreaterThan(estimate.comfortableW.low);
		expect(holdingBackW.low).toBeGreaterThan(estimate.holdingBackW.low);
	});

	test("one that does not agree goes before the estimate", () => {
		for (const [loadW, stageC] of [
			[2000, 24],
			[60, 190],
		]) {
			const power = withTests([{ ...bench, loadW: loadW ?? 0, stageC: stageC ?? 0 }]);
			expect(power.measured?.agrees).toBe(false);
			const outside = power.hotSpotC.high < estimate.hotSpotC.low || power.hotSpotC.low > estimate.hotSpotC.high;
			expect(outside).toBe(true);
		}
	});

	// The inside had 48 to 57 degrees C over air of 22 to 30: a rise of 18 to 35 K. In like air for as long, the build's
	// rise over 40 degrees C is at least 0.877383 x 18 K by what stays the same, and a little more as switches warm.
	test("tells of a build at the same load what it measured", () => {
		const cold = withTests([{ ...bench, minutes: 10_000 }]).hotSpotC;
		expect(cold.low).toBeGreaterThan(40 + 0.877383 * 18);
		expect(cold.low).toBeLessThan(40 + 0.877383 * 18 * 1.15);
		expect(cold.high).toBeLessThanOrEqual(estimate.hotSpotC.high);
	});

	test("of several the nearest load has the last word; of two as near the one under more load", () => {
		const at = (loadW: number, stageC = 50) => ({ ...bench, loadW, stageC });
		expect(withTests([at(100), at(160), at(220)]).measured?.test.loadW).toBe(160);
		expect(withTests([at(140), at(160)]).measured?.test.loadW).toBe(160);
		expect(withTests([at(160), at(140)]).measured?.test.loadW).toBe(160);
		expect(withTests([at(100), at(160)], 120).measured?.test.loadW).toBe(100);
		// Far off and contradicting: the nearest one is believed, by itself at least.
		const nearest = withTests([at(150, 50)]);
		const both = withTests([at(300, 30), at(150, 50)]);
		expect(both.hotSpotC.low).toBe(nearest.hotSpotC.low);
		expect(both.hotSpotC.high).toBe(nearest.hotSpotC.high);
	});

	// A range of temperatures and one of watts tell the same thing: within the line is no more than the load to the line.
	test.each<[number, number, Measurement["airflow"]]>([
		[150, 50, "case fans"],
		[100, 90, "still"],
		[150, 95, "blown at"],
	])("tell the same by watts as by temperature: %s W and %s degrees C, %s", (loadW, stageC, airflow = "still") => {
		const { hotSpotC, comfortableW } = withTests([{ ...bench, loadW, stageC, airflow }], 100);
		if (hotSpotC.high <= 90) expect(comfortableW.low).toBeGreaterThanOrEqual(100);
		else expect(comfortableW.low).toBeLessThanOrEqual(100);
		if (hotSpotC.low <= 90) expect(comfortableW.high).toBeGreaterThanOrEqual(100);
		else expect(comfortableW.high).toBeLessThanOrEqual(100);
	});

	test("is told with the watts that may be needed most", () => {
		const use = { baseW: 100, peakW: 200 };
		const measured = [100, 200].map((loadW) => ({ ...bench, loadW }));
		expect(powerOf({ ...board, measurements: measured }, use).measured?.test.loadW).toBe(200);
	});
});

describe("what is missing", () => {
	const missing = (delivery: Delivery, use: UseOfProcessor = { sustainedW: 100 }) => powerOf(delivery, use).missing;
	const aTest: Measurement = { loadW: 100, airC: 25, stageC: 60, minutes: 30, airflow: "still" };

	test("are the main facts that no page gives, in their order; a list of no tests is no test", () => {
		expect(missing({ measurements: [] })).toEqual(
			["coreStages", "stageKind", "heatSink", "measurements"].map((fact) => `board.powerDelivery.${fact}`),
		);
		expect(missing({ stageKind: "integrated", measurements: [aTest] })).toEqual([
			"board.powerDelivery.coreStages",
			"board.powerDelivery.heatSink",
		]);
	});

	test("is another test where all is given", () => {
		expect(missing({ ...board, measurements: [aTest] })).toEqual(["board.powerDelivery.measurements"]);
	});

	test("are the watts held for hours, where only a range of them is known and no page gives them", () => {
		const given: Delivery = { ...board, measurements: [aTest] };
		expect(missing(given, { baseW: 100 })).toEqual(["processor.sustainedW"]);
		expect(missing(given, { peakW: 100, limitPolicy: "fixed" })).not.toContain("processor.sustainedW");
		const raised = { sustainedW: 100, raisesClock: true };
		expect(powerOf(given, raised).watts.high).toBeGreaterThan(powerOf(given, raised).watts.low);
		expect(missing(given, raised)).not.toContain("processor.sustainedW");
	});
});

describe("assumptions", () => {
	test("name every fact of board and build that is missing, and none that is known", () => {
		const facts = (delivery: Delivery, inAir: Parameters<typeof powerOf>[2]) =>
			powerOf(delivery, { sustainedW: 100 }, inAir).assumptions.flatMap(({ fact }) => fact ?? []);
		expect(facts({ ...board, efficiencyPercent: 90 }, air)).toEqual([]);
		expect([...new Set(facts({}, {}))].sort()).toEqual(
			[
				...[
					"coilMohm",
					"coilNh",
					"copperOz",
					"coreStages",
					"efficiencyPercent",
					"heatSink",
					"highSwitchMohm",
					"lowSwitchMohm",
					"lowSwitchesPerStage",
					"stageKind",
					"stageRatingA",
					"switchingKhz",
				].map((fact) => `board.powerDelivery.${fact}`),
				"case.frontOpen",
				"cooler.kind",
				"summerRoom",
			].sort(),
		);
		expect(facts(board, { ...air, coolerKind: "liquid", caseFans: undefined })).toContain("caseFans");
	});

	test("are told once, though two kinds of stage share them", () => {
		const all = powerOf({}, { sustainedW: 100 }, {}).assumptions.map(({ what, low, high }) => `${what} ${low} ${high}`);
		expect(new Set(all).size).toBe(all.length);
		expect(all.filter((one) => one.startsWith("switching time"))).toHaveLength(2);
	});

	test.each<[Parameters<typeof powerOf>[2], string]>([
		[air, "a cooler with a fan sends air over the board"],
		[{ ...air, coolerKind: "liquid" }, "a liquid cooler sends no air over the board"],
		[{}, "the cooler is not known"],
		[{ ...air, caseFans: 0 }, "a cooler with a fan sends air over the board, and the case has no fan"],
	])("say of the air over the stages, %o: %s", (inAir, because) => {
		const moving = powerOf(board, { sustainedW: 100 }, inAir).assumptions.find(
			({ what }) => what === "air over the stages",
		);
		expect(moving?.because).toBe(because);
	});
});
