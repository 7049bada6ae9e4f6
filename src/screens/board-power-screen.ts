import { powerGauge } from "../sheet/power-gauge.ts";
import { powerToldOf, powerWords } from "../sheet/power-words.ts";
import { plainScreen } from "./plain-screen.ts";
import { heading, list, type Screen, text } from "./screen.ts";
import type { WalkView } from "./walk-view.ts";
import { waysFromBoardPage } from "./ways-from-board-page.ts";

/** How warm a board's power stages get: a gauge, and the same in words. */
export function boardPowerScreen(view: WalkView, boardId: string): Screen {
	const judged = view.judgement().boards.find(({ board }) => board.id === boardId);
	const board = judged && (judged.subject.board ?? judged.board);
	const told = board && powerToldOf(board, view.judgement().build.facts, view.judgement().build.worlds);
	return plainScreen(view, {
		id: `board-power:${boardId}`,
		title: `Power and heat: ${judged?.board.name ?? boardId}`,
		body: told
			? [
					...(judged?.verdict === "does-not-fit"
						? [text("This board does not fit your answers. This page shows only how warm it would get.")]
						: []),
					...(told.steady ? [{ kind: "picture", isTold: true, lines: powerGauge(told.steady) } as const] : []),
					...powerWords(told).flatMap(({ heading: words, lines }) => [heading(words), list(lines)]),
				]
			: [],
		...waysFromBoardPage,
	});
}
