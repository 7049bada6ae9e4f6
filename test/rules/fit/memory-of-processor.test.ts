import { memoryOfProcessor } from "../../../src/rules/fit/memory-of-processor.ts";
import { testRule } from "../test-rule.ts";

testRule(memoryOfProcessor, {
	fits: {
		"its only type": [
			{ board: { memory: { type: "DDR5" } }, processor: { memory: { types: ["DDR5"] } } },
			"works",
			{ type: "DDR5" },
		],
		"one of two types, whatever memory will be bought": [
			{ board: { memory: { type: "DDR4" } }, processor: { memory: { types: ["DDR4", "DDR5"] } }, memory: "open" },
			"works",
			{ type: "DDR4" },
		],
	},
	fails: {
		"slots for a type it does not know": [
			{ board: { memory: { type: "DDR4" } }, processor: { memory: { types: ["DDR5"] } }, memory: "open" },
			"other",
			{ type: "DDR4", types: ["DDR5"], processor: "Piccolo" },
		],
	},
	cannotTell: {
		"the board's page is silent": [{ board: {}, processor: { memory: { types: ["DDR5"] } } }, ["board.memory.type"]],
		"the processor's page is silent": [
			{ board: { memory: { type: "DDR5" } }, processor: {} },
			["processor.memory.types"],
		],
		"nobody has said which processor": [{ board: { memory: { type: "DDR5" } } }, ["processor"]],
	},
});
