import { describe, expect, test } from "vitest";
import { type ExtrasFacts, extrasOf, extrasRead } from "../../src/rules/extras-of.ts";
import { forcedExtras } from "../../src/rules/fit/forced-extras.ts";

// Each thing by itself stands in test/rules/fit/forced-extras.test.ts, which reads the same list.

const noWireless: ExtrasFacts = { "wish.features/wireless": "must", "board.wireless.builtIn": false };

describe("what is bought besides", () => {
	test("an adapter for wireless can be an add-in card; other things cannot", () => {
		expect(
			extrasOf({ ...noWireless, oldThings: ["serial device"], "board.rearOld": [], "board.headers.serial": 0 }),
		).toEqual([
			{ words: "an adapter for wireless", cardUse: "wireless network" },
			{ words: "a USB to serial adapter", cardUse: null },
		]);
	});

	test("with a socket for a module either will do", () => {
		expect(extrasOf({ ...noWireless, "board.wireless.moduleSocket": "ordinary" })).toEqual([
			{ words: "a module or an adapter for wireless", cardUse: "wireless network" },
		]);
	});

	test("nothing is known to be missing where nothing is known", () => {
		expect(extrasOf({})).toEqual([]);
	});

	test("the rule reads all that is read here", () => {
		expect(extrasRead.filter((path) => !(forcedExtras.mayRead as readonly string[]).includes(path))).toEqual([]);
	});
});
