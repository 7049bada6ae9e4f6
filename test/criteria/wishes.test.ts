import { describe, expect, test } from "vitest";
import { wishes } from "../../src/criteria/wishes.ts";
import { piecewiseLinear } from "../../src/maths/piecewise-linear.ts";

type Facts = Record<string, unknown>;
const exactly = (share: number) => ({ low: share, high: share, missing: [] });
const none = { low: 0, high: 1 };

/** One wish alone: what a person says, the fact that tells, a value that meets it and one that does not. */
describe.each<[string, Facts, string, unknown, unknown]>([
	["wireless", { "wish.features/wireless": "would-like" }, "board.wireless.builtIn", true, false],
	["wireless that is a must", { "wish.features/wireless": "must" }, "board.wireless.builtIn", true, false],
	["optical sound", { soundUses: ["headphones", "optical"] }, "board.sound.optical", true, false],
	["five speakers", { soundUses: ["surround"] }, "board.sound.rearSockets", 5, 3],
	["a dark board", { colourTaste: "dark" }, "board.colour", "black", "white"],
	["a light board", { colourTaste: "light" }, "board.colour", "silver", "dark blue"],
	["a dark board of a colour that is neither", { colourTaste: "dark" }, "board.colour", "black and red", "teal"],
	["error correction", { "wish.features/error-correction": "would-like" }, "board.memory.errorCorrection", true, false],
	["raising the clock one day", { clockPlan: "maybe" }, "board.raises.processorClock", true, false],
])("%s", (_, wish, path, met, unmet) => {
	test("met, not met, not known", () => {
		expect(wishes.measure({ ...wish, [path]: met })).toEqual(exactly(1));
		expect(wishes.measure({ ...wish, [path]: unmet })).toEqual(exactly(0));
		expect(wishes.measure(wish)).toEqual({ ...none, missing: [path] });
	});
});

test.each<[string, Facts]>([
	["nobody has said anything", {}],
	["one does not mind", { "wish.features/wireless": "dont-mind", "wish.features/error-correction": "dont-mind" }],
	["any colour is welcome", { colourTaste: "plain" }],
	["sound needs nothing of this", { soundUses: ["headphones", "speakers", "own-device"] }],
	["the clock is not to be raised", { clockPlan: "no" }],
	["the clock must be raised: a rule sees to that", { clockPlan: "done-before" }],
	["errors must be corrected: a rule sees to that", { "wish.features/error-correction": "must" }],
	["a card brings the wireless", { "wish.features/wireless": "must", addInCards: [{ use: "wireless network" }] }],
	["the network is fast: that counts among the connections", { routerGbps: 10 }],
])("says nothing where %s", (_, facts) => {
	expect(wishes.measure({ ...facts, "board.wireless.builtIn": true, "board.colour": "black" })).toBeNull();
});

describe("several wishes", () => {
	const three = { "wish.features/wireless": "would-like", colourTaste: "dark", soundUses: ["optical", "surround"] };

	test("the share that is met", () => {
		const board = { "board.wireless.builtIn": true, "board.colour": "white", "board.sound.optical": false };
		expect(wishes.measure({ ...three, ...board, "board.sound.rearSockets": 5 })).toEqual({
			...exactly(0.5),
			note: "of your small wishes it does not meet the optical cable for sound and the colour",
		});
	});

	test("what the page leaves out may be met or not", () => {
		expect(wishes.measure({ ...three, "board.wireless.builtIn": true, "board.colour": "white" })).toEqual({
			low: 0.25,
			high: 0.75,
			missing: ["board.sound.optical", "board.sound.rearSockets"],
			note: "of your small wishes it does not meet the colour",
		});
	});

	test("a must counts as two", () => {
		const wish = { "wish.features/wireless": "must", colourTaste: "dark" };
		const measured = (builtIn: boolean, colour: string) =>
			wishes.measure({ ...wish, "board.wireless.builtIn": builtIn, "board.colour": colour });
		expect(measured(true, "white")).toMatchObject(exactly(2 / 3));
		expect(measured(false, "black")).toMatchObject(exactly(1 / 3));
		expect(measured(true, "black")).toEqual(exactly(1));
		expect(wishes.measure({ ...wish, "board.colour": "black" })).toMatchObject({ low: 1 / 3, high: 1 });
	});

	test("facts of wishes that nobody has do not matter", () => {
		expect(wishes.measure({ colourTaste: "light", "board.colour": "white" })).toEqual(exactly(1));
	});
});

test.each([
	[0, 0],
	[0.25, 0.3],
	[0.5, 0.6],
	[1, 1],
])("a share of %f is worth %f", (share, value) => {
	expect(piecewiseLinear(wishes.scale, share)).toBeCloseTo(value, 12);
});

test.each([
	[exactly(0), "it meets none of your small wishes"],
	[exactly(1 / 3), "it meets some of your small wishes"],
	[
		{ ...exactly(0.5), note: "of your small wishes it does not meet the colour" },
		"of your small wishes it does not meet the colour",
	],
	[exactly(1), "it meets all your small wishes"],
	[{ low: 0.5, high: 1, missing: ["board.colour"] }, "whether it meets all your small wishes is not known"],
])("%o in words", (measure, words) => {
	expect(wishes.says(measure)).toBe(words);
});
