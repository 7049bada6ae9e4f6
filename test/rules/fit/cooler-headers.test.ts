import { coolerHeaders } from "../../../src/rules/fit/cooler-headers.ts";
import { testRule } from "../test-rule.ts";

type Use = "processor" | "pump" | "case";
const board = (...uses: Use[]) => ({
	headers: { fans: uses.map((use, index) => ({ name: `FAN_${index + 1}`, use })) },
});
const boardOf = (...fans: [Use, number][]) => ({
	headers: { fans: fans.map(([use, amps], index) => ({ name: `FAN_${index + 1}`, use, amps })) },
});
const air = { kind: "air" as const, headersUsed: { fan: 1, pump: 0 } };
const liquid = { kind: "liquid" as const, headersUsed: { fan: 1, pump: 1 } };
const twin = { kind: "air" as const, headersUsed: { fan: 2, pump: 0 } };

testRule(coolerHeaders, {
	fits: {
		"one fan on the processor's header": [
			{ board: board("processor", "case"), cooler: air },
			"placed",
			{ plugs: ["fan of Chimney on FAN_1"] },
		],
		"the cooler from the processor's box has one fan": [
			{ board: board("processor"), cooler: "none" },
			"placed",
			{ plugs: ["fan of the cooler in the processor's box on FAN_1"] },
		],
		"a cooler still to be bought suits the board": [
			{ board: board("processor"), cooler: "open" },
			"placed",
			{ plugs: ["fan of the cooler on FAN_1"] },
		],
		"nobody has said which cooler, and any finds its headers": [
			{ board: board("processor", "pump") },
			"placed",
			{ plugs: ["fan of the cooler on FAN_1"] },
		],
		"the kind is not known, but its plugs are": [
			{ board: board("processor", "case"), cooler: { headersUsed: { pump: 0 } } },
			"placed",
			{ plugs: ["fan of Chimney on FAN_1"] },
		],
		"a pump on its own header": [
			{ board: board("processor", "pump"), cooler: liquid },
			"placed",
			{ plugs: ["pump of Chimney on FAN_2", "fan of Chimney on FAN_1"] },
		],
		"a liquid cooler of which no plugs are given has one pump": [
			{ board: board("processor", "pump"), cooler: { kind: "liquid" } },
			"placed",
			{ plugs: ["pump of Chimney on FAN_2", "fan of Chimney on FAN_1"] },
		],
		"a second fan goes on a case header": [
			{ board: board("processor", "case"), cooler: twin },
			"placed",
			{ plugs: ["fan 1 of Chimney on FAN_1", "fan 2 of Chimney on FAN_2"] },
		],
		"three usual fans on one plug, which a header that says nothing feeds": [
			{ board: board("processor"), cooler: { kind: "air", fans: 3, headersUsed: { fan: 1, pump: 0 } } },
			"placed",
			{ plugs: ["fans of Chimney on FAN_1"] },
		],
		"six fans, and nobody has counted their plugs": [
			{ board: board("processor"), cooler: { kind: "air", fans: 6 } },
			"placed",
			{ plugs: ["fan of Chimney on FAN_1"] },
		],
		"three fans on two plugs, with just enough for the fuller one": [
			{ board: boardOf(["processor", 0.6], ["case", 0.6]), cooler: { kind: "air", fans: 3, headersUsed: { fan: 2 } } },
			"placed",
			{ plugs: ["fan 1 of Chimney on FAN_1", "fan 2 of Chimney on FAN_2"] },
		],
		"one fan on a header of few amperes": [
			{ board: boardOf(["processor", 0.2]), cooler: air },
			"placed",
			{ plugs: ["fan of Chimney on FAN_1"] },
		],
		"a cooler without fans, and no header that the board looks at": [
			{ board: board("case"), cooler: { kind: "air", headersUsed: { fan: 0, pump: 0 } } },
			"noPlug",
		],
	},
	cautions: {
		"no fan header at all": [
			{ board: board(), cooler: air },
			"plan-around",
			"nothingLeft",
			{ plugs: ["fan of Chimney"] },
		],
		"one header for a pump and a fan": [
			{ board: board("processor"), cooler: liquid },
			"plan-around",
			"nothingLeft",
			{ plugs: ["fan of Chimney"] },
		],
		"two pumps and one header": [
			{ board: board("pump"), cooler: { headersUsed: { fan: 0, pump: 2 } } },
			"plan-around",
			"nothingLeft",
			{ plugs: ["pump 2 of Chimney"] },
		],
		"only headers for the case": [
			{ board: board("case", "case"), cooler: air },
			"plan-around",
			"noProcessorHeader",
			{ plug: "fan of Chimney", header: "FAN_1" },
		],
		"only headers for the case, and a pump": [
			{ board: board("case", "case"), cooler: liquid },
			"plan-around",
			"noProcessorHeader",
			{ plug: "fan of Chimney", header: "FAN_2", pumpHeader: "FAN_1" },
		],
		"no pump header, so the pump takes one of the case": [
			{ board: board("processor", "case"), cooler: liquid },
			"good-to-know",
			"pumpElsewhere",
			{ plug: "pump of Chimney", header: "FAN_2" },
		],
		"a pump on a second header of the processor": [
			{ board: board("processor", "processor"), cooler: liquid },
			"good-to-know",
			"pumpElsewhere",
			{ plug: "pump of Chimney", header: "FAN_2" },
		],
		"the only plug is the pump's, and nothing turns where the board looks": [
			{ board: board("processor", "pump"), cooler: { kind: "liquid", headersUsed: { fan: 0, pump: 1 } } },
			"good-to-know",
			"nothingTurns",
			{ header: "FAN_1" },
		],
		"a cooler without fans": [
			{ board: board("processor"), cooler: { kind: "air", headersUsed: { fan: 0, pump: 0 } } },
			"good-to-know",
			"nothingTurns",
			{ header: "FAN_1" },
		],
		// 0.3 A for a usual fan is from memory; 1 A for a header that says nothing is common practice.
		"four usual fans on one plug, on a header that says nothing": [
			{ board: board("processor"), cooler: { kind: "air", fans: 4, headersUsed: { fan: 1, pump: 0 } } },
			"plan-around",
			"tooMuchCurrent",
			{ fans: 4, header: "FAN_1", takeA: 1.2, amps: 1 },
		],
		"three fans on two plugs, with too little for the fuller one": [
			{ board: boardOf(["processor", 0.5], ["case", 1]), cooler: { kind: "air", fans: 3, headersUsed: { fan: 2 } } },
			"plan-around",
			"tooMuchCurrent",
			{ fans: 2, header: "FAN_1", takeA: 0.6, amps: 0.5 },
		],
		"three fans on two plugs that share a header: three, not four": [
			{ board: boardOf(["processor", 0.8]), cooler: { kind: "air", fans: 3, headersUsed: { fan: 2 } } },
			"plan-around",
			"tooMuchCurrent",
			{ fans: 3, header: "FAN_1", takeA: 0.9, amps: 0.8 },
		],
		"three plugs on one header that gives too little, as many fans as plugs": [
			{ board: boardOf(["processor", 0.8]), cooler: { kind: "air", headersUsed: { fan: 3 } } },
			"plan-around",
			"tooMuchCurrent",
			{ fans: 3, header: "FAN_1", takeA: 0.9, amps: 0.8 },
		],
		"four fans of a radiator on one plug, and the pump on a case header": [
			{
				board: boardOf(["processor", 1], ["case", 2]),
				cooler: { kind: "liquid", fans: 4, headersUsed: { fan: 1, pump: 1 } },
			},
			"plan-around",
			"tooMuchCurrent",
			{ fans: 4, header: "FAN_1", takeA: 1.2, amps: 1, pumpHeader: "FAN_2" },
		],
		"two fans and one header, of which nothing more is said": [
			{ board: board("processor"), cooler: twin },
			"good-to-know",
			"shared",
			{ fans: 2, header: "FAN_1", amps: 1 },
		],
		"three fans and one header of 2 A": [
			{
				board: { headers: { fans: [{ name: "FAN_1", use: "processor" as const, amps: 2 }] } },
				cooler: { kind: "air", headersUsed: { fan: 3 } },
			},
			"good-to-know",
			"shared",
			{ fans: 3, header: "FAN_1", amps: 2 },
		],
	},
	cannotTell: {
		"the board's page is silent": [{ board: {}, cooler: air }, ["board.headers.fans"]],
		"nobody has said which cooler, and there is no pump header": [
			{ board: board("processor", "case") },
			["cooler"],
			"unsure",
		],
		"the cooler's kind is not known, and there is no pump header": [
			{ board: board("processor", "case"), cooler: {} },
			["cooler.kind"],
			"unsure",
		],
	},
	needs: {
		"a liquid cooler": [{ cooler: { kind: "liquid" } }, "A pump header, beside the one for the processor's fan."],
		"a liquid cooler whose pump the supply feeds": [{ cooler: { kind: "liquid", headersUsed: { pump: 0 } } }, null],
		"an air cooler": [{ cooler: air }, null],
		"nobody has said": [{}, null],
	},
});
