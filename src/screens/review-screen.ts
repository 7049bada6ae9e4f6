import type { Answer } from "../parts/answers-file.ts";
import { allQuestions } from "../questions/all-questions.ts";
import { tierNames } from "../questions/define-question.ts";
import { isAsked, makesSense } from "../questions/is-asked.ts";
import { giverWords, proposedWords } from "../sheet/suggestion-words.ts";
import { openSuggestions } from "../walk/suggestions.ts";
import { leftWords } from "./boards-left.ts";
import { plainScreen } from "./plain-screen.ts";
import { answerWords } from "./question-screen.ts";
import type { Screen } from "./screen.ts";
import { text } from "./screen.ts";
import type { WalkView } from "./walk-view.ts";

/** All answers; each can be changed, and one returns to where one was. */
export function reviewScreen(view: WalkView): Screen {
	const { build } = view.judgement();
	const { coaching } = view.state;
	return plainScreen(view, {
		id: "review",
		...(coaching ? { place: `Helping, as ${view.state.by}` } : {}),
		title: coaching ? "All answers" : "All your answers",
		body: [
			text(
				coaching
					? "Pick one to answer it. Where the builder has answered, yours is a suggestion."
					: "Pick one to change it. You then come back here.",
			),
			text(leftWords(view.judgement())),
		],
		choices: allQuestions
			.filter(
				(question) => isAsked(question, build) || (makesSense(question, build) && view.state.answers[question.id]),
			)
			.map((question) => {
				const answer = view.state.answers[question.id];
				return {
					label: `${question.label}: ${answer ? answerWords(question, answer, view) : "not answered yet"}`,
					detail: [tierNames[question.tier], ...givenBy(answer), ...suggestedBy(view, question.id)].join("; "),
					event: { type: "change" as const, questionId: question.id },
				};
			}),
		enter: { words: "go back to where you were", event: { type: "back" } },
	});
}

/** Who gave an answer, where that was not the builder. */
function givenBy(answer: Answer | undefined): readonly string[] {
	const name = giverWords(answer?.by);
	return answer?.status !== "answered" || name.startsWith("the builder") ? [] : [`by ${name}`];
}

/** Who would answer otherwise, where that is not decided. */
function suggestedBy({ state, context }: WalkView, questionId: string): readonly string[] {
	return openSuggestions(state.suggestions)
		.filter((one) => one.questionId === questionId)
		.map((one) => `${giverWords(one.by)} suggests: ${proposedWords(questionId, one, context)}`);
}
