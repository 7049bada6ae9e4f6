import type { SourceId } from "./sources.ts";

/** What a class of processors, told by its label watts, asks of a supply at 12 V. */
export interface ProcessorClass {
	readonly labelW: number;
	/** Over one second and more: what the supply must give for good. */
	readonly continuousA: number;
	/** For 10 ms at the most. */
	readonly peakA: number;
}

/** Currents by class of processor, the lightest first: ATX 3.0 guide, rev. 2.0, table 2-1. */
export const processorClasses = {
	classes: [
		{ labelW: 35, continuousA: 11, peakA: 19 },
		{ labelW: 65, continuousA: 23, peakA: 34 },
		{ labelW: 125, continuousA: 26, peakA: 39 },
		{ labelW: 165, continuousA: 37.5, peakA: 40 },
	],
	peakSeconds: 0.01,
	source: "atx-3.0-guide-2.0",
} as const satisfies { classes: readonly ProcessorClass[]; peakSeconds: number; source: SourceId };

/** A processor's current follows from its watts at this voltage, not at 12 V: same guide, p. 23. */
export const processorInput = { volts: 11.2, source: "atx-3.0-guide-2.0" } as const satisfies {
	volts: number;
	source: SourceId;
};

/** Share of the 12 V power that reaches the processor through the board's power stages. */
export const stagesPassOn = { share: 0.87, source: "own-convention" } as const satisfies {
	share: number;
	source: SourceId;
};

/** What everything but processor and graphics card takes at 12 V, in A, by how much there is of it. */
export const restOfPlatform = {
	simpleA: 4,
	medianA: 8,
	largeA: 14,
	source: "supply-guide-addendum-004",
} as const satisfies { simpleA: number; medianA: number; largeA: number; source: SourceId };

/** How far above its rating a supply must stand a load for a moment. */
export interface ExcursionLimit {
	readonly seconds: number;
	/** Watts of the peak over watts of the rating. */
	readonly share: number;
	/** Part of the time that such a peak takes in the guide's test. */
	readonly duty: number;
}

/** Power excursions a supply must stand, the shortest first: ATX12VO guide, rev. 2.01, table 3-3; same in the ATX 3.0 guide. */
export const excursionLimits = {
	/** Rated above this, and with a 12V-2x6 lead, a supply is held to `strong`, every other one to `usual`. */
	strongAboveW: 450,
	strong: [
		{ seconds: 0.0001, share: 2, duty: 0.05 },
		{ seconds: 0.001, share: 1.8, duty: 0.08 },
		{ seconds: 0.01, share: 1.6, duty: 0.125 },
		{ seconds: 0.1, share: 1.2, duty: 0.25 },
	],
	usual: [
		{ seconds: 0.0001, share: 1.5, duty: 0.05 },
		{ seconds: 0.001, share: 1.45, duty: 0.08 },
		{ seconds: 0.01, share: 1.35, duty: 0.125 },
		{ seconds: 0.1, share: 1.1, duty: 0.25 },
	],
	source: "atx12vo-guide-2.01",
} as const satisfies {
	strongAboveW: number;
	strong: readonly ExcursionLimit[];
	usual: readonly ExcursionLimit[];
	source: SourceId;
};

/**
 * The guides that ask for peaks are of 2022, so a supply made before promises none. That a tenth above the rating is
 * counted on is own convention, the figure from memory.
 */
export const beforePeaks = { promisedFrom: 2022, share: 1.1, source: "from-memory" } as const satisfies {
	promisedFrom: number;
	share: number;
	source: SourceId;
};

/** A graphics card's short peak over its rated watts, and how long one lasts. */
export const cardPeak = { overRated: 2, seconds: 0.001, source: "from-memory" } as const satisfies {
	overRated: number;
	seconds: number;
	source: SourceId;
};
