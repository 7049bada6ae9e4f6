import { expect, test } from "vitest";
import { memoryGBytesPerSecond, memoryTypes } from "../../src/reference/memory-bandwidth.ts";

test("two channels carry twice as much as one, none nothing", () => {
	expect(memoryGBytesPerSecond(6000, 2)).toBe(2 * memoryGBytesPerSecond(6000, 1));
	expect(memoryGBytesPerSecond(6000, 0)).toBe(0);
});

test("each generation runs at a lower voltage than the one before", () => {
	const { DDR3, DDR4, DDR5 } = memoryTypes;
	expect(DDR4.voltageV).toBeLessThan(DDR3.voltageV);
	expect(DDR5.voltageV).toBeLessThan(DDR4.voltageV);
});

test("a count of contacts names where it comes from, and one that was not read is absent", () => {
	for (const { dimmContacts, contactsSource } of Object.values(memoryTypes)) {
		expect(contactsSource === undefined).toBe(dimmContacts === undefined);
	}
	expect(memoryTypes.DDR3).not.toHaveProperty("dimmContacts");
});
