import { createRequire } from "node:module";
import fc from "fast-check";
import type { Highs } from "highs";
import { describe, expect, test } from "vitest";
import { solve } from "yalps";
import { isLeftBehind } from "../../src/maths/dominance.ts";
import { exactly, type Interval } from "../../src/maths/interval.ts";
import { bestCase, canBeBest } from "../../src/maths/potential-optimality.ts";
import type { WeightRegion } from "../../src/maths/weight-region.ts";
import { allowedWeights, criteriaCount, obeys, plainDraws, positive, ranges, regions } from "./drawn-regions.ts";

const highsLoader = createRequire(import.meta.url)("highs") as () => Promise<Highs>;
const known = (...values: number[]): Interval[] => values.map(exactly);
const free: WeightRegion = { tiers: [], free: [0, 1] };

describe("greatest lead over all others", () => {
	test("alone, the lead has no bound; without criteria all are level", () => {
		expect(bestCase(free, known(0, 0), [])).toEqual({ lead: Infinity, weights: [1, 0] });
		expect(bestCase({ tiers: [[]], free: [] }, [], [[], []])).toEqual({ lead: 0, weights: [] });
		expect(canBeBest(free, known(0, 0), [])).toBe(true);
	});

	test("level with a copy of itself, and with many", () => {
		const row = known(0.4, 0.7);
		expect(bestCase(free, row, [row, row, row]).lead).toBeCloseTo(0, 12);
		expect(canBeBest(free, row, [row, row, row])).toBe(true);
	});

	test("takes its own values at their highest and the others' at their lowest", () => {
		const open = { low: 0.1, high: 0.9 };
		expect(bestCase(free, [open, exactly(0)], [known(0.5, 0.5)]).lead).toBeCloseTo(0.4, 12);
		expect(bestCase(free, known(0.5, 0.5), [[open, open]]).lead).toBeCloseTo(0.4, 12);
	});

	test("an order can take the weights away that it would need", () => {
		const [one, other] = [known(0.2, 0.9), known(0.8, 0.1)];
		expect(bestCase(free, one, [other]).lead).toBeCloseTo(0.8, 12);
		expect(bestCase({ tiers: [[0], [1]], free: [] }, one, [other])).toEqual({
			lead: expect.closeTo(0.1, 12),
			weights: [expect.closeTo(0.5, 12), expect.closeTo(0.5, 12)],
		});
	});

	test("where nothing weighs it is level with all others, and infinitely ahead where it is alone", () => {
		const nothing = { tiers: [], free: [] };
		expect(bestCase(nothing, known(1), [known(2)])).toEqual({ lead: 0, weights: [0] });
		expect(bestCase(nothing, known(1), [])).toEqual({ lead: Number.POSITIVE_INFINITY, weights: [0] });
	});

	test("refuses tables of different widths", () => {
		expect(() => bestCase(free, known(0, 0), [known(0)])).toThrow("1 values but 2 weights");
		expect(() => bestCase(free, known(0), [known(0)])).toThrow("no criterion 1");
	});

	const cases = regions(7).chain((region) => {
		const count = criteriaCount(region);
		const row = fc.array(ranges, { minLength: count, maxLength: count });
		const drawn = fc.array(positive, { minLength: count, maxLength: count });
		return fc.tuple(fc.constant(region), row, fc.array(row, { minLength: 1, maxLength: 12 }), drawn);
	});

	test("is reached at the weights it names, and no allowed weights give more", () => {
		fc.assert(
			fc.property(cases, ([region, one, others, drawn]) => {
				const { lead, weights } = bestCase(region, one, others);
				expect(obeys(region, weights)).toBe(true);
				expect(leadAt(weights, one, others)).toBeCloseTo(lead, 10);
				expect(leadAt(allowedWeights(region, drawn), one, others)).toBeLessThanOrEqual(lead + 1e-9);
			}),
		);
	});

	test("who is left behind by another has no lead", () => {
		let times = 0;
		fc.assert(
			fc.property(cases, ([region, one, others]) => {
				if (!others.some((other) => isLeftBehind(region, one, other))) return;
				times++;
				expect(bestCase(region, one, others).lead).toBeLessThanOrEqual(1e-8);
			}),
		);
		expect(times).toBeGreaterThan(5);
	});
});

function leadAt(weights: readonly number[], one: readonly Interval[], others: readonly (readonly Interval[])[]) {
	const leads = others.map((other) =>
		weights.reduce((sum, weight, at) => sum + weight * ((one[at] as Interval).high - (other[at] as Interval).low), 0),
	);
	return Math.min(...leads);
}

// The linear programme in the weights themselves, as the definition has it; no extreme points, no game.
// Two solvers, since a small one can be wrong: yalps (npm 0.6.4) and HiGHS (npm highs 1.15.3).
describe("the linear programme by two solvers, on made-up instances", () => {
	// The example of the README of older highs packages (from memory; the installed version shows another).
	test("both solve a known programme: 87.5", async () => {
		const highs = await highsLoader();
		const rows = "- x1 + x2 + x3 + 10 x4 <= 20\nx1 - 4 x2 + x3 <= 30\nx2 - 0.5 x4 = 0";
		const text = `Maximize\nx1 + 2 x2 + 4 x3 + x4\nSubject To\n${rows}\nBounds\nx1 <= 40\n2 <= x4 <= 3\nEnd`;
		expect(highs.solve(text, {}).ObjectiveValue).toBeCloseTo(87.5, 9);
		const { result } = solve({
			direction: "maximize",
			objective: "sum",
			constraints: { a: { max: 20 }, b: { max: 30 }, c: { equal: 0 }, first: { max: 40 }, last: { min: 2, max: 3 } },
			variables: {
				x1: { sum: 1, a: -1, b: 1, first: 1 },
				x2: { sum: 2, a: 1, b: -4, c: 1 },
				x3: { sum: 4, a: 1, b: 1 },
				x4: { sum: 1, a: 10, c: -0.5, last: 1 },
			},
		});
		expect(result).toBeCloseTo(87.5, 9);
	});

	test.each([
		["values between 0 and 1", 1],
		["tenths, where much is level", 2],
		["halves and copies, where most is level", 3],
		["values of up to 100 points", 4],
	])("%s", async (name, seed) => {
		const highs = await highsLoader();
		const draw = plainDraws(seed);
		let behind = 0;
		for (let instance = 0; instance < 60; instance++) {
			const { region, one, others } = instanceOf(draw, name);
			const { lead } = bestCase(region, one, others);
			const said = `${name}, instance ${instance}: ${JSON.stringify({ region, one, others })}`.slice(0, 400);
			const { Status, ObjectiveValue } = highs.solve(programmeText(region, one, others), {});
			expect(Status, said).toBe("Optimal");
			expect(Math.abs(lead - ObjectiveValue), said).toBeLessThan(1e-7);
			const { status, result } = solve(programme(region, one, others));
			expect(status, said).toBe("optimal");
			expect(Math.abs(lead - result), said).toBeLessThan(1e-7);
			if (lead < -1e-6) behind++;
		}
		// Both verdicts have to come up, or the comparison says little.
		expect(behind).toBeGreaterThan(5);
		expect(behind).toBeLessThan(55);
	});
});

function instanceOf(draw: () => number, name: string) {
	const whole = (below: number) => Math.floor(draw() * below);
	const count = 1 + whole(8);
	const groups = Array.from({ length: count }, () => whole(4));
	const tiers = [0, 1, 2].map((tier) => groups.flatMap((group, index) => (group === tier ? [index] : [])));
	const region: WeightRegion = { tiers, free: groups.flatMap((group, index) => (group === 3 ? [index] : [])) };
	const value = () => {
		if (name.startsWith("tenths")) return whole(11) / 10;
		if (name.startsWith("halves")) return whole(3) / 2;
		return name.includes("100") ? 100 * draw() : draw();
	};
	const range = (): Interval => {
		if (draw() < 0.75) return exactly(value());
		const [low, high] = [value(), value()].sort((a, b) => a - b) as [number, number];
		return { low, high: Math.min(high, low + 0.1 * (high - low)) };
	};
	const row = () => Array.from({ length: count }, range);
	const one = row();
	const others = Array.from({ length: 1 + whole(29) }, () => (draw() < 0.05 ? one : row()));
	return { region, one, others };
}

/** Pairs of criteria of which the first weighs at least as much as the second. */
function orderPairs({ tiers }: WeightRegion): readonly (readonly [number, number])[] {
	return tiers.flatMap((tier, at) => {
		const lower = tiers.slice(at + 1).flat();
		return tier.flatMap((higher) => lower.map((index) => [higher, index] as const));
	});
}

function leadsOver(one: readonly Interval[], other: readonly Interval[]): readonly number[] {
	return one.map(({ high }, at) => high - (other[at] as Interval).low);
}

function programmeText(region: WeightRegion, one: readonly Interval[], others: readonly (readonly Interval[])[]) {
	const term = (factor: number, variable: string) => `${factor < 0 ? "-" : "+"} ${Math.abs(factor)} ${variable}`;
	const rows = others.map(
		(other) =>
			`${leadsOver(one, other)
				.map((lead, at) => term(lead, `w${at}`))
				.join(" ")} - t >= 0`,
	);
	const order = orderPairs(region).map(([higher, lower]) => `w${higher} - w${lower} >= 0`);
	const sum = `${one.map((_, at) => `w${at}`).join(" + ")} = 1`;
	return `Maximize\nt\nSubject To\n${[...rows, ...order, sum].join("\n")}\nBounds\nt free\nEnd`;
}

function programme(region: WeightRegion, one: readonly Interval[], others: readonly (readonly Interval[])[]) {
	const rows = others.map((other) => leadsOver(one, other));
	const order = orderPairs(region);
	const constraints = new Map<string, { min?: number; equal?: number }>([["sum", { equal: 1 }]]);
	for (const at of rows.keys()) constraints.set(`lead ${at}`, { min: 0 });
	for (const at of order.keys()) constraints.set(`order ${at}`, { min: 0 });
	const weights = one.map((_, index): [string, Map<string, number>] => [
		`w${index}`,
		new Map([
			["sum", 1],
			...rows.map((row, at): [string, number] => [`lead ${at}`, row[index] as number]),
			...order.flatMap(([higher, lower], at): [string, number][] =>
				higher === index ? [[`order ${at}`, 1]] : lower === index ? [[`order ${at}`, -1]] : [],
			),
		]),
	]);
	// Variables of this solver are 0 or more, so the lead is the difference of two.
	const lead = (sign: number) =>
		new Map<string, number>([["lead", sign], ...rows.map((_, at): [string, number] => [`lead ${at}`, -sign])]);
	return {
		direction: "maximize" as const,
		objective: "lead",
		constraints,
		variables: new Map([...weights, ["up", lead(1)], ["down", lead(-1)]]),
	};
}
