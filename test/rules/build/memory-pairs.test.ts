import { memoryPairs } from "../../../src/rules/build/memory-pairs.ts";
import { testRule } from "../test-rule.ts";

const two = { memory: { channels: 2 } };

// GB/s of one module and of two channels: test/published/memory-bandwidth. DDR5-4800: 38.4 and 76.8 (derived, MT/s x 8).
testRule(memoryPairs, {
	fits: {
		"two modules": [{ memory: { modules: 2, gbPerModule: 16 }, processor: two }, "even", { modules: 2 }],
		"four modules": [{ memory: { modules: 4, gbPerModule: 16 }, processor: two }, "even", { modules: 4 }],
		"two modules, and nobody has counted the channels": [
			{ memory: { modules: 2, gbPerModule: 16 } },
			"even",
			{ modules: 2 },
		],
		"one module for one channel": [
			{ memory: { modules: 1, gbPerModule: 16 }, processor: { memory: { channels: 1 } } },
			"notTwo",
			{ channels: 1 },
		],
		"three modules for four channels": [
			{ memory: { modules: 3, gbPerModule: 16 }, processor: { memory: { channels: 4 } } },
			"notTwo",
			{ channels: 4 },
		],
		"memory to be bought": [{ memory: "open", processor: two }, "open", { part: "memory" }],
	},
	cautions: {
		"one module": [
			{ memory: { modules: 1, gbPerModule: 16 }, processor: two },
			"good-to-know",
			"one",
			{ isStated: true },
		],
		"one module, and nobody has counted the channels": [
			{ memory: { modules: 1, gbPerModule: 16 } },
			"good-to-know",
			"one",
			{ isStated: false },
		],
		"one module of a known rate": [
			{ memory: { modules: 1, gbPerModule: 16, mtPerS: 4800 }, processor: two, graphicsCard: {} },
			"good-to-know",
			"one",
			{ isStated: true, oneGbytesPerS: 38.4, twoGbytesPerS: 76.8 },
		],
		"one module, and the processor gives the picture": [
			{ memory: { modules: 1, gbPerModule: 16 }, processor: { ...two, graphics: true }, graphicsCard: "none" },
			"plan-around",
			"oneWithGraphics",
			{ isStated: true },
		],
		"the same of a known rate, with the channels not counted": [
			{ memory: { modules: 1, gbPerModule: 16, mtPerS: 3200 }, processor: { graphics: true }, graphicsCard: "none" },
			"plan-around",
			"oneWithGraphics",
			{ isStated: false, oneGbytesPerS: 25.6, twoGbytesPerS: 51.2 },
		],
		"whether there will be a card, nobody has said": [
			{ memory: { modules: 1, gbPerModule: 16 }, processor: { ...two, graphics: true } },
			"good-to-know",
			"one",
			{ isStated: true },
		],
		"no card, and whether the processor has graphics is not known": [
			{ memory: { modules: 1, gbPerModule: 16 }, processor: two, graphicsCard: "none" },
			"good-to-know",
			"one",
			{ isStated: true },
		],
		"three modules": [
			{ memory: { modules: 3, gbPerModule: 16 }, processor: two },
			"good-to-know",
			"uneven",
			{ modules: 3 },
		],
		"three modules, and the processor gives the picture": [
			{ memory: { modules: 3, gbPerModule: 16 }, processor: { ...two, graphics: true }, graphicsCard: "none" },
			"good-to-know",
			"uneven",
			{ modules: 3 },
		],
	},
	cannotTell: {
		"how many modules": [{ memory: {}, processor: two }, ["memory.modules", "memory.gbPerModule"]],
		"how large they are": [{ memory: { modules: 1 }, processor: two }, ["memory.gbPerModule"]],
		"nobody has said which memory": [{ processor: two }, ["memory"]],
	},
});
