import * as z from "zod";
import { line } from "./fact.ts";
import { type PartKind, type PartOf, partKinds } from "./part-kinds.ts";

const list = <K extends PartKind>(kind: K) => z.array(partKinds[kind].schema).max(20000).optional();

export const partsFileSchemaName = "boardwalk/parts@1";

/** A file of parts: any of the lists may be left out. A folder of such files makes a market. */
export const partsFile = z.strictObject({
	schema: z.literal(partsFileSchemaName),
	note: line(400).optional(),
	boards: list("board"),
	processors: list("processor"),
	cases: list("case"),
	graphicsCards: list("graphicsCard"),
	memory: list("memory"),
	drives: list("drive"),
	addInCards: list("addInCard"),
	coolers: list("cooler"),
	supplies: list("supply"),
	fans: list("fans"),
	lighting: list("lighting"),
	monitors: list("monitor"),
	platforms: list("platform"),
});
export type PartsFile = z.infer<typeof partsFile>;

/** All parts to choose from, in the order they were given. */
export interface Market {
	/** Short text that names where the parts come from, such as "demo 1" or a folder's name. */
	readonly version: string;
	/** Changes when any part changes; see fingerprintOf. */
	readonly fingerprint: string;
	readonly parts: { readonly [K in PartKind]: readonly PartOf<K>[] };
}

/** The part with this id, or undefined. */
export function findPart<K extends PartKind>(market: Market, kind: K, id: string): PartOf<K> | undefined {
	return (market.parts[kind] as readonly PartOf<K>[]).find((part) => part.id === id);
}
