import type { Advice, Reason, ShortlistEntry } from "../choose/advise.ts";
import type { Comparison } from "../choose/comparison.ts";
import { conflictsOf } from "../choose/conflicts.ts";
import { findOut } from "../choose/find-out.ts";
import type { Judgement } from "../choose/judge.ts";
import { nextQuestionByWorth, worthsWhenAsked } from "../choose/next-question.ts";
import { repairedWays } from "../choose/repaired-answers.ts";
import type { Answers } from "../parts/answers-file.ts";
import type { QuestionContext } from "../questions/define-question.ts";
import { findingWords } from "../rules/finding-words.ts";
import { leadWords } from "./choice-words.ts";
import { conflictWords } from "./demand-words.ts";
import { findOutWords } from "./find-out-words.ts";
import { reasonWords } from "./reason-words.ts";
import { repairedWayWords, repairWords } from "./ways-out-words.ts";

/** The advice as JSON for other programs. Keys, ids and codes are stable; texts are for people and may change. */
export function adviceJson(judgement: Judgement, advice: Advice, answers: Answers, context: QuestionContext): object {
	const { asOf, market } = context;
	return {
		schema: "boardwalk/advice@1",
		asOf,
		market: { version: market.version, fingerprint: market.fingerprint },
		counts: advice.counts,
		shortlist: advice.shortlist.map(entryJson),
		lead: advice.lead && {
			boardId: advice.lead.boardId,
			anyOf: advice.lead.anyOf,
			nearest: advice.lead.nearest && comparisonJson(advice.lead.nearest),
			restsOn: advice.lead.restsOn,
			text: leadWords(advice.lead, (id) => nameOf(judgement, id)).join(" "),
		},
		buildFindings: advice.buildFindings.map(({ finding, certain }) => ({
			id: finding.ruleId,
			verdict: finding.verdict,
			certain,
			message: finding.messageId,
			data: finding.data,
			text: findingWords(finding),
		})),
		waysOut: repairedWays(judgement, answers, advice.waysOut).map((way) => ({
			giveUp: way.giveUp,
			firmness: way.firmness,
			boardIds: way.boardIds,
			repairs: way.repairs.map((repair) => ({ ...repair, text: repairWords(repair, judgement, context) })),
			text: repairedWayWords(way, judgement, context),
		})),
		conflicts: conflictsOf(advice.waysOut).map((rules) => ({ rules, text: conflictWords(rules, judgement) })),
		findOut: findOut(judgement, advice, answers, worthsWhenAsked(answers, context)).map((one) => ({
			...one,
			worth: one.worth === null ? null : round(one.worth, 10),
			...findOutWords(one, (id) => nameOf(judgement, id)),
		})),
		nextQuestion: nextQuestionByWorth(answers, context)?.questionId ?? advice.nextQuestion,
	};
}

function nameOf({ boards }: Judgement, boardId: string): string {
	return boards.find(({ board }) => board.id === boardId)?.board.name ?? boardId;
}

/** Points in tenths; shares and weights of 0 to 1 fine enough to be summed. */
function comparisonJson({
	boardId,
	otherId,
	gap,
	contributions,
	enough,
	worst,
	turns,
	ahead,
	sureness,
}: Comparison): object {
	return {
		boardId,
		otherId,
		gap: round(gap, 10),
		contributions: contributions.map(({ criterionId, points }) => ({ id: criterionId, points: round(points, 10) })),
		enough,
		worst,
		turns: turns && { id: turns.criterionId, now: round(turns.now, 1e4), at: round(turns.at, 1e4) },
		ahead: ahead && { share: round(ahead.share, 1e4), exact: ahead.isExact },
		sureness,
	};
}

function round(value: number, to: number): number {
	return Math.round(value * to) / to;
}

function entryJson({
	boardId,
	role,
	also,
	verdict,
	score,
	price,
	dependsOn,
	ways,
	firstShare,
	canLead,
	anyOf,
	behind,
	...reasons
}: ShortlistEntry): object {
	return {
		boardId,
		role,
		also,
		verdict,
		score: { low: Math.round(score.low), mid: Math.round(score.mid), high: Math.round(score.high) },
		priceMinor: price?.minor ?? null,
		currency: price?.currency ?? null,
		for: reasons.for.map(reasonJson),
		against: reasons.against.map(reasonJson),
		unknown: reasons.unknown.map(reasonJson),
		firstShare: firstShare === null ? null : round(firstShare, 1e4),
		canLead,
		anyOf,
		behind: behind && comparisonJson(behind),
		weights: score.parts.map(({ criterionId, weight, value }) => ({
			id: criterionId,
			weight: round(weight, 1e6),
			value: { low: round(value.low, 1000), mid: round(value.mid, 1000), high: round(value.high, 1000) },
		})),
		dependsOn,
		ways,
	};
}

function reasonJson(reason: Reason): object {
	if (reason.kind === "finding") {
		const { ruleId, messageId, data, missing } = reason.finding;
		return { id: ruleId, message: messageId, data, missing, text: reasonWords(reason) };
	}
	if (reason.kind === "depends") {
		const { ruleId, questionId, fitsWith, notWith } = reason.depending;
		return { id: ruleId, question: questionId, fitsWith, notWith, text: reasonWords(reason) };
	}
	if (reason.kind === "also-unknown")
		return { id: reason.kind, rules: reason.ruleIds, criteria: reason.criterionIds, text: reasonWords(reason) };
	const { criterionId, measure } = reason.part;
	return { id: criterionId, low: measure.low, high: measure.high, missing: measure.missing, text: reasonWords(reason) };
}
