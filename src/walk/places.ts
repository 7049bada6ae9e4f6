import { judge } from "../choose/judge.ts";
import { questionById } from "../questions/all-questions.ts";
import type { Question, Tier } from "../questions/define-question.ts";
import { foldAnswers } from "../questions/fold-answers.ts";
import { askedQuestions } from "../questions/is-asked.ts";
import { marketOf } from "./market-of.ts";
import type { Place, WalkContext, WalkState } from "./walk-state.ts";

/** The questions that the walk comes to with the answers so far, in order. */
export function questionsAsked(context: WalkContext, state: WalkState): readonly Question[] {
	return askedQuestions(foldAnswers(state.answers, { ...context, market: marketOf(context.market, state.ownParts) }));
}

/** Where a walk begins or goes on: the first question nobody has dealt with, or the shortlist. */
export function placeToStart(context: WalkContext, state: WalkState): Place {
	const open = questionsAsked(context, state).find(({ id }) => !state.answers[id]);
	return open ? { at: "question", id: open.id } : { at: "shortlist" };
}

/** What comes after a place: the next question, a tier's end, parts that disagree, the shortlist, the sheet. */
export function placeAfter(context: WalkContext, state: WalkState, place: Place): Place {
	const questions = questionsAsked(context, state);
	if (place.at === "question") {
		const rest = questions.slice(indexOf(questions, place.id) + 1);
		const tier = tierOf(place.id);
		// Who fills in what was left out before is not led through what is answered already.
		const following = rest.find(({ id, tier: its }) => its === tier && !state.answers[id]) ?? rest[0];
		if (following && following.tier === tier) return { at: "question", id: following.id };
		if (tier === "about") return following ? { at: "question", id: following.id } : { at: "shortlist" };
		return tier === "fit" && partsDisagree(context, state) ? { at: "parts-disagree" } : { at: "tier-end", tier };
	}
	if (place.at === "parts-disagree") return { at: "tier-end", tier: "fit" };
	if (place.at === "tier-end") {
		const last = lastOfTier(questions, place.tier);
		const following = questions[last + 1];
		return following ? { at: "question", id: following.id } : { at: "shortlist" };
	}
	if (place.at === "shortlist") return { at: "sheet" };
	if (place.at === "sheet") return { at: "sheet" };
	if (place.at === "menu" || place.at === "settings" || place.at === "saved-walks") return placeToStart(context, state);
	return { at: "shortlist" };
}

/** What comes before a place. */
export function placeBefore(context: WalkContext, state: WalkState, place: Place): Place {
	const questions = questionsAsked(context, state);
	if (place.at === "question") {
		const preceding = questions[indexOf(questions, place.id) - 1];
		return preceding ? { at: "question", id: preceding.id } : { at: "start" };
	}
	if (place.at === "tier-end") return lastQuestionPlace(questions, place.tier);
	if (place.at === "parts-disagree") return lastQuestionPlace(questions, "fit");
	if (place.at === "shortlist") {
		const last = questions.at(-1);
		return last ? { at: "question", id: last.id } : { at: "start" };
	}
	if (place.at === "sheet" || place.at === "board" || place.at === "describe") return { at: "shortlist" };
	return { at: "start" };
}

function tierOf(id: string): Tier {
	return questionById(id)?.tier ?? "about";
}

function indexOf(questions: readonly Question[], id: string): number {
	return questions.findIndex((question) => question.id === id);
}

function lastOfTier(questions: readonly Question[], tier: Tier): number {
	return questions.findLastIndex((question) => question.tier === tier);
}

function lastQuestionPlace(questions: readonly Question[], tier: Tier): Place {
	const last = questions[lastOfTier(questions, tier)];
	return last ? { at: "question", id: last.id } : { at: "start" };
}

/** Whether the parts disagree with each other, whatever the board. */
export function partsDisagree(context: WalkContext, state: WalkState): boolean {
	const market = marketOf(context.market, state.ownParts);
	const none = { ...market, parts: { ...market.parts, board: [] } };
	return judge(none, foldAnswers(state.answers, { ...context, market })).buildFindings.length > 0;
}
