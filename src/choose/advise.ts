import { criterionById } from "../criteria/all-criteria.ts";
import type { Answers } from "../parts/answers-file.ts";
import type { Money } from "../parts/money.ts";
import { ruleById } from "../rules/all-rules.ts";
import type { Finding, Verdict } from "../rules/outcome.ts";
import { type Comparison, comparisonOf, type Lead, leadOf } from "./comparison.ts";
import type { BoardJudgement, BuildFinding, Depending, Judgement } from "./judge.ts";
import { nextQuestion } from "./next-question.ts";
import { candidatesOf, canStop, openFindings, type Ranked, rankBoards } from "./ranked-boards.ts";
import { type SampledBoard, sampleScores } from "./samples.ts";
import type { Score, ScorePart } from "./score.ts";
import { nearestRival, type Role, rolesOf } from "./shortlist-roles.ts";
import { type WayOut, waysOut } from "./ways-out.ts";

/** A reason: a rule's finding, what a rule depends on, or a criterion's share. */
export type Reason =
	/** `certain`: it holds however the open answers turn out. */
	| { readonly kind: "finding"; readonly finding: Finding; readonly certain: boolean }
	| { readonly kind: "depends"; readonly depending: Depending }
	/** Rules that cannot tell and can stop nothing, and criteria of less weight that lack facts: one line for all of them. */
	| { readonly kind: "also-unknown"; readonly ruleIds: readonly string[]; readonly criterionIds: readonly string[] }
	| { readonly kind: "criterion"; readonly part: ScorePart };

export type { Role };

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
	/** What else it is: the best match may be the cheapest too. */
	readonly also: readonly Role[];
	/**
	 * In which share of all that weights, unknown facts and open answers allow it has most points; 0 to 1. Null where it was
	 * not compared, since boards that surely fit come first.
	 */
	readonly firstShare: number | null;
	/** Whether any weights that the answers allow put it first; null where it was not compared. */
	readonly canLead: boolean | null;
	/** Boards with which it is too close to call who leads, itself among them; empty where there are none. */
	readonly anyOf: readonly string[];
	/** How it stands to the first of the list; null for that one. */
	readonly behind: Comparison | null;
}

export interface Advice {
	readonly counts: Judgement["counts"];
	/** At most five boards, in the order to look at them. */
	readonly shortlist: readonly ShortlistEntry[];
	/** How sure it is that the first of the list leads; null where the list is empty. */
	readonly lead: Lead | null;
	/** Every board left, best first. */
	readonly ranking: readonly { readonly boardId: string; readonly score: Score }[];
	readonly buildFindings: readonly BuildFinding[];
	readonly waysOut: readonly WayOut[];
	readonly nextQuestion: string | null;
}

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
	const { build } = judgement;
	const ranked = rankBoards(judgement);
	const candidates = candidatesOf(ranked);
	const samples = sampleScores(candidates.map(sampledOf), build.facts, build.worlds.length);
	const { roles, also, anyOf } = rolesOf(candidates, ranked, samples);
	const [best] = [...roles.keys()];
	const group = anyOf.map(({ judged }) => judged.board.id);
	return {
		counts: judgement.counts,
		shortlist: [...roles].map(([entry, role]) => ({
			...entryOf(entry, role, build.worlds.length),
			also: also.get(entry) ?? [],
			firstShare: samples.firstShare.get(entry.judged.board.id) ?? null,
			canLead: candidates.includes(entry) ? samples.canLead(entry.judged.board.id) : null,
			anyOf: anyOf.includes(entry) ? group : [],
			behind: best && best !== entry ? comparisonOf(best, entry, samples) : null,
		})),
		lead: best ? leadOf(best, candidates, nearestRival(best, candidates, samples), anyOf, samples, build.facts) : null,
		ranking: ranked.map(({ judged, score }) => ({ boardId: judged.board.id, score })),
		buildFindings: judgement.buildFindings,
		waysOut: waysOut(judgement),
		nextQuestion: nextQuestion(answers, build),
	};
}

const sampledOf = ({ judged, score }: Ranked): SampledBoard => ({
	boardId: judged.board.id,
	score,
	possibleWorlds: judged.possibleWorlds,
});

/** Whether there is something to plan around. */
export function plansAround({ findings }: Pick<BoardJudgement, "findings">): boolean {
	return findings.some(({ severity }) => severity === "plan-around");
}

type EntryAlone = Omit<ShortlistEntry, "also" | "firstShare" | "canLead" | "anyOf" | "behind">;

function entryOf({ judged, score, price }: Ranked, role: Role, allWays: number): EntryAlone {
	const byShare = [...score.parts].sort((one, other) => other.weight - one.weight);
	const narrow = ({ value }: ScorePart) => value.high - value.low <= 0.2;
	const isCaution = ({ severity }: Finding) => severity === "plan-around" || severity === "good-to-know";
	const unsettled = new Set(judged.unsettledRuleIds);
	const isCertain = ({ ruleId }: Pick<Finding, "ruleId">) => !unsettled.has(ruleId);
	const cautions = judged.findings.filter(isCaution);
	const findingReason = (finding: Finding): Reason => ({ kind: "finding", finding, certain: isCertain(finding) });
	const knowsBoard = ({ measure }: ScorePart) => !measure.missing.some((path) => path.startsWith("board."));
	const open = openFindings(judged);
	// What a caution has told of the same measure is not told again.
	const isTold = ({ criterionId }: ScorePart) =>
		cautions.some(({ ruleId }) => isCertain({ ruleId }) && sharesMeasure(ruleId, criterionId));
	const unsure = byShare.filter(
		(part) => !narrow(part) && part.measure.missing.length > 0 && !speaksAgainstIt(part) && !isTold(part),
	);
	// A page that says next to nothing would else fill the screen with what is not known.
	const [told, folded] = unsure.length > mostUnsureTold ? [unsure.slice(0, 1), unsure.slice(1)] : [unsure, []];
	const minor = judged.findings.flatMap(({ ruleId, verdict }) =>
		verdict === "cannot-tell" && !canStop(ruleId) && !told.some(({ criterionId }) => sharesMeasure(ruleId, criterionId))
			? [ruleId]
			: [],
	);
	return {
		boardId: judged.board.id,
		role,
		verdict: judged.verdict === "fits" ? "fits" : "cannot-tell",
		planAround: plansAround(judged),
		score,
		price,
		for: byShare.filter((part) => speaksForIt(part) && knowsBoard(part)).map(criterionReason),
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

/**
 * Whether a rule says what a criterion has said already: both read the same measure of the board's power, such as the heat
 * of its stages. The plan tells so much that many rules on other things read it too.
 */
function sharesMeasure(ruleId: string, criterionId: string): boolean {
	const rule = ruleById(ruleId);
	const measures = (criterionById(criterionId)?.reads ?? []).filter((path) => path.startsWith("power."));
	return measures.some((path) => rule?.reads.includes(path) || rule?.mayRead.includes(path));
}

/** Several rules may hang on one question in the same way, as socket and support list do: told once. */
function withoutRepeats(all: readonly Depending[]): readonly Depending[] {
	const said = new Set<string>();
	return all.filter(({ questionId, fitsWith, notWith }) => {
		const key = JSON.stringify([questionId, fitsWith, notWith]);
		return !said.has(key) && said.add(key);
	});
}

function speaksForIt({ criterionId, value }: ScorePart): boolean {
	return value.low >= (criterionById(criterionId)?.plusFrom ?? speaksFor) - 1e-9;
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
