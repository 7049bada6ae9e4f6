import type { Answers } from "../parts/answers-file.ts";
import type { Question, QuestionContext } from "../questions/define-question.ts";

/** The answer in words; null where it is not sure, not given, or no longer one the question can have. */
export function saidOf({ id, expected, says }: Question, answers: Answers, context: QuestionContext): string | null {
	const answer = answers[id];
	const value = answer?.status === "answered" ? answer.value : undefined;
	return value !== undefined && expected(value, context) === null ? says(value, context) : null;
}
