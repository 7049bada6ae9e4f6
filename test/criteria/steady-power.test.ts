import { describe, expect, test } from "vitest";
import { steadyPower } from "../../src/criteria/steady-power.ts";
import { piecewiseLinear } from "../../src/maths/piecewise-linear.ts";
import { powerFactsOf } from "../../src/power/power-facts.ts";
import { knownAir, knownStages } from "../power/known-stages.ts";
import { buildFacts, type GivenBuild } from "../rules/rule-subject.ts";

const { heatSink: _, ...known } = { ...knownStages, coreStages: 12 };

function measure(powerDelivery: object, build: GivenBuild) {
	const facts = buildFacts({ ...knownAir, ...build });
	const { steady } = powerFactsOf({ id: "a-board", name: "A board", powerDelivery }, facts);
	return steadyPower.measure({ processor: facts.processor.state, ...(steady ? { "power.steady": steady } : {}) });
}

describe("degrees to the comfortable line of 90 degrees C", () => {
	test("the same as the temperature of the hottest stage tells", () => {
		const { steady } = powerFactsOf(
			{ id: "a-board", name: "A board", powerDelivery: { ...known, heatSink: "both sides" } },
			buildFacts({ ...knownAir, processor: { sustainedW: 120 } }),
		);
		expect(steady).toBeDefined();
		const found = steadyPower.measure({ "power.steady": steady as NonNullable<typeof steady> });
		expect(found?.low).toBeCloseTo(90 - (steady?.hotSpotC.high ?? 0), 9);
		expect(found?.high).toBeCloseTo(90 - (steady?.hotSpotC.low ?? 0), 9);
	});

	test("nothing published leaves it wide open, and past all limits no further is told", () => {
		const nothing = measure({}, { processor: { sustainedW: 200 } });
		expect(nothing?.low).toBe(-60);
		expect(nothing?.high).toBeGreaterThan(30);
		expect(nothing?.missing).toEqual([
			"board.powerDelivery.coreStages",
			"board.powerDelivery.stageKind",
			"board.powerDelivery.heatSink",
			"board.powerDelivery.measurements",
		]);
	});

	test("without a processor, or without its watts, anything may be, and what is missing is said", () => {
		const open = measure({ ...known }, {});
		expect(open).toEqual({ low: -60, high: 60, missing: ["processor"] });
		expect(open && steadyPower.says(open)).toBe("how cool its power stages stay is not known");
		expect(measure({ ...known }, { processor: {} })).toMatchObject({ missing: ["processor.baseW"] });
	});

	test("watts that are a range are one more thing to find out", () => {
		const found = measure(
			{ ...known, heatSink: "one side", measurements: [{ loadW: 120, airC: 22, stageC: 70 }] },
			{ processor: { baseW: 65, peakW: 120 } },
		);
		expect(found?.missing).toEqual(["processor.sustainedW"]);
	});

	test("where all of the range is plenty, or all too hot, nothing is missing", () => {
		const plenty = measure({ ...known, heatSink: "finned" }, { processor: { sustainedW: 65 } });
		expect(plenty?.low).toBeGreaterThan(15);
		expect(plenty?.missing).toEqual([]);
		const tooHot = measure({ ...known, thermalResistanceKPerW: 20 }, { processor: { sustainedW: 180 } });
		expect(tooHot?.high).toBeLessThan(0);
		expect(tooHot?.missing).toEqual([]);
	});

	test.each([
		["stages", { ...known, heatSink: "both sides" }, { ...known, heatSink: "both sides", coreStages: 16 }],
		["a better heat sink", { ...known, heatSink: "one side" }, { ...known, heatSink: "finned" }],
		["stronger stages", { ...known, heatSink: "both sides", stageRatingA: 50 }, { ...known, heatSink: "both sides" }],
	])("more to spare by %s", (_, less, more) => {
		const build = { processor: { sustainedW: 180 } };
		const [before, after] = [measure(less, build), measure(more, build)];
		expect(after?.low).toBeGreaterThan(before?.low ?? Number.NaN);
		expect(after?.high).toBeGreaterThan(before?.high ?? Number.NaN);
	});
});

test("scale: nothing at the line, seven tenths at 15 degrees, all from 30 on", () => {
	expect([-40, 0, 7.5, 15, 22.5, 30, 80].map((kelvin) => piecewiseLinear(steadyPower.scale, kelvin))).toEqual([
		0,
		0,
		0.35,
		0.7,
		expect.closeTo(0.85, 12),
		1,
		1,
	]);
});

test.each([
	[25.2, 44.8, "its power stages have 25 to 44 degrees to spare under your load"],
	[1, 1, "its power stages have 1 degree to spare under your load"],
	[0, 12, "its power stages have 0 to 12 degrees to spare under your load"],
	[-12, 20, "its power stages may have 20 degrees to spare under your load, or be 12 degrees too hot"],
	[-60, 20, "its power stages may have 20 degrees to spare under your load, or be far too hot"],
	[-20, -5, "its power stages get 5 to 20 degrees too hot under your load"],
	[-60, -5, "its power stages get 5 degrees or more too hot under your load"],
])("%f to %f degrees in words", (low, high, words) => {
	expect(steadyPower.says({ low, high, missing: [] })).toBe(words);
});
