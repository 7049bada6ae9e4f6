import { memoryRate } from "../../../src/rules/features/memory-rate.ts";
import { testRule } from "../test-rule.ts";

const rates = [
	{ type: "DDR5", modulesPerChannel: 1, ranks: 1, mtPerS: 5600 },
	{ type: "DDR5", modulesPerChannel: 1, ranks: 2, mtPerS: 5200 },
	{ type: "DDR5", modulesPerChannel: 2, mtPerS: 3600 },
	{ type: "DDR4", modulesPerChannel: 1, mtPerS: 3200 },
] as const;
const processor = { memory: { channels: 2, rates: [...rates] } };
const boardMemory = { type: "DDR5", channels: 2, highestMtPerS: 6000 } as const;
const board = { memory: boardMemory };
const memory = { type: "DDR5", modules: 2, ranks: 1, mtPerS: 5600 } as const;
const faster = { ...memory, mtPerS: 6000 };
const four = { ...memory, modules: 4 };
const plainRows = { rates: [{ modulesPerChannel: 1, mtPerS: 4800 }] };
const byOne = { rate: 6000, listed: 5600, by: "your processor", perChannel: 1 };

testRule(memoryRate, {
	fits: {
		"as fast as the processor's table lists": [{ board, processor, memory }, "within", { rate: 5600, perChannel: 1 }],
		"as fast as the table lists for two ranks": [
			{ board, processor, memory: { ...memory, ranks: 2, mtPerS: 5200 } },
			"within",
			{ rate: 5200, perChannel: 1 },
		],
		"four modules, as fast as the table lists for two a channel": [
			{ board, processor, memory: { ...four, mtPerS: 3600 } },
			"within",
			{ rate: 3600, perChannel: 2 },
		],
		"one module, and nobody knows the channels": [
			{ board: {}, processor: { memory: { rates: [...rates] } }, memory: { ...memory, modules: 1 } },
			"within",
			{ rate: 5600, perChannel: 1 },
		],
		"three modules on two channels are two a channel": [
			{ board, processor, memory: { ...memory, modules: 3, mtPerS: 3600 } },
			"within",
			{ rate: 3600, perChannel: 2 },
		],
		"the board's fewer channels count": [
			{
				board: { memory: { ...boardMemory, channels: 1 } },
				processor,
				memory: { ...memory, mtPerS: 3600 },
			},
			"within",
			{ rate: 3600, perChannel: 2 },
		],
		"modules and ranks not known, and the lowest row is as fast": [
			{ board, processor, memory: { type: "DDR5", mtPerS: 3600 } },
			"within",
			{ rate: 3600, perChannel: 0 },
		],
		"the page is silent on rates": [{ board: {}, processor, memory }, "within", { rate: 5600, perChannel: 1 }],
		"the lower of two rows that contradict each other": [
			{
				board,
				processor: {
					memory: {
						channels: 2,
						rates: [
							{ modulesPerChannel: 1, mtPerS: 5200 },
							{ modulesPerChannel: 1, mtPerS: 5600 },
						],
					},
				},
				memory: { ...memory, mtPerS: 5200 },
			},
			"within",
			{ rate: 5200, perChannel: 1 },
		],
		"another type": [{ board: { memory: { type: "DDR4" } }, processor, memory }, "otherType"],
		"to be bought to suit": [{ board, processor, memory: "open" }, "open", { part: "memory" }],
		"no memory": [{ board, processor, memory: "none" }, "none", { part: "memory" }],
	},
	cautions: {
		"above the table, as fast as the board's highest": [
			{ board, processor, memory: faster },
			"good-to-know",
			"byProfile",
			{ ...byOne, highest: 6000 },
		],
		"one MT/s above the table": [
			{ board, processor, memory: { ...memory, mtPerS: 5601 } },
			"good-to-know",
			"byProfile",
			{ ...byOne, rate: 5601, highest: 6000 },
		],
		"one MT/s above the row for two ranks": [
			{ board, processor, memory: { ...memory, ranks: 2, mtPerS: 5201 } },
			"good-to-know",
			"byProfile",
			{ ...byOne, rate: 5201, listed: 5200, highest: 6000 },
		],
		"a row for these ranks before one for any": [
			{
				board,
				processor: {
					memory: {
						channels: 2,
						rates: [
							{ modulesPerChannel: 1, mtPerS: 5200 },
							{ modulesPerChannel: 1, ranks: 1, mtPerS: 5600 },
						],
					},
				},
				memory: faster,
			},
			"good-to-know",
			"byProfile",
			{ ...byOne, highest: 6000 },
		],
		"the board's table is the lower": [
			{ board: { memory: { ...boardMemory, ...plainRows } }, processor, memory: faster },
			"good-to-know",
			"byProfile",
			{ ...byOne, listed: 4800, by: "the board", highest: 6000 },
		],
		"ranks not known, and above either row": [
			{ board, processor, memory: { type: "DDR5", modules: 2, mtPerS: 6000 } },
			"good-to-know",
			"byProfile",
			{ ...byOne, highest: 6000 },
		],
		"modules not known, and above every row": [
			{ board, processor, memory: { type: "DDR5", ranks: 1, mtPerS: 6000 } },
			"good-to-know",
			"byProfile",
			{ ...byOne, perChannel: 0, highest: 6000 },
		],
		"nothing known of the processor, and above the board's table": [
			{ board: { memory: { ...boardMemory, ...plainRows } }, memory },
			"good-to-know",
			"byProfile",
			{ rate: 5600, listed: 4800, by: "the board", perChannel: 1, highest: 6000 },
		],
		"nothing known of the processor, as fast as the board's highest": [
			{ board, memory: faster },
			"good-to-know",
			"listed",
			{ rate: 6000, highest: 6000 },
		],
		"the processor is still to be bought": [
			{ board, processor: "open", memory: faster },
			"good-to-know",
			"listed",
			{ rate: 6000, highest: 6000 },
		],
		"between the rows for one rank and for two": [
			{ board, processor, memory: { type: "DDR5", modules: 2, mtPerS: 5600 } },
			"good-to-know",
			"listed",
			{ rate: 5600, highest: 6000 },
		],
	},
	fails: {
		"one MT/s above the board's highest": [
			{ board, processor, memory: { ...memory, mtPerS: 6001 } },
			"slower",
			{ rate: 6001, highest: 6000 },
		],
		"within the processor's table, and above the board's highest": [
			{ board: { memory: { ...boardMemory, highestMtPerS: 5599 } }, processor, memory },
			"slower",
			{ rate: 5600, highest: 5599 },
		],
		"four modules, one MT/s above the row for two a channel": [
			{ board, processor, memory: { ...four, mtPerS: 3601 } },
			"crowded",
			{ rate: 3601, listed: 3600, by: "your processor", perChannel: 2 },
		],
		"four modules, and the page names no highest rate": [
			{ board: { memory: { type: "DDR5", channels: 2 } }, processor, memory: four },
			"crowded",
			{ rate: 5600, listed: 3600, by: "your processor", perChannel: 2 },
		],
		"a board that does not let the rate be raised": [
			{ board: { ...board, raises: { memoryRate: false } }, processor, memory: faster },
			"locked",
			{ ...byOne, runs: 5600 },
		],
		"the same with a highest rate below the table": [
			{
				board: { memory: { ...boardMemory, highestMtPerS: 5200 }, raises: { memoryRate: false } },
				processor,
				memory: faster,
			},
			"locked",
			{ ...byOne, runs: 5200 },
		],
	},
	cannotTell: {
		"above the table, and the page names no highest rate": [
			{ board: { memory: { type: "DDR5", channels: 2 } }, processor, memory: faster },
			["board.memory.highestMtPerS"],
			"unlisted",
			byOne,
		],
		"nothing known of board and processor": [{ board: {}, memory }, ["processor", "board.memory.highestMtPerS"]],
		"nothing known of the board, and no table of the processor's": [
			{ board: {}, processor: {}, memory },
			["processor.memory.rates", "board.memory.highestMtPerS"],
		],
		"four modules, and no row for two a channel": [
			{ board, processor: { memory: { rates: [rates[0]] } }, memory: four },
			["processor.memory.rates"],
		],
		"a rate that cannot be raised, and no table": [
			{ board: { ...board, raises: { memoryRate: false } }, processor: {}, memory },
			["processor.memory.rates"],
		],
		"between the rows for one a channel and for two, and modules not known": [
			{ board, processor, memory: { type: "DDR5", ranks: 1, mtPerS: 4800 } },
			["memory.modules"],
		],
		"the same, and channels not known": [
			{
				board: { memory: { type: "DDR5", highestMtPerS: 6000 } },
				processor: { memory: { rates: [rates[0], rates[2]] } },
				memory: { ...memory, mtPerS: 4800 },
			},
			["board.memory.channels"],
		],
		"between the rows for one rank and for two, and no highest rate": [
			{ board: {}, processor, memory: { type: "DDR5", modules: 2, mtPerS: 5600 } },
			["memory.ranks", "board.memory.highestMtPerS"],
		],
		"between the rows for two types, and no type known": [
			{ board: {}, processor, memory: { modules: 2, ranks: 1, mtPerS: 4800 } },
			["memory.type", "board.memory.highestMtPerS"],
		],
		"no rate on the label": [{ board, processor, memory: { type: "DDR5", modules: 2 } }, ["memory.mtPerS"]],
		"nobody has said which memory": [{ board, processor }, ["memory"]],
	},
});
