import { type FellOut, fellOut, fellOutBetween } from "../choose/fell-out.ts";
import type { BoardJudgement, Judgement } from "../choose/judge.ts";
import { onlyInventedBoards } from "../choose/only-invented-boards.ts";
import { ruleById } from "../rules/all-rules.ts";
import { findingWords } from "../rules/finding-words.ts";
import { type Block, list, text } from "./screen.ts";
import type { WalkView } from "./walk-view.ts";

/** "7 of 12 boards left" and how many of them hang on something unknown. */
export function leftWords(judgement: Judgement): string {
	const { counts } = judgement;
	if (onlyInventedBoards(judgement))
		return "The boards here are invented, so none suits your own processor. The sheet will say what to look for, and at the end you can type in real boards.";
	const left = counts.all - counts.doesNotFit;
	if (counts.all === 0) return "No boards to choose from; the sheet will say what to look for.";
	const open =
		counts.cannotTell > 0 && counts.fits > 0 ? `; for ${counts.cannotTell} of them something is not known yet` : "";
	return `${left} of ${counts.all} boards left${open}.`;
}

/** Whether all boards fell out, of boards that could have fitted. */
export function nothingLeft(judgement: Judgement): boolean {
	const { all, doesNotFit } = judgement.counts;
	return all > 0 && all === doesNotFit && !onlyInventedBoards(judgement);
}

/** Boards left, and what the last answer took out and why; beside every question. */
export function boardsLeftBlocks(view: WalkView): readonly Block[] {
	const judgement = view.judgement();
	if (onlyInventedBoards(judgement)) return [text(leftWords(judgement))];
	const before = view.judgementBefore();
	const fallen = before ? fellOutBetween(before, judgement) : [];
	const back = before ? fellOutBetween(judgement, before) : [];
	return [
		// Before any count: no board can cure this, and the person may be about to change it.
		...(judgement.buildFindings.some(({ certain, finding }) => certain && finding.verdict === "does-not-fit")
			? [text("Some of your parts disagree with each other. The end of Fit says which.")]
			: []),
		text(leftWords(judgement)),
		...(fallen.length > 0 ? [text("Your last answer took out:"), list(fallen.map(fellOutLine))] : []),
		...(fallen.length > 0 && nothingLeft(judgement)
			? [
					text(
						"No board is left now. You can go back and change this answer, or go on: the shortlist will show what to change.",
					),
				]
			: []),
		...(back.length > 0
			? [text(`Your last answer brought back: ${namesOf(back.flatMap(({ boards }) => boards))}.`)]
			: []),
	];
}

/** What fell out in a line a reason. */
export function fellOutLines(judgement: Judgement): readonly Block[] {
	const groups = onlyInventedBoards(judgement) ? [] : fellOut(judgement);
	return groups.length === 0 ? [text("No board has been taken out.")] : [list(groups.map(fellOutLine))];
}

function fellOutLine({ ruleId, boards }: FellOut): string {
	const [first] = boards;
	const why = first && boards.length === 1 ? ` ${failureWords(first, ruleId)}` : "";
	return `${ruleById(ruleId)?.label ?? ruleId}: ${namesOf(boards)}.${why}`;
}

function namesOf(boards: readonly BoardJudgement[]): string {
	const names = boards.map(({ board }) => board.name);
	return names.length > 4 ? `${names.slice(0, 3).join(", ")} and ${names.length - 3} more` : names.join(", ");
}

/** What one rule said of a board. */
function failureWords(judged: BoardJudgement, ruleId: string): string {
	const finding = judged.findings.find((found) => found.ruleId === ruleId);
	return finding ? findingWords(finding) : "";
}
