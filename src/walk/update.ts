import type { Answer, Answers, AnswerValue, OwnPart } from "../parts/answers-file.ts";
import { cleanLine } from "../parts/clean-text.ts";
import { findPart } from "../parts/market.ts";
import { partKinds } from "../parts/part-kinds.ts";
import { questionById } from "../questions/all-questions.ts";
import type { Question } from "../questions/define-question.ts";
import { answerFor, type DescribeContext, putFact, typedFacts } from "../questions/describe/described-parts.ts";
import { finishDraft, type PartDraft, type TypedFact } from "../questions/describe/typed-fact.ts";
import { foldAnswers } from "../questions/fold-answers.ts";
import { currencyOf } from "../questions/money-question.ts";
import { readTyped } from "../questions/read-typed.ts";
import { answersDropped } from "./answers-dropped.ts";
import { updateAskShop } from "./ask-shop-update.ts";
import { heldFor, type Tried, updateCoach } from "./coach-update.ts";
import { updateKeptWalks } from "./kept-walks-update.ts";
import { marketOf, takenIds } from "./market-of.ts";
import { backInOwnParts, updateOwnParts } from "./own-parts-update.ts";
import { needsForm } from "./own-places.ts";
import { partsDisagree, placeAfter, placeBefore, placeToStart } from "./places.ts";
import { updateSuggestions } from "./suggestion-update.ts";
import { decidedByAnswers, hasOpenRivals, saysTheSame, unchangedWords } from "./suggestions.ts";
import { type TakenChange, takeWayOut } from "./take-way-out.ts";
import type { WalkEffect, WalkEvent } from "./walk-event.ts";
import type { Place, WalkContext, WalkState } from "./walk-state.ts";

/** The question whose answer is noted beside all answers that follow. */
const whoQuestionId = "about/who";

type Step = readonly [WalkState, readonly WalkEffect[]];

/**
 * One step of a walk: what the state becomes, and what the outside must do. Pure. An event that makes no sense where
 * the person is changes nothing; no event throws.
 */
export function update(context: WalkContext, before: WalkState, event: WalkEvent): Step {
	const after = step(context, before, event);
	if (before.isExample) return withNothingKept(after);
	return before.coaching && before.place.at !== "left" ? heldFor(context, before, after) : after;
}

/** In the example one may try everything, but nothing of it reaches the disk, apart from a sheet that is asked for. */
function withNothingKept([state, effects]: Step): Step {
	const isLost = ({ type }: WalkEffect) => type === "keep-part" || type === "remove-part" || type === "change-walks";
	const kept = effects.filter((effect) => effect.type !== "save" && !isLost(effect));
	return [effects.some(isLost) ? { ...state, notice: "This is the example: nothing is kept here." } : state, kept];
}

function step(context: WalkContext, before: WalkState, event: WalkEvent): Step {
	const state: WalkState = { ...before, problem: null, notice: null };
	const { place } = state;
	if (place.at === "left") return [before, []];
	if (event.type === "show-sources") {
		const shown = { ...before, showsSources: !before.showsSources };
		// From the menu one goes back, to see them at once.
		return [place.at === "menu" ? comeBack(context, shown) : shown, []];
	}
	const coached = updateCoach(context, state, event, {
		visit,
		comeBack: (from) => comeBack(context, from),
		withAnswers,
		tried: triedAnswer,
	});
	if (coached) return coached;
	const suggested = updateSuggestions(context, state, event, { visit, withAnswers });
	if (suggested) return suggested;
	const askedShop = updateAskShop(context, state, event, visit);
	if (askedShop) return askedShop;
	const own = updateOwnParts(context, state, event, { visit, comeBack: (from) => comeBack(context, from), answered });
	if (own) return own;
	const keptWalks = updateKeptWalks(state, event, { visit, comeBack: (from) => comeBack(context, from) });
	if (keptWalks) return keptWalks;
	switch (event.type) {
		case "leave":
			return [
				go(state, { at: "left" }),
				[{ type: "save" }, { type: "leave", finished: hasComeToShortlist(context, state) }],
			];
		case "review":
			// At the start, before any answer, it would show a long list of nothing and hide the walks kept before.
			if (isAtStart(state) && Object.keys(state.answers).length === 0)
				return [{ ...state, notice: "There are no answers yet in this walk." }, []];
			return [visit(state, { at: "review" }), []];
		case "fell-out":
			return [visit(state, { at: "fell-out" }), []];
		case "shortlist":
			return [visit(state, { at: "shortlist" }), []];
		case "find-out":
			return [visit(state, { at: "find-out" }), []];
		case "price-line":
			return [visit(state, { at: "price-line" }), []];
		case "sheet":
			return [visit(state, event.page === "all" ? { at: "sheet", page: "all" } : { at: "sheet" }), []];
		case "what-if":
			return [askedToTry(state, event.questionId), []];
		case "keep-tried":
			return place.at === "what-if-answer" ? keptTried(context, state, place) : [state, []];
		case "like": {
			const boardId = event.boardId ?? (place.at === "board" || place.at === "like" ? place.boardId : "");
			const { direction } = event;
			return findPart(marketOf(context.market, state.ownParts), "board", boardId)
				? [visit(state, { at: "like", boardId, ...(direction ? { direction } : {}) }), []]
				: [state, []];
		}
		case "menu":
			return [visit(state, { at: "menu" }), []];
		case "settings":
			return [visit(state, { at: "settings" }), []];
		case "look-at-example":
			return [state, state.isExample || state.coaching ? [] : [{ type: "look-at-example" }]];
		case "leave-example":
			return [state, state.isExample ? [{ type: "leave-example" }] : []];
		case "glossary":
			return [visit(state, { at: "glossary" }), []];
		case "set": {
			const settings = { ...state.settings, ...event.setting };
			return [{ ...state, settings }, [{ type: "keep-settings", settings }]];
		}
		case "open":
			return [state, [{ type: "open", file: event.file }]];
		case "tell":
			return [{ ...state, notice: event.words }, []];
		case "board":
			return findPart(marketOf(context.market, state.ownParts), "board", event.boardId)
				? [visit(state, { at: "board", boardId: event.boardId, ...(event.page ? { page: event.page } : {}) }), []]
				: [state, []];
		case "change":
			return questionById(event.questionId)
				? [visit(state, { at: "question", id: event.questionId }), []]
				: [state, []];
		case "way-out":
			return wayOut(context, state, event.changes);
		case "describe-board":
			return [
				{ ...visit(state, { at: "describe", kind: "board", questionId: null, index: 0 }), draft: {}, entered: {} },
				[],
			];
		case "write-sheet":
			return [
				state,
				event.to.trim() === "" ? [] : [{ type: "write-sheet", to: event.to.trim(), orNext: event.orNext === true }],
			];
		case "written":
			return [
				{ ...state, notice: `The ${/\.svg$/i.test(event.path) ? "drawing" : "sheet"} is written: ${event.path}` },
				[],
			];
		case "not-written":
			return [{ ...state, problem: event.problem }, []];
		case "next":
			// Going on from a fact that was entered before keeps it.
			if (place.at === "describe") return place.index in state.entered ? described(context, state, place) : [state, []];
			if (place.at === "what-if-question")
				return [place.tried ? visit(state, { at: "what-if-answer", id: place.id, tried: place.tried }) : state, []];
			return [next(context, state), []];
		case "go-on":
			return [{ ...state, place: placeToStart(context, state), returnTo: [] }, []];
		case "back":
			if (place.at === "sheet" && place.page) return [{ ...state, place: { at: "sheet" } }, []];
			// The way in was the shortlist, and so is the way out.
			if (state.isExample && place.at === "shortlist" && state.returnTo.every(({ at }) => at === "start"))
				return [state, [{ type: "leave-example" }]];
			return [back(context, state), []];
		case "drop-form":
			// Who meant to leave leaves now.
			return place.at === "leave-form" ? update(context, { ...state, form: null }, { type: "leave" }) : [state, []];
		default:
			if (place.at === "question") return atQuestion(context, state, place.id, event);
			if (place.at === "what-if-question") return [atTrial(context, state, place, event), []];
			if (place.at === "describe") return atDescription(context, state, place, event);
			if (place.at === "sheet" && place.page === undefined && event.type === "text")
				return update(context, state, { type: "write-sheet", to: event.text });
			if (place.at === "fell-out" && event.type === "text") return boardByName(context, state, event.text);
			return [state, []];
	}
}

/** On the way to another answer: which question, then the question itself. Without any answer there is none to change. */
function askedToTry(state: WalkState, questionId: string | undefined): WalkState {
	if (isAtStart(state) && Object.keys(state.answers).length === 0)
		return { ...state, notice: "There are no answers yet in this walk." };
	if (questionId === undefined) return visit(state, { at: "what-if" });
	return questionById(questionId) ? visit(state, { at: "what-if-question", id: questionId, tried: null }) : state;
}

/** The answers with the one that is tried; as they are where none is tried yet. */
export function answersTried(answers: Answers, id: string, tried: Answer | null): Answers {
	return tried ? { ...answers, [id]: tried } : answers;
}

/** What is done at a question that is only tried: it is answered as ever, but in a walk of which nothing is kept. */
function atTrial(
	context: WalkContext,
	state: WalkState,
	place: Extract<Place, { at: "what-if-question" }>,
	event: WalkEvent,
): WalkState {
	const trial = triedAnswer(context, state, place, event);
	if ("problem" in trial) return { ...state, problem: trial.problem };
	const { answer, isDone } = trial;
	const tried: WalkState = { ...state, place: { ...place, tried: answer } };
	return isDone ? visit(tried, { at: "what-if-answer", id: place.id, tried: answer }) : tried;
}

/** What an event at a question would answer, in a walk of which nothing is kept. */
function triedAnswer(
	context: WalkContext,
	state: WalkState,
	{ id, tried }: { readonly id: string; readonly tried: Answer | null },
	event: WalkEvent,
): Tried {
	// A part that is described would be kept.
	if (event.type === "describe") return { problem: null };
	const trial: WalkState = {
		...state,
		answers: answersTried(state.answers, id, tried),
		place: { at: "question", id },
		returnTo: [{ at: "what-if" }],
	};
	const [after] = atQuestion(context, trial, id, event);
	if (after.answers === trial.answers) return { problem: after.problem };
	// With nothing marked any more it is tried to have none of it.
	const answer: Answer = after.answers[id] ?? { status: "answered", value: [] };
	return { answer, isDone: after.place.at !== "question" };
}

/** The answer that was tried becomes the person's answer, and what comes of it is shown. */
function keptTried(context: WalkContext, state: WalkState, place: Extract<Place, { at: "what-if-answer" }>): Step {
	const after = withAnswer(context, { ...state, notice: "The other answer is now yours." }, place.id, place.tried);
	const returnTo = state.returnTo.filter(({ at }) => !at.startsWith("what-if") && at !== "shortlist");
	return [{ ...after, place: { at: "shortlist" }, returnTo }, [{ type: "save" }]];
}

/** To the shortlist with the answers changed, by way of the questions that are to be asked again. */
function wayOut(context: WalkContext, state: WalkState, changes: readonly TakenChange[]): Step {
	const inside = { ...context, market: marketOf(context.market, state.ownParts) };
	const taken = takeWayOut(state.answers, changes, inside, state.by);
	if (!taken) return [state, []];
	const changed = taken.words === "" ? state : withAnswers(context, state, taken.answers);
	const notice = [taken.words, changed.notice ?? ""].filter((words) => words !== "").join(" ");
	const seen = visit({ ...changed, notice: notice === "" ? null : notice }, { at: "shortlist" });
	const [first, ...more] = taken.ask.map((id): Place => ({ at: "question", id }));
	const asked: WalkState = first ? { ...seen, place: first, returnTo: [...more, seen.place, ...seen.returnTo] } : seen;
	return [asked, taken.words === "" ? [] : [{ type: "save" }]];
}

/** At the start, or in the menu opened from there. */
function isAtStart({ place, returnTo }: WalkState): boolean {
	return place.at === "start" || (place.at === "menu" && returnTo[0]?.at === "start");
}

/** Opens the one board that has these letters in its name. */
function boardByName(context: WalkContext, state: WalkState, text: string): Step {
	const typed = cleanLine(text);
	const boards = marketOf(context.market, state.ownParts).parts.board;
	const found = boards.filter(({ name }) => name.toLowerCase().includes(typed.toLowerCase()));
	const [only, ...more] = found;
	if (only && more.length === 0) return update(context, state, { type: "board", boardId: only.id });
	const names = found.slice(0, 4).map(({ name }) => name);
	const problem = only
		? `Several boards have "${typed}": ${names.join(", ")}.`
		: `No board has "${typed}" in its name.`;
	return [{ ...state, problem }, []];
}

const noMoreMarked = "What was marked before is marked no more.";

function atQuestion(context: WalkContext, state: WalkState, id: string, event: WalkEvent): Step {
	const question = questionById(id);
	if (!question) return [state, []];
	const inside = { ...context, market: marketOf(context.market, state.ownParts) };
	if (event.type === "not-sure") {
		const notice = markedIn(state.answers[id]).length > 0 ? noMoreMarked : state.notice;
		return answered(context, { ...state, notice }, id, { status: "not-sure" });
	}
	if (event.type === "mark") return marked(context, state, question, event);
	if (event.type === "describe" && question.partKind)
		return [
			{
				...state,
				place: { at: "describe", kind: question.partKind, questionId: id, index: 0 },
				draft: {},
				entered: {},
			},
			[],
		];
	if (event.type === "text") {
		const reading = readTyped(question, event.text, inside, foldAnswers(state.answers, inside).facts);
		if ("problem" in reading) return [{ ...state, problem: reading.problem }, []];
		const unexpected = question.expected(reading.value, inside);
		if (unexpected !== null) return [{ ...state, problem: `This question takes ${unexpected}.` }, []];
		const lost = markedIn(state.answers[id]).filter(
			(one) => !markedIn({ status: "answered", value: reading.value }).includes(one),
		);
		// A list that is typed is the whole answer, and what stood in it before must not go unsaid.
		const notice =
			question.kind === "many" && lost.length > 0 ? "Only what was typed just now is marked." : state.notice;
		return answered(context, { ...state, notice }, id, { status: "answered", value: reading.value });
	}
	if (event.type !== "answer") return [state, []];
	const expected = question.expected(event.value, inside);
	if (expected !== null) return [{ ...state, problem: `This question takes ${expected}.` }, []];
	const unmarks = Array.isArray(event.value) && event.value.length === 0 && markedIn(state.answers[id]).length > 0;
	if (unmarks)
		return answered(context, { ...state, notice: noMoreMarked }, id, {
			status: "answered",
			value: event.value,
		});
	return answered(context, state, id, { status: "answered", value: event.value });
}

function answered(context: WalkContext, state: WalkState, id: string, answer: Answer): Step {
	return [next(context, withAnswer(context, state, id, answer)), [{ type: "save" }]];
}

/** The walk with one answer given, and a word about those that no longer count because of it. */
function withAnswer(context: WalkContext, state: WalkState, id: string, answer: Answer): WalkState {
	const by = id === whoQuestionId && !state.coaching ? byOf(answer) : state.by;
	const before = state.answers[id];
	// Who gives the same answer once more changes nothing, and it stays the answer of who gave it first.
	const isSame = saysTheSame(before, answer) && !hasOpenRivals(state.suggestions, id);
	const given = before && isSame ? before : { ...answer, by };
	const notice = state.notice ?? (before && isSame ? unchangedWords(state.suggestions, id) : null);
	return { ...withAnswers(context, { ...state, notice }, inOrderGiven(state, { ...state.answers, [id]: given })), by };
}

/**
 * A question whose last mark was taken away, and that is marked anew, keeps its place: a short walk goes through what was
 * dealt with in the order in which it came.
 */
function inOrderGiven({ answersBefore }: WalkState, answers: Answers): Answers {
	const order = Object.keys(answersBefore ?? {});
	const place = (id: string) => (order.includes(id) ? order.indexOf(id) : order.length);
	return Object.fromEntries(Object.entries(answers).toSorted(([one], [other]) => place(one) - place(other)));
}

function withAnswers(context: WalkContext, state: WalkState, answers: Answers): WalkState {
	const dropped = answersDropped(context, state, { ...state, answers });
	return {
		...state,
		answersBefore: state.answers,
		answers,
		suggestions: decidedByAnswers(state.suggestions, state.answers, answers),
		notice: dropped.length > 0 ? droppedWords(dropped.map(({ label }) => label)) : state.notice,
	};
}

/** Not sure who answers: then the answers count as the builder's own. */
function byOf({ status, value }: Answer): string {
	return status === "answered" && typeof value === "string" ? value : "builder";
}

function droppedWords(labels: readonly string[]): string {
	return `No longer asked, so no longer counted: ${labels.join(", ")}. The answers are kept, in case you change back.`;
}

/** Marks one line of a list; the walk stays where it is. A list with nothing marked is no answer yet. */
function marked(
	context: WalkContext,
	state: WalkState,
	question: Question,
	{ value, by }: Extract<WalkEvent, { type: "mark" }>,
): Step {
	if (question.kind !== "many") return [state, []];
	const inside = { ...context, market: marketOf(context.market, state.ownParts) };
	const lines = question.options(inside, foldAnswers(state.answers, inside).facts).map((option) => ({
		one: (option.value as readonly string[])[0] ?? "",
		most: option.most ?? 1,
	}));
	const line = lines.find(({ one }) => one === value);
	if (!line) return [state, []];
	const before = markedIn(state.answers[question.id]);
	const count = before.filter((other) => other === value).length + by;
	const wanted = count > line.most ? 0 : Math.max(0, count);
	if (wanted === count - by) return [state, []];
	const now = lines.flatMap(({ one }) =>
		Array<string>(one === value ? wanted : before.filter((other) => other === one).length).fill(one),
	);
	const problem = now.length > 0 ? question.expected(now, inside) : null;
	if (problem !== null) return [{ ...state, problem: `This question takes ${problem}.` }, []];
	const { [question.id]: _, ...others } = state.answers;
	const after =
		now.length > 0
			? withAnswer(context, state, question.id, { status: "answered", value: now })
			: withAnswers(context, state, others);
	return [{ ...after, answersBefore: beforeMarking(state, question.id) }, [{ type: "save" }]];
}

/** The answers before the first mark of a question: all its marks together are one answer, and took out what they did. */
function beforeMarking({ answers, answersBefore }: WalkState, id: string): Answers {
	if (!answersBefore) return answers;
	const ids = new Set([...Object.keys(answers), ...Object.keys(answersBefore)]);
	const differs = [...ids].filter((one) => answers[one] !== answersBefore[one]);
	return differs.length === 1 && differs[0] === id ? answersBefore : answers;
}

function markedIn(answer: Answer | undefined): readonly string[] {
	return answer?.status === "answered" && Array.isArray(answer.value) ? answer.value : [];
}

/** The answer of a part question once a part has been described: that part, or it beside those already marked. */
function answerWithPart(answer: Answer | undefined, questionId: string, partId: string): AnswerValue {
	return questionById(questionId)?.kind === "many" ? [...markedIn(answer), partId] : answerFor(partId);
}

/** The facts asked of the part being described, for this market and the processor settled so far. */
export function factsToDescribe(context: WalkContext, state: WalkState): readonly TypedFact[] {
	if (state.place.at !== "describe") return [];
	return typedFacts(state.place.kind, describeContext(context, state)).filter(
		({ when }) => when?.(state.draft) ?? true,
	);
}

function describeContext(context: WalkContext, state: WalkState): DescribeContext {
	const market = marketOf(context.market, state.ownParts);
	const { processor } = foldAnswers(state.answers, { ...context, market }).facts;
	return {
		...context,
		market,
		currency: currencyOf(market),
		processorName: processor.state === "have" ? processor.part.name : null,
	};
}

function atDescription(
	context: WalkContext,
	state: WalkState,
	place: Extract<Place, { at: "describe" }>,
	event: WalkEvent,
): Step {
	const fact = factsToDescribe(context, state)[place.index];
	if (!fact) return [state, []];
	const enter = (draft: PartDraft, words: string): Step =>
		described(context, { ...state, draft, entered: { ...state.entered, [place.index]: words } }, place);
	if (event.type === "not-on-page") return enter(withoutFact(state.draft, fact.path), "not on the page");
	if (event.type === "fact") {
		const choice = fact.choices?.find(({ value }) => JSON.stringify(value) === JSON.stringify(event.value));
		return choice ? enter(putFact(fact, state.draft, event.value), choice.label) : [state, []];
	}
	if (event.type !== "text") return [state, []];
	const reading = readFact(fact, event.text);
	if ("problem" in reading) return [{ ...state, problem: reading.problem }, []];
	return enter(putFact(fact, state.draft, reading.value), cleanLine(event.text));
}

/** The draft with nothing at a dotted path, and no empty group left over. */
function withoutFact(draft: PartDraft, path: string): PartDraft {
	const [key = "", ...rest] = path.split(".");
	const { [key]: value, ...others } = draft;
	const inner = rest.length > 0 && value !== undefined ? withoutFact(value as PartDraft, rest.join(".")) : {};
	return Object.keys(inner).length > 0 ? { ...others, [key]: inner } : others;
}

function readFact(fact: TypedFact, text: string) {
	const plain = (words: string) => words.trim().toLowerCase();
	const choice = fact.choices?.find(({ label }) => plain(label) === plain(text));
	if (choice) return { value: choice.value };
	return fact.read?.(text) ?? { problem: "Type the number of one of the lines above." };
}

/** The next fact, or the part is done: kept as an own part and, for a question, taken as its answer. */
function described(context: WalkContext, state: WalkState, place: Extract<Place, { at: "describe" }>): Step {
	const { kind, questionId, index } = place;
	const asked = factsToDescribe(context, state).length;
	if (index + 1 < asked) return [{ ...state, place: { ...place, index: index + 1 } }, []];
	const market = marketOf(context.market, state.ownParts);
	const part = finishDraft(state.draft, partKinds[kind].noun, takenIds(market, kind));
	const after: WalkState = {
		...state,
		ownParts: [...state.ownParts, { kind, part } as OwnPart],
		draft: {},
		entered: {},
	};
	if (questionId !== null) {
		const at: WalkState = { ...after, place: { at: "question", id: questionId } };
		const value = answerWithPart(state.answers[questionId], questionId, part.id);
		const inside = { ...context, market: marketOf(context.market, after.ownParts) };
		const unexpected = questionById(questionId)?.expected(value, inside) ?? null;
		// The list is full: the part is kept, and the answer stays as it was.
		if (unexpected !== null) return [{ ...at, problem: `This question takes ${unexpected}.` }, [{ type: "save" }]];
		return answered(context, at, questionId, { status: "answered", value });
	}
	return [go(after, { at: "board", boardId: part.id }), [{ type: "save" }]];
}

function next(context: WalkContext, state: WalkState): WalkState {
	const [returnTo, ...rest] = state.returnTo;
	if (returnTo) return { ...state, place: stillThere(context, state, returnTo), returnTo: rest };
	if (state.place.at === "start") return go(state, placeToStart(context, state));
	return go(state, placeAfter(context, state, state.place));
}

function back(context: WalkContext, state: WalkState): WalkState {
	const { place } = state;
	if (place.at === "describe") {
		if (place.index > 0) return { ...state, place: { ...place, index: place.index - 1 } };
		if (place.questionId !== null)
			return { ...state, place: { at: "question", id: place.questionId }, draft: {}, entered: {} };
	}
	return backInOwnParts(state, { comeBack: (from) => comeBack(context, from) }) ?? comeBack(context, state);
}

/** Back to where one was before looking something up, or to what comes before. */
function comeBack(context: WalkContext, state: WalkState): WalkState {
	const [returnTo, ...rest] = state.returnTo;
	if (returnTo) return { ...state, place: stillThere(context, state, returnTo), returnTo: rest };
	return go(state, placeBefore(context, state, state.place));
}

/** Parts that disagreed may agree by now, and a form may be done with; there is then nothing to come back to. */
function stillThere(context: WalkContext, state: WalkState, place: Place): Place {
	if (needsForm(place) && !state.form) return { at: "own-parts" };
	return place.at === "parts-disagree" && !partsDisagree(context, state) ? placeAfter(context, state, place) : place;
}

function go(state: WalkState, place: Place): WalkState {
	return { ...state, place };
}

/** Goes somewhere to come back from; looking at the same kind of place again does not pile up. */
function visit(from: WalkState, place: Place): WalkState {
	// The menu is a way, not a place to come back to.
	const [underMenu, ...below] = from.returnTo;
	const state = from.place.at === "menu" && underMenu ? { ...from, place: underMenu, returnTo: below } : from;
	if (state.place.at === place.at && place.at !== "board") return { ...state, place };
	// Questions, and boards found by way of another one, are gone back through one by one.
	const isTrail = place.at === "question" || place.at === "like" || state.place.at === "like";
	const known = isTrail ? -1 : state.returnTo.findIndex(({ at }) => at === place.at);
	const returnTo = known >= 0 ? state.returnTo.slice(known + 1) : [state.place, ...state.returnTo].slice(0, 8);
	return { ...state, place, returnTo };
}

/** Whether the person sees or saw a shortlist on the way here, or has dealt with every question: not leaving early. */
function hasComeToShortlist(context: WalkContext, { place, returnTo, ...state }: WalkState): boolean {
	const sees = [place, ...returnTo].some(({ at }) => at === "shortlist" || at === "sheet");
	// A helper has nothing to come to.
	return sees || state.coaching !== null || placeToStart(context, { place, returnTo, ...state }).at === "shortlist";
}
