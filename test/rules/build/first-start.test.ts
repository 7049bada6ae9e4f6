import { expect, test } from "vitest";
import { firstStart } from "../../../src/rules/build/first-start.ts";
import { findingWords } from "../../../src/rules/finding-words.ts";
import { testRule } from "../test-rule.ts";

const kit = (type: "DDR3" | "DDR4" | "DDR5", modules: number, gbPerModule: number) => ({
	memory: { type, modules, gbPerModule },
});

// Four modules and 64 GB are our own convention.
testRule(firstStart, {
	fits: {
		"three modules of DDR4": [kit("DDR4", 3, 8), "short", { type: "DDR4" }],
		"two large modules of DDR4": [kit("DDR4", 2, 32), "short", { type: "DDR4" }],
		"four modules of DDR3": [kit("DDR3", 4, 8), "short", { type: "DDR3" }],
		"DDR3, and nobody knows how many": [{ memory: { type: "DDR3" } }, "short", { type: "DDR3" }],
		"two modules of DDR5": [kit("DDR5", 2, 16), "minutes", { type: "DDR5" }],
		"three modules, below 64 GB": [kit("DDR5", 3, 16), "minutes", { type: "DDR5" }],
		"two modules, just below 64 GB": [kit("DDR5", 2, 31.5), "minutes", { type: "DDR5" }],
		"only the type is known": [{ memory: { type: "DDR5" } }, "minutes", { type: "DDR5" }],
		"to be bought to suit": [{ memory: "open" }, "open", { part: "memory" }],
		"no memory": [{ memory: "none" }, "none", { part: "memory" }],
	},
	cautions: {
		"four modules": [kit("DDR5", 4, 8), "good-to-know", "long", { type: "DDR5", modules: 4, gb: 32 }],
		"two modules, 64 GB in all": [kit("DDR5", 2, 32), "good-to-know", "long", { type: "DDR5", modules: 2, gb: 64 }],
		"one module of 64 GB": [kit("DDR5", 1, 64), "good-to-know", "long", { type: "DDR5", modules: 1, gb: 64 }],
		"four modules of a size that nobody knows": [
			{ memory: { type: "DDR5", modules: 4 } },
			"good-to-know",
			"long",
			{ type: "DDR5", modules: 4, gb: 0 },
		],
		"one of them alone has 64 GB": [
			{ memory: { type: "DDR5", gbPerModule: 64 } },
			"good-to-know",
			"long",
			{ type: "DDR5", modules: 0, gb: 64 },
		],
		"four modules of DDR4": [kit("DDR4", 4, 8), "good-to-know", "fewMinutes", { type: "DDR4", modules: 4 }],
	},
	cannotTell: {
		"DDR4, and nobody knows how many": [{ memory: { type: "DDR4", gbPerModule: 32 } }, ["memory.modules"]],
		"the type is not known": [{ memory: { modules: 4 } }, ["memory.type"]],
		"nobody has said which memory": [{}, ["memory"]],
	},
});

test("one module is no modules", () => {
	const data = { type: "DDR5", modules: 1, gb: 64 };
	expect(findingWords({ ruleId: firstStart.id, messageId: "long", data })).toMatch(/^With 1 module and 64 GB of DDR5 /);
});
