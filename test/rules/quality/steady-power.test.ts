import { steadyPower } from "../../../src/rules/quality/steady-power.ts";
import { knownAir, knownStages } from "../../power/known-stages.ts";
import { testRule } from "../test-rule.ts";

/** A thermal resistance that a page gives, so that only the stages themselves leave a range. */
const stages = (kelvinPerWatt: number, more: object = {}) => ({
	...knownAir,
	board: {
		powerDelivery: {
			...knownStages,
			thermalResistanceKPerW: kelvinPerWatt,
			...more,
		},
	} as const,
});
const processor = { sustainedW: 120 };
const test = (stageC: number) => ({
	measurements: [
		{ loadW: 120, airC: 25, airflow: "case fans", minutes: 60, stageC, measuredAt: "top of the hottest stage" },
	],
});
const steadily = { watts: "120", time: "for hours", isTested: false };

testRule(steadyPower, {
	fits: {
		"plenty to spare": [{ ...stages(1), processor }, "ample", { ...steadily, least: 44, most: 49 }],
		"enough for an hour": [
			{ ...stages(4), processor, sessionLength: "an-hour" },
			"enough",
			{ ...steadily, time: "for an hour", least: 9, most: 34 },
		],
		"light use asks for little": [
			{ ...stages(4), processor, activities: ["writing"] },
			"ample",
			{ ...steadily, watts: "36", least: 42, most: 48 },
		],
		"the watts are a range": [
			{ ...stages(4), processor: { baseW: 100, peakW: 120 } },
			"enough",
			{ ...steadily, watts: "100 to 120", least: 9, most: 37 },
		],
		"a test takes the doubt away": [
			{ ...stages(5, test(50)), processor },
			"ample",
			{ ...steadily, isTested: true, least: 17, most: 28 },
		],
		"no processor yet": [{ ...stages(1), processor: "open" }, "noProcessor"],
		"there will be none": [{ ...stages(1), processor: "none" }, "noProcessor"],
	},
	cautions: {
		"held back nowhere, but maybe past the comfortable line": [
			{ ...stages(5), processor },
			"good-to-know",
			"maybeHot",
			{ ...steadily, coolest: 62, hottest: 94 },
		],
		"hot for certain": [
			{ ...stages(10), processor },
			"plan-around",
			"tight",
			{ ...steadily, past: 1, mayHoldBack: true },
		],
		"cool, but past its rating at the processor's peak": [
			{ ...stages(1, { stageRatingA: 20 }), processor: { sustainedW: 120, peakW: 300 } },
			"plan-around",
			"peakPastRating",
			{ ...steadily, ratingA: 20 },
		],
	},
	fails: {
		"past every line": [{ ...stages(14), processor }, "tooHot", steadily],
		"a test says so": [{ ...stages(8, test(125)), processor }, "tooHot", { ...steadily, isTested: true }],
		"cool, but past its rating all the time": [
			{ ...stages(1, { stageRatingA: 9 }), processor },
			"pastRating",
			{ ...steadily, ratingA: 9 },
		],
	},
	cannotTell: {
		"both sides of the line": [
			{ ...stages(8), processor },
			["board.powerDelivery.measurements"],
			"wide",
			{ ...steadily, coolest: 79, hottest: 136 },
		],
		"a test leaves it open": [
			{ ...stages(6, test(85)), processor },
			["board.powerDelivery.measurements"],
			"wide",
			{ ...steadily, isTested: true, coolest: 80, hottest: 107 },
		],
		"nothing published, label watts alone": [
			{ board: {}, processor: { baseW: 65 } },
			[
				"board.powerDelivery.coreStages",
				"board.powerDelivery.stageKind",
				"board.powerDelivery.heatSink",
				"board.powerDelivery.measurements",
				"processor.sustainedW",
			],
			"wide",
			{ ...steadily, watts: "65 to 228", coolest: 31, hottest: 151 },
		],
		"nobody has said which processor": [{ ...stages(1) }, ["processor"]],
		"a processor without watts": [{ ...stages(1), processor: {} }, ["processor.baseW"]],
	},
	needs: {
		"the watts that count": [
			{ processor, activities: ["games"], sessionLength: "an-hour" },
			"Power stages that feed 72 W for an hour and stay below 90 degrees C, best seen in a published test.",
		],
		"nothing without a processor": [{}, null],
	},
});
