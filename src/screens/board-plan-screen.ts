import { measurePlan } from "../plan/measure-plan.ts";
import { pictureShape, planPicture } from "../sheet/plan-picture.ts";
import { notInThePlan, planWords } from "../sheet/plan-words.ts";
import { plainScreen } from "./plain-screen.ts";
import { heading, list, type Screen, text } from "./screen.ts";
import type { WalkView } from "./walk-view.ts";
import { waysFromBoardPage } from "./ways-from-board-page.ts";

/** What plugs in where on a board: a picture, and the same in words. */
export function boardPlanScreen(view: WalkView, boardId: string): Screen {
	const judged = view.judgement().boards.find(({ board }) => board.id === boardId);
	const board = judged && (judged.subject.board ?? judged.board);
	const measure = board && measurePlan(board, view.judgement().build.facts);
	return plainScreen(view, {
		id: `board-plan:${boardId}`,
		title: `What plugs in where: ${judged?.board.name ?? boardId}`,
		body: measure
			? [
					...(judged?.verdict === "does-not-fit"
						? [text("This board does not fit your answers. The plan shows only where things would go.")]
						: []),
					...(measure.plan.ends.length > 0
						? [
								{
									kind: "picture",
									isTold: true,
									lines: planPicture(measure.plan, pictureShape(board, measure)),
								} as const,
							]
						: [text("The slots, sockets and ports of this board are not known, so there is little to plan.")]),
					...planWords(measure).flatMap(({ heading: words, lines }) => [heading(words), list(lines)]),
					text(notInThePlan),
				]
			: [],
		...waysFromBoardPage,
	});
}
