import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { judge } from "../../src/choose/judge.ts";
import { fieldsMeasured, quickValues } from "../../src/choose/quick-values.ts";
import { rankBoards } from "../../src/choose/ranked-boards.ts";
import { headersSee, planSees, powerSees } from "../../src/choose/remembered-plans.ts";
import type { BuildFacts } from "../../src/parts/build.ts";
import { loadFactsOf } from "../../src/power/load-facts.ts";
import { foldAnswers } from "../../src/questions/fold-answers.ts";
import { anyAnswers, anyMarket, demoContext } from "./demo.ts";

test("verdicts and points are those of the whole judgement", () => {
	fc.assert(
		fc.property(anyAnswers, anyMarket, (answers, market) => {
			const build = foldAnswers(answers, { ...demoContext, market });
			const judgement = judge(market, build);
			const values = quickValues(market, build);
			expect(market.parts.board.map((_, place) => values.fits(place))).toEqual(
				judgement.boards.map(({ possibleWorlds }) => possibleWorlds.length / build.worlds.length),
			);
			const places = market.parts.board.map((_, place) => place);
			const points = values.pointsOf(places);
			const ranked = rankBoards(judgement);
			for (const { judged, score, expected } of ranked) {
				const place = market.parts.board.findIndex(({ id }) => id === judged.board.id);
				expect(points[place]?.low).toBeCloseTo(score.low, 9);
				expect(points[place]?.mid).toBeCloseTo(score.mid, 9);
				expect(points[place]?.high).toBeCloseTo(score.high, 9);
				expect((points[place]?.mid ?? 0) * values.fits(place)).toBeCloseTo(expected, 9);
			}
			expect(points.filter(({ high }) => high > 0).length).toBeLessThanOrEqual(ranked.length);
		}),
		{ numRuns: 60 },
	);
});

describe("what is measured depends on no other field of the build", () => {
	const measures: Readonly<Record<keyof typeof fieldsMeasured, (facts: BuildFacts) => unknown>> = {
		plan: planSees,
		headers: headersSee,
		power: powerSees,
		load: (facts) => JSON.stringify(loadFactsOf(facts)),
	};

	test.each(Object.keys(measures) as (keyof typeof measures)[])("%s", (root) => {
		fc.assert(
			fc.property(anyAnswers, (answers) => {
				const read = new Set<string>();
				const { facts } = foldAnswers(answers, demoContext);
				measures[root](
					new Proxy(facts, {
						get(target, field, receiver) {
							if (typeof field === "string") read.add(field);
							return Reflect.get(target, field, receiver);
						},
					}),
				);
				expect([...read].filter((field) => !(fieldsMeasured[root] as readonly string[]).includes(field))).toEqual([]);
			}),
			{ numRuns: 40 },
		);
	});
});
