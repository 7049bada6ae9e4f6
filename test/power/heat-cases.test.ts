import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { exactly } from "../../src/maths/interval.ts";
import { estimatedCases, type HeatCase, hotSpotOf, loadToReach, measuredCases } from "../../src/power/heat-cases.ts";
import { airMoving, stillAirPath } from "../../src/power/heat-path-range.ts";
import { type Delivery, stageRangesOf } from "../../src/power/stage-range.ts";
import { comfortableC, holdingBackC } from "../../src/reference/activity-loads.ts";
import { hotSpotByRepeating, type TrueStages } from "./heat-oracle.ts";
import { drawnTests, settledByDraw, testOf, toldBoards } from "./random-board.ts";

const alone = (one: HeatCase) => ({ cool: [one], hot: [one] });
const still = exactly(0);
const allDay = Number.POSITIVE_INFINITY;

describe("temperature and load", () => {
	test("agree: the load that reaches a line has the temperature of the line, for every single case", () => {
		const inputs = fc.record({
			told: toldBoards,
			drawn: drawnTests,
			airC: fc.double({ min: 20, max: 60, noNaN: true }),
			line: fc.constantFrom(comfortableC, holdingBackC),
			minutes: fc.constantFrom(8, 60, allDay),
		});
		fc.assert(
			fc.property(inputs, ({ told, drawn, airC, line, minutes }) => {
				const [ranges, moving] = [stageRangesOf(told.delivery), airMoving(told.air)];
				const made = testOf(told, 150, drawn);
				const all = [estimatedCases(ranges, stillAirPath(told.delivery), moving, minutes)];
				if (made) all.push(measuredCases(ranges.slice(0, 1), made, moving, minutes));
				for (const { cool, hot } of all)
					for (const one of [...cool, ...hot]) {
						const { low, high } = loadToReach(alone(one), line, exactly(airC));
						expect(low).toBe(high);
						expect(low).toBeGreaterThan(0);
						const there = hotSpotOf(alone(one), exactly(low), exactly(airC));
						expect(there.low).toBe(there.high);
						expect(Math.abs(there.low - line)).toBeLessThan(0.01);
					}
			}),
			{ numRuns: 30 },
		);
	});

	test("air that is past the line leaves no load", () => {
		fc.assert(
			fc.property(settledByDraw, ({ settled }) => {
				const cases = alone({ stage: settled, kelvinPerWatt: 2 });
				expect(loadToReach(cases, 90, exactly(90))).toEqual(exactly(0));
				expect(loadToReach(cases, 90, exactly(120))).toEqual(exactly(0));
				expect(loadToReach(cases, 90, { low: 40, high: 95 }).low).toBe(0);
				expect(loadToReach(cases, 90, { low: 40, high: 95 }).high).toBeGreaterThan(0);
			}),
		);
	});

	test("the low end comes of the cool cases, least load and coolest air; the high end of the hot, most and warmest", () => {
		fc.assert(
			fc.property(settledByDraw, settledByDraw, (one, other) => {
				const [cool, hot] = [
					{ stage: one.settled, kelvinPerWatt: 0.6 },
					{ stage: other.settled, kelvinPerWatt: 0.9 },
				];
				const [watts, air] = [
					{ low: 60, high: 90 },
					{ low: 30, high: 45 },
				];
				const range = hotSpotOf({ cool: [cool], hot: [hot] }, watts, air);
				expect(range.low).toBe(hotSpotOf(alone(cool), exactly(60), exactly(30)).low);
				expect(range.high).toBe(hotSpotOf(alone(hot), exactly(90), exactly(45)).high);
				const loads = loadToReach({ cool: [cool], hot: [hot] }, 90, air);
				expect(loads.low).toBe(loadToReach(alone(hot), 90, exactly(45)).low);
				expect(loads.high).toBe(loadToReach(alone(cool), 90, exactly(30)).high);
				const both = { cool: [cool, hot], hot: [cool, hot] };
				const each = [cool, hot].map((one) => hotSpotOf(alone(one), exactly(60), exactly(30)).low);
				expect(hotSpotOf(both, exactly(60), exactly(30))).toEqual({ low: Math.min(...each), high: Math.max(...each) });
				const reach = [cool, hot].map((one) => loadToReach(alone(one), 90, exactly(30)).low);
				expect(loadToReach(both, 90, exactly(30))).toEqual({ low: Math.min(...reach), high: Math.max(...reach) });
			}),
		);
	});
});

const board: Delivery = { coreStages: 8, stageKind: "separate switches", heatSink: "none", layers: 6, copperOz: 1 };

describe("the estimate", () => {
	const casesOf = (delivery: Delivery, moving = still, minutes = allDay) =>
		estimatedCases(stageRangesOf(delivery), stillAirPath(delivery), moving, minutes);
	const waysOf = (cases: readonly HeatCase[]) => [...new Set(cases.map(({ kelvinPerWatt }) => kelvinPerWatt))];

	// Copper of 46.6 and 70.25 K/W a stage, eight of them: 5.825 and 8.78125 K/W.
	test("takes the better way with the cooler stages and the worse with the hotter", () => {
		const { cool, hot } = casesOf(board);
		expect(waysOf(cool)).toEqual([5.825]);
		expect(waysOf(hot)).toEqual([8.78125]);
		expect(new Set(cool.map(({ stage }) => stage.outputVolts))).toEqual(new Set([1.3]));
		expect(new Set(hot.map(({ stage }) => stage.outputVolts))).toEqual(new Set([1.1]));
		for (const cases of [cool, hot])
			expect(new Set(cases.map(({ stage }) => stage.risePerK))).toEqual(new Set([0.004, 0.006]));
	});

	// Air as in 200 ft/min: 0.592593 to 0.753086; from 0.4 to 1: 0.592593 and 0.753086 ^ 0.4 = 0.892767.
	test("lets moving air cool as well and as little as it may", () => {
		const { cool, hot } = casesOf(board, { low: 0.4, high: 1 });
		expect(waysOf(cool)[0]).toBeCloseTo(5.825 * 0.592593, 5);
		expect(waysOf(hot)[0]).toBeCloseTo(8.78125 * 0.892767, 5);
	});

	// After 8 minutes: 1 - exp(-8 / 15) = 0.413354 at the least, 1 - exp(-8 / 5) = 0.798103 at the most.
	test("warms up in a short session as slowly and as fast as it may", () => {
		const { cool, hot } = casesOf(board, still, 8);
		expect(waysOf(cool)[0]).toBeCloseTo(5.825 * 0.413354, 5);
		expect(waysOf(hot)[0]).toBeCloseTo(8.78125 * 0.798103, 5);
	});

	test("takes a resistance that a page gives for the air as it is, but warms up by it", () => {
		const given = { ...board, thermalResistanceKPerW: 2 };
		const { cool, hot } = casesOf(given, { low: 0.4, high: 1.5 });
		expect([...waysOf(cool), ...waysOf(hot)]).toEqual([2, 2]);
		expect(waysOf(casesOf(given, still, 8).hot)[0]).toBeCloseTo(2 * 0.798103, 5);
	});

	test("counts both kinds of stage where the kind is not known", () => {
		const { stageKind: _, ...unknown } = board;
		const names = casesOf(unknown).hot.map(({ stage }) => stage.causes.map(({ name }) => name).join());
		expect(new Set(names).size).toBe(2);
	});

	test("has the number of stages that goes with each way", () => {
		const { coreStages: _, ...unknown } = { ...board, advertised: "12+2" };
		const { cool, hot } = casesOf(unknown);
		for (const one of cool) expect([one.stage.stages, one.kelvinPerWatt]).toEqual([12, 46.6 / 12]);
		for (const one of hot) expect([one.stage.stages, one.kelvinPerWatt]).toEqual([6, 70.25 / 6]);
	});
});

describe("what a test proves", () => {
	const test60 = { loadW: 120, airC: 22, stageC: 80, minutes: 10_000, measuredAt: "top of a stage" } as const;
	const moving = { low: 0, high: 1, called: "unknown" } as const;

	test("is told for every corner of what is open, each with the resistance that it proves", () => {
		const ranges = stageRangesOf(board);
		const open = ranges[0]?.open.length ?? 0;
		const { cool, hot } = measuredCases(ranges, test60, moving, allDay);
		expect(cool).toHaveLength(2 ** open);
		expect(hot).toHaveLength(2 ** open);
		expect(new Set(cool.map(({ stage }) => JSON.stringify(stage))).size).toBe(2 ** open);
		for (const [at, one] of cool.entries()) {
			expect(one.stage).toEqual(hot[at]?.stage);
			expect(one.kelvinPerWatt).toBeLessThan(hot[at]?.kelvinPerWatt ?? 0);
		}
	});

	// In the test the inside was 78 to 87 degrees C over air of 22 to 32 degrees C; the air of the build is 16 / 27 of the
	// resistance to 27 / 16 of it. What stages lose is theirs, so no corner may leave the test.
	test("each corner, put back into the test, has what was measured", () => {
		for (const { stage, kelvinPerWatt } of measuredCases(stageRangesOf(board), test60, moving, allDay).hot) {
			const inTest = { stage, kelvinPerWatt: kelvinPerWatt * (16 / 27) };
			expect(hotSpotOf(alone(inTest), exactly(120), exactly(22)).low).toBeCloseTo(87, 6);
		}
		for (const { stage, kelvinPerWatt } of measuredCases(stageRangesOf(board), test60, moving, allDay).cool) {
			const inTest = { stage, kelvinPerWatt: kelvinPerWatt * (27 / 16) };
			expect(hotSpotOf(alone(inTest), exactly(120), exactly(32)).low).toBeCloseTo(78, 6);
		}
	});

	// A warmer build raises the resistance of the switches only, so that the worst is a board with poor switches and good
	// coils. 200 W in both, 10 degrees C in the test and 50 in the build.
	test("holds stages whose switches are poor and whose coils are good", () => {
		const stages: TrueStages = {
			kind: "separate switches",
			stages: 8,
			coreVolts: 1.1,
			kilohertz: 300,
			switchNs: 10,
			highSwitchMohm: 9.8,
			lowSwitchMohm: 9.8,
			lowSwitches: 2,
			deadNs: 40,
			diodeVolts: 0.5,
			gateNc: 34,
			ohmRisePerK: 0.006,
			ratingA: 0,
			curveFixed: 0,
			curveOhm: 0,
			coilMohm: 0.8,
			coilWarmth: 1,
			coilNh: 220,
			coilHeatShare: 0,
		};
		const told: Delivery = {
			coreStages: 8,
			stageKind: "separate switches",
			switchingKhz: 300,
			lowSwitchesPerStage: 2,
			coilMohm: 0.8,
			coilNh: 220,
		};
		const insideC = hotSpotByRepeating(stages, 200, 10, 1.5 * (16 / 27));
		const truth = hotSpotByRepeating(stages, 200, 50, 1.5);
		// The inside is at most 5 K hotter than the top, and the reading 2 K too low.
		const made = { ...test60, loadW: 200, airC: 10, stageC: insideC - 5 - 2 };
		const cases = measuredCases(stageRangesOf(told), made, moving, allDay);
		expect(truth).toBeCloseTo(108.83, 1);
		expect(hotSpotOf(cases, exactly(200), exactly(50)).high).toBeGreaterThan(truth - 0.1);
	});
});
