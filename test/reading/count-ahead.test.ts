import { describe, expect, test } from "vitest";
import { countAhead } from "../../src/reading/count-ahead.ts";

describe("the count of what is counted stands in front", () => {
	test.each([
		["1", "HDMI", "1 x HDMI"],
		["1 (x4 mode)", "PCI Express 3.0 x16", "1 x PCI Express 3.0 x16 (x4 mode)"],
		["4 ports", "SATA", "4 x SATA"],
		["6 x", "SATA", "6 x SATA"],
		["3 headers", "Chassis fan", "3 x Chassis fan headers"],
	])("%s under %s: what is counted is the label", (value, label, counted) => {
		expect(countAhead(value, label, "internal")).toEqual({ value: counted, isOfLabel: true });
	});
	test.each([
		["HDMI x 1", "", "1 x HDMI"],
		["USB 3.2 x 4", "", "4 x USB 3.2"],
		["HDMI - 1", "Outputs", "1 x HDMI"],
		["1 HDMI", "", "1 x HDMI"],
	])("%s: what is counted is in the value", (value, label, counted) => {
		expect(countAhead(value, label, "back")).toEqual({ value: counted, isOfLabel: false });
	});
});

describe("no count", () => {
	test.each([
		["PCIe 3.0 x4", "Bus", "slots"],
		["Gen4 x4", "M.2", "storage"],
		["2", "Bluetooth version", "wireless"],
		["3.2", "USB", "usb"],
		["30", "SATA", "storage"],
		["4", "DIMM", "memory"],
		["24 pin", "Power connector", "internal"],
		["2 rooms", "Colour", undefined],
	] as const)("%s under %s", (value, label, topic) => {
		expect(countAhead(value, label, topic)).toEqual({ value, isOfLabel: false });
	});
});
