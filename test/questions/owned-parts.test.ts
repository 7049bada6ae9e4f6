import { describe, expect, test } from "vitest";
import { type BuildFacts, emptyBuildFacts } from "../../src/parts/build.ts";
import { linesOfParts, partKindsOfBuild, withOwnership } from "../../src/questions/owned-parts.ts";
import { buildFacts, partNames } from "../rules/rule-subject.ts";

const everyPart = buildFacts({ processor: {}, case: {}, graphicsCard: {}, memory: {}, cooler: {}, supply: {} });

describe("a line for each part that was picked", () => {
	test("in the order they are asked, with the part's name", () => {
		expect(linesOfParts(everyPart, () => true)).toEqual([
			{ value: "processor", label: "Processor", explanation: partNames.processor },
			{ value: "case", label: "Case", explanation: partNames.case },
			{ value: "graphicsCard", label: "Graphics card", explanation: partNames.graphicsCard },
			{ value: "memory", label: "Memory", explanation: partNames.memory },
			{ value: "cooler", label: "Cooler", explanation: partNames.cooler },
			{ value: "supply", label: "Power supply", explanation: partNames.supply },
		]);
		expect(partKindsOfBuild).toEqual(linesOfParts(everyPart, () => true).map(({ value }) => value));
	});

	test("none for what is open, not there, or not known", () => {
		const facts = buildFacts({ processor: "unknown", case: "open", graphicsCard: "none", memory: {} });
		expect(linesOfParts(facts, () => true).map(({ value }) => value)).toEqual(["memory"]);
		expect(linesOfParts(emptyBuildFacts, () => true)).toEqual([]);
	});

	test("only where it counts", () => {
		const facts: BuildFacts = {
			...everyPart,
			memory: { state: "have", ownership: "bought", part: { id: "m", name: "Mine" } },
		};
		const bought = linesOfParts(facts, (have) => have.state === "have" && have.ownership === "bought");
		expect(bought).toEqual([{ value: "memory", label: "Memory", explanation: "Mine" }]);
	});
});

describe("how parts are owned", () => {
	test("is set part by part, and left where nothing is said", () => {
		const before = buildFacts({ processor: {}, case: {}, memory: {} });
		const frozen = structuredClone(before);
		const after = withOwnership(before, (kind) =>
			kind === "case" ? "bought" : kind === "memory" ? "returnable" : null,
		);
		expect(after).toEqual({
			...before,
			case: { ...before.case, ownership: "bought" },
			memory: { ...before.memory, ownership: "returnable" },
		});
		expect(before).toEqual(frozen);
	});

	test("makes no part of what was not picked", () => {
		const facts = buildFacts({ processor: "open", graphicsCard: "none" });
		expect(withOwnership(facts, () => "bought")).toEqual(facts);
	});
});
