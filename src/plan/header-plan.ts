import { bestAssignment } from "../maths/best-assignment.ts";
import {
	type BoardHeader,
	type BoardHeaderKind,
	type BoardOfHeaders,
	boardHeadersOf,
	type HeaderFact,
	headerFacts,
} from "./board-headers.ts";
import { goesOnHeader, headerGoalsFor, headerKindFor } from "./header-goals.ts";
import { headersToShare, type OnHeader } from "./header-sharing.ts";
import type { HeaderBuild, HeaderWish } from "./header-wish.ts";
import { headerWishesOf } from "./header-wishes.ts";

declare module "../parts/fact-path.ts" {
	interface MeasuredFacts {
		/** What plugs in on which header, and what finds none. */
		readonly headers: HeaderPlan;
	}
}

/** What to set in the firmware where a plug goes on a header that is meant for another. Common practice, no source. */
export const headerRemarks = {
	"full speed": "A pump must run at full speed. Set this header to full speed in the firmware.",
	"follow the processor": "Set this header in the firmware so that it follows the processor's heat.",
	"slow it": "A pump header often runs at full speed. Set a fan curve for it in the firmware.",
} as const;
export type HeaderRemark = keyof typeof headerRemarks;

export interface PlacedWish {
	readonly wish: HeaderWish;
	/** Name of the header. */
	readonly header: string;
	readonly remark: HeaderRemark | null;
	/** Rate of a USB header, in Gb/s; null where nobody knows or it is none. */
	readonly headerGbps: number | null;
	/** Of a front USB-C or 19-pin cable: whether it is made for more than its header gives. Null where nobody knows. */
	readonly couldDoMore: boolean | null;
}

export interface SharingWish {
	readonly wish: HeaderWish;
	/** Name of the header that a splitter goes on. */
	readonly header: string;
	/** All that hangs on that header may draw this much together, in A; null where a lighting header's is not known. */
	readonly amps: number | null;
}

/** Every wish is in just one of placed, sharing, without and unknown, in the order of wishes. */
export interface HeaderPlan {
	/** Every header the board's facts give. */
	readonly headers: readonly BoardHeader[];
	readonly wishes: readonly HeaderWish[];
	readonly placed: readonly PlacedWish[];
	readonly sharing: readonly SharingWish[];
	/** No header of the board is left for these, and none can be shared. */
	readonly without: readonly HeaderWish[];
	/** Whether there are headers for these is not known, and which fact would tell. */
	readonly unknown: readonly { readonly wish: HeaderWish; readonly fact: HeaderFact }[];
	/** Names of the headers that nothing known of takes. */
	readonly free: readonly string[];
}

/** What plugs in on which header of the board. Exact, by goals in order; see headerGoalsFor. */
export function headerPlanOf(board: BoardOfHeaders, build: HeaderBuild): HeaderPlan {
	const { known: headers, notGiven } = boardHeadersOf(board);
	const wishes = headerWishesOf(build);
	const kinds = Object.keys(headerFacts) as BoardHeaderKind[];
	const headerOf = new Map(kinds.flatMap((kind) => placedOn(kind, headers, wishes)));
	const onHeaders = wishes.flatMap((wish): OnHeader[] => {
		const header = headerOf.get(wish);
		return header ? [{ wish, header }] : [];
	});
	const factOf = ({ kind }: HeaderWish) => headerFacts[headerKindFor(kind)];
	const left = wishes.filter((wish) => !headerOf.has(wish) && !notGiven.includes(factOf(wish)));
	const shared = headersToShare(left, onHeaders);
	const used = new Set(headerOf.values());
	return {
		headers,
		wishes,
		placed: onHeaders.map(placedWish),
		sharing: left.flatMap((wish, index): SharingWish[] => {
			const header = shared[index];
			return header ? [{ wish, header: header.name, amps: header.amps }] : [];
		}),
		without: left.filter((_, index) => !shared[index]),
		unknown: wishes.filter((wish) => notGiven.includes(factOf(wish))).map((wish) => ({ wish, fact: factOf(wish) })),
		free: headers.filter((header) => !used.has(header)).map(({ name }) => name),
	};
}

/** The best way to put the wishes for headers of one kind on them. */
function placedOn(
	kind: BoardHeaderKind,
	allHeaders: readonly BoardHeader[],
	allWishes: readonly HeaderWish[],
): readonly (readonly [HeaderWish, BoardHeader])[] {
	const headers = allHeaders.filter((header) => header.kind === kind);
	const wishes = allWishes.filter((wish) => headerKindFor(wish.kind) === kind);
	const goals = headerGoalsFor(kind, wishes);
	const { placeOf } = bestAssignment(
		wishes.map((wish) =>
			headers.map((header, index) =>
				goesOnHeader(wish, header) ? goals.map((goal) => goal(wish, header, index)) : null,
			),
		),
	);
	return wishes.flatMap((wish, index) => {
		const header = headers[placeOf[index] ?? -1];
		return header ? [[wish, header] as const] : [];
	});
}

function placedWish({ wish, header }: OnHeader): PlacedWish {
	const isFast = wish.kind === "USB-C 20-pin" || wish.kind === "USB 19-pin";
	return {
		wish,
		header: header.name,
		remark: remarkFor(wish, header),
		headerGbps: header.gbps,
		couldDoMore: isFast && wish.gbps !== null && header.gbps !== null ? wish.gbps > header.gbps : null,
	};
}

function remarkFor({ kind }: HeaderWish, { use }: BoardHeader): HeaderRemark | null {
	if (kind === "pump") return use === "pump" ? null : "full speed";
	if (kind === "cooler fan") return use === "processor" ? null : "follow the processor";
	return kind === "case fan" && use === "pump" ? "slow it" : null;
}
