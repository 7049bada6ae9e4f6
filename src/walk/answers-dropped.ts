import { allQuestions } from "../questions/all-questions.ts";
import type { Question } from "../questions/define-question.ts";
import { foldAnswers } from "../questions/fold-answers.ts";
import { makesSense } from "../questions/is-asked.ts";
import { marketOf } from "./market-of.ts";
import type { WalkContext, WalkState } from "./walk-state.ts";

/**
 * The questions that were answered and made sense before, and no longer do: a change of an earlier answer took them out.
 * Their answers stay in the walk and count again once the change is taken back.
 */
export function answersDropped(context: WalkContext, before: WalkState, after: WalkState): readonly Question[] {
	const buildOf = (state: WalkState) =>
		foldAnswers(state.answers, { ...context, market: marketOf(context.market, state.ownParts) });
	const [earlier, now] = [buildOf(before), buildOf(after)];
	return allQuestions.filter(
		(question) =>
			before.answers[question.id]?.status === "answered" && makesSense(question, earlier) && !makesSense(question, now),
	);
}
