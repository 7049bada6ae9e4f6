import { caseFans } from "../../../src/rules/features/case-fans.ts";
import { testRule } from "../test-rule.ts";

type Use = "processor" | "pump" | "case";
const board = (uses: readonly Use[], amps?: number) => ({
	headers: {
		fans: uses.map((use, index) => ({ name: `FAN_${index + 1}`, use, ...(amps === undefined ? {} : { amps }) })),
	},
});
const usual = board(["processor", "pump", "case", "case"], 2);

testRule(caseFans, {
	fits: {
		"nobody has said": [{ board: board([]) }, "notAsked"],
		"no case fans": [{ board: {}, caseFans: 0 }, "notAsked"],
		"as many headers as fans, the pump's among them": [
			{ board: usual, caseFans: 3, cooler: { kind: "air" } },
			"enough",
			{ fans: 3, headers: 3 },
		],
		"a liquid cooler takes the pump's": [
			{ board: usual, caseFans: 2, cooler: { kind: "liquid" } },
			"enough",
			{ fans: 2, headers: 2 },
		],
		"and enough for later": [
			{ board: usual, caseFans: 1, laterThings: ["fan", "memory", "fan"] },
			"enough",
			{ fans: 1, headers: 3 },
		],
		"a second processor header takes the cooler's second fan": [
			{ board: board(["processor", "processor", "case"]), caseFans: 1, cooler: { headersUsed: { fan: 2 } } },
			"enough",
			{ fans: 1, headers: 1 },
		],
		"none now, and one for later": [
			{ board: board(["processor", "case"]), caseFans: 0, laterThings: ["fan"] },
			"enough",
			{ fans: 0, headers: 1 },
		],
	},
	cautions: {
		"one fan more than headers": [
			{ board: usual, caseFans: 4, cooler: { kind: "air" } },
			"plan-around",
			"splitter",
			{ fans: 4, headers: 3, amps: 2 },
		],
		"one more beside a liquid cooler": [
			{ board: usual, caseFans: 3, cooler: { kind: "liquid" } },
			"plan-around",
			"splitter",
			{ fans: 3, headers: 2, amps: 2 },
		],
		"the cooler's second fan takes one": [
			{ board: board(["processor", "case", "case"]), caseFans: 2, cooler: { headersUsed: { fan: 2 } } },
			"plan-around",
			"splitter",
			{ fans: 2, headers: 1, amps: 1 },
		],
		"no header for the pump, so it takes a case fan's": [
			{ board: board(["processor", "case", "case"], 2), caseFans: 2, cooler: { headersUsed: { fan: 1, pump: 1 } } },
			"plan-around",
			"splitter",
			{ fans: 2, headers: 1, amps: 2 },
		],
		"only the pump's is left; amperes are counted as 1": [
			{ board: board(["processor", "pump"], 3), caseFans: 2, cooler: { kind: "air" } },
			"plan-around",
			"splitter",
			{ fans: 2, headers: 1, amps: 1 },
		],
		"no header is left": [
			{ board: board(["processor"]), caseFans: 1, laterThings: ["fan"] },
			"plan-around",
			"hub",
			{ fans: 1 },
		],
		"enough now, and too few for later": [
			{ board: usual, caseFans: 3, laterThings: ["fan"] },
			"good-to-know",
			"noReserve",
			{ fans: 3, headers: 3, later: 1, amps: 2 },
		],
		"none now, and too few for later": [
			{ board: board(["processor"]), laterThings: ["fan", "fan"] },
			"good-to-know",
			"noReserve",
			{ fans: 0, headers: 0, later: 2, amps: 1 },
		],
	},
	cannotTell: { "the page is silent": [{ board: {}, caseFans: 1 }, ["board.headers.fans"]] },
	needs: {
		"one fan": [{ caseFans: 1 }, "1 header for case fans."],
		"and one for later": [{ caseFans: 2, laterThings: ["fan"] }, "3 headers for case fans, 1 of them for later."],
		"nobody has said": [{}, null],
	},
});
