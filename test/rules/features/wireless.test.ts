import { wireless } from "../../../src/rules/features/wireless.ts";
import { testRule } from "../test-rule.ts";

const wish = (strength: "must" | "would-like" | "dont-mind") => ({ wishes: { "features/wireless": strength } });
const without = (moduleSocket?: "none" | "ordinary" | "one-family-only") => ({
	wireless: { builtIn: false, ...(moduleSocket ? { moduleSocket } : {}) },
});

testRule(wireless, {
	fits: {
		"built in": [
			{ board: { wireless: { builtIn: true, standard: "Wi-Fi 7" } }, ...wish("must") },
			"has",
			{ standard: "Wi-Fi 7" },
		],
		"built in, standard not known": [
			{ board: { wireless: { builtIn: true } }, ...wish("would-like") },
			"has",
			{ standard: "" },
		],
		"not wished for": [{ board: without(), ...wish("dont-mind") }, "notAsked"],
		"nobody has said": [{ board: without() }, "notAsked"],
	},
	cautions: {
		"needed, and there is none": [{ board: without(), ...wish("must") }, "plan-around", "adapter"],
		"needed, and a socket for a module": [{ board: without("ordinary"), ...wish("must") }, "plan-around", "module"],
		"needed, and a socket for modules of one processor family": [
			{ board: without("one-family-only"), ...wish("must") },
			"plan-around",
			"adapter",
		],
		"would be nice": [{ board: without("ordinary"), ...wish("would-like") }, "good-to-know", "wouldLike"],
	},
	cannotTell: {
		"needed, and the page is silent": [{ board: {}, ...wish("must") }, ["board.wireless"]],
		"would be nice, and the page is silent": [{ board: {}, ...wish("would-like") }, ["board.wireless"]],
	},
	needs: {
		needed: [wish("must"), "Wireless (Wi-Fi) built in; else count the price of an adapter."],
		"would be nice": [wish("would-like"), "Wireless (Wi-Fi) built in, if it costs little."],
		"not wished for": [wish("dont-mind"), null],
		"nobody has said": [{}, null],
	},
});
