import { type SampledPart, sampledValues } from "../../src/maths/sampled-values.ts";
import { seededDraws } from "../../src/maths/seeded-draws.ts";
import { firstPlaceShares, pairwiseShares, rankShares } from "../../src/maths/shares.ts";
import { simplexSamples } from "../../src/maths/simplex-samples.ts";
import { printFigure } from "./figure.ts";
import { median, msEach } from "./stop-watch.ts";

const boardCount = 200;
const criterionCount = 8;
const sampleCount = 10_000;
const rangeChance = 0.25;
const comparedCount = 20;
const worldCount = 8;
/** What all of it may take once it is compiled, in ms of processor time (own convention). */
const limitMs = 100;
/** Compilers of the runtime take a while to see what is worth their time. */
const warmUps = 12;
const rounds = 7;

/** One state of the world for each list of boards. */
type World = readonly (readonly SampledPart[])[];

interface Outcome {
	readonly first: readonly number[];
	readonly ranks: readonly (readonly number[])[];
	/** [one][other]: the share in which one is ahead, ties half. */
	readonly ahead: readonly (readonly number[])[];
}

const draw = seededDraws(20_261_128);
const world = Array.from({ length: boardCount }, (_, board) => madeUpParts(board));
const worlds = Array.from({ length: worldCount }, () =>
	world.map((parts, board) =>
		parts.map((part, at) => (draw() < 0.25 ? (madeUpParts(board)[at] as SampledPart) : part)),
	),
);
const weights = simplexSamples(draw, criterionCount, sampleCount);
/** Made once as well, since no answer changes it. */
const plainWeights = Array.from({ length: sampleCount }, () => {
	const exponentials = Array.from({ length: criterionCount }, () => -Math.log(1 - Math.random()));
	const sum = exponentials.reduce((total, value) => total + value, 0);
	return exponentials.map((value) => value / sum);
});
const what = `${boardCount} boards x ${criterionCount} criteria x ${sampleCount} samples, a quarter of the parts ranges`;
const then = `then first-place shares of all, pairwise and rank shares of the ${comparedCount} ahead`;

const one = timed([world]);
print(`values: ${what}`, one.values, one.plainValues, null);
print(`values: ${what}, ${then}`, one.whole, one.plainWhole, limitMs);
const many = timed(worlds);
print(`values: ${what}, ${worldCount} worlds; ${then}`, many.whole, many.plainWhole, null);

/**
 * Medians, in ms of processor time. Ours stands before and after the reference, so that noise meets both alike, but not
 * between its rounds: tidying up the lists of one would count as time of the other.
 */
function timed(of: readonly World[]) {
	const stateOf = of.length === 1 ? null : Uint8Array.from({ length: sampleCount }, (_, at) => at % of.length);
	const valuesOf = () => world.map((_, board) => sampledValues(weights, statesOf(of, board), stateOf));
	const whole = () => outcomeOf(valuesOf());
	const plainWhole = () => plainOutcomeOf(plainSamples(of));
	throwUnlessAlike(whole(), plainWhole());
	const before = [runs(valuesOf), runs(whole)] as const;
	const [plainValuesMs, plainWholeMs] = [runs(() => plainSamples(of)), runs(plainWhole)];
	return {
		values: median([...before[0], ...runs(valuesOf)]),
		whole: median([...before[1], ...runs(whole)]),
		plainValues: median(plainValuesMs),
		plainWhole: median(plainWholeMs),
	};
}

function runs(work: () => unknown): readonly number[] {
	for (let run = 0; run < warmUps; run++) work();
	return Array.from({ length: rounds }, () => msEach(1, work));
}

function statesOf(of: readonly World[], board: number): readonly (readonly SampledPart[])[] {
	return of.map((boards) => boards[board] as readonly SampledPart[]);
}

function outcomeOf(values: readonly Float64Array[]): Outcome {
	const first = firstPlaceShares(values);
	const leaders = leadersOf(first).map((board) => values[board] as Float64Array);
	const { ahead, tied } = pairwiseShares(leaders);
	return {
		first,
		ranks: rankShares(leaders),
		ahead: ahead.map((row, at) => row.map((share, other) => share + (tied[at]?.[other] ?? 0) / 2)),
	};
}

function leadersOf(first: readonly number[]): readonly number[] {
	const order = [...first.keys()].sort((a, b) => (first[b] as number) - (first[a] as number) || a - b);
	return order.slice(0, comparedCount);
}

/** As it is written when nobody minds the time: one object a sample, facts drawn as they come. */
function plainSamples(of: readonly World[]): readonly { readonly scores: readonly number[] }[] {
	return plainWeights.map((sampled) => {
		const boards = of[Math.floor(Math.random() * of.length)] as World;
		const scores = boards.map((parts) =>
			parts.reduce(
				(score, { low, high }, at) => score + (low + (high - low) * Math.random()) * (sampled[at] as number),
				0,
			),
		);
		return { scores };
	});
}

function plainOutcomeOf(samples: readonly { readonly scores: readonly number[] }[]): Outcome {
	const first = new Array<number>(boardCount).fill(0);
	for (const { scores } of samples) {
		const best = Math.max(...scores);
		const leaders = [...scores.keys()].filter((board) => scores[board] === best);
		for (const board of leaders) first[board] = (first[board] as number) + 1 / leaders.length / sampleCount;
	}
	const leaders = leadersOf(first);
	const ranks = leaders.map(() => leaders.map(() => 0));
	const ahead = leaders.map(() => leaders.map(() => 0));
	for (const { scores } of samples) {
		const sorted = leaders
			.map((board, leader) => ({ leader, score: scores[board] as number }))
			.sort((a, b) => b.score - a.score);
		sorted.forEach(({ leader }, rank) => {
			const row = ranks[leader] as number[];
			row[rank] = (row[rank] as number) + 1 / sampleCount;
		});
		leaders.forEach((board, leader) => {
			const row = ahead[leader] as number[];
			leaders.forEach((other, at) => {
				const difference = (scores[board] as number) - (scores[other] as number);
				row[at] = (row[at] as number) + (difference > 0 ? 1 : difference === 0 ? 0.5 : 0) / sampleCount;
			});
		});
	}
	return { first, ranks, ahead };
}

/** @throws Error if the two do not tell of the same boards: shares of 10 000 samples each may differ by 4 points */
function throwUnlessAlike(ours: Outcome, plain: Outcome): void {
	ours.first.forEach((share, board) => {
		if (Math.abs(share - (plain.first[board] as number)) > 0.04)
			throw new Error(`board ${board} leads in ${share} of ours and ${plain.first[board]} of the reference's samples`);
	});
}

function madeUpParts(board: number): readonly SampledPart[] {
	return Array.from({ length: criterionCount }, (_, criterion) => {
		const [one, other, isRange] = [draw(), draw(), draw() < rangeChance];
		return {
			low: isRange ? Math.min(one, other) : one,
			high: isRange ? Math.max(one, other) : one,
			stream: board * criterionCount + criterion,
		};
	});
}

/** How many times as long the reference takes stands beside both. */
function print(name: string, value: number, reference: number, limit: number | null): void {
	const referenceWork = "the same with lists of objects, plain loops and Math.random";
	printFigure({ name, value, unit: "ms of processor time", reference, referenceWork, ratio: reference / value, limit });
}
