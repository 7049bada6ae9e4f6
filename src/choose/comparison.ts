import { mainReasons } from "../maths/contributions.ts";
import { crossoverWeight } from "../maths/crossover-weight.ts";
import { greatestRegrets } from "../maths/regret.ts";
import type { BuildFacts } from "../parts/build.ts";
import { aheadOf, type Sureness, surenessOf, tooCloseToCall } from "./how-sure.ts";
import type { Ranked } from "./ranked-boards.ts";
import { type Ahead, regionOf, type Samples } from "./samples.ts";

/** How one board stands to another. All points are of 100 and unrounded. */
export interface Comparison {
	readonly boardId: string;
	readonly otherId: string;
	/** Points of the first beyond the second; negative where the second has more. */
	readonly gap: number;
	/** The same in the whole points that both boards show. */
	readonly shownGap: number;
	/** What each criterion adds to the gap, in the order of the criteria; sums to it. */
	readonly contributions: readonly Contribution[];
	/** Of the criteria on which the one with more points is better: the fewest that outweigh all on which it is worse. */
	readonly enough: readonly string[];
	/** Where the one with more points loses most; null where it is worse in nothing that counts. */
	readonly worst: string | null;
	/** The smallest change of one importance that would turn the two round; null where none alone does. */
	readonly turns: Turn | null;
	/** How often the first is ahead of the second; null where nothing was drawn for one of them. */
	readonly ahead: Ahead | null;
	/** "too-close" also where they are hardly apart in points. */
	readonly sureness: Sureness;
}

export interface Contribution {
	readonly criterionId: string;
	readonly points: number;
}

/** Weights of one criterion, of 1, now and where two boards have the same points; the others keep their proportions. */
export interface Turn {
	readonly criterionId: string;
	readonly now: number;
	readonly at: number;
}

/** How sure it is that a board leads, held against the board that comes nearest to it. */
export interface Lead {
	readonly boardId: string;
	/** Null where no other board is compared with it. */
	readonly nearest: Comparison | null;
	/**
	 * The most points of 100 that another board may turn out to have more, over all weights that the answers allow and all
	 * that is not known of the boards; a board that fits only in some of the ways open answers can turn out counts whole.
	 */
	readonly regret: number;
	/** Boards with which it is too close to call, itself among them, in the order to take them; empty where there are none. */
	readonly anyOf: readonly string[];
	/** The criteria that were weighed as the person placed them, and those that were left free. */
	readonly restsOn: { readonly placed: readonly string[]; readonly free: readonly string[] };
}

export function comparisonOf(one: Ranked, other: Ranked, samples: Samples): Comparison {
	const contributions = one.score.parts.map(({ criterionId, weight, value }, index): Contribution => {
		const against = other.score.parts[index];
		return { criterionId, points: 100 * weight * (value.mid - (against?.value.mid ?? 0)) };
	});
	const gap = one.score.mid - other.score.mid;
	// Seen from the one with more points, so that its pluses have something to outweigh.
	const differences = contributions.map(({ points }) => (gap < 0 ? -points : points));
	const reasons = mainReasons(differences);
	const ahead = aheadOf(one, other, samples);
	return {
		boardId: one.judged.board.id,
		otherId: other.judged.board.id,
		gap,
		shownGap: Math.round(one.score.mid) - Math.round(other.score.mid),
		contributions,
		enough: (reasons?.pluses ?? []).flatMap((index) => contributions[index]?.criterionId ?? []),
		worst: reasons?.biggestMinus == null ? null : (contributions[reasons.biggestMinus]?.criterionId ?? null),
		turns: turnOf(one, other),
		ahead,
		sureness:
			tooCloseToCall(one, other, samples) || !ahead ? "too-close" : surenessOf(Math.max(ahead.share, 1 - ahead.share)),
	};
}

/** Of the criteria one by one the one whose importance has to change least for the two to change places. */
function turnOf(one: Ranked, other: Ranked): Turn | null {
	const weights = one.score.parts.map(({ weight }) => weight);
	const [first, second] = [one, other].map(({ score }) => score.parts.map(({ value }) => value.mid));
	if (!first || !second) return null;
	const turns = one.score.parts.flatMap(({ criterionId, weight }, index): Turn[] => {
		const at = crossoverWeight(weights, first, second, [index]);
		return at === null ? [] : [{ criterionId, now: weight, at }];
	});
	return turns.sort((a, b) => Math.abs(a.at - a.now) - Math.abs(b.at - b.now))[0] ?? null;
}

/**
 * @param best the first of the shortlist
 * @param candidates all boards that may lead
 * @param nearest the one it is held against
 * @param anyOf those too close to call with it
 */
export function leadOf(
	best: Ranked,
	candidates: readonly Ranked[],
	nearest: Ranked | null,
	anyOf: readonly Ranked[],
	samples: Samples,
	{ importance }: Pick<BuildFacts, "importance">,
): Lead {
	const criterionIds = best.score.parts.map(({ criterionId }) => criterionId);
	const isPlaced = (id: string) => importance[id] !== undefined;
	return {
		boardId: best.judged.board.id,
		nearest: nearest && comparisonOf(best, nearest, samples),
		regret: 100 * regretOf(best, candidates, { importance }),
		anyOf: anyOf.map(({ judged }) => judged.board.id),
		restsOn: {
			placed: criterionIds.filter(isPlaced),
			free: criterionIds.filter((id) => !isPlaced(id)),
		},
	};
}

/** Boards past this place have too little to expect to be the one regretted. */
const mostRegretted = 40;

function regretOf(best: Ranked, candidates: readonly Ranked[], facts: Pick<BuildFacts, "importance">): number {
	const others = candidates.filter((entry) => entry !== best).slice(0, mostRegretted);
	const ids = best.score.parts.map(({ criterionId }) => criterionId);
	if (others.length === 0 || ids.length === 0) return 0;
	const values = [best, ...others].map(({ score }) => score.parts.map(({ value }) => value));
	return greatestRegrets(regionOf(facts, ids), values)[0] ?? 0;
}

/** The board that is ahead of it most often; among those never drawn, the one with most points. */
export function nearestTo(best: Ranked, candidates: readonly Ranked[], samples: Samples): Ranked | null {
	const others = candidates.filter((entry) => entry !== best);
	const share = (entry: Ranked) => aheadOf(entry, best, samples)?.share ?? -1;
	return others.reduce<Ranked | null>(
		(nearest, entry) =>
			nearest === null ||
			share(entry) > share(nearest) ||
			(share(entry) === share(nearest) && entry.expected > nearest.expected)
				? entry
				: nearest,
		null,
	);
}
