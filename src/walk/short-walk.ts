import { advise } from "../choose/advise.ts";
import { judge } from "../choose/judge.ts";
import { type NextOfShortWalk, nextOfShortWalk } from "../choose/next-question.ts";
import { smallRegret, sureShare, type WhyStopped } from "../choose/when-to-stop.ts";
import type { Answers } from "../parts/answers-file.ts";
import type { Build } from "../parts/build.ts";
import type { Market } from "../parts/market.ts";
import { allQuestions } from "../questions/all-questions.ts";
import { type Question, type QuestionContext, type Tier, tiers } from "../questions/define-question.ts";
import { foldAnswers } from "../questions/fold-answers.ts";
import { makesSense } from "../questions/is-asked.ts";

/** A short walk as far as it has come. */
export interface ShortWalk {
	/** Questions dealt with that still make sense: tier by tier, in each in the order in which they were asked. */
	readonly dealtWith: readonly Question[];
	readonly next: Question | null;
	/** Why it asks no more; null as long as there is a next question. */
	readonly why: WhyStopped | null;
	/** Questions that make sense and that nobody has dealt with, in the order of all. */
	readonly open: readonly Question[];
}

/**
 * The short walk that these answers make, or null on the long one.
 *
 * @param context with the person's own parts in its market
 * @param from the tier where the person is; what is worth asking in earlier ones comes last
 */
export function shortWalkOf(
	context: QuestionContext,
	answers: Answers,
	build: Build = foldAnswers(answers, context),
	from: Tier = "about",
): ShortWalk | null {
	if (build.facts.walkLength !== "short") return null;
	const { next, why } = nextOf(context, answers, build, from);
	const ids = Object.keys(answers);
	const inSense = allQuestions.filter((question) => makesSense(question, build));
	return {
		dealtWith: inSense
			.filter(({ id }) => answers[id])
			.toSorted(
				(one, other) =>
					tiers.indexOf(one.tier) - tiers.indexOf(other.tier) || ids.indexOf(one.id) - ids.indexOf(other.id),
			),
		next: allQuestions.find(({ id }) => id === next?.questionId) ?? null,
		why,
		open: inSense.filter(({ id }) => !answers[id]),
	};
}

/** By market and answers, none of which ever changes: the step to a question and its screen ask the same. */
const known = new WeakMap<Market, WeakMap<Answers, Map<string, NextOfShortWalk>>>();

function nextOf(context: QuestionContext, answers: Answers, build: Build, from: Tier): NextOfShortWalk {
	const ofMarket = known.get(context.market) ?? new WeakMap<Answers, Map<string, NextOfShortWalk>>();
	known.set(context.market, ofMarket);
	const ofAnswers = ofMarket.get(answers) ?? new Map<string, NextOfShortWalk>();
	ofMarket.set(answers, ofAnswers);
	const key = `${context.asOf} ${from}`;
	const found =
		ofAnswers.get(key) ??
		nextOfShortWalk(answers, context, { from, leadIsSure: () => leadIsSure(context.market, build, answers) });
	ofAnswers.set(key, found);
	return found;
}

/** Whether the board that leads is ahead of every other nearly always, or can hardly be far behind; see when-to-stop. */
function leadIsSure(market: Market, build: Build, answers: Answers): boolean {
	const { lead } = advise(judge(market, build), answers);
	if (lead === null) return false;
	return lead.nearest === null || (lead.nearest.ahead?.share ?? 0) >= sureShare || lead.regret < smallRegret;
}
