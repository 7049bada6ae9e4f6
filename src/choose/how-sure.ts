import type { Ranked } from "./ranked-boards.ts";
import type { Ahead, Samples } from "./samples.ts";

/** How sure it is that one board is ahead of another. Own convention, by the share of draws in which it is. */
export type Sureness = "clearly" | "likely" | "slightly" | "too-close";

/** Points within which two boards are about the same, whoever is ahead (own convention, in points of 100). */
export const samePoints = 2;

/** From these shares on the words hold; below the last it is too close to call. */
const from: readonly (readonly [number, Sureness])[] = [
	[0.95, "clearly"],
	[0.8, "likely"],
	[0.6, "slightly"],
];

/** The word for a share of 0.5 to 1. */
export function surenessOf(share: number): Sureness {
	return from.find(([least]) => share >= least)?.[1] ?? "too-close";
}

/** How often the first is ahead of the second; null where that was not drawn. */
export function aheadOf(one: Ranked, other: Ranked, samples: Samples): Ahead | null {
	return samples.ahead(one.judged.board.id, other.judged.board.id);
}

/**
 * Whether two boards are a tie: at most two points apart, or neither ahead in 60 of 100 draws. One that nothing was drawn
 * for cannot lead, and is no tie unless its points say so.
 */
export function tooCloseToCall(one: Ranked, other: Ranked, samples: Samples): boolean {
	if (Math.abs(one.expected - other.expected) <= samePoints) return true;
	const ahead = aheadOf(one, other, samples);
	return ahead !== null && surenessOf(Math.max(ahead.share, 1 - ahead.share)) === "too-close";
}
