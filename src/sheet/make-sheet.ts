import type { Advice } from "../choose/advise.ts";
import { conflictsOf } from "../choose/conflicts.ts";
import type { BuildFinding, Judgement } from "../choose/judge.ts";
import { onlyInventedBoards } from "../choose/only-invented-boards.ts";
import { repairedWays } from "../choose/repaired-answers.ts";
import { once } from "../maths/once.ts";
import type { Answers, Suggestion } from "../parts/answers-file.ts";
import type { BuildFacts } from "../parts/build.ts";
import { allQuestions } from "../questions/all-questions.ts";
import type { QuestionContext } from "../questions/define-question.ts";
import { askedQuestions, isAsked } from "../questions/is-asked.ts";
import { cautions } from "../reference/cautions.ts";
import { type SourceId, sourceById } from "../reference/sources.ts";
import { allRules, ruleById } from "../rules/all-rules.ts";
import { findingAdvice, findingWords } from "../rules/finding-words.ts";
import type { Finding } from "../rules/outcome.ts";
import { beforeYouPay, planAround } from "./before-you-pay.ts";
import { benchSteps } from "./bench-steps.ts";
import { suggestionsOf, toldOf } from "./by-others-words.ts";
import { leadWords } from "./choice-words.ts";
import { conflictWords } from "./demand-words.ts";
import { drawn, planDrawn, powerDrawn } from "./drawn-board.ts";
import { forWhomWords } from "./for-whom-words.ts";
import { boardNameOf, judgedOf } from "./judged-board.ts";
import { openOf, openThings } from "./open-words.ts";
import { ownershipWords } from "./ownership-words.ts";
import { saidOf } from "./said-words.ts";
import type { Sheet, SheetAnswer, SheetBoard, SheetNeed } from "./sheet.ts";
import { boardOf, reasonsOfAll, withoutReasons } from "./sheet-boards.ts";
import { isNiceToHave, needsOf } from "./sheet-needs.ts";
import { shopMessages } from "./shop-questions.ts";
import { groundWords, sourceWords } from "./source-words.ts";
import { repairedWayWords } from "./ways-out-words.ts";

/** What a walk has besides its answers. */
export interface WalkBesides {
	readonly name: string | null;
	readonly suggestions: readonly Suggestion[];
}
const nothingBesides: WalkBesides = { name: null, suggestions: [] };

/** Makes the requirement sheet. Without any board in the market it is the sheet "what to look for". */
export function makeSheet(
	judgement: Judgement,
	advice: Advice,
	answers: Answers,
	context: QuestionContext,
	{ name, suggestions }: WalkBesides = nothingBesides,
): Sheet {
	const { build } = judgement;
	const needs = needsOf(build);
	const isWish = ({ ruleId }: SheetNeed) => isNiceToHave(ruleId, build);
	const whole = advice.shortlist.map((entry) => boardOf(entry, judgement, context));
	const ofAll = reasonsOfAll(whole);
	const shortlist = whole.map((board) => withoutReasons(board, ofAll));
	const first = advice.shortlist[0] && judgedOf(advice.shortlist[0].boardId, judgement);
	const bench = once(() =>
		benchSteps({
			board: first ? (first.subject.board ?? first.board) : null,
			findings: first?.findings ?? [],
			buildFindings: advice.buildFindings,
			facts: build.facts,
		}),
	);
	const plan = once(() => drawn(advice, judgement, planDrawn));
	const power = once(() => drawn(advice, judgement, powerDrawn));
	const found = once(() => openThings(answers, judgement, advice, context));
	const messages = once(() =>
		shopMessages(judgement, advice, answers, context, found()).map(({ boardName, english, german }) => ({
			boardName,
			english,
			german,
		})),
	);
	const open = once(() => openOf(found(), judgement, advice));
	return {
		title: "What to look for in a board",
		asOf: context.asOf,
		market: judgement.market.version,
		hasInventedParts: shortlist.some(({ invented }) => invented),
		forWhom: forWhomWords(name, build.facts, answers, context),
		inShort: inShort(judgement, advice, shortlist),
		partsDisagree: [...advice.buildFindings].sort(byWeight).map(({ finding, certain }) => ({
			text: certain ? findingWords(finding) : `One way it can turn out: ${findingWords(finding)}`,
			isStopped: certain && finding.verdict === "does-not-fit",
			advice: adviceWords(finding, build.facts),
		})),
		beforeYouPay: beforeYouPay(judgement, advice, context),
		planAround: planAround(judgement, advice),
		mustHave: needs.filter((need) => !isWish(need)),
		niceToHave: needs.filter(isWish),
		shortlist,
		lead: advice.lead
			? [...leadWords(advice.lead, boardNameOf(judgement)), ...openQuestionsWords(answers, judgement)]
			: [],
		ofAll,
		nothingFits: onlyInventedBoards(judgement)
			? []
			: [
					...new Set(conflictsOf(advice.waysOut).map((ruleIds) => conflictWords(ruleIds, judgement))),
					...repairedWays(judgement, answers, advice.waysOut).map((way) => repairedWayWords(way, judgement, context)),
				],
		// What takes a while is worked out when it is read: screens show little of the sheet.
		get plan() {
			return plan();
		},
		get power() {
			return power();
		},
		get steps() {
			return bench().steps;
		},
		get cautions() {
			return bench().otherCautions.map(({ text, source }) => ({ text, ground: groundWords(sourceById(source)) }));
		},
		get open() {
			return open();
		},
		get askTheShop() {
			return messages();
		},
		answers: allQuestions
			.filter((question) => isAsked(question, build) || answers[question.id])
			.map((question) => answerOf(question.id, answers, context)),
		suggestions: suggestionsOf(suggestions, context),
		told: toldOf(judgement, advice),
		sources: sourcesOf(judgement).map((id) => sourceWords(sourceById(id))),
	};
}

/** What the tries leave out: answers that nobody has given change what is asked of a board, not how it is weighed. */
function openQuestionsWords(answers: Answers, { build }: Judgement): readonly string[] {
	const open = askedQuestions(build).filter(({ id }) => answers[id]?.status !== "answered").length;
	if (open === 0) return [];
	return [
		`${open === 1 ? "1 open question is" : `${open} open questions are`} not in these tries: ${open === 1 ? "its answer" : "their answers"} can still change the order.`,
	];
}

function inShort(
	judgement: Judgement,
	{ shortlist: entries }: Advice,
	shortlist: readonly SheetBoard[],
): readonly string[] {
	const { counts } = judgement;
	if (counts.all === 0)
		return [
			"No boards were given, so this sheet says what to look for in any board.",
			"Take it to the shop, and hold each board against it.",
		];
	if (onlyInventedBoards(judgement))
		return [
			"The demonstration's boards are invented, and none suits your own processor. This sheet says what to look for.",
			"Take it to the shop, and hold each board against it.",
		];
	const left = counts.all - counts.doesNotFit;
	const best = shortlist[0];
	if (!best) return [`None of the ${counts.all} boards fits. Shortlist and sheet say what to change.`];
	const leftWords = `${left} of ${counts.all} boards ${left === 1 ? "is" : "are"} left`;
	const open = counts.cannotTell > 0 ? `; for ${counts.cannotTell} of them something is not known yet` : "";
	const hangsOnProcessor = entries.every(({ dependsOn }) => dependsOn.join() === "fit/candidates");
	if (counts.fits === 0 && hangsOnProcessor)
		return [
			`${leftWords}; which of them fit depends on the processor you take.`,
			`${best.roleWords}: ${best.name}, ${best.priceWords}. It has ${best.scoreWords}.`,
			"Settle on a processor, then look here again: the choice among your candidates stays yours.",
		];
	return [
		`${leftWords}${counts.fits === 0 ? ", but whether any of them fits is not known yet" : open}.`,
		`${best.roleWords}: ${best.name}, ${best.priceWords}. It has ${best.scoreWords}.`,
		entries[0]?.verdict === "fits"
			? "The sheet lists what to check before you pay."
			: "Find out what is still unknown before you pay: it decides whether this board fits.",
	];
}

/** What stops it first, then what is to be planned around, then what is good to know. */
function byWeight({ finding: one }: BuildFinding, { finding: other }: BuildFinding): number {
	const weight = ({ verdict, severity }: Finding) =>
		verdict === "does-not-fit" ? 0 : severity === "plan-around" ? 1 : 2;
	return weight(one) - weight(other);
}

/** What to do about parts that disagree, and which of them can still go back. */
function adviceWords(finding: Finding, facts: BuildFacts): string | null {
	const rule = ruleById(finding.ruleId);
	// What only wants a thought needs no part to go back.
	const owned = rule && finding.verdict === "does-not-fit" ? ownershipWords(rule, facts) : "";
	const words = [findingAdvice(finding) ?? "", owned];
	return words.filter((sentence) => sentence !== "").join(" ") || null;
}

function answerOf(questionId: string, answers: Answers, context: QuestionContext): SheetAnswer {
	const question = allQuestions.find(({ id }) => id === questionId);
	const answer = answers[questionId];
	const said = question ? saidOf(question, answers, context) : null;
	const value = said ?? (answer ? "Not sure" : "Not sure (not asked yet)");
	return { questionId, label: question?.label ?? questionId, value, by: answer?.by ?? "" };
}

/** The sources of every rule that had something to say, and of the facts that were assumed. */
function sourcesOf({ boards }: Judgement): readonly SourceId[] {
	const ids = new Set<SourceId>(allRules.filter(({ scope }) => scope === "board").map(({ source }) => source));
	for (const { findings } of boards)
		for (const { facts } of findings) for (const { source } of facts) if (source) ids.add(source);
	for (const { source } of cautions) ids.add(source);
	return [...ids].sort();
}
