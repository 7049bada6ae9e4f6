import { cardHeight } from "../../../src/rules/build/card-height.ts";
import { testRule } from "../test-rule.ts";

const pair = (heightMm: number, maxMm: number) => ({
	graphicsCard: { heightMm },
	case: { cardMaxHeightMm: maxMm },
});
const withPlugs = (heightMm: number, maxMm: number, ...powerPlugs: ("8-pin" | "12V-2x6")[]) => ({
	...pair(heightMm, maxMm),
	graphicsCard: { heightMm, powerPlugs },
});

// 30 to 40 mm for the cable is common practice, no source.
testRule(cardHeight, {
	fits: {
		"just the room a cable needs": [withPlugs(120, 160, "8-pin"), "low", { heightMm: 120, maxMm: 160 }],
		"that room in tenths, without binary noise": [
			withPlugs(120.1, 160.1, "12V-2x6"),
			"low",
			{ heightMm: 120.1, maxMm: 160.1 },
		],
		"no power plug, exactly as high as there is room": [withPlugs(140, 140), "low", { heightMm: 140, maxMm: 140 }],
		"plugs not known, and room for a cable": [pair(120, 160), "low", { heightMm: 120, maxMm: 160 }],
		"no card": [{ graphicsCard: "none", case: { cardMaxHeightMm: 160 } }, "none", { part: "graphicsCard" }],
		"a case to be bought to suit": [{ graphicsCard: { heightMm: 120 }, case: "open" }, "open", { part: "case" }],
	},
	cautions: {
		"a millimetre less than a cable needs": [
			withPlugs(121, 160, "8-pin"),
			"plan-around",
			"cableTight",
			{ heightMm: 121, maxMm: 160, roomMm: 39 },
		],
		"a power plug, exactly as high as there is room": [
			withPlugs(140, 140, "12V-2x6"),
			"plan-around",
			"cableTight",
			{ heightMm: 140, maxMm: 140, roomMm: 0 },
		],
		"plugs not known, and too little room for a cable": [
			pair(121, 160),
			"good-to-know",
			"cableMaybe",
			{ maxMm: 160, roomMm: 39 },
		],
	},
	fails: {
		"a millimetre higher": [pair(141, 140), "tooHigh", { heightMm: 141, maxMm: 140, overMm: 1 }],
		"a tenth higher, without a power plug": [
			withPlugs(140.3, 140.2),
			"tooHigh",
			{ heightMm: 140.3, maxMm: 140.2, overMm: 0.1 },
		],
	},
	cannotTell: {
		"the card's page is silent": [{ graphicsCard: {}, case: { cardMaxHeightMm: 160 } }, ["graphicsCard.heightMm"]],
		"the case's page is silent": [{ graphicsCard: { heightMm: 120 }, case: {} }, ["case.cardMaxHeightMm"]],
		"nobody has said which case": [{ graphicsCard: { heightMm: 120 } }, ["case"]],
	},
});
