import type { AnswerValue } from "../parts/answers-file.ts";
import type { Board } from "../parts/board.ts";
import type { BuildFacts } from "../parts/build.ts";
import { partPrice } from "../parts/part-price.ts";
import type { Option, Question, QuestionContext } from "../questions/define-question.ts";
import { currencyOf } from "../questions/money-question.ts";

/** One way a question may be answered, and how likely that is. */
export interface PossibleAnswer {
	readonly value: AnswerValue;
	/** 0 to 1; all of one question sum to 1. */
	readonly chance: number;
}

/** Of a long list so many lines stand for all (own convention). */
export const mostLines = 6;
/** Of the prices at which boards fall out, so many are tried (own convention). */
const mostPrices = 5;
/** Share of the whole sum that many builders give the board (common practice, no source). */
const usualShare = 0.15;

/** Shares of all the money that may be spent already (own convention). */
const spentShares = [0, 0.25, 0.5, 0.75];

/** Numbers that people answer, with how often they do against each other (own convention: nobody has counted). */
const usualNumbers: Readonly<Record<string, readonly (readonly [value: AnswerValue, often: number])[]>> = {
	"fit/memory-size": [
		[16, 1],
		[32, 3],
		[64, 2],
		[128, 1],
	],
	"fit/older-drives": [
		[0, 4],
		[1, 2],
		[2, 1],
		[4, 1],
	],
	"features/case-fans": [
		[1, 1],
		[2, 2],
		[3, 2],
		[5, 1],
		[7, 1],
	],
	"features/rear-devices": [
		[2, 1],
		[4, 2],
		[6, 2],
		[8, 1],
	],
	"quality/years": [
		[2, 1],
		[4, 2],
		[6, 2],
		[8, 1],
	],
};

/**
 * What a question may be answered with, as far as that can be listed: all lines of a short list, some of a long one that
 * stand for the rest, the usual numbers, the prices at which boards fall out. Each is as likely as any other unless the
 * numbers above say so. None where nothing can be listed: the question then cannot be valued.
 *
 * @param boards those that are left; their order changes nothing
 */
export function possibleAnswers(
	question: Question,
	context: QuestionContext,
	facts: BuildFacts,
	boards: readonly Board[],
): readonly PossibleAnswer[] {
	const counted = usualNumbers[question.id] ?? valuesOf(question, context, facts, boards).map((value) => [value, 1]);
	const answers = counted as readonly (readonly [AnswerValue, number])[];
	const taken = answers.filter(([value]) => question.expected(value, context) === null);
	const all = taken.reduce((sum, [, often]) => sum + often, 0);
	return taken.map(([value, often]) => ({ value, chance: often / all }));
}

function valuesOf(
	question: Question,
	context: QuestionContext,
	facts: BuildFacts,
	boards: readonly Board[],
): readonly AnswerValue[] {
	if (question.id === "fit/return-until") return [context.asOf];
	if (question.id.startsWith("about/money") || question.id === "about/budget")
		return sumsOf(question.id, context, facts, boards);
	const lines = question.options(context, facts);
	if (question.kind === "one" || question.kind === "order") return lines.map(({ value }) => value);
	const isPart = (value: AnswerValue) => typeof value === "object";
	const listed = spread(inFixedOrder(lines.filter(({ value }) => isPart(value))), mostLines).map(({ value }) => value);
	if (question.kind === "many") return listed.length > 0 ? [[], ...listed] : [];
	// Without a part to pick, "there will be none" and "I buy what suits" are not all that may be answered.
	return listed.length > 0 ? [...listed, ...lines.map(({ value }) => value).filter((value) => !isPart(value))] : [];
}

/** By heading, then by id: the same however the market is ordered. */
function inFixedOrder(lines: readonly Option[]): readonly Option[] {
	const keyOf = ({ group = "", value }: Option) => `${group}\n${JSON.stringify(value)}`;
	return lines
		.map((line) => ({ line, key: keyOf(line) }))
		.sort((one, other) => (one.key < other.key ? -1 : one.key > other.key ? 1 : 0))
		.map(({ line }) => line);
}

/** So many of a list, from its first to its last at even steps; all of a shorter one. */
export function spread<T>(list: readonly T[], most: number): readonly T[] {
	if (list.length <= most) return list;
	return Array.from({ length: most }, (_, nth) => list[Math.round((nth * (list.length - 1)) / (most - 1))] as T);
}

/** Sums of money at which boards fall out. */
function sumsOf(
	id: string,
	{ market }: QuestionContext,
	{ moneyInAll, moneyPlanned }: BuildFacts,
	boards: readonly Board[],
): readonly AnswerValue[] {
	const currency = moneyInAll?.currency ?? currencyOf(market);
	const prices = boards.flatMap((board) => {
		const price = partPrice(board)?.price;
		return price?.currency === currency ? [price.minor] : [];
	});
	const tried = spread(
		[...new Set(prices)].sort((one, other) => one - other),
		mostPrices,
	);
	const sum = (minor: number) => ({ minor: Math.max(0, Math.round(minor)), currency });
	const planned = moneyPlanned?.currency === currency ? moneyPlanned.minor : 0;
	if (id === "about/budget") return tried.length > 0 ? [...tried.map(sum), "no-limit"] : [];
	if (id === "about/money-in-all") return tried.map((minor) => sum(planned > 0 ? planned + minor : minor / usualShare));
	return moneyInAll ? spentShares.map((share) => sum(share * moneyInAll.minor)) : [sum(0)];
}
