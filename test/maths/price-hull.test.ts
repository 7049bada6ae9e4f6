import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
	dominates,
	dominatesInPractice,
	type PricedScore,
	possiblyUndominated,
	pricesOfPoint,
	undominated,
	upperHull,
} from "../../src/maths/price-hull.ts";

/** Few values, so that ties in price, in score and in both are common. */
const anyPoint = fc.record({ price: fc.integer({ min: 0, max: 30 }), score: fc.integer({ min: 0, max: 30 }) });
const anyPoints = fc.array(anyPoint, { minLength: 1, maxLength: 14 });
const scoresOf = (points: readonly PricedScore[], indices: readonly number[]) =>
	indices.map((index) => `${points[index]?.price} ${points[index]?.score}`);

describe("who beats whom", () => {
	test("cheaper and as good, as dear and better, or both; never an equal one", () => {
		const point = { price: 100, score: 50 };
		expect(dominates({ price: 99, score: 50 }, point)).toBe(true);
		expect(dominates({ price: 100, score: 51 }, point)).toBe(true);
		expect(dominates(point, point)).toBe(false);
		expect(dominates({ price: 101, score: 90 }, point)).toBe(false);
		expect(dominates({ price: 1, score: 49 }, point)).toBe(false);
	});

	test("in practice a little dearer is no dearer: on both limits, and one past", () => {
		const limits = { priceShare: 0.02, clearly: 5 };
		const point = { price: 10_000, score: 50 };
		expect(dominatesInPractice({ price: 10_200, score: 55 }, point, limits)).toBe(true);
		expect(dominatesInPractice({ price: 10_201, score: 55 }, point, limits)).toBe(false);
		expect(dominatesInPractice({ price: 10_200, score: 54 }, point, limits)).toBe(false);
	});

	test("what stays is beaten by none, and what goes is beaten by something that stays", () => {
		fc.assert(
			fc.property(anyPoints, (points) => {
				const left = undominated(points);
				points.forEach((point, index) => {
					const beaters = points.filter((other) => dominates(other, point));
					expect(beaters.length === 0).toBe(left.includes(index));
					if (beaters.length > 0) expect(left.some((at) => dominates(points[at] as PricedScore, point))).toBe(true);
				});
			}),
		);
	});
});

describe("the hull", () => {
	test("by eye: one below the line and one on it are no corners", () => {
		const points = [
			{ price: 40, score: 90 },
			{ price: 10, score: 50 },
			{ price: 20, score: 65 },
			{ price: 25, score: 70 },
			{ price: 30, score: 60 },
		];
		expect(upperHull(points)).toEqual([1, 2, 0]);
		expect(pricesOfPoint(points, upperHull(points))).toEqual([10 / 15, 20 / 25]);
		expect(upperHull([...points.slice(0, 2), { price: 25, score: 70 }])).toEqual([1, 0]);
	});

	test("of one place the first is named; a hair's breadth of rounding is no step", () => {
		const twice = { price: 10, score: 50 };
		expect(upperHull([twice, twice])).toEqual([0]);
		expect(upperHull([twice, { price: 20, score: 50 + 1e-12 }])).toEqual([0]);
		expect(upperHull([])).toEqual([]);
	});

	test("for any worth of a point the best of all is a corner, and each corner is the best for some worth", () => {
		fc.assert(
			fc.property(anyPoints, fc.double({ min: 0, max: 50, noNaN: true }), (points, worth) => {
				const value = ({ price, score }: PricedScore, of: number) => score * of - price;
				const best = (of: number) => Math.max(...points.map((point) => value(point, of)));
				const hull = upperHull(points);
				const corners = hull.map((index) => points[index] as PricedScore);
				const onHull = Math.max(...corners.map((point) => value(point, worth)));
				// The cheapest with most points is a corner, so that even points worth nothing find theirs.
				expect(onHull).toBeCloseTo(best(worth), 6);
				const rates = pricesOfPoint(points, hull);
				corners.forEach((corner, index) => {
					const [from, to] = [rates[index - 1] ?? 0, rates[index] ?? (rates[index - 1] ?? 0) + 1];
					expect(value(corner, (from + to) / 2)).toBeCloseTo(best((from + to) / 2), 6);
				});
			}),
		);
	});

	test("it runs from the cheapest to the best, and a further point never gets cheaper", () => {
		fc.assert(
			fc.property(anyPoints, (points) => {
				const hull = upperHull(points);
				const corners = hull.map((index) => points[index] as PricedScore);
				expect(corners[0]?.price).toBe(Math.min(...points.map(({ price }) => price)));
				expect(corners.at(-1)?.score).toBe(Math.max(...points.map(({ score }) => score)));
				expect(hull.filter((index) => !undominated(points).includes(index))).toEqual([]);
				const rates = pricesOfPoint(points, hull);
				for (const rate of rates) expect(rate).toBeGreaterThan(0);
				for (const [index, rate] of rates.slice(1).entries()) expect(rate).toBeGreaterThan(rates[index] as number);
			}),
		);
	});

	test("neither the order nor what lies off the hull changes it", () => {
		fc.assert(
			fc.property(
				anyPoints.chain((points) =>
					fc.tuple(fc.constant(points), fc.shuffledSubarray(points, { minLength: points.length })),
				),
				([points, shuffled]) => {
					const hull = scoresOf(points, upperHull(points));
					expect(scoresOf(shuffled, upperHull(shuffled))).toEqual(hull);
					const corners = upperHull(points).map((index) => points[index] as PricedScore);
					expect(scoresOf(corners, upperHull(corners))).toEqual(hull);
				},
			),
		);
	});
});

describe("where only bounds are known", () => {
	const anyRange = fc.tuple(anyPoint, fc.nat(10), fc.nat(10)).map(([{ price, score }, more, wider]) => ({
		price: { low: price, high: price + more },
		score: { low: score, high: score + wider },
	}));
	const exact = ({ price, score }: PricedScore) => ({
		price: { low: price, high: price },
		score: { low: score, high: score },
	});

	test("exact bounds leave what is undominated", () => {
		fc.assert(
			fc.property(anyPoints, (points) => {
				expect(possiblyUndominated(points.map(exact))).toEqual(undominated(points));
			}),
		);
	});

	test("whatever is undominated in one way things may turn out is possible", () => {
		const way = fc.array(fc.tuple(anyRange, fc.double({ min: 0, max: 1, noNaN: true })), {
			minLength: 1,
			maxLength: 10,
		});
		fc.assert(
			fc.property(way, (drawn) => {
				const turnedOut = drawn.map(([{ price, score }, share]) => ({
					price: price.low + share * (price.high - price.low),
					score: score.high - share * (score.high - score.low),
				}));
				const possible = possiblyUndominated(drawn.map(([range]) => range));
				expect(undominated(turnedOut).filter((index) => !possible.includes(index))).toEqual([]);
			}),
		);
	});

	test("a price without an upper end beats nobody for certain", () => {
		const open = { price: { low: 10, high: Number.POSITIVE_INFINITY }, score: { low: 90, high: 90 } };
		expect(possiblyUndominated([open, exact({ price: 20, score: 50 })])).toEqual([0, 1]);
		expect(possiblyUndominated([open, exact({ price: 10, score: 95 })])).toEqual([1]);
	});
});
