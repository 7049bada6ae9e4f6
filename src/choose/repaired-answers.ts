import type { Answer, Answers, AnswerValue } from "../parts/answers-file.ts";
import type { BuildFacts, BuildPartKind } from "../parts/build.ts";
import type { Money } from "../parts/money.ts";
import { partPrice } from "../parts/part-price.ts";
import { allQuestions, questionById } from "../questions/all-questions.ts";
import type { Question, QuestionContext } from "../questions/define-question.ts";
import { foldAnswers } from "../questions/fold-answers.ts";
import { makesSense } from "../questions/is-asked.ts";
import { ruleById } from "../rules/all-rules.ts";
import { anyLeft, boardsLeft } from "./failed-sets.ts";
import { compareFirmness, type Firmness } from "./firmness.ts";
import { type Judgement, judge } from "./judge.ts";
import { compareLosses, firmnessOfQuestion, type Loss, lossOfQuestion } from "./losses.ts";
import { longestList, sizeOfChange, smallerAnswers, smallestCount } from "./smaller-answers.ts";
import type { WayOut } from "./ways-out.ts";

/** One answer to change. */
export interface AnswerChange {
	readonly questionId: string;
	/** Null where the question is not settled. */
	readonly from: AnswerValue | null;
	/** Null: another part is to be chosen, and the question asked again. */
	readonly to: AnswerValue | null;
	/** Parts of the market with which boards come back; at most three, those nearest in price first. */
	readonly partIds: readonly string[];
}

/** Answers that, changed together, bring boards back; with fewer of them changed none of the way's boards comes back. */
export interface Repair {
	readonly changes: readonly AnswerChange[];
	/** Boards that fit then, and boards of which it cannot be told; of the whole market. */
	readonly fits: readonly string[];
	readonly cannotTell: readonly string[];
	/** Where more money is the change: boards that fit, but leave next to nothing of it for what they make one buy besides. */
	readonly leavesNothing: readonly { readonly boardId: string; readonly extras: readonly string[] }[];
	readonly firmness: Firmness;
}

export interface RepairedWayOut extends WayOut {
	/**
	 * At most two, what loses least first; where of all their boards it cannot be told, a larger change follows with which
	 * one surely fits. None where no change of a few answers does it.
	 */
	readonly repairs: readonly Repair[];
}

/** More ways to do one thing are no help (own convention). */
const mostRepairs = 2;
/** More ways out than these are not worked out: nobody reads them (own convention). */
const mostWays = 6;
/** So many larger changes of one answer are judged to find one with which a board surely fits (own convention). */
const mostLarger = 8;
/** Answers changed together in one repair. */
const mostChanges = 4;
const mostParts = 3;

/**
 * Ways out with what to change: for each the answers that feed its failed rules are loosened, the fewest of them together
 * that bring a board back, and each of these then as little as is enough. Every repair was judged again. What is firmer
 * comes later; then what loses more, then more changes, then larger ones, then fewer boards brought back.
 */
export function repairedWays(
	judgement: Judgement,
	answers: Answers,
	ways: readonly WayOut[],
): readonly RepairedWayOut[] {
	const search = searchIn(judgement, answers);
	return ways
		.slice(0, mostWays)
		.map((way) => ({ ...way, repairs: repairsOf(way, search) }))
		.map((way, index) => ({ way, index }))
		.sort(
			(one, other) =>
				compareFirmness(one.way.firmness, other.way.firmness) ||
				compareFirst(one.way.repairs, other.way.repairs) ||
				one.index - other.index,
		)
		.map(({ way }) => way);
}

/** A way that nothing is known to mend comes after those that something mends. */
function compareFirst([one]: readonly Repair[], [other]: readonly Repair[]): number {
	if (!one || !other) return Number(!one) - Number(!other);
	return compareRepairs(one, other);
}

function compareRepairs(one: Repair, other: Repair): number {
	const size = ({ changes }: Repair) => changes.reduce((sum, { from, to }) => sum + sizeOfChange(from, to), 0);
	const difference = size(one) - size(other);
	return (
		compareFirmness(one.firmness, other.firmness) ||
		compareLosses(lossesOf(one), lossesOf(other)) ||
		one.changes.length - other.changes.length ||
		(Math.abs(difference) > 1e-9 ? difference : 0) ||
		other.fits.length - one.fits.length ||
		other.cannotTell.length - one.cannotTell.length
	);
}

function lossesOf({ changes }: Repair): readonly Loss[] {
	return changes.flatMap(({ questionId }) => {
		const question = questionById(questionId);
		return question ? [lossOfQuestion(question)] : [];
	});
}

/** An answer that may be changed, and the facts of the build that it settles. */
interface Lever {
	readonly question: Question;
	readonly value: AnswerValue | null;
	readonly keys: readonly string[];
	/** The answer that asks for nothing. */
	readonly loosest: Answer;
}

interface Search {
	readonly judgement: Judgement;
	readonly answers: Answers;
	readonly context: QuestionContext;
	readonly levers: readonly Lever[];
	readonly places: ReadonlyMap<string, number>;
}

function searchIn(judgement: Judgement, answers: Answers): Search {
	const { build, market } = judgement;
	const context: QuestionContext = { market, asOf: build.facts.asOf ?? "" };
	const levers = allQuestions
		.filter((question) => makesSense(question, build))
		.flatMap((question) => leverOf(question, answers[question.id], context) ?? []);
	return {
		judgement,
		answers,
		context,
		levers,
		places: new Map(market.parts.board.map(({ id }, index) => [id, index])),
	};
}

/** Answers that tell what is, and not what is wanted: nobody can change them. */
const plainFacts: ReadonlySet<string> = new Set([
	"about/money-spent",
	"fit/bought",
	"fit/returnable",
	"fit/return-until",
	"fit/case-front",
	"fit/front-plugs",
]);

function leverOf(question: Question, answer: Answer | undefined, context: QuestionContext): Lever | null {
	const { id, tier, kind, partKind } = question;
	if (plainFacts.has(id) || kind === "order") return null;
	const value = settledValue(question, answer, context);
	if (kind === "part" && partKind) {
		if (value === "open" || (value === null && !question.possibilities)) return null;
		const isOpenTaken = question.expected("open", context) === null;
		return {
			question,
			value,
			keys: [partKind],
			loosest: isOpenTaken ? { status: "answered", value: "open" } : { status: "not-sure" },
		};
	}
	if (value === null) return null;
	// Which processors are thought about is one choice; a single one of them settles the part.
	if (partKind === "processor") return { question, value, keys: ["processor"], loosest: { status: "not-sure" } };
	if (tier === "about" && !["about/budget", "about/money-in-all"].includes(id)) return null;
	return { question, value, keys: keysSetBy(question, value, context), loosest: { status: "not-sure" } };
}

function settledValue(question: Question, answer: Answer | undefined, context: QuestionContext): AnswerValue | null {
	const value = answer?.status === "answered" ? answer.value : undefined;
	return value !== undefined && question.expected(value, context) === null ? value : null;
}

/** The facts of a build that an answer settles. */
function keysSetBy(question: Question, value: AnswerValue, context: QuestionContext): readonly string[] {
	if (question.isWish) return [`wish.${question.id}`];
	const { facts } = foldAnswers({}, context);
	const after = question.sets(facts, value, context);
	return Object.keys(after).filter((key) => after[key as keyof BuildFacts] !== facts[key as keyof BuildFacts]);
}

/** What the plan of a board is made of, as far as a person would change it to have more places. */
const plannedFrom = ["drives", "addInCards", "graphicsCard"];
/** What else changes the plan, where it is changed for another reason. */
const plannedWith = [...plannedFrom, "processor", "case"];

/** What a rule reads of the build, and would be changed for its sake. */
function keysRead(ruleId: string): ReadonlySet<string> {
	return keysOf(ruleId, plannedFrom);
}

/** All that may turn the verdict of a rule. */
function keysTouching(ruleId: string): ReadonlySet<string> {
	return keysOf(ruleId, plannedWith);
}

function keysOf(ruleId: string, ofPlan: readonly string[]): ReadonlySet<string> {
	const rule = ruleById(ruleId);
	const paths = [...(rule?.reads ?? []), ...(rule?.mayRead ?? [])];
	const roots = paths.map((path) => path.split(".")[0] ?? "");
	return new Set([
		...paths.filter((path) => path.startsWith("wish.")),
		...roots,
		...(roots.includes("plan") ? ofPlan : []),
		...(roots.includes("load") ? ["processor"] : []),
	]);
}

type Given = ReadonlyMap<Lever, Answer>;

function withGiven(answers: Answers, given: Given): Answers {
	return { ...answers, ...Object.fromEntries([...given].map(([{ question }, answer]) => [question.id, answer])) };
}

function repairsOf(way: WayOut, search: Search): readonly Repair[] {
	const { judgement, answers, context } = search;
	const { market } = judgement;
	const indexes = way.boardIds.flatMap((id) => search.places.get(id) ?? []);
	const read = new Set(way.giveUp.flatMap((id) => [...keysRead(id)]));
	const levers = search.levers.filter(({ keys }) => keys.some((key) => read.has(key)));
	const worldsWith = (given: Given) => foldAnswers(withGiven(answers, given), context).worlds;
	const works = (given: Given) => anyLeft(market, worldsWith(given), indexes);
	const loosened = (some: readonly Lever[]): Given => new Map(some.map((lever) => [lever, lever.loosest]));

	const enough: (readonly Lever[])[] = [];
	const touched = way.giveUp.map(keysTouching);
	const touchesAll = (some: readonly Lever[]) =>
		touched.every((keys) => some.some((lever) => lever.keys.some((key) => keys.has(key))));
	for (const some of smallSubsets(levers, Math.min(mostChanges, way.giveUp.length + 1)))
		if (
			touchesAll(some) &&
			!enough.some((known) => known.every((lever) => some.includes(lever))) &&
			works(loosened(some))
		)
			enough.push(some);
	const money = search.levers.find(({ question }) => question.id === "about/money-in-all");
	const repairs = enough
		.flatMap((some): readonly Repair[] => {
			// Another part may cost what no money is left for.
			const withMoney = money && some.some(isOtherPart) && !some.includes(money) ? [[...some, money]] : [];
			const found = [some, ...withMoney].flatMap((levers) => {
				const changes = smallestChanges(levers, loosened(levers), search, indexes);
				const repair = changes && judgedAgain(changes, search);
				return repair ? [repair] : [];
			});
			return (found.find(namesParts) ? found.filter(namesParts) : found).slice(0, 1);
		})
		.sort(compareRepairs)
		.slice(0, mostRepairs);
	if (repairs.some(({ fits }) => fits.length > 0)) return repairs;
	const sure = repairs.flatMap((repair) => largerRepairs(repair, levers, search, indexes)).sort(compareRepairs);
	return [...repairs, ...sure.slice(0, 1)];
}

/** The repair with one of its answers changed further, just so far that a board surely fits. */
function largerRepairs(
	{ changes }: Repair,
	levers: readonly Lever[],
	search: Search,
	indexes: readonly number[],
): readonly Repair[] {
	return changes.flatMap((change): readonly Repair[] => {
		const lever = levers.find(({ question }) => question.id === change.questionId);
		const further = lever ? furtherAnswers(lever, change.to, search, indexes) : [];
		for (const to of further.slice(0, mostLarger)) {
			const larger = judgedAgain(
				changes.map((one) => (one === change ? { ...one, to } : one)),
				search,
			);
			if (larger && larger.fits.length > 0) return [larger];
		}
		return [];
	});
}

/** Answers that ask for still less than the one found enough, the nearest first; none where a part is chosen anew. */
function furtherAnswers(
	{ question, value }: Lever,
	to: AnswerValue | null,
	search: Search,
	indexes: readonly number[],
): readonly AnswerValue[] {
	if (value === null || to === null || Array.isArray(to)) return [];
	if (typeof to === "number")
		return Array.from({ length: to }, (_, index) => to - 1 - index).filter(
			(count) => question.expected(count, search.context) === null,
		);
	const { facts } = search.judgement.build;
	const all = smallerAnswers(question, value, facts, search.context, pricesOf(search, indexes));
	const at = all.findIndex((other) => JSON.stringify(other) === JSON.stringify(to));
	return at < 0 ? [] : all.slice(at + 1);
}

function pricesOf({ judgement: { market } }: Search, indexes: readonly number[]): readonly Money[] {
	return indexes.flatMap((index) => {
		const board = market.parts.board[index];
		return (board && partPrice(board)?.price) ?? [];
	});
}

/** Whether for each part to be chosen anew the market has one that would do. */
function namesParts({ changes }: Repair): boolean {
	return changes.every(({ to, partIds }) => to !== null || partIds.length > 0);
}

/** All subsets of one member, then of two, up to `most`; never the empty one. */
function smallSubsets<T>(all: readonly T[], most: number): readonly (readonly T[])[] {
	let last: readonly { readonly members: readonly T[]; readonly from: number }[] = [{ members: [], from: 0 }];
	const found: (readonly T[])[] = [];
	for (let size = 1; size <= most; size += 1) {
		last = last.flatMap(({ members, from }) =>
			all.slice(from).map((one, at) => ({ members: [...members, one], from: from + at + 1 })),
		);
		found.push(...last.map(({ members }) => members));
	}
	return found;
}

/** Parts are settled first and money last, so that it is the sum needed with all else as it will be. */
const orderOfSettling: readonly Loss[] = ["part", "fewer", "wish", "money"];

/** Each answer changed as little as is enough with the others as they are; null where one has no answer that is. */
function smallestChanges(
	levers: readonly Lever[],
	loosened: Given,
	search: Search,
	indexes: readonly number[],
): readonly AnswerChange[] | null {
	const given = new Map(loosened);
	const settled = levers.toSorted(
		(one, other) =>
			orderOfSettling.indexOf(lossOfQuestion(one.question)) - orderOfSettling.indexOf(lossOfQuestion(other.question)),
	);
	const chosen = new Map<Lever, AnswerValue | null>();
	for (const lever of settled) {
		// A cheaper part may have done what more money was for.
		if (!isOtherPart(lever) && isEnoughWithout(lever, given, search, indexes)) {
			given.delete(lever);
			continue;
		}
		const to = isOtherPart(lever) ? null : smallestAnswer(lever, given, search, indexes);
		if (to === undefined) return null;
		chosen.set(lever, to);
		if (to !== null) given.set(lever, { status: "answered", value: to });
		else {
			// One that would do stands for it, so that its price is counted.
			const [partId] = partsThatDo(lever, given, search, indexes, 1);
			if (partId) given.set(lever, choiceOf(lever.question, partId));
		}
	}
	return [...chosen].map(([lever, to]) => {
		const partIds = to === null ? partsThatDo(lever, given, search, indexes, mostParts) : [];
		return { questionId: lever.question.id, from: lever.value, to, partIds };
	});
}

/** Whether an answer may stay as it is once the others are changed. */
function isEnoughWithout(
	lever: Lever,
	given: Given,
	{ judgement: { market }, answers, context }: Search,
	indexes: readonly number[],
): boolean {
	const others = new Map([...given].filter(([one]) => one !== lever));
	return anyLeft(market, foldAnswers(withGiven(answers, others), context).worlds, indexes);
}

/** Whether a part is to be chosen anew; where there was to be none, it is enough to have one. */
function isOtherPart({ question, value }: Lever): boolean {
	return lossOfQuestion(question) === "part" && (value === null || typeof value === "object");
}

/** Undefined where none is enough. */
function smallestAnswer(
	lever: Lever,
	given: Given,
	search: Search,
	indexes: readonly number[],
): AnswerValue | undefined {
	const {
		judgement: { market },
		answers,
		context,
	} = search;
	const { question, value } = lever;
	const buildWith = (other: AnswerValue) =>
		foldAnswers(withGiven(answers, new Map([...given, [lever, { status: "answered", value: other }]])), context);
	const isEnough = (other: AnswerValue, some = indexes) => anyLeft(market, buildWith(other).worlds, some);
	if (question.kind === "part") return "open";
	if (value === null) return undefined;
	if (typeof value === "number") {
		const least = [0, 1, 2, 3, 4].find((count) => question.expected(count, context) === null);
		return least === undefined ? undefined : (smallestCount(value, least, isEnough) ?? undefined);
	}
	if (Array.isArray(value)) {
		const lists = indexes.flatMap((index) => longestList(value, (list) => isEnough(list, [index])) ?? []);
		const longest = Math.max(...lists.map(({ list }) => list.length));
		const counted = lists
			.filter(({ list }) => list.length === longest)
			.map(({ list }) => ({ list, count: boardsLeft(market, buildWith(list).worlds, indexes).length }));
		// Of lists as long the one that brings most boards back.
		return counted.toSorted((one, other) => other.count - one.count)[0]?.list;
	}
	const prices = pricesOf(search, indexes);
	return smallerAnswers(question, value, buildWith(value).facts, context, prices).find((other) => isEnough(other));
}

type Priced = Parameters<typeof partPrice>[0];

/** Parts of the market that would do in place of the one given up, the nearest in price first. */
function partsThatDo(
	{ question, value }: Lever,
	given: Given,
	{ judgement: { market, build }, answers, context }: Search,
	indexes: readonly number[],
	most: number,
): readonly string[] {
	const { id, partKind } = question;
	if (!partKind) return [];
	const now = build.facts[partKind as BuildPartKind];
	const price = now?.state === "have" ? partPrice(now.part as Priced)?.price : undefined;
	const distance = (other: ReturnType<typeof partPrice>) =>
		price && other?.price.currency === price.currency
			? Math.abs(other.price.minor - price.minor)
			: Number.POSITIVE_INFINITY;
	const others = market.parts[partKind]
		.map((part) => ({ part, far: distance(partPrice(part as Priced)) }))
		.filter(({ part }) => !isNamed(value, part.id))
		.sort((one, other) => (one.far === other.far ? 0 : one.far - other.far));
	const settled = withGiven(answers, given);
	const found: string[] = [];
	for (const { part } of others) {
		if (found.length >= most) break;
		const { worlds } = foldAnswers({ ...settled, [id]: choiceOf(question, part.id) }, context);
		if (anyLeft(market, worlds, indexes)) found.push(part.id);
	}
	return found;
}

function choiceOf({ kind }: Question, partId: string): Answer {
	return { status: "answered", value: kind === "many" ? [partId] : { part: partId } };
}

function isNamed(value: AnswerValue | null, partId: string): boolean {
	if (Array.isArray(value)) return value.includes(partId);
	return typeof value === "object" && value !== null && "part" in value && value.part === partId;
}

/** What the whole market says once the answers are changed; null where no board comes back after all. */
function judgedAgain(changes: readonly AnswerChange[], search: Search): Repair | null {
	const { judgement, answers, context, levers } = search;
	const tried = repairedAnswers(answers, changes, context).map(
		(changed) => judge(judgement.market, foldAnswers(changed, context)).boards,
	);
	const verdictsAt = (index: number) => tried.map((boards) => boards[index]?.verdict);
	const ids = judgement.boards.map(({ board }, index) => ({ id: board.id, index, verdicts: verdictsAt(index) }));
	const fits = ids.filter(({ verdicts }) => verdicts.includes("fits"));
	const open = ids.filter(({ verdicts }) => !verdicts.includes("fits") && verdicts.includes("cannot-tell"));
	if (fits.length + open.length === 0) return null;
	const firmness = changes
		.flatMap(({ questionId }) => levers.filter(({ question }) => question.id === questionId))
		.map(({ question }) => firmnessOfQuestion(question, judgement.build.facts))
		.reduce((one, other) => (compareFirmness(one, other) < 0 ? other : one), "planned");
	return {
		changes,
		fits: fits.map(({ id }) => id),
		cannotTell: open.map(({ id }) => id),
		leavesNothing: changes.some(({ questionId }) => isMoneyQuestion(questionId))
			? fits.flatMap(({ index }) => leavesNothingOf(tried.flatMap((boards) => boards[index] ?? [])))
			: [],
		firmness,
	};
}

const isMoneyQuestion = (questionId: string) => ["about/budget", "about/money-in-all"].includes(questionId);

/** What a board makes one buy besides with too little left for it, where that is so in every way it was judged. */
function leavesNothingOf(judged: Judgement["boards"]): Repair["leavesNothing"] {
	const tight = judged.map(({ findings }) =>
		findings.find(({ ruleId, messageId }) => ruleId === "fit/forced-extras" && messageId === "tight"),
	);
	const [first] = judged;
	const extras = tight[0]?.data["extras"];
	return first && Array.isArray(extras) && tight.every((one) => one !== undefined)
		? [{ boardId: first.board.id, extras: extras.map(String) }]
		: [];
}

/**
 * The answers with a repair made. Another part counts as bought to suit the board; where its price matters, or nothing
 * can be left open like that, there is one set of answers for each part that would do.
 */
export function repairedAnswers(
	answers: Answers,
	changes: readonly AnswerChange[],
	context: QuestionContext,
): readonly Answers[] {
	const isPriced = answers["about/money-in-all"]?.status === "answered";
	const tried = changes.map(({ questionId, to, partIds }): readonly Answer[] => {
		const question = questionById(questionId);
		if (to !== null) return [{ status: "answered", value: to }];
		const isOpenTaken = question?.kind === "part" && question.expected("open", context) === null;
		if (isOpenTaken && (!isPriced || partIds.length === 0)) return [{ status: "answered", value: "open" }];
		return question ? partIds.map((id) => choiceOf(question, id)) : [];
	});
	const most = tried.some((all) => all.length === 0) ? 0 : Math.max(...tried.map((all) => all.length));
	return Array.from({ length: most }, (_, index) => ({
		...answers,
		...Object.fromEntries(changes.map(({ questionId }, at) => [questionId, tried[at]?.[index] ?? tried[at]?.[0]])),
	})) as Answers[];
}
