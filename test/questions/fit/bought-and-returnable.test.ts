import { describe, expect, test } from "vitest";
import type { Answer, Answers } from "../../../src/parts/answers-file.ts";
import { emptyBuildFacts } from "../../../src/parts/build.ts";
import { bought } from "../../../src/questions/fit/bought.ts";
import { returnable } from "../../../src/questions/fit/returnable.ts";
import { foldAnswers } from "../../../src/questions/fold-answers.ts";
import { withOwnership } from "../../../src/questions/owned-parts.ts";
import { buildFacts } from "../../rules/rule-subject.ts";
import { contextOf } from "../made-up-question.ts";

const context = contextOf({
	processors: [{ id: "piccolo", name: "Piccolo" }],
	cases: [{ id: "bandbox", name: "Bandbox" }],
	memory: [{ id: "mittens", name: "Mittens" }],
});
const answer = (value: NonNullable<Answer["value"]>): Answer => ({ status: "answered", value });
const parts: Answers = {
	"fit/processor": answer({ part: "piccolo" }),
	"fit/case": answer({ part: "bandbox", ownership: "returnable" }),
	"fit/memory": answer({ part: "mittens", ownership: "bought" }),
};

/** Who owns processor, case and memory. */
function owned(more: Answers) {
	const { facts } = foldAnswers({ ...parts, ...more }, context);
	return [facts.processor, facts.case, facts.memory].map((have) =>
		have.state === "have" ? have.ownership : have.state,
	);
}

test("without an answer, parts are owned as their own answers say", () => {
	expect(owned({})).toEqual(["planned", "returnable", "bought"]);
	expect(owned({ "fit/bought": { status: "not-sure" } })).toEqual(["planned", "returnable", "bought"]);
});

test.each<[string, string[], string[] | null, string[]]>([
	["nothing bought: all is planned", [], null, ["planned", "planned", "planned"]],
	["what is bought counts as bought for good", ["processor", "case"], null, ["bought", "bought", "planned"]],
	["one of them can go back", ["processor", "case"], ["case"], ["bought", "returnable", "planned"]],
	["all of them can", ["case", "memory"], ["case", "memory"], ["planned", "returnable", "returnable"]],
	["none of them can", ["case", "memory"], [], ["planned", "bought", "bought"]],
	["what is only planned cannot go back", ["case"], ["case", "memory"], ["planned", "returnable", "planned"]],
	["nothing bought, nothing goes back", [], ["case"], ["planned", "planned", "planned"]],
])("%s", (_, marked, back, expected) => {
	const more = back ? { "fit/returnable": answer(back) } : {};
	expect(owned({ "fit/bought": answer(marked), ...more })).toEqual(expected);
});

test("the second alone goes by what the parts' own answers say is bought", () => {
	expect(owned({ "fit/returnable": answer(["memory"]) })).toEqual(["planned", "bought", "returnable"]);
	expect(owned({ "fit/returnable": answer([]) })).toEqual(["planned", "bought", "bought"]);
});

describe("their lines", () => {
	const picked = buildFacts({ processor: {}, graphicsCard: {}, supply: {}, case: "open", memory: "none" });
	const someBought = withOwnership(picked, (kind) =>
		kind === "graphicsCard" ? "bought" : kind === "supply" ? "returnable" : null,
	);
	const values = (question: typeof bought, facts: typeof picked) =>
		question.options(context, facts).map(({ value }) => value);

	test("are the parts picked, and of these the ones bought", () => {
		expect(values(bought, picked)).toEqual([["processor"], ["graphicsCard"], ["supply"]]);
		expect(values(bought, someBought)).toEqual([["processor"], ["graphicsCard"], ["supply"]]);
		expect(values(returnable, someBought)).toEqual([["graphicsCard"], ["supply"]]);
	});

	test("decide whether the question makes sense", () => {
		expect(bought.applies(emptyBuildFacts)).toBe(false);
		expect(bought.applies(picked)).toBe(true);
		expect(returnable.applies(picked)).toBe(false);
		expect(returnable.applies(someBought)).toBe(true);
	});
});

describe.each([
	["bought", bought, "None of these yet"],
	["returnable", returnable, "None of them"],
])("%s", (_, question, none) => {
	test("is a list of kinds of part, each once", () => {
		expect(question.expected(["processor", "supply"], context)).toBeNull();
		for (const value of [["board"], ["drive"], ["case", "case"], ["Case"]])
			expect(question.expected(value, context)).toMatch(/^a list of "processor", "case"/);
	});

	test("is said in words, not by the names in files", () => {
		expect(question.says(["processor", "graphicsCard", "supply"], context).toLowerCase()).toBe(
			"processor, graphics card, power supply",
		);
		expect(question.says([], context)).toBe(none);
	});
});
