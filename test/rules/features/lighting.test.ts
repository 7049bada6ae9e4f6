import { lighting } from "../../../src/rules/features/lighting.ts";
import { testRule } from "../test-rule.ts";

const board = (...volts: (5 | 12)[]) => ({
	headers: { lights: volts.map((one, index) => ({ name: `LIGHT_${index + 1}`, volts: one })) },
});

testRule(lighting, {
	fits: {
		"nobody has said": [{ board: board() }, "notAsked"],
		"no lights": [{ board: {}, lights: [] }, "notAsked"],
		"a header for each": [
			{ board: board(5, 12, 5), lights: ["5 V three-pin", "12 V four-pin", "5 V three-pin"] },
			"has",
			{ plugs: ["5 V three-pin", "12 V four-pin"] },
		],
		"the cooler's lights too": [
			{ board: board(5, 5), lights: ["5 V three-pin"], cooler: { headersUsed: { lights5V: 1 } } },
			"has",
			{ plugs: ["5 V three-pin"] },
		],
	},
	cautions: {
		"no header at all": [
			{ board: board(), lights: ["5 V three-pin", "12 V four-pin"] },
			"plan-around",
			"lacks",
			{ plugs: ["5 V three-pin", "12 V four-pin"] },
		],
		"a header of the other voltage is none": [
			{ board: board(12, 12), lights: ["5 V three-pin"] },
			"plan-around",
			"lacks",
			{ plugs: ["5 V three-pin"] },
		],
		"one light more than headers": [
			{ board: board(5), lights: ["5 V three-pin", "5 V three-pin"] },
			"good-to-know",
			"shared",
			{ plugs: ["5 V three-pin"] },
		],
		"the cooler's lights take the only one": [
			{ board: board(12), lights: ["12 V four-pin"], cooler: { headersUsed: { lights12V: 1 } } },
			"good-to-know",
			"shared",
			{ plugs: ["12 V four-pin"] },
		],
		"a plug of the maker's own": [{ board: {}, lights: ["maker's own"] }, "good-to-know", "ownController"],
		"a plug of the maker's own beside another": [
			{ board: board(5), lights: ["maker's own", "5 V three-pin"] },
			"good-to-know",
			"ownController",
		],
	},
	cannotTell: { "the page is silent": [{ board: {}, lights: ["5 V three-pin"] }, ["board.headers.lights"]] },
	needs: {
		"both kinds": [
			{ lights: ["5 V three-pin", "12 V four-pin", "5 V three-pin"] },
			"Lighting headers: 5 V three-pin, 12 V four-pin. 5 V and 12 V do not mix.",
		],
		"only a plug of the maker's own": [{ lights: ["maker's own"] }, null],
		"nobody has said": [{}, null],
	},
});
