import fc from "fast-check";
import { expect, test } from "vitest";
import { addGains, bestAssignment, compareGains, type Gains, noGains } from "../../src/maths/best-assignment.ts";

/** Costs to be kept least: placing counts first, then the cost with its sign turned. */
const asGains = (costs: readonly (readonly number[])[]) => costs.map((row) => row.map((cost) => [1, -cost]));

// Samples of the npm package munkres-js 1.2.2 and of the PyPI package munk, as their pages give them.
test.each([
	[
		[
			[400, 150, 400],
			[400, 450, 600],
			[300, 225, 300],
		],
		850,
		[1, 0, 2],
	],
	[
		[
			[8, 4, 7],
			[5, 2, 3],
			[9, 4, 8],
		],
		15,
		null,
	],
])("published sample %j costs %i", (costs, least, places) => {
	const { gains, placeOf } = bestAssignment(asGains(costs));
	expect(gains).toEqual([3, -least]);
	if (places) expect(placeOf).toEqual(places);
});

test("a thing that nothing takes, or that only costs, goes nowhere", () => {
	expect(
		bestAssignment([
			[null, null],
			[[1], [2]],
		]).placeOf,
	).toEqual([null, 1]);
	expect(bestAssignment([[[-1]]]).placeOf).toEqual([null]);
	expect(bestAssignment([])).toEqual({ placeOf: [], gains: [] });
});

/** All ways, gone through one by one. */
function bestOfAll(table: readonly (readonly (Gains | null)[])[], thing = 0, taken: readonly number[] = []): Gains {
	const row = table[thing];
	if (!row) return noGains;
	const ways = row.flatMap((gains, place) =>
		gains && !taken.includes(place) ? [addGains(gains, bestOfAll(table, thing + 1, [...taken, place]))] : [],
	);
	return [bestOfAll(table, thing + 1, taken), ...ways].reduce((best, one) =>
		compareGains(one, best) > 0 ? one : best,
	);
}

test("no way of all is worth more, whatever the first and the second goal", () => {
	const gains = fc.option(fc.tuple(fc.integer({ min: -2, max: 2 }), fc.integer({ min: -3, max: 3 })), { nil: null });
	const tables = fc
		.tuple(fc.integer({ min: 1, max: 4 }), fc.integer({ min: 1, max: 4 }))
		.chain(([things, places]) =>
			fc.array(fc.array(gains, { minLength: places, maxLength: places }), { minLength: things, maxLength: things }),
		);
	fc.assert(
		fc.property(tables, (table) => {
			expect(compareGains(bestAssignment(table).gains, bestOfAll(table))).toBe(0);
		}),
		{ numRuns: 2000 },
	);
});
