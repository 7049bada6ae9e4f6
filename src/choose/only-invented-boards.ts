import type { Judgement } from "./judge.ts";

/**
 * Whether the person has a processor of their own while all boards to choose from are the demonstration's: none of
 * those can have its socket, and saying "no board is left" would frighten for nothing.
 */
export function onlyInventedBoards({ build: { facts }, market }: Judgement): boolean {
	const boards = market.parts.board;
	return (
		facts.processor.state === "have" &&
		facts.processor.part.invented !== true &&
		boards.length > 0 &&
		boards.every(({ invented }) => invented === true)
	);
}
