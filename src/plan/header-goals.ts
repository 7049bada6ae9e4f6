import type { BoardHeader } from "./board-headers.ts";
import type { HeaderWish, HeaderWishKind } from "./header-wish.ts";

/** What one wish on one header adds to one goal. */
export type HeaderGoal = (wish: HeaderWish, header: BoardHeader, index: number) => number;

/** The kind of header a wish goes on. */
export function headerKindFor(kind: HeaderWishKind): BoardHeader["kind"] {
	return kind === "pump" || kind === "cooler fan" || kind === "case fan" ? "fan" : kind;
}

/**
 * Whether a wish may go on a header at all. Lights of 5 V on 12 V would be destroyed. A case fan on a processor header
 * would follow the cooler (common practice, no source).
 */
export function goesOnHeader({ kind }: HeaderWish, header: BoardHeader): boolean {
	if (headerKindFor(kind) !== header.kind) return false;
	return kind !== "case fan" || header.use !== "processor";
}

/**
 * What a plan of headers of one kind is after, the first that differs decides. The wishes are all that want this kind.
 * Ties are always broken alike: the wish named first gets the header named first.
 */
export function headerGoalsFor(kind: BoardHeader["kind"], wishes: readonly HeaderWish[]): readonly HeaderGoal[] {
	const own = kind === "fan" ? fanGoals(wishes) : kind === "USB-C 20-pin" ? typeCGoals(wishes) : [served];
	return [
		...own,
		...wishes.map(
			(first): HeaderGoal =>
				(wish, _, index) =>
					wish === first ? mostHeaders - index : 0,
		),
	];
}

/** More than any board has of one kind, so that a wish named first is not the one left out. */
const mostHeaders = 100;

const served: HeaderGoal = () => 1;

/**
 * The pump first, since nothing cools without it, then the cooler's fans, then those of the case, then what comes later;
 * each on the best header it can have before the next is looked at (common practice, no source). Only the cooler's first
 * fan has its processor header before a pump that finds no pump header.
 */
function fanGoals(wishes: readonly HeaderWish[]): readonly HeaderGoal[] {
	const firstFan = wishes.find(({ kind }) => kind === "cooler fan");
	const on =
		(kind: HeaderWishKind, ...uses: readonly BoardHeader["use"][]): HeaderGoal =>
		(wish, header) =>
			wish.kind === kind && !wish.isLater && uses.includes(header.use) ? 1 : 0;
	const anywhere = ["processor", "pump", "case"] as const;
	return [
		on("pump", ...anywhere),
		on("pump", "pump"),
		on("cooler fan", ...anywhere),
		// Of several processor headers the first: there a board looks for a fan when it starts.
		(wish, header, index) => (wish === firstFan && header.use === "processor" ? mostHeaders - index : 0),
		on("pump", "processor"),
		on("cooler fan", "processor"),
		on("cooler fan", "case"),
		on("case fan", ...anywhere),
		on("case fan", "case"),
		({ isLater }) => (isLater ? 1 : 0),
		({ isLater }, { use }) => (isLater && use === "case" ? 1 : 0),
	];
}

/**
 * As many cables as there are headers, then the most Gb/s that cables surely bring to the front, then the fastest cable
 * on the fastest header. A cable of which no rate is known may be the fastest; a header of which none is known counts as
 * the slowest.
 */
function typeCGoals(wishes: readonly HeaderWish[]): readonly HeaderGoal[] {
	const fastestFirst = [...wishes].sort((one, other) => rateOf(other, mostMbps) - rateOf(one, mostMbps));
	return [
		served,
		(wish, header) => Math.min(rateOf(wish, 0), rateOf(header, 0)),
		...fastestFirst.map(
			(cable): HeaderGoal =>
				(wish, header) =>
					wish === cable ? 1 + rateOf(header, 0) : 0,
		),
	];
}

/** Above any rate there is, in Mb/s. */
const mostMbps = 1_000_000;

/** Whole Mb/s, so that sums are exact. */
function rateOf({ gbps }: { readonly gbps: number | null }, whereUnknown: number): number {
	return gbps === null ? whereUnknown : Math.round(gbps * 1000);
}
