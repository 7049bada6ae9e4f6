import { backPanel } from "./back-panel.ts";
import { holePosition } from "./board-holes.ts";
import { slotPitch } from "./slot-pitch.ts";
import type { SourceId } from "./sources.ts";

/**
 * Where card slots lie on every board form of this family, on the axes of the holes: x to the right from hole A, y from
 * hole A to the front edge. All are an open-source drawing's, which agrees with the standards where both give a figure.
 */
export const slotPlaces = {
	/** From hole C to the middle of the slot in row 1: 47.29 mm from hole B, which is 45.72 mm from hole C. */
	firstRowFromHoleCMm: 1.57,
	/** From the rear edge to the notch in a card's edge, which all slots of PCI Express share. */
	notchFromRearMm: 57.1,
	/** So far before the notch a slot's body begins. */
	bodyBeforeNotchMm: 14.5,
	bodyWidthMm: 7.5,
	source: "parametric-case",
} as const satisfies { source: SourceId } & Record<string, unknown>;

/** Bodies of slots by their length in lanes, in mm: four and sixteen are the same drawing's, the others from memory. */
const bodyLengths: readonly (readonly [number, number])[] = [
	[1, 25],
	[4, 39],
	[8, 56],
	[16, 89],
];

/** How far a card may reach from the middle of its slot towards the processor, in mm. */
export const cardBack = {
	/** 2.67 above the card and half of its own 1.6 (PCI Express Card Electromechanical Specification). */
	fromSlotMm: 3.47,
	source: "from-memory",
} as const satisfies { fromSlotMm: number; source: SourceId };

/** The left edge of the opening at the back, 5.196 in from hole A: 7.52 mm from hole C. */
export const apertureLeftMm: number = tidy(holePosition("C").xMm + 7.52);
export const apertureRightMm: number = tidy(apertureLeftMm + backPanel.apertureWidthMm);

/** The middle of the slot in this row, in mm to the right of hole A. Row 1 is nearest the processor. */
export function rowXMm(row: number): number {
	return tidy(holePosition("C").xMm + slotPlaces.firstRowFromHoleCMm - (row - 1) * slotPitch.pitchMm);
}

/** Rows of which a slot's whole body lies on a board that begins at this edge, in mm from hole A. */
export function rowsRightOf(leftEdgeMm: number): number {
	const mostRows = 8;
	return Array.from({ length: mostRows }, (_, index) => index + 1).filter(
		(row) => rowXMm(row) - slotPlaces.bodyWidthMm / 2 > leftEdgeMm,
	).length;
}

/** How long the body of a slot for so many lanes is, in mm. */
export function slotBodyMm(lanes: number): number {
	return bodyLengths.find(([most]) => lanes <= most)?.[1] ?? 89;
}

function tidy(mm: number): number {
	return Math.round(mm * 1e4) / 1e4;
}
