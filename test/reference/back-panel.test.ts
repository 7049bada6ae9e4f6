import { expect, test } from "vitest";
import { backPanel } from "../../src/reference/back-panel.ts";

test("the connector zone fits inside the aperture", () => {
	expect(backPanel.connectorZoneWidthMm).toBeLessThan(backPanel.apertureWidthMm);
	expect(backPanel.connectorZoneHeightMm).toBeLessThan(backPanel.apertureHeightMm);
});

test("the aperture ends below the height the case keeps clear", () => {
	const apertureTopMm = backPanel.apertureBottomAboveBoardMm + backPanel.apertureHeightMm;
	expect(apertureTopMm).toBeLessThan(backPanel.clearAboveBoardRequiredMm);
	expect(backPanel.clearAboveBoardRequiredMm).toBeLessThan(backPanel.clearAboveBoardPreferredMm);
});
