import type { AnswerValue } from "../parts/answers-file.ts";
import type { BuildFacts } from "../parts/build.ts";
import { type WishStrength, wishStrengths } from "../parts/build.ts";
import type { Money } from "../parts/money.ts";
import type { Question, QuestionContext } from "../questions/define-question.ts";

/**
 * The answers that ask for less than one given, the smallest change first. Prices are what the boards cost that may come
 * back. None where an answer cannot be lessened so; for counts see `smallestCount`, for lists `longestList`.
 */
export function smallerAnswers(
	question: Question,
	value: AnswerValue,
	facts: BuildFacts,
	context: QuestionContext,
	prices: readonly Money[],
): readonly AnswerValue[] {
	if (question.isWish) return wishStrengths.slice(wishStrengths.indexOf(value as WishStrength) + 1);
	if (question.id === "about/budget") return isMoney(value) ? higher(value, prices, 0) : [];
	if (question.id === "about/money-in-all") return isMoney(value) ? higher(value, prices, goneOf(facts)) : [];
	return question.kind === "one" ? neighbours(question, value, facts, context) : [];
}

function isMoney(value: AnswerValue): value is Money {
	return typeof value === "object" && "minor" in value;
}

/** What is spent, or will be for the parts picked, in the smallest unit of the money there is. */
function goneOf({ moneySpent, moneyPlanned }: BuildFacts): number {
	return (moneySpent?.minor ?? 0) + (moneyPlanned?.minor ?? 0);
}

/** Sums from the next price on; the price and what is gone besides. */
function higher({ minor, currency }: Money, prices: readonly Money[], gone: number): readonly Money[] {
	const sums = prices.filter((price) => price.currency === currency).map((price) => price.minor + gone);
	return [...new Set(sums)]
		.filter((sum) => sum > minor)
		.sort((one, other) => one - other)
		.map((sum) => ({ minor: sum, currency }));
}

/**
 * The list with as few things left out as is enough; what is named first stays first. Things are put back one by one. In
 * places that each hold one thing (sockets, slots) that leaves the most there can be: such sets make a transversal
 * matroid (Edmonds & Fulkerson 1965, from memory). Null where not even the empty list is enough.
 */
export function longestList(
	list: readonly string[],
	isEnough: (list: string[]) => boolean,
): { readonly list: string[] } | null {
	if (!isEnough([])) return null;
	let kept: string[] = [];
	for (const item of list) if (isEnough([...kept, item])) kept = [...kept, item];
	return { list: kept };
}

/** The other answers of a list of a few, the nearest lines first, and of two as near the earlier. */
function neighbours(
	question: Question,
	value: AnswerValue,
	facts: BuildFacts,
	context: QuestionContext,
): readonly AnswerValue[] {
	const values = question.options(context, facts).map((option) => option.value);
	const at = values.indexOf(value);
	if (at < 0) return [];
	return values
		.map((other, index) => ({ other, far: Math.abs(index - at), index }))
		.filter(({ far }) => far > 0)
		.sort((one, other) => one.far - other.far || one.index - other.index)
		.map(({ other }) => other);
}

/**
 * The highest count below `value` that is enough, by halving; a lower one is then enough too. Null where not even the
 * least is.
 */
export function smallestCount(value: number, least: number, isEnough: (count: number) => boolean): number | null {
	if (value <= least || !isEnough(least)) return null;
	let [low, high] = [least, value];
	while (high - low > 1) {
		const middle = Math.floor((low + high) / 2);
		if (isEnough(middle)) low = middle;
		else high = middle;
	}
	return low;
}

/** How far an answer is changed, as a share of what was answered; a part counts whole, a weaker wish half a step. */
export function sizeOfChange(from: AnswerValue | null, to: AnswerValue | null): number {
	if (from === null || to === null) return 1;
	if (typeof from === "number" && typeof to === "number") return Math.abs(to - from) / Math.max(1, Math.abs(from));
	if (Array.isArray(from) && Array.isArray(to)) return (from.length - to.length) / Math.max(1, from.length);
	if (isMoney(from) && isMoney(to)) return Math.abs(to.minor - from.minor) / Math.max(1, from.minor);
	const [one, other] = [from, to].map((value) => wishStrengths.indexOf(value as WishStrength)) as [number, number];
	return one >= 0 && other >= 0 ? Math.abs(one - other) / 2 : 1;
}
