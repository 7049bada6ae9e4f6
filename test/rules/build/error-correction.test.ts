import { errorCorrection } from "../../../src/rules/build/error-correction.ts";
import { testRule } from "../test-rule.ts";

const wishes = { "features/error-correction": "would-like" } as const;
const processor = { memory: { errorCorrection: true } };

testRule(errorCorrection, {
	fits: {
		"nobody wished it": [{ memory: { errorCorrection: "none" }, processor }, "notAsked"],
		"it does not matter": [{ wishes: { "features/error-correction": "dont-mind" }, processor }, "notAsked"],
		"both know it": [{ wishes, processor, memory: { errorCorrection: "full" } }, "both"],
		"memory still to be bought": [{ wishes, processor, memory: "open" }, "open"],
	},
	fails: {
		"on-chip correction is not it": [{ wishes, processor, memory: { errorCorrection: "on-chip" } }, "kit"],
		"none at all, and a must": [
			{ wishes: { "features/error-correction": "must" }, processor, memory: { errorCorrection: "none" } },
			"kit",
		],
		"the processor does not know it": [
			{ wishes, processor: { memory: { errorCorrection: false } }, memory: { errorCorrection: "full" } },
			"processor",
		],
	},
	cannotTell: {
		"the label does not say": [{ wishes, processor, memory: { type: "DDR5" } }, ["memory.errorCorrection"]],
		"nothing is known of the processor": [
			{ wishes, memory: { errorCorrection: "full" } },
			["processor.memory.errorCorrection"],
		],
	},
});
