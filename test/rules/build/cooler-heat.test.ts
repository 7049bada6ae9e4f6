import { coolerHeat } from "../../../src/rules/build/cooler-heat.ts";
import { testRule } from "../test-rule.ts";

const cooler = (publishedW: number) => ({ publishedW });

// Twice the label for the highest watts is from memory; that makers rate coolers in different ways is common practice.
testRule(coolerHeat, {
	fits: {
		"as much as the processor's highest": [
			{ cooler: cooler(150), processor: { baseW: 65, peakW: 150 } },
			"enough",
			{ publishedW: 150, highW: 150, guessed: false },
		],
		"twice the label, with the highest not known": [
			{ cooler: cooler(130), processor: { baseW: 65 } },
			"enough",
			{ publishedW: 130, highW: 130, guessed: true },
		],
		"as much as the label of a fixed limit": [
			{ cooler: cooler(65), processor: { baseW: 65, peakW: 150, limitPolicy: "fixed" } },
			"enough",
			{ publishedW: 65, highW: 65, guessed: false },
		],
		"as much as a test of hours found": [
			{ cooler: cooler(110), processor: { baseW: 65, sustainedW: 110, peakW: 150 } },
			"enough",
			{ publishedW: 110, highW: 110, guessed: false },
		],
		"as much as its highest, with the label not known": [
			{ cooler: cooler(150), processor: { peakW: 150 } },
			"enough",
			{ publishedW: 150, highW: 150, guessed: false },
		],
		"a processor to be bought to suit": [{ cooler: cooler(150), processor: "open" }, "noProcessor"],
		"no processor": [{ cooler: cooler(150), processor: "none" }, "noProcessor"],
		"the cooler from the box": [{ cooler: "none", processor: { baseW: 65 } }, "none", { part: "cooler" }],
	},
	cautions: {
		"a watt less than the processor's highest": [
			{ cooler: cooler(149), processor: { baseW: 65, peakW: 150 } },
			"plan-around",
			"between",
			{ publishedW: 149, lowW: 65, highW: 150, guessed: false },
		],
		"just the label, and boards may lift the limit": [
			{ cooler: cooler(65), processor: { baseW: 65, peakW: 150, limitPolicy: "lifted-by-board" } },
			"plan-around",
			"between",
			{ publishedW: 65, lowW: 65, highW: 150, guessed: false },
		],
		"a watt less than twice the label": [
			{ cooler: cooler(129), processor: { baseW: 65 } },
			"plan-around",
			"between",
			{ publishedW: 129, lowW: 65, highW: 130, guessed: true },
		],
	},
	fails: {
		"a watt less than the label": [
			{ cooler: cooler(64), processor: { baseW: 65, peakW: 150 } },
			"below",
			{ publishedW: 64, lowW: 65 },
		],
		"a watt less than a test of hours found, above the label": [
			{ cooler: cooler(109), processor: { baseW: 65, sustainedW: 110, peakW: 150 } },
			"below",
			{ publishedW: 109, lowW: 110 },
		],
	},
	cannotTell: {
		"the cooler's page is silent": [{ cooler: {}, processor: { baseW: 65 } }, ["cooler.publishedW"]],
		"the processor's page is silent": [{ cooler: cooler(150), processor: {} }, ["processor.baseW"]],
		"less than its highest, with the label not known": [
			{ cooler: cooler(149), processor: { peakW: 150 } },
			["processor.baseW"],
		],
		"nobody has said which processor": [{ cooler: cooler(150) }, ["processor"]],
	},
});
