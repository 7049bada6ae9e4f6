import { wiredSpeed } from "../../../src/rules/features/wired-speed.ts";
import { testRule } from "../test-rule.ts";

testRule(wiredSpeed, {
	fits: {
		"nobody has said": [{ board: { wiredGbps: [] } }, "notAsked"],
		"no wired network": [{ board: { wiredGbps: [] }, routerGbps: 0 }, "notAsked"],
		"exactly as fast": [
			{ board: { wiredGbps: [2.5] }, routerGbps: 2.5 },
			"asFast",
			{ boardGbps: 2.5, routerGbps: 2.5 },
		],
		"the faster of two": [
			{ board: { wiredGbps: [1, 10] }, routerGbps: 2.5 },
			"asFast",
			{ boardGbps: 10, routerGbps: 2.5 },
		],
	},
	cautions: {
		"just slower": [
			{ board: { wiredGbps: [2.4, 1] }, routerGbps: 2.5 },
			"good-to-know",
			"slower",
			{ boardGbps: 2.4, routerGbps: 2.5 },
		],
		"no wired socket": [{ board: { wiredGbps: [] }, routerGbps: 1 }, "plan-around", "noSocket"],
	},
	cannotTell: { "the page is silent": [{ board: {}, routerGbps: 1 }, ["board.wiredGbps"]] },
	needs: {
		"a network": [{ routerGbps: 2.5 }, "A wired network socket of 2.5 Gb/s: more is of no use."],
		"nobody has said": [{}, null],
	},
});
