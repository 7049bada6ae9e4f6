import type { SourceId } from "./sources.ts";

/** The distance from one add-in card slot to the next, 0.800 in: a card "n slots wide" covers n times this. */
export const slotPitch = { pitchMm: 20.32, source: "ssi-eeb-3.0" } as const satisfies {
	pitchMm: number;
	source: SourceId;
};

/** How far a printed thickness may stand above the rows it fills, in mm: three rows, 60.96, are printed as 61. */
const roundingMm = 0.5;

/** Rows that a card of this thickness fills. */
export function rowsOf(thicknessMm: number): number {
	return Math.max(1, Math.ceil((thicknessMm - roundingMm) / slotPitch.pitchMm));
}
