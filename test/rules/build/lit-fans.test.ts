import { litFans } from "../../../src/rules/build/lit-fans.ts";
import { partNames } from "../rule-subject.ts";
import { testRule } from "../test-rule.ts";

const dark = { headersUsed: { fan: 1, lights5V: 0, lights12V: 0 } };
const lit = { headersUsed: { fan: 1, lights5V: 1, lights12V: 0 } };
const strip = ["5 V three-pin" as const];
const cooler = partNames.cooler;

testRule(litFans, {
	fits: {
		"nobody has said": [{}, "notLit"],
		"no lights": [{ cooler: dark, caseFans: 3, lights: [] }, "notLit"],
		"case fans, and nobody has named lights": [{ cooler: dark, caseFans: 3 }, "notLit"],
		"lights, and no fan": [{ cooler: dark, caseFans: 0, lights: strip }, "notLit"],
		"the cooler from the processor's box": [{ cooler: "none", lights: strip }, "notLit"],
		"who has no lights does not mind what the cooler has": [{ cooler: {}, lights: [] }, "notLit"],
	},
	cautions: {
		"the cooler has one": [{ cooler: lit }, "good-to-know", "cooler", { cooler, plugs: ["1 plug (5 V, three holes)"] }],
		"and of both kinds, though no lights are named": [
			{ cooler: { headersUsed: { lights5V: 2, lights12V: 1 } }, caseFans: 2, lights: [] },
			"good-to-know",
			"cooler",
			{ cooler, plugs: ["2 plugs (5 V, three holes)", "1 plug (12 V, four holes)"] },
		],
		"only one of the two kinds is known": [
			{ cooler: { headersUsed: { lights12V: 1 } } },
			"good-to-know",
			"cooler",
			{ cooler, plugs: ["1 plug (12 V, four holes)"] },
		],
		"one case fan and lights": [{ cooler: dark, caseFans: 1, lights: strip }, "good-to-know", "caseFans", { fans: 1 }],
		"several case fans and lights": [
			{ cooler: "open", caseFans: 6, lights: ["maker's own"] },
			"good-to-know",
			"caseFans",
			{ fans: 6 },
		],
		"fans and the cooler": [
			{ cooler: lit, caseFans: 3, lights: strip },
			"good-to-know",
			"both",
			{ cooler, plugs: ["1 plug (5 V, three holes)"], fans: 3 },
		],
	},
	cannotTell: {
		"lights are wished, and the cooler's page is silent": [
			{ cooler: {}, lights: strip },
			["cooler.headersUsed.lights5V", "cooler.headersUsed.lights12V"],
			"unsure",
			{ cooler },
		],
		"one of the two kinds is not known": [
			{ cooler: { headersUsed: { lights5V: 0 } }, caseFans: 0, lights: strip },
			["cooler.headersUsed.lights12V"],
			"unsure",
			{ cooler },
		],
	},
});
