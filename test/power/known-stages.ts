import type { Delivery } from "../../src/power/stage-range.ts";

/** Ten integrated stages of 60 A under heat sinks on both sides: all that a page may say, but for a test. */
export const knownStages = {
	coreStages: 10,
	stageKind: "integrated",
	stageRatingA: 60,
	switchingKhz: 500,
	coilMohm: 0.3,
	coilNh: 220,
	heatSink: "both sides",
	layers: 6,
	copperOz: 2,
} as const satisfies Delivery;

/** A room of 30 degrees behind an open front, 35 at the stages, a cooler with a fan, and fans in the case. */
export const knownAir = {
	summerRoom: "warm",
	case: { frontOpen: "mesh" },
	cooler: { kind: "air" },
	caseFans: 2,
} as const;
