import { expect, test } from "vitest";
import { gbytesPerSecond, type LinkGeneration, linkRates, linkWidths } from "../../src/reference/link-bandwidth.ts";

const generations: LinkGeneration[] = [1, 2, 3, 4, 5, 6];

test("twice the lanes carry twice as much", () => {
	for (const generation of generations) {
		for (const lanes of linkWidths) {
			expect(gbytesPerSecond(generation, 2 * lanes)).toBeCloseTo(2 * gbytesPerSecond(generation, lanes), 9);
		}
	}
});

test("each generation carries about twice what the one before it does", () => {
	for (const generation of generations.slice(1)) {
		const growth = gbytesPerSecond(generation, 16) / gbytesPerSecond((generation - 1) as LinkGeneration, 16);
		expect(growth).toBeGreaterThan(1.9);
		expect(growth).toBeLessThan(2.01);
	}
});

test("no link carries more data than it transfers, and none without lanes", () => {
	for (const generation of generations) {
		expect(linkRates[generation].efficiency).toBeLessThan(1);
		expect(gbytesPerSecond(generation, 0)).toBe(0);
	}
});
