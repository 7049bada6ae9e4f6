import { describe, expect, test } from "vitest";
import { advise } from "../../src/choose/advise.ts";
import type { Comparison, Lead } from "../../src/choose/comparison.ts";
import { judge } from "../../src/choose/judge.ts";
import { foldAnswers } from "../../src/questions/fold-answers.ts";
import { leadWords, ofHundred, pointsWords, reasonsWords } from "../../src/sheet/choice-words.ts";
import { demo, scenarios } from "../choose/demo.ts";

const names: Readonly<Record<string, string>> = { polka: "Polka", jig: "Jig" };
const boardName = (id: string) => names[id] ?? id;

const comparison = (more: Partial<Comparison> = {}): Comparison => ({
	boardId: "polka",
	otherId: "jig",
	gap: 16,
	shownGap: 16,
	contributions: [
		{ criterionId: "rescue", points: 18.8 },
		{ criterionId: "quiet", points: -4.2 },
		{ criterionId: "room", points: 1.4 },
	],
	enough: ["rescue"],
	worst: "quiet",
	turns: { criterionId: "quiet", now: 0.06, at: 0.26 },
	ahead: { share: 0.84, isExact: true },
	sureness: "likely",
	...more,
});
const lead = (nearest: Comparison | null, more: Partial<Lead> = {}): Lead => ({
	boardId: "polka",
	nearest,
	regret: 5,
	anyOf: [],
	restsOn: { placed: ["rescue", "quiet", "room"], free: [] },
	...more,
});

describe("how sure", () => {
	test("the word, the share, the reasons that add up, what would turn it, what it rests on", () => {
		expect(leadWords(lead(comparison()), boardName)).toEqual([
			"Polka is likely ahead of Jig, the next. It has more points in 84 of 100 tries with weights and unknown facts drawn by lot.",
			"Polka has 16 points more than Jig, mainly for help at the first start (19 more).",
			"For quiet it has 4 fewer.",
			"All else together makes 1 more.",
			"Jig would have more if quiet counted for more than 26 of 100; now that is 6.",
			"This rests on what you said matters to you.",
		]);
	});

	test("what was left open is named", () => {
		expect(
			leadWords(lead(comparison(), { restsOn: { placed: ["rescue"], free: ["quiet", "room"] } }), boardName).slice(-2),
		).toEqual(["This rests on what you said matters to you.", "Not weighed by you yet: quiet and room for later."]);
	});

	test("too close to call: any of these, and the first is the cheapest", () => {
		const close = comparison({ sureness: "too-close", ahead: { share: 0.55, isExact: false } });
		expect(leadWords(lead(close, { anyOf: ["polka", "jig"] }), boardName).slice(0, 2)).toEqual([
			"Too close to call between Polka and Jig: by points alone any of these will do.",
			"Polka stands first because it costs least of them. Before you choose, look at which processor and parts each of them suits.",
		]);
	});

	test("one board alone is ahead of nothing", () => {
		expect(leadWords(lead(null), boardName)).toEqual([
			"Polka is the only board to compare, so there is nothing to be ahead of.",
		]);
	});

	test("a share is whole, and never all while something else may be", () => {
		expect([0, 0.004, 0.5, 0.996, 1].map(ofHundred)).toEqual([0, 1, 50, 99, 100]);
		expect(leadWords(lead(comparison({ sureness: "clearly", ahead: { share: 1, isExact: true } })), boardName)[0]).toBe(
			"Polka is clearly ahead of Jig, the next. It has more points in all tries with weights and unknown facts drawn by lot.",
		);
	});
});

describe("reasons", () => {
	test("are told of the board with more points, whichever comes first", () => {
		const turned = comparison({
			boardId: "jig",
			otherId: "polka",
			gap: -16,
			shownGap: -16,
			contributions: comparison().contributions.map(({ criterionId, points }) => ({ criterionId, points: -points })),
		});
		expect(reasonsWords(turned, boardName)[0]).toBe(
			"Polka has 16 points more than Jig, mainly for help at the first start (19 more).",
		);
	});

	test("nothing between them is said as it is", () => {
		expect(
			reasonsWords(comparison({ gap: 0, shownGap: 0, contributions: [], enough: [], worst: null }), boardName),
		).toEqual(["Polka and Jig have about the same points."]);
	});
});

test.each(scenarios)("$name: the points told add up to the score shown, and no part passes its most", ({ file }) => {
	const { answers, asOf } = file;
	const { shortlist } = advise(judge(demo, foldAnswers(answers, { market: demo, asOf })), answers);
	for (const { score } of shortlist) {
		const told = [...pointsWords(score).matchAll(/(\d+) of (\d+) for/g)].map(([, got, most]) => [
			Number(got),
			Number(most),
		]);
		expect(told).toHaveLength(score.parts.length);
		expect(told.reduce((sum, [got = 0]) => sum + got, 0)).toBe(Math.round(score.mid));
		expect(told.reduce((sum, [, most = 0]) => sum + most, 0)).toBe(100);
		for (const [got = 0, most = 0] of told) expect(got).toBeLessThanOrEqual(most);
	}
});
