import { factsOf } from "../parts/fact-list.ts";
import { boardFactWords } from "./board-fact-words.ts";
import { plainScreen } from "./plain-screen.ts";
import { pairs, type Screen } from "./screen.ts";
import type { WalkView } from "./walk-view.ts";
import { waysFromBoardPage } from "./ways-from-board-page.ts";

/** Every fact that is known of a board. */
export function boardFactsScreen(view: WalkView, boardId: string): Screen {
	const judged = view.judgement().boards.find(({ board }) => board.id === boardId);
	const name = judged ? judged.board.name : boardId;
	return plainScreen(view, {
		id: `board-facts:${boardId}`,
		title: `All facts of ${name}`,
		body: judged
			? [pairs(boardFactWords(judged.subject.board ?? judged.board, judged.subject.assumed, factsOf("board")))]
			: [],
		...waysFromBoardPage,
	});
}
