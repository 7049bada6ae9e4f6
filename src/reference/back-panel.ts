import type { SourceId } from "./sources.ts";

/** The opening at the back of a case, where a board's own sockets show, and what must stay clear around it. */
export const backPanel = {
	apertureWidthMm: 158.75,
	apertureHeightMm: 44.45,
	/** How far the aperture's lower edge lies above the top of a board 1.57 mm thick. */
	apertureBottomAboveBoardMm: 3.81,
	boardThicknessMm: 1.57,
	/** The case wall the shield clips into. */
	wallThicknessMm: { low: 0.94, high: 1.32 },
	cornerRadiusMaxMm: 0.99,
	/** Kept clear all round the aperture. */
	keepOutMm: 2.54,
	connectorZoneWidthMm: 152.15,
	connectorZoneHeightMm: 37.34,
	connectorFacesFromDatumMm: 11.3,
	/** Height a case must keep clear above the board in the specification's area A, and had better keep clear. */
	clearAboveBoardRequiredMm: 76.2,
	clearAboveBoardPreferredMm: 88.9,
	source: "microatx-1.2",
} as const satisfies { source: SourceId } & Record<string, unknown>;
