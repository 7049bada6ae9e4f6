import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { summerRooms } from "../../src/parts/wants.ts";
import type { UseOfProcessor } from "../../src/power/counted-watts.ts";
import type { AirOfBuild } from "../../src/power/heat-path-range.ts";
import type { Delivery } from "../../src/power/stage-range.ts";
import { type SteadyPower, steadyPowerOf } from "../../src/power/steady-power.ts";
import { comfortableC, holdingBackC, sessionMinutes } from "../../src/reference/activity-loads.ts";
import { sinksWorth } from "../../src/reference/heat-paths.ts";
import { heatOfAll, hotSpotByRepeating, loadByHalving, thriftiestAmps } from "./heat-oracle.ts";
import {
	airFacts,
	between,
	boardFacts,
	drawnTests,
	isNoHotter,
	liesIn,
	strangeDeliveries,
	type ToldBoard,
	testOf,
	toldBoards,
	trueKPerW,
	uses,
} from "./random-board.ts";

/** The steady power of a board whose processor's watts are known. */
function powerOf(delivery: Delivery, use: UseOfProcessor, air: AirOfBuild = {}): SteadyPower {
	const power = steadyPowerOf({ delivery, use, air });
	if (!power) throw new Error("The watts of the processor are known here.");
	return power;
}

const only = (value: number) => ({ low: value, high: value });

/** Loads from next to nothing, where stages rest, to more than any board is made for; in W. */
const loads = fc.oneof(fc.double({ min: 1, max: 40, noNaN: true }), fc.double({ min: 1, max: 400, noNaN: true }));

/** Holds both what the stages of one true board have, and the loads that bring them to the lines. */
function holdsTruth(power: SteadyPower, { board }: ToldBoard, minutes: number, slackK = 1e-6): void {
	const kelvinPerWatt = trueKPerW(board, minutes);
	const loadW = between(power.watts, board.loadAt);
	const thriftiest = thriftiestAmps(board.stages);
	const truth = hotSpotByRepeating(board.stages, loadW, board.airC, kelvinPerWatt, thriftiest);
	expect({ truth, range: power.hotSpotC, holds: liesIn(only(truth), power.hotSpotC, slackK) }).toHaveProperty(
		"holds",
		true,
	);
	expect(liesIn(only(kelvinPerWatt), power.kelvinPerWatt, slackK * kelvinPerWatt)).toBe(true);
	if (truth < 150)
		expect(liesIn(only(heatOfAll(board.stages, loadW, truth, thriftiest)), power.heatW, slackK)).toBe(true);
	for (const [line, range] of [
		[comfortableC, power.comfortableW],
		[holdingBackC, power.holdingBackW],
	] as const) {
		const watts = loadByHalving(board.stages, line, board.airC, kelvinPerWatt, thriftiest);
		const slack = (slackK / 50) * watts;
		expect({ line, watts, range, holds: watts >= range.low - slack && watts <= range.high + slack }).toHaveProperty(
			"holds",
			true,
		);
	}
}

describe("any board inside the assumptions", () => {
	test("lies in the range told, and so do its loads at both lines, whatever is known of it", () => {
		fc.assert(
			fc.property(toldBoards, uses, (told, use) => {
				// A told resistance to air holds once the board is warm.
				holdsTruth(powerOf(told.delivery, use, told.air), told, sessionMinutes[use.sessionLength ?? "all-day"]);
			}),
			{ numRuns: 1000 },
		);
	});

	test("lies in the range told under light loads, where stages rest", () => {
		fc.assert(
			fc.property(toldBoards, fc.double({ min: 1, max: 100, noNaN: true }), (told, sustainedW) => {
				holdsTruth(powerOf(told.delivery, { sustainedW }, told.air), told, sessionMinutes["all-day"]);
			}),
			{ numRuns: 300 },
		);
	});

	test("lies in the range that a fair test of it leaves", () => {
		fc.assert(
			fc.property(toldBoards, uses, drawnTests, (told, use, drawn) => {
				fc.pre(!told.isGiven);
				const minutes = sessionMinutes[use.sessionLength ?? "all-day"];
				const loadW = between(powerOf(told.delivery, use, told.air).watts, told.board.loadAt);
				const made = testOf(told, loadW, drawn);
				fc.pre(made !== null);
				if (!made) return;
				// A test that cannot be right, or says nothing, does not count.
				fc.pre(made.loadW >= 10 && (made.minutes ?? 60) >= 5 && made.stageC > made.airC);
				const power = powerOf({ ...told.delivery, measurements: [made] }, use, told.air);
				expect(power.measured?.agrees).toBe(true);
				// Between the corners the bounds bulge by a few thousandths of a kelvin, once in some ten thousand boards.
				holdsTruth(power, told, minutes, 0.1);
			}),
			{ numRuns: 1000 },
		);
	});
});

describe("never hotter", () => {
	test("with one stage more, at any load", () => {
		fc.assert(
			fc.property(toldBoards, loads, fc.integer({ min: 1, max: 63 }), (told, sustainedW, coreStages) => {
				const of = (count: number) =>
					powerOf({ ...told.delivery, coreStages: count }, { sustainedW }, told.air).hotSpotC;
				expect(isNoHotter(of(coreStages + 1), of(coreStages))).toBe(true);
			}),
			{ numRuns: 300 },
		);
	});

	test("with a larger heat sink", () => {
		fc.assert(
			fc.property(toldBoards, loads, ({ delivery, air, isGiven }, sustainedW) => {
				const sinks = ["none", "one side", "both sides", "both sides with heat pipe", "finned"] as const;
				expect([...sinks].sort()).toEqual(Object.keys(sinksWorth).sort());
				const ranges = sinks.map((heatSink) => powerOf({ ...delivery, heatSink }, { sustainedW }, air).hotSpotC);
				for (const [at, range] of ranges.slice(1).entries()) {
					const smaller = ranges[at] ?? range;
					expect(isNoHotter(range, smaller)).toBe(true);
					if (!isGiven && Number.isFinite(smaller.low)) expect(range.low).toBeLessThan(smaller.low);
				}
			}),
		);
	});

	test("in a cooler room or behind a more open front", () => {
		fc.assert(
			fc.property(toldBoards, loads, ({ delivery, air }, sustainedW) => {
				const inAir = (change: AirOfBuild) => powerOf(delivery, { sustainedW }, { ...air, ...change }).hotSpotC;
				for (const ranges of [
					summerRooms.map((summerRoom) => inAir({ summerRoom })),
					(["mesh", "slits", "solid"] as const).map((frontOpen) => inAir({ frontOpen })),
				])
					for (const [at, range] of ranges.slice(1).entries()) {
						expect(isNoHotter(ranges[at] ?? range, range)).toBe(true);
						if (Number.isFinite(range.low)) expect(range.low).toBeGreaterThan(ranges[at]?.low ?? range.low);
					}
			}),
		);
	});

	test("with more air: fans in the case, and a cooler that blows on the board", () => {
		fc.assert(
			fc.property(toldBoards, loads, ({ delivery, isGiven }, sustainedW) => {
				const inAir = (coolerKind: "air" | "liquid", caseFans: number) =>
					powerOf(delivery, { sustainedW }, { coolerKind, caseFans }).hotSpotC;
				for (const coolerKind of ["air", "liquid"] as const) {
					expect(isNoHotter(inAir(coolerKind, 1), inAir(coolerKind, 0))).toBe(true);
					expect(isNoHotter(inAir(coolerKind, 3), inAir(coolerKind, 1))).toBe(true);
				}
				for (const caseFans of [0, 2]) {
					expect(isNoHotter(inAir("air", caseFans), inAir("liquid", caseFans))).toBe(true);
					const [blown, still] = [inAir("air", caseFans).low, inAir("liquid", caseFans).low];
					if (!isGiven && Number.isFinite(still)) expect(blown).toBeLessThan(still);
				}
			}),
		);
	});

	test("with fewer watts, in a shorter session", () => {
		fc.assert(
			fc.property(toldBoards, loads, loads, ({ delivery, air }, one, other) => {
				const [less, more] = [Math.min(one, other), Math.max(one, other)];
				const of = (sustainedW: number, sessionLength: UseOfProcessor["sessionLength"] = "all-day") =>
					powerOf(delivery, { sustainedW, sessionLength }, air).hotSpotC;
				expect(isNoHotter(of(less), of(more))).toBe(true);
				expect(isNoHotter(of(less, "an-hour"), of(less))).toBe(true);
				expect(isNoHotter(of(less, "minutes"), of(less, "an-hour"))).toBe(true);
				if (Number.isFinite(of(less, "minutes").low)) expect(of(less, "minutes").low).toBeLessThan(of(less).low);
			}),
		);
	});
});

/** The range with one fact told besides lies in the range without it. */
function narrows(before: SteadyPower, after: SteadyPower, what: string): void {
	expect({
		what,
		before: before.hotSpotC,
		after: after.hotSpotC,
		in: liesIn(after.hotSpotC, before.hotSpotC),
	}).toHaveProperty("in", true);
	for (const watts of ["comfortableW", "holdingBackW"] as const)
		expect({ what, in: liesIn(after[watts], before[watts], 1e-6 * after[watts].high) }).toHaveProperty("in", true);
}

describe("a fact learned never widens", () => {
	test.each(boardFacts)("%s", (fact) => {
		fc.assert(
			fc.property(toldBoards, uses, ({ board, delivery, air }, use) => {
				const { [fact]: _, ...without } = delivery;
				// Half of a small advertised number is fewer stages than boards usually have.
				fc.pre(fact !== "advertised" || delivery.coreStages !== undefined || isUsual(board.told.advertised ?? ""));
				narrows(powerOf(without, use, air), powerOf({ ...without, [fact]: board.told[fact] }, use, air), fact);
			}),
		);
	});

	test.each(airFacts)("%s", (fact) => {
		fc.assert(
			fc.property(toldBoards, uses, ({ board, delivery, air }, use) => {
				const { [fact]: _, ...without } = air;
				narrows(
					powerOf(delivery, use, without),
					powerOf(delivery, use, { ...without, [fact]: board.toldAir[fact] }),
					fact,
				);
			}),
		);
	});

	test("the resistance of all stages to air, where the estimate holds it", () => {
		fc.assert(
			fc.property(toldBoards, loads, ({ board, delivery, air }, sustainedW) => {
				const { thermalResistanceKPerW: _, ...without } = delivery;
				const thermalResistanceKPerW = board.told.thermalResistanceKPerW ?? 0;
				const given = { ...without, thermalResistanceKPerW };
				const [before, after] = [powerOf(without, { sustainedW }, air), powerOf(given, { sustainedW }, air)];
				const { low, high } = before.kelvinPerWatt;
				fc.pre(thermalResistanceKPerW >= low && thermalResistanceKPerW <= high);
				narrows(before, after, "thermalResistanceKPerW");
				expect(after.kelvinPerWatt.low).toBe(thermalResistanceKPerW);
				expect(after.kelvinPerWatt.high).toBe(thermalResistanceKPerW);
			}),
			{ numRuns: 300 },
		);
	});

	test("what the processor holds for hours", () => {
		fc.assert(
			fc.property(toldBoards, uses, ({ board, delivery, air }, { sustainedW: _, ...use }) => {
				const before = powerOf(delivery, { ...use, activities: ["building"], raisesClock: false }, air);
				const sustainedW = between(before.watts, board.loadAt);
				const after = powerOf(delivery, { sustainedW, sessionLength: use.sessionLength }, air);
				expect(liesIn(after.hotSpotC, before.hotSpotC)).toBe(true);
			}),
		);
	});

	test("tests that agree, one after the other, in any order", () => {
		fc.assert(
			fc.property(
				toldBoards,
				loads,
				fc.array(drawnTests, { minLength: 2, maxLength: 3 }),
				(told, sustainedW, drawn) => {
					const { measurements: _, ...delivery } = told.delivery;
					const of = (measurements: Delivery["measurements"] = []) =>
						powerOf({ ...delivery, measurements }, { sustainedW }, told.air).hotSpotC;
					const made = drawn.flatMap((one) => testOf(told, sustainedW, one) ?? []);
					fc.pre(made.length >= 2 && !told.isGiven);
					const ranges = made.map((_, at) => of(made.slice(0, at + 1)));
					for (const [at, range] of [of(), ...ranges].slice(0, -1).entries())
						expect(liesIn(ranges[at] ?? range, range)).toBe(true);
					expect(liesIn(of(made.toReversed()), of(made))).toBe(true);
				},
			),
			{ numRuns: 50 },
		);
	});
});

/** Whether half and all of an advertised number are stages that boards usually have, 4 to 16. */
function isUsual(advertised: string): boolean {
	const first = Number.parseInt(advertised, 10);
	return first >= 8 && first <= 16;
}

describe("whatever the schema of a board takes", () => {
	test("nothing throws, and every figure is a number with its low end below", () => {
		fc.assert(
			fc.property(
				strangeDeliveries,
				fc.constantFrom(1, 20, 150, 2000),
				fc.constantFrom("minutes", "an-hour", "all-day"),
				(delivery, sustainedW, sessionLength) => {
					const power = powerOf(delivery, { sustainedW, peakW: sustainedW * 1.5, sessionLength });
					const { hotSpotC, comfortableW, holdingBackW, kelvinPerWatt, heatW, lossW, efficiency, airC } = power;
					// Of two that are past every limit, which is further past means nothing.
					const told = { low: Math.min(hotSpotC.low, 400), high: Math.min(hotSpotC.high, 400) };
					for (const range of [told, comfortableW, holdingBackW, kelvinPerWatt, heatW, airC]) {
						expect(range.low).toBeLessThanOrEqual(range.high * (1 + 1e-9));
						expect(range.low).toBeGreaterThanOrEqual(0);
					}
					for (const end of ["low", "high"] as const) {
						expect(lossW[end]).toBeGreaterThanOrEqual(heatW[end] * (1 - 1e-9));
						expect(efficiency[end]).toBeGreaterThan(0);
						expect(efficiency[end]).toBeLessThan(1);
					}
					expect(hotSpotC.low).toBeGreaterThanOrEqual(airC.low);
					expect(Number.isFinite(heatW.high + lossW.high + kelvinPerWatt.high + comfortableW.high)).toBe(true);
					for (const stage of [power.coolest, power.hottest]) {
						expect(stage.working * stage.amps).toBeGreaterThan(0);
						for (const { watts } of stage.watts) expect(watts).toBeGreaterThanOrEqual(0);
					}
					expect(power.spareK.high).toBe(comfortableC - hotSpotC.low);
					expect(typeof power.verdict).toBe("string");
					expect(power.assumptions.length).toBeGreaterThan(0);
					for (const { low, high } of power.assumptions) expect(low).toBeLessThanOrEqual(high);
				},
			),
			{ numRuns: 300 },
		);
	});
});
