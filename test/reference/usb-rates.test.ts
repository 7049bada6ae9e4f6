import { expect, test } from "vitest";
import { usbRates } from "../../src/reference/usb-rates.ts";

test("slowest first", () => {
	const rates = Object.values(usbRates).map(({ gbitsPerSecond }) => gbitsPerSecond);
	for (const [index, rate] of rates.entries()) expect(rate).toBeGreaterThan(rates[index - 1] ?? 0);
});

test("a name in Gbps says its rate", () => {
	const named = Object.entries(usbRates).filter(([name]) => name.endsWith("Gbps"));
	expect(named).toHaveLength(5);
	for (const [name, { gbitsPerSecond }] of named) expect(name).toBe(`USB ${gbitsPerSecond}Gbps`);
});

test("no name stands for two rates", () => {
	const names = Object.entries(usbRates).flatMap(([name, { otherNames }]) => [name, ...otherNames]);
	expect(new Set(names).size).toBe(names.length);
});
