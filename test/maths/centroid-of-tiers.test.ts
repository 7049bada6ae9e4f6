import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { centroidOfTiers } from "../../src/maths/centroid-of-tiers.ts";
import { rankOrderCentroid } from "../../src/maths/rank-weights.ts";

/** Up to twelve distinct keys dealt out to up to four tiers and a free group. */
const answers = fc.array(fc.integer({ min: 0, max: 4 }), { minLength: 1, maxLength: 12 }).map((groups) => ({
	tiers: [0, 1, 2, 3].map((tier) => groups.flatMap((group, key) => (group === tier ? [key] : []))),
	free: groups.flatMap((group, key) => (group === 4 ? [key] : [])),
	count: groups.length,
}));

describe("centroid of tiers", () => {
	test("gives every key a weight above 0, and they sum to 1", () => {
		fc.assert(
			fc.property(answers, ({ tiers, free, count }) => {
				const weights = [...centroidOfTiers(tiers, free).values()];
				expect(weights).toHaveLength(count);
				expect(Math.min(...weights)).toBeGreaterThan(0);
				expect(weights.reduce((a, b) => a + b)).toBeCloseTo(1, 12);
			}),
		);
	});

	test("weighs a higher tier more, a tier's members alike, a free key 1/n", () => {
		fc.assert(
			fc.property(answers, ({ tiers, free, count }) => {
				const weights = centroidOfTiers(tiers, free);
				const perTier = tiers.map((tier) => [...new Set(tier.map((key) => weights.get(key)))]);
				for (const distinct of perTier) expect(distinct.length).toBeLessThanOrEqual(1);
				const falling = perTier.flat() as number[];
				for (const [place, weight] of falling.entries()) expect(weight).toBeGreaterThan(falling[place + 1] ?? 0);
				for (const key of free) expect(weights.get(key)).toBeCloseTo(1 / count, 12);
			}),
		);
	});

	test("an empty tier changes nothing", () => {
		expect(centroidOfTiers([["a"], [], ["b", "c"], []], ["d"])).toEqual(centroidOfTiers([["a"], ["b", "c"]], ["d"]));
	});

	test("one key a tier is the rank order centroid", () => {
		expect([...centroidOfTiers([["a"], ["b"], ["c"]], []).values()]).toEqual(rankOrderCentroid(3));
	});

	test("all in one tier, or all free, weigh the same", () => {
		for (const weight of centroidOfTiers([[], ["a", "b", "c"]], []).values()) expect(weight).toBeCloseTo(1 / 3, 12);
		expect(centroidOfTiers([], ["a", "b"])).toEqual(
			new Map([
				["a", 0.5],
				["b", 0.5],
			]),
		);
	});

	test("no keys, no weights", () => {
		expect(centroidOfTiers([[], []], []).size).toBe(0);
	});

	test("refuses a key that stands twice", () => {
		expect(() => centroidOfTiers([["a"], ["a"]], [])).toThrow("a criterion stands twice: a");
		expect(() => centroidOfTiers([["a"]], ["a"])).toThrow("a criterion stands twice: a");
	});
});
