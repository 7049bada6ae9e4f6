import { describe, expect, test } from "vitest";
import { type BoardFormName, boardForms } from "../../src/reference/board-forms.ts";

// FlexATX slots and the size of E-ATX are left out: the sources disagree, or no standard defines it.
describe("board sizes, width x depth in mm", () => {
	test.each<[BoardFormName, number, number, string]>([
		["ATX", 305, 244, "microATX Motherboard Interface Specification 1.2, table 3, p. 9; read in the document"],
		["microATX", 244, 244, "microATX Motherboard Interface Specification 1.2, table 3, p. 9; read in the document"],
		["Mini-ITX", 170, 170, "Mini-ITX Addendum 1.1 to microATX 1.2, table 1, p. 5; read in the document"],
		["SSI EEB", 305, 330, "SSI Forum, SSI EEB 3.0, figure 1, as reprinted; read in the document"],
		["DTX", 203, 244, "encyclopaedia, Mini-DTX; read in a secondary text"],
		["Mini-DTX", 203, 170, "encyclopaedia, Mini-DTX; read in a secondary text"],
		["FlexATX", 229, 191, "encyclopaedia, FlexATX; read in a secondary text"],
		["SSI CEB", 305, 267, "encyclopaedia, FlexATX; read in a secondary text"],
	])("%s is %i x %i (%s)", (form, widthMm, depthMm) => {
		expect(boardForms[form]).toMatchObject({ widthMm, depthMm });
	});

	test.each<[BoardFormName, number, number, string]>([
		["ATX", 12, 9.6, "microATX Motherboard Interface Specification 1.2, table 3, p. 9; read in the document"],
		["microATX", 9.6, 9.6, "microATX Motherboard Interface Specification 1.2, table 3, p. 9; read in the document"],
		["SSI EEB", 12, 13, "SSI Forum, SSI EEB 3.0, figure 1, as reprinted; read in the document"],
		["FlexATX", 9, 7.5, "encyclopaedia, FlexATX; read in a secondary text"],
	])("%s is %f x %f in (%s)", (form, widthIn, depthIn) => {
		expect(boardForms[form]).toMatchObject({ widthIn, depthIn });
	});

	test("only the two sizes the specification calls the greatest are maxima (microATX 1.2, table 3, p. 9; read in the document)", () => {
		const maxima = Object.entries(boardForms).filter(([, { isMaximum }]) => isMaximum);
		expect(maxima.map(([form]) => form)).toEqual(["ATX", "microATX"]);
	});
});

describe("slots", () => {
	test.each<[BoardFormName, number, string]>([
		["microATX", 4, "microATX 1.2, sec. 2.3.1, p. 11; read in the document"],
		["SSI EEB", 7, "SSI EEB 3.0, figure 1, as reprinted; read in the document"],
		["ATX", 7, "read in a secondary text"],
		["Mini-ITX", 1, "read in a secondary text"],
		["DTX", 2, "encyclopaedia, Mini-DTX; read in a secondary text"],
		["Mini-DTX", 2, "encyclopaedia, Mini-DTX; read in a secondary text"],
		["SSI CEB", 7, "encyclopaedia, FlexATX; read in a secondary text"],
	])("%s has at most %i (%s)", (form, slotCount) => {
		expect(boardForms[form].slotCount).toBe(slotCount);
	});
});
