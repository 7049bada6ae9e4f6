import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { informationGain, worthOfAsking, worthOfKnowingAll } from "../../src/maths/information-value.ts";

const chance = fc.integer({ min: 0, max: 1000 }).map((count) => count / 1000);
// Thousandths, since fast-check's doubles are nearly all next to nothing.
const value = fc.integer({ min: -100000, max: 100000 }).map((count) => count / 1000);

/** Samples in rows, each with the answer it would give. */
const answeredSamples = fc
	.tuple(fc.integer({ min: 1, max: 5 }), fc.integer({ min: 1, max: 4 }))
	.chain(([alternatives, answers]) =>
		fc.array(
			fc.record({
				answer: fc.nat(answers - 1),
				values: fc.array(value, { minLength: alternatives, maxLength: alternatives }),
			}),
			{ minLength: 1, maxLength: 30 },
		),
	);

describe("what asking is worth", () => {
	test("an answer that never changes who leads is worth nothing", () => {
		const asked = worthOfAsking(
			[0.5, 0.5],
			[
				[10, 5],
				[90, 80],
			],
		);
		expect(asked).toEqual({ leader: 0, leaderAfter: [0, 0], worth: 0 });
	});

	test("who leads after each answer", () => {
		const asked = worthOfAsking(
			[0.6, 0.4],
			[
				[10, 5],
				[10, 20],
			],
		);
		expect(asked.leader).toBe(1);
		expect(asked.leaderAfter).toEqual([0, 1]);
		expect(asked.worth).toBeCloseTo(0.6 * 5, 12);
	});

	test("being level after an answer takes the lead from nobody", () => {
		expect(
			worthOfAsking(
				[1, 1],
				[
					[5, 5, 1],
					[4, 6, 1],
				],
			),
		).toEqual({ leader: 1, leaderAfter: [1, 1], worth: 0 });
	});

	test("of equal ones the first leads", () => {
		expect(worthOfAsking([1], [[1, 5, 5]])).toEqual({ leader: 1, leaderAfter: [1], worth: 0 });
	});

	test("counts do as well as chances", () => {
		const values = [
			[10, 5],
			[10, 20],
		];
		expect(worthOfAsking([6, 4], values).worth).toBeCloseTo(worthOfAsking([0.6, 0.4], values).worth, 12);
	});

	test("times the chance that the person can answer", () => {
		expect(
			worthOfAsking(
				[0.6, 0.4],
				[
					[10, 5],
					[10, 20],
				],
				0.5,
			).worth,
		).toBeCloseTo(1.5, 12);
		expect(
			worthOfAsking(
				[0.6, 0.4],
				[
					[10, 5],
					[10, 20],
				],
				0,
			).worth,
		).toBe(0);
	});

	test("never below 0, and never more than knowing all", () => {
		fc.assert(
			fc.property(answeredSamples, (samples) => {
				const answers = [...new Set(samples.map(({ answer }) => answer))];
				const groups = answers.map((answer) => samples.filter((sample) => sample.answer === answer));
				const means = groups.map((group) =>
					(group[0]?.values ?? []).map(
						(_, place) => group.reduce((sum, { values }) => sum + (values[place] as number), 0) / group.length,
					),
				);
				const { worth } = worthOfAsking(
					groups.map(({ length }) => length),
					means,
				);
				expect(worth).toBeGreaterThanOrEqual(0);
				expect(worth).toBeLessThanOrEqual(worthOfKnowingAll(samples.map(({ values }) => values)) + 1e-9);
			}),
		);
	});

	test("is the mean of the greatest less the greatest of the means", () => {
		const table = fc.integer({ min: 1, max: 5 }).chain((width) =>
			fc.array(
				fc.tuple(
					fc.integer({ min: 10, max: 1000 }).map((count) => count / 1000),
					fc.array(value, { minLength: width, maxLength: width }),
				),
				{
					minLength: 1,
					maxLength: 6,
				},
			),
		);
		fc.assert(
			fc.property(table, (rows) => {
				const total = rows.reduce((sum, [weight]) => sum + weight, 0);
				const meanOf = (pick: (row: readonly number[]) => number) =>
					rows.reduce((sum, [weight, row]) => sum + (weight / total) * pick(row), 0);
				const places = (rows[0]?.[1] ?? []).map((_, place) => place);
				const means = places.map((place) => meanOf((row) => row[place] as number));
				const plain = meanOf((row) => Math.max(...row)) - Math.max(...means);
				const { worth } = worthOfAsking(
					rows.map(([weight]) => weight),
					rows.map(([, row]) => row),
				);
				expect(worth).toBeCloseTo(plain, 9);
			}),
		);
	});

	test("refuses what is no table of chances", () => {
		expect(() => worthOfAsking([], [])).toThrow("there is nothing to choose from");
		expect(() => worthOfAsking([1], [[]])).toThrow("there is nothing to choose from");
		expect(() => worthOfAsking([1], [[1], [2]])).toThrow("1 chances but 2 answers");
		expect(() => worthOfAsking([1, 1], [[1, 2], [3]])).toThrow("rows of 2 and of 1 values");
		expect(() => worthOfAsking([1, -1], [[1], [2]])).toThrow("a chance must be 0 or more, not -1");
		expect(() => worthOfAsking([0, 0], [[1], [2]])).toThrow("at least one chance must be above 0");
		expect(() => worthOfAsking([Number.NaN], [[1]])).toThrow("a chance must be 0 or more, not NaN");
		expect(() => worthOfAsking([1], [[1]], 1.1)).toThrow("a chance must be from 0 to 1, not 1.1");
	});
});

describe("information gain", () => {
	test("an answer that settles one of four as likely tells two bits", () => {
		const settled = [0, 1, 2, 3].map((row) => [0, 1, 2, 3].map((column) => (row === column ? 1 : 0)));
		expect(informationGain(settled)).toBe(2);
		expect(informationGain(settled, 0.25)).toBe(0.5);
	});

	test("an answer that has nothing to do with the outcome tells nothing", () => {
		expect(
			informationGain([
				[3, 1],
				[6, 2],
				[0, 0],
			]),
		).toBeCloseTo(0, 12);
	});

	test("never below 0, and never more than there is to know", () => {
		const table = fc
			.integer({ min: 1, max: 4 })
			.chain((width) =>
				fc.array(fc.array(chance, { minLength: width, maxLength: width }), { minLength: 1, maxLength: 5 }),
			);
		fc.assert(
			fc.property(
				table.filter((rows) => rows.flat().some((share) => share > 0)),
				(rows) => {
					const gain = informationGain(rows);
					expect(gain).toBeGreaterThanOrEqual(0);
					expect(gain).toBeLessThanOrEqual(Math.log2(rows[0]?.length ?? 1) + 1e-9);
				},
			),
		);
	});

	test("refuses what is no table of counts", () => {
		expect(() => informationGain([])).toThrow("there is nothing to choose from");
		expect(() => informationGain([[1], [1, 2]])).toThrow("rows of 1 and of 2 values");
		expect(() => informationGain([[0, 0]])).toThrow("at least one chance must be above 0");
		expect(() => informationGain([[1, -1]])).toThrow("a chance must be 0 or more, not -1");
		expect(() => informationGain([[1, 1]], -0.1)).toThrow("a chance must be from 0 to 1, not -0.1");
	});
});
