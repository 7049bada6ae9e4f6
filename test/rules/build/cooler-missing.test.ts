import { coolerMissing } from "../../../src/rules/build/cooler-missing.ts";
import { testRule } from "../test-rule.ts";

testRule(coolerMissing, {
	fits: {
		"a cooler of its own": [{ cooler: {}, processor: { coolerInBox: false } }, "own"],
		"to be bought to suit": [{ cooler: "open", processor: { coolerInBox: false } }, "toBuy"],
		"the one from the box": [{ cooler: "none", processor: { coolerInBox: true } }, "inBox", { processor: "Piccolo" }],
		"one in the box, and nobody has said which is used": [
			{ processor: { coolerInBox: true } },
			"inBox",
			{ processor: "Piccolo" },
		],
	},
	fails: {
		"the one from the box, and the box has none": [
			{ cooler: "none", processor: { name: "Bosun", coolerInBox: false } },
			"notInBox",
			{ processor: "Bosun" },
		],
	},
	cannotTell: {
		"the processor's page is silent": [{ cooler: "none", processor: {} }, ["processor.coolerInBox"], "unknown"],
		"nobody has said which processor": [{ cooler: "none" }, ["processor.coolerInBox"], "unknown"],
		"none in the box, and nobody has said whether there is another": [
			{ processor: { coolerInBox: false } },
			["cooler"],
			"unknown",
		],
		"nobody has said anything": [{}, ["cooler"], "unknown"],
	},
});
