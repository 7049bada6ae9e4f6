import fc from "fast-check";
import type { Answer, Answers, AnswerValue } from "../../src/parts/answers-file.ts";
import { ownerships } from "../../src/parts/build.ts";
import type { Market } from "../../src/parts/market.ts";
import { allQuestions } from "../../src/questions/all-questions.ts";
import type { Question, QuestionContext } from "../../src/questions/define-question.ts";
import { foldAnswers } from "../../src/questions/fold-answers.ts";

export const asOf = "2026-11-24";

/** What is typed rather than picked: each question takes what it can have of it. */
const typed: readonly AnswerValue[] = [
	...[0, 1, 2, 3, 5, 8, 12, 16, 20, 30, 32, 64, 128, 256, 1024, 4096, 99_999],
	...[0, 1, 9_999, 15_000, 18_900, 60_000, 150_000, 1_000_000_000].flatMap((minor) =>
		["EUR", "USD", "JPY", "KWD"].map((currency) => ({ minor, currency })),
	),
	...["2026-11-01", "2026-11-24", "2026-12-20", "0001-01-01", "9999-12-31"],
	"no-limit",
];

/** How one question is to be answered; what the numbers pick is known only beside the others. */
export interface Pick {
	readonly how: "answered" | "not-sure" | "skipped" | "left";
	readonly which: number;
	readonly besides: number;
}

const anyPick: fc.Arbitrary<Pick> = fc.record({
	how: fc.oneof(
		{ weight: 5, arbitrary: fc.constant("answered" as const) },
		{ weight: 3, arbitrary: fc.constantFrom("not-sure" as const, "skipped" as const, "left" as const) },
	),
	which: fc.nat(),
	besides: fc.nat(),
});

/** Picks for every question, in the order asked. */
export const anyPicks: fc.Arbitrary<readonly Pick[]> = fc.array(anyPick, {
	minLength: allQuestions.length,
	maxLength: allQuestions.length,
});

/** Every value that a question can have here, as far as they can be listed. */
export function valuesOf(question: Question, context: QuestionContext, answers: Answers): readonly AnswerValue[] {
	const options = question.options(context, foldAnswers(answers, context).facts).map(({ value }) => value);
	const lists =
		question.kind === "many"
			? [[], options.flat() as string[], options.slice(0, 2).flat() as string[], twice(options)]
			: [];
	const owned = options.flatMap((value) =>
		typeof value === "object" && "part" in value ? ownerships.map((ownership) => ({ ...value, ownership })) : [],
	);
	return [...options, ...lists, ...owned, ...typed].filter((value) => question.expected(value, context) === null);
}

const twice = (options: readonly AnswerValue[]): string[] => {
	const [first] = options;
	return first === undefined ? [] : ([first, first].flat() as string[]);
};

/** The answers that picks come to in a market: each question answered with a value that it can have. */
export function answersBy(picks: readonly Pick[], market: Market): Answers {
	const context = { market, asOf };
	let answers: Answers = {};
	allQuestions.forEach((question, index) => {
		const pick = picks[index];
		if (!pick || pick.how === "left") return;
		if (pick.how !== "answered") {
			answers = { ...answers, [question.id]: { status: pick.how } };
			return;
		}
		const values = valuesOf(question, context, answers);
		const value = values[pick.which % Math.max(1, values.length)];
		if (value !== undefined) answers = { ...answers, [question.id]: answered(value) };
	});
	return answers;
}

export const answered = (value: AnswerValue): Answer => ({ status: "answered", value });

const partQuestions = ["processor", "case", "memory", "supply"] as const;

/** What leaves boards: the plain parts, everything else to be bought, and a few of the picks. */
export function easyAnswers(picks: readonly Pick[], market: Market): Answers {
	const few = new Set(picks.slice(0, 6).map(({ besides }) => besides % allQuestions.length));
	const some = picks.map((pick, index): Pick => (few.has(index) ? pick : { ...pick, how: "left" }));
	const plain = Object.fromEntries(
		partQuestions.map((kind) => [
			`fit/${kind}`,
			market.parts[kind].some(({ id }) => id === `plain-${kind}`)
				? answered({ part: `plain-${kind}` })
				: answered("open"),
		]),
	);
	return {
		...plain,
		"fit/graphics-card": answered("none"),
		"fit/cooler": answered("none"),
		...answersBy(some, market),
	};
}

/** A market with answers to its questions: with boards that fit, boards that may, and none. */
export const anyAnswersIn = (market: fc.Arbitrary<Market>) =>
	fc.tuple(market, anyPicks, fc.boolean()).map(([drawn, picks, isEasy]) => ({
		market: drawn,
		answers: isEasy ? easyAnswers(picks, drawn) : answersBy(picks, drawn),
	}));
