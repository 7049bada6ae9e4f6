import { whatIf } from "../choose/what-if.ts";
import type { Answer, Suggestion } from "../parts/answers-file.ts";
import { questionById } from "../questions/all-questions.ts";
import { decidedWords, giverWords, proposedWords, waitingWords } from "../sheet/suggestion-words.ts";
import { whatIfWords } from "../sheet/what-if-words.ts";
import { answerTo, hasOpenRivals, openSuggestions, questionsToDecide } from "../walk/suggestions.ts";
import type { Place } from "../walk/walk-state.ts";
import { plainScreen } from "./plain-screen.ts";
import { type Block, type Choice, heading, list, pairs, type Screen, text } from "./screen.ts";
import type { WalkView } from "./walk-view.ts";

const back: Pick<Screen, "enter"> = { enter: { words: "back", event: { type: "back" } } };

/** The line that leads to what others suggest; none where nobody ever did. */
export function suggestionsChoice(suggestions: readonly Suggestion[]): readonly Choice[] {
	const waits = questionsToDecide(suggestions).length;
	if (suggestions.length === 0) return [];
	return [
		waits > 0
			? { label: `Look at what others suggest: ${waits}`, event: { type: "suggestions" } }
			: { label: "What others suggested: all decided", event: { type: "suggestions", page: "decided" } },
	];
}

/** What others suggest, question by question; or what became of it. */
export function suggestionsScreen(view: WalkView, { page }: Extract<Place, { at: "suggestions" }>): Screen {
	const { suggestions } = view.state;
	const decided = suggestions.filter(({ state }) => state !== "open");
	return page === "decided" ? decidedScreen(view, decided) : openScreen(view, decided.length);
}

function openScreen(view: WalkView, decided: number): Screen {
	const { suggestions } = view.state;
	const ids = questionsToDecide(suggestions);
	return plainScreen(view, {
		id: "suggestions",
		title: ids.length > 0 ? "What others suggest" : "Nothing waits for you to decide",
		body: [
			...waitingWords(suggestions).map(text),
			...(ids.length > 0
				? [text("Pick one to see what it would change. Nothing changes until you take it.")]
				: [text("When somebody suggests another answer, it is shown here.")]),
		],
		isMenu: true,
		choices: [
			...ids.map(
				(questionId): Choice => ({
					label: questionById(questionId)?.label ?? questionId,
					detail: openSuggestions(suggestions)
						.filter((one) => one.questionId === questionId)
						.map((one) => `${proposedWords(questionId, one, view.context)} (by ${giverWords(one.by)})`)
						.join("; "),
					event: { type: "suggestion", questionId },
				}),
			),
			...(decided > 0
				? [{ label: `Decided: ${decided}. See them again`, event: { type: "suggestions", page: "decided" } } as const]
				: []),
			{ label: "Back", apart: true, event: { type: "back" } },
		],
		...back,
	});
}

/** Whoever thinks otherwise by now answers the question again. */
function decidedScreen(view: WalkView, decided: readonly Suggestion[]): Screen {
	const waits = questionsToDecide(view.state.suggestions).length;
	const ids = [...new Set(decided.map(({ questionId }) => questionId))].filter((id) => questionById(id));
	return plainScreen(view, {
		id: "suggestions-decided",
		title: "Suggestions, and what became of them",
		body: [
			...(decided.length > 0
				? [
						list(decided.map((one) => `Decided: ${decidedWords(one, view.context)}`)),
						text("To decide otherwise, pick a question and answer it anew."),
					]
				: [text("Nothing has been decided yet.")]),
		],
		choices: [
			...(waits > 0 ? [{ label: `Still to decide: ${waits}`, event: { type: "suggestions" } } as const] : []),
			...ids.map((questionId): Choice => {
				const answer = answerTo(view.state.answers, questionId);
				const now = answer ? proposedWords(questionId, answer, view.context) : "not answered";
				return {
					label: `${questionById(questionId)?.label ?? questionId}: ${now}`,
					event: { type: "change", questionId },
				};
			}),
			{ label: "Back", apart: true, event: { type: "back" } },
		],
		...back,
	});
}

/** Of so many proposals for one question all changes are told; of more only what they say (own convention). */
const mostTold = 3;

/** All that is proposed for one question: what is answered now, what else, why, by whom, and what it would change. */
export function suggestionScreen(view: WalkView, { questionId }: Extract<Place, { at: "suggestion" }>): Screen {
	const { suggestions, answers } = view.state;
	const question = questionById(questionId);
	const label = question?.label ?? questionId;
	const open = suggestions.flatMap((one, index) =>
		one.state === "open" && one.questionId === questionId ? [{ one, index }] : [],
	);
	const rivals = hasOpenRivals(suggestions, questionId);
	const now = answerTo(answers, questionId);
	const [only, ...more] = open;
	return plainScreen(view, {
		id: `suggestion:${questionId}`,
		place: "Suggestions",
		title: label,
		body: [
			...(question ? [text(question.ask)] : []),
			...(open.length === 0 ? [text("Nothing is suggested here any more.")] : []),
			...(rivals
				? [text("Two copies of this walk answer it differently. Until you pick one it counts as not sure.")]
				: [pairs([["Answered so far", nowWords(questionId, now, view)]])]),
			...open.flatMap(({ one }, place) => proposalBlocks(view, one, { number: place + 1, isOnly: more.length === 0 })),
		],
		choices: [
			...(view.state.coaching
				? []
				: open.map(
						({ one, index }): Choice => ({
							label: `Take ${only && more.length === 0 ? "it" : `what ${giverWords(one.by)} says`}: ${proposedWords(questionId, one, view.context)}`,
							event: { type: "take-suggestion", index },
						}),
					)),
			...(open.length > 0 && !view.state.coaching
				? [
						{
							label: rivals ? "Take none of them: not sure" : "Leave it as it is",
							event: { type: "leave-suggestions", questionId } as const,
						},
					]
				: []),
			...(question
				? [
						{
							label: view.state.coaching ? "Suggest an answer" : "Answer it anew",
							event: { type: "change", questionId } as const,
						},
					]
				: []),
			{ label: open.length > 0 ? "Decide later" : "Back", apart: true, event: { type: "back" } },
		],
		enter: { words: open.length > 0 ? "decide later" : "back", event: { type: "back" } },
	});
}

function nowWords(questionId: string, now: Answer | undefined, { context, state }: WalkView): string {
	if (!now) return "not answered yet";
	const name = giverWords(now.by);
	return `${proposedWords(questionId, now, context)} (by ${name === "the builder" && !state.coaching ? "you" : name})`;
}

function proposalBlocks(
	view: WalkView,
	one: Suggestion,
	{ number, isOnly }: { readonly number: number; readonly isOnly: boolean },
): readonly Block[] {
	const { questionId, status, value, by, why, on, rival } = one;
	const name = giverWords(by);
	const answer: Answer = { status, ...(value === undefined ? {} : { value }), by };
	const told =
		number > mostTold
			? []
			: whatIfWords(whatIf(view.market, view.state.answers, { questionId, answer }, view.context.asOf), view.context);
	return [
		...(isOnly ? [] : [heading(`${number}. By ${name}`)]),
		pairs([
			[rival ? "Answer" : "Suggested", `${proposedWords(questionId, one, view.context)} (by ${name}, ${on})`],
			...(why === undefined ? [] : [["Why", why] as const]),
		]),
		// With several to compare, each in short.
		...(isOnly ? told : told.slice(0, 1)).flatMap((part) => [
			heading(isOnly ? part.heading : "What it would change"),
			list(part.lines),
		]),
	];
}
