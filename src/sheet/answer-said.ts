import type { Answer } from "../parts/answers-file.ts";
import { questionById } from "../questions/all-questions.ts";
import type { QuestionContext } from "../questions/define-question.ts";
import { giverWords, proposedWords } from "./suggestion-words.ts";

/** What a question is called; its id where this program does not know it. */
export function questionLabel(questionId: string): string {
	return questionById(questionId)?.label ?? questionId;
}

/** An answer in words, without who gave it. */
export function answerSaid(questionId: string, answer: Answer | null, context: QuestionContext): string {
	return answer ? proposedWords(questionId, answer, context) : "not answered";
}

/** " (by Mia)"; nothing where nobody is named or nothing was said. */
export function byWords(answer: Answer | null): string {
	return answer?.by === undefined ? "" : ` (by ${giverWords(answer.by)})`;
}

/** The places of the questions in the walk, those of unknown ones at the end: for lists of answers. */
export function inOrderAsked<T extends { readonly questionId: string }>(
	list: readonly T[],
	asked: readonly { readonly id: string }[],
): readonly T[] {
	const place = ({ questionId }: T) => {
		const index = asked.findIndex(({ id }) => id === questionId);
		return index < 0 ? asked.length : index;
	};
	return list.toSorted((one, other) => place(one) - place(other));
}
