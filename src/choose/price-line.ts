import {
	dominates,
	dominatesInPractice,
	type PricedRange,
	type PricedScore,
	possiblyUndominated,
	pricesOfPoint,
	undominated,
	upperHull,
} from "../maths/price-hull.ts";
import type { Board } from "../parts/board.ts";
import type { Money } from "../parts/money.ts";
import { type PartPrice, partPrice } from "../parts/part-price.ts";
import type { Advice } from "./advise.ts";
import type { Contribution } from "./comparison.ts";
import { cardPrices, type ForcedCosts, forcedCosts } from "./forced-costs.ts";
import { samePoints } from "./how-sure.ts";
import type { BoardJudgement, Judgement } from "./judge.ts";
import type { Score } from "./score.ts";

/** A board with its price and its points. Sums are in the currency's smallest unit. */
export interface LinePoint {
	readonly board: Board;
	readonly own: PartPrice;
	readonly costs: ForcedCosts;
	/** Its own price and that of what it forces, as far as that is known. */
	readonly minor: number;
	/** What it forces at a price nobody knows, beyond what all that are compared force: `minor` is then the least. */
	readonly besides: readonly string[];
	/** Whether it surely fits. */
	readonly isSure: boolean;
	readonly score: Score;
	/** The score in whole points, as it is shown: boards are compared by these, so that all that is told adds up. */
	readonly points: number;
}

/** From one board of the line to the next dearer one. */
export interface LineStep {
	readonly from: LinePoint;
	readonly to: LinePoint;
	readonly moreMinor: number;
	/** Whole points of 100. */
	readonly morePoints: number;
	/** What each further point costs, in the smallest unit. Rises from step to step. */
	readonly minorPerPoint: number;
	/** What each criterion adds to the points, the largest change first; unrounded, of 100. */
	readonly changes: readonly Contribution[];
}

/**
 * A board that another one makes needless. "no-dearer": that one costs no more, and is better or as good for less.
 * "about-as-good": it costs less and has hardly fewer points. "hardly-dearer": it costs a little more and is clearly better.
 * "alike": same price, about the same points.
 */
export interface Beaten {
	readonly point: LinePoint;
	readonly by: LinePoint;
	readonly how: "no-dearer" | "about-as-good" | "hardly-dearer" | "alike";
	/** However the unknown facts turn out. */
	readonly isCertain: boolean;
}

/** What more money buys. */
export interface PriceLine {
	/** Of all sums; null where no board left has a price. */
	readonly currency: string | null;
	/** Every board left with a price in this currency, the cheapest first. */
	readonly points: readonly LinePoint[];
	/** Those that are the best for some worth of a point: the line, the cheapest first. */
	readonly hull: readonly LinePoint[];
	readonly steps: readonly LineStep[];
	/** Beaten by none, but below the line. */
	readonly below: readonly LinePoint[];
	readonly beaten: readonly Beaten[];
	/** Not beaten, and not held against the others: whether it fits, or what it costs in all, is not known. */
	readonly unsettled: readonly LinePoint[];
	/** What each board that is compared makes one buy at a price nobody knows: the same for all, so it is left out. */
	readonly allForce: readonly string[];
	/** Each board forces something of its own at a price nobody knows; all of that is left out of the line. */
	readonly leavesOut: boolean;
	readonly noPrice: readonly Board[];
	readonly otherCurrency: readonly { readonly board: Board; readonly price: Money }[];
}

/** A board up to this share dearer costs hardly more, and one better by so many points is clearly better (own convention). */
const hardlyDearer = { priceShare: 0.02, clearly: 5 } as const;

/**
 * Price against score for all boards left. Those that surely fit are compared; where none does, all are. A board never
 * beats another on a price that leaves out more than the other's does.
 *
 * @param ranking the boards left with their scores, as advise gives them
 */
export function priceLine({ boards, build, market }: Judgement, ranking: Advice["ranking"]): PriceLine {
	const judgedOf = new Map(boards.map((judged) => [judged.board.id, judged]));
	const left = ranking.flatMap(({ boardId, score }) => {
		const judged = judgedOf.get(boardId);
		return judged ? [{ judged, score, own: partPrice(judged.subject.board ?? judged.board) }] : [];
	});
	const priced = left.flatMap(({ own, ...rest }) => (own ? [{ ...rest, own }] : []));
	const currency = mostCommon(priced.map(({ own }) => own.price.currency));
	const cardOf = cardPrices(market, currency ?? "");
	const costed = priced
		.filter(({ own }) => own.price.currency === currency)
		.map(({ judged, score, own }) => {
			const worlds = judged.possibleWorlds.flatMap((index) => build.worlds[index]?.facts ?? []);
			const costs = forcedCosts(judged.subject, worlds, cardOf);
			const minor = costs.priced.reduce((sum, extra) => sum + extra.minor, own.price.minor);
			return { judged, score, own, costs, minor };
		});
	const anySure = costed.some(({ judged }) => isSure(judged));
	const leading = costed.filter(({ judged }) => !anySure || isSure(judged));
	const allForce = inAll(leading.map(({ costs }) => unknownCosts(costs)));
	const points = costed
		.map(
			({ judged, ...rest }): LinePoint => ({
				...rest,
				board: judged.board,
				isSure: isSure(judged),
				points: Math.round(rest.score.mid),
				besides: unknownCosts(rest.costs).filter((words) => !allForce.includes(words)),
			}),
		)
		.sort(byPrice);
	const mayLead = points.filter((point) => !anySure || point.isSure);
	const closed = mayLead.filter(({ besides }) => besides.length === 0);
	const leavesOut = closed.length === 0 && mayLead.length > 0;
	const compared = leavesOut ? mayLead : closed;
	return {
		currency,
		points,
		...lineThrough(points, compared),
		allForce,
		leavesOut,
		noPrice: left.filter(({ own }) => !own).map(({ judged }) => judged.board),
		otherCurrency: priced
			.filter(({ own }) => own.price.currency !== currency)
			.map(({ judged, own }) => ({ board: judged.board, price: own.price })),
	};
}

function lineThrough(
	points: readonly LinePoint[],
	compared: readonly LinePoint[],
): Pick<PriceLine, "hull" | "steps" | "below" | "beaten" | "unsettled"> {
	const best = pick(compared, undominated(compared.map(placeOf)));
	// Each only by what stays: else a row of small steps could push out a board that is far from the one in its place.
	const worthIt = notBeaten([...best].sort(byPrice));
	const kept = [...notBeaten(worthIt.toReversed())].sort(byPrice);
	const corners = upperHull(kept.map(placeOf));
	const hull = pick(kept, corners);
	const rates = pricesOfPoint(kept.map(placeOf), corners);
	const mayHold = new Set(pick(points, possiblyUndominated(points.map((point) => rangeOf(point, compared)))));
	const beaten = points.flatMap((point): Beaten[] => {
		if (kept.includes(point)) return [];
		const by = bestThatBeats(point, kept) ?? bestThatBeats(point, compared);
		if (!by) return [];
		const least = by.other.score.low + (by.how === "alike" || by.how === "about-as-good" ? samePoints : 0);
		const isCertain = !mayHold.has(point) || least >= point.score.high;
		return [{ point, by: by.other, how: by.how, isCertain }];
	});
	const isBeaten = new Set(beaten.map(({ point }) => point));
	return {
		hull,
		steps: hull.slice(1).map((to, index) => stepBetween(hull[index] ?? to, to, rates[index] ?? 0)),
		below: kept.filter((point) => !hull.includes(point)),
		beaten,
		unsettled: points.filter((point) => !kept.includes(point) && !isBeaten.has(point)),
	};
}

/** Those that none of the ones taken before beats, in the order given. */
function notBeaten(points: readonly LinePoint[]): readonly LinePoint[] {
	const taken: LinePoint[] = [];
	for (const point of points) if (!taken.some((other) => beats(other, point) !== null)) taken.push(point);
	return taken;
}

function bestThatBeats(point: LinePoint, others: readonly LinePoint[]) {
	return others
		.flatMap((other) => {
			const how = beats(other, point);
			return how ? [{ other, how }] : [];
		})
		.sort((one, two) => two.other.points - one.other.points || byPrice(one.other, two.other))[0];
}

/** How the first makes the second needless; null where it does not. */
function beats(one: LinePoint, other: LinePoint): Beaten["how"] | null {
	if (one === other || one.besides.some((words) => !other.besides.includes(words))) return null;
	const [place, otherPlace] = [placeOf(one), placeOf(other)];
	const isAlike = one.minor === other.minor && Math.abs(one.points - other.points) < samePoints;
	if (isAlike && other.isSure === one.isSure && other.besides.length === 0)
		return byPrice(one, other) < 0 ? "alike" : null;
	if (dominates(place, otherPlace)) return "no-dearer";
	if (one.minor < other.minor && other.points - one.points < samePoints) return "about-as-good";
	return dominatesInPractice(place, otherPlace, hardlyDearer) ? "hardly-dearer" : null;
}

function stepBetween(from: LinePoint, to: LinePoint, minorPerPoint: number): LineStep {
	return {
		from,
		to,
		moreMinor: to.minor - from.minor,
		morePoints: to.points - from.points,
		minorPerPoint,
		changes: to.score.parts
			.map(({ criterionId, weight, value }): Contribution => {
				const before = from.score.parts.find((part) => part.criterionId === criterionId);
				return { criterionId, points: 100 * weight * (value.mid - (before?.value.mid ?? 0)) };
			})
			.sort((one, other) => Math.abs(other.points) - Math.abs(one.points)),
	};
}

const isSure = ({ verdict }: BoardJudgement) => verdict === "fits";
const unknownCosts = ({ unpriced, perhaps }: ForcedCosts) => [
	...unpriced,
	...perhaps.map((words) => `perhaps ${words}`),
];
const placeOf = ({ minor, points }: LinePoint): PricedScore => ({ price: minor, score: points });

/** A board that is not compared may cost more than it seems or not fit at all, so it surely beats none. */
function rangeOf(point: LinePoint, compared: readonly LinePoint[]): PricedRange {
	const high = compared.includes(point) ? point.minor : Number.POSITIVE_INFINITY;
	return { price: { low: point.minor, high }, score: { low: point.score.low, high: point.score.high } };
}

function byPrice(one: LinePoint, other: LinePoint): number {
	return (
		one.minor - other.minor ||
		other.score.mid - one.score.mid ||
		byText(one.board.name, other.board.name) ||
		byText(one.board.id, other.board.id)
	);
}

function byText(one: string, other: string): number {
	return one === other ? 0 : one < other ? -1 : 1;
}

function pick<T>(list: readonly T[], indices: readonly number[]): readonly T[] {
	return indices.flatMap((index) => list[index] ?? []);
}

function inAll(lists: readonly (readonly string[])[]): readonly string[] {
	return (lists[0] ?? []).filter((one) => lists.every((list) => list.includes(one)));
}

/** Of as many the first by name, never by the order given. */
function mostCommon(names: readonly string[]): string | null {
	const count = (name: string) => names.filter((one) => one === name).length;
	return [...new Set(names)].toSorted((one, other) => count(other) - count(one) || byText(one, other))[0] ?? null;
}
