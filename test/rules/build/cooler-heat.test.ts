import { coolerHeat } from "../../../src/rules/build/cooler-heat.ts";
import { testRule } from "../test-rule.ts";

const cooler = (publishedW: number) => ({ publishedW });

// Highest watts are 1.35 to 3.5 times the label. From memory: and at least 0.85 of them held where a board lifts the limit.
// Own convention: up to a tenth above the label after a timed boost. That makers rate coolers in different ways is common
// practice.
testRule(coolerHeat, {
	fits: {
		"as much as the processor's highest": [
			{ cooler: cooler(150), processor: { baseW: 65, peakW: 150 } },
			"enough",
			{ publishedW: 150, highW: 150, guessed: false },
		],
		"3.5 times the label, with the highest not known": [
			{ cooler: cooler(227.5), processor: { baseW: 65 } },
			"enough",
			{ publishedW: 227.5, highW: 228, guessed: true },
		],
		"a fixed limit is held at the top, not at the label": [
			{ cooler: cooler(150), processor: { baseW: 65, peakW: 150, limitPolicy: "fixed" } },
			"enough",
			{ publishedW: 150, highW: 150, guessed: false },
		],
		"a tenth more than the label, after a timed boost": [
			{ cooler: cooler(71.5), processor: { baseW: 65, peakW: 150, limitPolicy: "timed-boost" } },
			"enough",
			{ publishedW: 71.5, highW: 72, guessed: false },
		],
		"a tenth more than the label, with the highest not known": [
			{ cooler: cooler(72), processor: { baseW: 65, limitPolicy: "timed-boost" } },
			"enough",
			{ publishedW: 72, highW: 72, guessed: true },
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
		"just the label": [
			{ cooler: cooler(65), processor: { baseW: 65, peakW: 150, limitPolicy: "enforced-by-firmware" } },
			"plan-around",
			"between",
			{ publishedW: 65, lowW: 65, highW: 150, guessed: false },
		],
		"just the least that is held where boards lift the limit": [
			{ cooler: cooler(127.5), processor: { baseW: 65, peakW: 150, limitPolicy: "lifted-by-board" } },
			"plan-around",
			"between",
			{ publishedW: 127.5, lowW: 128, highW: 150, guessed: false },
		],
		"the same with the label not known": [
			{ cooler: cooler(128), processor: { peakW: 150, limitPolicy: "lifted-by-board" } },
			"plan-around",
			"between",
			{ publishedW: 128, lowW: 128, highW: 150, guessed: false },
		],
		"a little less than 3.5 times the label": [
			{ cooler: cooler(227), processor: { baseW: 65 } },
			"plan-around",
			"between",
			{ publishedW: 227, lowW: 65, highW: 228, guessed: true },
		],
		"the label of a fixed limit nobody gives in watts": [
			{ cooler: cooler(65), processor: { baseW: 65, limitPolicy: "fixed" } },
			"plan-around",
			"between",
			{ publishedW: 65, lowW: 65, highW: 228, guessed: true },
		],
	},
	fails: {
		"a watt less than the label": [
			{ cooler: cooler(64), processor: { baseW: 65, peakW: 150 } },
			"below",
			{ publishedW: 64, lowW: 65 },
		],
		"a watt less than a fixed limit": [
			{ cooler: cooler(149), processor: { baseW: 65, peakW: 150, limitPolicy: "fixed" } },
			"below",
			{ publishedW: 149, lowW: 150 },
		],
		"a watt less than a fixed limit, with the label not known": [
			{ cooler: cooler(149), processor: { peakW: 150, limitPolicy: "fixed" } },
			"below",
			{ publishedW: 149, lowW: 150 },
		],
		"less than the least that is held where boards lift the limit": [
			{ cooler: cooler(127), processor: { baseW: 65, peakW: 150, limitPolicy: "lifted-by-board" } },
			"below",
			{ publishedW: 127, lowW: 128 },
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
		"less than its highest, with the label of a timed boost not known": [
			{ cooler: cooler(49), processor: { peakW: 150, limitPolicy: "timed-boost" } },
			["processor.baseW"],
		],
		"nobody has said which processor": [{ cooler: cooler(150) }, ["processor"]],
	},
});
