import type { AddInCard } from "../parts/add-in-card.ts";

/**
 * Common practice, no source, where a card's page is silent: most small cards are x1, those that move much x4, and those
 * that compute as long as a graphics card.
 */
export function usualCardLanes(use: AddInCard["use"]): number {
	if (use === "computing") return 16;
	return use === "video capture" || use === "drives" || use === "USB sockets" ? 4 : 1;
}
