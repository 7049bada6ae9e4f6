import { cardInCase } from "../../../src/rules/build/card-in-case.ts";
import { testRule } from "../test-rule.ts";

testRule(cardInCase, {
	fits: {
		"exactly as long as there is room": [
			{ graphicsCard: { lengthMm: 300 }, case: { cardMaxLengthMm: 300 } },
			"short",
			{ lengthMm: 300, maxMm: 300 },
		],
		"no card": [{ graphicsCard: "none", case: { cardMaxLengthMm: 300 } }, "none", { part: "graphicsCard" }],
		"a card not chosen yet": [{ graphicsCard: "open", case: {} }, "open", { part: "graphicsCard" }],
		"a case to be bought to suit": [{ graphicsCard: { lengthMm: 300 }, case: "open" }, "open", { part: "case" }],
	},
	fails: {
		"a millimetre longer": [
			{ graphicsCard: { lengthMm: 301 }, case: { cardMaxLengthMm: 300 } },
			"tooLong",
			{ lengthMm: 301, maxMm: 300, overMm: 1 },
		],
		"a tenth longer, told without binary noise": [
			{ graphicsCard: { lengthMm: 300.3 }, case: { cardMaxLengthMm: 300.2 } },
			"tooLong",
			{ lengthMm: 300.3, maxMm: 300.2, overMm: 0.1 },
		],
	},
	cannotTell: {
		"the card's page is silent": [{ graphicsCard: {}, case: { cardMaxLengthMm: 300 } }, ["graphicsCard.lengthMm"]],
		"the case's page is silent": [{ graphicsCard: { lengthMm: 300 }, case: {} }, ["case.cardMaxLengthMm"]],
		"nobody has said which case": [{ graphicsCard: { lengthMm: 300 } }, ["case"]],
		"nobody has said anything": [{}, ["graphicsCard", "case"]],
	},
});
