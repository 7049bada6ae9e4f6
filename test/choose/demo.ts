import { readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import fc from "fast-check";
import { demoMarket } from "../../src/cli/demo-market.ts";
import type { Answer, Answers, AnswersFile, AnswerValue } from "../../src/parts/answers-file.ts";
import type { Market } from "../../src/parts/market.ts";
import { allQuestions } from "../../src/questions/all-questions.ts";
import type { Question, QuestionContext } from "../../src/questions/define-question.ts";

export const demo: Market = demoMarket();
export const demoContext: QuestionContext = { market: demo, asOf: "2026-11-24" };

const folder = fileURLToPath(new URL("../../data/scenarios", import.meta.url));

/** The invented people of data/scenarios, by file. */
export const scenarios: readonly { readonly name: string; readonly file: AnswersFile }[] = readdirSync(folder)
	.sort()
	.map((name) => ({ name, file: JSON.parse(readFileSync(`${folder}/${name}`, "utf8")) as AnswersFile }));

/** Values worth trying where a question lists none. */
const typedValues: Readonly<Record<string, readonly AnswerValue[]>> = {
	"about/budget": [
		"no-limit",
		{ minor: 100, currency: "EUR" },
		{ minor: 12_900, currency: "EUR" },
		{ minor: 17_900, currency: "EUR" },
		{ minor: 60_000, currency: "EUR" },
		{ minor: 20_000, currency: "USD" },
	],
	"features/rear-devices": [0, 5, 8, 30],
};

/** Values that a question can have in the demonstration market: every option, or some typed ones. */
export function valuesFor(question: Question, context: QuestionContext = demoContext): readonly AnswerValue[] {
	return typedValues[question.id] ?? question.options(context).map(({ value }) => value);
}

export const answered = (value: AnswerValue): Answer => ({ status: "answered", value });
export const notSure: Answer = { status: "not-sure" };

/** Any answers to any of the questions, open ones among them. */
export const anyAnswers: fc.Arbitrary<Answers> = fc.record(
	Object.fromEntries(
		allQuestions.map((question) => [
			question.id,
			fc.oneof(
				{ weight: 3, arbitrary: fc.constantFrom(...valuesFor(question)).map(answered) },
				{ weight: 1, arbitrary: fc.constantFrom<Answer>(notSure, { status: "skipped" }) },
			),
		]),
	),
	{ requiredKeys: [] },
) as fc.Arbitrary<Answers>;

/** The demonstration market with some of its boards, in any order. */
export const anyMarket: fc.Arbitrary<Market> = fc
	.shuffledSubarray([...demo.parts.board])
	.map((board) => ({ ...demo, parts: { ...demo.parts, board } }));
