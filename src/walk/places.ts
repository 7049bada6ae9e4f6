import { judge } from "../choose/judge.ts";
import { marketLike } from "../parts/make-market.ts";
import { questionById } from "../questions/all-questions.ts";
import { type Question, type Tier, tiers } from "../questions/define-question.ts";
import { foldAnswers } from "../questions/fold-answers.ts";
import { askedQuestions } from "../questions/is-asked.ts";
import { marketOf } from "./market-of.ts";
import { shortWalkOf } from "./short-walk.ts";
import type { Place, WalkContext, WalkState } from "./walk-state.ts";

/**
 * The questions that the walk may come to with the answers so far, in order; on the short walk those marked for it, of
 * which it leaves out what changes nothing.
 */
export function questionsAsked(context: WalkContext, state: WalkState): readonly Question[] {
	return askedQuestions(foldAnswers(state.answers, insideOf(context, state)));
}

function insideOf(context: WalkContext, { ownParts }: WalkState): WalkContext {
	return { ...context, market: marketOf(context.market, ownParts) };
}

/**
 * The questions of the walk from the first to the one that is next: on the long walk all that are asked; on the short one
 * those dealt with, in the order in which they came, with the next one and the one where the person is.
 */
function questionsInOrder(context: WalkContext, state: WalkState, tier: Tier, id?: string): readonly Question[] {
	const inside = insideOf(context, state);
	const build = foldAnswers(state.answers, inside);
	const short = shortWalkOf(inside, state.answers, build, tier);
	if (!short) return askedQuestions(build);
	const here = id === undefined ? undefined : questionById(id);
	const all = [...short.dealtWith, ...(here ? [here] : []), ...(short.next ? [short.next] : [])];
	// A stable sort: within a tier they stay as they came.
	return [...new Set(all)].toSorted((one, other) => tiers.indexOf(one.tier) - tiers.indexOf(other.tier));
}

/**
 * The first question behind a tier. A short walk goes straight to the one that is next, be it of an earlier tier, and
 * leads nobody through what was dealt with.
 */
function questionBehind(context: WalkContext, state: WalkState, tier: Tier): Question | undefined {
	const inside = insideOf(context, state);
	const short = shortWalkOf(inside, state.answers, undefined, tier);
	if (short) return short.next ?? undefined;
	return questionsInOrder(context, state, tier).find((one) => tiers.indexOf(one.tier) > tiers.indexOf(tier));
}

/** Where a walk begins or goes on: the first question nobody has dealt with, or the shortlist. */
export function placeToStart(context: WalkContext, state: WalkState): Place {
	const open = questionsInOrder(context, state, "about").find(({ id }) => !state.answers[id]);
	return questionOrShortlist(open);
}

function questionOrShortlist(question: Question | undefined): Place {
	return question ? { at: "question", id: question.id } : { at: "shortlist" };
}

/** What comes after a place: the next question, a tier's end, parts that disagree, the shortlist, the sheet. */
export function placeAfter(context: WalkContext, state: WalkState, place: Place): Place {
	if (place.at === "question") {
		const tier = tierOf(place.id);
		const questions = questionsInOrder(context, state, tier, place.id);
		const rest = questions.slice(indexOf(questions, place.id) + 1);
		// Who fills in what was left out before is not led through what is answered already.
		const following = rest.find(({ id, tier: its }) => its === tier && !state.answers[id]) ?? rest[0];
		if (following && following.tier === tier) return { at: "question", id: following.id };
		if (tier === "about") return questionOrShortlist(questionBehind(context, state, tier));
		return tier === "fit" && partsDisagree(context, state) ? { at: "parts-disagree" } : { at: "tier-end", tier };
	}
	if (place.at === "parts-disagree") return { at: "tier-end", tier: "fit" };
	if (place.at === "tier-end") return questionOrShortlist(questionBehind(context, state, place.tier));
	if (place.at === "shortlist") return { at: "sheet" };
	if (place.at === "sheet") return { at: "sheet" };
	if (place.at === "menu" || place.at === "settings" || place.at === "saved-walks") return placeToStart(context, state);
	return { at: "shortlist" };
}

/** What comes before a place. */
export function placeBefore(context: WalkContext, state: WalkState, place: Place): Place {
	if (place.at === "question") {
		const questions = questionsInOrder(context, state, tierOf(place.id), place.id);
		const preceding = questions[indexOf(questions, place.id) - 1];
		return preceding ? { at: "question", id: preceding.id } : { at: "start" };
	}
	if (place.at === "tier-end") return lastQuestionPlace(questionsInOrder(context, state, place.tier), place.tier);
	if (place.at === "parts-disagree") return lastQuestionPlace(questionsInOrder(context, state, "fit"), "fit");
	if (place.at === "shortlist") {
		const last = questionsInOrder(context, state, "quality").at(-1);
		return last ? { at: "question", id: last.id } : { at: "start" };
	}
	if (place.at === "what-if-answer") return { at: "what-if-question", id: place.id, tried: place.tried };
	if (place.at === "what-if-question") return { at: "what-if" };
	if (place.at === "like") return { at: "board", boardId: place.boardId };
	if (place.at === "coach-question" || place.at === "coach-name") return { at: "coach" };
	if (place.at === "coach-why") return { at: "coach-question", id: place.id, tried: place.tried };
	if (place.at === "suggestion") return { at: "suggestions" };
	if (["sheet", "board", "describe", "price-line", "find-out", "what-if", "ask-shop"].includes(place.at))
		return { at: "shortlist" };
	if (place.at === "kept-walk" || place.at === "take-walk") return { at: "saved-walks" };
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
	const none = marketLike(market, { ...market.parts, board: [] });
	return judge(none, foldAnswers(state.answers, { ...context, market })).buildFindings.some(
		({ certain, finding }) => certain || finding.verdict !== "does-not-fit",
	);
}
