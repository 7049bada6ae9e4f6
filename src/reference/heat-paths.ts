import type { Board } from "../parts/board.ts";
import type { SourceId } from "./sources.ts";
import type { Assumed } from "./stage-classes.ts";

/** Ways to mount one power switch in the data sheet that this project's classes of heat sinks lean on. */
export const switchMountings = ["bare", "small sink", "large sink"] as const;
export type SwitchMounting = (typeof switchMountings)[number];

/**
 * Thermal resistance from the inside of one power switch to the air, in K/W: on 1 square inch of 2 oz copper and on the
 * least copper, in still air and in 200 ft/min of air. FDMS8570SDC, rev. C2, p. 3. The sinks are of aluminium, 20.9 x
 * 10.4 x 12.7 mm and 45.2 x 41.4 x 11.7 mm.
 */
export const switchToAir = {
	still: {
		bare: { copper: 38, least: 81 },
		"small sink": { copper: 27, least: 34 },
		"large sink": { copper: 16, least: 19 },
	},
	moving: {
		bare: { copper: 26, least: 61 },
		"small sink": { copper: 16, least: 23 },
		"large sink": { copper: 11, least: 13 },
	},
	/** From the inside to the top of the package. */
	toTop: 4.4,
	source: "fdms8570",
} as const satisfies {
	[Air in "still" | "moving"]: Readonly<Record<SwitchMounting, { readonly copper: number; readonly least: number }>>;
} & { toTop: number; source: SourceId };

/** The large sink by itself in still air: the part of its 16 and 19 K/W that neither board nor package takes, in K/W. */
export const largeSinkStill = (() => {
	const { still, toTop } = switchToAir;
	const alone = (withSink: number, without: number) => 1 / (1 / withSink - 1 / without) - toTop;
	const ends = [
		alone(still["large sink"].copper, still.bare.copper),
		alone(still["large sink"].least, still.bare.least),
	];
	return { low: Math.min(...ends), high: Math.max(...ends) };
})();

/** What 200 ft/min of air makes of the resistance in still air, by the rows of the same table. */
function movingAirIn(mountings: readonly SwitchMounting[]): Assumed {
	const factors = mountings.flatMap((mounting) => {
		const [still, moving] = [switchToAir.still[mounting], switchToAir.moving[mounting]];
		return [moving.copper / still.copper, moving.least / still.least];
	});
	return {
		low: Math.min(...factors),
		high: Math.max(...factors),
		unit: "times the resistance in still air",
		source: switchToAir.source,
		because: `${mountings.join(", ")}, in 200 ft/min of air (1 m/s)`,
	};
}

const anyMounting = movingAirIn(switchMountings);
const bareOrLarge = movingAirIn(["bare", "large sink"]);

/** What moving air makes of the resistance of a board. The sinks of boards are more like the large one of the table. */
export function movingAirFactor(heatSink: HeatSink | undefined): Assumed {
	return heatSink === undefined ? anyMounting : bareOrLarge;
}

export type HeatSink = NonNullable<NonNullable<Board["powerDelivery"]>["heatSink"]>;

/** How many of the table's large sinks the heat sinks of a board are worth together. Own convention, by size and fins. */
export const sinksWorth: Readonly<Record<HeatSink, { readonly low: number; readonly high: number }>> = {
	none: { low: 0, high: 0 },
	"one side": { low: 1, high: 3 },
	"both sides": { low: 3.5, high: 6 },
	"both sides with heat pipe": { low: 4.5, high: 8 },
	finned: { low: 6, high: 14 },
};

/** From the inside of a stage through its top and the pad under the sink, in K/W. */
export const stageToSink: Assumed = {
	low: switchToAir.toTop,
	high: 8,
	unit: "K/W",
	source: switchToAir.source,
	because: "4.4 to the top of a package; the pad under the sink adds up to 3.6 (from memory)",
};

/** How much of the way from the least copper (0) to a square inch of 2 oz (1) a stage on a board has. Own convention. */
export function copperShare(layers: number | undefined, ounces: number | undefined): { low: number; high: number } {
	const isThick = (ounces ?? 0) >= 2 || (layers ?? 0) >= 8;
	if (isThick) return { low: 0.5, high: 1 };
	if (ounces !== undefined && layers !== undefined)
		return layers <= 4 ? { low: 0, high: 0.6 } : { low: 0.25, high: 0.8 };
	return { low: 0, high: 1 };
}

/** How the air moves over the stages, as a part of 200 ft/min in the exponent: still 0, 200 ft/min 1. Own convention. */
export const airOverStages = {
	still: { low: 0, high: 0.2 },
	"case fans": { low: 0.4, high: 1 },
	"blown at": { low: 0.8, high: 1.5 },
	unknown: { low: 0, high: 1 },
	/** A liquid cooler takes away the air that a cooler's fan sends over the board (common practice). */
	"behind a liquid cooler": { low: 0, high: 0.6 },
} as const;

/** Where the air of a test and of a build is called the same, it differs by no more than this. Own convention. */
export const likeAir = { low: -0.25, high: 0.25 } as const;

/** How much warmer than the room the air at the stages was in a test, in K, by what is said of the air. Own convention. */
export const testRiseK = {
	still: { low: 0, high: 5 },
	"case fans": { low: 0, high: 8 },
	"blown at": { low: 0, high: 3 },
	unknown: { low: 0, high: 10 },
} as const;

/**
 * How much hotter the inside of the hottest stage is than what a test measured, in K. On top of a stage: a watt or less
 * through the 4.4 K/W to its top (FDMS8570SDC, rev. C2, p. 3). On its heat sink: half a watt to three through 4.4 to 8
 * K/W. Behind the board it is from memory.
 */
export const hotterInsideK = {
	"top of a stage": { low: 0, high: 5 },
	"heat sink": { low: 2, high: 24 },
	"back of the board": { low: 3, high: 15 },
	unknown: { low: 0, high: 24 },
} as const;

/** What a thermometer reads is right to so many kelvin (common practice, no source). */
export const readingK = 2;

/** Minutes of load in a test that does not say how many: readers of thermometers wait (own convention). */
export const usualTestMinutes = { low: 10, high: Number.POSITIVE_INFINITY } as const;
