import type { Interval } from "../maths/interval.ts";
import { lookUpFact } from "../parts/fact-path.ts";
import type { Money } from "../parts/money.ts";
import type { SteadyPower } from "../power/steady-power.ts";
import { type BoardFormName, boardForms } from "../reference/board-forms.ts";
import type { Advice } from "./advise.ts";
import type { BoardJudgement, Judgement } from "./judge.ts";

export const likeDirections = ["cheaper", "cooler", "smaller", "more-ports"] as const;
export type LikeDirection = (typeof likeDirections)[number];

/** In whole millimetres. */
export type Sides = readonly [longer: number, shorter: number];

/** What can be told of a board in every direction; null where it is not known. */
export interface LikeFacts {
	readonly price: Money | null;
	/** Sides in whole millimetres; null where one is not known. */
	readonly sidesMm: Sides | null;
	/** What it is sold as, such as "microATX". */
	readonly form: BoardFormName | null;
	/** Degrees left to the comfortable line, in K, over all ways the open answers can turn out; negative past it. */
	readonly spareK: Interval | null;
	/** USB sockets at the back. */
	readonly rearUsb: number | null;
	/** USB headers inside, of all kinds. */
	readonly usbHeaders: number | null;
}

/** How another board differs from the one it is held against. */
export interface LikeChange {
	readonly from: LikeFacts;
	readonly to: LikeFacts;
}

export interface LikeBoard extends LikeChange {
	readonly boardId: string;
	readonly verdict: "fits" | "cannot-tell";
	/** Its own points of 100, unrounded. */
	readonly score: number;
	/** Points of 100 beyond those of the other board, unrounded; null where that one fell out and has none. */
	readonly points: number | null;
	/** What each criterion adds to that; sums to it. */
	readonly byCriterion: readonly { readonly criterionId: string; readonly points: number }[];
}

/** A board that would be better that way and fell out. */
export interface LikeFallen extends LikeChange {
	readonly boardId: string;
	/** The rule that is told first, and all that it fails. */
	readonly stoppedBy: string | null;
	readonly failedRuleIds: readonly string[];
}

export interface LikeThisBut {
	readonly boardId: string;
	readonly direction: LikeDirection;
	/** Whether the board itself is left; else no points are compared. */
	readonly isLeft: boolean;
	/** Whether that which is compared is known of the board itself; else nothing can be found. */
	readonly isKnown: boolean;
	/** At most five boards left that are better that way; see likeThisBut for their order. */
	readonly found: readonly LikeBoard[];
	/** How many more there are. */
	readonly more: number;
	/** Boards left that may be better that way: not enough is known of them, or they are priced in other money. */
	readonly leftOut: readonly string[];
	/** Where nothing is found: the board that comes nearest of those that fell out. */
	readonly nearestFallen: LikeFallen | null;
}

/** What is compared. Headers inside count only between boards with as many sockets at the back. */
const factOf = {
	cheaper: "price",
	cooler: "spareK",
	smaller: "sidesMm",
	"more-ports": "rearUsb",
} as const satisfies Readonly<Record<LikeDirection, keyof LikeFacts>>;

const mostFound = 5;
/** A difference smaller than this is none: the temperature is told in whole degrees (own convention). In K. */
const leastK = 1;

/**
 * The boards left that are better than this one in one direction, nearest first: those known to fit before others if this
 * one is known to fit, then by the points given up in all criteria on which they are worse, then by price. Where this
 * one has no points, since it fell out, those with most points come first. What is not known never counts as better.
 *
 * @returns null where the market has no such board
 */
export function likeThisBut(
	{ boards, build }: Judgement,
	{ ranking }: Pick<Advice, "ranking">,
	boardId: string,
	direction: LikeDirection,
): LikeThisBut | null {
	const self = boards.find(({ board }) => board.id === boardId);
	if (!self) return null;
	const from = factsOf(self, steadyIn(self, build.worlds));
	const scoreOf = (id: string) => ranking.find((one) => one.boardId === id)?.score;
	const own = scoreOf(boardId);
	const held = (judged: BoardJudgement): Held => {
		// Heat takes longest to work out, and of a board that fell out it is told only where it is what was asked for.
		const isHeatTold = direction === "cooler" || judged.verdict !== "does-not-fit";
		const steady = isHeatTold ? steadyIn(judged, build.worlds) : [];
		const to = factsOf(judged, steady);
		return { judged, to, better: isBetter(direction, from, to, steady.some(mayImprove)) };
	};
	const others = boards.filter((judged) => judged !== self).map(held);
	const left = others.filter(({ judged }) => judged.verdict !== "does-not-fit");
	const found = left
		.filter(({ better }) => better === true)
		.map(({ judged, to }): LikeBoard => {
			const score = scoreOf(judged.board.id);
			const byCriterion = (score && own ? score.parts : []).map(({ criterionId, weight, value }) => {
				const mine = own?.parts.find((part) => part.criterionId === criterionId);
				return { criterionId, points: 100 * weight * (value.mid - (mine?.value.mid ?? 0)) };
			});
			return {
				boardId: judged.board.id,
				verdict: judged.verdict === "fits" ? "fits" : "cannot-tell",
				from,
				to,
				score: score?.mid ?? 0,
				points: score && own ? score.mid - own.mid : null,
				byCriterion,
			};
		})
		.sort(
			(one, other) =>
				(self.verdict === "fits" ? doubt(one) - doubt(other) : 0) ||
				(own ? givenUp(one) - givenUp(other) : other.score - one.score) ||
				byPrice(one, other) ||
				(one.boardId < other.boardId ? -1 : 1),
		);
	return {
		boardId,
		direction,
		isLeft: self.verdict !== "does-not-fit",
		isKnown: from[factOf[direction]] !== null || (direction === "smaller" && from.form !== null),
		found: found.slice(0, mostFound),
		more: Math.max(0, found.length - mostFound),
		leftOut: left.filter(({ better }) => better === null).map(({ judged }) => judged.board.id),
		nearestFallen: found.length > 0 ? null : nearestFallen(others, from),
	};
}

/** A board held against another: better, not better, or nobody can tell. */
interface Held {
	readonly judged: BoardJudgement;
	readonly to: LikeFacts;
	readonly better: boolean | null;
}

/** Of the boards that fell out the one that fails least, and of these the cheapest. */
function nearestFallen(others: readonly Held[], from: LikeFacts): LikeFallen | null {
	const fallen = others
		.filter(({ judged, better }) => better === true && judged.verdict === "does-not-fit")
		.map(({ judged, to }) => ({ boardId: judged.board.id, judged, from, to }))
		.sort(
			(one, other) =>
				fewest(one.judged) - fewest(other.judged) || byPrice(one, other) || (one.boardId < other.boardId ? -1 : 1),
		);
	const [first] = fallen;
	if (!first) return null;
	const { stoppedBy, failedRuleIds } = first.judged;
	return { boardId: first.boardId, from, to: first.to, stoppedBy, failedRuleIds };
}

/** How many rules would have to be given up to have the board. */
function fewest({ corrections }: BoardJudgement): number {
	return Math.min(...corrections.map(({ size }) => size));
}

function doubt({ verdict }: LikeBoard): number {
	return verdict === "fits" ? 0 : 1;
}

function givenUp({ byCriterion }: LikeBoard): number {
	return byCriterion.reduce((sum, { points }) => sum + Math.max(0, -points), 0);
}

/** Cheapest first; without a price last. No money is converted, so that currencies are kept apart. */
function byPrice(one: { readonly to: LikeFacts }, other: { readonly to: LikeFacts }): number {
	const [a, b] = [one.to.price, other.to.price];
	if (!a || !b) return a ? -1 : b ? 1 : 0;
	return a.currency === b.currency ? a.minor - b.minor : a.currency < b.currency ? -1 : 1;
}

/** @param mayImprove whether a fact of the other board is missing that could make it cooler than is known */
function isBetter(direction: LikeDirection, from: LikeFacts, to: LikeFacts, mayImprove: boolean): boolean | null {
	switch (direction) {
		case "cheaper":
			if (!from.price || !to.price || from.price.currency !== to.price.currency) return null;
			return to.price.minor < from.price.minor;
		case "smaller":
			return isSmaller(from, to);
		case "cooler": {
			if (!from.spareK || !to.spareK) return null;
			const [low, high] = [to.spareK.low - from.spareK.low, to.spareK.high - from.spareK.high];
			if (low >= leastK && high >= 0) return true;
			return mayImprove && to.spareK.high > from.spareK.low ? null : false;
		}
		case "more-ports":
			if (from.rearUsb === null || to.rearUsb === null) return null;
			// What stands at the back serves everybody; headers inside only where the case has plugs for them.
			if (to.rearUsb !== from.rearUsb) return to.rearUsb > from.rearUsb;
			return from.usbHeaders === null || to.usbHeaders === null ? null : to.usbHeaders > from.usbHeaders;
	}
}

/** By the sides; where one is not known by the form, which gives the largest size only: alike forms tell nothing. */
function isSmaller(from: LikeFacts, to: LikeFacts): boolean | null {
	if (from.sidesMm && to.sidesMm) return isInside(to.sidesMm, from.sidesMm);
	if (!from.form || !to.form) return null;
	const [mine, its] = [sidesOf(boardForms[from.form]), sidesOf(boardForms[to.form])];
	return isInside(its, mine) || (isInside(mine, its) ? false : null);
}

/** One side shorter and none longer: a narrow board that is longer may not go where the other one would. */
function isInside([longer, shorter]: Sides, [otherLonger, otherShorter]: Sides): boolean {
	return longer <= otherLonger && shorter <= otherShorter && (longer < otherLonger || shorter < otherShorter);
}

function sidesOf({ widthMm, depthMm }: { readonly widthMm: number; readonly depthMm: number }): Sides {
	return [Math.round(Math.max(widthMm, depthMm)), Math.round(Math.min(widthMm, depthMm))];
}

type Worlds = Judgement["build"]["worlds"];

/** Power and heat in each world in which the board may fit; in all of them for one that fits in none. */
function steadyIn({ subject, possibleWorlds }: BoardJudgement, worlds: Worlds): readonly (SteadyPower | undefined)[] {
	const told = possibleWorlds.length > 0 ? possibleWorlds.flatMap((index) => worlds[index] ?? []) : worlds;
	return told.map(({ facts }) => {
		const found = lookUpFact({ ...subject, facts }, "power.steady");
		return found.known ? (found.value as SteadyPower) : undefined;
	});
}

/** Whether a fact is missing on the board's page. A published test of the board is hardly ever there to be found. */
function mayImprove(steady: SteadyPower | undefined): boolean {
	return (steady?.missing ?? []).some(
		(path) => path.startsWith("board.") && path !== "board.powerDelivery.measurements",
	);
}

function factsOf(judged: BoardJudgement, steady: readonly (SteadyPower | undefined)[]): LikeFacts {
	const board = judged.subject.board ?? judged.board;
	const { widthMm, depthMm, rearUsb } = board;
	const { usb2, usb5, typeC } = board.headers ?? {};
	return {
		price: board.price ?? null,
		sidesMm: widthMm === undefined || depthMm === undefined ? null : sidesOf({ widthMm, depthMm }),
		form: board.form ?? null,
		spareK: hullOf(steady),
		rearUsb: rearUsb ? rearUsb.reduce((sum, { count }) => sum + count, 0) : null,
		usbHeaders: usb2 === undefined || usb5 === undefined || !typeC ? null : usb2 + usb5 + typeC.length,
	};
}

/** Null where it is not known in one of the worlds. */
function hullOf(steady: readonly (SteadyPower | undefined)[]): Interval | null {
	const ranges = steady.flatMap((one) => one?.spareK ?? []);
	if (ranges.length === 0 || ranges.length < steady.length) return null;
	return { low: Math.min(...ranges.map(({ low }) => low)), high: Math.max(...ranges.map(({ high }) => high)) };
}
