import gristmillBoards from "../../data/demo/boards-gristmill-4.json" with { type: "json" };
import harbourBoards from "../../data/demo/boards-harbour-2.json" with { type: "json" };
import kettleBoards from "../../data/demo/boards-kettle-7.json" with { type: "json" };
import orchardBoards from "../../data/demo/boards-orchard-5.json" with { type: "json" };
import cases from "../../data/demo/cases.json" with { type: "json" };
import otherParts from "../../data/demo/other-parts.json" with { type: "json" };
import platforms from "../../data/demo/platforms.json" with { type: "json" };
import processors from "../../data/demo/processors.json" with { type: "json" };
import { makeMarket, marketLike } from "../parts/make-market.ts";
import type { Market, PartsFile } from "../parts/market.ts";
import { partKindNames, partKinds } from "../parts/part-kinds.ts";

/** The invented market, compiled in, boards in one file a socket; a test checks it as any other parts file. */
export const demoFiles = [
	harbourBoards,
	kettleBoards,
	orchardBoards,
	gristmillBoards,
	processors,
	cases,
	otherParts,
	platforms,
] as unknown as readonly PartsFile[];

export function demoMarket(): Market {
	return makeMarket("the demonstration market (invented)", demoFiles).market;
}

/**
 * The person's own parts and what counts of the demonstration beside them. Once there is a board of their own, invented
 * boards only stand in the way, and so does every other invented part that no answer names.
 *
 * @param named ids of parts that the answers of a walk name
 */
export function marketWithOwn(
	own: PartsFile,
	{ withDemo, named }: { readonly withDemo: boolean; readonly named: ReadonlySet<string> },
): Market {
	if (!partKindNames.some((kind) => (own[partKinds[kind].list] ?? []).length > 0)) return demoMarket();
	if (withDemo || (own.boards ?? []).length === 0)
		return makeMarket("your own parts and the demonstration market (invented)", [own, ...demoFiles]).market;
	const version = "your own parts";
	const { parts } = makeMarket(version, [own, ...demoFiles.map((file) => onlyNamed(file, named))]).market;
	// Which invented parts answers name changes with each answer; it is no other market.
	return marketLike(makeMarket(version, [own]).market, parts);
}

function onlyNamed(file: PartsFile, named: ReadonlySet<string>): PartsFile {
	const lists = partKindNames.flatMap((kind) => {
		const { list } = partKinds[kind];
		const parts = (file[list] ?? []) as readonly { readonly id: string }[];
		return kind === "board" ? [] : [[list, parts.filter(({ id }) => named.has(id))] as const];
	});
	return { schema: file.schema, ...Object.fromEntries(lists) } as PartsFile;
}
