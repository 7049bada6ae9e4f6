import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { unknownThreshold } from "../../src/maths/unknown-threshold.ts";

/** Mean over the middles of many equal slices: what the closed form must come to, worked out the long way. */
function meanOver(low: number, high: number, of: (value: number) => number): number {
	const slices = 20_000;
	let sum = 0;
	for (let slice = 0; slice < slices; slice++) sum += of(low + ((slice + 0.5) / slices) * (high - low));
	return sum / slices;
}

test.each<[string, number, number, "known" | "half-known" | "open", number, number]>([
	["the known one is ahead by the mean", 0.58, 0.4, "open", 0.1, 0.2 * (1 - 0.9) ** 2 * 0.5],
	["the half-known one is ahead by the mean", 0.42, 0.4, "open", 0.9, 0.2 * 0.1 ** 2 * 0.5],
	["level by the mean: half of everything is at stake", 0.5, 0.4, "open", 0.5, 0.2 / 8],
	["out of reach", 0.61, 0.4, "known", 0, 0],
	["level at its very best", 0.75, 0.5, "known", 0, 0],
	["level at its very worst", 0.4, 0.4, "half-known", 1, 0],
	["ahead already", 0.39, 0.4, "half-known", 1, 0],
])("%s", (_, known, base, ahead, chance, worth) => {
	const found = unknownThreshold(known, { base, weight: base === 0.5 ? 0.25 : 0.2, value: { low: 0, high: 1 } });
	expect(found.ahead).toBe(ahead);
	expect(found.chanceAhead).toBeCloseTo(chance, 9);
	expect(found.worth).toBeCloseTo(worth, 12);
});

describe("what weighs nothing or is no range", () => {
	test.each<[number, "known" | "half-known", number]>([
		[0.5, "known", Infinity],
		[0.4, "known", Infinity],
		[0.3, "half-known", -Infinity],
	])("weight 0 against %f", (known, ahead, threshold) => {
		const found = unknownThreshold(known, { base: 0.4, weight: 0, value: { low: 0, high: 1 } });
		expect(found).toMatchObject({ ahead, threshold, worth: 0, score: { low: 0.4, high: 0.4 } });
	});

	test("a value that is known after all", () => {
		const known = { base: 0.5, weight: 0.25, value: { low: 0.5, high: 0.5 } };
		expect(unknownThreshold(0.5, known)).toMatchObject({ ahead: "half-known", chanceAhead: 1, worth: 0 });
		expect(unknownThreshold(0.625, known)).toMatchObject({ ahead: "known", chanceAhead: 0, worth: 0 });
	});

	test("refuses a negative weight and a range that runs backwards", () => {
		expect(() => unknownThreshold(0, { base: 0, weight: -1, value: { low: 0, high: 1 } })).toThrow(
			"a weight must be 0 or more, not -1",
		);
		expect(() => unknownThreshold(0, { base: 0, weight: 1, value: { low: 1, high: 0 } })).toThrow(
			"the interval runs backwards: 1 to 0",
		);
	});
});

test("worth and chance agree with integrating over the range, whoever is ahead now", () => {
	// Thousandths, since fast-check's doubles are nearly all next to nothing.
	const thousandths = (min: number, max: number) => fc.integer({ min, max }).map((count) => count / 1000);
	const seen = { known: 0, "half-known": 0 };
	fc.assert(
		fc.property(
			thousandths(10, 1000),
			thousandths(0, 1000),
			thousandths(0, 800),
			thousandths(50, 200),
			thousandths(-300, 1300),
			(weight, base, low, width, where) => {
				const high = low + width;
				const known = base + weight * (low + where * width);
				const scoreAt = (value: number) => base + weight * value;
				const found = unknownThreshold(known, { base, weight, value: { low, high } });
				const after = meanOver(low, high, (value) => Math.max(known, scoreAt(value)));
				const now = Math.max(known, meanOver(low, high, scoreAt));
				expect(found.worth).toBeCloseTo(after - now, 8);
				expect(found.chanceAhead).toBeCloseTo(
					meanOver(low, high, (value) => (scoreAt(value) > known ? 1 : 0)),
					3,
				);
				expect(found.score.low).toBeCloseTo(scoreAt(low), 12);
				expect(found.score.high).toBeCloseTo(scoreAt(high), 12);
				if (found.ahead !== "open") return;
				expect(scoreAt(found.threshold)).toBeCloseTo(known, 9);
				seen[known >= (scoreAt(low) + scoreAt(high)) / 2 ? "known" : "half-known"]++;
			},
		),
	);
	expect(Math.min(seen.known, seen["half-known"])).toBeGreaterThan(5);
});
