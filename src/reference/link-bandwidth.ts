import type { SourceId } from "./sources.ts";

/** PCI Express generations. */
export type LinkGeneration = 1 | 2 | 3 | 4 | 5 | 6;

/** What one lane of a PCI Express generation does. */
export type LinkRate = {
	readonly gigatransfersPerSecond: number;
	readonly code: "8b/10b" | "128b/130b" | "242B/256B flit";
	/** The share of the transfers that carries data. */
	readonly efficiency: number;
	readonly source: SourceId;
	readonly note?: string;
};

/** The lane counts a link is made in. */
export const linkWidths = [1, 2, 4, 8, 16] as const;

export const linkRates: Readonly<Record<LinkGeneration, LinkRate>> = {
	1: { gigatransfersPerSecond: 2.5, code: "8b/10b", efficiency: 8 / 10, source: "hpc-notes-pcie" },
	2: { gigatransfersPerSecond: 5, code: "8b/10b", efficiency: 8 / 10, source: "hpc-notes-pcie" },
	3: { gigatransfersPerSecond: 8, code: "128b/130b", efficiency: 128 / 130, source: "hpc-notes-pcie" },
	4: { gigatransfersPerSecond: 16, code: "128b/130b", efficiency: 128 / 130, source: "hpc-notes-pcie" },
	5: { gigatransfersPerSecond: 32, code: "128b/130b", efficiency: 128 / 130, source: "hpc-notes-pcie" },
	6: {
		gigatransfersPerSecond: 64,
		code: "242B/256B flit",
		efficiency: 242 / 256,
		source: "wiki-pci-express",
		note: "rate and flit read in a secondary text; what a link then carries is from memory. The often quoted 256 GB/s for sixteen lanes counts both directions and no flit overhead.",
	},
};

/**
 * What a PCI Express link carries in one direction, in GB/s (10^9 bytes): rate x efficiency x lanes / 8.
 * Source of the formula: "Understanding PCIe bandwidth" (read in a secondary text).
 */
export function gbytesPerSecond(generation: LinkGeneration, lanes: number): number {
	const { gigatransfersPerSecond, efficiency } = linkRates[generation];
	return (gigatransfersPerSecond * efficiency * lanes) / 8;
}
