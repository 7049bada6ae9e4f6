import { allQuestions } from "../questions/all-questions.ts";
import { tierNames } from "../questions/define-question.ts";
import { isAsked, makesSense } from "../questions/is-asked.ts";
import { leftWords } from "./boards-left.ts";
import { plainScreen } from "./plain-screen.ts";
import { answerWords } from "./question-screen.ts";
import type { Screen } from "./screen.ts";
import { text } from "./screen.ts";
import type { WalkView } from "./walk-view.ts";

/** All answers; each can be changed, and one returns to where one was. */
export function reviewScreen(view: WalkView): Screen {
	const { build } = view.judgement();
	return plainScreen(view, {
		id: "review",
		title: "All your answers",
		body: [text("Pick one to change it. You then come back here."), text(leftWords(view.judgement()))],
		choices: allQuestions
			.filter(
				(question) => isAsked(question, build) || (makesSense(question, build) && view.state.answers[question.id]),
			)
			.map((question) => {
				const answer = view.state.answers[question.id];
				return {
					label: `${question.label}: ${answer ? answerWords(question, answer, view) : "not answered yet"}`,
					detail: tierNames[question.tier],
					event: { type: "change" as const, questionId: question.id },
				};
			}),
		enter: { words: "go back to where you were", event: { type: "back" } },
	});
}
