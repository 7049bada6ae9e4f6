import { expect, test } from "vitest";
import { withOwnership } from "../../src/questions/owned-parts.ts";
import { ownershipWords } from "../../src/sheet/ownership-words.ts";
import { buildFacts } from "../rules/rule-subject.ts";

const picked = buildFacts({ processor: {}, case: {}, graphicsCard: {}, memory: {}, cooler: "open", supply: {} });
const owned = withOwnership(picked, (kind) => {
	if (kind === "case" || kind === "graphicsCard") return "returnable";
	return kind === "memory" || kind === "supply" ? "bought" : null;
});
const untilChristmas = { ...owned, returnableUntil: "2026-12-24" };

test.each<[string, readonly string[], typeof owned, string]>([
	["a part that can go back", ["case.boardForms"], owned, "Your case can go back."],
	["and until when", ["case.boardForms"], untilChristmas, "Your case can go back until 2026-12-24."],
	["a part bought for good", ["memory.type", "board.memory.type"], untilChristmas, "Your memory is bought for good."],
	[
		"several, in the order the rule reads them",
		["case.cardMaxLengthMm", "supply.watts", "graphicsCard.lengthMm"],
		untilChristmas,
		"Your case can go back until 2026-12-24; your power supply is bought for good; your graphics card can go back until 2026-12-24.",
	],
	["what is planned is not spoken of", ["processor.socket", "memory.type"], owned, "Your memory is bought for good."],
])("%s", (_, reads, facts, words) => {
	expect(ownershipWords({ reads }, facts)).toBe(words);
});

test("where all is planned, open or no part at all, nothing is said", () => {
	expect(ownershipWords({ reads: ["case.boardForms", "memory.type"] }, picked)).toBe("");
	for (const reads of [["processor.socket"], ["cooler.heightMm"], ["priceCap"], []])
		expect(ownershipWords({ reads }, untilChristmas)).toBe("");
});
