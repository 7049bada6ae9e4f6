import { powerPlugs } from "../../../src/rules/fit/power-plugs.ts";
import { testRule } from "../test-rule.ts";

// The budgets are what this project counts on from one plug: 6 A a contact, 12 V, four or two live contacts; 8 A at the
// most (ATX 3.0 guide, doc. 336521, rev. 2.01, p. 18). 0.87 of what goes in arrives at the processor (own convention).
const eightPin = { budgetW: 288, mostW: 384 };
const fourPin = { budgetW: 144, mostW: 192 };
/** A processor that draws so many watts at the plugs. */
const drawing = (watts: number) => ({ peakW: watts * 0.87 });

const board = (...processorPlugs: ("4-pin" | "8-pin")[]) => ({ power: { processorPlugs } });
const supply = (...processorPlugs: ("4-pin" | "8-pin")[]) => ({ processorPlugs });

testRule(powerPlugs, {
	fits: {
		"its only plug fed, at what it carries": [
			{ board: board("8-pin"), supply: supply("8-pin"), processor: drawing(288) },
			"fed",
			{ count: 1 },
		],
		"both plugs fed, at what they carry together": [
			{ board: board("8-pin", "4-pin"), supply: supply("8-pin", "4-pin"), processor: drawing(432) },
			"fed",
			{ count: 2 },
		],
		"its one plug is fed": [{ board: board("8-pin"), supply: supply("8-pin") }, "fed", { count: 1 }],
		"both plugs are fed": [{ board: board("8-pin", "4-pin"), supply: supply("8-pin", "4-pin") }, "fed", { count: 2 }],
		"an 8-pin plug splits for a 4-pin socket": [
			{ board: board("4-pin"), supply: supply("8-pin") },
			"fed",
			{ count: 1 },
		],
		"more plugs than it needs": [{ board: board("8-pin"), supply: supply("8-pin", "8-pin") }, "fed", { count: 1 }],
		"second plug empty, at what the first carries": [
			{ board: board("8-pin", "8-pin"), supply: supply("8-pin"), processor: drawing(288) },
			"secondUnfed",
			{ budgetW: 288 },
		],
		"first of two 4-pin, at what it carries": [
			{ board: board("4-pin", "4-pin"), supply: supply("4-pin"), processor: drawing(144) },
			"secondUnfed",
			{ budgetW: 144 },
		],
		"a 20-pin plug for a 20-pin board": [
			{
				board: { power: { mainPlug: "20-pin", processorPlugs: ["4-pin"] } },
				supply: { mainPlug: "20-pin", processorPlugs: ["4-pin"] },
			},
			"fed",
			{ count: 1 },
		],
		"no processor plug on the board": [{ board: board(), supply: supply() }, "noPlug"],
		"a 10-pin main plug on both sides": [
			{
				board: { power: { mainPlug: "10-pin 12 V only", processorPlugs: ["4-pin"] } },
				supply: { mainPlug: "10-pin 12 V only", processorPlugs: ["4-pin"] },
			},
			"fed",
			{ count: 1 },
		],
		"a main plug that splits": [
			{ board: board("8-pin"), supply: { mainPlug: "20+4-pin", processorPlugs: ["8-pin"] } },
			"fed",
			{ count: 1 },
		],
		"to be bought to suit": [{ board: board("8-pin"), supply: "open" }, "open", { part: "supply" }],
		"no supply": [{ board: board("8-pin"), supply: "none" }, "none", { part: "supply" }],
	},
	cautions: {
		"a 20-pin plug in a 24-pin socket": [
			{ board: board("8-pin"), supply: { mainPlug: "20-pin", processorPlugs: ["8-pin"] } },
			"plan-around",
			"shortMain",
			{ supplyLines: 1, boardLines: 2 },
		],
		"a 20-pin plug, and the processor plug busy": [
			{
				board: board("8-pin"),
				supply: { mainPlug: "20-pin", processorPlugs: ["8-pin"] },
				processor: drawing(289),
			},
			"plan-around",
			"shortMain",
			{ supplyLines: 1, boardLines: 2 },
		],
		"a 20-pin plug, and the processor plug too weak: that is told first": [
			{
				board: board("8-pin"),
				supply: { mainPlug: "20-pin", processorPlugs: ["8-pin"] },
				processor: drawing(385),
			},
			"plan-around",
			"plugsWeak",
			{ loadW: 385, ...eightPin },
		],
		"its only plug fed, one watt more than it carries with ease": [
			{ board: board("8-pin"), supply: supply("8-pin"), processor: drawing(289) },
			"good-to-know",
			"plugsBusy",
			{ loadW: 289, ...eightPin },
		],
		// 270 W by itself, and up to 1.35 times as much with the clock raised (from memory).
		"its only plug fed, and the clock will be raised": [
			{ board: board("8-pin"), supply: supply("8-pin"), processor: drawing(270), clockPlan: "done-before" },
			"good-to-know",
			"plugsBusy",
			{ loadW: 365, ...eightPin },
		],
		"its only plug fed, at the most it carries": [
			{ board: board("8-pin"), supply: supply("8-pin"), processor: drawing(384) },
			"good-to-know",
			"plugsBusy",
			{ loadW: 384, ...eightPin },
		],
		"its only plug fed, one watt more than that": [
			{ board: board("8-pin"), supply: supply("8-pin"), processor: drawing(385) },
			"plan-around",
			"plugsWeak",
			{ loadW: 385, ...eightPin },
		],
		"a 4-pin board under a heavy processor": [
			{ board: board("4-pin"), supply: supply("8-pin"), processor: drawing(300) },
			"plan-around",
			"plugsWeak",
			{ loadW: 300, ...fourPin },
		],
		"half fed, one watt more than a 4-pin carries with ease": [
			{ board: board("8-pin"), supply: supply("4-pin"), processor: drawing(145) },
			"plan-around",
			"halfTight",
			{ loadW: 145, ...fourPin },
		],
		"half fed, at the most a 4-pin carries": [
			{ board: board("8-pin"), supply: supply("4-pin"), processor: drawing(192) },
			"plan-around",
			"halfTight",
			{ loadW: 192, ...fourPin },
		],
		"half fed, at what a 4-pin carries": [
			{ board: board("8-pin"), supply: supply("4-pin"), processor: drawing(144) },
			"plan-around",
			"halfFed",
			{ budgetW: 144 },
		],
		"second plug empty, one watt more than the first carries with ease": [
			{ board: board("8-pin", "8-pin"), supply: supply("8-pin"), processor: drawing(289) },
			"good-to-know",
			"secondHelps",
			{ loadW: 289, ...eightPin },
		],
		"second plug empty, at the most the first carries": [
			{ board: board("8-pin", "8-pin"), supply: supply("8-pin"), processor: drawing(384) },
			"good-to-know",
			"secondHelps",
			{ loadW: 384, ...eightPin },
		],
		"second plug empty, one watt more than that": [
			{ board: board("8-pin", "8-pin"), supply: supply("8-pin"), processor: drawing(385) },
			"plan-around",
			"secondNeeded",
			{ loadW: 385, ...eightPin },
		],
		"second 8-pin with a 4-pin left over is not fed": [
			{ board: board("8-pin", "8-pin"), supply: supply("8-pin", "4-pin"), processor: drawing(385) },
			"plan-around",
			"secondNeeded",
			{ loadW: 385, ...eightPin },
		],
		"second plug empty, highest watts not known": [
			{ board: board("8-pin", "4-pin"), supply: supply("8-pin"), processor: {} },
			"good-to-know",
			"secondPeakUnknown",
			{ budgetW: 288 },
		],
	},
	fails: {
		"no processor plug on the supply": [{ board: board("8-pin"), supply: supply() }, "firstUnfed", { plug: "8-pin" }],
		"half fed, one watt more than a 4-pin carries at the most": [
			{ board: board("8-pin"), supply: supply("4-pin"), processor: drawing(193) },
			"halfTooWeak",
			{ loadW: 193, ...fourPin },
		],
		"two 4-pin plugs are no 8-pin": [
			{ board: board("8-pin", "4-pin"), supply: supply("4-pin", "4-pin"), processor: drawing(230) },
			"halfTooWeak",
			{ loadW: 230, ...fourPin },
		],
		"a 10-pin main plug on the board only": [
			{
				board: { power: { mainPlug: "10-pin 12 V only", processorPlugs: ["8-pin"] } },
				supply: { mainPlug: "24-pin", processorPlugs: ["8-pin"] },
			},
			"otherMain",
			{ board: "10-pin 12 V only", supply: "24-pin" },
		],
		"a 10-pin main plug on the supply only": [
			{ board: board("8-pin"), supply: { mainPlug: "10-pin 12 V only", processorPlugs: ["8-pin"] } },
			"otherMain",
			{ board: "24-pin", supply: "10-pin 12 V only" },
		],
	},
	cannotTell: {
		"the board's plugs are not known": [{ board: {}, supply: supply("8-pin") }, ["board.power.processorPlugs"]],
		"the supply's plugs are not known": [{ board: board("8-pin"), supply: {} }, ["supply.processorPlugs"]],
		"nobody has said which supply": [{ board: board("8-pin") }, ["supply"]],
		"half fed, and the highest watts are not known": [
			{ board: board("8-pin"), supply: supply("4-pin"), processor: { baseW: 65 } },
			["processor.peakW"],
			"halfFed",
			{ budgetW: 144 },
		],
		"a 10-pin board, and the supply's main plug is not known": [
			{ board: { power: { mainPlug: "10-pin 12 V only", processorPlugs: ["8-pin"] } }, supply: supply("8-pin") },
			["supply.mainPlug"],
		],
	},
	assumed: {
		"a desktop board has a 24-pin main plug": [
			{ board: board("8-pin"), supply: supply("8-pin") },
			"board.power.mainPlug",
		],
	},
	needs: {
		"an 8-pin plug feeds either": [
			{ supply: supply("8-pin", "4-pin") },
			"A 4-pin or an 8-pin processor plug: your supply's 8-pin feeds either, if it splits into 4+4.",
		],
		"a supply still to be chosen": [{}, "An 8-pin or a 4-pin processor plug: take a supply that has the same ones."],
		"a supply still to be chosen, for a processor whose highest watts are a guess": [
			{ processor: { baseW: 65 } },
			"An 8-pin processor plug is the safe choice. A 4-pin carries 144 W, and your processor may draw up to 262 W there: its highest watts are not known.",
		],
		"a 4-pin plug only": [
			{ supply: supply("4-pin") },
			"A 4-pin processor plug, since your supply has no 8-pin. For a board with an 8-pin, plan another supply.",
		],
		"at what a 4-pin carries": [
			{ supply: supply("8-pin"), processor: drawing(144) },
			"A 4-pin or an 8-pin processor plug: your supply's 8-pin feeds either, if it splits into 4+4.",
		],
		"one watt more than a 4-pin carries": [
			{ supply: supply("8-pin"), processor: drawing(145) },
			"At least one 8-pin processor plug: a 4-pin carries 144 W, and your processor can draw 145 W there.",
		],
		"the same, and the supply is to be bought to suit": [
			{ supply: "open", processor: drawing(145) },
			"At least one 8-pin processor plug: a 4-pin carries 144 W, and your processor can draw 145 W there.",
		],
		"no processor plug": [{ supply: supply() }, null],
		"to be bought to suit": [
			{ supply: "open" },
			"An 8-pin or a 4-pin processor plug: take a supply that has the same ones.",
		],
	},
});
