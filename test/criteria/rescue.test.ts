import { expect, test } from "vitest";
import { rescue } from "../../src/criteria/rescue.ts";
import { piecewiseLinear } from "../../src/maths/piecewise-linear.ts";

const [flash, display, reset] = [
	"board.recovery.flashWithoutProcessor",
	"board.recovery.faultDisplay",
	"board.recovery.resetAtBack",
] as const;

test.each([
	["all three", { [flash]: true, [display]: "digits", [reset]: true }, { low: 3, high: 3, missing: [] }],
	[
		"lights count as a display",
		{ [flash]: false, [display]: "lights", [reset]: false },
		{
			low: 1,
			high: 1,
			missing: [],
			note: "it lacks the update without a processor and the reset button at the back",
		},
	],
	["none", { [flash]: false, [display]: "none", [reset]: false }, { low: 0, high: 0, missing: [] }],
	[
		"one not known",
		{ [flash]: true, [display]: "none" },
		{ low: 1, high: 2, missing: [reset], note: "it lacks the lights that name a fault" },
	],
	[
		"the display not known",
		{ [flash]: true, [reset]: false },
		{ low: 1, high: 2, missing: [display], note: "it lacks the reset button at the back" },
	],
	["nothing known", {}, { low: 0, high: 3, missing: [flash, display, reset] }],
])("%s", (_, facts, measure) => {
	expect(rescue.measure(facts)).toEqual(measure);
});

test.each([
	[0, 0],
	[1, 0.6],
	[2, 0.9],
	[3, 1],
])("%i aids are worth %f", (aids, value) => {
	expect(piecewiseLinear(rescue.scale, aids)).toBe(value);
});

const exactly = (aids: number) => ({ low: aids, high: aids, missing: [] });
test.each([
	[exactly(0), "none of the 3 aids"],
	[exactly(2), "2 of the 3 aids"],
	[exactly(3), "all 3 aids"],
	[{ low: 0, high: 3, missing: [] }, "0 to 3 of the 3 aids"],
])("%o in words", (measure, words) => {
	expect(rescue.says(measure)).toBe(`it has ${words} for a first start that goes wrong`);
});

test("says which aid is not there", () => {
	expect(rescue.says({ ...exactly(2), note: "it lacks the reset button at the back" })).toBe(
		"it has 2 of the 3 aids for a first start that goes wrong; it lacks the reset button at the back",
	);
});
