import type { BuildFacts } from "../parts/build.ts";
import { lookUpFact } from "../parts/fact-path.ts";
import type { Market } from "../parts/market.ts";
import { partPrice } from "../parts/part-price.ts";
import type { ConnectorEnd } from "../plan/plan.ts";
import { type ExtrasFacts, extrasOf, extrasRead, type ForcedExtra } from "../rules/extras-of.ts";
import type { RuleSubject } from "../rules/run-rule.ts";
import { seenBy } from "./findings-of-market.ts";

/** What a board makes its buyer pay besides its own price. */
export interface ForcedCosts {
	/** Surely bought, and there is a part on the market that does it: the cheapest one, its price in the smallest unit. */
	readonly priced: readonly { readonly words: string; readonly partName: string; readonly minor: number }[];
	/** Surely bought, at a price nobody has noted. */
	readonly unpriced: readonly string[];
	/** Bought only if open answers turn out so. */
	readonly perhaps: readonly string[];
}

/** The cheapest add-in card for a use, with a price in one currency; null where the market has none. */
export type CardPrices = (use: NonNullable<ForcedExtra["cardUse"]>) => { partName: string; minor: number } | null;

/** Looks the cards of a market through once for each use. Cards for the old slots (PCI) do not count: few boards take them. */
export function cardPrices(market: Market, currency: string): CardPrices {
	const known = new Map<string, ReturnType<CardPrices>>();
	return (use) => {
		const before = known.get(use);
		if (before !== undefined) return before;
		const [cheapest] = market.parts.addInCard
			.filter((card) => card.use === use && card.bus !== "PCI")
			.flatMap((card) => {
				const asked = partPrice(card)?.price;
				return asked?.currency === currency ? [{ partName: card.name, minor: asked.minor }] : [];
			})
			.toSorted((one, other) => one.minor - other.minor || (one.partName < other.partName ? -1 : 1));
		known.set(use, cheapest ?? null);
		return cheapest ?? null;
	};
}

/**
 * What one board forces, over the ways the open answers may turn out. A card is counted only where a slot is free for it;
 * else something is needed that nobody has a price for.
 *
 * @param worlds those in which the board may fit
 */
export function forcedCosts(subject: RuleSubject, worlds: readonly BuildFacts[], cardOf: CardPrices): ForcedCosts {
	const byWorld = inEachWorld(worlds, (facts) => forcedIn(subject, facts));
	const words = [...new Set(byWorld.flatMap((extras) => [...extras.keys()]))];
	const isSure = (one: string) => byWorld.every((extras) => extras.has(one));
	const sure = words.filter(isSure).map((one) => {
		const uses = new Set(byWorld.map((extras) => extras.get(one) ?? null));
		const [use] = uses;
		return { words: one, card: uses.size === 1 && use ? cardOf(use) : null };
	});
	return {
		priced: sure.flatMap(({ words: one, card }) => (card ? [{ words: one, ...card }] : [])),
		unpriced: sure.flatMap(({ words: one, card }) => (card ? [] : [one])),
		perhaps: words.filter((one) => !isSure(one)),
	};
}

/** The things by their words, and which card would do, where one would and finds a slot. */
function forcedIn(subject: RuleSubject, facts: BuildFacts): ReadonlyMap<string, ForcedExtra["cardUse"]> {
	const inWorld: RuleSubject = { ...subject, facts };
	const read: Record<string, unknown> = {};
	for (const path of extrasRead) {
		const found = lookUpFact(inWorld, path);
		if (found.known) read[path] = found.value;
	}
	const extras = extrasOf(read as ExtrasFacts);
	const hasSlot = extras.some(({ cardUse }) => cardUse !== null) && hasFreeSlot(inWorld);
	return new Map(extras.map(({ words, cardUse }) => [words, hasSlot ? cardUse : null]));
}

function hasFreeSlot(subject: RuleSubject): boolean {
	const found = lookUpFact(subject, "plan.ends");
	const ends = found.known ? (found.value as readonly ConnectorEnd[]) : [];
	return ends.some(
		({ state, connector }) =>
			state === "free" && connector.kind === "card slot" && connector.bus === "PCI Express" && connector.lanes > 0,
	);
}

/** Worlds that look alike to what is worked out are looked at once. */
function inEachWorld<T>(worlds: readonly BuildFacts[], work: (facts: BuildFacts) => T): readonly T[] {
	const known = new Map<string, T>();
	for (const facts of worlds) {
		const key = seen(facts);
		if (!known.has(key)) known.set(key, work(facts));
	}
	return [...known.values()];
}

const seen = seenBy({ reads: [], mayRead: extrasRead });
