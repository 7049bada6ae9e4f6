import { describe, expect, test } from "vitest";
import { type Measurement, measuredPath, provenResistance } from "../../src/power/measured-path.ts";
import { heatSums, type SettledStage } from "../../src/power/settled-stage.ts";

const unlike = { low: 0, high: 1, called: "unknown" } as const;
const allDay = Number.POSITIVE_INFINITY;
const bench: Measurement = { loadW: 150, airC: 22, stageC: 70 };

describe("what the hottest stage had inside", () => {
	// A reading is right to 2 K; the inside is 0 to 5 K hotter than the top of a stage, 3 to 15 K than the back of the
	// board, 2 to 24 K than a heat sink, and 0 to 24 K where nobody says what was measured.
	test.each<[string | undefined, number, number]>([
		["top of a stage", 68, 77],
		["hottest stage, top of its case", 68, 77],
		["Sensor at the stages", 68, 77],
		["package", 68, 77],
		["back of the board", 71, 87],
		["Back of the board, behind the stages", 71, 87],
		["underside", 71, 87],
		["thermometer below the socket", 71, 87],
		["rear side", 71, 87],
		["heat sink over the stages", 70, 96],
		["top of the heat sink", 70, 96],
		["back of the board under the heat sink", 71, 87],
		["finished stages", 68, 77],
		["somewhere", 68, 96],
		[undefined, 68, 96],
	])("measured at %s: %s to %s degrees C", (measuredAt, low, high) => {
		const test = measuredAt === undefined ? bench : { ...bench, measuredAt };
		expect(measuredPath(test, unlike, allDay).insideC).toEqual({ low, high });
	});
});

describe("its rise over the air", () => {
	// The air at the stages is 0 to 5 K warmer than the room in still air, to 8 with case fans, to 3 when blown at, to 10
	// where nobody says: 68 - 22 - that, and 77 - 22.
	test.each<[Measurement["airflow"], number, number]>([
		["still", 41, 55],
		["case fans", 38, 55],
		["blown at", 43, 55],
		[undefined, 36, 55],
	])("in air that is %s: %s to %s K", (airflow, low, high) => {
		const test = { ...bench, measuredAt: "top of a stage", ...(airflow ? { airflow } : {}) };
		expect(measuredPath(test, unlike, allDay).riseK).toEqual({ low, high });
	});

	test("is never nothing, whatever a reading says", () => {
		expect(measuredPath({ ...bench, stageC: -20 }, unlike, allDay).riseK).toEqual({ low: 0.5, high: 0.5 });
		expect(measuredPath({ ...bench, stageC: 20 }, unlike, allDay).riseK).toEqual({ low: 0.5, high: 20 - 22 + 2 + 24 });
	});
});

// 200 ft/min of air makes 0.592593 to 0.753086 of the resistance, to the power of how much more air there is.
describe("from the test to the build", () => {
	const long = { ...bench, minutes: 10_000 };

	test.each<[string, Measurement, { low: number; high: number; called: "case fans" | "unknown" }, number, number]>([
		// 0.592593 ^ 0.25 = 0.877383 and its inverse.
		["like air", { ...long, airflow: "case fans" }, { low: 0.4, high: 1, called: "case fans" }, 0.877383, 1.139754],
		// Exponents 0.4 - 1 = -0.6 to 1 - 0.4 = 0.6: 0.592593 ^ 0.6 = 0.730556.
		["the same air, not called so", { ...long, airflow: "case fans" }, { ...unlike, low: 0.4 }, 0.730556, 1.36882],
		// Exponents 0 - 1.5 to 1 - 0.8 = 0.2: 0.592593 ^ 0.2 = 0.90064, 0.592593 ^ -1.5 = 2.192127.
		["blown at in the test", { ...long, airflow: "blown at" }, unlike, 0.90064, 2.192127],
		// Exponents 0.8 - 0.2 = 0.6 to 1.5: 0.592593 ^ 1.5 = 0.456178 to 0.753086 ^ 0.6 = 0.843542.
		[
			"still in the test",
			{ ...long, airflow: "still" },
			{ low: 0.8, high: 1.5, called: "unknown" },
			0.456178,
			0.843542,
		],
		["nothing said of either", long, unlike, 0.592593, 1.6875],
	])("%s", (_, test, moving, low, high) => {
		const { carriedOver } = measuredPath(test, moving, allDay);
		expect(carriedOver.low).toBeCloseTo(low, 4);
		expect(carriedOver.high).toBeCloseTo(high, 4);
	});

	// Stages warm up with 5 to 15 minutes: 1 - exp(-t / 5) to 1 - exp(-t / 15). Air differs by 0.877383 to 1.139754.
	test.each<[string, number | undefined, number, number, number]>([
		// 30 min: 0.997521 and 0.864665, so 1.002485 to 1.156518 times as warm in the end.
		["half an hour, then all day", 30, allDay, 0.877383 * 1.002485, 1.139754 * 1.156518],
		// At least 10 min: 0.864665 and 0.486583 at the least, 1 at the most: 1 to 2.055148.
		["not said how long, then all day", undefined, allDay, 0.877383, 1.139754 * 2.055148],
		// 8 min have 0.798103 and 0.413354; 60 min 0.999994 and 0.981684.
		["an hour, then 8 minutes", 60, 8, 0.877383 * (0.413354 / 0.981684), 1.139754 * (0.798103 / 0.999994)],
	])("%s", (_, minutes, build, low, high) => {
		const test: Measurement = { ...bench, airflow: "case fans", ...(minutes === undefined ? {} : { minutes }) };
		const { carriedOver } = measuredPath(test, { low: 0.4, high: 1, called: "case fans" }, build);
		expect(carriedOver.low).toBeCloseTo(low, 4);
		expect(carriedOver.high).toBeCloseTo(high, 4);
	});
});

// Two stages at 1 V, each 1 W and 10 mohm at 25 degrees C, which rise by 0.4 % a kelvin. 40 W are 20 A a stage:
// at 50 degrees C 2 x (1 + 4 x 1.1) = 10.8 W, at 75 degrees C 2 x (1 + 4 x 1.2) = 11.6 W.
test("a proven resistance takes the heat at the temperature there was", () => {
	const causes = [
		{ name: "any", fixedW: 1, wattsPerAmp: 0, ohm: 0.01, warms: true, ripples: false, intoStage: 1 },
	] as const;
	const stage: SettledStage = {
		stages: 2,
		outputVolts: 1,
		rippleSquared: 0,
		ohmC: 25,
		risePerK: 0.004,
		causes,
		sums: heatSums(causes, 0),
	};
	const proven = provenResistance(
		stage,
		{ ...bench, loadW: 40 },
		{ riseK: { low: 30, high: 50 }, insideC: { low: 50, high: 75 }, carriedOver: { low: 0.5, high: 2 } },
	);
	expect(proven.low).toBeCloseTo((30 / 10.8) * 0.5, 12);
	expect(proven.high).toBeCloseTo((50 / 11.6) * 2, 12);
});
