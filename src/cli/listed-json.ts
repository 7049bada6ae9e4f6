import type { Listed } from "../choose/what-if.ts";

/** A board of one of two shortlists, for other programs. */
export function listedJson({ boardId, place, role, points, price }: Listed): object {
	return {
		boardId,
		place,
		role,
		points,
		priceMinor: price?.minor ?? null,
		currency: price?.currency ?? null,
	};
}
