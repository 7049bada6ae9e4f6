import { findOut } from "../choose/find-out.ts";
import { worthsWhenAsked } from "../choose/next-question.ts";
import { whatIf } from "../choose/what-if.ts";
import { questionById } from "../questions/all-questions.ts";
import { findOutWords } from "../sheet/find-out-words.ts";
import { becameWords, giverWords, proposedWords } from "../sheet/suggestion-words.ts";
import { whatIfWords } from "../sheet/what-if-words.ts";
import { namelessHelper } from "../walk/helper-name.ts";
import {
	answerTo,
	buildersOwn,
	countsAtOnce,
	hasOpenRivals,
	openSuggestions,
	questionsToDecide,
} from "../walk/suggestions.ts";
import { answersTried } from "../walk/update.ts";
import type { Place } from "../walk/walk-state.ts";
import { leftWords } from "./boards-left.ts";
import { plainScreen } from "./plain-screen.ts";
import { questionScreen } from "./question-screen.ts";
import { type Block, type Choice, heading, list, type Screen, text } from "./screen.ts";
import { sourcesChoice } from "./sources-choice.ts";
import type { WalkView } from "./walk-view.ts";

/** Told in full; what bears less stands in one line (own convention). */
const mostTold = 6;
/** Questions that can be answered from here at once; the others are among all answers. */
const mostAsked = 6;

/** What a helper would look at first: what is open by its effect, where copies differ, and what others have answered. */
export function coachScreen(view: WalkView): Screen {
	const { answers, suggestions, by } = view.state;
	const open = openThings(view);
	const told = open.filter(({ words }) => words.changes !== "").slice(0, mostTold);
	const others = open.filter((one) => !told.includes(one));
	const conflicts = questionsToDecide(suggestions).filter((id) => hasOpenRivals(suggestions, id));
	const mine = openSuggestions(suggestions).filter((one) => !one.rival && one.by === by);
	const theirs = Object.entries(answers).filter(
		([id, answer]) => answer.status === "answered" && answer.by !== by && questionById(id),
	);
	const asked = open.flatMap(({ questionId }) => questionId ?? []).filter((id) => !conflicts.includes(id));
	return plainScreen(view, {
		id: "coach",
		place: `Helping, as ${by}`,
		title: "What I would check myself",
		body: [
			text(leftWords(view.judgement())),
			...(open.length === 0 ? [text("Nothing that is open could change the shortlist.")] : []),
			...(told.length > 0
				? [heading("Open, by what it could change"), list(told.map(({ words }) => `${words.what}: ${words.changes}`))]
				: []),
			...(others.length > 0
				? [heading(told.length > 0 ? "Open too, with less weight" : "Open"), text(othersWords(others))]
				: []),
			...(conflicts.length > 0
				? [
						heading("Two copies of this walk differ"),
						list(conflicts.map((id) => `${labelOf(id)}: ${rivalsWords(view, id)}.`)),
					]
				: []),
			...(mine.length > 0
				? [
						heading("You suggest"),
						list(mine.map((one) => `${labelOf(one.questionId)}: ${proposedWords(one.questionId, one, view.context)}.`)),
					]
				: []),
			...becameBlocks(view),
			heading("How it goes"),
			text("What is open you answer at once. Where the builder has answered, you suggest another answer."),
		],
		choices: [
			...asked
				.slice(0, mostAsked)
				.map((id): Choice => ({ label: `Answer: ${labelOf(id)}`, event: { type: "change", questionId: id } })),
			...conflicts.map(
				(id): Choice => ({
					label: `Look at both answers: ${labelOf(id)}`,
					event: { type: "suggestion", questionId: id },
				}),
			),
			...(open.some(({ questionId }) => questionId === null)
				? [{ label: "What could still change the shortlist", event: { type: "find-out" } as const }]
				: []),
			...(theirs.length > 0
				? [
						{
							label: `All answers: ${theirs.length}`,
							detail: "Suggest another answer where you know better",
							event: { type: "review" } as const,
						},
					]
				: []),
			{ label: "The shortlist so far", event: { type: "shortlist" } },
			sourcesChoice(view.state),
			{ label: by === namelessHelper ? "Give my name" : "Change my name", event: { type: "coach-name" } },
			{ label: "Save and leave", event: { type: "leave" } },
		],
	});
}

/** What the builder made of the helper's suggestions, what was suggested last first. */
function becameBlocks(view: WalkView): readonly Block[] {
	const { suggestions, by } = view.state;
	const decided = suggestions.filter((one) => one.state !== "open" && !one.rival && one.by === by).toReversed();
	const more = decided.length - mostTold;
	if (decided.length === 0) return [];
	return [
		heading("What became of your suggestions"),
		list(decided.slice(0, mostTold).map((one) => becameWords(one, view.context))),
		...(more > 0 ? [text(`And ${more} more, in the menu under All suggestions.`)] : []),
	];
}

/** All that is open, what could change most first, with its words; a question has its id. */
function openThings(view: WalkView) {
	const { boards } = view.judgement();
	const boardName = (id: string) => boards.find(({ board }) => board.id === id)?.board.name ?? id;
	const worths = worthsWhenAsked(view.state.answers, view.context);
	return findOut(view.judgement(), view.advice(), view.state.answers, worths).flatMap((one) => {
		const words = findOutWords(one, boardName);
		const questionId = one.about.kind === "question" ? one.about.questionId : null;
		return words && !(questionId !== null && buildersOwn.includes(questionId)) ? [{ words, questionId }] : [];
	});
}

/** So many names stand in one sentence. */
const namesASentence = 3;

/** Open questions by name, and how many facts are open besides. */
function othersWords(others: ReturnType<typeof openThings>): string {
	const names = others.flatMap(({ words, questionId }) => (questionId === null ? [] : [words.what]));
	const shown = names.length > 7 ? names.slice(0, 6) : names;
	const facts = others.length - names.length;
	return [
		...shown.flatMap((_, index) =>
			index % namesASentence === 0 ? [`${shown.slice(index, index + namesASentence).join(", ")}.`] : [],
		),
		...(names.length > shown.length ? [`And ${names.length - shown.length} more questions.`] : []),
		...(facts > 0 ? [`And ${facts === 1 ? "one fact" : `${facts} facts`} of boards and parts.`] : []),
	].join(" ");
}

function labelOf(id: string): string {
	return questionById(id)?.label ?? id;
}

function rivalsWords(view: WalkView, id: string): string {
	return openSuggestions(view.state.suggestions)
		.filter(({ rival, questionId }) => rival && questionId === id)
		.map((one) => `${proposedWords(id, one, view.context)} (by ${giverWords(one.by)})`)
		.join("; ");
}

/** Who helps. */
export function coachNameScreen(view: WalkView): Screen {
	const { by } = view.state;
	const isNamed = by !== namelessHelper;
	return plainScreen(view, {
		id: "coach-name",
		title: "Who helps here?",
		body: [
			text("Your name stands beside each answer you give, so that the builder knows who said it."),
			...(isNamed ? [text(`So far: ${by}.`)] : []),
		],
		choices: [{ label: isNamed ? `Stay ${by}` : 'Go on without a name, as "helper"', event: { type: "next" } }],
		typing: { kind: "free", words: "type your name" },
	});
}

/**
 * A question that a helper answers: what stands there, and whether the answer counts at once or is suggested.
 *
 * @param view of the walk as it is, without what is tried
 * @param viewOf another state of it
 */
export function coachQuestionScreen(
	view: WalkView,
	{ id, tried }: Extract<Place, { at: "coach-question" }>,
	viewOf: (state: WalkView["state"]) => WalkView,
): Screen {
	const { state } = view;
	const answers = answersTried(state.answers, id, tried);
	const screen = questionScreen(viewOf({ ...state, answers, answersBefore: state.answers }), id, soFar(view, id));
	const isOffered = (type: string) => type !== "describe" && (type !== "next" || tried !== null);
	const mine = ownSuggestion(view, id);
	return {
		...screen,
		id: `question:coach:${id}`,
		place: `Helping, as ${state.by}`,
		choices: [
			...screen.choices.filter(({ event }) => isOffered(event.type)),
			...(mine
				? [
						{
							label: "Take my suggestion back",
							key: "t",
							apart: true,
							event: { type: "withdraw", questionId: id } as const,
						},
					]
				: []),
		],
		enter: tried
			? { words: "go on with what is marked", event: { type: "next" } }
			: { words: "leave it as it is", event: { type: "back" } },
	};
}

function ownSuggestion({ state }: WalkView, id: string) {
	return openSuggestions(state.suggestions).find(
		({ rival, by, questionId }) => !rival && by === state.by && questionId === id,
	);
}

function soFar(view: WalkView, id: string): readonly Block[] {
	const { state, context } = view;
	const answer = answerTo(state.answers, id);
	const mine = ownSuggestion(view, id);
	return [
		text(
			answer
				? `So far: ${proposedWords(id, answer, context)} (by ${giverWords(answer.by)}).${answer.note ? ` Noted beside it: ${answer.note}` : ""}`
				: "So far: not answered yet.",
		),
		...(mine ? [text(`You suggest: ${proposedWords(id, mine, context)}.`)] : []),
		text(
			countsAtOnce(state, id)
				? "What you answer counts at once, with your name."
				: "What you answer is a suggestion. The builder takes it or leaves it.",
		),
	];
}

/** Why a helper would answer otherwise, and what that would change. */
export function coachWhyScreen(view: WalkView, { id, tried }: Extract<Place, { at: "coach-why" }>): Screen {
	const { answers } = view.state;
	const result = whatIf(view.market, answers, { questionId: id, answer: tried }, view.context.asOf);
	return plainScreen(view, {
		id: `coach-why:${id}`,
		place: `Helping, as ${view.state.by}`,
		title: "Why do you suggest this?",
		body: [
			...whatIfWords(result, view.context)
				.slice(0, 1)
				.map(({ lines }) => list(lines)),
			text("One line is enough. The builder reads it beside your suggestion."),
		],
		choices: [
			{ label: "Suggest it without a reason", event: { type: "next" } },
			{ label: "Do not suggest it", event: { type: "back" } },
		],
		typing: { kind: "free", words: "or type why, in one line" },
	});
}

/** Everything that a helper can reach from anywhere. */
export function coachMenuScreen(view: WalkView): Screen {
	return plainScreen(view, {
		id: "menu",
		place: `Helping, as ${view.state.by}`,
		title: "Where to?",
		body: [text(leftWords(view.judgement()))],
		isMenu: true,
		choices: [
			{ label: "Back to where I was", event: { type: "back" } },
			{ label: "What I would check myself", event: { type: "coach" } },
			{ label: "All answers", detail: "See who gave them, and suggest others", event: { type: "review" } },
			...(view.state.suggestions.length > 0
				? [{ label: "All suggestions", event: { type: "suggestions" } as const }]
				: []),
			{ label: "Boards left, and boards taken out", event: { type: "fell-out" } },
			{ label: "The shortlist so far", event: { type: "shortlist" } },
			{ label: "What could still change the shortlist", event: { type: "find-out" } },
			{ label: "What if one answer were another?", detail: "Try it; nothing is kept", event: { type: "what-if" } },
			{ label: "The sheet for shop and bench", event: { type: "sheet" } },
			{ label: "Parts of this walk", event: { type: "own-parts" } },
			sourcesChoice(view.state),
			{ label: "Settings", event: { type: "settings" } },
			{ label: "Save and leave", event: { type: "leave" } },
		],
		enter: { words: "back to where you were", event: { type: "back" } },
	});
}
