import type { Advice } from "../choose/advise.ts";
import type { Judgement } from "../choose/judge.ts";
import type { Suggestion } from "../parts/answers-file.ts";
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

/** Facts of the boards listed that somebody said, such as the shop. */
export function toldOf(judgement: Judgement, { shortlist }: Pick<Advice, "shortlist">): readonly SheetTold[] {
	return shortlist.flatMap(({ boardId }) => {
		const board = judgedOf(boardId, judgement)?.board;
		return board ? toldLines(board).map((text) => ({ boardName: board.name, text })) : [];
	});
}
