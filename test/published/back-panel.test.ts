import { describe, expect, test } from "vitest";
import { backPanel } from "../../src/reference/back-panel.ts";
import { slotPitch } from "../../src/reference/slot-pitch.ts";

describe("microATX Motherboard Interface Specification 1.2, fig. 4-5, p. 14-15; read in the document", () => {
	test.each([
		["aperture width, 6.25 in", backPanel.apertureWidthMm, 158.75, 6.25],
		["aperture height, 1.75 in", backPanel.apertureHeightMm, 44.45, 1.75],
		["its bottom above the board, 0.150 in", backPanel.apertureBottomAboveBoardMm, 3.81, 0.15],
		["board thickness, 0.062 in", backPanel.boardThicknessMm, 1.57, 0.062],
		["wall where the shield clips, 0.037 in at the least", backPanel.wallThicknessMm.low, 0.94, 0.037],
		["wall where the shield clips, 0.052 in at the most", backPanel.wallThicknessMm.high, 1.32, 0.052],
		["corner radius, 0.039 in at the most", backPanel.cornerRadiusMaxMm, 0.99, 0.039],
		["keep-out all round, 0.1 in", backPanel.keepOutMm, 2.54, 0.1],
		["connector zone width, 5.990 in", backPanel.connectorZoneWidthMm, 152.15, 5.99],
		["connector zone height, 1.470 in", backPanel.connectorZoneHeightMm, 37.34, 1.47],
		["connector faces from the datum, 0.445 in", backPanel.connectorFacesFromDatumMm, 11.3, 0.445],
		["clear above the board (p. 17), 3.0 in required", backPanel.clearAboveBoardRequiredMm, 76.2, 3],
		["clear above the board (p. 17), 3.5 in preferred", backPanel.clearAboveBoardPreferredMm, 88.9, 3.5],
	])("%s", (_, ours, printedMm, printedInches) => {
		expect(ours).toBe(printedMm);
		// The document prints both units; the millimetres are rounded to hundredths.
		expect(Math.abs(printedInches * 25.4 - ours)).toBeLessThan(0.0051);
	});
});

test("slot pitch 0.800 in = 20.32 mm (SSI Forum, SSI EEB 3.0, figure 1, as reprinted; read in the document)", () => {
	expect(slotPitch.pitchMm).toBe(20.32);
	expect(slotPitch.pitchMm / 25.4).toBeCloseTo(0.8, 12);
});
