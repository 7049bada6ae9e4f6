import { expect, test } from "vitest";
import {
	atProcessorPlugs,
	graphicsPlugs,
	mainPlugContactAmps,
	mainPlugs,
	mainPlugWatts,
	processorPlugBudget,
	processorPlugs,
	processorPlugsCarry,
} from "../../src/reference/power-plugs.ts";

// Common practice, no published source: 6 A x 4 contacts x 12 V, half of it for a 4-pin plug. The wire is normally used
// for up to 8 A (ATX 3.0 guide, doc. 336521, rev. 2.01, p. 18; read in the document).
test("one processor plug is budgeted at 288 W and carries 384 W at the most, a 4-pin one half of it", () => {
	expect(processorPlugsCarry(["8-pin"])).toEqual({ budgetW: 288, mostW: 384 });
	expect(processorPlugsCarry(["4-pin"])).toEqual({ budgetW: 144, mostW: 192 });
	expect(processorPlugsCarry(["8-pin", "4-pin"])).toEqual({ budgetW: 432, mostW: 576 });
	expect(processorPlugsCarry([])).toEqual({ budgetW: 0, mostW: 0 });
	expect(processorPlugBudget.source).toBe("common-practice");
});

test("the plugs carry what the board's stages lose as well: 0.87 of it arrives (own convention)", () => {
	expect(atProcessorPlugs(87)).toBe(100);
	expect(atProcessorPlugs(87.1)).toBe(101);
	expect(atProcessorPlugs(250.56)).toBe(288);
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
