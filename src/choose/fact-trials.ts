import type { Board } from "../parts/board.ts";
import { factAt } from "../parts/fact-list.ts";

export type TrialValue = boolean | number | string;

/** Values that boards have, where a market is too small to show them. Common practice, no source. */
const usualNumbers: Readonly<Record<string, readonly number[]>> = {
	warrantyYears: [2, 3, 5],
	"memory.slots": [2, 4],
	"powerDelivery.coreStages": [6, 8, 10, 12, 14, 16, 18, 20],
	"powerDelivery.stageRatingA": [40, 50, 60, 70, 80, 90, 105],
};
/** More values than this tell nothing more about where a line lies. */
const mostTrials = 12;

/**
 * Values that a missing fact of a board may turn out to have: both answers, all choices of its definition, or the numbers
 * that boards usually have and those of the boards at hand, rising. None for lists and texts, which cannot be gone through.
 *
 * @param boards those left: what is out anyhow changes nothing that is told of the others
 * @param path below the board, such as "powerDelivery.stageRatingA"
 */
export function trialsOf(boards: readonly Board[], path: string): readonly TrialValue[] {
	const fact = factAt("board", path);
	if (fact?.form === "yes or no") return [false, true];
	if (fact?.form === "choice") return fact.choices ?? [];
	if (fact?.form !== "number" && fact?.form !== "whole number") return [];
	const seen = boards.flatMap((board) => {
		const value = valueAt(board, path);
		return typeof value === "number" ? [value] : [];
	});
	const all = [...new Set([...(usualNumbers[path] ?? []), ...seen])].sort((one, other) => one - other);
	return all.filter((_, index) => all.length <= mostTrials || index % Math.ceil(all.length / mostTrials) === 0);
}

function valueAt(board: Board, path: string): unknown {
	let value: unknown = board;
	for (const key of path.split("."))
		value = typeof value === "object" && value !== null ? (value as Record<string, unknown>)[key] : undefined;
	return value;
}

/** The board as it would be with this fact known. */
export function withFact(board: Board, path: string, value: TrialValue): Board {
	const [key = "", ...below] = path.split(".");
	const inside = (board as unknown as Record<string, unknown>)[key];
	const next =
		below.length === 0
			? value
			: withFact((typeof inside === "object" && inside !== null ? inside : {}) as Board, below.join("."), value);
	return { ...board, [key]: next };
}
