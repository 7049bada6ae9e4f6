import { allQuestions } from "../../src/questions/all-questions.ts";
import { tiers } from "../../src/questions/define-question.ts";
import type { Block, Screen } from "../../src/screens/screen.ts";
import { screenOf } from "../../src/screens/screen-of.ts";
import { marketOf } from "../../src/walk/market-of.ts";
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
		...marketOf(context.market, state.ownParts).parts.board.flatMap(({ id }): Place[] => [
			{ at: "board", boardId: id },
			{ at: "board", boardId: id, page: "facts" },
			{ at: "board", boardId: id, page: "plan" },
			{ at: "board", boardId: id, page: "power" },
		]),
		{ at: "sheet" },
		{ at: "menu" },
		{ at: "saved-walks" },
		{ at: "settings" },
		...described,
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
	const { place, title, body, choices, typing, enter, side, help, problem, notice } = screen;
	const given = [place, problem, notice].filter((words) => words !== null && words !== "") as string[];
	return [
		title,
		...given,
		...[...body, ...side, ...help].flatMap(blockTexts),
		...choices.flatMap(({ label, detail, count }) => [label, detail, count].filter((words) => words !== undefined)),
		...(typing ? [typing.words] : []),
		...(enter ? [enter.words] : []),
	];
}

/** The text blocks of one kind of list. */
export function listsOf(blocks: readonly Block[]): readonly (readonly string[])[] {
	return blocks.flatMap((block) => (block.kind === "list" ? [block.items] : []));
}
