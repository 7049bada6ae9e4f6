import fc from "fast-check";
import { exactly, type Interval } from "../../src/maths/interval.ts";
import type { WeightRegion } from "../../src/maths/weight-region.ts";

/** One to so many criteria, each dealt out to one of up to four tiers or left free. */
export function regions(most = 8, least = 1): fc.Arbitrary<WeightRegion> {
	return fc.array(fc.integer({ min: 0, max: 4 }), { minLength: least, maxLength: most }).map((groups) => ({
		tiers: [0, 1, 2, 3].map((tier) => groups.flatMap((group, index) => (group === tier ? [index] : []))),
		free: groups.flatMap((group, index) => (group === 4 ? [index] : [])),
	}));
}

export function criteriaCount({ tiers, free }: WeightRegion): number {
	return tiers.flat().length + free.length;
}

/** Allowed weights, made of drawn numbers by sorting them: by no way that the code under test knows. */
export function allowedWeights({ tiers, free }: WeightRegion, drawn: readonly number[]): number[] {
	const sum = drawn.reduce((one, other) => one + other, 0);
	const weights = drawn.map((value) => value / sum);
	const tiered = tiers.flat();
	const falling = tiered.map((index) => weights[index] as number).sort((one, other) => other - one);
	const dealt = [...weights];
	for (const [place, index] of tiered.entries()) dealt[index] = falling[place] as number;
	for (const index of free) dealt[index] = weights[index] as number;
	return dealt;
}

/** Whether weights obey the region, by its definition alone. */
export function obeys({ tiers }: WeightRegion, weights: readonly number[]): boolean {
	const sum = weights.reduce((one, other) => one + other, 0);
	const isFalling = tiers.every((tier, at) =>
		tier.every((higher) =>
			tiers
				.slice(at + 1)
				.flat()
				.every((lower) => (weights[higher] as number) >= (weights[lower] as number) - 1e-12),
		),
	);
	return Math.abs(sum - 1) < 1e-12 && weights.every((weight) => weight >= 0) && isFalling;
}

/** Tenths from 0 to 1, so that equal values are common. */
export const tenths = fc.integer({ min: 0, max: 10 }).map((tenth) => tenth / 10);

/** A value that is known or lies between two tenths. */
export const ranges: fc.Arbitrary<Interval> = fc.oneof(
	tenths.map(exactly),
	fc.tuple(tenths, tenths).map(([one, other]) => ({ low: Math.min(one, other), high: Math.max(one, other) })),
);

/** Positive numbers for weights, never near enough to 0 to lose the others. */
export const positive = fc.double({ min: 1e-3, max: 1, noNaN: true });

/** Numbers from 0 up to 1 by a small generator of its own (a linear congruence, 2^32; Numerical Recipes, from memory). */
export function plainDraws(seed: number): () => number {
	let state = seed >>> 0;
	// Two steps a draw: the high halves of both, since the low bits of such a generator repeat.
	const half = () => {
		state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
		return state >>> 16;
	};
	return () => (half() * 65536 + half()) / 2 ** 32;
}
