import { allCriteria } from "../criteria/all-criteria.ts";
import type { Money } from "../parts/money.ts";
import { partPrice } from "../parts/part-price.ts";
import { ruleById } from "../rules/all-rules.ts";
import type { Finding } from "../rules/outcome.ts";
import type { BoardJudgement, Judgement } from "./judge.ts";
import { measureBoard, type Score, scoreOf, weightsFor } from "./score.ts";

/** A board that is left, with its score. */
export interface Ranked {
	readonly judged: BoardJudgement;
	readonly score: Score;
	/** What to expect of it, in points of 100: a world in which it does not fit counts as zero points. */
	readonly expected: number;
	readonly price: Money | null;
}

/**
 * The boards that are left, best first. All are scored on the same criteria: those that say something of any of them.
 * Boards of one score in whole points go by price, then by the exact score, then by name, never by the order given.
 */
export function rankBoards(judgement: Judgement): readonly Ranked[] {
	const known = rankings.get(judgement) ?? ranked(judgement);
	rankings.set(judgement, known);
	return known;
}

/** Judgements never change, and several results rest on the ranking. */
const rankings = new WeakMap<Judgement, readonly Ranked[]>();

function ranked({ boards, build }: Judgement): readonly Ranked[] {
	const measured = boards
		.filter(({ verdict }) => verdict !== "does-not-fit")
		.map((judged) => ({
			judged,
			measures: measureBoard(
				judged.subject,
				judged.possibleWorlds.flatMap((index) => build.worlds[index]?.facts ?? []),
			),
		}));
	const weights = weightsFor(
		build.facts,
		allCriteria.filter(({ id }) => measured.some(({ measures }) => measures.has(id))),
	);
	return measured
		.map(({ judged, measures }): Ranked => {
			const score = scoreOf(measures, weights);
			return {
				judged,
				score,
				expected: (score.mid * judged.possibleWorlds.length) / build.worlds.length,
				price: (judged.subject.board && partPrice(judged.subject.board)?.price) ?? null,
			};
		})
		.sort(byScore);
}

/** A board that lacks more than twice what the best known one lacks, and these more, leads no list; own convention. */
const fewMore = 2;

/**
 * The boards to lead the list: those known to fit; else those of which all that matters is known, so that only the
 * person's own open answers decide; else those that lack little more than the one of which least is missing. A board
 * leads for what is known of it, never for what is not.
 */
export function candidatesOf(ranked: readonly Ranked[]): readonly Ranked[] {
	const sure = ranked.filter(({ judged }) => judged.verdict === "fits");
	if (sure.length > 0) return sure;
	const lacking = new Map(ranked.map((one) => [one, openFindings(one.judged).filter(lacksBoardFact).length]));
	const least = Math.min(...lacking.values());
	const most = least === 0 ? 0 : 2 * least + fewMore;
	return ranked.filter((one) => (lacking.get(one) ?? 0) <= most);
}

/** Whether it is the board of which something is missing; what is missing of the person's own parts is so for all. */
function lacksBoardFact({ missing }: Finding): boolean {
	return missing.length === 0 || missing.some((path) => /^(board|platform)\b/.test(path));
}

/** Findings that could stop the board and that no way an open answer can turn out settles: a fact is missing. */
export function openFindings({ findings, depending }: BoardJudgement): readonly Finding[] {
	const ids = new Set(depending.map(({ ruleId }) => ruleId));
	return findings.filter(({ ruleId, verdict }) => verdict !== "fits" && canStop(ruleId) && !ids.has(ruleId));
}

export function canStop(ruleId: string): boolean {
	return ruleById(ruleId)?.severity === "stops";
}

/** By whole points, then by price. */
export function byScore(one: Ranked, other: Ranked): number {
	return Math.round(other.expected) - Math.round(one.expected) || byPrice(one, other);
}

/** Cheapest first; a price not known comes last, and two currencies are kept apart, since none is converted. */
export function byPrice(one: Ranked, other: Ranked): number {
	const minor = ({ price }: Ranked) => price?.minor ?? Number.MAX_SAFE_INTEGER;
	return (
		byText(one.price?.currency ?? "~", other.price?.currency ?? "~") ||
		minor(one) - minor(other) ||
		byText(returnableUntil(other), returnableUntil(one)) ||
		other.expected - one.expected ||
		byText(one.judged.board.name, other.judged.board.name) ||
		byText(one.judged.board.id, other.judged.board.id)
	);
}

/** The latest day until which an offer at the asked price lets the board go back; "" where nobody says. */
function returnableUntil({ judged, price }: Ranked): string {
	const days = (judged.board.offers ?? []).flatMap((offer) =>
		offer.price.minor === price?.minor && offer.price.currency === price.currency ? (offer.returnableUntil ?? []) : [],
	);
	return days.sort().at(-1) ?? "";
}

function byText(one: string, other: string): number {
	return one === other ? 0 : one < other ? -1 : 1;
}
