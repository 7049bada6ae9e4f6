import type { Answers } from "../parts/answers-file.ts";
import type { Build } from "../parts/build.ts";
import { allQuestions } from "../questions/all-questions.ts";

/** The first question that applies and that nobody has dealt with yet, or null when all are. */
export function nextQuestion(answers: Answers, { facts }: Build): string | null {
	return allQuestions.find(({ id, applies }) => applies(facts) && !answers[id])?.id ?? null;
}
