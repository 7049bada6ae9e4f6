import { describe, expect, test } from "vitest";
import { mostLines, possibleAnswers, spread } from "../../src/choose/possible-answers.ts";
import { emptyBuildFacts } from "../../src/parts/build.ts";
import { allQuestions, questionById } from "../../src/questions/all-questions.ts";
import type { Question, QuestionContext } from "../../src/questions/define-question.ts";
import { demo, demoContext, settledFacts } from "./demo.ts";

const the = (id: string) => questionById(id) as Question;
const { board: boards } = demo.parts;
const valuesOf = (id: string, context: QuestionContext = demoContext, left = boards) =>
	possibleAnswers(the(id), context, settledFacts, left).map(({ value }) => value);

test.each(allQuestions)(
	"$id has answers in the demonstration, each one it can have, chances summing to one",
	(question) => {
		const possible = possibleAnswers(question, demoContext, settledFacts, boards);
		expect(possible.length).toBeGreaterThan(0);
		for (const { value, chance } of possible) {
			expect(question.expected(value, demoContext)).toBeNull();
			expect(chance).toBeGreaterThan(0);
		}
		expect(possible.reduce((sum, { chance }) => sum + chance, 0)).toBeCloseTo(1, 12);
		expect(new Set(possible.map(({ value }) => JSON.stringify(value))).size).toBe(possible.length);
	},
);

describe("of a long list", () => {
	test("a few stand for all, from the first to the last", () => {
		expect(spread([1, 2, 3], 6)).toEqual([1, 2, 3]);
		expect(spread([0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10], 6)).toEqual([0, 2, 4, 6, 8, 10]);
		const parts = valuesOf("fit/case").filter((value) => typeof value === "object");
		expect(parts).toHaveLength(mostLines);
	});

	test("the same whatever the order of the market", () => {
		const turned = {
			...demo,
			parts: { ...demo.parts, case: demo.parts.case.toReversed(), drive: demo.parts.drive.toReversed() },
		};
		for (const id of ["fit/case", "fit/drives"])
			expect(valuesOf(id, { ...demoContext, market: turned })).toEqual(valuesOf(id));
	});

	test("where several can be marked, none of them and each alone", () => {
		const values = valuesOf("fit/drives");
		expect(values[0]).toEqual([]);
		expect(values.slice(1).every((value) => Array.isArray(value) && value.length === 1)).toBe(true);
	});
});

describe("sums", () => {
	test("are prices at which boards fall out, and no limit", () => {
		const values = valuesOf("about/budget");
		const prices = new Set(boards.map(({ price }) => price?.minor));
		expect(values.at(-1)).toBe("no-limit");
		for (const value of values.slice(0, -1)) expect(prices).toContain((value as { minor: number }).minor);
		expect(valuesOf("about/budget", demoContext, boards.toReversed())).toEqual(values);
	});

	test("are none where no board has a price", () => {
		expect(valuesOf("about/budget", demoContext, [{ id: "one", name: "One" }])).toEqual([]);
	});

	test("spent are never more than there is", () => {
		const facts = { ...emptyBuildFacts, moneyInAll: { minor: 60_000, currency: "EUR" } };
		for (const { value } of possibleAnswers(the("about/money-spent"), demoContext, facts, boards))
			expect((value as { minor: number }).minor).toBeLessThan(60_000);
		expect(valuesOf("about/money-spent")[0]).toMatchObject({ minor: 0 });
	});
});

test("nothing can be listed of parts where the market has none", () => {
	const empty = { ...demo, parts: { ...demo.parts, supply: [], drive: [] } };
	for (const id of ["fit/supply", "fit/drives"]) expect(valuesOf(id, { ...demoContext, market: empty })).toEqual([]);
});
