import { expect, test } from "vitest";
import { heldWatts, peakWatts } from "../../src/rules/processor-watts.ts";

test("the highest watts are stated, or taken as twice the label", () => {
	expect(peakWatts({ baseW: 65, peakW: 90 })).toEqual({ watts: 90, guessed: false });
	expect(peakWatts({ baseW: 65 })).toEqual({ watts: 130, guessed: true });
	expect(peakWatts({ sustainedW: 80 })).toBeNull();
});

test("watts held for hours: a test's figure, else from the label to the highest", () => {
	expect(heldWatts({ sustainedW: 110, baseW: 65, peakW: 150 })).toEqual({ lowW: 110, highW: 110, guessed: false });
	expect(heldWatts({ baseW: 65, peakW: 150 })).toEqual({ lowW: 65, highW: 150, guessed: false });
	expect(heldWatts({ baseW: 65 })).toEqual({ lowW: 65, highW: 130, guessed: true });
});

test("only a fixed limit makes the label watts the sustained ones", () => {
	expect(heldWatts({ baseW: 65, peakW: 90, limitPolicy: "fixed" })).toEqual({ lowW: 65, highW: 65, guessed: false });
	for (const limitPolicy of ["timed-boost", "lifted-by-board", "enforced-by-firmware"] as const)
		expect(heldWatts({ baseW: 65, peakW: 90, limitPolicy })).toEqual({ lowW: 65, highW: 90, guessed: false });
});

test("a highest below the label, which no page should say, gives the label", () => {
	expect(heldWatts({ baseW: 65, peakW: 50 })).toEqual({ lowW: 65, highW: 65, guessed: false });
});

test("without the label nothing is said of what is held", () => {
	expect(heldWatts({})).toBeNull();
	expect(heldWatts({ peakW: 150 })).toBeNull();
});
