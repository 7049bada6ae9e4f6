import { describe, expect, test } from "vitest";
import { backPanel } from "../../src/reference/back-panel.ts";
import { type BoardFormName, boardForms } from "../../src/reference/board-forms.ts";
import { edgesOfForm, holePosition } from "../../src/reference/board-holes.ts";
import {
	apertureLeftMm,
	apertureRightMm,
	rowsRightOf,
	rowXMm,
	slotBodyMm,
	slotPlaces,
} from "../../src/reference/slot-places.ts";

// ParametricCase, motherboard.scad, an open-source drawing: read in a secondary text, not in a standard itself.
describe("ParametricCase, motherboard.scad; read in a secondary text", () => {
	test("row 1 is 47.29 mm to the right of hole B, row 2 26.97 mm", () => {
		expect(rowXMm(1) - holePosition("B").xMm).toBeCloseTo(47.29, 6);
		expect(rowXMm(2) - holePosition("B").xMm).toBeCloseTo(26.97, 6);
	});

	test("the notch lies 46.94 mm in front of the holes' rear row, which lies 10.16 mm from the rear edge", () => {
		expect(slotPlaces.notchFromRearMm).toBeCloseTo(46.94 + 10.16, 6);
	});

	test("slots for sixteen and four lanes are 89 and 39 mm long, and 7.5 mm wide", () => {
		expect([slotBodyMm(16), slotBodyMm(4), slotPlaces.bodyWidthMm]).toEqual([89, 39, 7.5]);
	});

	test("the opening begins 7.52 mm to the right of hole C, 53.24 mm from hole B", () => {
		expect(apertureLeftMm - holePosition("C").xMm).toBeCloseTo(7.52, 6);
		expect(apertureLeftMm - holePosition("B").xMm).toBeCloseTo(53.24, 6);
	});
});

// From here on derived: the rows above with the sizes and slot counts of the forms, each from its own source.
test.each<[BoardFormName, string]>([
	["ATX", "7 slots, read in a secondary text"],
	["microATX", "up to 4 slots, microATX 1.2, sec. 2.3.1, p. 11"],
	["Mini-ITX", "1 slot, read in a secondary text"],
	["DTX", "2 slots, encyclopaedia, Mini-DTX"],
	["Mini-DTX", "2 slots, encyclopaedia, Mini-DTX"],
	["SSI CEB", "7 slots, encyclopaedia, FlexATX"],
	["SSI EEB", "7 slots, SSI EEB 3.0, figure 1"],
])("on the largest %s board lie as many rows as the form has slots (%s)", (form) => {
	expect(rowsRightOf(edgesOfForm(form).leftMm)).toBe(boardForms[form].slotCount);
});

test("the opening reaches 0.096 in past the right edge, its zone for connectors lies within (derived)", () => {
	const { rightMm } = edgesOfForm("ATX");
	expect((apertureRightMm - rightMm) / 25.4).toBeCloseTo(0.096, 3);
	expect(apertureLeftMm / 25.4).toBeCloseTo(5.196, 3);
	expect(apertureRightMm - apertureLeftMm).toBeCloseTo(backPanel.apertureWidthMm, 6);
});
