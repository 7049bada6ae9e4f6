import boards from "../../data/demo/boards.json" with { type: "json" };
import cases from "../../data/demo/cases.json" with { type: "json" };
import otherParts from "../../data/demo/other-parts.json" with { type: "json" };
import platforms from "../../data/demo/platforms.json" with { type: "json" };
import processors from "../../data/demo/processors.json" with { type: "json" };
import { makeMarket } from "../parts/make-market.ts";
import type { Market, PartsFile } from "../parts/market.ts";

/** The invented market, compiled in; a test checks it as any other parts file. */
export const demoFiles = [boards, processors, cases, otherParts, platforms] as unknown as readonly PartsFile[];

export function demoMarket(): Market {
	return makeMarket("the demonstration market (invented)", demoFiles).market;
}
