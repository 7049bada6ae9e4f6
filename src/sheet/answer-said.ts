import type { Answer } from "../parts/answers-file.ts";
import { questionById } from "../questions/all-questions.ts";
import type { QuestionContext } from "../questions/define-question.ts";

/** What a question is called; its id where this program does not know it. */
export function questionLabel(questionId: string): string {
	return questionById(questionId)?.label ?? questionId;
}

/** An answer in words, without who gave it. */
export function answerSaid(questionId: string, answer: Answer | null, context: QuestionContext): string {
	if (!answer) return "not answered";
	const { status, value } = answer;
	if (status !== "answered" || value === undefined) return "not sure";
	const question = questionById(questionId);
	if (!question) return "an answer that this program does not know";
	if (question.expected(value, context) !== null) return "something that is not possible here, so not sure";
	return question.says(value, context);
}

/** " (by Mia)"; nothing where nobody is named or nothing was said. */
export function byWords(answer: Answer | null): string {
	if (answer?.by === undefined) return "";
	return ` (by ${answer.by === "builder" || answer.by === "helper" ? `the ${answer.by}` : answer.by})`;
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
