import { readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import fc from "fast-check";
import { demoMarket } from "../../src/cli/demo-market.ts";
import type { Answer, Answers, AnswersFile, AnswerValue } from "../../src/parts/answers-file.ts";
import type { BuildFacts } from "../../src/parts/build.ts";
import type { Market } from "../../src/parts/market.ts";
import { allQuestions } from "../../src/questions/all-questions.ts";
import type { Question, QuestionContext } from "../../src/questions/define-question.ts";
import { foldAnswers } from "../../src/questions/fold-answers.ts";
import { withFirstBoards } from "./first-boards.ts";

export const wholeDemo: Market = demoMarket();
/** The demonstration with few boards; see withFirstBoards. */
export const demo: Market = withFirstBoards(wholeDemo);
export const demoContext: QuestionContext = { market: demo, asOf: "2026-11-24" };

const folder = fileURLToPath(new URL("../../data/scenarios", import.meta.url));

/** The invented people of data/scenarios, by file. */
export const scenarios: readonly { readonly name: string; readonly file: AnswersFile }[] = readdirSync(folder)
	.sort()
	.map((name) => ({ name, file: JSON.parse(readFileSync(`${folder}/${name}`, "utf8")) as AnswersFile }));

/** A build in which every part is picked and some can go back, so that every question has its lines. */
export const settledFacts: BuildFacts = foldAnswers(
	{
		...scenarios.find(({ name }) => name === "handed-down.json")?.file.answers,
		"fit/cooler": { status: "answered", value: { part: "draughty-pancake" } },
		"fit/bought": { status: "answered", value: ["processor", "case", "graphicsCard", "memory", "cooler", "supply"] },
	},
	demoContext,
).facts;

/** Values worth trying where a question lists none, or where what is typed matters too. */
const typedValues: Readonly<Record<string, readonly AnswerValue[]>> = {
	"about/money-in-all": [
		{ minor: 50_000, currency: "EUR" },
		{ minor: 150_000, currency: "EUR" },
	],
	"about/money-spent": [
		{ minor: 0, currency: "EUR" },
		{ minor: 45_000, currency: "EUR" },
	],
	"fit/memory-size": [16, 96, 256],
	"fit/older-drives": [0, 2, 9],
	"fit/return-until": ["2026-11-01", "2026-12-20"],
	"features/case-fans": [0, 3, 12],
	"quality/years": [2, 5, 8],
	"about/budget": [
		"no-limit",
		{ minor: 100, currency: "EUR" },
		{ minor: 12_900, currency: "EUR" },
		{ minor: 17_900, currency: "EUR" },
		{ minor: 60_000, currency: "EUR" },
		{ minor: 20_000, currency: "USD" },
	],
	"features/rear-devices": [0, 5, 8, 30, [], ["keyboard", "mouse"], ["drive", "drive", "other", "other"]],
};

/** Values that a question can have in the demonstration market: every option, or some typed ones. */
export function valuesFor(question: Question, context: QuestionContext = demoContext): readonly AnswerValue[] {
	const listed = question.options(context, settledFacts).map(({ value }) => value);
	return typedValues[question.id] ?? [...listed, ...manyValues(question, listed)];
}

/** Where several lines can be marked: none of them, and the first two. */
function manyValues({ kind }: Question, listed: readonly AnswerValue[]): readonly AnswerValue[] {
	return kind === "many" ? [[], listed.slice(0, 2).flat() as string[]] : [];
}

export const answered = (value: AnswerValue): Answer => ({ status: "answered", value });
export const notSure: Answer = { status: "not-sure" };

const anyAnswerTo = (question: Question): fc.Arbitrary<Answer> =>
	fc.oneof(
		{ weight: 3, arbitrary: fc.constantFrom(...valuesFor(question)).map(answered) },
		{ weight: 1, arbitrary: fc.constantFrom<Answer>(notSure, { status: "skipped" }) },
	);

/** Any answers to any of the questions, open ones among them. Together they leave hardly ever a board. */
const scatteredAnswers: fc.Arbitrary<Answers> = fc.record(
	Object.fromEntries(allQuestions.map((question) => [question.id, anyAnswerTo(question)])),
	{ requiredKeys: [] },
) as fc.Arbitrary<Answers>;

const answersOf = (name: string): Answers => scenarios.find((one) => one.name === name)?.file.answers ?? {};

/** What an invented person answered, with a few answers changed. The quiet desk has boards that are known to fit. */
const nearlyAnswered: fc.Arbitrary<Answers> = fc
	.tuple(
		fc.oneof(
			{ weight: 2, arbitrary: fc.constant(answersOf("quiet-desk.json")) },
			{ weight: 1, arbitrary: fc.constantFrom(...scenarios.map(({ file }) => file.answers)) },
		),
		fc.array(
			fc.constantFrom(...allQuestions).chain((question) => fc.tuple(fc.constant(question.id), anyAnswerTo(question))),
			{ maxLength: 4 },
		),
	)
	.map(([answers, changed]) => ({ ...answers, ...Object.fromEntries(changed) }));

/** Answers of all sorts: with boards that fit, with some that may, and with none left. */
export const anyAnswers: fc.Arbitrary<Answers> = fc.oneof(
	{ weight: 1, arbitrary: scatteredAnswers },
	{ weight: 2, arbitrary: nearlyAnswered },
);

/** The demonstration market with some of its boards, in any order. */
export const anyMarket: fc.Arbitrary<Market> = fc
	.shuffledSubarray([...demo.parts.board])
	.map((board) => ({ ...demo, parts: { ...demo.parts, board } }));
