import { type Answer, type Answers, mostSuggestions, type Suggestion } from "../parts/answers-file.ts";
import { cleanLine } from "../parts/clean-text.ts";
import { questionById } from "../questions/all-questions.ts";
import { helperNamed } from "./helper-name.ts";
import { marketOf } from "./market-of.ts";
import { answerTo, countsAtOnce, saysTheSame } from "./suggestions.ts";
import type { WalkEffect, WalkEvent } from "./walk-event.ts";
import type { Place, WalkContext, WalkState } from "./walk-state.ts";

type Step = readonly [WalkState, readonly WalkEffect[]];

/** What came of trying an answer; `isDone`: nothing more is to be marked. */
export type Tried = { readonly problem: string | null } | { readonly answer: Answer; readonly isDone: boolean };

/** Moves of the walk at large that a helper needs. */
interface CoachMoves {
	readonly visit: (from: WalkState, place: Place) => WalkState;
	readonly comeBack: (state: WalkState) => WalkState;
	readonly withAnswers: (context: WalkContext, state: WalkState, answers: Answers) => WalkState;
	readonly tried: (
		context: WalkContext,
		state: WalkState,
		question: { readonly id: string; readonly tried: Answer | null },
		event: WalkEvent,
	) => Tried;
}

const tooMany = `A walk holds ${mostSuggestions} suggestions at most.`;
/** A reason is a line; see parts/answers-file. In characters (UTF-16 units). */
const longestWhy = 400;

/**
 * A step of a helper who looks through somebody else's walk; null where it is the same as in any walk. Pure; an event
 * that makes no sense where the helper is changes nothing.
 */
export function updateCoach(context: WalkContext, state: WalkState, event: WalkEvent, moves: CoachMoves): Step | null {
	if (!state.coaching) return null;
	const { place } = state;
	switch (event.type) {
		case "coach":
			return [{ ...state, place: { at: "coach" }, returnTo: [] }, []];
		case "coach-name":
			return [moves.visit(state, { at: "coach-name" }), []];
		case "withdraw":
			return withdrawn(state, event.questionId);
		case "change":
			return questionById(event.questionId)
				? [moves.visit(state, { at: "coach-question", id: event.questionId, tried: null }), []]
				: [state, []];
		// A helper looks at what is open, and is not led through the questions.
		case "go-on":
			return [{ ...state, place: { at: "coach" }, returnTo: [] }, []];
		case "keep-tried":
			return place.at === "what-if-answer" ? settled(context, state, place.id, place.tried, moves) : [state, []];
		case "open":
		case "saved-walks":
			return [{ ...state, notice: "You look through one walk here. Leave it to open another." }, []];
		case "edit-part":
		case "add-offer":
		case "remove-part":
			return place.at === "own-part" && state.coaching.theirParts.includes(`${place.kind}/${place.id}`)
				? [{ ...state, notice: "This part came with the walk, and stays as it is. You can copy it." }, []]
				: null;
	}
	switch (place.at) {
		case "coach":
			return event.type === "next" ? [state, []] : null;
		case "coach-name":
			return atName(state, event, moves);
		case "coach-question":
			return atCoachQuestion(context, state, place, event, moves);
		case "coach-why":
			return atWhy(context, state, place, event, moves);
		default:
			return null;
	}
}

/**
 * Holds what a helper must not do, whatever the step was: an answer that somebody else gave stays, and what was to stand in
 * its place becomes a suggestion. A helper is never asked the questions as if they were the builder.
 */
export function heldFor(context: WalkContext, before: WalkState, [after, effects]: Step): Step {
	const held = withAnswersHeld(context, before, after);
	const { place } = held;
	if (place.at === "start") return [{ ...held, place: { at: "coach" } }, effects];
	return place.at === "question"
		? [{ ...held, place: { at: "coach-question", id: place.id, tried: null } }, effects]
		: [held, effects];
}

function withAnswersHeld(context: WalkContext, before: WalkState, after: WalkState): WalkState {
	if (after.answers === before.answers) return after;
	const ids = [...new Set([...Object.keys(before.answers), ...Object.keys(after.answers)])];
	const touched = ids.filter(
		(id) => !saysTheSame(answerTo(before.answers, id), answerTo(after.answers, id)) && !countsAtOnce(before, id),
	);
	if (touched.length === 0) return after;
	let { suggestions } = before;
	const answers: Record<string, Answer> = { ...after.answers };
	for (const id of touched) {
		const wanted = answerTo(after.answers, id);
		if (wanted) suggestions = withSuggestion(suggestions, suggestionOf(context, before, id, wanted));
		const kept = answerTo(before.answers, id);
		if (kept) answers[id] = kept;
		else delete answers[id];
	}
	if (suggestions.length > mostSuggestions) return { ...before, problem: tooMany };
	const labels = touched.map((id) => questionById(id)?.label ?? id);
	return { ...after, answers, suggestions, notice: `You suggest another answer: ${labels.join(", ")}.` };
}

function atName(state: WalkState, event: WalkEvent, moves: CoachMoves): Step | null {
	if (event.type === "next") return [named(state, state.by, moves), []];
	if (event.type !== "text") return null;
	const given = helperNamed(event.text);
	if ("problem" in given) return [{ ...state, problem: given.problem }, []];
	const settings = { ...state.settings, helperName: given.name };
	return [{ ...named(state, given.name, moves), settings }, [{ type: "keep-settings", settings }]];
}

function named(state: WalkState, by: string, moves: CoachMoves): WalkState {
	return moves.comeBack({ ...state, by });
}

function atCoachQuestion(
	context: WalkContext,
	state: WalkState,
	place: Extract<Place, { at: "coach-question" }>,
	event: WalkEvent,
	moves: CoachMoves,
): Step | null {
	if (event.type === "back") return [moves.comeBack(state), []];
	if (event.type === "next")
		return place.tried ? settled(context, state, place.id, place.tried, moves) : [moves.comeBack(state), []];
	if (!["answer", "mark", "not-sure", "text"].includes(event.type)) return null;
	const tried = moves.tried(context, state, place, event);
	if ("problem" in tried) return [{ ...state, problem: tried.problem }, []];
	return tried.isDone
		? settled(context, state, place.id, tried.answer, moves)
		: [{ ...state, place: { ...place, tried: tried.answer } }, []];
}

/** What the helper answered counts at once, or is suggested once they have said why. */
function settled(context: WalkContext, state: WalkState, id: string, answer: Answer, moves: CoachMoves): Step {
	const { status, value } = answer;
	const label = questionById(id)?.label ?? id;
	const told = (notice: string, more: Partial<WalkState> = {}) => moves.comeBack({ ...state, ...more, notice });
	if (saysTheSame(answerTo(state.answers, id), answer)) return [told("That is what stands there already."), []];
	if (!countsAtOnce(state, id)) return [{ ...state, place: { at: "coach-why", id, tried: answer } }, []];
	// Marked as not sure, the builder would no longer be asked.
	const before = answerTo(state.answers, id);
	if (status !== "answered" || value === undefined) {
		if (before?.status !== "answered") return [told(`It stays open: ${label}.`), []];
		// Their own answer, since any other is only suggested against.
		const { [id]: _, ...others } = state.answers;
		const open = moves.withAnswers(context, state, others);
		return [
			moves.comeBack({ ...open, notice: `Your answer is gone, and it is open again: ${label}.` }),
			[{ type: "save" }],
		];
	}
	// What the builder noted beside an open answer stays theirs to read.
	const note = before?.note === undefined ? {} : { note: before.note };
	const given = moves.withAnswers(context, state, { ...state.answers, [id]: { status, value, by: state.by, ...note } });
	const notice = [`Kept as your answer: ${label}.`, ...(given.notice === null ? [] : [given.notice])].join(" ");
	return [moves.comeBack({ ...given, notice }), [{ type: "save" }]];
}

function atWhy(
	context: WalkContext,
	state: WalkState,
	{ id, tried }: Extract<Place, { at: "coach-why" }>,
	event: WalkEvent,
	moves: CoachMoves,
): Step | null {
	if (event.type === "back") return [{ ...state, place: { at: "coach-question", id, tried } }, []];
	if (event.type !== "text" && event.type !== "next") return null;
	const why = event.type === "text" ? cleanLine(event.text) : "";
	if (event.type === "text" && why === "")
		return [{ ...state, problem: "Type why, or choose to suggest it without a reason." }, []];
	if (why.length > longestWhy)
		return [{ ...state, problem: `A reason has at most ${longestWhy} letters; this has ${why.length}.` }, []];
	const suggestion = suggestionOf(context, state, id, tried, why);
	const decided = state.suggestions.find((one) => one.state !== "open" && isSameProposal(one, suggestion));
	if (decided)
		return [
			{ ...state, problem: "You suggested this before, and it was decided. Say it with another reason, or go back." },
			[],
		];
	const suggestions = withSuggestion(state.suggestions, suggestion);
	if (suggestions.length > mostSuggestions) return [{ ...state, problem: tooMany }, []];
	const inside = { ...context, market: marketOf(context.market, state.ownParts) };
	const question = questionById(id);
	const said =
		tried.status === "answered" && tried.value !== undefined ? (question?.says(tried.value, inside) ?? "") : "not sure";
	const notice = `You suggest for "${question?.label ?? id}": ${said}.`;
	return [moves.comeBack({ ...state, suggestions, notice }), [{ type: "save" }]];
}

function suggestionOf(
	{ asOf }: WalkContext,
	{ by }: WalkState,
	questionId: string,
	{ status, value }: Answer,
	why = "",
): Suggestion {
	const isAnswered = status === "answered" && value !== undefined;
	return {
		questionId,
		status: isAnswered ? "answered" : "not-sure",
		...(isAnswered ? { value } : {}),
		by,
		...(why === "" ? {} : { why }),
		on: asOf,
		state: "open",
	};
}

/** A helper has one suggestion a question: a new one takes the place of what nobody has decided on yet. */
function withSuggestion(suggestions: readonly Suggestion[], suggestion: Suggestion): readonly Suggestion[] {
	return [...suggestions.filter((one) => !isOwnOpen(one, suggestion.by, suggestion.questionId)), suggestion];
}

function isOwnOpen({ state, rival, by, questionId }: Suggestion, helper: string, id: string): boolean {
	return state === "open" && !rival && by === helper && questionId === id;
}

function isSameProposal(one: Suggestion, other: Suggestion): boolean {
	return one.questionId === other.questionId && one.by === other.by && one.why === other.why && saysTheSame(one, other);
}

function withdrawn(state: WalkState, questionId: string): Step {
	const suggestions = state.suggestions.filter((one) => !isOwnOpen(one, state.by, questionId));
	if (suggestions.length === state.suggestions.length) return [state, []];
	const label = questionById(questionId)?.label ?? questionId;
	return [{ ...state, suggestions, notice: `You no longer suggest another answer: ${label}.` }, [{ type: "save" }]];
}
