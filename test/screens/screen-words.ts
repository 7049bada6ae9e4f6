import { factsOf } from "../../src/parts/fact-list.ts";
import { valueIn } from "../../src/parts/form-draft.ts";
import { type FormPath, formFields } from "../../src/parts/form-fields.ts";
import { allQuestions } from "../../src/questions/all-questions.ts";
import { tiers } from "../../src/questions/define-question.ts";
import { readKinds } from "../../src/reading/part-reading.ts";
import type { Block, Screen } from "../../src/screens/screen.ts";
import { screenOf } from "../../src/screens/screen-of.ts";
import { marketOf } from "../../src/walk/market-of.ts";
import { ownPartsOf } from "../../src/walk/own-parts-list.ts";
import { toldPath } from "../../src/walk/told-fact.ts";
import { factsToDescribe } from "../../src/walk/update.ts";
import type { Place, WalkContext, WalkState } from "../../src/walk/walk-state.ts";

/** The screen at a place of a walk that has one. */
export function screenAt(context: WalkContext, state: WalkState, place: Place = state.place): Screen {
	const screen = screenOf(context, { ...state, place });
	if (!screen) throw new Error(`no screen at ${place.at}`);
	return screen;
}

/** Every place that a walk can be at, described parts fact by fact. */
export function everyPlace(context: WalkContext, state: WalkState): readonly Place[] {
	const described = [
		{ kind: "board", questionId: null } as const,
		...allQuestions.flatMap(({ id, partKind }) => (partKind ? [{ kind: partKind, questionId: id }] : [])),
	].flatMap((part) => {
		const first: Place = { at: "describe", ...part, index: 0 };
		return factsToDescribe(context, { ...state, place: first }).map((_, index): Place => ({ ...first, index }));
	});
	return [
		{ at: "start" },
		...allQuestions.map(({ id }): Place => ({ at: "question", id })),
		...tiers.map((tier): Place => ({ at: "tier-end", tier })),
		{ at: "parts-disagree" },
		{ at: "review" },
		{ at: "fell-out" },
		{ at: "shortlist" },
		{ at: "price-line" },
		{ at: "find-out" },
		{ at: "what-if" },
		...marketOf(context.market, state.ownParts).parts.board.flatMap(({ id }): Place[] => [
			{ at: "board", boardId: id },
			{ at: "board", boardId: id, page: "facts" },
			{ at: "board", boardId: id, page: "plan" },
			{ at: "board", boardId: id, page: "power" },
			{ at: "like", boardId: id },
		]),
		...askShopPlaces(context, state),
		{ at: "sheet" },
		{ at: "sheet", page: "all" },
		{ at: "menu" },
		{ at: "saved-walks" },
		...state.saved.flatMap(({ file }): Place[] => [
			{ at: "kept-walk", file },
			{ at: "name-walk", file },
		]),
		{ at: "kept-walk", file: "gone.json" },
		{ at: "name-walk", file: null },
		{ at: "take-walk" },
		{ at: "settings" },
		{ at: "glossary" },
		...described,
		...ownPlaces(state),
		...suggestionPlaces(state),
	];
}

/** Places of a helper and of what is suggested, as far as the walk can come to them. */
export function suggestionPlaces({ coaching, suggestions, answers }: WalkState): readonly Place[] {
	const questions = [...new Set(suggestions.map(({ questionId }) => questionId))];
	const [tried] = Object.values(answers);
	return [
		{ at: "suggestions" },
		{ at: "suggestions", page: "decided" },
		...questions.map((questionId): Place => ({ at: "suggestion", questionId })),
		...(coaching
			? [
					{ at: "coach" } as const,
					{ at: "coach-name" } as const,
					...allQuestions.map(({ id }) => ({ at: "coach-question", id, tried: null }) as const),
					...(tried ? [{ at: "coach-why", id: "about/budget", tried: { status: "not-sure" } } as const] : []),
				]
			: []),
	];
}

/**
 * Places about asking a shop, of two boards, since all read alike. The German message is left out: what measures words
 * here is made for English.
 */
export function askShopPlaces(context: WalkContext, state: WalkState): readonly Place[] {
	const [first, second] = marketOf(context.market, state.ownParts).parts.board;
	if (!first) return [];
	const boardId = first.id;
	const paths = factsOf("board").flatMap(({ path }) => toldPath(path) ?? []);
	const answer = "yes, since F12";
	const both = { by: "the shop", stated: "Memory slots, told by Ada on 2026-11-20: 4.", told: "the shop says: 2." };
	return [
		{ at: "ask-shop", boardId },
		...(second ? [{ at: "ask-shop", boardId: second.id, before: [] } as const] : []),
		...paths.map((path): Place => ({ at: "they-answered", boardId, path })),
		{ at: "they-answered", boardId, path: "supportList", asPage: true },
		{ at: "they-answered", boardId, path: "supportList", answer },
		{ at: "they-answered", boardId, path: "memory.slots", answer: "2", both },
	];
}

/** Places about the person's own parts, and those of the form being filled in. */
export function ownPlaces(state: WalkState): readonly Place[] {
	const { form } = state;
	const facts = form
		? formFields(form.kind).flatMap(({ path }): readonly FormPath[] => {
				const value = valueIn(form.draft, path);
				const entries = Array.isArray(value) && typeof value[0] === "object" ? [[...path, 0]] : [];
				return [path, ...entries];
			})
		: [];
	return [
		{ at: "own-parts" },
		{ at: "new-part" },
		...readKinds.map((what): Place => ({ at: "read-part", what, questionId: null })),
		...ownPartsOf(state).flatMap(({ kind, part }): readonly Place[] => [
			{ at: "own-part", kind, id: part.id },
			{ at: "own-part", kind, id: part.id, page: "facts" },
		]),
		...(form
			? [
					{ at: "part-form" } as const,
					{ at: "part-form", page: "all" } as const,
					...form.doubts.map((_, index) => ({ at: "doubt", index }) as const),
					{ at: "unread" } as const,
					{ at: "leave-form", leaving: false } as const,
					{ at: "read-part", what: "support-list", questionId: null } as const,
					...facts.map((path) => ({ at: "fact-form", path }) as const),
				]
			: []),
	];
}

export function blockTexts(block: Block): readonly string[] {
	switch (block.kind) {
		case "list":
			return block.items;
		case "pairs":
			return block.pairs.flat();
		// A picture is told in words beside it.
		case "picture":
			return [];
		default:
			return [block.text];
	}
}

/** Every text a screen shows, help included. */
export function textsOf(screen: Screen): readonly string[] {
	const { place, title, body, choices, typing, enter, side, help, sources, problem, notice } = screen;
	const given = [place, problem, notice].filter((words) => words !== null && words !== "") as string[];
	return [
		title,
		...given,
		...[...body, ...side, ...help, ...sources].flatMap(blockTexts),
		...choices.flatMap(({ label, detail, count }) => [label, detail, count].filter((words) => words !== undefined)),
		...(typing ? [typing.words] : []),
		...(enter ? [enter.words] : []),
	];
}

/** The text blocks of one kind of list. */
export function listsOf(blocks: readonly Block[]): readonly (readonly string[])[] {
	return blocks.flatMap((block) => (block.kind === "list" ? [block.items] : []));
}
