import { memoryFirmware } from "../../../src/rules/fit/memory-firmware.ts";
import { testRule } from "../test-rule.ts";

const kit = (gbPerModule: number) => ({ type: "DDR5", modules: 2, gbPerModule }) as const;
const releases = (...dates: readonly string[]) => dates.map((date, index) => ({ version: `F${index + 1}`, date }));
const board = (maxGbPerModule: number, oldestInShops = "F1", ...dates: readonly string[]) => ({
	memory: { type: "DDR5" as const, maxGbPerModule },
	firmware: { oldestInShops, releases: releases(...dates) },
});

// The days are from memory and half a year of our own convention: 24 and 48 GB October 2023, 64 GB October 2025.
testRule(memoryFirmware, {
	fits: {
		"modules of 32 GB": [{ board: board(32, "F1", "2023-01-10", "2024-01-10"), memory: kit(32) }, "usual", { gb: 32 }],
		"modules of 8 GB on a page that is silent": [{ board: {}, memory: kit(8) }, "usual", { gb: 8 }],
		"registered modules of 64 GB": [
			{ board: board(128, "F1", "2023-01-10", "2024-01-10"), memory: { ...kit(64), registered: true } },
			"usual",
			{ gb: 64 },
		],
		"48 GB, and the oldest firmware is just of the day": [
			{ board: board(48, "F1", "2023-10-01", "2024-01-10"), memory: kit(48) },
			"recent",
			{ since: "2023-10-01", from: "2023-10-01" },
		],
		"24 GB, and the shop tells a newer one": [
			{ board: board(48, "F2", "2023-01-10", "2024-01-10", "2024-03-01"), memory: kit(24) },
			"recent",
			{ since: "2024-01-10", from: "2023-10-01" },
		],
		"64 GB, and the oldest firmware is just of the day": [
			{ board: board(64, "F1", "2025-10-01", "2026-01-10"), memory: kit(64) },
			"recent",
			{ since: "2025-10-01", from: "2025-10-01" },
		],
		"registered modules of 96 GB": [
			{
				board: board(96, "F1", "2023-10-01", "2024-01-10"),
				memory: { ...kit(96), registered: true },
			},
			"recent",
			{ since: "2023-10-01", from: "2023-10-01" },
		],
		"no oldest is named, and all are recent": [
			{
				board: { memory: { maxGbPerModule: 48 }, firmware: { releases: releases("2024-03-01", "2024-01-10") } },
				memory: kit(48),
			},
			"recent",
			{ since: "2024-01-10", from: "2023-10-01" },
		],
		"the size is not known, and the firmware knows all": [
			{ board: board(64, "F1", "2026-01-10", "2026-03-01"), memory: { type: "DDR5" } },
			"recent",
			{ since: "2026-01-10", from: "2025-10-01" },
		],
		"only one firmware is out": [
			{ board: { memory: { maxGbPerModule: 48 }, firmware: { releases: releases("2023-01-10") } }, memory: kit(48) },
			"newest",
		],
		"the box holds the newest": [{ board: board(48, "F2", "2022-10-01", "2023-01-10"), memory: kit(48) }, "newest"],
		"the board lists no module so large": [
			{ board: board(32, "F1", "2023-01-10", "2024-01-10"), memory: kit(48) },
			"tooLarge",
		],
		"memory of another type": [{ board: board(64), memory: { ...kit(48), type: "DDR4" } }, "otherType"],
		"a board for another type": [{ board: { memory: { type: "DDR4" } }, memory: { gbPerModule: 48 } }, "otherType"],
		"to be bought to suit": [{ board: board(48), memory: "open" }, "noModules"],
		"no memory": [{ board: board(48), memory: "none" }, "noModules"],
	},
	cautions: {
		"48 GB, and the oldest firmware is a day too old": [
			{ board: board(48, "F1", "2023-09-30", "2024-01-10"), memory: kit(48) },
			"good-to-know",
			"mayNeed",
			{ gb: 48, mostGb: 48, oldest: "F1", updatesAlone: false },
		],
		"64 GB, and the oldest firmware is a day too old": [
			{
				board: {
					...board(128, "F1", "2025-09-30", "2026-01-10"),
					recovery: { flashWithoutProcessor: true },
				},
				memory: kit(64),
			},
			"good-to-know",
			"mayNeed",
			{ gb: 64, mostGb: 128, oldest: "F1", updatesAlone: true },
		],
		"modules of 96 GB that are not registered are as late as those of 64": [
			{ board: board(128, "F1", "2025-09-30", "2026-01-10"), memory: kit(96) },
			"good-to-know",
			"mayNeed",
			{ gb: 96, mostGb: 128, oldest: "F1", updatesAlone: false },
		],
		"one firmware is out, and a box may hold an older one": [
			{
				board: { ...board(48, "F1"), firmware: { oldestInShops: "F1", releases: [{ version: "F2" }] } },
				memory: kit(48),
			},
			"good-to-know",
			"mayNeed",
			{ gb: 48, mostGb: 48, oldest: "F1", updatesAlone: false },
		],
		"no day stands beside one of them": [
			{
				board: {
					memory: { maxGbPerModule: 48 },
					firmware: { releases: [{ version: "F1" }, { version: "F2", date: "2024-01-10" }] },
				},
				memory: kit(48),
			},
			"good-to-know",
			"mayNeed",
			{ gb: 48, mostGb: 48, oldest: "", updatesAlone: false },
		],
		"versions that cannot be put in order": [
			{
				board: { ...board(48), firmware: { oldestInShops: "2.A", releases: [{ version: "F1", date: "2024-01-10" }] } },
				memory: kit(48),
			},
			"good-to-know",
			"mayNeed",
			{ gb: 48, mostGb: 48, oldest: "2.A", updatesAlone: false },
		],
		"nothing known of the firmware": [
			{ board: { memory: { maxGbPerModule: 48 } }, memory: kit(24) },
			"good-to-know",
			"mayNeed",
			{ gb: 24, mostGb: 48, oldest: "", updatesAlone: false },
		],
	},
	cannotTell: {
		"the largest module is not known": [
			{ board: { memory: { type: "DDR5" } }, memory: kit(48) },
			["board.memory.maxGbPerModule"],
			"unlisted",
			{ gb: 48 },
		],
		"the size is not known": [
			{ board: board(48, "F1", "2023-01-10", "2024-01-10"), memory: { type: "DDR5" } },
			["memory.gbPerModule"],
		],
		"nobody has said which memory": [{ board: board(48, "F1", "2023-01-10", "2024-01-10") }, ["memory"]],
	},
});
