import { describe, expect, test } from "vitest";
import {
	type GraphicsPlugName,
	graphicsPlugs,
	type MainPlugName,
	mainPlugContactAmps,
	mainPlugWatts,
	type ProcessorPlugName,
	processorPlugWatts,
	wideGraphicsPlugContacts,
} from "../../src/reference/power-plugs.ts";

describe("ATX Version 3.0 Multi Rail Desktop Platform Power Supply Design Guide, doc. 336521, rev. 2.01, table 3-5; read in the document", () => {
	test.each<[GraphicsPlugName, number, number]>([
		["6-pin", 75, 6.75],
		["8-pin", 150, 13.5],
		["12V-2x6", 600, 55],
	])("%s: %i W sustained, %f A at the most", (plug, watts, ampsMax) => {
		expect(graphicsPlugs[plug]).toMatchObject({ watts, ampsMax });
	});

	test("12V-2x6: six contacts at 9.2 A (p. 52, p. 55) carry 662.4 W, 1.104 times the 600 W (derived)", () => {
		const { liveContacts, ampsPerContact } = wideGraphicsPlugContacts;
		const watts = liveContacts * ampsPerContact * 12;
		expect(watts).toBeCloseTo(662.4, 9);
		expect(watts / graphicsPlugs["12V-2x6"].watts).toBeCloseTo(1.104, 9);
	});
});

describe("processor plugs (derived from 6 to 8 A a contact, ATX 3.0 guide, rev. 2.01, p. 18; read in the document)", () => {
	test.each<[ProcessorPlugName, number, number]>([
		["4-pin", 7, 168],
		["8-pin", 7, 336],
		["4-pin", 8, 192],
		["8-pin", 8, 384],
	])("%s at %i A carries %i W", (plug, amps, watts) => {
		expect(processorPlugWatts(plug, amps)).toBe(watts);
	});
});

describe("main plug, Upgrading and Repairing PCs (Que); read in a secondary text", () => {
	test("20-pin with standard contacts: 251 W printed, 59.4 + 120 + 72 = 251.4 W (derived)", () => {
		expect(mainPlugContactAmps.standard).toBe(6);
		expect(mainPlugWatts("20-pin", 6)).toBeCloseTo(251.4, 9);
	});

	test.each<[MainPlugName, number, number]>([
		["24-pin", 6, 373.2],
		["24-pin", 9, 559.8],
	])("%s at %i A a contact: %f W (derived)", (plug, amps, watts) => {
		expect(mainPlugWatts(plug, amps)).toBeCloseTo(watts, 9);
	});
});
