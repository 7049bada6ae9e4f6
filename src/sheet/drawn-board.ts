import type { Advice } from "../choose/advise.ts";
import type { Judgement } from "../choose/judge.ts";
import type { Board } from "../parts/board.ts";
import type { Build } from "../parts/build.ts";
import { measurePlan } from "../plan/measure-plan.ts";
import { judgedOf } from "./judged-board.ts";
import { pictureShape, planPicture } from "./plan-picture.ts";
import { planPictureSvg } from "./plan-picture-svg.ts";
import { planWords } from "./plan-words.ts";
import { powerGauge } from "./power-gauge.ts";
import { powerGaugeSvg } from "./power-gauge-svg.ts";
import { powerToldOf, powerWordsInShort } from "./power-words.ts";
import type { SheetPlan } from "./sheet.ts";

/** A picture and words of the first board of the shortlist; null where there is none. */
export function drawn(
	{ shortlist }: Pick<Advice, "shortlist">,
	judgement: Judgement,
	draw: (board: Board, build: Build) => Omit<SheetPlan, "boardName">,
): SheetPlan | null {
	const [first] = shortlist;
	const judged = first && judgedOf(first.boardId, judgement);
	if (!judged) return null;
	const board = judged.subject.board ?? judged.board;
	return { boardName: board.name, ...draw(board, judgement.build) };
}

/** What plugs in where. */
export function planDrawn(board: Board, { facts }: Build): Omit<SheetPlan, "boardName"> {
	const measure = measurePlan(board, facts);
	const isDrawn = measure.plan.ends.length > 0;
	const shape = pictureShape(board, measure);
	return {
		picture: isDrawn ? planPicture(measure.plan, shape) : [],
		svg: isDrawn ? planPictureSvg(measure.plan, `What plugs in where on the ${board.name}`, shape) : null,
		sections: planWords(measure),
	};
}

/** How warm the power stages get. */
export function powerDrawn(board: Board, build: Build): Omit<SheetPlan, "boardName"> {
	const told = powerToldOf(board, build.facts, build.worlds);
	// Without any processor in mind there is nothing to tell yet, and the sheet lists that question anyway.
	if (told.processor.state !== "have" && told.candidates.length === 0) return { picture: [], svg: null, sections: [] };
	const title = `How warm the power stages of the ${board.name} get`;
	return {
		picture: told.steady ? powerGauge(told.steady) : [],
		svg: told.steady ? powerGaugeSvg(told.steady, title) : null,
		sections: powerWordsInShort(told, board.id),
	};
}
