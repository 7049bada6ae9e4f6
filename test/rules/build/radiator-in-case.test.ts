import { radiatorInCase } from "../../../src/rules/build/radiator-in-case.ts";
import { testRule } from "../test-rule.ts";

const cooler = (radiatorMm: number, radiatorThicknessMm?: number) => ({
	kind: "liquid" as const,
	radiatorMm,
	...(radiatorThicknessMm === undefined ? {} : { radiatorThicknessMm }),
});
const front = { place: "front" as const, lengthsMm: [240, 280], maxThicknessMm: 60 };
const top = { place: "top" as const, lengthsMm: [240], maxThicknessMm: 52 };
const silentTop = { place: "top" as const, lengthsMm: [240, 360] };

testRule(radiatorInCase, {
	fits: {
		"as thick as there is room in front, too thick for the top": [
			{ cooler: cooler(240, 60), case: { radiatorPlaces: [front, top] } },
			"hasPlace",
			{ radiatorMm: 240, places: ["front"] },
		],
		"two places, as thick as there is room at the top": [
			{ cooler: cooler(240, 52), case: { radiatorPlaces: [front, top] } },
			"hasPlace",
			{ radiatorMm: 240, places: ["front", "top"] },
		],
		"a place that names no thickness, and none is known": [
			{ cooler: cooler(360), case: { radiatorPlaces: [silentTop] } },
			"hasPlace",
			{ radiatorMm: 360, places: ["top"] },
		],
		"an air cooler, whatever the case": [{ cooler: { kind: "air" } }, "air"],
		"a case to be bought to suit": [{ cooler: cooler(240), case: "open" }, "noCase"],
		"no case": [{ cooler: cooler(240), case: "none" }, "noCase"],
		"the cooler from the box": [{ cooler: "none", case: { radiatorPlaces: [] } }, "none", { part: "cooler" }],
	},
	cautions: {
		"only a longer one for the same fans is listed": [
			{ cooler: cooler(240), case: { radiatorPlaces: [{ place: "side", lengthsMm: [360] }] } },
			"plan-around",
			"longerListed",
			{ radiatorMm: 240, places: ["side"] },
		],
	},
	fails: {
		"longer than any place takes": [
			{ cooler: cooler(360, 52), case: { radiatorPlaces: [front, top] } },
			"noLength",
			{ radiatorMm: 360, lengths: ["240", "280"] },
		],
		"other fans than those of the longer one": [
			{ cooler: cooler(280), case: { radiatorPlaces: [silentTop] } },
			"noLength",
			{ radiatorMm: 280, lengths: ["240", "360"] },
		],
		"a tenth thicker than any place takes": [
			{ cooler: cooler(240, 60.1), case: { radiatorPlaces: [front, top] } },
			"tooThick",
			{ thicknessMm: 60.1, maxMm: 60 },
		],
		"no place for a radiator": [{ cooler: cooler(240), case: { radiatorPlaces: [] } }, "noPlaces"],
		"no place, whatever the radiator's length": [
			{ cooler: { kind: "liquid" }, case: { radiatorPlaces: [] } },
			"noPlaces",
		],
		"a place that takes no length": [
			{ cooler: cooler(240), case: { radiatorPlaces: [{ place: "front", lengthsMm: [] }] } },
			"noPlaces",
		],
	},
	cannotTell: {
		"the kind is not known": [{ cooler: {}, case: { radiatorPlaces: [front] } }, ["cooler.kind"]],
		"the radiator's length is not known": [
			{ cooler: { kind: "liquid" }, case: { radiatorPlaces: [front] } },
			["cooler.radiatorMm"],
		],
		"the case's page is silent": [{ cooler: cooler(240), case: {} }, ["case.radiatorPlaces"]],
		"nothing is known of either": [
			{ cooler: { kind: "liquid" }, case: {} },
			["cooler.radiatorMm", "case.radiatorPlaces"],
		],
		"the thickness is not known": [
			{ cooler: cooler(240), case: { radiatorPlaces: [front, top] } },
			["cooler.radiatorThicknessMm"],
		],
		"nobody has said which case": [{ cooler: cooler(240) }, ["case"]],
		"nobody has said which cooler": [{ case: { radiatorPlaces: [front] } }, ["cooler"]],
	},
});
