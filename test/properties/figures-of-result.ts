import { measuresOfBuild } from "../../src/choose/findings-of-market.ts";
import { cardPrices, forcedCosts } from "../../src/choose/forced-costs.ts";
import type { BoardJudgement } from "../../src/choose/judge.ts";
import { type Repair, repairedWays } from "../../src/choose/repaired-answers.ts";
import type { Money } from "../../src/parts/money.ts";
import { partPrice } from "../../src/parts/part-price.ts";
import type { SteadyPower } from "../../src/power/steady-power.ts";
import { allRules } from "../../src/rules/all-rules.ts";
import { needOf } from "../../src/rules/run-rule.ts";
import type { WalkView } from "../../src/screens/walk-view.ts";
import { wordsIn } from "../sheet/forms-reading.ts";
import { isFigure } from "./figures-on-page.ts";

/** Sums as they are written, by a rule of our own: whole units and as many digits as the currency has. */
const digits: Readonly<Record<string, number>> = { EUR: 2, USD: 2, JPY: 0, KWD: 3, XQZ: 2 };
export const sumText = (minor: number, currency: string): string =>
	(minor / 10 ** (digits[currency] ?? 2)).toFixed(digits[currency] ?? 2);

/** Words without those that are names. */
type Nameless = (words: readonly string[]) => readonly string[];

/**
 * A number, or each number of a text or of what has parts, as it is written: by one of the few rules by which numbers are
 * rounded, sums with their digits, texts without names.
 */
export function figuresOf(value: unknown, nameless: Nameless): readonly string[] {
	if (typeof value === "number") return Number.isFinite(value) ? rounded(value) : [];
	if (typeof value === "string") return nameless(wordsIn(value)).filter(isFigure);
	if (typeof value !== "object" || value === null) return [];
	const { minor, currency } = value as { readonly minor?: unknown; readonly currency?: unknown };
	if (typeof minor === "number" && typeof currency === "string") return [sumText(minor, currency)];
	return Object.values(value).flatMap((one) => figuresOf(one, nameless));
}

/** Whole, down, up, to tenths and to hundredths; what is below nothing is told as a lack. */
function rounded(value: number): readonly string[] {
	const size = Math.abs(value);
	const tenths = [10, 100].map((parts) => Math.round(size * parts) / parts);
	return [...new Set([Math.round(size), Math.floor(size), Math.ceil(size), ...tenths].map(String))];
}

/** The board as it was judged, with the power that the rules saw. */
export const judgedIn = (view: WalkView, boardId: string): BoardJudgement =>
	view.judgement().boards.find(({ board }) => board.id === boardId) as BoardJudgement;

export const steadyOf = (view: WalkView, boardId: string): SteadyPower | undefined =>
	judgedIn(view, boardId).subject.measures?.power?.(view.build().facts).steady;

/** Fans now and later are asked for together. */
const withSum = (data: Readonly<Record<string, unknown>> = {}): unknown => {
	// "5 picture sockets ... Your screens have:" counts what it then lists.
	const lengths = Object.values(data).flatMap((value) => (Array.isArray(value) ? [value.length] : []));
	const sums = "later" in data && "fans" in data ? [Number(data["fans"]) + Number(data["later"])] : [];
	return [data, ...sums, ...lengths];
};

/** The data of each demand, by its rule, over all ways that open answers can turn out. */
export function needsData(view: WalkView): ReadonlyMap<string, readonly unknown[]> {
	const { facts, worlds } = view.build();
	return new Map(
		allRules.map((rule) => [
			rule.id,
			[facts, ...worlds.map((world) => world.facts)].map((one) =>
				withSum(needOf(rule, { facts: one, measures: measuresOfBuild })?.data),
			),
		]),
	);
}

/** What a way out changes: values, how much more a sum is, and how many boards it brings back. */
function figuresOfRepair({ changes, fits, cannotTell, leavesNothing }: Repair): unknown {
	return [
		changes.map(({ from, to }) => [
			from,
			to,
			isMoney(from) && isMoney(to) ? { ...to, minor: to.minor - from.minor } : [],
		]),
		[fits, cannotTell].map(({ length }) => [length, length - 3]),
		leavesNothing.map(({ extras }) => extras),
	];
}

const isMoney = (value: unknown): value is Money => typeof value === "object" && value !== null && "minor" in value;

/** All figures that the result gives to the pages for the shop and the bench, without looking at any sheet. */
export function figuresOfResult(view: WalkView, nameless: Nameless): ReadonlySet<string> {
	const { market, context } = view;
	const judgement = view.judgement();
	const advice = view.advice();
	const { counts, build } = judgement;
	const days = (day: string) => Math.round((Date.parse(context.asOf) - Date.parse(day)) / 86_400_000);
	const listed = advice.shortlist.map((entry) => {
		const judged = judgedIn(view, entry.boardId);
		const board = judged.subject.board ?? judged.board;
		const currency = partPrice(board)?.price.currency ?? "";
		const worlds = judged.possibleWorlds.flatMap((index) => build.worlds[index]?.facts ?? []);
		const { priced } = forcedCosts(judged.subject, worlds, cardPrices(market, currency));
		const steady = steadyOf(view, entry.boardId);
		return [
			entry.score.low,
			entry.score.mid,
			entry.score.high,
			entry.ways,
			entry.price,
			judged.findings.map(({ data }) => data),
			entry.score.parts.map(({ measure }) => [measure.low, measure.high, measure.note]),
			judged.depending.map(({ fitsWith, notWith }) => [fitsWith, notWith]),
			board.checkedOn === undefined ? [] : [board.checkedOn, days(board.checkedOn)],
			(board.offers ?? []).map(({ returnableUntil }) => returnableUntil),
			priced.map(({ minor, words }) => [{ minor, currency }, words]),
			steady && [steady.watts, steady.spareK],
		];
	});
	const ways = advice.shortlist.length > 0 ? [] : repairedWays(judgement, view.state.answers, advice.waysOut);
	// Supplies are sold in steps of 50 W: what is wanted, up to the next.
	const supplies = advice.buildFindings.map(({ finding }) => Math.ceil(Number(finding.data["wantedW"] ?? 0) / 50) * 50);
	return new Set(
		figuresOf(
			[
				counts.all,
				counts.all - counts.doesNotFit,
				counts.cannotTell,
				listed,
				advice.buildFindings.map(({ finding }) => finding.data),
				[...needsData(view).values()],
				build.facts.returnableUntil,
				supplies,
				ways.map((way) => [way.boardIds.length, way.repairs.map(figuresOfRepair)]),
			],
			nameless,
		),
	);
}
