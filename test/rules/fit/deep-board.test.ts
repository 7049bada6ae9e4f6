import { deepBoard } from "../../../src/rules/fit/deep-board.ts";
import { testRule } from "../test-rule.ts";

const deep = { form: "E-ATX", depthMm: 280 } as const;
const liquid = { kind: "liquid", radiatorMm: 360 } as const;

testRule(deepBoard, {
	fits: {
		"as deep as ATX": [{ board: { form: "E-ATX", depthMm: 244 }, case: {} }, "notDeep"],
		"a form that is no deeper": [{ board: { form: "microATX" }, case: {} }, "notDeep"],
		"no case is known": [{ board: deep }, "notAsked"],
		"nothing is known of its size": [{ board: {}, case: {} }, "notAsked"],
		"the case covers nothing": [{ board: deep, case: { deepBoardCovers: [] } }, "free", { depthMm: 280 }],
		"of no known depth, in a case where nothing is covered": [
			{ board: { form: "E-ATX" }, case: { deepBoardCovers: [] } },
			"coversNothing",
		],
	},
	cautions: {
		"a case still to choose": [{ board: deep, case: "open" }, "good-to-know", "noCase", { depthMm: 280 }],
		"openings for cables": [
			{ board: deep, case: { deepBoardCovers: ["cable openings"] } },
			"plan-around",
			"openings",
			{ depthMm: 280 },
		],
		"the front, and an air cooler": [
			{ board: deep, case: { deepBoardCovers: ["front radiator"] }, cooler: { kind: "air" } },
			"good-to-know",
			"noRadiator",
			{ depthMm: 280 },
		],
		"the front, and a radiator that goes to the top": [
			{
				board: deep,
				case: {
					deepBoardCovers: ["front radiator"],
					radiatorPlaces: [
						{ place: "front", lengthsMm: [360] },
						{ place: "top", lengthsMm: [240, 360] },
					],
				},
				cooler: liquid,
			},
			"plan-around",
			"radiatorElsewhere",
			{ depthMm: 280, places: ["top"] },
		],
		"the front, and a radiator that never went there": [
			{
				board: deep,
				case: { deepBoardCovers: ["front radiator"], radiatorPlaces: [{ place: "top", lengthsMm: [360] }] },
				cooler: liquid,
			},
			"good-to-know",
			"noRadiator",
			{ depthMm: 280 },
		],
	},
	fails: {
		"the front, and a radiator that goes nowhere else": [
			{
				board: { form: "ATX", depthMm: 245 },
				case: { deepBoardCovers: ["front radiator"], radiatorPlaces: [{ place: "front", lengthsMm: [360] }] },
				cooler: liquid,
			},
			"radiator",
			{ depthMm: 245, radiatorMm: 360 },
		],
	},
	cannotTell: {
		"E-ATX is no fixed size": [{ board: { form: "E-ATX" }, case: {} }, ["board.depthMm"], "depthUnknown"],
		"nobody looked into the case": [{ board: deep, case: {} }, ["case.deepBoardCovers"], "unknown", { depthMm: 280 }],
		"a radiator of no known length": [
			{ board: deep, case: { deepBoardCovers: ["front radiator"] }, cooler: { kind: "liquid" } },
			["cooler.radiatorMm", "case.radiatorPlaces"],
			"unknown",
			{ depthMm: 280 },
		],
	},
});
