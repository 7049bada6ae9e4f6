import type { BoardJudgement, Judgement } from "./judge.ts";

/** Boards that fell out for one reason. */
export interface FellOut {
	readonly ruleId: string;
	readonly boards: readonly BoardJudgement[];
}

/** Boards that do not fit, grouped by the rule told first of those that take each out; the largest group first. */
export function fellOut({ boards }: Judgement): readonly FellOut[] {
	const groups = new Map<string, BoardJudgement[]>();
	for (const judged of boards) {
		if (judged.verdict !== "does-not-fit") continue;
		const ruleId = judged.stoppedBy ?? "";
		groups.set(ruleId, [...(groups.get(ruleId) ?? []), judged]);
	}
	return [...groups]
		.map(([ruleId, fallen]) => ({ ruleId, boards: fallen }))
		.sort((one, other) => other.boards.length - one.boards.length || (one.ruleId < other.ruleId ? -1 : 1));
}

/** Boards that one judgement still held and the next does not. */
export function fellOutBetween(before: Judgement, after: Judgement): readonly FellOut[] {
	const held = new Set(before.boards.filter(({ verdict }) => verdict !== "does-not-fit").map(({ board }) => board.id));
	return fellOut({ ...after, boards: after.boards.filter(({ board }) => held.has(board.id)) });
}
