import type { BoardJudgement, Judgement } from "../choose/judge.ts";

/** A board of a judgement by its id. */
export function judgedOf(boardId: string, { boards }: Judgement): BoardJudgement | undefined {
	return boards.find(({ board }) => board.id === boardId);
}

/** A board's name by its id; the id itself where the judgement has no such board. */
export function boardNameOf(judgement: Judgement): (id: string) => string {
	return (id) => judgedOf(id, judgement)?.board.name ?? id;
}
