import { expect, test } from "vitest";
import { boardForms } from "../../src/reference/board-forms.ts";
import { slotPitch } from "../../src/reference/slot-pitch.ts";

test("the slots of every form fit side by side within its width", () => {
	for (const { slotCount, widthMm } of Object.values(boardForms)) {
		if (slotCount !== null) expect(slotCount * slotPitch.pitchMm).toBeLessThan(widthMm);
	}
});
