import type { Answer, Answers, AnswerValue, OwnPart } from "../parts/answers-file.ts";
import { cleanLine } from "../parts/clean-text.ts";
import { valueIn, withoutValue } from "../parts/form-draft.ts";
import { formFields } from "../parts/form-fields.ts";
import { type AnyPart, type PartKind, partKinds } from "../parts/part-kinds.ts";
import { questionById } from "../questions/all-questions.ts";
import { answerFor } from "../questions/describe/described-parts.ts";
import { finishDraft } from "../questions/describe/typed-fact.ts";
import { askedIn, containerOf, placeBeforeFact, placeOfFact } from "./form-places.ts";
import { atDoubt, atFactForm, type FormStep } from "./form-update.ts";
import { marketOf, takenIds } from "./market-of.ts";
import { ownPart, ownPartsOf } from "./own-parts-list.ts";
import { needsForm, type PastedKind } from "./own-places.ts";
import { formOfPart, isUnkept, newForm, type PartForm, partOfForm, withFact } from "./part-form.ts";
import { pasted, readPasted, typedLine } from "./paste-update.ts";
import type { WalkEffect, WalkEvent } from "./walk-event.ts";
import type { Place, WalkContext, WalkState } from "./walk-state.ts";

type Step = readonly [WalkState, readonly WalkEffect[]];

/** Moves of the walk at large that own parts need. */
export interface Moves {
	/** Goes somewhere to come back from. */
	readonly visit: (from: WalkState, place: Place) => WalkState;
	/** Back to where the person came from. */
	readonly comeBack: (state: WalkState) => WalkState;
	readonly answered: (context: WalkContext, state: WalkState, id: string, answer: Answer) => Step;
}

/**
 * A step that is about the person's own parts, or null where the event is about something else. Pure; an event that
 * makes no sense where the person is changes nothing.
 */
export function updateOwnParts(context: WalkContext, state: WalkState, event: WalkEvent, moves: Moves): Step | null {
	const { place, form } = state;
	const to = (next: Place, more: Partial<WalkState> = {}): Step => [{ ...state, ...more, place: next }, []];
	switch (event.type) {
		case "own-parts":
			return [moves.visit(state, { at: "own-parts" }), []];
		case "new-part":
			if (isUnkept(form)) return unkept(state, moves);
			if (!event.kind) return [moves.visit(state, { at: "new-part" }), []];
			return startForm(state, newForm(event.kind, questionFor(state, event.kind)), moves);
		case "paste-part":
			return startPasting(state, event.what, moves);
		case "own-part": {
			if (!ownPart(state, event.kind, event.id)) return [state, []];
			const { kind, id, page } = event;
			return to({ at: "own-part", kind, id, ...(page ? { page } : {}) });
		}
		case "bring-back":
			return broughtBack(context, state);
		case "part-form":
			return form ? to({ at: "part-form", ...(event.page ? { page: event.page } : {}) }) : [state, []];
		case "leave":
			// It asks once; whoever leaves from there leaves.
			return isUnkept(form) && place.at !== "leave-form"
				? [moves.visit(state, { at: "leave-form", leaving: true }), []]
				: null;
	}
	if (place.at === "own-parts" && event.type === "text") return partByName(state, event.text);
	if (place.at === "own-part") return atOwnPart(context, state, place, event, moves);
	if (place.at === "read-part") return atReading(context, state, place, event);
	if (needsForm(place) && form) return atForm(context, state, form, event, moves);
	return null;
}

/** Opens the one own part that has these letters in its name. */
function partByName(state: WalkState, text: string): Step {
	const typed = cleanLine(text);
	const found = ownPartsOf(state).filter(({ part }) => part.name.toLowerCase().includes(typed.toLowerCase()));
	const [only, ...more] = found;
	if (only && more.length === 0)
		return [{ ...state, place: { at: "own-part", kind: only.kind, id: only.part.id } }, []];
	const names = found.slice(0, 4).map(({ part }) => part.name);
	const problem = only
		? `Several parts have "${typed}": ${names.join(", ")}.`
		: `No part of yours has "${typed}" in its name.`;
	return [{ ...state, problem }, []];
}

/** Where going back leads from a place about own parts; null where the walk at large knows. */
export function backInOwnParts(state: WalkState, moves: Pick<Moves, "comeBack">): WalkState | null {
	const { place, form } = state;
	const to = (next: Place): WalkState => ({ ...state, place: next });
	switch (place.at) {
		case "new-part":
			return to({ at: "own-parts" });
		case "own-part":
			return place.page ? to({ at: "own-part", kind: place.kind, id: place.id }) : to({ at: "own-parts" });
		case "read-part":
			if (place.what === "support-list" && form) return to({ at: "part-form" });
			return place.questionId === null ? null : to({ at: "question", id: place.questionId });
		case "part-form":
			if (!form) return to({ at: "own-parts" });
			if (place.page) return to({ at: "part-form" });
			return isUnkept(form)
				? to({ at: "leave-form", leaving: false })
				: leftForm({ ...state, form: null }, form, moves);
		case "fact-form": {
			if (!form) return to({ at: "own-parts" });
			const before = placeBeforeFact(form, place.path, place.guided === true);
			const isOut = before.at === "part-form";
			return {
				...state,
				place: before,
				form: isOut ? { ...form, isGuided: false } : withoutHalfEntry(form, place, before),
			};
		}
		case "doubt":
		case "unread":
			return to(form ? { at: "part-form" } : { at: "own-parts" });
		case "leave-form":
			// What is not kept stays at hand: "My parts" leads back to it.
			return form ? leftForm(state, form, moves) : to({ at: "own-parts" });
		default:
			return null;
	}
}

/** Who goes back out of a thing just begun leaves nothing of it in its list. */
function withoutHalfEntry(form: PartForm, place: Extract<Place, { at: "fact-form" }>, before: Place): PartForm {
	const entry = containerOf(form, place.path);
	const isLeft = before.at === "fact-form" && before.path.length < entry.length;
	if (!place.guided || !isLeft || typeof entry.at(-1) !== "number") return form;
	const isHalf = askedIn(form, entry).some(
		({ required, path }) => required && valueIn(form.draft, [...entry, ...path]) === undefined,
	);
	return isHalf ? { ...form, draft: withoutValue(form.draft, entry) } : form;
}

/** Away from a form, to where it was opened from. */
function leftForm(state: WalkState, form: PartForm, { comeBack }: Pick<Moves, "comeBack">): WalkState {
	if (state.place.at === "leave-form" && state.place.leaving) return comeBack(state);
	if (form.questionId !== null) return { ...state, place: { at: "question", id: form.questionId } };
	if (form.originalId !== null && ownPart(state, form.kind, form.originalId))
		return { ...state, place: { at: "own-part", kind: form.kind, id: form.originalId } };
	return comeBack(state);
}

/** A form that is not kept is never thrown away for another one. */
function unkept(state: WalkState, { visit }: Moves): Step {
	const { noun } = partKinds[state.form?.kind ?? "board"];
	const notice = `This ${noun} is not kept yet. Keep it or leave it first.`;
	return [{ ...visit(state, { at: "part-form" }), notice }, []];
}

/** The question a new part is to answer: the one that led here, if it asks for this kind. */
function questionFor({ place }: WalkState, kind: PartKind): string | null {
	const id =
		place.at === "question" ? place.id : place.at === "describe" || place.at === "read-part" ? place.questionId : null;
	return id !== null && questionById(id)?.partKind === kind ? id : null;
}

function startForm(state: WalkState, form: PartForm, { visit }: Moves): Step {
	const place: Place = { at: "fact-form", path: ["name"] };
	const fresh = { draft: {}, entered: {} };
	// From a question one comes back to the question, and from the page to be pasted to where that was opened.
	const goes = form.questionId !== null || state.place.at === "read-part" || state.place.at === "new-part";
	return [{ ...(goes ? { ...state, place } : visit(state, place)), form, ...fresh }, []];
}

function startPasting(state: WalkState, what: PastedKind, moves: Moves): Step {
	if (what === "support-list")
		return state.form?.kind === "board"
			? [{ ...state, place: { at: "read-part", what, questionId: null } }, []]
			: [state, []];
	if (isUnkept(state.form)) return unkept(state, moves);
	const questionId = questionFor(state, what);
	const place: Place = { at: "read-part", what, questionId };
	const next = questionId === null ? moves.visit(state, place) : { ...state, place };
	return [{ ...next, draft: {}, entered: {} }, []];
}

function atReading(
	context: WalkContext,
	state: WalkState,
	place: Extract<Place, { at: "read-part" }>,
	event: WalkEvent,
): Step | null {
	switch (event.type) {
		case "paste":
			return [pasted(state, event.text), []];
		case "text":
			return [typedLine(context, state, place, event.text), []];
		case "read":
		case "next":
			return [readPasted(context, state, place), []];
		case "clear-paste":
			return [{ ...state, pasted: null, notice: "The text is thrown away. Paste again." }, []];
		default:
			return null;
	}
}

function atOwnPart(
	context: WalkContext,
	state: WalkState,
	place: Extract<Place, { at: "own-part" }>,
	event: WalkEvent,
	moves: Moves,
): Step | null {
	const own = ownPart(state, place.kind, place.id);
	if (!own) return null;
	switch (event.type) {
		case "next":
			return [{ ...state, place: { at: "own-parts" } }, []];
		case "edit-part":
			if (isUnkept(state.form)) return unkept(state, moves);
			return [{ ...state, form: formOfPart(own.kind, own.part), place: { at: "part-form" } }, []];
		case "add-offer": {
			if (isUnkept(state.form)) return unkept(state, moves);
			const at = (own.part as { offers?: unknown[] }).offers?.length ?? 0;
			const form = withFact(
				formOfPart(own.kind, own.part),
				["offers", at, "seenOn"],
				context.asOf,
				entering(context, state),
			);
			return [{ ...state, form, place: { at: "fact-form", path: ["offers", at, "price"], guided: true } }, []];
		}
		case "copy-part":
			return copied(context, state, own);
		case "remove-part":
			return removed(state, own);
		default:
			return null;
	}
}

function entering({ asOf }: WalkContext, { by }: WalkState) {
	return { by, asOf };
}

function copied(context: WalkContext, state: WalkState, { kind, part }: OwnPart): Step {
	const market = marketOf(context.market, state.ownParts);
	const { id: _, ...facts } = part;
	const name = `${part.name.slice(0, 113)} (copy)`;
	const copy = finishDraft({ ...facts, name }, partKinds[kind].noun, allTaken(state, market, kind));
	return keptPart(
		{ ...state, place: { at: "own-part", kind, id: copy.id } },
		kind,
		copy,
		`Here is the copy. Change what differs.`,
	);
}

/** Ids that no new part of a kind may have; an own part of another kind has its id for itself too. */
function allTaken(state: WalkState, market: WalkContext["market"], kind: PartKind): ReadonlySet<string> {
	return new Set([...takenIds(market, kind), ...ownPartsOf(state).map(({ part }) => part.id)]);
}

/** A part among the own ones, new or in the place of the one with its id. */
function keptPart(state: WalkState, kind: PartKind, part: AnyPart, notice: string): Step {
	const own = { kind, part } as OwnPart;
	const isKnown = (one: OwnPart) => one.kind === kind && one.part.id === part.id;
	const ownParts = state.ownParts.some(isKnown)
		? state.ownParts.map((one) => (isKnown(one) ? own : one))
		: [...state.ownParts, own];
	return [{ ...state, ownParts, notice }, [{ type: "keep-part", own }, { type: "save" }]];
}

/** Takes a part out, with the answers that name it; both can be brought back at once. */
function removed(state: WalkState, own: OwnPart): Step {
	const isIt = (one: OwnPart) => one.kind === own.kind && one.part.id === own.part.id;
	const names = ([id, { value }]: readonly [string, Answer]) =>
		questionById(id)?.partKind === own.kind && namesPart(value, own.part.id);
	const entries = Object.entries(state.answers);
	const taken = Object.fromEntries(entries.filter(names));
	const answers: Answers = Object.fromEntries(entries.filter((entry) => !names(entry)));
	const labels = Object.keys(taken).map((id) => questionById(id)?.label ?? id);
	const open = labels.length > 0 ? ` These answers are open again: ${labels.join(", ")}.` : "";
	return [
		{
			...state,
			ownParts: state.ownParts.filter((one) => !isIt(one)),
			kept: state.kept.filter((one) => !isIt(one)),
			answers,
			removed: { own, answers: taken },
			place: { at: "own-parts" },
			notice: `${own.part.name} is removed.${open}`,
		},
		[{ type: "remove-part", kind: own.kind, id: own.part.id }, { type: "save" }],
	];
}

function namesPart(value: AnswerValue | undefined, id: string): boolean {
	if (Array.isArray(value)) return value.includes(id);
	return typeof value === "object" && "part" in value && value.part === id;
}

function broughtBack(context: WalkContext, state: WalkState): Step {
	if (!state.removed) return [state, []];
	const { own, answers } = state.removed;
	const market = marketOf(context.market, state.ownParts);
	// Another part may have its id by now.
	const isTaken = ownPartsOf(state).some(({ part }) => part.id === own.part.id);
	const id = isTaken
		? finishDraft(own.part as never, partKinds[own.kind].noun, allTaken(state, market, own.kind)).id
		: own.part.id;
	const back = isTaken ? {} : answers;
	const next: WalkState = {
		...state,
		removed: null,
		answers: { ...back, ...state.answers },
		place: { at: "own-parts" },
	};
	return keptPart(next, own.kind, { ...own.part, id } as AnyPart, `${own.part.name} is back.`);
}

function atForm(context: WalkContext, state: WalkState, form: PartForm, event: WalkEvent, moves: Moves): Step | null {
	const { place } = state;
	const inside: FormStep = { context, state, form };
	switch (event.type) {
		case "fact-form":
			return [{ ...state, place: placeOfFact(form, event.path) }, []];
		case "doubt":
			return form.doubts[event.index] ? [{ ...state, place: { at: "doubt", index: event.index } }, []] : [state, []];
		case "unread":
			return [{ ...state, place: { at: "unread" } }, []];
		case "keep":
			return kept(context, state, form, moves);
		case "drop-form": {
			const next = { ...state, form: null };
			if (place.at === "leave-form" && place.leaving) return null;
			return [leftForm(next, form, moves), []];
		}
	}
	if (place.at === "fact-form") return atFactForm(inside, place, event);
	if (place.at === "doubt") return atDoubt(inside, place, event);
	if (event.type === "next") return [{ ...state, place: { at: "part-form" } }, []];
	return place.at === "part-form" && event.type === "text" ? factByTitle(state, form, event.text) : null;
}

/** Opens the one fact that has these letters in its title. */
function factByTitle(state: WalkState, form: PartForm, text: string): Step {
	const typed = cleanLine(text);
	const found = formFields(form.kind).filter(({ title }) => title.toLowerCase().includes(typed.toLowerCase()));
	const [only, ...more] = found;
	if (only && more.length === 0) return [{ ...state, place: placeOfFact(form, only.path) }, []];
	const titles = found.slice(0, 4).map(({ title }) => title);
	const problem = only
		? `Several facts have "${typed}": ${titles.join(", ")}.`
		: `No fact has "${typed}" in its title.`;
	return [{ ...state, problem }, []];
}

/** An answers file holds no more own parts than this; see parts/answers-file. */
const mostOwnParts = 500;

/** The form is done: the part is kept, and answers the question it came from, or is shown. */
function kept(context: WalkContext, state: WalkState, form: PartForm, moves: Moves): Step {
	const { kind, originalId, questionId } = form;
	const market = marketOf(context.market, state.ownParts);
	const { noun } = partKinds[kind];
	if (originalId === null && state.ownParts.length >= mostOwnParts)
		return [{ ...state, problem: `A walk holds ${mostOwnParts} parts at most. Remove one first.` }, []];
	const { id, name } = finishDraft(form.draft, noun, allTaken(state, market, kind));
	const made = partOfForm(form, { id: originalId ?? id, name }, entering(context, state));
	if ("problem" in made) return [{ ...state, place: { at: "part-form" }, problem: made.problem }, []];
	const { part } = made;
	const [after, effects] = keptPart(
		{ ...state, form: null, pasted: null },
		kind,
		part,
		`${cleanLine(part.name)} is kept.`,
	);
	if (questionId !== null && originalId === null) {
		const at: WalkState = { ...after, place: { at: "question", id: questionId } };
		const marked = valueIn(state.answers[questionId], ["value"]);
		const value: AnswerValue =
			questionById(questionId)?.kind === "many"
				? [...(Array.isArray(marked) ? (marked as string[]) : []), part.id]
				: answerFor(part.id);
		const all = { ...context, market: marketOf(context.market, after.ownParts) };
		const unexpected = questionById(questionId)?.expected(value, all) ?? null;
		// The list is full: the part is kept, and the answer stays as it was.
		if (unexpected !== null) return [{ ...at, problem: `This question takes ${unexpected}.` }, effects];
		const [answered, more] = moves.answered(context, at, questionId, { status: "answered", value });
		return [answered, [...effects.filter(({ type }) => type !== "save"), ...more]];
	}
	const page: Place =
		kind === "board" && originalId === null ? { at: "board", boardId: part.id } : { at: "own-part", kind, id: part.id };
	return [{ ...after, place: page }, effects];
}
