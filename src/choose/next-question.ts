import type { Answers } from "../parts/answers-file.ts";
import type { Build } from "../parts/build.ts";
import { askedQuestions } from "../questions/is-asked.ts";

/** The first question that applies and that nobody has dealt with yet, or null when all are. */
export function nextQuestion(answers: Answers, build: Build): string | null {
	return askedQuestions(build).find(({ id }) => !answers[id])?.id ?? null;
}
