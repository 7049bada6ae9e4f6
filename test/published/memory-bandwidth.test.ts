import { describe, expect, test } from "vitest";
import { memoryGBytesPerSecond, memoryTypes } from "../../src/reference/memory-bandwidth.ts";

describe("GB/s of one module and of two channels", () => {
	// DDR4 rates: read in a secondary text. 12.80, 14.93 and 19.20 also in a server's product guide, p. 175; read in the
	// document. DDR5: 51.2 at 6400 MT/s read in a secondary text, the rest derived, MT/s x 8.
	test.each([
		["DDR4-1600", 1600, 12.8, 0.001, 25.6],
		["DDR4-1866", 1866, 14.93, 0.0051, 29.9],
		["DDR4-2400", 2400, 19.2, 0.001, 38.4],
		["DDR4-2666", 2666, 21.3, 0.051, 42.7],
		["DDR4-2933", 2933, 23.5, 0.051, 46.9],
		["DDR4-3200", 3200, 25.6, 0.001, 51.2],
		["DDR5-4800", 4800, 38.4, 0.001, 76.8],
		["DDR5-5200", 5200, 41.6, 0.001, 83.2],
		["DDR5-5600", 5600, 44.8, 0.001, 89.6],
		["DDR5-6400", 6400, 51.2, 0.001, 102.4],
	])("%s", (_, mtPerS, one, rounding, two) => {
		expect(Math.abs(memoryGBytesPerSecond(mtPerS, 1) - one)).toBeLessThan(rounding);
		expect(Math.abs(memoryGBytesPerSecond(mtPerS, 2) - two)).toBeLessThan(0.051);
	});

	// The name is rounded from 2133 1/3 MT/s, which gives 17.07; the printed 17.0 (PC4-17000) is rounded down.
	test("DDR4-2133: 17.07, two channels 34.1 (read in a secondary text)", () => {
		expect(Math.abs(memoryGBytesPerSecond(2133, 1) - 17.07)).toBeLessThan(0.01);
		expect(Math.abs(memoryGBytesPerSecond(6400 / 3, 1) - 17.07)).toBeLessThan(0.0051);
		expect(Math.abs(memoryGBytesPerSecond(2133, 2) - 34.1)).toBeLessThan(0.051);
	});

	test("4800 MT/s x 128 bit / 8 = 76 800 MB/s (read in a secondary text)", () => {
		expect(memoryGBytesPerSecond(4800, 2) * 1000).toBe(76_800);
	});
});

describe("voltage", () => {
	test("DDR5 1.1 V (JEDEC JESD79-5, first issue; read as cited in a board manual, p. 25)", () => {
		expect(memoryTypes.DDR5.voltageV).toBe(1.1);
	});

	test("DDR3 1.5 V, DDR4 1.2 V (read in a secondary text)", () => {
		expect([memoryTypes.DDR3.voltageV, memoryTypes.DDR4.voltageV]).toEqual([1.5, 1.2]);
	});
});

test("a DDR4 DIMM has 288 contacts (read in a secondary text), a DDR5 SO-DIMM 262 (read in a board manual, p. 25)", () => {
	expect(memoryTypes.DDR4.dimmContacts).toBe(288);
	expect(memoryTypes.DDR5.soDimmContacts).toBe(262);
});
