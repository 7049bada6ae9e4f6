import { describe, expect, test } from "vitest";
import { foldedOpen } from "../../src/sheet/find-out-words.ts";

const idle = (what: string) => ({ what, changes: "" });
const heavy = { what: "Polka: Memory slots", changes: "It decides whether Polka fits." };

describe("what is open, folded", () => {
	test("fewer than four that change nothing are told as ever", () => {
		const open = [heavy, idle("Colour"), idle("Polka: Warranty"), idle("Room")];
		expect(foldedOpen(open)).toEqual({ shown: open, folded: null });
		expect(foldedOpen([])).toEqual({ shown: [], folded: null });
	});

	test("from four on their names are one line, those of a board together", () => {
		const open = [idle("Room for cards"), heavy, idle("Polka: Warranty"), idle("Polka: USB sockets"), idle("Noise")];
		expect(foldedOpen(open)).toEqual({
			shown: [heavy],
			folded: "Open too, with less weight: room for cards and noise. Also of Polka warranty and USB sockets.",
		});
	});

	test("no name is lost, and no sentence grows too long", () => {
		const names = Array.from({ length: 60 }, (_, index) => `Fact with number ${index}`);
		const { folded } = foldedOpen(names.map((name) => idle(`A Board of Some Name: ${name}`)));
		for (const name of names) expect(folded).toMatch(new RegExp(`f${name.slice(1)}(?!\\d)`));
		for (const sentence of folded?.split(/\.\s/) ?? [])
			expect(sentence.split(/\s+/).length, sentence).toBeLessThanOrEqual(25);
	});
});
