import { samePoints } from "../choose/how-sure.ts";
import type { Beaten, LinePoint, LineStep, PriceLine } from "../choose/price-line.ts";
import type { Score } from "../choose/score.ts";
import { criterionById } from "../criteria/all-criteria.ts";
import { moneyText } from "../parts/money.ts";
import { capital, listed } from "./listed.ts";

interface PriceLineSection {
	readonly heading: string;
	readonly lines: readonly string[];
}

/** A change of one criterion by fewer points than this is not told (own convention). */
const leastPoints = 1;
/** More than so many pluses of one step, or boards of one sort, are not told one by one. */
const [mostPluses, mostNamed] = [3, 8];

/** What more money buys, in words: under each heading its sentences. Empty parts are left out. */
export function priceLineWords(line: PriceLine): readonly PriceLineSection[] {
	return [
		{ heading: "In short", lines: shortWords(line) },
		{ heading: "On the line, the cheapest first", lines: line.hull.map((point) => pointWords(point, line)) },
		...line.steps.map((step) => stepSection(step, line)),
		{
			heading: "Off the line, but no board beats them",
			lines: shortList(line.below, (point) => pointWords(point, line)),
		},
		{ heading: "Can be passed over", lines: shortList(line.beaten, (one) => beatenWords(one, line)) },
		{ heading: "Not settled yet", lines: shortList(line.unsettled, (point) => unsettledWords(point, line)) },
		{ heading: "Not on this page", lines: leftOutWords(line) },
	].filter(({ lines }) => lines.length > 0);
}

/** What the picture shows, for whoever does not see it: where the line begins and ends, and how many boards lie where. */
export function priceLineInShort(line: PriceLine): readonly string[] {
	const [first, last] = [line.hull[0], line.hull.at(-1)];
	if (!first || !last) return [];
	const others = line.points.length - line.hull.length;
	return [
		first === last
			? `${nameOf(first)} stands alone: of the boards compared, no dearer one has more points.`
			: `On the line each further point costs least. It starts at ${nameOf(first)}, ${sumWords(first, line)}. It ends at ${nameOf(last)}, ${sumWords(last, line)}.`,
		...(line.hull.length > 2 ? [`Between them it goes by ${listed(line.hull.slice(1, -1).map(nameOf))}.`] : []),
		...(others > 0 ? [`${others} more ${others === 1 ? "board lies" : "boards lie"} off the line.`] : []),
	];
}

function shortWords(line: PriceLine): readonly string[] {
	if (line.currency === null)
		return line.noPrice.length > 0
			? ["No price is known of any board left. Note some prices, and this page shows what more money buys."]
			: ["No boards are left, so there is no price to compare."];
	return [
		...priceLineInShort(line),
		...(line.points.some(({ isSure }) => isSure) ? [] : ["None of these boards is sure to fit yet."]),
		"A point has no price of its own. Only you can say what one is worth to you.",
		...(line.allForce.length > 0
			? [`Every board compared makes you buy more, at a price not known: ${line.allForce.join(", ")}.`]
			: []),
		...(line.leavesOut
			? ["Each board makes you buy something without a known price. The line leaves that out, so ask first."]
			: []),
	];
}

/** "Minuet (invented): EUR 118.00, 85 points." with what the sum is made of. */
function pointWords(point: LinePoint, line: PriceLine): string {
	return `${fullNameOf(point)}: ${sumWords(point, line)}.${costsWords(point, line)}`;
}

function costsWords({ own, costs, besides }: LinePoint, line: PriceLine): string {
	const money = (minor: number) => moneyText({ minor, currency: line.currency ?? own.price.currency });
	const extras = costs.priced.map(({ words, partName, minor }) => `${money(minor)} for ${words} (${partName})`);
	return [
		...(extras.length > 0 ? [`That is ${money(own.price.minor)} for the board and ${listed(extras)}.`] : []),
		...(own.condition === "new" ? [] : [`The board is to be had ${own.condition} at this price.`]),
		...(besides.length > 0 ? [`To be bought besides, and not counted: ${besides.join(", ")}.`] : []),
	]
		.map((words) => ` ${words}`)
		.join("");
}

/** What the next money buys. */
function stepSection(step: LineStep, line: PriceLine): PriceLineSection {
	const { from, to, moreMinor, morePoints, minorPerPoint } = step;
	const money = (minor: number) => moneyText({ minor, currency: line.currency ?? "" });
	const rate = money(Math.max(1, twoDigits(minorPerPoint)));
	return {
		heading: `For ${money(moreMinor)} more: from ${nameOf(from)} to ${nameOf(to)}`,
		lines: [
			morePoints < samePoints
				? "The two have about the same points, so there is little to gain."
				: `It buys ${pointsOf(morePoints)}. Each further point costs about ${rate}. If a point is worth less to you, stop at ${nameOf(from)}.`,
			...changeWords(step),
		],
	};
}

/** What gets better and what is lost: the criteria that change most, and what each says of the two boards. */
function changeWords({ from, to, changes }: LineStep): readonly string[] {
	const pluses = changes.filter(({ points }) => points >= leastPoints).slice(0, mostPluses);
	const minus = changes.find(({ points }) => points <= -leastPoints);
	const told = (label: string, criterionId: string) => {
		const [says, before] = [saysOf(to.score, criterionId), saysOf(from.score, criterionId)];
		const name = criterionById(criterionId)?.name ?? criterionId;
		if (says === null || before === null || says === before) return `${label}: ${name}.`;
		return `${label}: ${name}. ${nameOf(to)}: ${says}. ${nameOf(from)}: ${before}.`;
	};
	return [
		...pluses.map(({ criterionId }) => told("Better", criterionId)),
		...(minus ? [told("Not as good", minus.criterionId)] : []),
	];
}

/** What a criterion says of a board; each of its clauses a sentence, since the board's name stands in front. */
function saysOf({ parts }: Score, criterionId: string): string | null {
	const part = parts.find((one) => one.criterionId === criterionId);
	const words = part && criterionById(criterionId)?.says(part.measure);
	return (
		words
			?.split("; ")
			.map((clause, index) => (index === 0 ? clause : capital(clause)))
			.join(". ") ?? null
	);
}

function beatenWords({ point, by, isCertain }: Beaten, line: PriceLine): string {
	const money = (minor: number) => moneyText({ minor: Math.abs(minor), currency: line.currency ?? "" });
	const [dearer, gap] = [by.minor - point.minor, by.points - point.points];
	const price =
		dearer > 0
			? `costs only ${money(dearer)} more than`
			: dearer < 0
				? `costs ${money(dearer)} less than`
				: "costs the same as";
	const points = gap === 0 ? "as many points" : gap < samePoints ? "about as many points" : `${pointsOf(gap)} more`;
	const withExtras = [by, point].some(({ costs }) => costs.priced.length > 0);
	const extras = point.besides.filter((words) => !by.besides.includes(words));
	return [
		`${nameOf(by)} ${price} ${nameOf(point)} and has ${points}${isCertain ? "" : ", as far as is known"}.${withExtras ? " This counts what each makes you buy besides." : ""}`,
		...(extras.length > 0 ? [`With ${nameOf(point)} you must also buy: ${listed(extras)}.`] : []),
	].join(" ");
}

function unsettledWords(point: LinePoint, line: PriceLine): string {
	const isOpen = line.points.some(({ isSure }) => isSure) && !point.isSure;
	return `${pointWords(point, line)}${isOpen ? " Whether it fits is not known yet." : ""}`;
}

function leftOutWords({ noPrice, otherCurrency, currency }: PriceLine): readonly string[] {
	if (currency === null) return [];
	return [
		...(noPrice.length > 0 ? [`No price known: ${someOf(noPrice.map(({ name }) => name))}.`] : []),
		...(otherCurrency.length > 0
			? [
					`A price in another currency, which is not converted here: ${someOf(
						otherCurrency.map(({ board, price }) => `${board.name} (${moneyText(price)})`),
					)}.`,
				]
			: []),
	];
}

/** The price as far as it is known, and the points: "from EUR 118.00, 85 points (60 to 90)". */
export function sumWords(
	{ minor, besides, score, points }: LinePoint,
	{ currency }: Pick<PriceLine, "currency">,
): string {
	const price = moneyText({ minor, currency: currency ?? "" });
	const [low, high] = [Math.round(score.low), Math.round(score.high)];
	return `${besides.length > 0 ? "from " : ""}${price}, ${pointsOf(points)}${low === high ? "" : ` (${low} to ${high})`}`;
}

const nameOf = ({ board }: LinePoint) => board.name;
const fullNameOf = ({ board }: LinePoint) => `${board.name}${board.invented ? " (invented)" : ""}`;

const pointsOf = (count: number) => `${count} ${count === 1 ? "point" : "points"}`;

/** The first two digits are all that the scores bear. */
function twoDigits(value: number): number {
	const step = 10 ** Math.max(0, Math.floor(Math.log10(Math.max(1, value))) - 1);
	return Math.round(value / step) * step;
}

function shortList<T>(all: readonly T[], words: (one: T) => string): readonly string[] {
	const told = all.slice(0, all.length > mostNamed + 1 ? mostNamed : all.length).map(words);
	return all.length > told.length ? [...told, `And ${all.length - told.length} more.`] : told;
}

function someOf(names: readonly string[]): string {
	return names.length > mostNamed
		? `${names.slice(0, mostNamed).join(", ")} and ${names.length - mostNamed} more`
		: listed(names);
}
