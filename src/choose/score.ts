import { allCriteria } from "../criteria/all-criteria.ts";
import type { Criterion, Measure } from "../criteria/define-criterion.ts";
import { centroidOfTiers } from "../maths/centroid-of-tiers.ts";
import { exactly, type Interval, mid } from "../maths/interval.ts";
import { valueOverInterval } from "../maths/piecewise-linear.ts";
import type { BuildFacts } from "../parts/build.ts";
import { lookUpFact } from "../parts/fact-path.ts";
import type { RuleSubject } from "../rules/run-rule.ts";

/** One criterion's share in a board's score. */
export interface ScorePart {
	readonly criterionId: string;
	/** 0 to 1; all weights of one score sum to 1. */
	readonly weight: number;
	/** 0 to 1 on the criterion's fixed scale. */
	readonly value: Interval & { readonly mid: number };
	readonly measure: Measure;
}

/** A score in points of 100, unrounded; low and high bound it over everything that is not known. */
export interface Score {
	readonly low: number;
	readonly mid: number;
	readonly high: number;
	readonly parts: readonly ScorePart[];
}

/**
 * The weights that a person's importance answers allow on average: the centroid of the region of the simplex. Equal
 * answers share their places; an unsettled criterion is left free; "not at all" drops it.
 *
 * @returns weights by criterion id, summing to 1; empty when nothing matters
 */
export function weightsFor(facts: BuildFacts, criteria: readonly Criterion[]): ReadonlyMap<string, number> {
	const placed = (tier: string) => criteria.filter(({ id }) => facts.importance[id] === tier).map(({ id }) => id);
	const free = criteria.filter(({ id }) => facts.importance[id] === undefined).map(({ id }) => id);
	return centroidOfTiers([placed("a-lot"), placed("somewhat"), placed("a-little")], free);
}

/**
 * Scores a board in the worlds where it is possible. Price has no part in it. A criterion that says nothing about this
 * build is left out for every board alike.
 */
export function scoreBoard(subject: RuleSubject, worlds: readonly BuildFacts[]): Score {
	const facts = worlds[0] ?? subject.facts;
	const measured = allCriteria.flatMap((criterion) => {
		const measures = worlds.map((world) => measureIn(criterion, subject, world)).filter((measure) => measure !== null);
		return measures.length > 0 ? [{ criterion, measures }] : [];
	});
	const weights = weightsFor(
		facts,
		measured.map(({ criterion }) => criterion),
	);
	const parts = measured.flatMap(({ criterion, measures }): ScorePart[] => {
		const weight = weights.get(criterion.id);
		if (weight === undefined) return [];
		const values = measures.map(({ low, high }) => valueOverInterval(criterion.scale, { low, high }));
		const value = hull(values);
		return [
			{
				criterionId: criterion.id,
				weight,
				value: { ...value, mid: values.reduce((sum, one) => sum + mid(one), 0) / values.length },
				measure: {
					...hull(measures),
					missing: [...new Set(measures.flatMap(({ missing }) => missing))],
					...noteOf(measures),
				},
			},
		];
	});
	const total = (of: (part: ScorePart) => number) => 100 * parts.reduce((sum, part) => sum + part.weight * of(part), 0);
	return {
		low: total(({ value }) => value.low),
		mid: total(({ value }) => value.mid),
		high: total(({ value }) => value.high),
		parts,
	};
}

function measureIn(criterion: Criterion, subject: RuleSubject, facts: BuildFacts): Measure | null {
	const values: Record<string, unknown> = {};
	for (const path of criterion.reads) {
		const found = lookUpFact({ ...subject, facts }, path);
		if (found.known) values[path] = found.value;
	}
	return criterion.measure(values);
}

/** A note that holds in every world. */
function noteOf(measures: readonly Measure[]): Pick<Measure, "note"> {
	const [first, ...others] = measures.map(({ note }) => note);
	return first !== undefined && others.every((note) => note === first) ? { note: first } : {};
}

function hull(intervals: readonly Interval[]): Interval {
	return intervals.reduce(
		(whole, { low, high }) => ({ low: Math.min(whole.low, low), high: Math.max(whole.high, high) }),
		intervals[0] ?? exactly(0),
	);
}
