import gristmillBoards from "../../data/demo/boards-gristmill-4.json" with { type: "json" };
import harbourBoards from "../../data/demo/boards-harbour-2.json" with { type: "json" };
import kettleBoards from "../../data/demo/boards-kettle-7.json" with { type: "json" };
import orchardBoards from "../../data/demo/boards-orchard-5.json" with { type: "json" };
import cases from "../../data/demo/cases.json" with { type: "json" };
import otherParts from "../../data/demo/other-parts.json" with { type: "json" };
import platforms from "../../data/demo/platforms.json" with { type: "json" };
import processors from "../../data/demo/processors.json" with { type: "json" };
import { makeMarket } from "../parts/make-market.ts";
import type { Market, PartsFile } from "../parts/market.ts";

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
