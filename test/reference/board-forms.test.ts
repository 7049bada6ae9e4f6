import { describe, expect, test } from "vitest";
import { boardForms as formNames } from "../../src/parts/vocabulary.ts";
import { boardForms } from "../../src/reference/board-forms.ts";

describe.each(formNames)("%s", (form) => {
	const { widthMm, depthMm, widthIn, depthIn, slotCount, note } = boardForms[form];

	test("its millimetres are its inches, rounded", () => {
		expect(Math.abs(widthIn * 25.4 - widthMm)).toBeLessThanOrEqual(0.5);
		expect(Math.abs(depthIn * 25.4 - depthMm)).toBeLessThanOrEqual(0.5);
	});

	test("its slots are counted, or a note says why not", () => {
		if (slotCount === null) expect(note).toMatch(/\d/);
		else expect(slotCount).toBeGreaterThan(0);
	});
});

test("every form has its size", () => {
	expect(Object.keys(boardForms).sort()).toEqual([...formNames].sort());
});
