import { memoryLater } from "../../../src/rules/features/memory-later.ts";
import { testRule } from "../test-rule.ts";

const rates = [
	{ type: "DDR5", modulesPerChannel: 1, mtPerS: 5600 },
	{ type: "DDR5", modulesPerChannel: 2, ranks: 1, mtPerS: 4400 },
	{ type: "DDR5", modulesPerChannel: 2, ranks: 2, mtPerS: 3600 },
] as const;
const processor = { memory: { channels: 2, rates: [...rates] } };
const boardMemory = { type: "DDR5", slots: 4, channels: 2, maxGb: 192, maxGbPerModule: 48 } as const;
const board = { memory: boardMemory };
const memory = { type: "DDR5", modules: 2, gbPerModule: 16, ranks: 1, mtPerS: 6000 } as const;
const one = { ...memory, modules: 1 };
const later = { laterThings: ["memory"] } as const;
const withSlots = (slots: number) => ({ memory: { ...boardMemory, slots } });
const evenRows = [
	{ modulesPerChannel: 1, mtPerS: 5600 },
	{ modulesPerChannel: 2, mtPerS: 5600 },
];
const lowerRows = [
	{ modulesPerChannel: 1, mtPerS: 4800 },
	{ modulesPerChannel: 2, mtPerS: 4000 },
];
const even = { memory: { channels: 2, rates: evenRows } };
const byProcessor = { modules: 4, by: "your processor", later: "4400", now: "5600" };

testRule(memoryLater, {
	fits: {
		"nobody has said": [{ board, processor, memory }, "notAsked"],
		"other things are added later": [{ board, processor, memory, laterThings: ["fan", "card"] }, "notAsked"],
		"as much as is wanted in the end": [{ board, processor, memory, memoryGb: 32 }, "notAsked"],
		"to be bought to suit": [{ board, processor, memory: "open", ...later }, "noModules"],
		"no memory": [{ board, processor, memory: "none", memoryGb: 64 }, "noModules"],
		"another type": [{ board: { memory: { type: "DDR4", slots: 2 } }, processor, memory, ...later }, "otherType"],
		"more modules than slots": [{ board: withSlots(1), processor, memory, ...later }, "tooMany"],
		"all slots are taken, and the amount in the end says so": [
			{ board: withSlots(2), processor: {}, memory, memoryGb: 64, laterThings: ["memory"] },
			"bySize",
		],
		"the free slots do not reach the amount": [{ board, processor, memory, memoryGb: 129 }, "bySize"],
		"the board does not take the amount": [
			{ board: { memory: { ...boardMemory, maxGb: 63 } }, processor, memory, memoryGb: 64 },
			"bySize",
		],
		"all slots are taken, and the size is not known": [
			{
				board: { memory: { slots: 2 } },
				processor: {},
				memory: { type: "DDR5", modules: 2 },
				memoryGb: 64,
			},
			"bySize",
		],
		"as many slots as channels": [
			{ board: withSlots(2), processor, memory: one, memoryGb: 32 },
			"oneEach",
			{ slots: 2 },
		],
		"as many slots as channels, and nobody knows how many modules": [
			{ board: withSlots(2), processor, memory: { type: "DDR5" }, memoryGb: 32 },
			"oneEach",
			{ slots: 2 },
		],
		"one module, and the same again": [
			{ board, processor, memory: one, ...later },
			"asNow",
			{ modules: 2, perChannel: 1 },
		],
		"one module, and twice as much in the end": [
			{ board, processor, memory: one, memoryGb: 32 },
			"asNow",
			{ modules: 2, perChannel: 1 },
		],
		"three modules, and room for one more": [
			{ board, processor, memory: { ...memory, modules: 3 }, ...later },
			"asNow",
			{ modules: 4, perChannel: 2 },
		],
		"two modules on four channels": [
			{
				board: { memory: { ...boardMemory, channels: 4 } },
				processor: { memory: { ...processor.memory, channels: 4 } },
				memory,
				...later,
			},
			"asNow",
			{ modules: 4, perChannel: 1 },
		],
		"a table without a lower rate": [{ board, processor: even, memory, ...later }, "noLower", { modules: 4 }],
		"a label just as slow as the fuller row": [
			{ board, processor, memory: { ...memory, mtPerS: 4400 }, ...later },
			"noLower",
			{ modules: 4 },
		],
		"just as much as the board takes": [
			{ board: { memory: { ...boardMemory, maxGb: 64 } }, processor: even, memory, ...later },
			"noLower",
			{ modules: 4 },
		],
		"the free slots just reach the amount": [
			{ board, processor: even, memory, memoryGb: 128 },
			"noLower",
			{ modules: 4 },
		],
		"ranks not known, and the label is as slow as the lowest row": [
			{ board, processor, memory: { type: "DDR5", modules: 2, mtPerS: 3600 }, ...later },
			"noLower",
			{ modules: 4 },
		],
	},
	cautions: {
		"the same again, and the processor's table is lower for it": [
			{ board, processor, memory, ...later },
			"good-to-know",
			"lower",
			byProcessor,
		],
		"twice as much in the end": [{ board, processor, memory, memoryGb: 64 }, "good-to-know", "lower", byProcessor],
		"one GB more than there is takes one module more": [
			{ board, processor, memory, memoryGb: 33 },
			"good-to-know",
			"lower",
			{ ...byProcessor, modules: 3 },
		],
		"later, though there is as much as is wanted in the end": [
			{ board, processor, memory, memoryGb: 32, ...later },
			"good-to-know",
			"lower",
			byProcessor,
		],
		"a label one MT/s above the fuller row": [
			{ board, processor, memory: { ...memory, mtPerS: 4401 }, ...later },
			"good-to-know",
			"lower",
			byProcessor,
		],
		"two ranks": [
			{ board, processor, memory: { ...memory, ranks: 2 }, ...later },
			"good-to-know",
			"lower",
			{ ...byProcessor, later: "3600" },
		],
		"ranks not known": [
			{ board, processor, memory: { type: "DDR5", modules: 2 }, ...later },
			"good-to-know",
			"lower",
			{ ...byProcessor, later: "3600 to 4400" },
		],
		"the board's table is the lower": [
			{ board: { memory: { ...boardMemory, rates: lowerRows } }, processor, memory, ...later },
			"good-to-know",
			"lower",
			{ modules: 4, by: "the board", later: "4000", now: "4800" },
		],
		"only the board's table lists a lower rate": [
			{ board: { memory: { ...boardMemory, rates: lowerRows } }, processor: even, memory, ...later },
			"good-to-know",
			"lower",
			{ modules: 4, by: "the board", later: "4000", now: "4800" },
		],
		"the processor is still to be bought": [
			{ board: { memory: { ...boardMemory, rates: lowerRows } }, processor: "open", memory, ...later },
			"good-to-know",
			"lower",
			{ modules: 4, by: "the board", later: "4000", now: "4800" },
		],
		"no table at all": [
			{ board, processor: {}, memory, ...later },
			"good-to-know",
			"unlisted",
			{ modules: 4, perChannel: 2 },
		],
		"no row for two a channel": [
			{ board, processor: { memory: { rates: [rates[0]] } }, memory, ...later },
			"good-to-know",
			"unlisted",
			{ modules: 4, perChannel: 2 },
		],
		"the board lists no lower rate, and the processor's table is not known": [
			{ board: { memory: { ...boardMemory, rates: evenRows } }, processor: {}, memory, ...later },
			"good-to-know",
			"unlisted",
			{ modules: 4, perChannel: 2 },
		],
		"the same again is more than the board takes": [
			{ board: { memory: { ...boardMemory, maxGb: 63 } }, processor, memory, ...later },
			"plan-around",
			"tooMuch",
			{ gb: 64, maxGb: 63 },
		],
	},
	fails: {
		"no slot is free": [{ board: withSlots(2), processor, memory, ...later }, "noSlot", { slots: 2 }],
		"the only slot is taken": [{ board: withSlots(1), processor, memory: one, ...later }, "noSlot", { slots: 1 }],
		"no slot is free, and there is enough in the end": [
			{ board: withSlots(2), processor, memory, memoryGb: 32, ...later },
			"noSlot",
			{ slots: 2 },
		],
	},
	cannotTell: {
		"nobody knows the slots": [
			{ board: { memory: { type: "DDR5", channels: 2 } }, processor, memory, ...later },
			["board.memory.slots"],
		],
		"nobody knows slots and modules": [
			{ board: {}, processor, memory: { type: "DDR5" }, ...later },
			["board.memory.slots", "memory.modules"],
		],
		"nobody knows the size of a module": [
			{ board, processor, memory: { type: "DDR5", modules: 2 }, memoryGb: 64 },
			["memory.gbPerModule"],
		],
		"nobody knows the channels": [
			{ board: { memory: { slots: 4 } }, processor: {}, memory, ...later },
			["board.memory.channels"],
		],
		"the ranks decide": [
			{
				board,
				processor: {
					memory: {
						channels: 2,
						rates: [
							{ modulesPerChannel: 1, mtPerS: 5600 },
							{ modulesPerChannel: 2, ranks: 1, mtPerS: 5600 },
							{ modulesPerChannel: 2, ranks: 2, mtPerS: 4400 },
						],
					},
				},
				memory: { type: "DDR5", modules: 2 },
				...later,
			},
			["memory.ranks"],
		],
		"nobody has said which memory": [{ board, processor, ...later }, ["memory"]],
	},
	needs: {
		"two modules, and the same again": [
			{ memory, ...later },
			"At least 4 memory slots: for yours, and for the same again.",
		],
		"the amount in the end has its own line": [{ memory, memoryGb: 64, ...later }, null],
		"nobody knows how many modules": [{ memory: { type: "DDR5" }, ...later }, null],
		"not asked": [{ memory, memoryGb: 64 }, null],
	},
});
