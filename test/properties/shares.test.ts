import fc from "fast-check";
import { expect, test } from "vitest";
import type { Judgement } from "../../src/choose/judge.ts";
import { candidatesOf, rankBoards } from "../../src/choose/ranked-boards.ts";
import { sampleScores } from "../../src/choose/samples.ts";
import { anyAnswersIn } from "./any-answers.ts";
import { anyMarket } from "./any-market.ts";
import { runs } from "./runs.ts";
import { viewOf, walkIn } from "./whole-way.ts";

const sum = (values: Iterable<number>): number => [...values].reduce((total, value) => total + value, 0);
const tiny = 1e-9;

/** The draws as advise makes them. */
function samplesOf(judgement: Judgement) {
	const candidates = candidatesOf(rankBoards(judgement)).map(({ judged, score }) => ({
		boardId: judged.board.id,
		score,
		possibleWorlds: judged.possibleWorlds,
	}));
	return { candidates, samples: sampleScores(candidates, judgement.build.facts, judgement.build.worlds.length) };
}

test("weights, first places, ranks and pairs each share one whole, in any market", () => {
	let compared = 0;
	fc.assert(
		fc.property(anyAnswersIn(anyMarket(6)), ({ market, answers }) => {
			const judgement = viewOf(walkIn(market, answers)).judgement();
			const ranked = rankBoards(judgement);
			for (const { score } of ranked) {
				if (score.parts.length > 0) expect(sum(score.parts.map(({ weight }) => weight))).toBeCloseTo(1, 9);
				const mid = sum(score.parts.map(({ weight, value }) => 100 * weight * value.mid));
				if (score.parts.length > 0) expect(mid).toBeCloseTo(score.mid, 9);
				expect(score.low).toBeLessThanOrEqual(score.mid + tiny);
				expect(score.mid).toBeLessThanOrEqual(score.high + tiny);
				expect(Math.min(score.low, 100 - score.high)).toBeGreaterThanOrEqual(-tiny);
			}
			const { candidates, samples } = samplesOf(judgement);
			if (candidates.length === 0) return;
			const shares = candidates.map(({ boardId }) => samples.firstShare.get(boardId) ?? Number.NaN);
			expect(sum(shares)).toBeCloseTo(1, 9);
			expect(Math.min(...shares)).toBeGreaterThanOrEqual(0);
			if (samples.leaders.length === 0) return;
			const ranks = samples.leaders.map((id) => samples.ranks(id));
			for (const ofBoard of ranks) expect(sum(ofBoard)).toBeCloseTo(1, 9);
			for (const place of samples.leaders.keys()) expect(sum(ranks.map((all) => all[place] ?? 0))).toBeCloseTo(1, 9);
			samples.leaders.forEach((id, index) => {
				expect(ranks[index]?.[0]).toBeCloseTo(samples.firstShare.get(id) ?? Number.NaN, 9);
			});
			for (const one of candidates)
				for (const other of candidates) {
					if (one === other) continue;
					compared++;
					const [here, there] = [samples.ahead(one.boardId, other.boardId), samples.ahead(other.boardId, one.boardId)];
					expect((here?.share ?? 0) + (there?.share ?? 0)).toBeCloseTo(1, 9);
				}
		}),
		runs(25),
	);
	expect(compared).toBeGreaterThan(5);
});

test("whole points told as parts of a score add up to it, and what they are of to 100", () => {
	let told = 0;
	fc.assert(
		fc.property(anyAnswersIn(anyMarket(6)), ({ market, answers }) => {
			const view = viewOf(walkIn(market, answers));
			for (const { name, pointsWords, score } of view.sheet().shortlist) {
				const parts = [...pointsWords.matchAll(/(\d+) of (\d+) for /g)].map(([, got, most]) => [
					Number(got),
					Number(most),
				]);
				if (parts.length === 0) continue;
				told++;
				expect(sum(parts.map(([got = 0]) => got)), `${name}: ${pointsWords}`).toBe(score.mid);
				expect(sum(parts.map(([, most = 0]) => most)), `${name}: ${pointsWords}`).toBe(100);
				for (const [got = 0, most = 0] of parts) expect(got, pointsWords).toBeLessThanOrEqual(most);
			}
		}),
		runs(25),
	);
	expect(told).toBeGreaterThan(8);
});

test("whole points told as parts of a gap add up to the difference of the two scores", () => {
	let told = 0;
	fc.assert(
		fc.property(anyAnswersIn(anyMarket(6)), ({ market, answers }) => {
			const [first, ...others] = viewOf(walkIn(market, answers)).sheet().shortlist;
			for (const { score, behind } of others) {
				const words = behind.join(" ");
				const total = / has (\d+) points? more than /.exec(words)?.[1];
				if (total === undefined || !first) continue;
				told++;
				expect(Number(total), words).toBe(Math.abs(first.score.mid - score.mid));
				const more = [...words.matchAll(/\((\d+) more\)/g)].map(([, points]) => Number(points));
				const fewer = [...words.matchAll(/ it has (\d+) fewer\./g)].map(([, points]) => -Number(points));
				const rest = [...words.matchAll(/All else together makes (\d+) (more|fewer)\./g)].map(([, points, sign]) =>
					sign === "more" ? Number(points) : -Number(points),
				);
				expect(sum([...more, ...fewer, ...rest]), words).toBe(Number(total));
			}
		}),
		runs(25),
	);
	expect(told).toBeGreaterThan(1);
});
