import { generation } from "../../../src/rules/fit/generation.ts";
import { testRule } from "../test-rule.ts";

const processor = { name: "Deckhand 6", generation: "Schooner" };
const listed = (fromVersion?: string) => ({
	supportList: { rows: [{ processor: "DECKHAND-6", ...(fromVersion ? { fromVersion } : {}) }] },
});
const row = (served: "yes" | "no" | "from firmware", startsFrom?: string) => ({
	generations: [
		{ generation: "Dinghy", served: "yes" as const },
		{ generation: "schooner", served, ...(startsFrom ? { startsFrom } : {}) },
	],
});

testRule(generation, {
	fits: {
		"the oldest firmware in shops is exactly the one that protects it": [
			{
				board: { chipset: "Ladle 3", firmware: { oldestInShops: "1.34" } },
				processor,
				platform: {
					generations: [{ generation: "Schooner", served: "from firmware", startsFrom: "1.20", safeFrom: "1.34" }],
				},
			},
			"newEnough",
			{ from: "1.20", oldest: "1.34" },
		],
		"the board's list names it, in another spelling": [
			{ board: listed(), processor },
			"listed",
			{ processor: "Deckhand 6" },
		],
		"the list names it in a longer row": [
			{ board: { supportList: { rows: [{ processor: "Tallow Deckhand 6 (65 W)" }] } }, processor },
			"listed",
			{ processor: "Deckhand 6" },
		],
		"of two rows that name it the newer version counts": [
			{
				board: {
					supportList: {
						rows: [
							{ processor: "Deckhand 6 (A0)", fromVersion: "F5" },
							{ processor: "Deckhand 6 (B0)", fromVersion: "F9" },
						],
					},
					firmware: { oldestInShops: "F9" },
				},
				processor,
			},
			"newEnough",
			{ from: "F9", oldest: "F9" },
		],
		"the list names it, whatever the chipset's row says": [
			{ board: { chipset: "Ladle 3", ...listed() }, processor, platform: row("no") },
			"listed",
			{ processor: "Deckhand 6" },
		],
		"the oldest firmware in shops is exactly new enough": [
			{ board: { ...listed("F9"), firmware: { oldestInShops: "F9" } }, processor },
			"newEnough",
			{ from: "F9", oldest: "F9" },
		],
		"the oldest firmware in shops is newer, by value and not by letters": [
			{ board: { ...listed("F9"), firmware: { oldestInShops: "F10" } }, processor },
			"newEnough",
			{ from: "F9", oldest: "F10" },
		],
		"no list, and the chipset runs the generation": [
			{ board: { chipset: "Ladle 3" }, processor, platform: row("yes") },
			"served",
			{ chipset: "Ladle 3", generation: "schooner" },
		],
		"no list, and the chipset runs it from a firmware that shops sell": [
			{
				board: { chipset: "Ladle 3", firmware: { oldestInShops: "1.40" } },
				processor,
				platform: row("from firmware", "1.30"),
			},
			"newEnough",
			{ from: "1.30", oldest: "1.40" },
		],
		"no list, and the chipset runs it from a firmware nobody names": [
			{ board: { chipset: "Ladle 3" }, processor, platform: row("from firmware") },
			"served",
			{ chipset: "Ladle 3", generation: "schooner" },
		],
		"no processor bought yet": [{ board: listed(), processor: "open" }, "open", { part: "processor" }],
		"no processor": [{ board: listed(), processor: "none" }, "none", { part: "processor" }],
	},
	cautions: {
		"the list names it, with an empty place for the version": [
			{ board: { supportList: { rows: [{ processor: "Deckhand 6", versionOpen: true }] } }, processor },
			"plan-around",
			"versionOpen",
			{ processor: "Deckhand 6" },
		],
		"it starts, but a box may hold one version less than protects it": [
			{
				board: { chipset: "Ladle 3", firmware: { oldestInShops: "1.33" } },
				processor,
				platform: {
					generations: [{ generation: "Schooner", served: "from firmware", startsFrom: "1.20", safeFrom: "1.34" }],
				},
			},
			"plan-around",
			"safeLater",
			{ safe: "1.34", updatesAlone: false, oldest: "1.33" },
		],
		"it starts, but nobody knows whether the box holds what protects it": [
			{
				board: { chipset: "Ladle 3" },
				processor,
				platform: { generations: [{ generation: "Schooner", served: "yes", safeFrom: "1.34" }] },
			},
			"plan-around",
			"safeUnsure",
			{ safe: "1.34", updatesAlone: false },
		],
		"the same on a board that updates without a processor": [
			{
				board: { chipset: "Ladle 3", recovery: { flashWithoutProcessor: true } },
				processor,
				platform: { generations: [{ generation: "Schooner", served: "yes", safeFrom: "1.34" }] },
			},
			"plan-around",
			"safeUnsure",
			{ safe: "1.34", updatesAlone: true },
		],
		"it needs an update to start, and a newer one to be safe": [
			{
				board: {
					chipset: "Ladle 3",
					firmware: { oldestInShops: "1.10" },
					recovery: { flashWithoutProcessor: true },
				},
				processor,
				platform: {
					generations: [{ generation: "Schooner", served: "from firmware", startsFrom: "1.20", safeFrom: "1.34" }],
				},
			},
			"plan-around",
			"updatesAlone",
			{ from: "1.20", safe: "1.34" },
		],
		"the firmware it starts with protects it too": [
			{
				board: { chipset: "Ladle 3", firmware: { oldestInShops: "1.10" } },
				processor,
				platform: {
					generations: [{ generation: "Schooner", served: "from firmware", startsFrom: "1.34", safeFrom: "1.34" }],
				},
			},
			"plan-around",
			"needsUpdate",
			{ from: "1.34", processor: "Deckhand 6" },
		],
		"a version is out that no longer runs it": [
			{
				board: { chipset: "Ladle 3", firmware: { releases: [{ version: "2.40" }, { version: "2.50" }] } },
				processor,
				platform: { ...row("yes"), dropsOlderFrom: [{ generation: "Schooner", version: "2.50" }] },
			},
			"plan-around",
			"dropped",
			{ version: "2.50" },
		],
		"no version that drops it is out yet": [
			{
				board: { chipset: "Ladle 3", firmware: { releases: [{ version: "2.40" }] } },
				processor,
				platform: { ...row("yes"), dropsOlderFrom: [{ generation: "Schooner", version: "2.50" }] },
			},
			"good-to-know",
			"mayDrop",
			{ version: "2.50" },
		],
		"one version too old, but it updates without a processor": [
			{
				board: {
					...listed("F10"),
					firmware: { oldestInShops: "F9" },
					recovery: { flashWithoutProcessor: true },
				},
				processor,
			},
			"plan-around",
			"updatesAlone",
			{ from: "F10" },
		],
		"one version too old": [
			{
				board: { ...listed("F10"), firmware: { oldestInShops: "F9" }, recovery: { flashWithoutProcessor: false } },
				processor,
			},
			"plan-around",
			"needsUpdate",
			{ from: "F10", processor: "Deckhand 6" },
		],
		"nobody knows what the box holds": [
			{ board: listed("F10"), processor },
			"plan-around",
			"needsUpdate",
			{ from: "F10", processor: "Deckhand 6" },
		],
		"two versions that cannot be put in order": [
			{ board: { ...listed("F10"), firmware: { oldestInShops: "2.20" } }, processor },
			"plan-around",
			"needsUpdate",
			{ from: "F10", processor: "Deckhand 6" },
		],
		"the chipset runs it from a firmware the box may not hold": [
			{ board: { chipset: "Ladle 3" }, processor, platform: row("from firmware", "1.30") },
			"plan-around",
			"needsUpdate",
			{ from: "1.30", processor: "Deckhand 6" },
		],
	},
	fails: {
		"the list names others only": [
			{ board: { supportList: { rows: [{ processor: "Deckhand 5" }] } }, processor },
			"notListed",
			{ processor: "Deckhand 6" },
		],
		"the list has a row without a word": [
			{ board: { supportList: { rows: [{ processor: "--" }] } }, processor },
			"notListed",
			{ processor: "Deckhand 6" },
		],
		"the list is empty": [
			{ board: { supportList: { rows: [] } }, processor },
			"notListed",
			{ processor: "Deckhand 6" },
		],
		"the list names one with a plus": [
			{ board: { supportList: { rows: [{ processor: "Deckhand 6+" }] } }, processor },
			"notListed",
			{ processor: "Deckhand 6" },
		],
		"the chipset does not run it": [
			{ board: { chipset: "Ladle 3" }, processor, platform: row("no") },
			"notServed",
			{ chipset: "Ladle 3", generation: "schooner" },
		],
	},
	cannotTell: {
		"not among the rows noted, and only some were": [
			{ board: { supportList: { partial: true, rows: [{ processor: "Bosun" }] } }, processor },
			["board.supportList"],
			"listPartial",
			{ processor: "Deckhand 6" },
		],
		"the list names one of its family": [
			{ board: { supportList: { rows: [{ processor: "Tallow Deckhand 6 Pro (65 W)" }] } }, processor },
			["board.supportList"],
			"nearlyListed",
			{ processor: "Deckhand 6", listed: "Tallow Deckhand 6 Pro (65 W)" },
		],
		"nobody has said which processor": [{ board: listed() }, ["processor"]],
		"neither list nor row": [
			{ board: { chipset: "Ladle 3" }, processor },
			["board.supportList"],
			"noList",
			{ processor: "Deckhand 6" },
		],
		"the row does not name the generation": [
			{ board: { chipset: "Ladle 3" }, processor: { ...processor, generation: "Trawler" }, platform: row("yes") },
			["board.supportList"],
			"noList",
			{ processor: "Deckhand 6" },
		],
		"the processor's generation is not known": [
			{ board: { chipset: "Ladle 3" }, processor: { name: "Deckhand 6" }, platform: row("yes") },
			["board.supportList"],
			"noList",
			{ processor: "Deckhand 6" },
		],
		"the board's chipset is not known": [
			{ board: {}, processor, platform: row("no") },
			["board.supportList"],
			"noList",
			{ processor: "Deckhand 6" },
		],
	},
	needs: {
		"a processor": [{ processor }, "The board maker's processor list names the Deckhand 6; note from which firmware."],
		"no processor bought yet": [{ processor: "open" }, null],
	},
});
