import { describe, expect, test } from "vitest";
import type { HoleLetter } from "../../src/parts/vocabulary.ts";
import type { BoardFormName } from "../../src/reference/board-forms.ts";
import {
	edgesOfForm,
	holeDiameter,
	holePosition,
	holesOfForm,
	isHoleOnBoard,
} from "../../src/reference/board-holes.ts";

// Left out as too weak to test by: the x of hole R, the hole sets of DTX and Mini-DTX, the SSI holes at 7.000/7.550.

function lettersOf(form: BoardFormName): string {
	return holesOfForm(form)?.letters.join("") ?? "";
}

/** What of one form's holes another form lacks. */
function missing(form: BoardFormName, other: BoardFormName): string {
	const theirs = lettersOf(other);
	return [...lettersOf(form)].filter((letter) => !theirs.includes(letter)).join("");
}

describe("hole letters", () => {
	test.each<[BoardFormName, string, string]>([
		["ATX", "ACFGHJKLM", "microATX 1.2, fig. 2, p. 10; read in the document"],
		["microATX", "BCFHJLMRS", "microATX 1.2, fig. 2, p. 10; read in the document"],
		["FlexATX", "BCFHJS", "encyclopaedia, FlexATX; read in a secondary text"],
		[
			"Mini-ITX",
			"CFHJ",
			"ParametricCase; read in a secondary text; the same holes as microATX by the Mini-ITX Addendum 1.1, table 1",
		],
	])("%s has %s (%s)", (form, letters) => {
		expect(lettersOf(form)).toBe(letters);
	});

	// Derived from the sets above.
	test.each<[BoardFormName, BoardFormName]>([
		["Mini-ITX", "ATX"],
		["Mini-ITX", "microATX"],
		["Mini-ITX", "FlexATX"],
		["FlexATX", "microATX"],
	])("all of %s's are in %s (derived)", (form, other) => {
		expect(missing(form, other)).toBe("");
	});

	test("microATX has B, R and S that ATX lacks; C F H J L M are common (derived)", () => {
		expect(missing("microATX", "ATX")).toBe("BRS");
		expect([...lettersOf("microATX")].filter((letter) => lettersOf("ATX").includes(letter)).join("")).toBe("CFHJLM");
	});
});

describe("hole places from hole A", () => {
	// Grid: SSI Forum, SSI EEB 3.0, figure 1, as reprinted; read in the document.
	// Which letter sits where: Tsolo, open-source file with hole letters, 2025; read in a secondary text.
	test.each<[HoleLetter, number, number, number, number]>([
		["A", 0, 0, 0, 0],
		["B", 3.1, 0, 78.74, 0],
		["C", 4.9, 0, 124.46, 0],
		["F", 11.1, 0.9, 281.94, 22.86],
		["G", 0, 6.1, 0, 154.94],
		["H", 4.9, 6.1, 124.46, 154.94],
		["J", 11.1, 6.1, 281.94, 154.94],
		["K", 0, 8.95, 0, 227.33],
		["L", 4.9, 8.95, 124.46, 227.33],
		["M", 11.1, 8.95, 281.94, 227.33],
		["S", 3.1, 6.1, 78.74, 154.94],
	])("%s at x %f in, y %f in = %f, %f mm (SSI EEB 3.0, figure 1)", (letter, xIn, yIn, xMm, yMm) => {
		expect(holePosition(letter)).toMatchObject({ letter, xIn, yIn, xMm, yMm });
	});

	test("R lies in the middle row, 6.1 in (microATX 1.2, fig. 2, p. 10; read in the document)", () => {
		expect(holePosition("R").yMm).toBe(154.94);
	});

	// Tsolo, open-source file, 2025, distances from the right and the rear edge; read in a secondary text.
	test.each<[HoleLetter, number, number]>([
		["A", 11.35, 0.4],
		["B", 8.25, 0.4],
		["C", 6.45, 0.4],
		["F", 0.25, 1.3],
		["G", 11.35, 6.5],
		["H", 6.45, 6.5],
		["J", 0.25, 6.5],
		["K", 11.35, 9.35],
		["L", 6.45, 9.35],
		["M", 0.25, 9.35],
		["S", 8.25, 6.5],
	])(
		"%s is %f in from the right edge, %f in from the rear (Tsolo; read in a secondary text)",
		(letter, right, rear) => {
			const { rightMm, rearMm } = edgesOfForm("ATX");
			const { xMm, yMm } = holePosition(letter);
			expect((rightMm - xMm) / 25.4).toBeCloseTo(right, 6);
			expect((yMm - rearMm) / 25.4).toBeCloseTo(rear, 6);
		},
	);

	// ParametricCase, motherboard.scad, 2018-10-28, Mini-ITX; read in a secondary text.
	test.each<[HoleLetter, number, number]>([
		["F", 22.86, 157.48],
		["H", 154.94, 0],
		["J", 154.94, 157.48],
	])(
		"%s is %f mm deeper than C and %f mm to its right (ParametricCase; read in a secondary text)",
		(letter, deeper, right) => {
			const from = holePosition("C");
			const to = holePosition(letter);
			expect(to.yMm - from.yMm).toBeCloseTo(deeper, 6);
			expect(to.xMm - from.xMm).toBeCloseTo(right, 6);
		},
	);

	test("C is 10.16 mm from the rear edge (ParametricCase; read in a secondary text)", () => {
		expect(holePosition("C").yMm - edgesOfForm("Mini-ITX").rearMm).toBeCloseTo(10.16, 6);
	});

	test("a hole is 3.96 mm wide (ParametricCase; read in a secondary text)", () => {
		expect(holeDiameter.diameterMm).toBe(3.96);
	});
});

describe("edges", () => {
	test("full ATX: left -0.650 in, rear -0.400 in, right 11.350 in (SSI EEB 3.0, figure 1, as reprinted; read in the document)", () => {
		const { leftMm, rearMm, rightMm } = edgesOfForm("ATX");
		expect(leftMm / 25.4).toBeCloseTo(-0.65, 6);
		expect(rearMm / 25.4).toBeCloseTo(-0.4, 6);
		expect(rightMm / 25.4).toBeCloseTo(11.35, 6);
	});

	// From here on derived: the arithmetic of SSI's figure 1 and the sizes of microATX 1.2, table 3.
	test.each<[BoardFormName]>([["ATX"], ["microATX"], ["Mini-ITX"], ["FlexATX"], ["DTX"]])(
		"%s: F and J are 0.25 in (6.35 mm) from the right edge, and M, where there is one (derived)",
		(form) => {
			for (const letter of ["F", "J", "M"] as const) {
				expect(edgesOfForm(form).rightMm - holePosition(letter).xMm).toBeCloseTo(6.35, 6);
			}
		},
	);

	test("full ATX: front edge at 9.2 in, K, L and M 0.25 in from it (derived)", () => {
		const { frontMm } = edgesOfForm("ATX");
		expect(frontMm / 25.4).toBeCloseTo(9.2, 6);
		for (const letter of ["K", "L", "M"] as const) {
			expect((frontMm - holePosition(letter).yMm) / 25.4).toBeCloseTo(0.25, 6);
		}
	});

	test("Mini-ITX: left edge at 4.657 in, C and H 0.243 in from it (derived)", () => {
		const { leftMm } = edgesOfForm("Mini-ITX");
		expect(leftMm / 25.4).toBeCloseTo(4.657, 3);
		for (const letter of ["C", "H"] as const) {
			expect((holePosition(letter).xMm - leftMm) / 25.4).toBeCloseTo(0.243, 3);
		}
	});

	test("full-width microATX: left edge at 1.75 in, so that A, G and K are off the board (derived)", () => {
		expect(edgesOfForm("microATX").leftMm / 25.4).toBeCloseTo(1.75, 6);
		for (const letter of ["A", "G", "K"] as const) expect(isHoleOnBoard(letter, "microATX")).toBe(false);
	});

	test("DTX: left edge at 3.35 in, so that B, R and S are off the board (derived; R either way, its x being less sure)", () => {
		expect(edgesOfForm("DTX").leftMm / 25.4).toBeCloseTo(3.35, 6);
		for (const letter of ["B", "R", "S"] as const) expect(isHoleOnBoard(letter, "DTX")).toBe(false);
	});

	test("FlexATX requires S and is 7.5 in deep, so S lies in the 6.1 in row and not in the 8.95 in row (derived)", () => {
		expect(edgesOfForm("FlexATX").frontMm / 25.4).toBeCloseTo(7.1, 6);
		expect(isHoleOnBoard("S", "FlexATX")).toBe(true);
		for (const letter of ["K", "L", "M"] as const) expect(isHoleOnBoard(letter, "FlexATX")).toBe(false);
	});

	test.each<[BoardFormName]>([["ATX"], ["microATX"], ["FlexATX"], ["Mini-ITX"]])(
		"%s: every hole of its set lies on the board (derived)",
		(form) => {
			expect(holesOfForm(form)?.letters.filter((letter) => !isHoleOnBoard(letter, form))).toEqual([]);
		},
	);
});
