import { whatIf } from "../choose/what-if.ts";
import { allQuestions, questionById } from "../questions/all-questions.ts";
import { tierNames } from "../questions/define-question.ts";
import { isAsked } from "../questions/is-asked.ts";
import { whatIfWords } from "../sheet/what-if-words.ts";
import type { Place } from "../walk/walk-state.ts";
import { plainScreen } from "./plain-screen.ts";
import { answerWords, questionScreen } from "./question-screen.ts";
import { heading, list, type Screen, text } from "./screen.ts";
import type { WalkView } from "./walk-view.ts";

/** Which answer to try another one for. */
export function whatIfScreen(view: WalkView): Screen {
	const { build } = view.judgement();
	return plainScreen(view, {
		id: "what-if",
		title: "What if one answer were another?",
		body: [text("Pick a question to try another answer. Nothing is kept until you say so.")],
		choices: allQuestions
			.filter((question) => isAsked(question, build))
			.map((question) => {
				const answer = view.state.answers[question.id];
				return {
					label: `${question.label}: ${answer ? answerWords(question, answer, view) : "not answered yet"}`,
					detail: tierNames[question.tier],
					event: { type: "what-if" as const, questionId: question.id },
				};
			}),
		enter: { words: "go back to where you were", event: { type: "back" } },
	});
}

/**
 * The question itself, as it is asked, to try another answer. A part can be picked, but none described.
 *
 * @param view of the walk as it would be with what is tried
 */
export function whatIfQuestionScreen(
	view: WalkView,
	{ id, tried }: Extract<Place, { at: "what-if-question" }>,
): Screen {
	const screen = questionScreen(view, id);
	const isOffered = (type: string) => type !== "describe" && (type !== "next" || tried !== null);
	return {
		...screen,
		id: `question:what-if:${id}`,
		place: "What if",
		body: [text("Try another answer. Nothing is kept until you say so."), ...screen.body],
		choices: screen.choices.filter(({ event }) => isOffered(event.type)),
		enter: tried ? { words: "see what would change", event: { type: "next" } } : null,
	};
}

/** Both shortlists, what differs between them, and whether to take the answer that was tried. */
export function whatIfAnswerScreen(view: WalkView, { id, tried }: Extract<Place, { at: "what-if-answer" }>): Screen {
	const result = whatIf(view.market, view.state.answers, { questionId: id, answer: tried }, view.context.asOf);
	return plainScreen(view, {
		id: `what-if-answer:${id}`,
		title: `What if: ${questionById(id)?.label ?? id}`,
		body: whatIfWords(result, view.context).flatMap((part) => [heading(part.heading), list(part.lines)]),
		choices: [
			{ label: "Leave my answer, and try another one", event: { type: "back" } },
			{
				label: view.state.coaching ? "Give the other answer, or suggest it" : "Take the other answer as mine",
				key: "t",
				event: { type: "keep-tried" },
			},
			{ label: "Try another question", event: { type: "what-if" } },
			{ label: "Leave my answer: to the shortlist", event: { type: "shortlist" } },
		],
		enter: { words: "leave your answer, and try another one", event: { type: "back" } },
	});
}
