import type { Advice } from "../choose/advise.ts";
import type { Judgement } from "../choose/judge.ts";
import type { Suggestion } from "../parts/answers-file.ts";
import type { Board } from "../parts/board.ts";
import { questionById } from "../questions/all-questions.ts";
import type { QuestionContext } from "../questions/define-question.ts";
import { judgedOf } from "./judged-board.ts";
import type { SheetSuggestion, SheetTold } from "./sheet.ts";
import { giverWords, proposedWords } from "./suggestion-words.ts";
import { toldLines } from "./told-words.ts";

/** Suggestions in words, whatever became of them. */
export function suggestionsOf(
	suggestions: readonly Suggestion[],
	context: QuestionContext,
): readonly SheetSuggestion[] {
	return suggestions.map((one) => ({
		label: questionById(one.questionId)?.label ?? one.questionId,
		text: `${proposedWords(one.questionId, one, context)}${one.why ? ` (${one.why})` : ""}`,
		by: giverWords(one.by),
		state: one.state,
	}));
}

/** Facts of boards that somebody said, such as the shop: of those listed first, then of all others. */
export function toldOf(judgement: Judgement, { shortlist }: Pick<Advice, "shortlist">): readonly SheetTold[] {
	const listed = shortlist.flatMap(({ boardId }) => judgedOf(boardId, judgement)?.board ?? []);
	const others = judgement.boards.map(({ board }) => board).filter(({ id }) => !listed.some((one) => one.id === id));
	const toldIn = (boards: readonly Board[], isListed: boolean) =>
		boards.flatMap((board) => toldLines(board).map((text) => ({ boardName: board.name, text, isListed })));
	return [...toldIn(listed, true), ...toldIn(others, false)];
}
