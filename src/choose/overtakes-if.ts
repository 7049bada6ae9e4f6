import { criterionById } from "../criteria/all-criteria.ts";
import type { Criterion } from "../criteria/define-criterion.ts";
import { unknownThreshold } from "../maths/unknown-threshold.ts";
import { marketLike } from "../parts/make-market.ts";
import { type TrialValue, trialsOf, withFact } from "./fact-trials.ts";
import { subjectsWith } from "./findings-of-market.ts";
import type { Judgement } from "./judge.ts";
import type { Ranked } from "./ranked-boards.ts";
import { measureBoard, type ScorePart, scoreOf } from "./score.ts";

/** What a missing fact of a board would have to be for the board to stand on the other side of another. */
export interface OvertakesIf {
	readonly boardId: string;
	readonly criterionId: string;
	/** Fact path from "board." on. */
	readonly path: string;
	/** True: it would pass the other. False: it would fall behind it. */
	readonly passes: boolean;
	readonly turn: Turning;
}

/**
 * From this number on, up to it, or with one of these values. `measure`: the fact cannot be gone through, such as a test;
 * then it is what the criterion would have to measure with it, in the criterion's unit.
 */
export type Turning =
	| { readonly kind: "at least" | "at most"; readonly value: number; readonly measure?: true }
	| { readonly kind: "one of"; readonly values: readonly TrialValue[] };

/**
 * For each missing fact that a criterion of this board lacks: with which values it would change places with the other
 * board, all else as expected now. Facts that never would, or always would, are left out.
 */
export function overtakesIf(judgement: Judgement, board: Ranked, other: Ranked): readonly OvertakesIf[] {
	const { market, build } = judgement;
	const weights = new Map(board.score.parts.map(({ criterionId, weight }) => [criterionId, weight]));
	const worlds = board.judged.possibleWorlds.flatMap((index) => build.worlds[index]?.facts ?? []);
	const passesNow = board.expected > other.expected;
	const expectedWith = (path: string, value: TrialValue) => {
		const changed = withFact(board.judged.board, path, value);
		const alone = marketLike(market, { ...market.parts, board: [changed] });
		const score = scoreOf(measureBoard(subjectsWith(alone, build.facts)(0), worlds), weights);
		return (score.mid * worlds.length) / build.worlds.length;
	};
	const turningOf = (path: string, part: ScorePart): Turning | null => {
		const trials = trialsOf(market, path);
		if (trials.length === 0) return measureThatTurns(board, part, other, !passesNow);
		// Level is on neither side.
		const turning = trials.filter((value) => {
			const ahead = expectedWith(path, value) - other.expected;
			return passesNow ? ahead < -level : ahead > level;
		});
		return turning.length === 0 || turning.length === trials.length ? null : rangeOf(trials, turning);
	};
	const seen = new Set<string>();
	return [...board.score.parts].sort(byWorth).flatMap((part) =>
		part.measure.missing.flatMap((missing): OvertakesIf[] => {
			const path = /^board\.(.+)$/.exec(missing)?.[1];
			if (path === undefined || seen.has(path)) return [];
			seen.add(path);
			const turn = turningOf(path, part);
			const { criterionId } = part;
			return turn ? [{ boardId: board.judged.board.id, criterionId, path: missing, passes: !passesNow, turn }] : [];
		}),
	);
}

/** Points nearer than this are rounding. */
const level = 1e-9;

/** What moves the score most comes first. */
function byWorth(one: ScorePart, other: ScorePart): number {
	const worth = ({ weight, value }: ScorePart) => weight * (value.high - value.low);
	return worth(other) - worth(one);
}

function rangeOf(trials: readonly TrialValue[], turning: readonly TrialValue[]): Turning {
	const numbers = turning.filter((value) => typeof value === "number");
	const [first, last] = [numbers[0], numbers.at(-1)];
	const oneOf: Turning = { kind: "one of", values: turning };
	if (first === undefined || last === undefined || numbers.length < turning.length) return oneOf;
	const [from, to] = [trials.indexOf(first), trials.indexOf(last)];
	if (to - from + 1 > turning.length) return oneOf;
	if (to === trials.length - 1) return { kind: "at least", value: first };
	return from === 0 ? { kind: "at most", value: last } : oneOf;
}

/** Criteria whose measure a person can read off a test; shares and sums of small scales would tell nobody anything. */
const measuredInDegrees: readonly string[] = ["steady-power"];

/** The measure at which both have as many points, all else as expected; null where it lies outside what may be. */
function measureThatTurns(
	board: Ranked,
	{ criterionId, weight, value, measure }: ScorePart,
	other: Ranked,
	passes: boolean,
): Turning | null {
	if (!measuredInDegrees.includes(criterionId)) return null;
	// With open answers a board's value hangs on them too, and one measure is no answer.
	if (board.judged.possibleWorlds.length > 1) return null;
	const scale = criterionById(criterionId)?.scale;
	const base = board.score.mid / 100 - weight * value.mid;
	const { ahead, threshold } = unknownThreshold(other.expected / 100, { base, weight, value });
	const turns = scale && ahead === "open" ? measureAt(scale, threshold) : null;
	if (turns === null || turns <= measure.low || turns >= measure.high) return null;
	const rises = (scale?.at(-1)?.[1] ?? 0) > (scale?.[0]?.[1] ?? 0);
	return { kind: rises === passes ? "at least" : "at most", value: turns, measure: true };
}

/** Where a scale that only rises or only falls has this value; null where it has it nowhere. */
function measureAt(scale: Criterion["scale"], value: number): number | null {
	for (const [index, [x, y]] of scale.entries()) {
		const [before, valueBefore] = scale[index - 1] ?? [x, y];
		if (y !== valueBefore && (value - y) * (value - valueBefore) <= 0)
			return before + ((x - before) * (value - valueBefore)) / (y - valueBefore);
	}
	return null;
}
