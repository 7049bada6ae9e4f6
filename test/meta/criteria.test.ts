import { existsSync, readdirSync } from "node:fs";
import { fileURLToPath } from "node:url";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { allCriteria } from "../../src/criteria/all-criteria.ts";
import { hasOwner, ownersTable } from "../../src/criteria/owners.ts";
import { piecewiseLinear } from "../../src/maths/piecewise-linear.ts";
import { emptyBuildFacts } from "../../src/parts/build.ts";
import { factAt } from "../../src/parts/fact-list.ts";
import { partKindNames } from "../../src/parts/part-kinds.ts";
import { wantNames } from "../../src/parts/wants.ts";
import { planFactsOf } from "../../src/plan/plan-facts.ts";
import { powerFactsOf } from "../../src/power/power-facts.ts";
import { allQuestions } from "../../src/questions/all-questions.ts";
import { allSources } from "../../src/reference/sources.ts";

const root = fileURLToPath(new URL("../..", import.meta.url));

test("every criterion's file is in the list, and every criterion in the list has a file and a test of its name", () => {
	const files = readdirSync(`${root}src/criteria`)
		.map((file) => file.replace(/\.ts$/, ""))
		.filter((file) => !["all-criteria", "define-criterion", "owners", "sum-of-scales"].includes(file));
	expect(allCriteria.map(({ id }) => id).sort()).toEqual(files.sort());
	for (const id of files) expect(existsSync(`${root}test/criteria/${id}.test.ts`), id).toBe(true);
});

test("at most eight: more cannot be weighed against each other", () => {
	expect(allCriteria.length).toBeLessThanOrEqual(8);
	expect(new Set(allCriteria.map(({ id }) => id)).size).toBe(allCriteria.length);
});

test("every fact of a board has one owner, or it would count twice", () => {
	const paths = ownersTable().flatMap(({ owns }) => owns);
	expect(paths).toEqual(allCriteria.flatMap(({ reads }) => reads.filter(hasOwner)));
	expect(new Set(paths).size).toBe(paths.length);
	const isInside = (path: string) => paths.some((other) => path.startsWith(`${other}.`));
	expect(paths.filter(isInside)).toEqual([]);
	// What differs from board to board begins with one of these; all else is of the person's own parts and plans.
	const ofPerson = allCriteria.flatMap(({ reads }) => reads).filter((path) => !hasOwner(path));
	const roots: readonly string[] = [...wantNames, "wish", ...Object.keys(emptyBuildFacts)];
	for (const path of ofPerson) expect(roots, path).toContain(path.split(".")[0]);
});

test("doubling the money changes no leader that has all that was asked and a small reserve", () => {
	const corners = allCriteria.flatMap(({ id, scale, madeOf }) =>
		[{ name: id, scale }, ...(madeOf ?? [])].map((one) => ({ name: `${id}: ${one.name}`, scale: one.scale })),
	);
	fc.assert(
		fc.property(fc.constantFrom(...corners), fc.double({ min: 0, max: 1e6, noNaN: true }), ({ name, scale }, more) => {
			const [least, most] = [scale[0], scale.at(-1)] as [readonly [number, number], readonly [number, number]];
			const isRising = most[1] > least[1];
			const measure = isRising ? most[0] + more : least[0] - more;
			expect(piecewiseLinear(scale, measure), name).toBe(1);
		}),
	);
});

/** What a plan tells, even of a board of which nothing is known. */
const emptyPlan = planFactsOf({ id: "a-board", name: "A board" }, emptyBuildFacts);
const emptyPower = powerFactsOf({ id: "a-board", name: "A board" }, emptyBuildFacts);
const wishIds = allQuestions.filter(({ isWish }) => isWish).map(({ id }) => id);

test("the price is never scored", () => {
	expect(allCriteria.flatMap(({ reads }) => reads).filter((path) => /price|offers/i.test(path))).toEqual([]);
});

describe.each(allCriteria)("$id", (criterion) => {
	test.each(criterion.reads)("%s is a fact", (path) => {
		const [part = "", ...keys] = path.split(".");
		if (part === "wish") expect(wishIds).toContain(keys.join("."));
		else if (part === "plan") expect(Object.keys(emptyPlan)).toContain(keys.join("."));
		else if (part === "power") expect(Object.keys(emptyPower)).toContain(keys.join("."));
		else if (keys.length === 0) expect([...wantNames, ...partKindNames]).toContain(path);
		else {
			expect(partKindNames).toContain(part);
			expect(factAt(part as (typeof partKindNames)[number], keys.join("."))).toBeDefined();
		}
	});

	test("reads something of the board", () => {
		expect(criterion.reads.join()).toMatch(/\b(board|plan|power)\./);
	});

	const measures = criterion.scale.map(([measure]) => measure);
	const values = criterion.scale.map(([, value]) => value);

	test("its scale rises in the measure, and goes one way in value, from nothing to all or back", () => {
		for (const [index, measure] of measures.entries())
			if (index > 0) expect(measure).toBeGreaterThan(measures[index - 1] as number);
		const steps = values.slice(1).map((value, index) => value - (values[index] as number));
		expect(steps.every((step) => step > 0) || steps.every((step) => step < 0)).toBe(true);
		expect([Math.min(...values), Math.max(...values)]).toEqual([0, 1]);
	});

	test("beyond its ends money buys nothing", () => {
		const [least, most] = [measures[0] as number, measures.at(-1) as number];
		for (const far of [1, 10, 1e6]) {
			expect(piecewiseLinear(criterion.scale, least - far)).toBe(values[0]);
			expect(piecewiseLinear(criterion.scale, most + far)).toBe(values.at(-1));
		}
	});

	test("the last step toward its best end is worth the least", () => {
		// Else it would reward most what hardly anybody asks for.
		const slopes = criterion.scale.slice(1).map(([measure, value], index) => {
			const [before, valueBefore] = criterion.scale[index] as readonly [number, number];
			return Math.abs((value - valueBefore) / (measure - before));
		});
		expect(values[0] === 0 ? slopes.at(-1) : slopes[0]).toBe(Math.min(...slopes));
	});

	test("is asked by its consequence, with both ends, and says on what grounds", () => {
		expect(criterion.asks).toMatch(/^How much would .*\?$/);
		expect(criterion.why).toMatch(/^[A-Z].*\.$/);
		expect(criterion.grounds).toMatch(/^\S.*\.$/);
		expect(criterion.ends.worst).toMatch(/^[a-z].*[^.]$/);
		expect(criterion.ends.best).toMatch(/^[a-z].*[^.]$/);
		expect(criterion.name).toMatch(/^[a-z].*[^.]$/);
		expect(criterion.unit).not.toBe("");
		expect(allSources().map(({ id }) => id)).toContain(criterion.source);
	});

	test("of small scales each is from nothing to all, one way, with the last step worth the least", () => {
		for (const { scale, weight, name, unit } of criterion.madeOf ?? []) {
			const points = scale.map(([, value]) => value);
			expect([Math.min(...points), Math.max(...points)]).toEqual([0, 1]);
			const slopes = scale.slice(1).map(([measure, value], index) => {
				const [before, valueBefore] = scale[index] as readonly [number, number];
				expect(measure).toBeGreaterThan(before);
				return (value - valueBefore) / (measure - before);
			});
			expect(slopes.every((slope) => slope > 0) || slopes.every((slope) => slope < 0)).toBe(true);
			const steep = slopes.map(Math.abs);
			expect(points[0] === 0 ? steep.at(-1) : steep[0]).toBe(Math.min(...steep));
			expect(weight).toBeGreaterThan(0);
			expect([name, unit]).not.toContain("");
		}
	});

	test("one question asks how much it matters", () => {
		expect(allQuestions.filter(({ ask }) => ask === criterion.asks)).toHaveLength(1);
	});

	test("of nothing known it says nothing, or a range that names what is missing", () => {
		const measure = criterion.measure({});
		if (measure) {
			expect(measure.low).toBeLessThanOrEqual(measure.high);
			expect(measure.missing.length).toBeGreaterThan(0);
			for (const path of measure.missing) expect(criterion.reads).toContain(path);
		}
	});
});
