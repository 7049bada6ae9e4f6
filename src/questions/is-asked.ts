import type { Build } from "../parts/build.ts";
import { allQuestions } from "./all-questions.ts";
import type { Question } from "./define-question.ts";

/**
 * Whether a walk may come to a question: it makes sense with the answers so far, and belongs to the way that was chosen.
 * The short one passes over those that change nothing, and asks some that are not marked for it; see walk/short-walk.
 */
export function isAsked(question: Question, build: Pick<Build, "facts" | "reached">): boolean {
	return makesSense(question, build) && (build.facts.walkLength !== "short" || question.short === true);
}

/** The questions a walk may come to, in order. */
export function askedQuestions(build: Pick<Build, "facts" | "reached">): readonly Question[] {
	return allQuestions.filter((question) => isAsked(question, build));
}

/** Whether a question made sense when the walk came to it. What it set itself must not take it away again. */
export function makesSense({ id, applies }: Question, { facts, reached }: Pick<Build, "facts" | "reached">): boolean {
	return reached ? reached.includes(id) : applies(facts);
}
