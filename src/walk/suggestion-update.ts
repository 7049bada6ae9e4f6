import type { Answer, Answers, Suggestion } from "../parts/answers-file.ts";
import { questionById } from "../questions/all-questions.ts";
import { marketOf } from "./market-of.ts";
import { openSuggestions } from "./suggestions.ts";
import type { WalkEffect, WalkEvent } from "./walk-event.ts";
import type { Place, WalkContext, WalkState } from "./walk-state.ts";

type Step = readonly [WalkState, readonly WalkEffect[]];

/** Moves of the walk at large that suggestions need. */
interface SuggestionMoves {
	readonly visit: (from: WalkState, place: Place) => WalkState;
	readonly withAnswers: (context: WalkContext, state: WalkState, answers: Answers) => WalkState;
}

/** A step by which the builder looks at what others suggest, takes it or leaves it; null where the event is another one. */
export function updateSuggestions(
	context: WalkContext,
	state: WalkState,
	event: WalkEvent,
	moves: SuggestionMoves,
): Step | null {
	switch (event.type) {
		case "suggestions":
			return [moves.visit(state, { at: "suggestions", ...(event.page ? { page: event.page } : {}) }), []];
		case "suggestion":
			return state.suggestions.some(({ questionId }) => questionId === event.questionId)
				? [moves.visit(state, { at: "suggestion", questionId: event.questionId }), []]
				: [state, []];
		case "take-suggestion":
			// A helper does not decide for the builder.
			return state.coaching ? [state, []] : taken(context, state, state.suggestions[event.index], moves);
		case "leave-suggestions":
			return state.coaching ? [state, []] : left(state, event.questionId, moves);
		default:
			return null;
	}
}

/** What is proposed becomes the answer, and stays the answer of who proposed it. */
function taken(context: WalkContext, state: WalkState, one: Suggestion | undefined, moves: SuggestionMoves): Step {
	if (one?.state !== "open") return [state, []];
	const question = questionById(one.questionId);
	const inside = { ...context, market: marketOf(context.market, state.ownParts) };
	const isPossible =
		question !== undefined &&
		(one.status !== "answered" || (one.value !== undefined && question.expected(one.value, inside) === null));
	if (!isPossible)
		return [{ ...state, problem: "This cannot be taken here: there is no such answer. It stays open." }, []];
	const answer: Answer = {
		status: one.status,
		...(one.status === "answered" && one.value !== undefined ? { value: one.value } : {}),
		by: one.by,
	};
	// With that it counts as taken, and so does what somebody else proposes alike.
	const changed = moves.withAnswers(context, state, { ...state.answers, [one.questionId]: answer });
	const words = `Taken: ${question.label}.`;
	const notice = changed.notice === null ? words : `${words} ${changed.notice}`;
	return [backToAll({ ...changed, notice }, moves), [{ type: "save" }]];
}

function left(state: WalkState, questionId: string, moves: SuggestionMoves): Step {
	const isMeant = (one: Suggestion) => one.state === "open" && one.questionId === questionId;
	if (!state.suggestions.some(isMeant)) return [state, []];
	const suggestions = state.suggestions.map((one): Suggestion => (isMeant(one) ? { ...one, state: "left" } : one));
	const notice = `Left as it is: ${questionById(questionId)?.label ?? questionId}.`;
	return [backToAll({ ...state, suggestions, notice }, moves), [{ type: "save" }]];
}

/** To what is still to be decided; where that was the last, to where one came from by going back. */
function backToAll(state: WalkState, { visit }: SuggestionMoves): WalkState {
	const page = openSuggestions(state.suggestions).length === 0 ? { page: "decided" as const } : {};
	return visit(state, { at: "suggestions", ...page });
}
