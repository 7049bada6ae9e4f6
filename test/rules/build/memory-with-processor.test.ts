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
		"as much as it works with": [
			{ memory: { type: "DDR5", modules: 2, gbPerModule: 32 }, processor: { memory: { types: ["DDR5"], maxGb: 64 } } },
			"works",
			{ type: "DDR5" },
		],
		"a processor whose most is not known": [
			{ memory: { type: "DDR5", modules: 2, gbPerModule: 64 }, processor: { memory: { types: ["DDR5"] } } },
			"works",
			{ type: "DDR5" },
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
		"one GB more than it works with": [
			{ memory: { type: "DDR5", modules: 2, gbPerModule: 32 }, processor: { memory: { types: ["DDR5"], maxGb: 63 } } },
			"tooMuch",
			{ gb: 64, processorGb: 63, processor: "Piccolo" },
		],
		"one module alone is too much": [
			{ memory: { type: "DDR5", gbPerModule: 64 }, processor: { memory: { types: ["DDR5"], maxGb: 63 } } },
			"tooMuch",
			{ gb: 64, processorGb: 63, processor: "Piccolo" },
		],
	},
	cannotTell: {
		"the processor's page is silent": [{ memory: { type: "DDR5" }, processor: {} }, ["processor.memory.types"]],
		"no type on the label": [{ memory: {}, processor: { memory: { types: ["DDR5"] } } }, ["memory.type"]],
		"nobody has said which memory": [{ processor: { memory: { types: ["DDR5"] } } }, ["memory"]],
	},
});
