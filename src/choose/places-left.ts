import type { BoardJudgement } from "./judge.ts";

/**
 * How many places for something more a board has once all that is named has one: card slots, M.2 sockets and SATA ports
 * that stay free and work, and free memory slots. -1 where the board's lists are not known, so that it is never named for
 * its room.
 */
export function placesLeft({ subject }: BoardJudgement): number {
	const { board, facts, measures } = subject;
	const plan = measures?.plan?.(facts);
	if (!board?.cardSlots || !board.m2Sockets || !board.drivePorts || !plan) return -1;
	const free = plan.ends.filter(({ state }) => state === "free").length;
	const modules = facts.memory.state === "have" ? (facts.memory.part.modules ?? usualModules) : usualModules;
	return free + Math.max(0, (board.memory?.slots ?? 0) - modules);
}

/** Modules in a kit where none is picked (common practice, no source). */
const usualModules = 2;
