import { supplyWatts } from "../../../src/rules/build/supply-watts.ts";
import { testRule } from "../test-rule.ts";

const sum = (sumW: number, limitW: number, more: { at12V?: boolean; guessed?: boolean } = {}) => ({
	sumW,
	limitW,
	wantedW: Math.ceil(sumW * 1.25),
	at12V: false,
	guessed: false,
	...more,
});
const processor = { baseW: 65, peakW: 125 };
const card = { watts: 200 };

// 75 W for the rest and a quarter for reserve are common practice; twice the label for the highest watts is from memory.
testRule(supplyWatts, {
	fits: {
		"sum and a quarter, exactly": [{ supply: { watts: 500 }, processor, graphicsCard: card }, "enough", sum(400, 500)],
		"without a card": [{ supply: { watts: 250 }, processor, graphicsCard: "none" }, "enough", sum(200, 250)],
		"the highest watts taken as twice the label": [
			{ supply: { watts: 506.25 }, processor: { baseW: 65 }, graphicsCard: card },
			"enough",
			sum(405, 506, { guessed: true }),
		],
		"just what the card's maker advises": [
			{ supply: { watts: 550 }, processor, graphicsCard: { ...card, supplyAdvisedW: 550 } },
			"enough",
			sum(400, 550),
		],
		"its 12 V output is nearly all": [
			{ supply: { watts: 510, twelveVoltA: 42 }, processor, graphicsCard: card },
			"enough",
			sum(400, 504, { at12V: true }),
		],
		"made in 2016": [{ supply: { watts: 500, bornIn: 2016 }, processor, graphicsCard: card }, "enough", sum(400, 500)],
		"a card not chosen yet": [
			{ supply: { watts: 500 }, processor, graphicsCard: "open" },
			"leftForCard",
			{ ...sum(200, 500), leftW: 200 },
		],
		"a processor not chosen yet": [{ supply: { watts: 500 }, processor: "open", graphicsCard: card }, "noProcessor"],
		"to be bought to suit": [{ supply: "open", processor, graphicsCard: card }, "open", { part: "supply" }],
		"no supply": [{ supply: "none", processor, graphicsCard: card }, "none", { part: "supply" }],
		// ATX12V and ATX12VO Power Supply Design Guide Addendum, doc. 621484, rev. 004, "Power Supplies with 12V Rails
		// Listed Together": 23 A for a 65 W processor and 4 A for the rest, 27 A without a card. Read in the document.
		"27 A for a 65 W processor without a card, as the guide budgets": [
			{ supply: { watts: 350, twelveVoltA: 27 }, processor: { baseW: 65 }, graphicsCard: "none" },
			"enough",
			sum(205, 324, { at12V: true, guessed: true }),
		],
		// A desktop board's technical product specification, sec. 2.5.1, p. 57: at least 320 W for a 45 W processor with
		// graphics of its own. Read in the document.
		"320 W for a 45 W processor without a card, as a board's specification asks": [
			{ supply: { watts: 320 }, processor: { baseW: 45 }, graphicsCard: "none" },
			"enough",
			sum(165, 320, { guessed: true }),
		],
	},
	cautions: {
		"a watt less than sum and a quarter": [
			{ supply: { watts: 499 }, processor, graphicsCard: card },
			"plan-around",
			"tight",
			sum(400, 499),
		],
		"just the sum": [{ supply: { watts: 400 }, processor, graphicsCard: card }, "plan-around", "tight", sum(400, 400)],
		"below the sum only by a guess": [
			{ supply: { watts: 390 }, processor: { baseW: 65 }, graphicsCard: card },
			"plan-around",
			"tight",
			sum(405, 390, { guessed: true }),
		],
		"tight without a card, and one will come": [
			{ supply: { watts: 249 }, processor, graphicsCard: "open" },
			"plan-around",
			"tight",
			sum(200, 249),
		],
		"a watt less than the card's maker advises": [
			{ supply: { watts: 549 }, processor, graphicsCard: { ...card, supplyAdvisedW: 550 } },
			"plan-around",
			"belowAdvice",
			{ watts: 549, advisedW: 550 },
		],
		"made in 2015": [
			{ supply: { watts: 500, bornIn: 2015 }, processor, graphicsCard: card },
			"good-to-know",
			"old",
			{ bornIn: 2015 },
		],
		// The same addendum: 26 A for a 125 W processor, 300 W / 12 V = 25 A for a card and 8 A for the rest, 59 A. What it
		// asks for lies between our plain sum (625 W) and the sum with reserve (782 W). Read in the document.
		"59 A for a 125 W processor and a 300 W card, as the guide budgets": [
			{
				supply: { watts: 750, twelveVoltA: 26 + 300 / 12 + 8 },
				processor: { baseW: 125 },
				graphicsCard: { watts: 300 },
			},
			"plan-around",
			"tight",
			sum(625, 708, { at12V: true, guessed: true }),
		],
	},
	fails: {
		"a watt less than the sum": [{ supply: { watts: 399 }, processor, graphicsCard: card }, "tooWeak", sum(400, 399)],
		"enough in all, too little at 12 V": [
			{ supply: { watts: 500, twelveVoltA: 33 }, processor, graphicsCard: card },
			"tooWeak",
			sum(400, 396, { at12V: true }),
		],
		"below even the label watts": [
			{ supply: { watts: 339 }, processor: { baseW: 65 }, graphicsCard: card },
			"tooWeak",
			sum(340, 339),
		],
		"too little for the card, whatever the processor": [
			{ supply: { watts: 250 }, graphicsCard: { watts: 200 } },
			"tooWeak",
			sum(275, 250),
		],
		"too little for the processor, whatever the card": [
			{ supply: { watts: 199 }, processor, graphicsCard: {} },
			"tooWeak",
			sum(200, 199),
		],
	},
	cannotTell: {
		"the label cannot be read": [{ supply: {}, processor, graphicsCard: card }, ["supply.watts"]],
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
