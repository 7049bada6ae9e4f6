import type { OwnPart } from "../parts/answers-file.ts";
import { cleanLine, cleanText } from "../parts/clean-text.ts";
import { valueIn } from "../parts/form-draft.ts";
import { findPart } from "../parts/market.ts";
import { titleInSentence } from "../parts/title-in-sentence.ts";
import { foldAnswers } from "../questions/fold-answers.ts";
import { currencyOf } from "../questions/money-question.ts";
import type { AskShopPlace } from "./ask-shop-places.ts";
import { marketOf } from "./market-of.ts";
import { readTold, type ToldReading } from "./read-told.ts";
import { fieldOf, toldFact, toldPath, toldValue, untold } from "./told-fact.ts";
import type { WalkEffect, WalkEvent } from "./walk-event.ts";
import type { Place, WalkContext, WalkState } from "./walk-state.ts";

type Step = readonly [WalkState, readonly WalkEffect[]];
type Answering = Extract<AskShopPlace, { at: "they-answered" }>;

/**
 * A step about asking a shop, or null where the event is about something else. Pure; an event that makes no sense where
 * the person is changes nothing.
 *
 * @param visit goes somewhere to come back from
 */
export function updateAskShop(
	context: WalkContext,
	state: WalkState,
	event: WalkEvent,
	visit: (from: WalkState, place: Place) => WalkState,
): Step | null {
	const { place } = state;
	const stay: Step = [state, []];
	switch (event.type) {
		case "ask-shop": {
			if (!findPart(marketOf(context.market, state.ownParts), "board", event.boardId)) return stay;
			const to = askingOf(event.boardId, event.language);
			return [place.at === "they-answered" ? { ...state, place: to } : visit(state, to), []];
		}
		case "they-answered": {
			const path = toldPath(event.path);
			if ((place.at !== "ask-shop" && place.at !== "they-answered") || path === null) return stay;
			const { boardId } = place;
			return [
				{ ...state, place: { at: "they-answered", boardId, path, ...(event.asPage ? { asPage: true } : {}) } },
				[],
			];
		}
		case "take-back":
			return place.at === "ask-shop" ? takenBack(context, state, place.boardId, event.path) : stay;
		case "told-by":
			return place.at === "they-answered" && place.answer !== undefined
				? noted(context, state, place, event.by, event.replace === true)
				: stay;
	}
	return place.at === "they-answered" ? atAnswer(context, state, place, event) : null;
}

function askingOf(boardId: string, language?: "de"): Extract<AskShopPlace, { at: "ask-shop" }> {
	return { at: "ask-shop", boardId, ...(language ? { language } : {}) };
}

function atAnswer(context: WalkContext, state: WalkState, place: Answering, event: WalkEvent): Step | null {
	switch (event.type) {
		case "back":
			return [{ ...state, place: placeBefore(place) }, []];
		case "next":
			return [state, []];
		case "text":
		case "paste": {
			const text = cleanText(event.text).trim();
			if (place.both) return [state, []];
			if (place.answer !== undefined) return noted(context, state, place, text, false);
			const reading = readingOf(context, state, place, text);
			if ("problem" in reading) return [{ ...state, problem: reading.problem }, []];
			return [{ ...state, place: { ...place, answer: text } }, []];
		}
		default:
			return null;
	}
}

/** One step back: who said it, then the answer, then the message. */
function placeBefore(place: Answering): Place {
	const { both, answer, ...asked } = place;
	if (both && answer !== undefined) return { ...asked, answer };
	return answer === undefined ? askingOf(place.boardId) : asked;
}

function readingOf(context: WalkContext, state: WalkState, { boardId, path }: Answering, text: string): ToldReading {
	const market = marketOf(context.market, state.ownParts);
	const board = findPart(market, "board", boardId);
	if (!board) return { problem: "This board is not here any more." };
	const { processor } = foldAnswers(state.answers, { ...context, market }).facts;
	return readTold(path, text, {
		board,
		processor: processor.state === "have" ? processor.part.name : null,
		asOf: context.asOf,
		currency: currencyOf(market),
	});
}

/** The answer becomes a fact of the board, unless something else is stated and the person has not decided yet. */
function noted(context: WalkContext, state: WalkState, place: Answering, by: string, replace: boolean): Step {
	const { boardId, path, answer = "" } = place;
	const reading = readingOf(context, state, place, answer);
	if ("problem" in reading) return [{ ...state, place: askingOf(boardId), problem: reading.problem }, []];
	const result = toldFact(context.market, state.ownParts, {
		boardId,
		path,
		value: reading.value,
		by,
		quote: answer,
		date: context.asOf,
		replace,
	});
	if ("problem" in result) {
		if (result.contradiction)
			return [{ ...state, place: { ...place, both: { ...result.contradiction, by: cleanLine(by) } } }, []];
		return [{ ...state, problem: result.problem }, []];
	}
	const { own } = result;
	const field = fieldOf(path);
	const title = field ? titleInSentence(field.title) : path;
	const words = toldValue(path, valueIn(own.part, path.split(".")));
	return changed(state, boardId, result, `Noted for ${own.part.name}: ${title}, ${words}.`);
}

function takenBack(context: WalkContext, state: WalkState, boardId: string, path: string): Step {
	const result = untold(context.market, state.ownParts, boardId, path);
	if ("problem" in result) return [{ ...state, problem: result.problem }, []];
	const title = titleInSentence(fieldOf(path)?.title ?? path);
	return changed(state, boardId, result, `Taken back for ${result.own.part.name}: ${title}.`);
}

function changed(
	state: WalkState,
	boardId: string,
	{ own, ownParts }: { readonly own: OwnPart; readonly ownParts: readonly OwnPart[] },
	notice: string,
): Step {
	const isIt = (one: OwnPart) => one.kind === own.kind && one.part.id === own.part.id;
	return [
		{ ...state, ownParts, place: { ...askingOf(boardId), before: state.ownParts }, notice },
		// A board that is kept for all walks has the fact there too; any other lives in this walk.
		[...(state.kept.some(isIt) ? [{ type: "keep-part", own } as const] : []), { type: "save" }],
	];
}
