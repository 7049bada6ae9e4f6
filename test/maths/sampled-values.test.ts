import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type SampledPart, sampledValues } from "../../src/maths/sampled-values.ts";
import { seededDraws } from "../../src/maths/seeded-draws.ts";
import { simplexSamples } from "../../src/maths/simplex-samples.ts";
import { allowedOff, chiSquare, chiSquareOfTenths, meanOf, shareOf } from "./draw-checks.ts";

const samples = 10_000;
const known = (value: number): SampledPart => ({ low: value, high: value, stream: 0 });
const range = (low: number, high: number, stream: number): SampledPart => ({ low, high, stream });
const ones = (count = samples) => [new Float64Array(count).fill(1)];
/** The draws themselves. */
const drawsOf = (stream: number, count = samples) => sampledValues(ones(count), [[range(0, 1, stream)]], null);
const column = (...values: number[]) => Float64Array.from(values);

/** Written plainly, with draws taken from the function under test one part at a time. */
function plainly(
	weights: readonly Float64Array[],
	states: readonly (readonly SampledPart[] | null)[],
	stateOf: Uint8Array | null,
): number[] {
	const count = stateOf?.length ?? weights[0]?.length ?? 0;
	return Array.from({ length: count }, (_, sample) => {
		const parts = states[stateOf?.[sample] ?? 0];
		if (!parts) return 0;
		return parts.reduce((sum, { low, high, stream }, criterion) => {
			const draw = low === high ? 0 : (drawsOf(stream, count)[sample] as number);
			return sum + (low + (high - low) * draw) * (weights[criterion]?.[sample] as number);
		}, 0);
	});
}

function expectNear(ours: ArrayLike<number>, expected: ArrayLike<number>): void {
	expect(ours).toHaveLength(expected.length);
	for (let at = 0; at < ours.length; at++) {
		if (Math.abs((ours[at] as number) - (expected[at] as number)) > 1e-12)
			throw new Error(`sample ${at}: ${ours[at]} instead of ${expected[at]}`);
	}
}

describe("the draws", () => {
	const streams = [0, 1, 2, 3, 17, -1, 2 ** 31, 2 ** 32 - 1, 0x811c9dc5];

	test.each(streams)("of stream %d are spread evenly and have a mean of one half", (stream) => {
		const draws = drawsOf(stream);
		expect(Math.min(...draws)).toBeGreaterThan(0);
		expect(Math.max(...draws)).toBeLessThan(1);
		// The second half mirrors the first, so that only the first tells of the spread.
		expect(chiSquareOfTenths(draws.subarray(0, samples / 2))).toBeLessThan(33.7);
		expect(meanOf(draws)).toBeCloseTo(0.5, 12);
	});

	test("of a sample and of the one half the samples on add up to 1", () => {
		const draws = drawsOf(5);
		const half = samples / 2;
		expectNear(
			draws.subarray(half).map((draw, at) => draw + (draws[at] as number)),
			new Float64Array(half).fill(1),
		);
	});

	test("the last of an odd number is one half", () => {
		expect(drawsOf(5, 7)[6]).toBe(0.5);
		expect(meanOf(drawsOf(5, 7))).toBeCloseTo(0.5, 14);
		expect(drawsOf(5, 1)[0]).toBe(0.5);
	});

	/** A hundred fields; Pearson's statistic is above 162.4 with 99 degrees of freedom less than once in 10 000 times. */
	const fields = (one: Float64Array, other: Float64Array) => {
		const counts = new Array<number>(100).fill(0);
		for (let at = 0; at < one.length; at++) {
			const field = 10 * Math.floor(10 * (one[at] as number)) + Math.floor(10 * (other[at] as number));
			counts[field] = (counts[field] as number) + 1;
		}
		return chiSquare(counts);
	};

	test.each([0, 1, 2, 100, 2 ** 31 - 1, 2 ** 32 - 2])(
		"of stream %d and the next have nothing to do with each other",
		(stream) => {
			const half = (draws: Float64Array) => draws.subarray(0, samples / 2);
			expect(fields(half(drawsOf(stream)), half(drawsOf(stream + 1)))).toBeLessThan(162.4);
		},
	);

	test.each([0, 1, 99])("of stream %d have nothing to do with the draw before", (stream) => {
		const draws = drawsOf(stream).subarray(0, samples / 2);
		expect(fields(draws.subarray(1), draws.subarray(0, -1))).toBeLessThan(162.4);
	});

	test("over many streams, one sample's draws are spread evenly", () => {
		// The draw depends on the place of the sample alone, up to half the number of samples.
		const draws = Array.from({ length: 2000 }, (_, stream) => drawsOf(stream, 200));
		for (const sample of [0, 1, 99])
			expect(chiSquareOfTenths(draws.map((ofStream) => ofStream[sample] as number))).toBeLessThan(33.7);
	});

	test("of equal streams are equal, whoever asks and whatever the interval", () => {
		const wide = sampledValues(ones(), [[range(-2, 6, 9)]], null);
		expectNear(
			wide.map((value) => (value + 2) / 8),
			drawsOf(9),
		);
	});

	test("have nothing to do with the weights", () => {
		const [weight] = simplexSamples(seededDraws(1), 2, samples) as [Float64Array];
		const draws = drawsOf(1);
		const share = shareOf(samples, (at) => (weight[at] as number) > 0.5 === (draws[at] as number) > 0.5);
		expect(Math.abs(share - 0.5)).toBeLessThan(allowedOff(0.5, samples));
	});
});

describe("the values", () => {
	test("known parts are a weighted sum", () => {
		const weights = [column(0.2, 1), column(0.3, 0), column(0.5, 0)];
		expectNear(sampledValues(weights, [[known(1), known(0.5), known(0.1)]], null), [0.4, 1]);
	});

	test("an alternative that is out in a state is worth 0 there", () => {
		const weights = [column(1, 1, 1, 1)];
		const stateOf = Uint8Array.from([0, 1, 2, 1]);
		expect(sampledValues(weights, [[known(0.5)], null, [known(0.25)]], stateOf)).toEqual(column(0.5, 0, 0.25, 0));
		expect(sampledValues(weights, [null, null, null], stateOf)).toEqual(column(0, 0, 0, 0));
		expect(sampledValues(weights, [null], null)).toEqual(column(0, 0, 0, 0));
	});

	test("nothing is scored, or nothing is drawn", () => {
		expect(sampledValues([], [[]], null)).toEqual(column());
		expect(sampledValues([], [[], null], Uint8Array.from([0, 1]))).toEqual(column(0, 0));
		expect(sampledValues([column()], [[known(1)]], null)).toEqual(column());
	});

	const part = fc
		.tuple(
			fc.double({ min: 0, max: 1, noNaN: true }),
			fc.double({ min: 0, max: 1, noNaN: true }),
			fc.nat(5),
			fc.boolean(),
		)
		.map(([one, other, stream, isKnown]) =>
			isKnown ? known(one) : range(Math.min(one, other), Math.max(one, other), stream),
		);
	const cases = fc.integer({ min: 1, max: 9 }).chain((criteria) =>
		fc.record({
			states: fc.array(fc.option(fc.array(part, { minLength: criteria, maxLength: criteria })), {
				minLength: 1,
				maxLength: 4,
			}),
			count: fc.integer({ min: 1, max: 31 }),
			seed: fc.nat(1000),
			criteria: fc.constant(criteria),
			// Where states share most parts, the shared ones take another way through the code.
			shareFrom: fc.nat(9),
		}),
	);

	test("are those of the plain sum, over any states", () => {
		fc.assert(
			fc.property(cases, ({ states: drawn, count, seed, criteria, shareFrom }) => {
				const model = drawn.find((state) => state !== null);
				const states = drawn.map(
					(state) => state?.map((one, at) => (at >= shareFrom && model ? (model[at] as SampledPart) : one)) ?? null,
				);
				const weights = simplexSamples(seededDraws(seed), criteria, count);
				const stateOf = states.length === 1 ? null : Uint8Array.from({ length: count }, (_, at) => at % states.length);
				expectNear(sampledValues(weights, states, stateOf), plainly(weights, states, stateOf));
			}),
		);
	});

	test("stay between those of all low ends and all high ends", () => {
		fc.assert(
			fc.property(fc.array(part, { minLength: 1, maxLength: 8 }), fc.nat(1000), (parts, seed) => {
				const weights = simplexSamples(seededDraws(seed), parts.length, 20);
				const at = (end: "low" | "high") => sampledValues(weights, [parts.map((one) => known(one[end]))], null);
				const [low, values, high] = [at("low"), sampledValues(weights, [parts], null), at("high")];
				values.forEach((value, sample) => {
					expect(value).toBeGreaterThanOrEqual((low[sample] as number) - 1e-12);
					expect(value).toBeLessThanOrEqual((high[sample] as number) + 1e-12);
				});
			}),
		);
	});
});

test.each([
	["an interval runs backwards", [column(1)], [[range(0.6, 0.5, 1)]], null, "the interval runs backwards: 0.6 to 0.5"],
	["an end is no number", [column(1)], [[range(Number.NaN, 0.5, 1)]], null, "the interval runs backwards: NaN to 0.5"],
	["there are more parts than weights", [column(1)], [[known(1), known(1)]], null, "2 parts but 1 weights"],
	["columns differ in length", [column(1), column(1, 2)], [[known(1), known(1)]], null, "columns of different length"],
	[
		"states without saying whose",
		[column(1)],
		[[known(1)], [known(0)]],
		null,
		"2 states, and nothing says which sample",
	],
	[
		"as many states as weights are long, but too few samples",
		[column(1, 1)],
		[[known(1)]],
		Uint8Array.from([0]),
		"columns of different length",
	],
	[
		"a sample in a state that is not there",
		[column(1, 1)],
		[[known(1)]],
		Uint8Array.from([0, 1]),
		"in a state beyond the 1 given",
	],
])("refuses: %s", (_, weights, states, stateOf, words) => {
	expect(() => sampledValues(weights, states, stateOf)).toThrow(words);
});
