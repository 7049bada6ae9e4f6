import type { AddInCard } from "../parts/add-in-card.ts";
import type { BuildPartKind } from "../parts/build.ts";
import type { PcCase } from "../parts/case.ts";
import type { Cooler } from "../parts/cooler.ts";
import type { Drive } from "../parts/drive.ts";
import type { GraphicsCard } from "../parts/graphics-card.ts";
import type { MemoryKit } from "../parts/memory-kit.ts";
import type { AnyPart } from "../parts/part-kinds.ts";
import type { Processor } from "../parts/processor.ts";
import type { Supply } from "../parts/supply.ts";

/** Kinds of part that a person picks from a list. */
export type PickedKind = BuildPartKind | "drive" | "addInCard";

/** The few facts by which a person tells one part from another, in one line; facts that are missing are left out. */
export function partSummary(kind: PickedKind, part: AnyPart): string {
	const mark = (part as { invented?: boolean }).invented ? "invented" : undefined;
	return [...summaries[kind](part as never), mark].filter((fact) => fact !== undefined).join(", ");
}

type Facts = readonly (string | undefined)[];

const summaries: { readonly [K in PickedKind]: (part: never) => Facts } = {
	processor: ({ socket, baseW, graphics }: Processor) => [
		socket && `socket ${socket}`,
		baseW !== undefined ? `${baseW} W on the label` : undefined,
		graphics === undefined ? undefined : graphics ? "makes a picture by itself" : "needs a graphics card",
	],
	case: ({ boardForms, cardMaxLengthMm }: PcCase) => [
		boardForms && `takes ${boardForms.join(", ")}`,
		cardMaxLengthMm !== undefined ? `cards up to ${cardMaxLengthMm} mm` : undefined,
	],
	graphicsCard: ({ lengthMm, watts }: GraphicsCard) => [
		lengthMm !== undefined ? `${lengthMm} mm long` : undefined,
		watts !== undefined ? `${watts} W` : undefined,
	],
	memory: ({ type, modules, gbPerModule, mtPerS }: MemoryKit) => [
		type,
		modules !== undefined && gbPerModule !== undefined ? `${modules} x ${gbPerModule} GB` : undefined,
		mtPerS !== undefined ? `${mtPerS} MT/s` : undefined,
	],
	cooler: ({ kind, heightMm, radiatorMm, publishedW }: Cooler) => [
		kind === "liquid" ? "liquid" : undefined,
		radiatorMm !== undefined ? `radiator of ${radiatorMm} mm` : undefined,
		heightMm !== undefined ? `${heightMm} mm high` : undefined,
		publishedW !== undefined ? `for ${publishedW} W` : undefined,
	],
	drive: ({ shape, link, lengthMm, gb }: Drive) => [
		shape === "M.2" ? `M.2 stick${lengthMm === undefined ? "" : ` of ${lengthMm} mm`}` : shape && `${shape} drive`,
		link === "PCI Express" ? "fast (NVMe)" : link,
		gb === undefined ? undefined : gb >= 1000 ? `${gb / 1000} TB` : `${gb} GB`,
	],
	addInCard: ({ use, bus, lanes }: AddInCard) => [
		use,
		bus === "PCI" ? "old PCI slot" : lanes !== undefined ? `slot of x${lanes} or longer` : undefined,
	],
	supply: ({ watts, processorPlugs }: Supply) => [
		watts !== undefined ? `${watts} W` : undefined,
		processorPlugs && `processor plugs: ${plugsInWords(processorPlugs)}`,
	],
};

/** "two 8-pin", "one 8-pin and one 4-pin", "none". */
export function plugsInWords(plugs: readonly string[]): string {
	const counts = new Map<string, number>();
	for (const plug of plugs) counts.set(plug, (counts.get(plug) ?? 0) + 1);
	const words = [...counts].map(([plug, count]) => `${["no", "one", "two", "three"][count] ?? count} ${plug}`);
	return words.length > 0 ? words.join(" and ") : "none";
}
