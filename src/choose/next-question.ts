import { worthOfAsking } from "../maths/information-value.ts";
import { once } from "../maths/once.ts";
import type { Answers, AnswerValue } from "../parts/answers-file.ts";
import type { Build } from "../parts/build.ts";
import { allQuestions } from "../questions/all-questions.ts";
import { type Question, type QuestionContext, type Tier, tiers } from "../questions/define-question.ts";
import { foldAnswers } from "../questions/fold-answers.ts";
import { askedQuestions, makesSense } from "../questions/is-asked.ts";
import { chanceToAnswer } from "./chance-to-answer.ts";
import { boardSubjects } from "./findings-of-market.ts";
import { type PossibleAnswer, possibleAnswers } from "./possible-answers.ts";
import { quickValues } from "./quick-values.ts";
import { isWorthAsking, leastWorth, type OpenWorth, type WhyStopped, whyStopped } from "./when-to-stop.ts";

/** The first question that applies and that nobody has dealt with yet, or null when all are. */
export function nextQuestion(answers: Answers, build: Build): string | null {
	return askedQuestions(build).find(({ id }) => !answers[id])?.id ?? null;
}

/** What asking a question is worth to this person now. */
export interface QuestionWorth {
	readonly questionId: string;
	/**
	 * Points of 100 that choosing after the answer brings on average; never below 0. Null where it was not worked out:
	 * nothing that may be answered can be listed, or the question comes first in any case.
	 */
	readonly worth: number | null;
	/** How likely this person can answer, 0 to 1. */
	readonly chance: number;
	/** Of the answers tried, those after which another board leads. */
	readonly answersThatChangeTheLeader: readonly AnswerValue[];
}

/** The next question of a short walk, or why there is none. */
export interface NextOfShortWalk {
	readonly next: QuestionWorth | null;
	/** Null as long as there is a next one. */
	readonly why: WhyStopped | null;
}

export interface ShortWalkChoice {
	/** Tiers before this one come last: nobody is led back and forth. */
	readonly from?: Tier;
	/** Whether the leader is sure enough to stop; see when-to-stop. Asked for only where it decides. Not unless said. */
	readonly leadIsSure?: () => boolean;
}

/**
 * What a short walk begins with, and what comes first in its tier however little it is worth. What the computer is for
 * is among it: how hard the processor works shows only once the processor is known, and then it is too late to ask.
 */
const firstInAnyCase: ReadonlySet<string> = new Set([
	"about/walk-length",
	"about/who",
	"about/activities",
	"about/money-in-all",
	"about/budget",
	"fit/processor",
	"fit/candidates",
	"fit/case",
]);

/** Boards that are valued for every answer: those with most to expect (own convention). */
const mostLeaders = 12;
/** Besides, of those left after an answer so many with most to expect, and so many that it brings back (own convention). */
const bestAfterAnswer = 3;
/** Less than so many points of 100 is no change, but rounding. */
const leastChange = 1e-6;

/**
 * The question that a short walk asks next: of the first tier that has any worth asking the one with the greatest worth
 * times the chance that this person can answer. Money, processor and case come first in any case. Questions that were
 * answered, passed over or not sure are not asked again.
 */
export function nextQuestionByWorth(
	answers: Answers,
	context: QuestionContext,
	choice: ShortWalkChoice = {},
): QuestionWorth | null {
	return nextOfShortWalk(answers, context, choice).next;
}

/** As nextQuestionByWorth, and why the walk ends where there is none. */
export function nextOfShortWalk(
	answers: Answers,
	context: QuestionContext,
	{ from = "about", leadIsSure = () => false }: ShortWalkChoice = {},
): NextOfShortWalk {
	const now = lookNow(answers, context);
	const open = allQuestions.filter((question) => !answers[question.id] && makesSense(question, now.build));
	const ask = (next: QuestionWorth): NextOfShortWalk => ({ next, why: null });
	const inOrder = [...tiers.slice(tiers.indexOf(from)), ...tiers.slice(0, tiers.indexOf(from))];
	if (now.left.length === 0) {
		// Nothing can lead, so nothing tells the questions apart.
		const [first] = inOrder.flatMap((tier) => open.filter((one) => one.tier === tier && one.short));
		return first ? ask(notWorkedOut(first, answers)) : { next: null, why: "nothing-changes-the-lead" };
	}
	const dealtWith = allQuestions.filter(({ id }) => answers[id]).length;
	const seen: Valued[] = [];
	let modest: Valued | null = null;
	for (const tier of inOrder) {
		const inTier = open.filter((question) => question.tier === tier);
		const first = inTier.find(({ id }) => firstInAnyCase.has(id));
		if (first) return ask(notWorkedOut(first, answers));
		const valued = inTier.map((question) => valueQuestion(question, answers, context, now));
		seen.push(...valued);
		const best = bestOf(valued);
		if (!best) continue;
		modest ??= best;
		const stops = whyStopped(seen.map(openWorth), dealtWith, () => false);
		if (stops === null && seen.some((one) => isWorthAsking(openWorth(one)) && isGreat(one))) return ask(modest.worth);
	}
	const why = whyStopped(seen.map(openWorth), dealtWith, leadIsSure);
	return why === null && modest ? ask(modest.worth) : { next: null, why: why ?? "little-to-gain" };
}

/**
 * What each open question is worth, in the order of all: also those that were passed over or not sure, since they can be
 * answered later.
 */
export function worthsOfOpen(answers: Answers, context: QuestionContext): readonly QuestionWorth[] {
	const now = lookNow(answers, context);
	return allQuestions
		.filter((question) => answers[question.id]?.status !== "answered" && makesSense(question, now.build))
		.map((question) => valueQuestion(question, answers, context, now).worth);
}

/** Points of 100 that each open question is worth, worked out when it is first asked for; null where none could be. */
export function worthsWhenAsked(answers: Answers, context: QuestionContext): (questionId: string) => number | null {
	const worths = once(
		() =>
			new Map(
				worthsOfOpen(answers, context).map(({ questionId, worth, chance }) => [
					questionId,
					worth === null ? null : worth * chance,
				]),
			),
	);
	return (questionId) => worths().get(questionId) ?? null;
}

/** The same for one question; null where it is answered or makes no sense. */
export function worthOfQuestion(id: string, answers: Answers, context: QuestionContext): QuestionWorth | null {
	const now = lookNow(answers, context);
	const question = allQuestions.find((one) => one.id === id);
	if (!question || answers[id]?.status === "answered" || !makesSense(question, now.build)) return null;
	return valueQuestion(question, answers, context, now).worth;
}

/** How boards stand before the next answer. */
interface Now {
	readonly build: Build;
	/** Places in the market of the boards that are left, those with most to expect first. */
	readonly left: readonly number[];
	/** Of those that are out. */
	readonly out: readonly number[];
	/** Of those left the ones that may lead. */
	readonly leaders: readonly number[];
	/** Questions valued so far. */
	readonly valued: Map<string, Valued>;
	readonly byId: (one: number, other: number) => number;
}

const looks = new WeakMap<QuestionContext["market"], WeakMap<Answers, Now & { readonly asOf: string }>>();

/** Neither markets nor answers ever change, so the last look at both still holds. */
function lookNow(answers: Answers, context: QuestionContext): Now {
	const ofMarket = looks.get(context.market) ?? new WeakMap<Answers, Now & { readonly asOf: string }>();
	looks.set(context.market, ofMarket);
	const known = ofMarket.get(answers);
	if (known && known.asOf === context.asOf) return known;
	const made = { ...lookAt(answers, context), asOf: context.asOf };
	ofMarket.set(answers, made);
	return made;
}

function lookAt(answers: Answers, context: QuestionContext): Now {
	const build = foldAnswers(answers, context);
	const values = quickValues(context.market, build);
	const ids = context.market.parts.board.map(({ id }) => id);
	const byId = (one: number, other: number) => ((ids[one] ?? "") < (ids[other] ?? "") ? -1 : 1);
	const fitting = ids.flatMap((_, place) => (values.fits(place) > 0 ? [place] : []));
	const points = values.pointsOf(fitting);
	const expected = new Map(fitting.map((place, at) => [place, (points[at]?.mid ?? 0) * values.fits(place)]));
	const high = new Map(fitting.map((place, at) => [place, points[at]?.high ?? 0]));
	const left = fitting.toSorted(
		(one, other) => (expected.get(other) ?? 0) - (expected.get(one) ?? 0) || byId(one, other),
	);
	const [first] = left;
	const leastToLead = first === undefined ? 0 : (points[fitting.indexOf(first)]?.low ?? 0) * values.fits(first);
	const leaders = left.filter((place) => (high.get(place) ?? 0) >= leastToLead).slice(0, mostLeaders);
	const out = ids.flatMap((_, place) => (expected.has(place) ? [] : [place])).sort(byId);
	return { build, left, out, leaders, valued: new Map(), byId };
}

/** A question with its worth, and which others some of its answers would take away. */
interface Valued {
	readonly question: Question;
	readonly worth: QuestionWorth;
	readonly takesAway: (other: Question) => boolean;
}

function valueQuestion(question: Question, answers: Answers, context: QuestionContext, now: Now): Valued {
	const known = now.valued.get(question.id) ?? valued(question, answers, context, now);
	now.valued.set(question.id, known);
	return known;
}

function valued(question: Question, answers: Answers, context: QuestionContext, now: Now): Valued {
	const subjects = boardSubjects(context.market);
	const boards = now.left.flatMap((place) => subjects[place]?.board ?? []);
	const possible = possibleAnswers(question, context, now.build.facts, boards);
	const builds = possible.map(({ value }) =>
		foldAnswers({ ...answers, [question.id]: { status: "answered", value } }, context),
	);
	return {
		question,
		worth:
			possible.length === 0
				? notWorkedOut(question, answers)
				: {
						questionId: question.id,
						chance: chanceToAnswer(question, answers),
						...worthOfAnswers(possible, builds, context, now),
					},
		takesAway: (other) => builds.some((build) => !makesSense(other, build)),
	};
}

function worthOfAnswers(
	possible: readonly PossibleAnswer[],
	builds: readonly Build[],
	context: QuestionContext,
	{ left, out, leaders, byId }: Now,
): Pick<QuestionWorth, "worth" | "answersThatChangeTheLeader"> {
	const after = builds.map((build) => quickValues(context.market, build));
	const places = new Set(leaders);
	for (const { fits } of after) {
		const isLeft = (place: number) => fits(place) > 0;
		for (const place of firstOf(left, isLeft, bestAfterAnswer)) places.add(place);
		for (const place of firstOf(out, isLeft, bestAfterAnswer)) places.add(place);
	}
	const compared = [...places].sort(byId);
	if (compared.length === 0) return { worth: 0, answersThatChangeTheLeader: [] };
	const rows = after.map(({ fits, pointsOf }) =>
		pointsOf(compared).map(({ mid }, at) => mid * fits(compared[at] as number)),
	);
	const { worth, leader, leaderAfter } = worthOfAsking(
		possible.map(({ chance }) => chance),
		rows,
	);
	return {
		worth,
		answersThatChangeTheLeader: possible.flatMap(({ value }, answer) => {
			const row = rows[answer] ?? [];
			const gained = (row[leaderAfter[answer] ?? leader] ?? 0) - (row[leader] ?? 0);
			return gained > leastChange ? [value] : [];
		}),
	};
}

function firstOf(places: readonly number[], passes: (place: number) => boolean, most: number): readonly number[] {
	const found: number[] = [];
	for (const place of places) {
		if (found.length === most) break;
		if (passes(place)) found.push(place);
	}
	return found;
}

/** A question of which nothing can be listed can change everything. */
function notWorkedOut(question: Question, answers: Answers): QuestionWorth {
	return {
		questionId: question.id,
		worth: null,
		chance: chanceToAnswer(question, answers),
		answersThatChangeTheLeader: [],
	};
}

function openWorth({ question, worth }: Valued): OpenWorth {
	return {
		gain: gainOf(worth),
		changesTheLeader: worth.worth === null || worth.answersThatChangeTheLeader.length > 0,
		isShort: question.short === true,
	};
}

function gainOf({ worth, chance }: QuestionWorth): number | null {
	return worth === null ? null : worth * chance;
}

function isGreat({ worth }: Valued): boolean {
	return (gainOf(worth) ?? Number.POSITIVE_INFINITY) >= leastWorth;
}

/** Of a tier the one to ask first; what an answer to another one may leave without sense waits for that one. */
function bestOf(valued: readonly Valued[]): Valued | null {
	const asked = valued.filter((one) => isWorthAsking(openWorth(one)));
	const ready = asked.filter(({ question }, at) => !asked.slice(0, at).some((earlier) => earlier.takesAway(question)));
	const gain = ({ worth }: Valued) => gainOf(worth) ?? Number.POSITIVE_INFINITY;
	return ready.reduce<Valued | null>((best, one) => (best && gain(best) >= gain(one) ? best : one), null);
}
