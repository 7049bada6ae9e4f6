import { describe, expect, test } from "vitest";
import { centroidOfTiers } from "../../src/maths/centroid-of-tiers.ts";
import { rankOrderCentroid, rankReciprocal, rankSum } from "../../src/maths/rank-weights.ts";
import { swingWeights } from "../../src/maths/swing-weights.ts";

/** Half of the last printed digit, with a little room for binary fractions. */
const fourDecimals = 0.0000501;

function expectNear(ours: readonly number[], printed: readonly number[], tolerance: number): void {
	expect(ours).toHaveLength(printed.length);
	for (const [place, weight] of printed.entries()) {
		expect(Math.abs((ours[place] as number) - weight), `place ${place + 1}`).toBeLessThan(tolerance);
	}
}

describe('rank order centroid (Barron 1992, Edwards & Barron 1994, from memory; formula "Rank Order Centroid", read in a secondary text; table worked out in exact fractions)', () => {
	test.each([
		[[0.75, 0.25]],
		[[0.6111, 0.2778, 0.1111]],
		[[0.5208, 0.2708, 0.1458, 0.0625]],
		[[0.4567, 0.2567, 0.1567, 0.09, 0.04]],
		[[0.4083, 0.2417, 0.1583, 0.1028, 0.0611, 0.0278]],
		[[0.3704, 0.2276, 0.1561, 0.1085, 0.0728, 0.0442, 0.0204]],
		[[0.3397, 0.2147, 0.1522, 0.1106, 0.0793, 0.0543, 0.0335, 0.0156]],
		[[0.3143, 0.2032, 0.1477, 0.1106, 0.0828, 0.0606, 0.0421, 0.0262, 0.0123]],
		[[0.2929, 0.1929, 0.1429, 0.1096, 0.0846, 0.0646, 0.0479, 0.0336, 0.0211, 0.01]],
	])("%j", (printed) => {
		expectNear(rankOrderCentroid(printed.length), printed, fourDecimals);
	});

	test.each([
		[[11 / 18, 5 / 18, 1 / 9]],
		[[25 / 48, 13 / 48, 7 / 48, 1 / 16]],
		[[137 / 300, 77 / 300, 47 / 300, 9 / 100, 1 / 25]],
		[[49 / 120, 29 / 120, 19 / 120, 37 / 360, 11 / 180, 1 / 36]],
	])("exact fractions %j", (exact) => {
		expectNear(rankOrderCentroid(exact.length), exact, 1e-12);
	});
});

describe('rank sum (GITTA, "Suitability: Normalisation"; formula read in the document, table worked out)', () => {
	test.each([
		[[0.6667, 0.3333]],
		[[0.5, 0.3333, 0.1667]],
		[[0.4, 0.3, 0.2, 0.1]],
		[[0.3333, 0.2667, 0.2, 0.1333, 0.0667]],
		[[0.2857, 0.2381, 0.1905, 0.1429, 0.0952, 0.0476]],
		[[0.25, 0.2143, 0.1786, 0.1429, 0.1071, 0.0714, 0.0357]],
		[[0.2222, 0.1944, 0.1667, 0.1389, 0.1111, 0.0833, 0.0556, 0.0278]],
		[[0.2, 0.1778, 0.1556, 0.1333, 0.1111, 0.0889, 0.0667, 0.0444, 0.0222]],
		[[0.1818, 0.1636, 0.1455, 0.1273, 0.1091, 0.0909, 0.0727, 0.0545, 0.0364, 0.0182]],
	])("%j", (printed) => {
		expectNear(rankSum(printed.length), printed, fourDecimals);
	});

	test("four criteria exactly", () => {
		expectNear(rankSum(4), [0.4, 0.3, 0.2, 0.1], 1e-12);
	});
});

describe('rank reciprocal (GITTA, "Suitability: Normalisation"; formula read in the document, table worked out)', () => {
	test.each([
		[[0.6667, 0.3333]],
		[[0.5455, 0.2727, 0.1818]],
		[[0.48, 0.24, 0.16, 0.12]],
		[[0.438, 0.219, 0.146, 0.1095, 0.0876]],
		[[0.4082, 0.2041, 0.1361, 0.102, 0.0816, 0.068]],
		[[0.3857, 0.1928, 0.1286, 0.0964, 0.0771, 0.0643, 0.0551]],
		[[0.3679, 0.184, 0.1226, 0.092, 0.0736, 0.0613, 0.0526, 0.046]],
		[[0.3535, 0.1767, 0.1178, 0.0884, 0.0707, 0.0589, 0.0505, 0.0442, 0.0393]],
		[[0.3414, 0.1707, 0.1138, 0.0854, 0.0683, 0.0569, 0.0488, 0.0427, 0.0379, 0.0341]],
	])("%j", (printed) => {
		expectNear(rankReciprocal(printed.length), printed, fourDecimals);
	});

	test("four criteria exactly", () => {
		expectNear(rankReciprocal(4), [0.48, 0.24, 0.16, 0.12], 1e-12);
	});
});

test("swings 100, 80, 70, 30, 20, 10 (Goodwin & Wright, Decision Analysis for Management Judgment, ch. 3; rounded weights 32, 26, 23, 10, 6, 3 read in the document, decimals worked out)", () => {
	const weights = swingWeights([100, 80, 70, 30, 20, 10]).map((weight) => 100 * weight);
	expectNear(weights, [32.26, 25.81, 22.58, 9.68, 6.45, 3.23], 0.0051);
	expect(weights.map(Math.round)).toEqual([32, 26, 23, 10, 6, 3]);
});

// Derived from the exchangeable flat Dirichlet distribution (draw: Simon 2020, section 3.1, read in the document);
// the numbers were worked out twice, by the closed form and by simulation.
describe("centre of weights given in tiers", () => {
	test("three ranked and one not sure: 0.4583, 0.2083, 0.0833, 0.25", () => {
		const weights = centroidOfTiers([["first"], ["second"], ["third"]], ["not sure"]);
		expect([...weights.keys()]).toEqual(["first", "second", "third", "not sure"]);
		expectNear([...weights.values()], [0.4583, 0.2083, 0.0833, 0.25], fourDecimals);
	});

	test("tiers of one, two and one: 0.5208, 0.2083, 0.2083, 0.0625", () => {
		const weights = centroidOfTiers([["a"], ["b", "c"], ["d"]], []);
		expectNear([...weights.values()], [0.5208, 0.2083, 0.2083, 0.0625], fourDecimals);
	});
});
