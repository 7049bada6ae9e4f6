import { memoryWithProcessor } from "../../../src/rules/build/memory-with-processor.ts";
import { testRule } from "../test-rule.ts";

testRule(memoryWithProcessor, {
	fits: {
		"its only type": [
			{ memory: { type: "DDR5" }, processor: { memory: { types: ["DDR5"] } } },
			"works",
			{ type: "DDR5" },
		],
		"one of two types": [
			{ memory: { type: "DDR4" }, processor: { memory: { types: ["DDR4", "DDR5"] } } },
			"works",
			{ type: "DDR4" },
		],
		"memory to be bought to suit": [
			{ memory: "open", processor: { memory: { types: ["DDR5"] } } },
			"open",
			{ part: "memory" },
		],
	},
	fails: {
		"a type it does not work with": [
			{ memory: { type: "DDR4" }, processor: { memory: { types: ["DDR5"] } } },
			"other",
			{ type: "DDR4", types: ["DDR5"], processor: "Piccolo" },
		],
	},
	cannotTell: {
		"the processor's page is silent": [{ memory: { type: "DDR5" }, processor: {} }, ["processor.memory.types"]],
		"no type on the label": [{ memory: {}, processor: { memory: { types: ["DDR5"] } } }, ["memory.type"]],
		"nobody has said which memory": [{ processor: { memory: { types: ["DDR5"] } } }, ["memory"]],
	},
});
