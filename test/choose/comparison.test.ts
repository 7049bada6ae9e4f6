import { describe, expect, test } from "vitest";
import { advise } from "../../src/choose/advise.ts";
import { comparisonOf, leadOf } from "../../src/choose/comparison.ts";
import { judge } from "../../src/choose/judge.ts";
import { candidatesOf, type Ranked, rankBoards } from "../../src/choose/ranked-boards.ts";
import { sampleScores } from "../../src/choose/samples.ts";
import type { Board } from "../../src/parts/board.ts";
import type { Build } from "../../src/parts/build.ts";
import type { Market } from "../../src/parts/market.ts";
import { foldAnswers } from "../../src/questions/fold-answers.ts";
import type { GivenBuild } from "../rules/rule-subject.ts";
import { demo, scenarios } from "./demo.ts";
import { buildOf, countingOnly, goodBoard, goodBuild, smallMarket } from "./small-market.ts";

const aids = (count: 0 | 1 | 2 | 3): Partial<Board> => ({
	recovery: {
		flashWithoutProcessor: count >= 1,
		faultDisplay: count >= 2 ? "digits" : "none",
		resetAtBack: count >= 3,
	},
});
/** A fan of its own is worth nothing for quiet, none with fan plugs that slow any fan is worth all. */
const fan = (chipsetFan: boolean): Partial<Board> => ({
	chipsetFan,
	headers: { fans: [{ name: "FAN_1", use: "case", control: ["4-pin PWM", "3-pin voltage"] }] },
});
const { priceCap: _, ...uncapped } = goodBuild;
const build: GivenBuild = {
	...uncapped,
	importance: { ...countingOnly("rescue", "quiet"), rescue: "a-lot", quiet: "a-little" },
};

function compared(market: Market, given: Build) {
	const ranked = rankBoards(judge(market, given));
	const candidates = candidatesOf(ranked);
	const samples = sampleScores(
		candidates.map(({ judged, score }) => ({
			boardId: judged.board.id,
			score,
			possibleWorlds: judged.possibleWorlds,
		})),
		given.facts,
		given.worlds.length,
	);
	return { ranked, candidates, samples };
}

test("a board of which nothing is known leads nothing, though no way to lose is known either", () => {
	const { supportList: _list, ...unlisted } = goodBoard;
	const market = smallMarket([{ id: "listless", ...unlisted }, { id: "nil" }]);
	const { ranked, candidates } = compared(market, buildOf(build));
	expect(ranked.map(({ judged }) => judged.board.id).toSorted()).toEqual(["listless", "nil"]);
	expect(ranked.every(({ judged }) => judged.verdict === "cannot-tell")).toBe(true);
	expect(candidates.map(({ judged }) => judged.board.id)).toEqual(["listless"]);
});

describe("two boards", () => {
	// Of two criteria the first weighs 3/4. Three aids against none: 75 points more. A fan of its own: 25 fewer.
	const market = smallMarket([
		{ ...goodBoard, ...aids(3), ...fan(true) },
		{ ...goodBoard, ...aids(0), ...fan(false) },
	]);
	const { candidates, samples } = compared(market, buildOf(build));
	const [first, second] = candidates as [Ranked, Ranked];
	const comparison = comparisonOf(first, second, samples);

	test("what each criterion adds sums to the gap", () => {
		expect(comparison.contributions.map(({ criterionId }) => criterionId).sort()).toEqual(["quiet", "rescue"]);
		const sum = comparison.contributions.reduce((total, { points }) => total + points, 0);
		expect(sum).toBeCloseTo(comparison.gap, 9);
		expect(comparison.gap).toBeCloseTo(first.score.mid - second.score.mid, 9);
	});

	test("the fewest reasons that outweigh the rest, and the greatest against it", () => {
		expect(comparison).toMatchObject({ boardId: "board-1", otherId: "board-2", enough: ["rescue"], worst: "quiet" });
	});

	test("at the turn both have as many points", () => {
		const { turns } = comparison;
		expect(turns).not.toBeNull();
		if (!turns) return;
		const scoreAt = ({ score }: Ranked) => {
			const now = score.parts.find(({ criterionId }) => criterionId === turns.criterionId)?.weight ?? 0;
			return score.parts.reduce(
				(sum, { criterionId, weight, value }) =>
					sum + value.mid * (criterionId === turns.criterionId ? turns.at : (weight * (1 - turns.at)) / (1 - now)),
				0,
			);
		};
		expect(scoreAt(first)).toBeCloseTo(scoreAt(second), 9);
	});

	test("seen from the one behind, the same reasons with a gap below nothing", () => {
		const turned = comparisonOf(second, first, samples);
		expect(turned.gap).toBeCloseTo(-comparison.gap, 9);
		expect(turned).toMatchObject({ enough: ["rescue"], worst: "quiet" });
		expect((turned.ahead?.share ?? 0) + (comparison.ahead?.share ?? 0)).toBeCloseTo(1, 9);
	});

	test("where one is better in all that counts, nothing turns them and nothing is against it", () => {
		const better = smallMarket([
			{ ...goodBoard, ...aids(3), ...fan(false) },
			{ ...goodBoard, ...aids(0), ...fan(true) },
		]);
		const other = compared(better, buildOf(build));
		const [one, two] = other.ranked as [Ranked, Ranked];
		expect(comparisonOf(one, two, other.samples)).toMatchObject({ worst: null, turns: null });
	});
});

describe("the lead", () => {
	test("says what was placed and what was left free", () => {
		const half: GivenBuild = { ...uncapped, importance: { ...countingOnly("rescue", "quiet"), rescue: "a-lot" } };
		const { quiet: __, ...importance } = half.importance ?? {};
		const market = smallMarket([{ ...goodBoard, ...aids(3) }]);
		const given = buildOf({ ...half, importance });
		const { candidates, samples } = compared(market, given);
		const [best] = candidates as [Ranked];
		expect(leadOf(best, candidates, null, [], samples, given.facts)).toMatchObject({
			nearest: null,
			anyOf: [],
			restsOn: { placed: ["rescue"], free: ["quiet"] },
		});
	});

	test("names the board that is ahead of it most often, though another has more points on average", () => {
		// Two aids are worth 90 or more. An unknown number of them is anything from nothing to all: 50 on average.
		const only: GivenBuild = { ...uncapped, importance: { ...countingOnly("rescue"), rescue: "a-lot" } };
		const { recovery: ___, ...silent } = { ...goodBoard, ...aids(3) };
		const market = smallMarket([{ ...goodBoard, ...aids(2) }, { ...goodBoard, ...aids(1) }, silent]);
		const given = buildOf(only);
		const advice = advise(judge(market, given), {});
		expect(advice.lead?.boardId).toBe("board-1");
		expect(advice.lead?.nearest?.otherId).toBe("board-3");
	});
});

test.each(scenarios)("$name: reasons add up, for each board of the shortlist", ({ file: { answers, asOf } }) => {
	const advice = advise(judge(demo, foldAnswers(answers, { market: demo, asOf })), answers);
	for (const { behind } of advice.shortlist) {
		if (!behind) continue;
		const points = behind.contributions.map((one) => (behind.gap < 0 ? -one.points : one.points));
		expect(points.reduce((sum, one) => sum + one, 0)).toBeCloseTo(Math.abs(behind.gap), 9);
		const of = (id: string | null) =>
			points[behind.contributions.findIndex(({ criterionId }) => criterionId === id)] ?? 0;
		const against = points.filter((one) => one < 0).reduce((sum, one) => sum - one, 0);
		const pluses = behind.enough.map(of);
		if (Math.abs(behind.gap) > 1e-9) {
			expect(pluses.reduce((sum, one) => sum + one, 0)).toBeGreaterThan(against);
			// One reason less would not do.
			if (pluses.length > 1)
				expect(pluses.slice(0, -1).reduce((sum, one) => sum + one, 0)).toBeLessThanOrEqual(against + 1e-9);
		}
		expect(of(behind.worst)).toBeCloseTo(Math.min(0, ...points), 9);
	}
});
