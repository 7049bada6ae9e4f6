import { describe, expect, test } from "vitest";
import {
	type AirOfBuild,
	airAtStages,
	airMoving,
	movingAirFactors,
	stillAirPath,
} from "../../src/power/heat-path-range.ts";
import type { Delivery } from "../../src/power/stage-range.ts";

describe("air at the stages", () => {
	// Rooms 25, 30, 35 degrees C; fronts 5, 10, 15 K.
	test.each<[AirOfBuild, number, number, readonly string[]]>([
		[{ summerRoom: "warm", frontOpen: "slits" }, 40, 40, []],
		[{ summerRoom: "fan-on", frontOpen: "solid" }, 50, 50, []],
		[{ summerRoom: "cool" }, 30, 40, ["case.frontOpen"]],
		[{ frontOpen: "mesh" }, 30, 40, ["summerRoom"]],
		[{}, 30, 50, ["summerRoom", "case.frontOpen"]],
	])("%o: %s to %s degrees C", (air, low, high, facts) => {
		const found = airAtStages(air);
		expect([found.low, found.high]).toEqual([low, high]);
		expect(found.assumptions.map(({ fact }) => fact)).toEqual(facts);
	});

	test("assumptions tell the range of what is missing, not of the sum", () => {
		const [room, front] = airAtStages({}).assumptions;
		expect(room).toMatchObject({ low: 25, high: 35, unit: "degrees C" });
		expect(front).toMatchObject({ low: 5, high: 15, unit: "K" });
	});
});

describe("air over the stages", () => {
	test.each<[AirOfBuild, number, number, string]>([
		[{ coolerKind: "air", caseFans: 2 }, 0.4, 1, "case fans"],
		[{ coolerKind: "liquid", caseFans: 2 }, 0, 0.6, "behind a liquid cooler"],
		[{ coolerKind: "air", caseFans: 0 }, 0, 0.7, "unknown"],
		[{ coolerKind: "liquid", caseFans: 0 }, 0, 0.3, "unknown"],
		[{ caseFans: 3 }, 0, 1, "unknown"],
		[{}, 0, 1, "unknown"],
	])("%o: %s to %s", (air, low, high, called) => {
		const found = airMoving(air);
		expect(found.low).toBe(low);
		expect(found.high).toBeCloseTo(high, 12);
		expect(found.called).toBe(called);
	});

	test("without a fan in the case, not knowing the cooler leaves open what either would leave", () => {
		const [unknown, air, liquid] = [undefined, "air", "liquid"].map((coolerKind) =>
			airMoving({ coolerKind: coolerKind as AirOfBuild["coolerKind"], caseFans: 0 }),
		);
		expect(unknown?.low).toBe(Math.min(air?.low ?? 0, liquid?.low ?? 0));
		expect(unknown?.high).toBe(Math.max(air?.high ?? 1, liquid?.high ?? 1));
	});

	// 200 ft/min makes 16 / 27 = 0.59259 to 61 / 81 = 0.75309 of the resistance.
	test.each([
		[{ low: 1, high: 1 }, 0.592593, 0.753086],
		[{ low: 0, high: 0 }, 1, 1],
		[{ low: 0, high: 1 }, 0.592593, 1],
		[{ low: 0.4, high: 1.5 }, 0.456178, 0.892767],
	])("%o leaves a part of the resistance", (moving, low, high) => {
		const factors = movingAirFactors(moving);
		expect(factors.low).toBeCloseTo(low, 5);
		expect(factors.high).toBeCloseTo(high, 5);
	});
});

// The copper under one stage has 38 to 81 K/W; one large sink 20.42258 to 23.23636 K/W, and 4.4 to 8 K/W to reach it.
describe("the way to still air", () => {
	const at = (delivery: Delivery, stages: number) => {
		const path = stillAirPath(delivery);
		return [path.at(stages, "cool"), path.at(stages, "hot")];
	};
	const known = { layers: 6, copperOz: 1 } as const;

	// Share of copper 0.25 to 0.8: 81 - 0.8 x 43 = 46.6 and 81 - 0.25 x 43 = 70.25 K/W a stage.
	test("without a heat sink is the copper of all stages", () => {
		const [cool, hot] = at({ ...known, heatSink: "none" }, 10);
		expect(cool).toBeCloseTo(4.66, 9);
		expect(hot).toBeCloseTo(7.025, 9);
	});

	// Cool: 4.4 / 8 + 20.42258 / 6 = 3.953763 beside 46.6 / 8 = 5.825: 2.355196.
	// Hot: 8 / 8 + 23.23636 / 3.5 = 7.638961 beside 70.25 / 8 = 8.78125: 4.085222.
	test("under sinks on both sides leads through copper and sinks side by side", () => {
		const [cool, hot] = at({ ...known, heatSink: "both sides" }, 8);
		expect(cool).toBeCloseTo(2.3552, 4);
		expect(hot).toBeCloseTo(4.08521, 4);
	});

	// Cool: the best sink, worth 14: 4.4 / 8 + 20.42258 / 14 = 2.008756 beside 38 / 8 = 4.75: 1.411716. Hot: no sink.
	test("of which nothing is known runs from the best sink on the best copper to none on the least", () => {
		const [cool, hot] = at({}, 8);
		expect(cool).toBeCloseTo(1.41172, 4);
		expect(hot).toBe(81 / 8);
	});

	test("that a page gives is taken as it is, for any number of stages, and for the air as it is", () => {
		const path = stillAirPath({ thermalResistanceKPerW: 1.7, heatSink: "none" });
		expect([path.at(4, "cool"), path.at(16, "hot")]).toEqual([1.7, 1.7]);
		expect(path.isGiven).toBe(true);
		expect(path.assumptions).toEqual([]);
		expect(stillAirPath({ heatSink: "none" }).isGiven).toBe(false);
	});

	test.each<[Delivery, readonly (string | null)[]]>([
		[{}, ["board.powerDelivery.heatSink", "board.powerDelivery.copperOz"]],
		[{ heatSink: "finned" }, [null, "board.powerDelivery.copperOz"]],
		[{ copperOz: 2 }, ["board.powerDelivery.heatSink", "board.powerDelivery.layers"]],
		[{ ...known, heatSink: "one side" }, [null, null]],
	])("%o: the facts that would tell more", (delivery, facts) => {
		expect(stillAirPath(delivery).assumptions.map(({ fact }) => fact)).toEqual(facts);
	});

	test("assumptions tell the sinks and the copper that were counted", () => {
		const [sinks, copper] = stillAirPath({ ...known, heatSink: "one side" }).assumptions;
		expect(sinks).toMatchObject({ low: 1, high: 3, because: expect.stringContaining("one side") });
		expect(copper?.low).toBeCloseTo(46.6, 9);
		expect(copper?.high).toBeCloseTo(70.25, 9);
		expect(stillAirPath({}).assumptions[0]).toMatchObject({ low: 0, high: 14 });
	});
});
