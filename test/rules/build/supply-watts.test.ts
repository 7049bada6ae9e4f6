import { describe, expect, test } from "vitest";
import { supplyWatts } from "../../../src/rules/build/supply-watts.ts";
import { testRule } from "../test-rule.ts";

const sum = (sumW: number, limitW: number, more: { twelveVoltA?: number; guessed?: boolean; mostW?: number } = {}) => {
	const { mostW = sumW, ...rest } = more;
	return { sumW, limitW, wantedW: Math.ceil(mostW * 1.25), guessed: false, ...rest };
};
// 121.8 W / 0.87 / 11.2 V = 12.5 A, which are 150 W at 12 V; with 200 W and 8 A of 12 V that is 446 W in all.
const processor = { baseW: 65, peakW: 121.8 };
const card = { watts: 200 };
/** Its highest watts come to so many A at 12 V. */
const processorOf = (amps: number, baseW: number) => ({ baseW, peakW: amps * 0.87 * 11.2 });

// A quarter for reserve is common practice. A label of 65 W leaves 87.75 to 227.5 W (108.07 to 280.17 W at 12 V): with card
// and rest 404.07 to 576.17 W.
testRule(supplyWatts, {
	fits: {
		"sum and a quarter, exactly": [
			{ supply: { watts: 557.5 }, processor, graphicsCard: card },
			"enough",
			sum(446, 557),
		],
		"without a card": [{ supply: { watts: 247.5 }, processor, graphicsCard: "none" }, "enough", sum(198, 247)],
		"the most that the label leaves": [
			{ supply: { watts: 720.25 }, processor: { baseW: 65 }, graphicsCard: card },
			"enough",
			sum(577, 720, { guessed: true, mostW: 576.17 }),
		],
		"just what the card's maker advises": [
			{ supply: { watts: 600 }, processor, graphicsCard: { ...card, supplyAdvisedW: 600 } },
			"enough",
			sum(446, 600),
		],
		"its 12 V output is nearly all": [
			{ supply: { watts: 600, twelveVoltA: 46.5 }, processor, graphicsCard: card },
			"enough",
			sum(446, 558, { twelveVoltA: 46.5 }),
		],
		"a 12 V output above the rating gives the rating": [
			{ supply: { watts: 558, twelveVoltA: 47 }, processor, graphicsCard: card },
			"enough",
			sum(446, 558),
		],
		"made in 2016": [{ supply: { watts: 600, bornIn: 2016 }, processor, graphicsCard: card }, "enough", sum(446, 600)],
		"a card not chosen yet": [
			{ supply: { watts: 500 }, processor, graphicsCard: "open" },
			"leftForCard",
			{ ...sum(198, 500), leftW: 154 },
		],
		"one watt left for a card": [
			{ supply: { watts: 308.75 }, processor, graphicsCard: "open" },
			"leftForCard",
			{ ...sum(198, 308), leftW: 1 },
		],
		"a processor not chosen yet": [{ supply: { watts: 500 }, processor: "open", graphicsCard: card }, "noProcessor"],
		"to be bought to suit": [{ supply: "open", processor, graphicsCard: card }, "open", { part: "supply" }],
		"no supply": [{ supply: "none", processor, graphicsCard: card }, "none", { part: "supply" }],
		// A desktop board's technical product specification, sec. 2.5.1, p. 57: at least 320 W for a 45 W processor with
		// graphics of its own. Read in the document. 3.5 times 45 W are 193.97 W at 12 V, and 48 W for the rest.
		"320 W for a 45 W processor without a card, as a board's specification asks": [
			{ supply: { watts: 320 }, processor: { baseW: 45 }, graphicsCard: "none" },
			"enough",
			sum(242, 320, { guessed: true, mostW: 241.97 }),
		],
		"a card of many watts, with a lead that makes the supply stand its peaks": [
			{
				supply: { watts: 1135, native12V2x6: [{ watts: 600 }] },
				processor: processorOf(1, 35),
				graphicsCard: { watts: 800 },
			},
			"enough",
			sum(908, 1135),
		],
		"a card of many watts, and nobody has named the leads": [
			{ supply: { watts: 1135 }, processor: processorOf(1, 35), graphicsCard: { watts: 800 } },
			"enough",
			sum(908, 1135),
		],
		"made before 2022, and the peaks just within a tenth more": [
			{ supply: { watts: 587.3, bornIn: 2021 }, processor, graphicsCard: card },
			"enough",
			sum(446, 587),
		],
	},
	cautions: {
		"a little less than sum and a quarter": [
			{ supply: { watts: 557.4 }, processor, graphicsCard: card },
			"plan-around",
			"tight",
			sum(446, 557),
		],
		"just the sum": [{ supply: { watts: 446 }, processor, graphicsCard: card }, "plan-around", "tight", sum(446, 446)],
		"just the most that the label leaves": [
			{ supply: { watts: 576.17 }, processor: { baseW: 65 }, graphicsCard: card },
			"plan-around",
			"tight",
			sum(577, 576, { guessed: true, mostW: 576.17 }),
		],
		// 1.1 to 1.35 times 121.8 W with the clock raised (from memory): 165 to 202.5 W at 12 V, with card and rest 461 to 498.5.
		"too little for a raised clock, should it take the most": [
			{ supply: { watts: 480 }, processor, graphicsCard: card, clockPlan: "done-before" },
			"plan-around",
			"tight",
			sum(499, 480, { mostW: 498.5 }),
		],
		"tight without a card, and one will come": [
			{ supply: { watts: 247 }, processor, graphicsCard: "open" },
			"plan-around",
			"tight",
			sum(198, 247),
		],
		"enough without a card, and nothing left for the one that will come": [
			{ supply: { watts: 308.7 }, processor, graphicsCard: "open" },
			"plan-around",
			"noneLeftForCard",
			sum(198, 308),
		],
		"a watt less than the card's maker advises": [
			{ supply: { watts: 599 }, processor, graphicsCard: { ...card, supplyAdvisedW: 600 } },
			"plan-around",
			"belowAdvice",
			{ watts: 599, advisedW: 600 },
		],
		"made in 2015": [
			{ supply: { watts: 600, bornIn: 2015 }, processor, graphicsCard: card },
			"good-to-know",
			"old",
			{ bornIn: 2015 },
		],
		// ATX12VO guide, doc. 613768, rev. 2.01, table 3-3: 145 % for 1 ms without a 12V-2x6 lead. Read in the document.
		// That a card's peak is twice its watts for that long is from memory.
		"the card's short peaks, above what a supply without the lead must stand": [
			{
				supply: { watts: 1135, native12V2x6: [] },
				processor: processorOf(1, 35),
				graphicsCard: { watts: 800 },
			},
			"good-to-know",
			"shortPeaks",
			{ whose: "graphics card", peakW: 1708, standsW: 1645 },
		],
		"made before 2022, and the card's peaks above a tenth more": [
			{ supply: { watts: 587.2, bornIn: 2021 }, processor, graphicsCard: card },
			"good-to-know",
			"shortPeaksOlder",
			{ whose: "graphics card", peakW: 646, standsW: 645, bornIn: 2021 },
		],
		"made before 2022, and the processor's peaks above a tenth more": [
			{ supply: { watts: 225, bornIn: 2021 }, processor: processorOf(11, 35), graphicsCard: "none" },
			"good-to-know",
			"shortPeaksOlder",
			{ whose: "processor", peakW: 276, standsW: 247, bornIn: 2021 },
		],
		// ATX12V and ATX12VO Power Supply Design Guide Addendum, doc. 621484, rev. 004, "Power Supplies with 12V Rails
		// Listed Together": 23 A for a 65 W processor and 4 A for the rest, 27 A without a card; 26 A for a 125 W
		// processor, 300 W / 12 V = 25 A for a card and 8 A for the rest, 59 A. Read in the document. It asks for no reserve.
		"27 A for a 65 W processor without a card, as the guide budgets": [
			{ supply: { watts: 350, twelveVoltA: 27 }, processor: processorOf(23, 65), graphicsCard: "none" },
			"plan-around",
			"tight",
			sum(324, 324, { twelveVoltA: 27 }),
		],
		"59 A for a 125 W processor and a 300 W card, as the guide budgets": [
			{ supply: { watts: 750, twelveVoltA: 59 }, processor: processorOf(26, 125), graphicsCard: { watts: 300 } },
			"plan-around",
			"tight",
			sum(708, 708, { twelveVoltA: 59 }),
		],
	},
	fails: {
		"a little less than the sum": [
			{ supply: { watts: 445.9 }, processor, graphicsCard: card },
			"tooWeak",
			sum(446, 445),
		],
		"enough in all, too little at 12 V": [
			{ supply: { watts: 500, twelveVoltA: 37 }, processor, graphicsCard: card },
			"tooWeak",
			sum(446, 444, { twelveVoltA: 37 }),
		],
		"too little for a raised clock, whatever it takes": [
			{ supply: { watts: 460 }, processor, graphicsCard: card, clockPlan: "done-before" },
			"tooWeak",
			sum(461, 460, { mostW: 498.5 }),
		],
		"an ampere less than the guide budgets": [
			{ supply: { watts: 750, twelveVoltA: 58 }, processor: processorOf(26, 125), graphicsCard: { watts: 300 } },
			"tooWeak",
			sum(708, 696, { twelveVoltA: 58 }),
		],
		"below even the least that the label leaves": [
			{ supply: { watts: 404 }, processor: { baseW: 65 }, graphicsCard: card },
			"tooWeak",
			sum(405, 404, { guessed: true, mostW: 576.17 }),
		],
		"too little for the card, whatever the processor": [
			{ supply: { watts: 295 }, graphicsCard: { watts: 200 } },
			"tooWeak",
			sum(296, 295),
		],
		"too little for the processor, whatever the card": [
			{ supply: { watts: 245 }, processor, graphicsCard: {} },
			"tooWeak",
			sum(246, 245),
		],
		"too little for the processor, with or without a card": [
			{ supply: { watts: 197 }, processor },
			"tooWeak",
			sum(198, 197),
		],
	},
	cannotTell: {
		"the label cannot be read": [{ supply: {}, processor, graphicsCard: card }, ["supply.watts"]],
		"just the least that the label leaves": [
			{ supply: { watts: 404.1 }, processor: { baseW: 65 }, graphicsCard: card },
			["processor.peakW"],
			"onlyLabel",
			{ ...sum(577, 404, { guessed: true, mostW: 576.17 }), leastW: 405 },
		],
		"a little less than the most that the label leaves": [
			{ supply: { watts: 576 }, processor: { baseW: 65 }, graphicsCard: card },
			["processor.peakW"],
			"onlyLabel",
			{ ...sum(577, 576, { guessed: true, mostW: 576.17 }), leastW: 405 },
		],
		"the card's watts are not known": [{ supply: { watts: 500 }, processor, graphicsCard: {} }, ["graphicsCard.watts"]],
		"the processor's watts are not known": [
			{ supply: { watts: 500 }, processor: {}, graphicsCard: card },
			["processor.peakW"],
		],
		"nobody has said whether there will be a card": [{ supply: { watts: 500 }, processor }, ["graphicsCard"]],
		"nobody has said anything but the supply": [{ supply: { watts: 500 } }, ["processor", "graphicsCard"]],
		"nobody has said which supply": [{ processor, graphicsCard: card }, ["supply"]],
	},
});

// Supplies are sold in steps of 50 W: common practice, no source.
describe("the supply to plan is one that is sold", () => {
	test.each([
		[550, 550],
		[551, 600],
		[558, 600],
	])("%i W wanted: %i W", (wantedW, soldW) => {
		for (const messageId of ["tooWeak", "tight"])
			expect(supplyWatts.advice?.[messageId]?.({ wantedW })).toContain(` ${soldW} W`);
		expect(supplyWatts.messages["tight"]?.({ ...sum(446, 446), wantedW })).toContain(`it would be ${wantedW} W`);
	});
});
