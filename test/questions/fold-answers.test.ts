import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Answers } from "../../src/parts/answers-file.ts";
import { emptyBuildFacts, mostWorlds } from "../../src/parts/build.ts";
import { foldAnswers } from "../../src/questions/fold-answers.ts";
import { answered, anyAnswers, demoContext, notSure } from "../choose/demo.ts";

const fold = (answers: Answers) => foldAnswers(answers, demoContext);
const labels = (answers: Answers) =>
	fold(answers).worlds.map(({ choices }) => choices.map(({ label }) => label).join(", "));

/** Everything settled that has ways to turn out. */
const settled: Answers = {
	"fit/case": answered("open"),
	"fit/graphics-card": answered("open"),
	"fit/memory": answered("open"),
	"fit/supply": answered("open"),
};

describe("what is answered", () => {
	test("is set, and nothing is left to turn out", () => {
		const build = fold({
			...settled,
			"about/budget": answered({ minor: 20_000, currency: "EUR" }),
			"fit/processor": answered({ part: "tallowfinch-deckhand", ownership: "bought" }),
			"fit/graphics-card": answered("none"),
			"features/wireless": answered("must"),
			"features/rear-devices": answered(5),
			"quality/rescue": answered("a-lot"),
		});
		expect(build.facts).toMatchObject({
			priceCap: { minor: 20_000, currency: "EUR" },
			processor: { state: "have", ownership: "bought", part: { id: "tallowfinch-deckhand" } },
			case: { state: "open" },
			graphicsCard: { state: "none" },
			wishes: { "features/wireless": "must" },
			rearDevices: 5,
			importance: { rescue: "a-lot" },
		});
		expect(build.worlds).toEqual([{ facts: build.facts, choices: [] }]);
	});

	test("a part is planned where nothing else is said", () => {
		expect(fold({ "fit/processor": answered({ part: "tallowfinch-deckhand" }) }).facts.processor).toMatchObject({
			ownership: "planned",
		});
	});
});

describe("what sets nothing", () => {
	test.each<[string, Answers]>([
		["no answers", {}],
		["not sure", { "fit/processor": notSure, "features/wireless": notSure }],
		["skipped, even with a value", { "features/wireless": { status: "skipped", value: "must" } }],
		["answered without a value", { "features/wireless": { status: "answered" } }],
		["a value the question cannot have", { "features/wireless": answered("perhaps") }],
		["a part the market has not", { "fit/processor": answered({ part: "nowhere" }) }],
		["a part of another kind", { "fit/processor": answered({ part: "larkspur-hatbox" }) }],
		["a special answer the question has not", { "fit/processor": answered("open") }],
		["another", { "fit/case": answered("none") }],
		["a question there is not", { "fit/nothing": answered("must"), constructor: answered("must") }],
		["a sum in no currency", { "about/budget": answered({ minor: 100, currency: "QQQ" }) }],
	])("%s", (_, answers) => {
		expect(fold(answers).facts).toEqual({ ...emptyBuildFacts, asOf: demoContext.asOf });
	});
});

describe("possible worlds", () => {
	test("one way to turn out each", () => {
		expect(labels({ ...settled, "fit/graphics-card": notSure })).toEqual(["a graphics card", "no graphics card"]);
		expect(labels({ ...settled, "fit/case": notSure })).toEqual([
			"a case for Mini-ITX only",
			"a case for microATX and smaller",
			"a case for ATX and smaller",
			"a case for E-ATX and smaller",
		]);
	});

	test("not answered counts as not sure", () => {
		const { "fit/memory": _, ...rest } = settled;
		expect(labels(rest)).toEqual(labels({ ...settled, "fit/memory": notSure }));
	});

	test("two open questions: every pair, in the order asked", () => {
		const open = labels({ ...settled, "fit/graphics-card": notSure, "fit/supply": notSure });
		expect(open).toEqual([
			"a graphics card, a supply with one 4-pin processor plug",
			"a graphics card, a supply with one 8-pin processor plug",
			"a graphics card, a supply with two 8-pin processor plugs",
			"no graphics card, a supply with one 4-pin processor plug",
			"no graphics card, a supply with one 8-pin processor plug",
			"no graphics card, a supply with two 8-pin processor plugs",
		]);
	});

	test("the facts of a world are what was chosen, all else as answered", () => {
		const { facts, worlds } = fold({ ...settled, "fit/memory": notSure });
		expect(facts.memory).toEqual({ state: "unknown" });
		expect(worlds.map((world) => world.facts.memory)).toMatchObject(
			["DDR3", "DDR4", "DDR5"].map((type) => ({ state: "have", part: { type, modules: 1 } })),
		);
		for (const world of worlds) expect({ ...world.facts, memory: facts.memory }).toEqual(facts);
	});

	test("what would exceed 64 stays simply unknown", () => {
		// 4 cases, 2 ways a graphics card, 3 kinds of memory are 24 worlds; 3 kinds of supply would make them 72.
		const { worlds } = fold({});
		expect(worlds).toHaveLength(24);
		expect(new Set(worlds.map(({ facts }) => facts.supply.state))).toEqual(new Set(["unknown"]));
		expect(worlds[0]?.choices.map(({ questionId }) => questionId)).toEqual([
			"fit/case",
			"fit/graphics-card",
			"fit/memory",
		]);
	});

	test("once another is answered it is kept in mind again", () => {
		const { worlds } = fold({ "fit/graphics-card": answered("none") });
		expect(worlds).toHaveLength(4 * 3 * 3);
		expect(worlds[0]?.choices.map(({ questionId }) => questionId)).toEqual(["fit/case", "fit/memory", "fit/supply"]);
	});

	test("any answers: 1 to 64 worlds, no two alike, each agreeing with what is answered", () => {
		fc.assert(
			fc.property(anyAnswers, (answers) => {
				const { facts, worlds } = fold(answers);
				expect(worlds.length).toBeGreaterThan(0);
				expect(worlds.length).toBeLessThanOrEqual(mostWorlds);
				expect(new Set(worlds.map(({ choices }) => JSON.stringify(choices))).size).toBe(worlds.length);
				// What is planned to be paid differs with the candidate that is taken.
				for (const world of worlds)
					for (const [key, value] of Object.entries(facts))
						if (key !== "moneyPlanned" && (value as { state?: string } | null)?.state !== "unknown")
							expect(world.facts[key as keyof typeof facts]).toBe(value);
			}),
			{ numRuns: 60 },
		);
	});
});
