import { expect, test } from "vitest";
import {
	fourPinProcessorPlugBudgetW,
	graphicsPlugs,
	mainPlugContactAmps,
	mainPlugs,
	mainPlugWatts,
	oneProcessorPlugBudgetW,
	processorPlugBudget,
	processorPlugs,
} from "../../src/reference/power-plugs.ts";

// Common practice, no published source: 6 A x 4 contacts x 12 V, half of it for a 4-pin plug.
test("one processor plug is budgeted at 288 W, a 4-pin one at 144 W (common practice)", () => {
	expect(oneProcessorPlugBudgetW).toBe(288);
	expect(fourPinProcessorPlugBudgetW).toBe(144);
	expect(processorPlugBudget.source).toBe("common-practice");
});

test("half the contacts of a processor plug carry 12 V", () => {
	for (const [name, { liveContacts }] of Object.entries(processorPlugs)) expect(name).toBe(`${2 * liveContacts}-pin`);
});

test("a graphics plug's current at 12 V covers its sustained watts", () => {
	for (const { watts, ampsMax } of Object.values(graphicsPlugs)) {
		expect(ampsMax * 12).toBeGreaterThanOrEqual(watts);
	}
});

test("the longer main plug adds contacts at each voltage, high-current contacts half as much again", () => {
	const short = mainPlugs["20-pin"];
	const long = mainPlugs["24-pin"];
	expect(long.contactsAt3V3 - short.contactsAt3V3).toBe(1);
	expect(long.contactsAt5V - short.contactsAt5V).toBe(1);
	expect(long.contactsAt12V - short.contactsAt12V).toBe(1);
	const { standard, highCurrent } = mainPlugContactAmps;
	expect(mainPlugWatts("24-pin", highCurrent) / mainPlugWatts("24-pin", standard)).toBeCloseTo(1.5, 9);
});
