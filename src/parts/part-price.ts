import type { Board } from "./board.ts";
import type { Money } from "./money.ts";

/** The same for a part of any kind. */
type Priced = Partial<Pick<Board, "price" | "offers">>;
type Offers = NonNullable<Priced["offers"]>;

/** What a part costs, and in which condition it is to be had for that. */
export interface PartPrice {
	readonly price: Money;
	readonly condition: Offers[number]["condition"];
}

/**
 * What somebody pays for a part: the price noted, which is a new one's; else the cheapest new offer; else the cheapest of
 * the used and opened ones. Of offers in two currencies those in the first one's count, since none is converted.
 */
export function partPrice({ price, offers = [] }: Priced): PartPrice | null {
	if (price) return { price, condition: "new" };
	const cheapest = cheapestNewOffer(offers) ?? cheapestOffer(offers);
	return cheapest ? { price: cheapest.price, condition: cheapest.condition } : null;
}

/** Null where nothing new is offered. Currencies as for `partPrice`. */
export function cheapestNewOffer(offers: Offers): Offers[number] | null {
	return cheapestOffer(offers.filter(({ condition }) => condition === "new"));
}

function cheapestOffer(offers: Offers): Offers[number] | null {
	const [cheapest] = offers
		.filter((offer) => offer.price.currency === offers[0]?.price.currency)
		.toSorted((one, other) => one.price.minor - other.price.minor);
	return cheapest ?? null;
}
