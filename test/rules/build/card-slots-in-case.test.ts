import { cardSlotsInCase } from "../../../src/rules/build/card-slots-in-case.ts";
import { testRule } from "../test-rule.ts";

const pair = (thicknessMm: number, cardSlots: number, bracketSlots?: number) => ({
	graphicsCard: { thicknessMm, ...(bracketSlots === undefined ? {} : { bracketSlots }) },
	case: { cardSlots },
});

// Slot pitch 0.800 in = 20.32 mm, SSI EEB 3.0, figure 1: two rows are 40.64 mm (derived).
testRule(cardSlotsInCase, {
	fits: {
		"exactly two rows": [pair(40.6, 2, 2), "thin", { thicknessMm: 40.6, cardSlots: 2, roomMm: 40.6 }],
		"one row": [pair(18, 1, 1), "thin", { thicknessMm: 18, cardSlots: 1, roomMm: 20.3 }],
		"a thick card in a tower": [pair(71, 7, 3), "thin", { thicknessMm: 71, cardSlots: 7, roomMm: 142.2 }],
		"bracket not known": [pair(40, 2), "thin", { thicknessMm: 40, cardSlots: 2, roomMm: 40.6 }],
		"no card": [{ graphicsCard: "none", case: { cardSlots: 2 } }, "none", { part: "graphicsCard" }],
	},
	cautions: {
		"a tenth thicker than two rows": [
			pair(40.7, 2, 2),
			"plan-around",
			"tight",
			{ thicknessMm: 40.7, cardSlots: 2, roomMm: 40.6, overMm: 0.1 },
		],
		"two and a half rows on a bracket of two": [
			pair(50, 2, 2),
			"plan-around",
			"tight",
			{ thicknessMm: 50, cardSlots: 2, roomMm: 40.6, overMm: 9.4 },
		],
		"just less than a whole row too thick": [
			pair(60.9, 2, 2),
			"plan-around",
			"tight",
			{ thicknessMm: 60.9, cardSlots: 2, roomMm: 40.6, overMm: 20.3 },
		],
	},
	fails: {
		"a whole row too thick": [pair(61, 2, 2), "tooThick", { thicknessMm: 61, cardSlots: 2, roomMm: 40.6 }],
		"a bracket of three before two openings": [pair(58, 2, 3), "bracketTooWide", { bracketSlots: 3, cardSlots: 2 }],
		"a bracket of two before one opening": [pair(20, 1, 2), "bracketTooWide", { bracketSlots: 2, cardSlots: 1 }],
		"no opening at all": [pair(18, 0), "noOpening"],
	},
	cannotTell: {
		"the card's page is silent": [{ graphicsCard: {}, case: { cardSlots: 2 } }, ["graphicsCard.thicknessMm"]],
		"the case's page is silent": [{ graphicsCard: { thicknessMm: 40 }, case: {} }, ["case.cardSlots"]],
		"nobody has said which case": [{ graphicsCard: { thicknessMm: 40 } }, ["case"]],
	},
});
