import type { Answer, Answers, AnswerValue } from "../parts/answers-file.ts";
import { questionById } from "../questions/all-questions.ts";
import type { QuestionContext } from "../questions/define-question.ts";

/** One answer of a way out: what it is now, and what it shall be; null where a part is to be chosen anew. */
export interface TakenChange {
	readonly questionId: string;
	readonly from: AnswerValue | null;
	readonly to: AnswerValue | null;
}

/** What taking a way out comes to. */
interface Taken {
	readonly answers: Answers;
	/** Questions to be asked again, in order. */
	readonly ask: readonly string[];
	/** What was changed, in words; empty where all is to be asked again. */
	readonly words: string;
}

/**
 * Takes a way out: answers that are known are changed, parts to be chosen anew are named. Null where it makes no sense
 * any more: an answer is no longer what it was, or a question cannot have the new one. Then nothing is to be changed.
 */
export function takeWayOut(
	answers: Answers,
	changes: readonly TakenChange[],
	context: QuestionContext,
	by: string,
): Taken | null {
	if (changes.length === 0 || !changes.every((change) => makesSense(change, answers, context))) return null;
	const known = changes.flatMap(({ questionId, to }) => (to === null ? [] : [{ questionId, to }]));
	const changed = known.map(({ questionId, to }): readonly [string, Answer] => [
		questionId,
		{ status: "answered", value: to, by },
	]);
	return {
		answers: { ...answers, ...Object.fromEntries(changed) },
		ask: changes.filter(({ to }) => to === null).map(({ questionId }) => questionId),
		words: changedWords(changes, context),
	};
}

function makesSense({ questionId, from, to }: TakenChange, answers: Answers, context: QuestionContext): boolean {
	const question = Object.hasOwn(answers, questionId) || from === null ? questionById(questionId) : undefined;
	if (!question) return false;
	const answer = answers[questionId];
	const now = answer?.status === "answered" ? (answer.value ?? null) : null;
	return JSON.stringify(now) === JSON.stringify(from) && (to === null || question.expected(to, context) === null);
}

function changedWords(changes: readonly TakenChange[], context: QuestionContext): string {
	const said = changes.flatMap(({ questionId, from, to }) => {
		const question = questionById(questionId);
		if (!question || to === null) return [];
		const before = from === null ? "not sure" : question.says(from, context);
		return [`Changed: ${question.label}. Now: ${question.says(to, context)}. Before: ${before}.`];
	});
	return said.length === 0 ? "" : [...said, "You can change it back under all answers."].join(" ");
}
