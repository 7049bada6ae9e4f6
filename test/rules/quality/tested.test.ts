import { tested } from "../../../src/rules/quality/tested.ts";
import { testRule } from "../test-rule.ts";

const wish = (strength: "must" | "would-like" | "dont-mind") => ({ wishes: { "quality/tested": strength } });
const measurement = { loadW: 150, airC: 22, stageC: 70 };

testRule(tested, {
	fits: {
		"measured once": [
			{ board: { powerDelivery: { measurements: [measurement] } }, ...wish("must") },
			"measured",
			{ tests: 1 },
		],
		"measured twice": [
			{ board: { powerDelivery: { coreStages: 8, measurements: [measurement, measurement] } }, ...wish("would-like") },
			"measured",
			{ tests: 2 },
		],
		"counted only, which is enough where it would be nice": [
			{ board: { powerDelivery: { coreStages: 8, measurements: [] } }, ...wish("would-like") },
			"counted",
			{ stages: 8 },
		],
		"not wished for": [{ board: {}, ...wish("dont-mind") }, "notAsked"],
		"nobody has said": [{ board: {} }, "notAsked"],
	},
	cautions: {
		"needed, and counted only": [
			{ board: { powerDelivery: { coreStages: 8, measurements: [] } }, ...wish("must") },
			"good-to-know",
			"counted",
			{ stages: 8 },
		],
		"needed, and nothing is noted": [{ board: {}, ...wish("must") }, "plan-around", "lacks"],
		"needed, and only the maker's own figure": [
			{ board: { powerDelivery: { advertised: "14+2" } }, ...wish("must") },
			"plan-around",
			"lacks",
		],
		"would be nice": [
			{ board: { powerDelivery: { measurements: [] } }, ...wish("would-like") },
			"good-to-know",
			"wouldLike",
		],
	},
	needs: {
		needed: [wish("must"), "A published test that counts or measures its power stages."],
		"would be nice": [
			wish("would-like"),
			"A published test that counts or measures its power stages, if there is one.",
		],
		"not wished for": [wish("dont-mind"), null],
	},
	without: { cannotTell: "that nothing is noted is just what is judged" },
});
