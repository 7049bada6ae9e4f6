import type { Board } from "./board.ts";
import { cheapestNewOffer } from "./part-price.ts";

/**
 * The board with the price a buyer would pay for a new one: the price noted, or the cheapest new offer where none is.
 * Offers in several currencies cannot be compared; the first offer's currency then counts.
 */
export function withAskedPrice(board: Board): Board {
	if (board.price) return board;
	const cheapest = cheapestNewOffer(board.offers ?? []);
	if (!cheapest) return board;
	return {
		...board,
		price: cheapest.price,
		...(cheapest.seenOn && !board.checkedOn ? { checkedOn: cheapest.seenOn } : {}),
	};
}
