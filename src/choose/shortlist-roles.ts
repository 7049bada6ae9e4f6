import { nearestTo } from "./comparison.ts";
import { samePoints, tooCloseToCall } from "./how-sure.ts";
import { placesLeft } from "./places-left.ts";
import { byPrice, byScore, type Ranked } from "./ranked-boards.ts";
import type { Samples } from "./samples.ts";

/**
 * Why a board stands on the shortlist. "best-match": of the boards too close to call with the highest score, the cheapest
 * (boards known to fit; where none is, see candidatesOf). "lowest-price": cheapest among the same. "step-between": priced
 * between these two, and the most points above the straight line from one to the other. "most-room": most places left.
 * "also-good": next by score, unless a better one costs no more. "check-first": would be the best match, if what cannot be
 * told turns out well, or fills a short list.
 */
export type Role = "best-match" | "lowest-price" | "step-between" | "most-room" | "also-good" | "check-first";

export interface ShortlistRoles {
	/** At most five boards, in the order to look at them; what else a board is stands in `also`. */
	readonly roles: ReadonlyMap<Ranked, Role>;
	readonly also: ReadonlyMap<Ranked, readonly Role[]>;
	/** The boards too close to call with the best match, it among them; empty where it stands alone. */
	readonly anyOf: readonly Ranked[];
}

const mostListed = 5;
/** Of these at most so many are boards a person typed in, whatever their place. */
const mostOwn = 2;
/** Places are counted among so many boards at most, those with most points. */
const mostCounted = 40;

/**
 * @param candidates the boards that may lead, best first
 * @param ranked all boards left, best first
 */
export function rolesOf(candidates: readonly Ranked[], ranked: readonly Ranked[], samples: Samples): ShortlistRoles {
	const roles = new Map<Ranked, Role>();
	const also = new Map<Ranked, Role[]>();
	const top = candidates[0];
	if (!top) return { roles, also, anyOf: [] };
	const give = (entry: Ranked | undefined, role: Role) => {
		if (!entry) return;
		if (roles.has(entry)) also.set(entry, [...(also.get(entry) ?? []), role]);
		else if (roles.size < mostListed) roles.set(entry, role);
	};
	const tied = candidates.filter((entry) => entry === top || tooCloseToCall(top, entry, samples)).sort(byPrice);
	const best = tied[0] ?? top;
	give(best, "best-match");
	const priced = pricedAs(best, candidates);
	const cheapest = [...priced].sort(byPrice)[0];
	// What costs the same as the cheapest is no news of the best match.
	if (cheapest && (cheapest !== best || priced.length > 1)) give(cheapest, "lowest-price");
	give(cheapest && stepBetween(cheapest, best, priced), "step-between");
	give(roomiest(candidates, best), "most-room");
	// The board that the lead is held against can be looked at too.
	const nearest = nearestRival(best, candidates, samples);
	if (nearest && !roles.has(nearest) && !isBeaten(nearest, candidates, samples)) give(nearest, "also-good");
	const others = ranked.filter((entry) => !candidates.includes(entry));
	give(
		others.find((entry) => byScore(entry, best) < 0),
		"check-first",
	);
	for (const entry of ownAmongInvented(ranked).slice(0, mostOwn))
		if (!roles.has(entry)) give(entry, candidates.includes(entry) ? "also-good" : "check-first");
	for (const entry of [...tied, ...candidates])
		if (!roles.has(entry) && !isBeaten(entry, candidates, samples)) give(entry, "also-good");
	// A short list is filled with boards that may fit, so that none is forgotten for a fact that can be found out.
	for (const entry of others) if (!roles.has(entry)) give(entry, "check-first");
	return { roles, also, anyOf: tied.length > 1 ? tied : [] };
}

/** Rivals are looked for among so many boards with most points. */
const mostRivals = 20;

/**
 * The board that comes nearest to the best match: of those that no better one undercuts, since nobody would take a board
 * that costs more and has fewer points; where there are no others, of all.
 */
export function nearestRival(best: Ranked, candidates: readonly Ranked[], samples: Samples): Ranked | null {
	const some = candidates.slice(0, mostRivals);
	const rivals = some.filter((entry) => entry === best || !isBeaten(entry, some, samples));
	return nearestTo(best, rivals, samples) ?? nearestTo(best, some, samples);
}

/** Those with a price in the best match's currency; where it has none, in the first one that is known. */
function pricedAs(best: Ranked, candidates: readonly Ranked[]): readonly Ranked[] {
	const currency = (best.price ?? candidates.find(({ price }) => price)?.price)?.currency;
	return candidates.filter(({ price }) => price && price.currency === currency);
}

/** Dearer than the cheapest and cheaper than the best, and worth the most beside the straight line between the two. */
function stepBetween(cheapest: Ranked, best: Ranked, priced: readonly Ranked[]): Ranked | undefined {
	if (!cheapest.price || !best.price || best.price.minor <= cheapest.price.minor) return undefined;
	const [from, to] = [cheapest.price.minor, best.price.minor];
	const above = ({ price, expected }: Ranked) =>
		expected -
		(cheapest.expected + ((best.expected - cheapest.expected) * ((price?.minor ?? from) - from)) / (to - from));
	return priced
		.filter(
			({ price, expected }) =>
				price && price.minor > from && price.minor < to && expected - cheapest.expected >= samePoints,
		)
		.sort((one, other) => above(other) - above(one) || byPrice(one, other))[0];
}

/** The board with more places left than the best match has; of several the better one. None is named for a tie. */
function roomiest(candidates: readonly Ranked[], best: Ranked): Ranked | undefined {
	const counted = candidates.slice(0, mostCounted).map((entry) => ({ entry, places: placesLeft(entry.judged) }));
	const most = Math.max(...counted.map(({ places }) => places));
	const atMost = counted.filter(({ places }) => places === most);
	// Where most boards have as many, having them is nothing to name one for.
	if (most <= 0 || atMost.length * 2 > counted.length) return undefined;
	return (atMost.find(({ entry }) => entry === best) ?? atMost[0])?.entry;
}

/** Real boards that a person typed in beside the demonstration's: those they are thinking about. */
function ownAmongInvented(ranked: readonly Ranked[]): readonly Ranked[] {
	const own = ranked.filter(({ judged }) => judged.board.invented !== true);
	return own.length < ranked.length ? own : [];
}

/** Whether another board is better, by more than is too close to call, and costs no more; the same currency only. */
function isBeaten(entry: Ranked, candidates: readonly Ranked[], samples: Samples): boolean {
	return candidates.some(
		(other) =>
			other.price !== null &&
			entry.price !== null &&
			other.price.currency === entry.price.currency &&
			other.price.minor <= entry.price.minor &&
			other.expected > entry.expected &&
			!tooCloseToCall(other, entry, samples),
	);
}
