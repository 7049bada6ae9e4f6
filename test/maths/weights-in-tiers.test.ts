import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { centroidOfTiers } from "../../src/maths/centroid-of-tiers.ts";
import { seededDraws } from "../../src/maths/seeded-draws.ts";
import { simplexSamples } from "../../src/maths/simplex-samples.ts";
import { weightsInTiers } from "../../src/maths/weights-in-tiers.ts";
import { allowedOff, meanOf, shareOf } from "./draw-checks.ts";

/** Up to eight criteria dealt out to three tiers (0 to 2) and a free group (3). */
const groupings = fc.array(fc.integer({ min: 0, max: 3 }), { minLength: 1, maxLength: 8 });
const regionOf = (groups: readonly number[]) => ({
	tiers: [0, 1, 2].map((tier) => groups.flatMap((group, criterion) => (group === tier ? [criterion] : []))),
	free: groups.flatMap((group, criterion) => (group === 3 ? [criterion] : [])),
});

const column = (...values: number[]) => Float64Array.from(values);

test("deals the sorted values tier by tier, in a tier by the values it had, and leaves free ones", () => {
	const columns = [column(0.05), column(0.3), column(0.1), column(0.15), column(0.4)];
	// Free: 4. Tiered values, falling: 0.3, 0.15, 0.1, 0.05. The first tier holds 2 and 0, of which 2 had more.
	expect(weightsInTiers(columns, [[2, 0], [], [1, 3]], [4])).toEqual([
		column(0.15),
		column(0.1),
		column(0.3),
		column(0.05),
		column(0.4),
	]);
});

test("leaves the columns given as they were, and shares none", () => {
	const columns = [column(0.2, 0.5), column(0.8, 0.5)];
	const dealt = weightsInTiers(columns, [[0]], [1]);
	(dealt[1] as Float64Array)[0] = 7;
	expect(columns).toEqual([column(0.2, 0.5), column(0.8, 0.5)]);
});

test("a higher tier never weighs less, each sample's values stay the same, free ones stay where they were", () => {
	fc.assert(
		fc.property(groupings, fc.integer({ min: 0, max: 1000 }), (groups, seed) => {
			const { tiers, free } = regionOf(groups);
			const raw = simplexSamples(seededDraws(seed), groups.length, 20);
			const dealt = weightsInTiers(raw, tiers, free);
			const at = (columns: readonly Float64Array[], sample: number) =>
				columns.map((values) => values[sample] as number);
			for (let sample = 0; sample < 20; sample++) {
				const weights = at(dealt, sample);
				expect([...weights].sort()).toEqual(at(raw, sample).sort());
				for (const criterion of free) expect(weights[criterion]).toBe(raw[criterion]?.[sample]);
				const filled = tiers.filter((tier) => tier.length > 0).map((tier) => tier.map((one) => weights[one] as number));
				filled.slice(1).forEach((tier, index) => {
					expect(Math.max(...tier)).toBeLessThanOrEqual(Math.min(...(filled[index] as number[])));
				});
			}
		}),
	);
});

test("all free, or all in one tier, changes nothing", () => {
	const raw = simplexSamples(seededDraws(1), 4, 50);
	expect(weightsInTiers(raw, [], [0, 1, 2, 3])).toEqual(raw);
	expect(weightsInTiers(raw, [[], [2, 0, 3, 1]], [])).toEqual(raw);
});

describe("over 10 000 samples", () => {
	const samples = 10_000;
	/** Four standard errors of a mean: no weight varies more than that of two criteria, by 1/12. */
	const meanOff = 4 * Math.sqrt(1 / 12 / samples);

	test("the means are those of the centroid", () => {
		const raw = Array.from({ length: 9 }, (_, criteria) => simplexSamples(seededDraws(1), criteria, samples));
		fc.assert(
			fc.property(groupings, (groups) => {
				const { tiers, free } = regionOf(groups);
				const centroid = centroidOfTiers(tiers, free);
				const dealt = weightsInTiers(raw[groups.length] as readonly Float64Array[], tiers, free);
				dealt.forEach((weights, criterion) => {
					expect(Math.abs(meanOf(weights) - (centroid.get(criterion) as number))).toBeLessThan(meanOff);
				});
			}),
			{ numRuns: 40 },
		);
	});

	test("inside a tier each order comes up as often, though nothing is drawn", () => {
		const dealt = weightsInTiers(simplexSamples(seededDraws(2), 4, samples), [[3], [0, 2], [1]], []);
		const [first, , third] = dealt as [Float64Array, Float64Array, Float64Array];
		const share = shareOf(samples, (sample) => (first[sample] as number) > (third[sample] as number));
		expect(Math.abs(share - 0.5)).toBeLessThan(allowedOff(0.5, samples));
	});

	test("they are spread as weights that are thrown away where they break the order", () => {
		const raw = simplexSamples(seededDraws(3), 4, 60_000);
		const [a, b, c] = raw as [Float64Array, Float64Array, Float64Array];
		const kept = [...a.keys()].filter((at) => Math.min(a[at] as number, b[at] as number) >= (c[at] as number));
		const dealt = weightsInTiers(raw, [[0, 1], [2]], [3]);
		for (const limit of [0.1, 0.25, 0.4]) {
			raw.forEach((weights, criterion) => {
				const thrown = kept.filter((at) => (weights[at] as number) > limit).length / kept.length;
				const ours = shareOf(60_000, (at) => (dealt[criterion]?.[at] as number) > limit);
				// Both are drawn, the one with fewer samples.
				expect(Math.abs(ours - thrown)).toBeLessThan(1.5 * allowedOff(thrown, kept.length) + 1e-3);
			});
		}
	});
});

test.each([
	["one is in two tiers", [[0], [0, 1]], []],
	["one is free and in a tier", [[0, 1]], [1]],
	["one is nowhere", [[0]], []],
	["there is no such column", [[0]], [2]],
	["it is no whole number", [[0]], [0.5]],
])("refuses: %s", (_, tiers, free) => {
	expect(() => weightsInTiers([column(0.5), column(0.5)], tiers, free)).toThrow(
		`must name each of 2 columns once: ${[...tiers.flat(), ...free].join(", ")}`,
	);
});
