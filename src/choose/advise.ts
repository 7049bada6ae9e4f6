import { criterionById } from "../criteria/all-criteria.ts";
import type { Answers } from "../parts/answers-file.ts";
import type { Money } from "../parts/money.ts";
import { ruleById } from "../rules/all-rules.ts";
import type { Finding, Verdict } from "../rules/outcome.ts";
import type { BoardJudgement, BuildFinding, Depending, Judgement } from "./judge.ts";
import { nextQuestion } from "./next-question.ts";
import { type Score, type ScorePart, scoreBoard } from "./score.ts";
import { type WayOut, waysOut } from "./ways-out.ts";

/**
 * Why a board stands on the shortlist. "best-match": highest score among boards known to fit (where none is,
 * see candidatesOf), and of a tie the cheapest. "lowest-price": cheapest among the same. "also-good": next by score, unless a
 * better one costs no more. "check-first": would be the best match, if what cannot be told turns out well, or fills a
 * short list.
 */
export type Role = "best-match" | "lowest-price" | "also-good" | "check-first";

/** A reason: a rule's finding, what a rule depends on, or a criterion's share. */
export type Reason =
	/** `certain`: it holds however the open answers turn out. */
	| { readonly kind: "finding"; readonly finding: Finding; readonly certain: boolean }
	| { readonly kind: "depends"; readonly depending: Depending }
	/** Rules that cannot tell and can stop nothing, and criteria of less weight that lack facts: one line for all of them. */
	| { readonly kind: "also-unknown"; readonly ruleIds: readonly string[]; readonly criterionIds: readonly string[] }
	| { readonly kind: "criterion"; readonly part: ScorePart };

export interface ShortlistEntry {
	readonly boardId: string;
	readonly role: Role;
	readonly verdict: Exclude<Verdict, "does-not-fit">;
	/** It fits, but a rule that could have stopped it names something to plan around. */
	readonly planAround: boolean;
	readonly score: Score;
	readonly price: Money | null;
	readonly for: readonly Reason[];
	readonly against: readonly Reason[];
	/** What is not known of it and could change its place. */
	readonly unknown: readonly Reason[];
	readonly dependsOn: readonly string[];
	/** In how many of the ways the open answers can turn out no rule fails. */
	readonly ways: { readonly fit: number; readonly all: number };
}

export interface Advice {
	readonly counts: Judgement["counts"];
	/** At most five boards, in the order to look at them. */
	readonly shortlist: readonly ShortlistEntry[];
	/** Every board left, best first. */
	readonly ranking: readonly { readonly boardId: string; readonly score: Score }[];
	readonly buildFindings: readonly BuildFinding[];
	readonly waysOut: readonly WayOut[];
	readonly nextQuestion: string | null;
}

const mostListed = 5;
/** Of these at most so many are boards a person typed in, whatever their place. */
const mostOwn = 2;
/** A criterion is a reason for a board from this value on, and against it up to that one. */
const speaksFor = 0.9;
const speaksAgainst = 0.45;
/** More criteria that lack facts than this are not told one by one. */
const mostUnsureTold = 2;

/**
 * The shortlist with reasons, from a judgement. Boards of one score in whole points go by price, then by the exact score,
 * then by name, never by the order given.
 */
export function advise(judgement: Judgement, answers: Answers): Advice {
	const left = judgement.boards
		.filter(({ verdict }) => verdict !== "does-not-fit")
		.map((judged) => rankedOf(judged, judgement));
	const ranked = [...left].sort(byScore);
	const roles = rolesOf(candidatesOf(ranked), ranked);
	return {
		counts: judgement.counts,
		shortlist: [...roles].map(([entry, role]) => entryOf(entry, role, judgement.build.worlds.length)),
		ranking: ranked.map(({ judged, score }) => ({ boardId: judged.board.id, score })),
		buildFindings: judgement.buildFindings,
		waysOut: waysOut(judgement),
		nextQuestion: nextQuestion(answers, judgement.build),
	};
}

/**
 * The boards to lead the list: those known to fit; else those of which all that matters is known, so that only the
 * person's own open answers decide; else all. A board leads for what is known of it, never for what is not.
 */
function candidatesOf(ranked: readonly Ranked[]): readonly Ranked[] {
	const sure = ranked.filter(({ judged }) => judged.verdict === "fits");
	if (sure.length > 0) return sure;
	const known = ranked.filter(({ judged }) => !openFindings(judged).some(lacksBoardFact));
	return known.length > 0 ? known : ranked;
}

/** Whether it is the board of which something is missing; what is missing of the person's own parts is so for all. */
function lacksBoardFact({ missing }: Finding): boolean {
	return missing.length === 0 || missing.some((path) => /^(board|platform)\b/.test(path));
}

/** Findings that could stop the board and that no way an open answer can turn out settles: a fact is missing. */
function openFindings({ findings, depending }: BoardJudgement): readonly Finding[] {
	const ids = new Set(depending.map(({ ruleId }) => ruleId));
	return findings.filter(({ ruleId, verdict }) => verdict !== "fits" && canStop(ruleId) && !ids.has(ruleId));
}

/** Whether there is something to plan around. */
export function plansAround({ findings }: Pick<BoardJudgement, "findings">): boolean {
	return findings.some(({ severity }) => severity === "plan-around");
}

function canStop(ruleId: string): boolean {
	return ruleById(ruleId)?.severity === "stops";
}

interface Ranked {
	readonly judged: BoardJudgement;
	readonly score: Score;
	/** What to expect of it: a world in which it does not fit counts as zero points. */
	readonly expected: number;
	readonly price: Money | null;
}

function rankedOf(judged: BoardJudgement, { build }: Judgement): Ranked {
	const worlds = judged.possibleWorlds.flatMap((index) => build.worlds[index]?.facts ?? []);
	const score = scoreBoard(judged.subject, worlds);
	return {
		judged,
		score,
		expected: (score.mid * worlds.length) / build.worlds.length,
		price: judged.subject.board?.price ?? null,
	};
}

function byScore(one: Ranked, other: Ranked): number {
	return Math.round(other.expected) - Math.round(one.expected) || byPrice(one, other);
}

/** Cheapest first; a price not known comes last, and two currencies are kept apart, since none is converted. */
function byPrice(one: Ranked, other: Ranked): number {
	const minor = ({ price }: Ranked) => price?.minor ?? Number.MAX_SAFE_INTEGER;
	return (
		byText(one.price?.currency ?? "~", other.price?.currency ?? "~") ||
		minor(one) - minor(other) ||
		other.expected - one.expected ||
		byText(one.judged.board.name, other.judged.board.name) ||
		byText(one.judged.board.id, other.judged.board.id)
	);
}

function byText(one: string, other: string): number {
	return one === other ? 0 : one < other ? -1 : 1;
}

/** Boards this close in points are a tie; among them the cheapest comes first (own convention, in points of 100). */
const tiePoints = 2;

function rolesOf(candidates: readonly Ranked[], ranked: readonly Ranked[]): ReadonlyMap<Ranked, Role> {
	const roles = new Map<Ranked, Role>();
	const top = candidates[0];
	if (!top) return roles;
	const tied = candidates.filter(({ expected }) => top.expected - expected <= tiePoints);
	const best = [...tied].sort(byPrice)[0] ?? top;
	roles.set(best, "best-match");
	const currency = (best.price ?? candidates.find(({ price }) => price)?.price)?.currency;
	const priced = candidates.filter(({ price }) => price && price.currency === currency);
	const cheapest = [...priced].sort(byPrice)[0];
	if (cheapest && cheapest !== best) roles.set(cheapest, "lowest-price");
	const others = ranked.filter((entry) => !candidates.includes(entry));
	const better = others.find((entry) => byScore(entry, best) < 0);
	if (better) roles.set(better, "check-first");
	for (const entry of ownAmongInvented(ranked).slice(0, mostOwn))
		if (!roles.has(entry)) roles.set(entry, candidates.includes(entry) ? "also-good" : "check-first");
	for (const entry of candidates)
		if (roles.size < mostListed && !roles.has(entry) && !isBeaten(entry, candidates)) roles.set(entry, "also-good");
	// A short list is filled with boards that may fit, so that none is forgotten for a fact that can be found out.
	for (const entry of others) if (roles.size < mostListed && !roles.has(entry)) roles.set(entry, "check-first");
	return roles;
}

/** Real boards that a person typed in beside the demonstration's: those they are thinking about. */
function ownAmongInvented(ranked: readonly Ranked[]): readonly Ranked[] {
	const own = ranked.filter(({ judged }) => judged.board.invented !== true);
	return own.length < ranked.length ? own : [];
}

/** Whether another board is better by more than a tie and costs no more; the same currency only. */
function isBeaten(entry: Ranked, candidates: readonly Ranked[]): boolean {
	return candidates.some(
		(other) =>
			other.price !== null &&
			entry.price !== null &&
			other.price.currency === entry.price.currency &&
			other.price.minor <= entry.price.minor &&
			other.expected - entry.expected > tiePoints,
	);
}

function entryOf({ judged, score, price }: Ranked, role: Role, allWays: number): ShortlistEntry {
	const byShare = [...score.parts].sort((one, other) => other.weight - one.weight);
	const narrow = ({ value }: ScorePart) => value.high - value.low <= 0.2;
	const isCaution = ({ severity }: Finding) => severity === "plan-around" || severity === "good-to-know";
	const unsettled = new Set(judged.unsettledRuleIds);
	const isCertain = ({ ruleId }: Finding) => !unsettled.has(ruleId);
	const cautions = judged.findings.filter(isCaution);
	const findingReason = (finding: Finding): Reason => ({ kind: "finding", finding, certain: isCertain(finding) });
	const knowsBoard = ({ measure }: ScorePart) => !measure.missing.some((path) => path.startsWith("board."));
	const open = openFindings(judged);
	const unsure = byShare.filter((part) => !narrow(part) && part.measure.missing.length > 0 && !speaksAgainstIt(part));
	// A page that says next to nothing would else fill the screen with what is not known.
	const [told, folded] = unsure.length > mostUnsureTold ? [unsure.slice(0, 1), unsure.slice(1)] : [unsure, []];
	const minor = judged.findings.flatMap(({ ruleId, verdict }) =>
		verdict === "cannot-tell" && !canStop(ruleId) ? [ruleId] : [],
	);
	return {
		boardId: judged.board.id,
		role,
		verdict: judged.verdict === "fits" ? "fits" : "cannot-tell",
		planAround: plansAround(judged),
		score,
		price,
		for: byShare.filter((part) => part.value.low >= speaksFor - 1e-9 && knowsBoard(part)).map(criterionReason),
		against: [
			...cautions.filter(isCertain).map(findingReason),
			...byShare.filter((part) => speaksAgainstIt(part)).map(criterionReason),
		],
		unknown: [
			...withoutRepeats(judged.depending).map((one): Reason => ({ kind: "depends", depending: one })),
			...cautions.filter((finding) => !isCertain(finding)).map(findingReason),
			...open.map(findingReason),
			...told.map(criterionReason),
			...(minor.length + folded.length > 0
				? [
						{
							kind: "also-unknown",
							ruleIds: minor,
							criterionIds: folded.map(({ criterionId }) => criterionId),
						} as const,
					]
				: []),
		],
		dependsOn: judged.dependsOn,
		ways: { fit: judged.possibleWorlds.length, all: allWays },
	};
}

/** Several rules may hang on one question in the same way, as socket and support list do: told once. */
function withoutRepeats(all: readonly Depending[]): readonly Depending[] {
	const said = new Set<string>();
	return all.filter(({ questionId, fitsWith, notWith }) => {
		const key = JSON.stringify([questionId, fitsWith, notWith]);
		return !said.has(key) && said.add(key);
	});
}

/** Bad on average, and not for lack of facts about the board itself. */
function speaksAgainstIt({ value, measure }: ScorePart): boolean {
	return value.mid <= speaksAgainst && !measure.missing.some((path) => path.startsWith("board."));
}

const criterionReason = (part: ScorePart): Reason => ({ kind: "criterion", part });

/** What a criterion says of a board, as part of a sentence. */
export function criterionWords({ criterionId, measure }: ScorePart): string {
	return criterionById(criterionId)?.says(measure) ?? criterionId;
}
