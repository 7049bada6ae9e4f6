import type { BoardHeader } from "./board-headers.ts";
import type { HeaderWish } from "./header-wish.ts";

/** A wish with a header of its own. */
export interface OnHeader {
	readonly wish: HeaderWish;
	readonly header: BoardHeader;
}

/** Fans and lights can go on a splitter. A pump wants a header of its own; a USB plug cannot be split. */
const splits = ["cooler fan", "case fan", "5 V lights", "12 V lights"] as const satisfies readonly HeaderWish["kind"][];

/**
 * For each wish the header it can share with what is of its own kind, in order; null where there is none. A case fan
 * never shares with a cooler's fan, which would drag it along, nor with a pump (common practice, no source). Of several
 * headers it is the one that then has most amperes for each, of those alike the first (own convention).
 */
export function headersToShare(
	wishes: readonly HeaderWish[],
	placed: readonly OnHeader[],
): readonly (BoardHeader | null)[] {
	const onIt = new Map(placed.map(({ header }) => [header, 1]));
	// An amperage nobody knows counts low here, so that a header known to carry more is taken first.
	const share = (header: BoardHeader) => (header.amps ?? 1) / ((onIt.get(header) ?? 0) + 1);
	return wishes.map(({ kind }) => {
		if (!splits.some((one) => one === kind)) return null;
		const hosts = placed.filter((one) => one.wish.kind === kind).map(({ header }) => header);
		const best = hosts.reduce<BoardHeader | null>(
			(before, header) => (before === null || share(header) > share(before) ? header : before),
			null,
		);
		if (best) onIt.set(best, (onIt.get(best) ?? 0) + 1);
		return best;
	});
}
