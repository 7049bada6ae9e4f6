import { describe, expect, test } from "vitest";
import { compareFirmness, type Firmness, firmnessOf, ownershipOf, partsOfRule } from "../../src/choose/firmness.ts";
import { emptyBuildFacts } from "../../src/parts/build.ts";
import { withOwnership } from "../../src/questions/owned-parts.ts";
import { buildFacts } from "../rules/rule-subject.ts";

/** The processor is planned, the case can go back, the memory is bought for good; the cooler is still open. */
const facts = withOwnership(
	buildFacts({ processor: {}, case: {}, memory: {}, cooler: "open", graphicsCard: "none", caseFans: 3 }),
	(kind) => ({ case: "returnable" as const, memory: "bought" as const })[kind as string] ?? null,
);
const reading = (...reads: string[]) => ({ reads });

describe("the parts that a rule holds against each other", () => {
	test.each<[string, readonly string[], readonly string[]]>([
		["those picked, in the order read", ["case.boardForms", "processor.socket"], ["case", "processor"]],
		["each once", ["memory.type", "memory.modules", "board.memory.type"], ["memory"]],
		["read as a whole", ["processor", "case"], ["processor", "case"]],
		["not the board", ["board.socket", "platform.generations"], []],
		["none that is open, not there or not known", ["cooler.heightMm", "graphicsCard.watts", "supply.watts"], []],
		["no wish, no limit, no other want", ["wish.features/wireless", "priceCap", "caseFans", "drives"], []],
		["nothing by words that every object has", ["constructor", "toString.x", ""], []],
	])("%s", (_, reads, parts) => {
		expect(partsOfRule({ reads }, facts)).toEqual(parts);
	});
});

describe("how firm the parts are that would have to change", () => {
	test.each<[string, readonly (readonly string[])[], Firmness]>([
		["a plan", [["processor.socket", "board.socket"]], "planned"],
		["one that can go back", [["case.boardForms"]], "returnable"],
		["one bought for good", [["memory.type"]], "bought"],
		["the firmest of one rule", [["processor.socket", "case.boardForms"]], "returnable"],
		["the firmest of several rules, whichever comes first", [["memory.type"], ["case.boardForms"]], "bought"],
		["the other way round", [["case.boardForms"], ["memory.type"], ["processor.socket"]], "bought"],
		["a wish and a limit are as free as a plan", [["wish.features/wireless"], ["priceCap"]], "planned"],
		["what is still open is free", [["cooler.heightMm"]], "planned"],
		["no rule at all", [], "planned"],
	])("%s", (_, rules, firmness) => {
		expect(
			firmnessOf(
				rules.map((reads) => reading(...reads)),
				facts,
			),
		).toBe(firmness);
	});
});

test("a part that was not picked is as free as a plan", () => {
	expect(ownershipOf(facts, "memory")).toBe("bought");
	expect(ownershipOf(facts, "cooler")).toBe("planned");
	expect(ownershipOf(emptyBuildFacts, "case")).toBe("planned");
});

test("a plan is easier to change than what can go back, and that easier than what is bought", () => {
	const mixed: Firmness[] = ["bought", "planned", "returnable", "planned"];
	expect([...mixed].sort(compareFirmness)).toEqual(["planned", "planned", "returnable", "bought"]);
	expect(compareFirmness("returnable", "returnable")).toBe(0);
});
