import { isLeftBehind } from "../maths/dominance.ts";
import type { Interval } from "../maths/interval.ts";
import { pairwiseShare } from "../maths/pairwise-share.ts";
import { canBeBest } from "../maths/potential-optimality.ts";
import { type SampledPart, sampledValues } from "../maths/sampled-values.ts";
import { seededDraws } from "../maths/seeded-draws.ts";
import { firstPlaceShares, pairwiseShares, rankShares } from "../maths/shares.ts";
import { simplexSamples } from "../maths/simplex-samples.ts";
import type { WeightRegion } from "../maths/weight-region.ts";
import { weightsInTiers } from "../maths/weights-in-tiers.ts";
import type { BuildFacts } from "../parts/build.ts";
import { importanceTiers } from "../parts/build.ts";
import type { Score, ScorePart } from "./score.ts";

/** So many draws hold a share to one point of 100 in 95 of 100 cases (binomial bound: 9 604). */
export const sampleCount = 10_000;
/** Whatever is drawn comes from this; another number would give other boards the same shares within a point. */
const seed = 20_261_128;
/** Rank and pairwise shares are told among so many boards that can lead. */
const mostCompared = 20;
/** Past so many boards that might lead, those with the least to expect at best are left out of the draws. */
const mostSampled = 400;

/** A scored board as the samples need it. */
export interface SampledBoard {
	readonly boardId: string;
	readonly score: Score;
	/** Indexes of the worlds in which it fits; its score's byWorld lists stand in this order. */
	readonly possibleWorlds: readonly number[];
}

/** How often one board is ahead of another, over all that is not settled. */
export interface Ahead {
	/** 0 to 1; where both are alike it counts half. */
	readonly share: number;
	/** Worked out from a formula, where only weights are open; else drawn. */
	readonly isExact: boolean;
}

/**
 * One fixed set of draws of weights, unknown facts and open answers, from which all shares are taken, so that they move
 * only when answers move.
 */
export interface Samples {
	/** By board: the share of draws in which it has most points; sums to 1 over all boards given. Ties are shared. */
	readonly firstShare: ReadonlyMap<string, number>;
	/** The boards that may lead, the likeliest first; at most 20. */
	readonly leaders: readonly string[];
	/** Null where one of the two was not given, or nothing matters. */
	readonly ahead: (one: string, other: string) => Ahead | null;
	/**
	 * Whether some weights that the answers allow, and some values of what is not known, put it first; exact where no answer
	 * with several ways is open, else by the draws.
	 */
	readonly canLead: (boardId: string) => boolean;
	/** Share of draws in which a leader takes each rank among the leaders, best first; empty for others. */
	readonly ranks: (boardId: string) => readonly number[];
	/** Mean points of 100 over the draws in which it fits; null for a board that was not given. */
	readonly mean: (boardId: string) => number | null;
}

/** Criteria in tiers by the importance answers; those nobody has placed are free. Indexes follow the list given. */
export function regionOf(
	{ importance }: Pick<BuildFacts, "importance">,
	criterionIds: readonly string[],
): WeightRegion {
	const placed = (tier: string) => criterionIds.flatMap((id, index) => (importance[id] === tier ? [index] : []));
	const free = criterionIds.flatMap((id, index) => (importance[id] === undefined ? [index] : []));
	return { tiers: importanceTiers.filter((tier) => tier !== "not-at-all").map(placed), free };
}

/**
 * Draws scores of boards that are compared with each other. All have the same criteria, in the same order.
 *
 * @param worldCount of the build; each world is as likely as any other
 */
export function sampleScores(
	boards: readonly SampledBoard[],
	facts: Pick<BuildFacts, "importance">,
	worldCount: number,
): Samples {
	const criterionIds = boards[0]?.score.parts.map(({ criterionId }) => criterionId) ?? [];
	if (criterionIds.length === 0) return nothingMatters(boards);
	const region = regionOf(facts, criterionIds);
	const mayLead = withoutLeftBehind(boards, region, worldCount);
	const weights = weightColumns(region, criterionIds.length);
	// Where no board fits there is nothing to be ahead of.
	const fitting = [...new Set(boards.flatMap(({ possibleWorlds }) => possibleWorlds))].sort(
		(one, other) => one - other,
	);
	const stateOf = worldCount > 1 ? statesOfSamples(fitting) : null;
	const values = mayLead.map((board) => valuesOf(board, weights, worldCount, stateOf));
	const shares = firstPlaceShares(values);
	const firstShare = new Map(boards.map(({ boardId }) => [boardId, 0]));
	mayLead.forEach(({ boardId }, index) => {
		firstShare.set(boardId, shares[index] ?? 0);
	});
	const order = mayLead
		.map((board, index) => ({ board, values: values[index] as Float64Array, share: shares[index] ?? 0 }))
		.sort((one, other) => other.share - one.share || other.board.score.mid - one.board.score.mid)
		.slice(0, mostCompared);
	const boardOf = new Map(boards.map((board) => [board.boardId, board]));
	const drawn = new Map(mayLead.map((board, index) => [board, values[index] as Float64Array]));
	/** A board that cannot lead is drawn when somebody asks for it. */
	const drawnOf = (board: SampledBoard): Float64Array => {
		const known = drawn.get(board) ?? valuesOf(board, weights, worldCount, stateOf);
		drawn.set(board, known);
		return known;
	};
	let ranks: readonly (readonly number[])[] | null = null;
	return {
		firstShare,
		leaders: order.map(({ board }) => board.boardId),
		ahead(one, other) {
			const [first, second] = [boardOf.get(one), boardOf.get(other)];
			if (!first || !second) return null;
			const exact = worldCount === 1 ? exactShare(first.score, second.score, region) : null;
			return exact !== null
				? { share: exact, isExact: true }
				: { share: drawnShare(drawnOf(first), drawnOf(second), shareOfEither(first, second, stateOf)), isExact: false };
		},
		canLead(boardId) {
			if ((firstShare.get(boardId) ?? 0) > 0) return true;
			const board = mayLead.find((one) => one.boardId === boardId);
			if (!board || worldCount > 1) return false;
			return canBeBest(region, rangesOf(board), mayLead.filter((one) => one !== board).map(rangesOf));
		},
		ranks(boardId) {
			ranks ??= rankShares(order.map((entry) => entry.values));
			return ranks[order.findIndex(({ board }) => board.boardId === boardId)] ?? [];
		},
		mean(boardId) {
			const board = boardOf.get(boardId);
			return board ? meanWhereItFits(drawnOf(board), board, stateOf) : null;
		},
	};
}

/** Without any criterion all boards are alike. */
function nothingMatters(boards: readonly SampledBoard[]): Samples {
	return {
		firstShare: new Map(boards.map(({ boardId }) => [boardId, 1 / boards.length])),
		leaders: [],
		ahead: () => null,
		canLead: () => boards.length > 0,
		ranks: () => [],
		mean: () => null,
	};
}

/** Boards that some other one is ahead of whatever the weights and facts are never lead, and need no draw. */
function withoutLeftBehind(
	boards: readonly SampledBoard[],
	region: WeightRegion,
	worldCount: number,
): readonly SampledBoard[] {
	if (boards.length <= 1) return boards;
	// One that fits only in some worlds is ahead of nobody in the others.
	const strongest = boards
		.filter(({ possibleWorlds }) => possibleWorlds.length === worldCount)
		.sort((one, other) => other.score.low - one.score.low)
		.slice(0, 5);
	const isBehind = (board: SampledBoard) =>
		strongest.some((other) => other !== board && isLeftBehind(region, rangesOf(board), rangesOf(other)));
	const left = boards.filter((board) => !isBehind(board));
	return left.length <= mostSampled
		? left
		: [...left].sort((one, other) => other.score.high - one.score.high).slice(0, mostSampled);
}

const rangesOf = ({ score }: SampledBoard): readonly Interval[] => score.parts.map(({ value }) => value);

const rawColumns = new Map<number, readonly Float64Array[]>();
const dealtColumns = new Map<string, readonly Float64Array[]>();
const mostDealt = 32;

/** The same draws for every build with as many criteria, dealt out by its tiers; kept, since all questions ask again. */
function weightColumns(region: WeightRegion, criteria: number): readonly Float64Array[] {
	if (criteria === 0) return [];
	const key = JSON.stringify([criteria, region]);
	const known = dealtColumns.get(key);
	if (known) return known;
	const raw = rawColumns.get(criteria) ?? simplexSamples(seededDraws(seed), criteria, sampleCount);
	rawColumns.set(criteria, raw);
	const dealt = weightsInTiers(raw, region.tiers, region.free);
	dealtColumns.set(key, dealt);
	const [oldest] = dealtColumns.keys();
	if (dealtColumns.size > mostDealt && oldest !== undefined) dealtColumns.delete(oldest);
	return dealt;
}

/** Worlds in turn. A draw and its mirror image, half the samples on, are of one world. */
function statesOfSamples(worlds: readonly number[]): Uint8Array {
	return Uint8Array.from(
		{ length: sampleCount },
		(_, sample) => worlds[(sample % (sampleCount / 2)) % worlds.length] ?? 0,
	);
}

/** The share of samples in whose world one of two boards fits; a world in which neither does says nothing of the two. */
function shareOfEither(one: SampledBoard, other: SampledBoard, stateOf: Uint8Array | null): number {
	if (stateOf === null) return 1;
	const worlds = new Set([...one.possibleWorlds, ...other.possibleWorlds]);
	let count = 0;
	for (const world of stateOf) if (worlds.has(world)) count++;
	return count / stateOf.length;
}

function valuesOf(
	{ boardId, score, possibleWorlds }: SampledBoard,
	weights: readonly Float64Array[],
	worldCount: number,
	stateOf: Uint8Array | null,
): Float64Array {
	const place = new Map(possibleWorlds.map((world, at) => [world, at]));
	const states = Array.from({ length: worldCount }, (_, world) => {
		const at = place.get(world);
		return at === undefined ? null : score.parts.map((part) => partInWorld(part, at, boardId));
	});
	return sampledValues(weights, states, stateOf);
}

function partInWorld(part: ScorePart, at: number, boardId: string): SampledPart {
	const { low, high }: Interval = part.byWorld[at] ?? part.value;
	// Where it is known nothing is drawn.
	return { low, high, stream: low === high ? 0 : streamOf(part, boardId) };
}

/**
 * What is missing of the board itself is drawn for this board alone. What is missing of the person's own parts, or of
 * the room, is the same for every board and drawn once. So is what is left where only a test is missing: every figure of
 * the board is known then, and the estimate of heat errs by the same classes of surroundings for all (own convention).
 */
function streamOf({ criterionId, measure }: ScorePart, boardId: string): number {
	const ofBoard = measure.missing.filter((path) => /^(board|platform)\b/.test(path) && path !== onlyATest);
	const isShared = measure.missing.length > 0 && ofBoard.length === 0;
	return hashOf(isShared ? criterionId : `${criterionId} ${boardId}`);
}

const onlyATest = "board.powerDelivery.measurements";

/** FNV-1a over the text's UTF-16 units, 32 bits. */
function hashOf(text: string): number {
	let hash = 0x811c9dc5;
	for (let at = 0; at < text.length; at++) hash = Math.imul(hash ^ text.charCodeAt(at), 0x01000193);
	return hash >>> 0;
}

/** By formula where both boards' values are known and the region is simple enough; else null. */
function exactShare(one: Score, other: Score, region: WeightRegion): number | null {
	const isKnown = ({ parts }: Score) => parts.every(({ value }) => value.high - value.low < 1e-12);
	if (!isKnown(one) || !isKnown(other)) return null;
	const ahead = one.parts.map(({ value }, at) => value.low - (other.parts[at]?.value.low ?? 0));
	if (ahead.every((difference) => Math.abs(difference) < 1e-12)) return 0.5;
	return pairwiseShare(region, ahead);
}

/**
 * Samples in which both are level count half.
 *
 * @param counting the share of samples that count; in the others neither board fits, so that both have nothing
 */
function drawnShare(one: Float64Array, other: Float64Array, counting: number): number {
	if (counting === 0) return 0.5;
	const [[, wins = 0] = [], [losses = 0] = []] = pairwiseShares([one, other]).ahead;
	return (1 + (wins - losses) / counting) / 2;
}

function meanWhereItFits(
	values: Float64Array,
	{ possibleWorlds }: SampledBoard,
	stateOf: Uint8Array | null,
): number | null {
	const fits = new Set(possibleWorlds);
	let [sum, count] = [0, 0];
	for (let sample = 0; sample < values.length; sample++)
		if (stateOf === null || fits.has(stateOf[sample] as number)) {
			sum += values[sample] as number;
			count++;
		}
	return count === 0 ? null : (100 * sum) / count;
}
