import { describe, expect, test } from "vitest";
import { gbytesPerSecond, type LinkGeneration, linkRates } from "../../src/reference/link-bandwidth.ts";

// Generation 6 is left out: what its links carry is from memory.

describe('GB/s in one direction, three decimals (derived: rate x efficiency x lanes / 8, "Understanding PCIe bandwidth", read in a secondary text)', () => {
	test.each<[LinkGeneration, number, number, number, number, number]>([
		[1, 0.25, 0.5, 1, 2, 4],
		[2, 0.5, 1, 2, 4, 8],
		[3, 0.985, 1.969, 3.938, 7.877, 15.754],
		[4, 1.969, 3.938, 7.877, 15.754, 31.508],
		[5, 3.938, 7.877, 15.754, 31.508, 63.015],
	])("generation %i: x1 %f, x2 %f, x4 %f, x8 %f, x16 %f", (generation, ...printed) => {
		for (const [index, lanes] of [1, 2, 4, 8, 16].entries()) {
			expect(Math.abs(gbytesPerSecond(generation, lanes) - (printed[index] as number))).toBeLessThan(0.00051);
		}
	});
});

describe('HPC notes, "PCIe", printed roundings; read in a secondary text', () => {
	test.each<[LinkGeneration, number, number, number, number]>([
		[1, 0.25, 0.0051, 4, 0.051],
		[2, 0.5, 0.0051, 8, 0.051],
		// Rounded twice, 0.9846 to 0.985 to 0.99, and cut off, 15.754 to 15.7; hence a whole last digit of tolerance.
		[3, 0.99, 0.01, 15.7, 0.1],
		[4, 1.97, 0.0051, 31.5, 0.051],
		[5, 3.94, 0.0051, 63, 0.051],
	])("generation %i: x1 %f (+-%f), x16 %f (+-%f)", (generation, one, oneRounding, sixteen, sixteenRounding) => {
		expect(Math.abs(gbytesPerSecond(generation, 1) - one)).toBeLessThan(oneRounding);
		expect(Math.abs(gbytesPerSecond(generation, 16) - sixteen)).toBeLessThan(sixteenRounding);
	});

	test.each<[LinkGeneration, number, string]>([
		[1, 2.5, "8b/10b"],
		[2, 5, "8b/10b"],
		[3, 8, "128b/130b"],
		[4, 16, "128b/130b"],
		[5, 32, "128b/130b"],
	])("generation %i: %f GT/s, %s", (generation, gigatransfersPerSecond, code) => {
		expect(linkRates[generation]).toMatchObject({ gigatransfersPerSecond, code });
	});
});

test('2.5 GT/s -> 2.0 Gbit/s = 250 MB/s (wiki, "PCI Express", sec. 23; read in a secondary text)', () => {
	expect(gbytesPerSecond(1, 1) * 8).toBe(2);
	expect(gbytesPerSecond(1, 1) * 1000).toBe(250);
});
