import type { BuildFacts } from "../parts/build.ts";
import { allQuestions } from "./all-questions.ts";
import type { Question } from "./define-question.ts";

/** Whether a walk comes to a question: it makes sense with the answers so far, and belongs to the way that was chosen. */
export function isAsked({ applies, short }: Question, facts: BuildFacts): boolean {
	return applies(facts) && (facts.walkLength !== "short" || short === true);
}

/** The questions a walk comes to, in order. */
export function askedQuestions(facts: BuildFacts): readonly Question[] {
	return allQuestions.filter((question) => isAsked(question, facts));
}
