import { describe, expect, test } from "vitest";
import { stageLoad } from "../../src/criteria/stage-load.ts";
import { piecewiseLinear } from "../../src/maths/piecewise-linear.ts";

const stages = (coreStages: number) => ({ "board.powerDelivery.coreStages": coreStages });

describe("ampere a stage: watts over 1.2 V over stages", () => {
	test.each([
		["sustained watts measured", { "processor.sustainedW": 120, ...stages(10) }, 10, 10, []],
		[
			"what was measured goes before the label",
			{ "processor.sustainedW": 120, "processor.baseW": 60, ...stages(10) },
			10,
			10,
			[],
		],
		["a limit that is fixed", { "processor.baseW": 60, "processor.limitPolicy": "fixed", ...stages(10) }, 5, 5, []],
		[
			"a fixed limit, whatever the peak",
			{ "processor.baseW": 60, "processor.peakW": 90, "processor.limitPolicy": "fixed", ...stages(10) },
			5,
			5,
			[],
		],
		[
			"label watts and peak",
			{ "processor.baseW": 60, "processor.peakW": 240, ...stages(10) },
			5,
			20,
			["processor.sustainedW"],
		],
		[
			"label watts alone: up to twice as much",
			{ "processor.baseW": 60, ...stages(10) },
			5,
			10,
			["processor.sustainedW"],
		],
		["peak alone: down to half as much", { "processor.peakW": 240, ...stages(10) }, 10, 20, ["processor.sustainedW"]],
		[
			"a policy that is not fixed settles nothing",
			{ "processor.baseW": 60, "processor.limitPolicy": "timed-boost", ...stages(10) },
			5,
			10,
			["processor.sustainedW"],
		],
		["label watts equal to the peak", { "processor.baseW": 60, "processor.peakW": 60, ...stages(10) }, 5, 5, []],
		[
			"a peak below the label watts",
			{ "processor.baseW": 120, "processor.peakW": 60, ...stages(10) },
			5,
			10,
			["processor.sustainedW"],
		],
		["stages not published: 4 to 16", { "processor.sustainedW": 96 }, 5, 20, ["board.powerDelivery.coreStages"]],
		[
			"neither known for sure",
			{ "processor.baseW": 96 },
			5,
			40,
			["board.powerDelivery.coreStages", "processor.sustainedW"],
		],
	])("%s", (_, facts, low, high, missing) => {
		const measure = stageLoad.measure(facts);
		expect(measure?.low).toBeCloseTo(low, 9);
		expect(measure?.high).toBeCloseTo(high, 9);
		expect(measure?.missing).toEqual(missing);
	});

	test.each([{}, stages(10), { "processor.limitPolicy": "fixed" }])("says nothing without any watts: %o", (facts) => {
		expect(stageLoad.measure(facts)).toBeNull();
	});
});

describe("what it is used for", () => {
	const steady = { "processor.sustainedW": 120, ...stages(10) };
	const amps = (more: object) => stageLoad.measure({ ...steady, ...more });

	// 10 A at full load. The shares are from memory; 1 - exp(-8 / 10) is how far 8 minutes warm a board of 10 minutes.
	test.each<[string, object, number]>([
		["full load all day", { activities: ["building"], sessionLength: "all-day" }, 10],
		["games", { activities: ["games"] }, 6],
		["the heaviest of several counts", { activities: ["writing", "pictures", "films"] }, 8],
		["none of these: light use", { activities: [] }, 3],
		["some minutes", { sessionLength: "minutes" }, 10 * (1 - Math.exp(-0.8))],
		["about an hour is all but without end", { sessionLength: "an-hour" }, 9.975],
		["games for some minutes", { activities: ["games"], sessionLength: "minutes" }, 6 * (1 - Math.exp(-0.8))],
	])("%s", (_, use, expected) => {
		expect(amps(use)?.low).toBeCloseTo(expected, 3);
		expect(amps(use)?.high).toBeCloseTo(expected, 3);
		expect(amps(use)?.missing).toEqual([]);
	});

	test("both ends of a range alike", () => {
		const range = { "processor.baseW": 60, "processor.peakW": 240, ...stages(10) };
		const measure = stageLoad.measure({ ...range, activities: ["games"] });
		expect(measure?.low).toBeCloseTo(3, 9);
		expect(measure?.high).toBeCloseTo(12, 9);
	});
});

// Hot spot at 105 C, usual air 30 + 10 = 40 C: loss, and with it the square of the current, shrinks with the 65 K left.
describe("the air around the stages", () => {
	const steady = { "processor.sustainedW": 120, ...stages(10) };
	const [room, front] = ["summerRoom", "case.frontOpen"] as const;

	test.each<[string, object, number]>([
		["warm room, narrow slits: as it is", { [room]: "warm", [front]: "slits" }, 10],
		["nobody knows: as in a warm room behind narrow slits", {}, 10],
		["hot room, solid front: 55 K left", { [room]: "fan-on", [front]: "solid" }, 10 * Math.sqrt(65 / 55)],
		["cool room, mesh: 75 K left", { [room]: "cool", [front]: "mesh" }, 10 * Math.sqrt(65 / 75)],
		["hot room", { [room]: "fan-on" }, 10 * Math.sqrt(65 / 60)],
		["cool room", { [room]: "cool" }, 10 * Math.sqrt(65 / 70)],
		["solid front", { [front]: "solid" }, 10 * Math.sqrt(65 / 60)],
		["mesh front", { [front]: "mesh" }, 10 * Math.sqrt(65 / 70)],
	])("%s", (_, air, expected) => {
		const measure = stageLoad.measure({ ...steady, ...air });
		expect(measure?.low).toBeCloseTo(expected, 9);
		expect(measure?.high).toBeCloseTo(expected, 9);
	});
});

// 15 to 20 A a phase is usual, up to 30 A needs heat sinks and moving air (ISL6219A data sheet, p. 12).
test.each([
	[0, 1],
	[12, 1],
	[16, 0.9],
	[20, 0.8],
	[25, 0.6],
	[30, 0.4],
	[45, 0],
	[100, 0],
])("%f A a stage are worth %f", (amps, value) => {
	expect(piecewiseLinear(stageLoad.scale, amps)).toBeCloseTo(value, 12);
});

test.each([
	[
		{ low: 10, high: 10, missing: [] },
		"each power stage carries about 10 A in your room; up to 20 A is normal, heat sinks not counted",
	],
	[
		{ low: 9.6, high: 10.4, missing: [] },
		"each power stage carries about 10 A in your room; up to 20 A is normal, heat sinks not counted",
	],
	[
		{ low: 5, high: 40, missing: [] },
		"each power stage carries 5 to 40 A in your room; up to 20 A is normal, heat sinks not counted",
	],
])("%o in words", (measure, words) => {
	expect(stageLoad.says(measure)).toBe(words);
});
