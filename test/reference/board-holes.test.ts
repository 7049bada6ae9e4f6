import { describe, expect, test } from "vitest";
import { boardForms as formNames, holeLetters } from "../../src/parts/vocabulary.ts";
import type { BoardFormName } from "../../src/reference/board-forms.ts";
import {
	edgesOfForm,
	holeDiameter,
	holePosition,
	holesOfForm,
	isHoleOnBoard,
	sharedEdges,
} from "../../src/reference/board-holes.ts";

test("every hole has a place of its own", () => {
	const places = holeLetters.map((letter) => {
		const { xMm, yMm } = holePosition(letter);
		return `${xMm} ${yMm}`;
	});
	expect(new Set(places).size).toBe(holeLetters.length);
});

test("a hole is asked for and answered by the same letter", () => {
	expect(holeLetters.map((letter) => holePosition(letter).letter)).toEqual([...holeLetters]);
});

test("only R is marked as less sure", () => {
	expect(holeLetters.filter((letter) => holePosition(letter).note !== undefined)).toEqual(["R"]);
});

describe.each(formNames)("%s", (form) => {
	test("its holes are known letters, each once, and lie on the board", () => {
		const letters = holesOfForm(form)?.letters ?? [];
		expect(new Set(letters).size).toBe(letters.length);
		expect(letters.filter((letter) => !isHoleOnBoard(letter, form))).toEqual([]);
	});

	test("no hole comes nearer to an edge than its own radius", () => {
		const { leftMm, rightMm, rearMm, frontMm } = edgesOfForm(form);
		for (const letter of holesOfForm(form)?.letters ?? []) {
			const { xMm, yMm } = holePosition(letter);
			const nearest = Math.min(xMm - leftMm, rightMm - xMm, yMm - rearMm, frontMm - yMm);
			expect(nearest, letter).toBeGreaterThan(holeDiameter.diameterMm / 2);
		}
	});
});

test("forms whose letters were not read have no hole set", () => {
	const unknown: BoardFormName[] = ["E-ATX", "SSI CEB", "SSI EEB"];
	expect(formNames.filter((form) => holesOfForm(form) === null)).toEqual(unknown);
});

test("all boards share their rear and their right edge", () => {
	for (const form of formNames) {
		expect(edgesOfForm(form).rearMm).toBeCloseTo(sharedEdges.rearIn * 25.4, 6);
		expect(edgesOfForm(form).rightMm).toBeCloseTo(sharedEdges.rightIn * 25.4, 6);
	}
});
