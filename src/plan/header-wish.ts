import type { BuildFacts } from "../parts/build.ts";

/** The facts of a build that want headers. */
export type HeaderBuild = Pick<BuildFacts, "case" | "cooler" | "addInCards" | "lights" | "caseFans" | "laterThings">;

/** What a plug is, by the header it wants. */
export type HeaderWishKind =
	| "USB 9-pin"
	| "USB 19-pin"
	| "USB-C 20-pin"
	| "front sound"
	| "pump"
	| "cooler fan"
	| "case fan"
	| "5 V lights"
	| "12 V lights";

/** One plug that wants one header of the board. */
export interface HeaderWish {
	/** Told apart by this; the same build always gives the same ids. */
	readonly id: string;
	/** In plain words, such as "pump of Chimney". */
	readonly name: string;
	readonly kind: HeaderWishKind;
	readonly whose: "case" | "cooler" | "card" | "lights" | "case fans";
	/** What a cable of the case's front is made for, in Gb/s; null where nobody knows or it is none. */
	readonly gbps: number | null;
	/** Only thought of for later years: served after all else. */
	readonly isLater: boolean;
}
