import { cardInCase } from "../../../src/rules/build/card-in-case.ts";
import { testRule } from "../test-rule.ts";

const front = { place: "front", lengthsMm: [240, 360], maxThicknessMm: 60 } as const;
const top = { place: "top", lengthsMm: [240], maxThicknessMm: 55 } as const;

/** A 240 mm radiator beside a card, in a case that leaves 320 mm without a radiator in front. */
const withRadiator = (
	lengthMm: number,
	places: readonly {
		readonly place: "front" | "top";
		readonly lengthsMm: readonly number[];
		readonly maxThicknessMm?: number;
	}[],
	{ withRadiatorMm, thicknessMm }: { withRadiatorMm?: number; thicknessMm?: number } = {},
) => ({
	graphicsCard: { lengthMm },
	cooler: {
		kind: "liquid" as const,
		radiatorMm: 240,
		...(thicknessMm === undefined ? {} : { radiatorThicknessMm: thicknessMm }),
	},
	case: {
		cardMaxLengthMm: 320,
		radiatorPlaces: places.map((place) => ({ ...place, lengthsMm: [...place.lengthsMm] })),
		...(withRadiatorMm === undefined ? {} : { cardMaxLengthWithRadiatorMm: withRadiatorMm }),
	},
});

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
		"an air cooler takes no length": [
			{
				graphicsCard: { lengthMm: 300 },
				case: { cardMaxLengthMm: 300, cardMaxLengthWithRadiatorMm: 270 },
				cooler: { kind: "air" },
			},
			"short",
			{ lengthMm: 300, maxMm: 300 },
		],
		"the radiator in front, exactly as long as there is room then": [
			withRadiator(290, [front], { withRadiatorMm: 290 }),
			"shortWithRadiator",
			{ lengthMm: 290, maxMm: 290 },
		],
		"the radiator goes to the top, and how long a card is beside one in front is not known": [
			withRadiator(300, [front, top], { thicknessMm: 55 }),
			"short",
			{ lengthMm: 300, maxMm: 320 },
		],
		"the radiator goes to the top only": [
			withRadiator(300, [top], { withRadiatorMm: 290 }),
			"short",
			{ lengthMm: 300, maxMm: 320 },
		],
		"no place takes the radiator, which is for another rule to say": [
			withRadiator(300, [{ ...front, lengthsMm: [280] }], { withRadiatorMm: 290 }),
			"short",
			{ lengthMm: 300, maxMm: 320 },
		],
		"a radiator too thick for the front": [
			withRadiator(300, [front], { withRadiatorMm: 290, thicknessMm: 61 }),
			"short",
			{ lengthMm: 300, maxMm: 320 },
		],
	},
	cautions: {
		"the radiator must not go in front": [
			withRadiator(291, [front, top], { withRadiatorMm: 290, thicknessMm: 55 }),
			"good-to-know",
			"radiatorElsewhere",
			{ lengthMm: 291, maxMm: 290 },
		],
		"the top names no thickness": [
			withRadiator(291, [front, { place: "top", lengthsMm: [240] }], { withRadiatorMm: 290 }),
			"good-to-know",
			"radiatorElsewhere",
			{ lengthMm: 291, maxMm: 290 },
		],
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
		"too long even without the radiator in front": [
			withRadiator(321, [front], { withRadiatorMm: 290 }),
			"tooLong",
			{ lengthMm: 321, maxMm: 320, overMm: 1 },
		],
		"the radiator in front, a millimetre longer than there is room then": [
			withRadiator(291, [front], { withRadiatorMm: 290, thicknessMm: 60 }),
			"tooLongWithRadiator",
			{ lengthMm: 291, maxMm: 290, overMm: 1 },
		],
		"only a longer radiator is listed in front, which takes the same screw slots": [
			withRadiator(300.3, [{ place: "front", lengthsMm: [360] }], { withRadiatorMm: 300.2 }),
			"tooLongWithRadiator",
			{ lengthMm: 300.3, maxMm: 300.2, overMm: 0.1 },
		],
		"the top is too thin, so it must go in front": [
			withRadiator(291, [front, top], { withRadiatorMm: 290, thicknessMm: 56 }),
			"tooLongWithRadiator",
			{ lengthMm: 291, maxMm: 290, overMm: 1 },
		],
	},
	cannotTell: {
		"the card's page is silent": [{ graphicsCard: {}, case: { cardMaxLengthMm: 300 } }, ["graphicsCard.lengthMm"]],
		"the case's page is silent": [{ graphicsCard: { lengthMm: 300 }, case: {} }, ["case.cardMaxLengthMm"]],
		"nobody has said which case": [{ graphicsCard: { lengthMm: 300 } }, ["case"]],
		"nobody has said anything": [{}, ["graphicsCard", "case"]],
		"the radiator in front, and how long a card may be then is not known": [
			withRadiator(300, [{ place: "front", lengthsMm: [240] }]),
			["case.cardMaxLengthWithRadiatorMm"],
			"radiatorRoomUnknown",
		],
		"whether the radiator is thin enough for the top is not known": [
			withRadiator(291, [front, top], { withRadiatorMm: 290 }),
			["cooler.radiatorThicknessMm"],
			"radiatorPlaceUnknown",
		],
		"the case's places for radiators are not known": [
			{
				graphicsCard: { lengthMm: 300 },
				cooler: { kind: "liquid", radiatorMm: 240 },
				case: { cardMaxLengthMm: 320, cardMaxLengthWithRadiatorMm: 290 },
			},
			["case.radiatorPlaces"],
			"radiatorPlaceUnknown",
		],
		"nothing is known of the radiator": [
			{ graphicsCard: { lengthMm: 300 }, cooler: { kind: "liquid" }, case: { cardMaxLengthMm: 320 } },
			["case.radiatorPlaces", "cooler.radiatorMm"],
			"radiatorPlaceUnknown",
		],
	},
});
