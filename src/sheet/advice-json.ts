import type { Advice, Reason, ShortlistEntry } from "../choose/advise.ts";
import type { Judgement } from "../choose/judge.ts";
import type { QuestionContext } from "../questions/define-question.ts";
import { findingWords } from "../rules/finding-words.ts";
import { wayOutWords } from "./make-sheet.ts";
import { reasonWords } from "./reason-words.ts";

/** The advice as JSON for other programs. Keys, ids and codes are stable; texts are for people and may change. */
export function adviceJson(judgement: Judgement, advice: Advice, { asOf, market }: QuestionContext): object {
	return {
		schema: "boardwalk/advice@1",
		asOf,
		market: { version: market.version, fingerprint: market.fingerprint },
		counts: advice.counts,
		shortlist: advice.shortlist.map(entryJson),
		buildFindings: advice.buildFindings.map(({ finding, certain }) => ({
			id: finding.ruleId,
			verdict: finding.verdict,
			certain,
			message: finding.messageId,
			data: finding.data,
			text: findingWords(finding),
		})),
		waysOut: advice.waysOut.map(({ giveUp, boardIds, firmness }) => ({
			giveUp,
			firmness,
			boardIds,
			text: wayOutWords(giveUp, boardIds, judgement),
		})),
		nextQuestion: advice.nextQuestion,
	};
}

function entryJson({ boardId, role, verdict, score, price, dependsOn, ways, ...reasons }: ShortlistEntry): object {
	return {
		boardId,
		role,
		verdict,
		score: { low: Math.round(score.low), mid: Math.round(score.mid), high: Math.round(score.high) },
		priceMinor: price?.minor ?? null,
		currency: price?.currency ?? null,
		for: reasons.for.map(reasonJson),
		against: reasons.against.map(reasonJson),
		unknown: reasons.unknown.map(reasonJson),
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
