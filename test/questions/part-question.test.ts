import { describe, expect, test } from "vitest";
import type { AnswerValue } from "../../src/parts/answers-file.ts";
import { emptyBuildFacts } from "../../src/parts/build.ts";
import { pcCase } from "../../src/questions/fit/case.ts";
import { graphicsCard } from "../../src/questions/fit/graphics-card.ts";
import { processor } from "../../src/questions/fit/processor.ts";
import { demo, demoContext } from "../choose/demo.ts";

const hatbox = { part: "larkspur-hatbox" };

test("its options are the market's parts, then what the question allows besides", () => {
	const values = pcCase.options(demoContext, emptyBuildFacts).map(({ value }) => value);
	expect(values.at(-1)).toBe("open");
	expect(values).toHaveLength(demo.parts.case.length + 1);
	expect(values).toEqual(expect.arrayContaining(demo.parts.case.map(({ id }) => ({ part: id }))));
	expect(
		graphicsCard
			.options(demoContext, emptyBuildFacts)
			.slice(-2)
			.map(({ value }) => value),
	).toEqual(["none", "open"]);
	expect(processor.options(demoContext, emptyBuildFacts)).toHaveLength(demo.parts.processor.length);
});

test("parts of one heading stand together, else in the market's order", () => {
	const options = pcCase.options(demoContext, emptyBuildFacts).filter(({ value }) => value !== "open");
	const headings = [...new Set(options.map(({ group }) => group))];
	expect(headings.length).toBeGreaterThan(1);
	expect(options.map(({ group }) => group)).toEqual(
		headings.flatMap((heading) => options.filter(({ group }) => group === heading).map(() => heading)),
	);
	const inMarket = demo.parts.case.map(({ name }) => name);
	for (const heading of headings) {
		const names = options.filter(({ group }) => group === heading).map(({ label }) => label);
		expect(names).toEqual(inMarket.filter((name) => names.includes(name)));
	}
	// Graphics cards have no headings: nothing is moved.
	const cards = graphicsCard.options(demoContext, emptyBuildFacts).slice(0, -2);
	expect(cards.map(({ value }) => value)).toEqual(demo.parts.graphicsCard.map(({ id }) => ({ part: id })));
});

describe("what it expects", () => {
	test.each<[string, AnswerValue]>([
		["a part of the market", hatbox],
		["with how firmly it belongs to the build", { ...hatbox, ownership: "bought" }],
		["what it allows besides", "open"],
	])("%s", (_, value) => {
		expect(pcCase.expected(value, demoContext)).toBeNull();
	});

	test.each<[string, AnswerValue, string]>([
		["a part of another kind", { part: "tallowfinch-deckhand" }, "the id of a case in the market"],
		["a part there is not", { part: "nowhere" }, "the id of a case in the market"],
		["what it does not allow", "none", '{"part": an id} or "open"'],
		["another word", "larkspur-hatbox", '{"part": an id} or "open"'],
		["a number", 3, '{"part": an id} or "open"'],
		["no id at all", { part: "" }, '{"part": an id} or "open"'],
		["another ownership", { ...hatbox, ownership: "stolen" } as never, '{"part": an id} or "open"'],
	])("not %s", (_, value, expected) => {
		expect(pcCase.expected(value, demoContext)).toBe(expected);
	});

	test("where nothing is allowed besides, it says so", () => {
		expect(processor.expected("open", demoContext)).toBe('{"part": an id}');
	});
});

describe("what it sets", () => {
	test.each<[string, AnswerValue, object]>([
		["a part", hatbox, { state: "have", ownership: "planned", part: demo.parts.case[0] }],
		[
			"a part bought",
			{ ...hatbox, ownership: "bought" },
			{ state: "have", ownership: "bought", part: demo.parts.case[0] },
		],
		["a part gone from the market", { part: "nowhere" }, { state: "unknown" }],
		["open", "open", { state: "open" }],
	])("%s", (_, value, have) => {
		expect(pcCase.sets(emptyBuildFacts, value, demoContext)).toEqual({ ...emptyBuildFacts, case: have });
	});
});

test.each<[AnswerValue, string]>([
	[hatbox, demo.parts.case[0]?.name ?? ""],
	[{ part: "nowhere" }, "nowhere"],
	["open", "I will choose a case to suit the board"],
])("%o in words: %s", (value, words) => {
	expect(pcCase.says(value, demoContext)).toBe(words);
});
