import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { factAt } from "../../../src/parts/fact-list.ts";
import { partKindNames, partKinds } from "../../../src/parts/part-kinds.ts";
import { allQuestions } from "../../../src/questions/all-questions.ts";
import {
	answerFor,
	type DescribeContext,
	type DescribedKind,
	isDescribed,
	putFact,
	typedFacts,
} from "../../../src/questions/describe/described-parts.ts";
import { finishDraft, type PartDraft, type TypedFact } from "../../../src/questions/describe/typed-fact.ts";
import { demoContext } from "../../choose/demo.ts";

const context: DescribeContext = { ...demoContext, currency: "EUR", processorName: "Deckhand 6" };
const described = partKindNames.filter(isDescribed) as readonly DescribedKind[];

test("a board and every kind of part that a question asks for are described, and nothing else", () => {
	const asked = allQuestions.flatMap(({ partKind }) => partKind ?? []);
	expect(new Set(described)).toEqual(new Set(["board", ...asked]));
	expect(typedFacts("monitor", context)).toEqual([]);
	expect(isDescribed("constructor" as never)).toBe(false);
});

describe.each(described)("a %s", (kind) => {
	const facts = typedFacts(kind, context);

	test("is asked for fifteen facts at the most, its name among them", () => {
		expect(facts.length).toBeLessThanOrEqual(15);
		expect(facts.map(({ path }) => path)).toContain("name");
	});

	test.each(facts)("$ask", (fact) => {
		const entry = factAt(kind, fact.path);
		expect(entry?.whereToFind).toMatch(/\S/);
		expect(fact.ask).toMatch(/^[A-Z].*\?$/);
		expect(fact.ask.split(" ").length).toBeLessThanOrEqual(12);
		// Picked, typed, or both; nothing is left without a way to give it.
		expect(Boolean(fact.choices) || Boolean(fact.read)).toBe(true);
		const labels = fact.choices?.map(({ label }) => label) ?? [];
		expect(new Set(labels).size).toBe(labels.length);
	});

	test("facts left out are left out: an empty description is a part", () => {
		expect(partKinds[kind].schema.safeParse(finishDraft({}, partKinds[kind].noun, new Set())).success).toBe(true);
	});

	test("whatever is picked or typed makes a sound part", () => {
		const lines = [
			"Bench 2",
			"4",
			"180",
			"4 GB",
			"ATX, mATX",
			"HDMI and DP",
			"none",
			"0",
			"16",
			"32 cm",
			"EUR 99,90",
			"F10",
			"",
			"x".repeat(150),
		];
		const givenFor = (fact: TypedFact) =>
			fc.option(
				fc.oneof(
					fc.constantFrom(...(fact.choices ?? [{ value: undefined }])).map(({ value }) => value),
					fc.constantFrom(...lines, "\u001b[31mEvil\u202e").map((text) => {
						const reading = fact.read?.(text);
						return reading && "value" in reading ? reading.value : undefined;
					}),
				),
				{ nil: undefined },
			);
		fc.assert(
			fc.property(fc.tuple(...facts.map(givenFor)), (values) => {
				const draft = facts.reduce<PartDraft>(
					(made, fact, index) => (values[index] === undefined ? made : putFact(fact, made, values[index])),
					{},
				);
				const part = finishDraft(draft, partKinds[kind].noun, new Set());
				expect(partKinds[kind].schema.safeParse(part).error).toBeUndefined();
			}),
			{ numRuns: 150 },
		);
	});
});

describe("a board", () => {
	const fact = (path: string, ask = "") => {
		const found = typedFacts("board", context).find((typed) => typed.path === path && typed.ask.includes(ask));
		if (!found) throw new Error(`no fact ${path} is asked`);
		return found;
	};
	const typed = (from: TypedFact, text: string) => from.read?.(text);

	test("with a processor settled: fifteen facts, one of them whether its list names it", () => {
		expect(typedFacts("board", context)).toHaveLength(15);
		expect(fact("supportList").ask).toBe("Does the board's processor list name the Deckhand 6?");
	});

	test("without one there is nothing to look for in the list", () => {
		const paths = typedFacts("board", { ...context, processorName: null }).map(({ path }) => path);
		expect(paths).toHaveLength(14);
		expect(paths).not.toContain("supportList");
	});

	test.each([
		["yes", { partial: true, rows: [{ processor: "Deckhand 6" }] }],
		["no", { rows: [] }],
		["F10", { partial: true, rows: [{ processor: "Deckhand 6", fromVersion: "F10" }] }],
	])("the list: %s", (value, supportList) => {
		expect(putFact(fact("supportList"), {}, value)).toEqual({ supportList });
	});

	test("a firmware version has a digit", () => {
		expect(typed(fact("supportList"), "F10")).toEqual({ value: "F10" });
		expect(typed(fact("supportList"), "perhaps")).toEqual({
			problem: "Type the firmware version as the list prints it.",
		});
	});

	test("flat and oval USB sockets are told apart, and none is none", () => {
		const [flat, oval] = [fact("rearUsb", "USB-A"), fact("rearUsb", "USB-C")];
		const both = putFact(oval, putFact(flat, {}, 6), 1);
		expect(both).toEqual({
			rearUsb: [
				{ plug: "A", count: 6 },
				{ plug: "C", count: 1 },
			],
		});
		expect(putFact(flat, both, 4)).toEqual({
			rearUsb: [
				{ plug: "C", count: 1 },
				{ plug: "A", count: 4 },
			],
		});
		expect(putFact(oval, both, 0)).toEqual({ rearUsb: [{ plug: "A", count: 6 }] });
		expect(putFact(flat, {}, 0)).toEqual({ rearUsb: [] });
	});

	test.each([
		["HDMI", ["HDMI"]],
		["hdmi, displayport", ["HDMI", "DisplayPort"]],
		["HDMI and DP", ["HDMI", "DisplayPort"]],
		["Type-C; HDMI; HDMI", ["USB-C", "HDMI"]],
		["None", []],
	])("picture sockets: %j", (text, value) => {
		expect(typed(fact("pictureSockets"), text)).toEqual({ value });
	});

	test.each(["", "SCART", "HDMI, SCART", "HDMI, none"])("no picture sockets: %j", (text) => {
		expect(typed(fact("pictureSockets"), text)).toEqual({
			problem: "Type one or more of HDMI, DisplayPort, USB-C, DVI, VGA, with commas; or none.",
		});
	});

	test("a price is in the market's currency", () => {
		expect(typed(fact("price"), "189,90")).toEqual({ value: { minor: 18_990, currency: "EUR" } });
		expect(typed(fact("price"), "cheap")).toEqual({ problem: "Type the price as a number, such as 189 or EUR 189." });
	});
});

test.each([
	["mATX, ITX", ["microATX", "Mini-ITX"]],
	["atx / e-atx", ["ATX", "E-ATX"]],
	["micro-ATX", ["microATX"]],
])("a case's board sizes: %j", (text, value) => {
	const forms = typedFacts("case", context).find(({ path }) => path === "boardForms");
	expect(forms?.read?.(text)).toEqual({ value });
});

test("the answer a described part gives", () => {
	expect(answerFor("bench-2")).toEqual({ part: "bench-2" });
});
