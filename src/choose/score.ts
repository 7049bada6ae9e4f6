import { allCriteria } from "../criteria/all-criteria.ts";
import type { Criterion, Measure } from "../criteria/define-criterion.ts";
import { centroidOfTiers } from "../maths/centroid-of-tiers.ts";
import { exactly, type Interval, mid } from "../maths/interval.ts";
import { once } from "../maths/once.ts";
import { valueOverInterval } from "../maths/piecewise-linear.ts";
import type { BuildFacts } from "../parts/build.ts";
import { addFact } from "../parts/fact-path.ts";
import type { RuleSubject } from "../rules/run-rule.ts";

/** One criterion's share in a board's score. */
export interface ScorePart {
	readonly criterionId: string;
	/** 0 to 1; all weights of one score sum to 1. */
	readonly weight: number;
	/** 0 to 1 on the criterion's fixed scale. */
	readonly value: Interval & { readonly mid: number };
	/** The value in each of the worlds that the board was measured in, in their order; empty where nothing was measured. */
	readonly byWorld: readonly Interval[];
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

/** What the criteria say of one board in each of some worlds; null where a criterion says nothing. */
export type MeasuredBoard = ReadonlyMap<string, readonly (Measure | null)[]>;

/** Measures a board in the worlds where it is possible; criteria that say nothing in any of them are left out. */
export function measureBoard(subject: RuleSubject, worlds: readonly BuildFacts[]): MeasuredBoard {
	const measured = new Map<string, readonly (Measure | null)[]>();
	for (const criterion of allCriteria) {
		const measures = worlds.map((world) => measureIn(criterion, subject, world));
		if (measures.some((measure) => measure !== null)) measured.set(criterion.id, measures);
	}
	return measured;
}

/**
 * Scores a measured board. Price has no part in it. Every board is scored on the same criteria: where one says nothing of
 * this board but counts for others, its value is anything between nothing and all.
 *
 * @param weights by criterion id, as weightsFor gives them for the criteria that count
 */
export function scoreOf(measured: MeasuredBoard, weights: ReadonlyMap<string, number>): Score {
	const parts = allCriteria.flatMap((criterion): ScorePart[] => {
		const weight = weights.get(criterion.id);
		if (weight === undefined) return [];
		const measures = measured.get(criterion.id) ?? [];
		const known = measures.filter((measure) => measure !== null);
		const values = known.map(({ low, high }) => valueOverInterval(criterion.scale, { low, high }));
		const value = known.length > 0 ? hull(values) : { low: 0, high: 1 };
		const ends = { low: criterion.scale[0]?.[0] ?? 0, high: criterion.scale.at(-1)?.[0] ?? 0 };
		let at = 0;
		const byWorld = measures.map((measure) => (measure === null ? value : (values[at++] ?? value)));
		const missing = once(() => [...new Set(known.flatMap((measure) => measure.missing))]);
		const mean = byWorld.reduce((sum, one) => sum + mid(one), 0) / byWorld.length;
		return [
			{
				criterionId: criterion.id,
				weight,
				value: { ...value, mid: byWorld.length > 0 ? mean : mid(value) },
				byWorld,
				measure: {
					...(known.length > 0
						? hull(known)
						: { low: Math.min(ends.low, ends.high), high: Math.max(ends.low, ends.high) }),
					// To find out what would settle a plan takes many plans more; it is told of a few boards only.
					get missing() {
						return missing();
					},
					...noteOf(known),
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

/** Scores one board by itself, on the criteria that say something of it; see scoreOf for many boards. */
export function scoreBoard(subject: RuleSubject, worlds: readonly BuildFacts[]): Score {
	const measured = measureBoard(subject, worlds);
	const counting = allCriteria.filter(({ id }) => measured.has(id));
	return scoreOf(measured, weightsFor(worlds[0] ?? subject.facts, counting));
}

/** What one criterion says of a board with one build. */
export function measureIn(criterion: Criterion, subject: RuleSubject, facts: BuildFacts): Measure | null {
	const values: Record<string, unknown> = {};
	const inWorld = subject.facts === facts ? subject : { ...subject, facts };
	for (const path of criterion.reads) addFact(values, path, inWorld);
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
