import type { AnswersFile } from "../parts/answers-file.ts";
import { questionById } from "../questions/all-questions.ts";

/**
 * A walk with the ids that questions have today: a file may name one as it was called before. Where it has an answer under
 * both, that of today's id counts.
 *
 * @param idOf today's id of a question; undefined for one that is not known, which stays as it is
 */
export function withTodaysIds(
	file: AnswersFile,
	idOf: (id: string) => string | undefined = (id) => questionById(id)?.id,
): AnswersFile {
	const isOld = (id: string) => (idOf(id) ?? id) !== id;
	const { answers, suggestions } = file;
	if (!Object.keys(answers).some(isOld) && !suggestions?.some(({ questionId }) => isOld(questionId))) return file;
	const renamed = Object.entries(answers).flatMap(([id, answer]) => {
		const today = idOf(id) ?? id;
		return isOld(id) && Object.hasOwn(answers, today) ? [] : [[today, answer] as const];
	});
	return {
		...file,
		answers: Object.fromEntries(renamed),
		...(suggestions
			? { suggestions: suggestions.map((one) => ({ ...one, questionId: idOf(one.questionId) ?? one.questionId })) }
			: {}),
	};
}
