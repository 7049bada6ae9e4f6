import { type GraphicsPlugName, graphicsPlugs } from "./power-plugs.ts";
import type { SourceId } from "./sources.ts";

/** What a graphics card may draw from a 16-lane slot, after it has asked for high power at start. */
export const graphicsSlot = { watts: 75, source: "pcie-cem" } as const satisfies { watts: number; source: SourceId };

/** Sustained watts that a card's slot and its power plugs are meant for together. */
export function graphicsPlugBudgetW(plugs: readonly GraphicsPlugName[]): number {
	return plugs.reduce<number>((sum, plug) => sum + graphicsPlugs[plug].watts, graphicsSlot.watts);
}

/** Card makers' adapters join two to four 8-pin plugs into one 12V-2x6. */
export const wideAdapterPlugs = { fewest: 2, most: 4, source: "common-practice" } as const satisfies {
	fewest: number;
	most: number;
	source: SourceId;
};

/** How many 8-pin plugs an adapter to one 12V-2x6 plug must join to carry these watts. */
export function wideAdapterPlugsFor(watts: number): number {
	const { fewest, most } = wideAdapterPlugs;
	return Math.min(most, Math.max(fewest, Math.ceil(watts / graphicsPlugs["8-pin"].watts)));
}
