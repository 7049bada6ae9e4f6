import { expect, test } from "vitest";
import { sataRate } from "../../src/reference/sata-rate.ts";
import { type UsbRateName, usbRates } from "../../src/reference/usb-rates.ts";

// USB 80Gbps and what the codes leave for data are from memory and not tested here.
test.each<[string, UsbRateName, number]>([
	["USB 1.1", "USB 1.1", 12],
	["USB 2.0", "USB 2.0", 480],
	["USB 3.0, 3.1 Gen 1, 3.2 Gen 1", "USB 5Gbps", 5000],
	["3.2 Gen 2x1", "USB 10Gbps", 10_000],
	["3.2 Gen 2x2", "USB 20Gbps", 20_000],
	["USB4, up to", "USB 40Gbps", 40_000],
])("%s is %s, %i Mb/s (USB-IF, USB naming guides; read in a secondary text)", (_, name, mbitsPerSecond) => {
	expect(usbRates[name].gbitsPerSecond * 1000).toBeCloseTo(mbitsPerSecond, 9);
});

test('3.2 Gen 2x2 takes two lanes and so a Type-C connector ("USB cheat sheet", 2022; read in a secondary text)', () => {
	expect(usbRates["USB 20Gbps"].needsTypeC).toBe(true);
});

test("SATA runs at 6 Gb/s on the line (read in a secondary text)", () => {
	expect(sataRate.lineGbitsPerSecond).toBe(6);
});
