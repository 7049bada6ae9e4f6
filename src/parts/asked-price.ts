import type { Board } from "./board.ts";

/**
 * The board with the price a buyer would pay for a new one: the price noted, or the cheapest new offer where none is.
 * Offers in several currencies cannot be compared; the first offer's currency then counts.
 */
export function withAskedPrice(board: Board): Board {
	if (board.price || !board.offers) return board;
	const fresh = board.offers.filter((offer) => offer.condition === "new");
	const first = fresh[0];
	if (!first) return board;
	const cheapest = fresh
		.filter((offer) => offer.price.currency === first.price.currency)
		.reduce((best, offer) => (offer.price.minor < best.price.minor ? offer : best), first);
	return {
		...board,
		price: cheapest.price,
		...(cheapest.seenOn && !board.checkedOn ? { checkedOn: cheapest.seenOn } : {}),
	};
}
