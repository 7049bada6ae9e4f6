import type { OwnPart } from "../parts/answers-file.ts";
import { marketLike } from "../parts/make-market.ts";
import type { Market } from "../parts/market.ts";
import { type PartKind, partKindNames } from "../parts/part-kinds.ts";

/** The market with the person's own parts at the end of each list; an own part takes the place of a market part of the same id. */
export function marketOf(market: Market, ownParts: readonly OwnPart[]): Market {
	if (ownParts.length === 0) return market;
	const byParts = known.get(market) ?? new WeakMap<readonly OwnPart[], Market>();
	known.set(market, byParts);
	const made = byParts.get(ownParts) ?? withOwnParts(market, ownParts);
	byParts.set(ownParts, made);
	return made;
}

/** Neither ever changes, so that what was worked out for a market holds as long as the own parts are the same list. */
const known = new WeakMap<Market, WeakMap<readonly OwnPart[], Market>>();

function withOwnParts(market: Market, ownParts: readonly OwnPart[]): Market {
	const parts = Object.fromEntries(
		partKindNames.map((kind) => {
			const own = ownParts.filter((part) => part.kind === kind).map(({ part }) => part);
			const ownIds = new Set(own.map(({ id }) => id));
			const others = (market.parts[kind] as readonly { id: string }[]).filter(({ id }) => !ownIds.has(id));
			return [kind, [...others, ...own]];
		}),
	) as unknown as Market["parts"];
	return marketLike(market, parts);
}

/** Ids already taken by a kind of part. */
export function takenIds(market: Market, kind: PartKind): ReadonlySet<string> {
	return new Set(market.parts[kind].map(({ id }) => id));
}
