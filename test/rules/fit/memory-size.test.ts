import { memorySize } from "../../../src/rules/fit/memory-size.ts";
import { testRule } from "../test-rule.ts";

const board = { memory: { slots: 2, maxGb: 64, maxGbPerModule: 32 } };

testRule(memorySize, {
	fits: {
		"nobody has said": [{ board: { memory: { maxGb: 1 } } }, "notAsked"],
		"exactly what it takes": [{ board, memoryGb: 64 }, "enough", { gb: 64, mostGb: 64 }],
		"only the most memory is known": [
			{ board: { memory: { maxGb: 64 } }, memoryGb: 64 },
			"enough",
			{ gb: 64, mostGb: 64 },
		],
		"only slots and their modules are known": [
			{ board: { memory: { slots: 4, maxGbPerModule: 32 } }, memoryGb: 128 },
			"enough",
			{ gb: 128, mostGb: 128 },
		],
		"exactly what the processor works with": [
			{ board, memoryGb: 64, processor: { memory: { maxGb: 64 } } },
			"enough",
			{ gb: 64, mostGb: 64 },
		],
		"the modules of today are enough": [
			{ board, memoryGb: 64, memory: { modules: 2, gbPerModule: 32 } },
			"enough",
			{ gb: 64, mostGb: 64 },
		],
		"one more module gets there": [
			{ board, memoryGb: 48, memory: { modules: 1, gbPerModule: 16 } },
			"enough",
			{ gb: 48, mostGb: 64 },
		],
		"a slot is free, and the largest module is not known": [
			{ board: { memory: { slots: 2, maxGb: 64 } }, memoryGb: 64, memory: { modules: 1, gbPerModule: 16 } },
			"enough",
			{ gb: 64, mostGb: 64 },
		],
	},
	cautions: {
		"the processor works with one GB less": [
			{ board, memoryGb: 64, processor: { memory: { maxGb: 63 } } },
			"good-to-know",
			"processorLess",
			{ gb: 64, processorGb: 63 },
		],
		"no slot is left beside the modules": [
			{ board, memoryGb: 64, memory: { modules: 2, gbPerModule: 16 } },
			"plan-around",
			"replaceKit",
			{ gb: 64, reachedGb: 32 },
		],
		"one GB more than one more module gives": [
			{ board, memoryGb: 49, memory: { modules: 1, gbPerModule: 16 } },
			"plan-around",
			"replaceKit",
			{ gb: 49, reachedGb: 48 },
		],
	},
	fails: {
		"one GB less than wanted": [{ board: { memory: { maxGb: 63 } }, memoryGb: 64 }, "less", { gb: 64, mostGb: 63 }],
		"the slots hold less than the page's most": [
			{ board: { memory: { slots: 2, maxGb: 128, maxGbPerModule: 32 } }, memoryGb: 128 },
			"less",
			{ gb: 128, mostGb: 64 },
		],
		"the page's most is less than the slots hold": [
			{ board: { memory: { slots: 4, maxGb: 64, maxGbPerModule: 32 } }, memoryGb: 128 },
			"less",
			{ gb: 128, mostGb: 64 },
		],
	},
	cannotTell: {
		"the page is silent": [{ board: {}, memoryGb: 64 }, ["board.memory.maxGb"]],
		"only the number of slots is known": [{ board: { memory: { slots: 4 } }, memoryGb: 64 }, ["board.memory.maxGb"]],
	},
	needs: {
		"nobody has said": [{}, null],
		"a size": [{ memoryGb: 64 }, "Room for 64 GB of memory in the end."],
	},
});
