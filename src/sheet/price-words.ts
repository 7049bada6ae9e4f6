import type { Board } from "../parts/board.ts";
import { moneyText } from "../parts/money.ts";
import { partPrice } from "../parts/part-price.ts";

/** Prices move; one older than this says so (own convention). */
const staleAfterDays = 60;

/** "EUR 189.00", with its age where it is old and its condition where it is not new; or that it is not known. */
export function priceWords(board: Board | undefined, asOf: string): string {
	const asked = board && partPrice(board);
	if (!asked) return "price not known";
	const used = asked.condition === "new" ? "" : ` (${asked.condition}; no new one is noted)`;
	const days = board.checkedOn ? daysBetween(board.checkedOn, asOf) : null;
	const age = days !== null && days > staleAfterDays ? ` (seen ${days} days ago: look again)` : "";
	return moneyText(asked.price) + used + age;
}

/** Whole days from one ISO date to another; negative when the second lies before the first. */
export function daysBetween(from: string, to: string): number {
	return Math.round((Date.parse(to) - Date.parse(from)) / 86_400_000);
}
