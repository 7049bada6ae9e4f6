import type { Judgement } from "../choose/judge.ts";
import type { LikeBoard, LikeChange, LikeDirection, LikeFacts, LikeThisBut } from "../choose/like-this-but.ts";
import { criterionById } from "../criteria/all-criteria.ts";
import { wholeParts } from "../maths/whole-parts.ts";
import { moneyText } from "../parts/money.ts";
import { titleInSentence } from "../parts/title-in-sentence.ts";
import { ruleById } from "../rules/all-rules.ts";
import { findingWords } from "../rules/finding-words.ts";
import { listed } from "./listed.ts";
import { verdictWords } from "./reason-words.ts";
import type { WordsUnder } from "./what-if-words.ts";

/** A direction as a person reads it, behind "like this one, but". */
export const directionWords: Readonly<Record<LikeDirection, string>> = {
	cheaper: "cheaper",
	cooler: "cooler",
	smaller: "smaller",
	"more-ports": "with more USB sockets",
};

/** What has to be known of a board to compare it in a direction. */
const comparedWords: Readonly<Record<LikeDirection, string>> = {
	cheaper: "its price",
	cooler: "how warm its power stages get",
	smaller: "its size",
	"more-ports": "its USB sockets at the back",
};

/** "Like Chandelier, but cheaper". */
export function likeTitle(name: string, direction: LikeDirection): string {
	return `Like ${name}, but ${directionWords[direction]}`;
}

/** What is like a board but better in one way, and what each costs in everything else. */
export function likeWords(result: LikeThisBut, judgement: Judgement): readonly WordsUnder[] {
	const { boardId, direction, isLeft, isKnown, found, more, leftOut } = result;
	const name = nameOf(boardId, judgement);
	if (!isKnown)
		return [
			{
				heading: "In short",
				lines: [`Of ${name} it is not known ${unknownWords(direction)}, so nothing can be held against it.`],
			},
		];
	return [
		{
			heading: "In short",
			lines: [
				...(isLeft ? [] : [`${name} itself does not fit your answers, so no points are compared.`]),
				shortWords(found.length + more, direction),
				...(more > 0
					? [
							`Here are the ${found.length} ${isLeft ? "for which you give up the fewest points" : "with the most points"}.`,
						]
					: []),
				...leftOutWords(leftOut.length, direction),
			],
		},
		...found.map((one) => ({ heading: nameOf(one.boardId, judgement), lines: boardWords(one, direction, judgement) })),
		...fallenWords(result, judgement),
	];
}

/** "is EUR 30.00 cheaper; you give up 2 USB sockets at the back and 6 points", then what else is to be said. */
function boardWords(one: LikeBoard, direction: LikeDirection, judgement: Judgement): readonly string[] {
	const { boardId, points, byCriterion } = one;
	const total = points === null ? null : wholeParts(byCriterion.map((part) => part.points)).reduce(sum, 0);
	const { minus, plus } = differences(one, direction, total);
	const judged = judgement.boards.find(({ board }) => board.id === boardId);
	const told = `It ${gainWords(one, direction)}`;
	const whole = `${told}; you give up ${minus.length === 0 ? "nothing that is compared here" : listed(minus)}.`;
	const unknown = unknownFacts(one, direction);
	return [
		...(countWords(whole) <= mostWords ? [whole] : [`${told}.`, ...inSentences("For that you give up", minus)]),
		...inSentences("You also get", plus),
		...(total === null ? [`It has ${counted(Math.round(one.score), "point")} of 100.`] : criterionWords(one)),
		...(unknown.length > 0 ? [`Not compared, since it is not known of both: ${listed(unknown)}.`] : []),
		...(judged && one.verdict === "cannot-tell"
			? [`${verdictWords({ verdict: one.verdict, dependsOn: judged.dependsOn })}.`]
			: []),
	];
}

/** Words a sentence may have. */
const mostWords = 25;

/** Things in one sentence, or in two where it would be too long; none where there are no things. */
function inSentences(beginning: string, things: readonly string[]): readonly string[] {
	if (things.length === 0) return [];
	const whole = `${beginning} ${listed(things)}.`;
	if (countWords(whole) <= mostWords || things.length === 1) return [whole];
	const half = Math.ceil(things.length / 2);
	return [things.slice(0, half), things.slice(half)].map((some) => `${beginning} ${listed(some)}.`);
}

function countWords(sentence: string): number {
	return sentence.split(/\s+/).length;
}

function gainWords({ from, to }: LikeChange, direction: LikeDirection): string {
	switch (direction) {
		case "cheaper":
			return `is ${priceDifference(to, from)} cheaper`;
		case "cooler":
			return `stays ${degrees(warmer(to, from))} cooler at its warmest`;
		case "smaller":
			return from.sidesMm && to.sidesMm
				? `is smaller: ${sides(to)} instead of ${sides(from)}`
				: `is of a smaller form: ${to.form} instead of ${from.form}`;
		case "more-ports":
			return to.rearUsb === from.rearUsb
				? `has ${counted((to.usbHeaders ?? 0) - (from.usbHeaders ?? 0), "more USB header")} inside`
				: `has ${counted((to.rearUsb ?? 0) - (from.rearUsb ?? 0), "more USB socket")} at the back`;
	}
}

/** What is given up and what comes with it, each as things that stand behind "you give up" and "you get". */
function differences(
	{ from, to }: LikeChange,
	direction: LikeDirection,
	total: number | null,
): { readonly minus: readonly string[]; readonly plus: readonly string[] } {
	const [minus, plus]: [string[], string[]] = [[], []];
	const put = (by: number, words: string) => (by < 0 ? minus : plus).push(words);
	if (direction !== "cheaper" && from.price && to.price && from.price.currency === to.price.currency) {
		const by = from.price.minor - to.price.minor;
		if (by !== 0) put(by, by < 0 ? priceDifference(from, to) : `a price ${priceDifference(to, from)} lower`);
	}
	if (from.rearUsb !== null && to.rearUsb !== null && from.rearUsb !== to.rearUsb && direction !== "more-ports")
		put(to.rearUsb - from.rearUsb, `${counted(Math.abs(to.rearUsb - from.rearUsb), "USB socket")} at the back`);
	if (from.usbHeaders !== null && to.usbHeaders !== null && from.usbHeaders !== to.usbHeaders) {
		const isToldAlready = direction === "more-ports" && from.rearUsb === to.rearUsb;
		if (!isToldAlready)
			put(
				to.usbHeaders - from.usbHeaders,
				`${counted(Math.abs(to.usbHeaders - from.usbHeaders), "USB header")} inside`,
			);
	}
	const by = warmer(to, from);
	if (direction !== "cooler" && Number.isFinite(by) && Math.abs(by) >= 1)
		put(by, `${degrees(Math.abs(by))} to spare in the heat`);
	if (total !== null && total !== 0) put(total, `${counted(Math.abs(total), "point")}`);
	return { minus, plus };
}

/** Where the points differ, in whole points that add up. */
function criterionWords({ byCriterion }: LikeBoard): readonly string[] {
	const whole = wholeParts(byCriterion.map(({ points }) => points));
	const told = byCriterion
		.map(({ criterionId }, index) => ({ name: criterionById(criterionId)?.name ?? criterionId, by: whole[index] ?? 0 }))
		.filter(({ by }) => by !== 0)
		.sort((one, other) => one.by - other.by);
	if (told.length === 0) return [];
	return [
		`Points: ${told.map(({ name, by }) => `${Math.abs(by)} ${by < 0 ? "fewer" : "more"} for ${name}`).join(", ")}.`,
	];
}

function shortWords(count: number, direction: LikeDirection): string {
	const that = direction === "more-ports" ? "has more USB sockets" : `is ${direction}`;
	if (count < 2) return `${count === 0 ? "None" : "1"} of the other boards left ${that}.`;
	return `${count} of the other boards left ${direction === "more-ports" ? "have more USB sockets" : `are ${direction}`}.`;
}

function leftOutWords(count: number, direction: LikeDirection): readonly string[] {
	if (count === 0) return [];
	const why =
		direction === "cheaper"
			? "the price is not known, or is in other money"
			: `not enough is known of ${count === 1 ? "it" : "them"}`;
	return [`${count === 1 ? "1 board was" : `${count} boards were`} left out: ${why}.`];
}

function unknownWords(direction: LikeDirection): string {
	switch (direction) {
		case "cheaper":
			return "what it costs";
		case "cooler":
			return "how warm its power stages get";
		case "smaller":
			return "how large it is";
		case "more-ports":
			return "how many USB sockets it has at the back";
	}
}

/** Facts compared along the way that are missing on one side. Headers inside matter to few, and are not counted. */
function unknownFacts({ from, to }: LikeChange, direction: LikeDirection): readonly string[] {
	const facts = { cheaper: "price", cooler: "spareK", smaller: "sidesMm", "more-ports": "rearUsb" } as const;
	const told = (["cheaper", "cooler", "more-ports"] as const).filter((one) => one !== direction);
	return told.filter((one) => !from[facts[one]] || !to[facts[one]]).map((one) => comparedWords[one]);
}

/** Where nothing is found: what would be better that way and fell out, with what stands against it. */
function fallenWords({ nearestFallen, direction }: LikeThisBut, judgement: Judgement): readonly WordsUnder[] {
	if (!nearestFallen) return [];
	const { boardId, failedRuleIds, stoppedBy } = nearestFallen;
	const judged = judgement.boards.find(({ board }) => board.id === boardId);
	const finding = judged?.findings.find(({ ruleId, verdict }) => ruleId === stoppedBy && verdict === "does-not-fit");
	const labels = failedRuleIds.map((id) => titleInSentence(ruleById(id)?.label ?? id));
	return [
		{
			heading: "The nearest of those taken out",
			lines: [
				`${nameOf(boardId, judgement)} ${gainWords(nearestFallen, direction)}.`,
				`It was taken out by: ${few(labels)}.`,
				...(finding ? [findingWords(finding)] : []),
			],
		},
	];
}

function few(words: readonly string[]): string {
	return words.length > 4 ? `${words.slice(0, 3).join(", ")} and ${words.length - 3} more` : listed(words);
}

/** Both prices are known and in one currency. */
function priceDifference(less: LikeFacts, more: LikeFacts): string {
	const currency = more.price?.currency ?? "";
	return moneyText({ minor: (more.price?.minor ?? 0) - (less.price?.minor ?? 0), currency });
}

/** By how many whole degrees the first stays cooler than the second in the worst case, in K. */
function warmer(to: LikeFacts, from: LikeFacts): number {
	return Math.trunc((to.spareK?.low ?? Number.NaN) - (from.spareK?.low ?? Number.NaN));
}

function degrees(kelvin: number): string {
	return Number.isFinite(kelvin) ? counted(kelvin, "degree") : "far";
}

function sides({ sidesMm }: LikeFacts): string {
	return `${sidesMm?.join(" x ")} mm`;
}

function counted(count: number, noun: string): string {
	return `${count} ${noun}${count === 1 ? "" : "s"}`;
}

const sum = (one: number, other: number) => one + other;

function nameOf(boardId: string, { boards }: Judgement): string {
	return boards.find(({ board }) => board.id === boardId)?.board.name ?? boardId;
}
