import type { SourceId } from "./sources.ts";

/** The distance from one add-in card slot to the next, 0.800 in: a card "n slots wide" covers n times this. */
export const slotPitch = { pitchMm: 20.32, source: "ssi-eeb-3.0" } as const satisfies {
	pitchMm: number;
	source: SourceId;
};
