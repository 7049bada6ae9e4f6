import fc from "fast-check";
import { expect, test } from "vitest";
import { powerGauge, powerGaugeOf } from "../../src/sheet/power-gauge.ts";

const endless = Number.POSITIVE_INFINITY;
const of = (air: readonly [number, number], stage: readonly [number, number]) => ({
	airC: { low: air[0], high: air[1] },
	hotSpotC: { low: stage[0], high: stage[1] },
});

test("a gauge by eye", () => {
	expect(powerGauge(of([35, 45], [53, 78]))).toEqual([
		"air           ======                       :       :",
		"hottest stage           ==============     :       :",
		"              -----------------------------+-------+--------",
		"              35                          90      105    120",
		"air: 35 to 45 degrees C",
		"hottest stage: 53 to 78 degrees C",
		"90 degrees C: at ease for years up to here",
		"105 degrees C: boards hold the processor back",
	]);
});

test("what lies past the scale ends in an arrow, and what lies all past it is one", () => {
	const [, part, scale] = powerGauge(of([35, 45], [53, endless]));
	expect(part).toMatch(/^hottest stage +=+>$/);
	expect(part?.length).toBe(scale?.length);
	const [, all] = powerGauge(of([35, 45], [151, endless]));
	expect(all).toMatch(/^hottest stage[ :]+>$/);
	expect(all?.length).toBe(scale?.length);
	expect(powerGauge(of([35, 45], [53, 120]))[1]).toMatch(/=$/);
});

test("the scale begins with the coolest air in whole fives and goes past the last line", () => {
	expect(powerGaugeOf(of([37, 45], [53, 78]))).toMatchObject({ from: 35, to: 120 });
	expect(powerGaugeOf(of([35, 35], [53, 78])).from).toBe(35);
	// A test can prove less than the air of the build; the bar still lies on the scale.
	expect(powerGaugeOf(of([40, 45], [33, 78])).from).toBe(30);
	expect(powerGaugeOf(of([35, 45], [53, 78])).lines.map(({ at }) => at)).toEqual([90, 105]);
});

test("whatever the figures and the width: plain ASCII within it, bars where their figures are", () => {
	const celsius = fc.oneof(
		{ weight: 9, arbitrary: fc.double({ min: 20, max: 200, noNaN: true }) },
		fc.constant(endless),
	);
	const range = (one: number, other: number) => [Math.min(one, other), Math.max(one, other)] as const;
	fc.assert(
		fc.property(
			fc.double({ min: 20, max: 50, noNaN: true }),
			fc.double({ min: 20, max: 50, noNaN: true }),
			celsius,
			celsius,
			fc.integer({ min: 40, max: 120 }),
			(airOne, airOther, one, other, width) => {
				const steady = of(range(airOne, airOther), range(one, other));
				const drawn = powerGauge(steady, width);
				const { from, to, bars } = powerGaugeOf(steady);
				const [air = "", stage = "", scale = "", figures = ""] = drawn;
				for (const line of [air, stage, scale, figures]) {
					expect(line.length).toBeLessThanOrEqual(width);
					expect(line).toMatch(/^[\x20-\x7e]*$/);
				}
				const [start, end] = [scale.indexOf("-"), scale.length - 1];
				// One column is so many degrees; a bar's end lies within half of one.
				const column = (to - from) / (end - start);
				[air, stage].forEach((line, index) => {
					const bar = bars[index];
					const signs = [...line.slice(start)].flatMap((sign, at) => ("=>".includes(sign) ? [at] : []));
					const [first = -1, last = -1] = [signs[0], signs.at(-1)];
					expect(Math.abs(from + first * column - (bar?.low ?? 0))).toBeLessThanOrEqual(column / 2 + 1e-9);
					expect(Math.abs(from + last * column - (bar?.high ?? 0))).toBeLessThanOrEqual(column / 2 + 1e-9);
					expect(line.endsWith(">")).toBe(bar?.goesOn);
				});
				expect(stage.includes(">")).toBe(steady.hotSpotC.high > to);
				const told = figures.trim().split(/ +/).map(Number);
				// Where it is tight the end of the scale has no figure.
				expect([
					[from, 90, 105, to],
					[from, 90, 105],
				]).toContainEqual(told);
				if (width >= 60) expect(told).toHaveLength(4);
			},
		),
		{ numRuns: 400 },
	);
});
