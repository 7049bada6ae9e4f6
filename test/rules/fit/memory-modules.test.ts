import { memoryModules } from "../../../src/rules/fit/memory-modules.ts";
import { testRule } from "../test-rule.ts";

const board = { memory: { type: "DDR5", slots: 2, maxGb: 64 } } as const;
const memory = { type: "DDR5", modules: 2, gbPerModule: 32 } as const;

testRule(memoryModules, {
	fits: {
		"as many modules as slots, as many GB as it takes": [{ board, memory }, "goesIn", { type: "DDR5" }],
		"the size of a module not known": [{ board, memory: { type: "DDR5", modules: 2 } }, "goesIn", { type: "DDR5" }],
		"each module as large as a slot takes": [
			{ board: { memory: { ...board.memory, maxGbPerModule: 32 } }, memory },
			"goesIn",
			{ type: "DDR5" },
		],
		"both say SO-DIMM": [
			{ board: { memory: { ...board.memory, form: "SO-DIMM" } }, memory: { ...memory, form: "SO-DIMM" } },
			"goesIn",
			{ type: "DDR5" },
		],
		"one says DIMM, the other nothing": [
			{ board: { memory: { ...board.memory, form: "DIMM" } }, memory },
			"goesIn",
			{ type: "DDR5" },
		],
		"registered on both sides": [
			{ board: { memory: { ...board.memory, registered: true } }, memory: { ...memory, registered: true } },
			"goesIn",
			{ type: "DDR5" },
		],
		"modules that correct errors, not registered, and the board's page is silent on both": [
			{ board, memory: { ...memory, errorCorrection: "full", registered: false } },
			"goesIn",
			{ type: "DDR5" },
		],
		"modules that correct errors on a board that uses it": [
			{
				board: { memory: { ...board.memory, errorCorrection: true } },
				memory: { ...memory, errorCorrection: "full", registered: false },
			},
			"goesIn",
			{ type: "DDR5" },
		],
		"correction inside the chips, and nothing said of registered": [
			{
				board: { memory: { ...board.memory, errorCorrection: false } },
				memory: { ...memory, errorCorrection: "on-chip" },
			},
			"goesIn",
			{ type: "DDR5" },
		],
		"to be bought to suit": [{ board, memory: "open" }, "open", { part: "memory" }],
		"no memory": [{ board, memory: "none" }, "none", { part: "memory" }],
	},
	cautions: {
		"modules that correct errors on a board that does not": [
			{
				board: { memory: { ...board.memory, errorCorrection: false } },
				memory: { ...memory, errorCorrection: "full", registered: false },
			},
			"good-to-know",
			"checksUnused",
		],
	},
	fails: {
		"another type": [{ board, memory: { ...memory, type: "DDR4" } }, "otherType", { board: "DDR5", memory: "DDR4" }],
		"another form": [
			{ board: { memory: { ...board.memory, form: "DIMM" } }, memory: { ...memory, form: "SO-DIMM" } },
			"otherForm",
			{ board: "DIMM", memory: "SO-DIMM" },
		],
		"SO-DIMM modules, and the board's page is silent": [
			{ board, memory: { ...memory, form: "SO-DIMM" } },
			"unusualForm",
			{ form: "SO-DIMM" },
		],
		"CAMM2 modules, and the board's page is silent": [
			{ board, memory: { ...memory, form: "CAMM2" } },
			"unusualForm",
			{ form: "CAMM2" },
		],
		"registered modules, and the board's page is silent": [
			{ board, memory: { ...memory, registered: true } },
			"registered",
		],
		"registered modules": [
			{ board: { memory: { ...board.memory, registered: false } }, memory: { ...memory, registered: true } },
			"registered",
		],
		"one module too many": [{ board, memory: { ...memory, modules: 3 } }, "tooMany", { modules: 3, slots: 2 }],
		"a board of one slot": [
			{ board: { memory: { type: "DDR5", slots: 1 } }, memory },
			"tooMany",
			{ modules: 2, slots: 1 },
		],
		"one GB too many": [
			{ board: { memory: { ...board.memory, maxGb: 63 } }, memory },
			"tooLarge",
			{ gb: 64, maxGb: 63 },
		],
		"each module larger than a slot takes": [
			{ board: { memory: { ...board.memory, maxGbPerModule: 31 } }, memory },
			"moduleTooLarge",
			{ gbPerModule: 32, mostGb: 31 },
		],
		"one module alone is too large": [
			{ board: { memory: { type: "DDR5", maxGb: 31 } }, memory: { type: "DDR5", gbPerModule: 32 } },
			"tooLarge",
			{ gb: 32, maxGb: 31 },
		],
	},
	cannotTell: {
		"no type on the board's page": [{ board: { memory: { slots: 2 } }, memory }, ["board.memory.type"]],
		"nothing about memory on the board's page": [{ board: {}, memory }, ["board.memory.type"]],
		"no type on the label": [{ board, memory: { modules: 2 } }, ["memory.type"]],
		"number of slots not known": [{ board: { memory: { type: "DDR5" } }, memory }, ["board.memory.slots"]],
		"number of modules not known": [{ board, memory: { type: "DDR5" } }, ["memory.modules"]],
		"neither number known": [
			{ board: { memory: { type: "DDR5" } }, memory: { type: "DDR5" } },
			["board.memory.slots", "memory.modules"],
		],
		"SO-DIMM slots, and the label is silent": [
			{ board: { memory: { ...board.memory, form: "SO-DIMM" } }, memory },
			["memory.form"],
		],
		"modules that correct errors may be registered ones": [
			{ board, memory: { ...memory, errorCorrection: "full" } },
			["memory.registered"],
			"maybeRegistered",
		],
		"nobody has said which memory": [{ board }, ["memory"]],
	},
	needs: {
		"two modules": [{ memory }, "DDR5, with at least 2 memory slots, for modules of 32 GB."],
		"one module": [{ memory: { ...memory, modules: 1 } }, "DDR5, with at least 1 memory slot, for modules of 32 GB."],
		"size of a module not known": [{ memory: { type: "DDR5", modules: 2 } }, "DDR5, with at least 2 memory slots."],
		"number not known": [{ memory: { type: "DDR4" } }, "DDR4."],
		"type not known": [{ memory: { modules: 2 } }, "DDR4 or DDR5: your memory must match what the board's page says."],
		"to be bought to suit, and nothing known of the processor": [
			{ memory: "open" },
			"DDR4 or DDR5: your memory must match what the board's page says.",
		],
		"of a type that the processor does not take": [
			{ memory: { type: "DDR3", modules: 2 }, processor: { memory: { types: ["DDR5"] } } },
			"DDR5: what your processor works with. Buy memory of the type that the board takes.",
		],
		"to be bought to suit the processor too": [
			{ memory: "open", processor: { memory: { types: ["DDR4", "DDR5"] } } },
			"DDR4 or DDR5: what your processor works with. Buy memory of the type that the board takes.",
		],
	},
});
