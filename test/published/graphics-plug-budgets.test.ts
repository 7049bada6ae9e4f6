import { describe, expect, test } from "vitest";
import {
	graphicsPlugBudgetW,
	graphicsSlot,
	wideAdapterPlugs,
	wideAdapterPlugsFor,
} from "../../src/reference/graphics-plug-budget.ts";
import { graphicsPlugs } from "../../src/reference/power-plugs.ts";

// PCI-SIG Card Electromechanical Specification (CEM); read in a secondary text, an article on PCI Express power.
describe("graphics slot and plugs, CEM; read in a secondary text", () => {
	test("the slot gives up to 75 W: 3.3 V x 3 A + 12 V x 5.5 A = 75.9 W (derived), held to 75", () => {
		expect(graphicsSlot.watts).toBe(75);
		expect(3.3 * 3 + 12 * 5.5 - graphicsSlot.watts).toBeCloseTo(0.9, 9);
	});

	test("slot, 6-pin and 8-pin: 75 + 75 + 150 = 300 W, the ceiling of cards before the 12V-2x6", () => {
		expect(graphicsPlugBudgetW([])).toBe(75);
		expect(graphicsPlugBudgetW(["6-pin"])).toBe(150);
		expect(graphicsPlugBudgetW(["6-pin", "8-pin"])).toBe(300);
	});
});

// ATX Version 3.0 Multi Rail Desktop Platform Power Supply Design Guide, doc. 336521, rev. 2.01, table 3-5 (150 W and
// 600 W sustained), and "PCI Express Add-in Card Considerations" (600 W for a card in all); read in the document.
describe("adapters to 12V-2x6 within the plugs' watts, ATX 3.0 guide, rev. 2.01, table 3-5; read in the document", () => {
	test("four 8-pin plugs carry the 600 W of one 12V-2x6 (derived)", () => {
		expect(wideAdapterPlugsFor(graphicsPlugs["12V-2x6"].watts)).toBe(4);
		expect(wideAdapterPlugs.most * graphicsPlugs["8-pin"].watts).toBe(graphicsPlugs["12V-2x6"].watts);
	});

	test.each([
		[150, 2],
		[300, 2],
		[301, 3],
		[450, 3],
		[451, 4],
	])("%i W are %i plugs of 150 W (derived; never fewer than two, common practice)", (watts, plugs) => {
		expect(wideAdapterPlugsFor(watts)).toBe(plugs);
	});
});
