import { radiatorAboveBoard } from "../../../src/rules/fit/radiator-above-board.ts";
import type { RadiatorPlace } from "../../../src/rules/radiator-places.ts";
import { testRule } from "../test-rule.ts";

const liquid = (radiatorThicknessMm?: number) => ({
	kind: "liquid" as const,
	radiatorMm: 240,
	...(radiatorThicknessMm === undefined ? {} : { radiatorThicknessMm }),
});
const place = (where: RadiatorPlace["place"], maxThicknessMm?: number): RadiatorPlace => ({
	place: where,
	lengthsMm: [240],
	...(maxThicknessMm === undefined ? {} : { maxThicknessMm }),
});
const at = (...radiatorPlaces: RadiatorPlace[]) => ({ radiatorPlaces });
type HeatSink = "none" | "one side" | "both sides" | "both sides with heat pipe" | "finned";
const sinks = (heatSink: HeatSink) => ({ powerDelivery: { heatSink } });
const low = sinks("both sides");
const finned = sinks("finned");
const hot = "the heat sinks beside the socket";

// 40 mm of memory and 2 mm to spare are own conventions.
testRule(radiatorAboveBoard, {
	fits: {
		"2 mm to spare, below anything": [
			{ board: finned, memory: { heightMm: 52 }, cooler: liquid(53), case: at(place("top", 55)) },
			"counted",
			{ thicknessMm: 53, maxMm: 55 },
		],
		"little to spare, and memory just low enough": [
			{ board: low, memory: { heightMm: 40 }, cooler: liquid(55), case: at(place("top", 55)) },
			"low",
		],
		"no room named, and memory to be bought": [
			{ board: low, memory: "open", cooler: liquid(55), case: at(place("top")) },
			"low",
		],
		"a length that is not known matters to nothing tall": [
			{ board: low, memory: { heightMm: 31 }, cooler: { kind: "liquid" }, case: {} },
			"low",
		],
		"only the front takes it": [
			{ board: finned, memory: { heightMm: 52 }, cooler: liquid(52), case: at(place("front", 55)) },
			"notTop",
		],
		"too thick for the top, so it goes in front": [
			{ board: finned, memory: { heightMm: 52 }, cooler: liquid(52), case: at(place("front", 55), place("top", 45)) },
			"notTop",
		],
		"too long for the top, so it goes in front": [
			{
				board: finned,
				memory: { heightMm: 52 },
				cooler: { ...liquid(52), radiatorMm: 360 },
				case: at({ place: "front", lengthsMm: [360] }, place("top")),
			},
			"notTop",
		],
		"no heat sinks are known, but another place takes it": [
			{ board: {}, memory: { heightMm: 31 }, cooler: liquid(55), case: at(place("side"), place("top")) },
			"elsewhere",
			{ places: ["side"] },
		],
		"its thickness is not known, but another place takes it": [
			{ board: finned, memory: { heightMm: 31 }, cooler: liquid(), case: at(place("top", 55), place("front")) },
			"elsewhere",
			{ places: ["front"] },
		],
		"in front for certain, with the kind of cooler not known": [
			{ board: finned, memory: { heightMm: 52 }, cooler: { radiatorMm: 240 }, case: at(place("front")) },
			"notTop",
		],
		"close, but the front takes it too": [
			{ board: finned, memory: { heightMm: 52 }, cooler: liquid(55), case: at(place("front", 60), place("top", 55)) },
			"elsewhere",
			{ places: ["front"] },
		],
		"a board as deep as ATX and a card just short enough leave the front free": [
			{
				board: { ...finned, form: "E-ATX", depthMm: 244 },
				memory: { heightMm: 52 },
				cooler: liquid(55),
				graphicsCard: { lengthMm: 300 },
				case: {
					...at(place("front"), place("top")),
					deepBoardCovers: ["front radiator"],
					cardMaxLengthWithRadiatorMm: 300,
				},
			},
			"elsewhere",
			{ places: ["front"] },
		],
		"the roomier of two places in the top": [
			{
				board: finned,
				memory: { heightMm: 52 },
				cooler: liquid(53),
				case: at(place("top"), place("top", 54), place("top", 55)),
			},
			"counted",
			{ thicknessMm: 53, maxMm: 55 },
		],
		"an air cooler": [
			{ board: finned, memory: { heightMm: 52 }, cooler: { kind: "air" }, case: at(place("top")) },
			"notAsked",
		],
		"no case yet": [{ board: finned, memory: { heightMm: 52 }, cooler: liquid(55), case: "open" }, "notAsked"],
		"nobody has said which case": [{ board: finned, memory: { heightMm: 52 }, cooler: liquid(55) }, "notAsked"],
		"no cooler": [{ board: finned, cooler: "none", case: at(place("top")) }, "notAsked"],
	},
	fails: {
		"the front takes it too, but a deep board lies over it": [
			{
				board: { ...finned, form: "ATX", depthMm: 245 },
				memory: { heightMm: 31 },
				cooler: liquid(55),
				case: { ...at(place("front"), place("top", 55)), deepBoardCovers: ["front radiator"] },
			},
			"tight",
			{ thicknessMm: 55, maxMm: 55, tall: [hot] },
		],
		"by its form alone a board counts as deep": [
			{
				board: { ...finned, form: "E-ATX" },
				memory: { heightMm: 31 },
				cooler: liquid(55),
				case: { ...at(place("front"), place("top", 55)), deepBoardCovers: ["front radiator"] },
			},
			"tight",
			{ thicknessMm: 55, maxMm: 55, tall: [hot] },
		],
		"the front takes it too, but the card is then too long": [
			{
				board: finned,
				memory: { heightMm: 31 },
				cooler: liquid(55),
				graphicsCard: { lengthMm: 301 },
				case: { ...at(place("front"), place("top", 55)), cardMaxLengthWithRadiatorMm: 300 },
			},
			"tight",
			{ thicknessMm: 55, maxMm: 55, tall: [hot] },
		],
		"less than 2 mm to spare, above tall memory": [
			{ board: low, memory: { heightMm: 40.1 }, cooler: liquid(53.1), case: at(place("top", 55)) },
			"tight",
			{ thicknessMm: 53.1, maxMm: 55, tall: ["the memory of 40.1 mm"] },
		],
		"none to spare, above finned heat sinks": [
			{ board: finned, memory: { heightMm: 31 }, cooler: liquid(55), case: at(place("top", 55)) },
			"tight",
			{ thicknessMm: 55, maxMm: 55, tall: [hot] },
		],
		"too thick for the front": [
			{ board: finned, memory: { heightMm: 31 }, cooler: liquid(55), case: at(place("front", 52), place("top", 55)) },
			"tight",
			{ thicknessMm: 55, maxMm: 55, tall: [hot] },
		],
		"no room named, above a heat pipe": [
			{
				board: sinks("both sides with heat pipe"),
				memory: { heightMm: 31 },
				cooler: liquid(55),
				case: at(place("top")),
			},
			"unmeasured",
			{ tall: [hot] },
		],
		"no room named, and neither the thickness": [
			{ board: low, memory: { heightMm: 44 }, cooler: liquid(), case: at(place("top")) },
			"unmeasured",
			{ tall: ["the memory of 44 mm"] },
		],
	},
	cannotTell: {
		"how thick radiator and fans are": [
			{ board: finned, memory: { heightMm: 31 }, cooler: liquid(), case: at(place("top", 55)) },
			["cooler.radiatorThicknessMm"],
			"unsure",
		],
		"how thick they are, nor what stands tall": [
			{ board: {}, memory: {}, cooler: liquid(), case: at(place("top", 55)) },
			["cooler.radiatorThicknessMm", "memory.heightMm", "board.powerDelivery.heatSink"],
			"unsure",
		],
		"how high the memory is, with little to spare": [
			{ board: low, memory: {}, cooler: liquid(55), case: at(place("top", 55)) },
			["memory.heightMm"],
			"unsure",
		],
		"which memory it is, with no room named": [
			{ board: low, cooler: liquid(55), case: at(place("top")) },
			["memory"],
			"unsure",
		],
		"what heat sinks there are, with little to spare": [
			{ board: {}, memory: { heightMm: 31 }, cooler: liquid(54), case: at(place("top", 55)) },
			["board.powerDelivery.heatSink"],
			"unsure",
		],
		"where the radiator goes": [
			{ board: finned, memory: { heightMm: 31 }, cooler: liquid(55), case: {} },
			["case.radiatorPlaces"],
			"unsure",
		],
		"how long it is": [
			{ board: finned, memory: { heightMm: 31 }, cooler: { kind: "liquid" }, case: at(place("top")) },
			["cooler.radiatorMm"],
			"unsure",
		],
		"the kind of cooler": [
			{ board: finned, memory: { heightMm: 31 }, cooler: { radiatorMm: 240 }, case: at(place("top")) },
			["cooler.kind"],
			"unsure",
		],
	},
});
