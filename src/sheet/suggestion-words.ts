import type { Answer, Suggestion } from "../parts/answers-file.ts";
import { questionById } from "../questions/all-questions.ts";
import type { QuestionContext } from "../questions/define-question.ts";
import { hasOpenRivals, openSuggestions, questionsToDecide } from "../walk/suggestions.ts";
import { capital, listed } from "./listed.ts";

/** Who gave an answer, as it stands behind "by"; an answer without a name is the builder's own. */
export function giverWords(by: string | undefined): string {
	if (by === undefined || by === "builder") return "the builder";
	return by === "helper" || by === "builder with a helper" || by === "helper for the builder" ? `the ${by}` : by;
}

/** An answer or what is proposed as one, in words. */
export function proposedWords(
	questionId: string,
	{ status, value }: Pick<Answer, "status" | "value">,
	context: QuestionContext,
): string {
	if (status !== "answered" || value === undefined) return "not sure";
	const question = questionById(questionId);
	if (!question) return "an answer that this program does not know";
	return question.expected(value, context) === null
		? question.says(value, context)
		: "something that is not possible here, so not sure";
}

/** What waits for the builder: who suggests how many things, and where two copies of the walk differ. */
export function waitingWords(suggestions: readonly Suggestion[]): readonly string[] {
	const ids = questionsToDecide(suggestions);
	const rivals = ids.filter((id) => hasOpenRivals(suggestions, id));
	const others = openSuggestions(suggestions).filter(({ rival }) => !rival);
	const names = [...new Set(others.map(({ by }) => giverWords(by)))];
	const things = others.length === 1 ? "one thing: look at it" : `${others.length} things: look at them`;
	return [
		...(others.length > 0
			? [`${listed(fewNames(names))} ${names.length === 1 ? "suggests" : "suggest"} ${things}.`]
			: []),
		...(rivals.length > 0
			? [
					`Two copies of this walk differ in ${rivals.length === 1 ? "one answer" : `${rivals.length} answers`}. You decide which one holds.`,
				]
			: []),
	].map(capital);
}

function fewNames(names: readonly string[]): readonly string[] {
	return names.length > 3 ? [...names.slice(0, 2), `${names.length - 2} others`] : names;
}

/** What became of a suggestion, in a line. */
export function decidedWords(one: Suggestion, context: QuestionContext): string {
	const label = questionById(one.questionId)?.label ?? one.questionId;
	return `${label}: ${proposedWords(one.questionId, one, context)}, by ${giverWords(one.by)}: ${one.state}.`;
}

/** The same, told to who suggested it. */
export function becameWords(one: Suggestion, context: QuestionContext): string {
	const label = questionById(one.questionId)?.label ?? one.questionId;
	const became = one.state === "taken" ? "taken" : "left, so the answer stays as it was";
	return `${label}, ${proposedWords(one.questionId, one, context)}: ${became}.`;
}
