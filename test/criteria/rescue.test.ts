import { expect, test } from "vitest";
import { rescue } from "../../src/criteria/rescue.ts";
import { piecewiseLinear } from "../../src/maths/piecewise-linear.ts";

const [flash, display, reset, shield, tools, second] = [
	"board.recovery.flashWithoutProcessor",
	"board.recovery.faultDisplay",
	"board.recovery.resetAtBack",
	"board.recovery.backPlateFixed",
	"board.m2WithoutTools",
	"board.recovery.secondFirmware",
] as const;
const noSmall = { [shield]: false, [tools]: 0, [second]: false };
const of3 = (words: string) => `it has ${words} for a first start that goes wrong`;

test.each([
	[
		"all three",
		{ [flash]: true, [display]: "digits", [reset]: true, ...noSmall },
		{ low: 3, high: 3, missing: [], note: of3("all 3 aids") },
	],
	[
		"lights count as a display",
		{ [flash]: false, [display]: "lights", [reset]: false, ...noSmall },
		{
			low: 1,
			high: 1,
			missing: [],
			note: `${of3("1 of the 3 aids")}; it lacks the update without a processor and the reset button at the back`,
		},
	],
	[
		"none",
		{ [flash]: false, [display]: "none", [reset]: false, ...noSmall },
		{ low: 0, high: 0, missing: [], note: of3("none of the 3 aids") },
	],
	[
		"each small help counts a fifth",
		{ [flash]: true, [display]: "none", [reset]: false, [shield]: true, [tools]: 2, [second]: false },
		{
			low: 1.4,
			high: 1.4,
			missing: [],
			note: `${of3("1 of the 3 aids")}; it lacks the lights that name a fault and the reset button at the back`,
		},
	],
	[
		"one not known",
		{ [flash]: true, [display]: "none", ...noSmall },
		{
			low: 1,
			high: 2,
			missing: [reset],
			note: `${of3("1 to 2 of the 3 aids")}; it lacks the lights that name a fault`,
		},
	],
	[
		"small helps not known",
		{ [flash]: true, [display]: "lights", [reset]: false, [tools]: 0 },
		{
			low: 2,
			high: 2.4,
			missing: [shield, second],
			note: `${of3("2 of the 3 aids")}; it lacks the reset button at the back`,
		},
	],
	[
		"beside all three aids no small help is worth finding out",
		{ [flash]: true, [display]: "lights", [reset]: true },
		{ low: 3, high: 3.6, missing: [], note: of3("all 3 aids") },
	],
	[
		"nothing known",
		{},
		{
			low: 0,
			high: 3.6,
			missing: [flash, display, reset, shield, tools, second],
			note: of3("0 to 3 of the 3 aids"),
		},
	],
])("%s", (_, facts, measure) => {
	expect(rescue.measure(facts)).toEqual(measure);
});

test.each([
	[0, 0],
	[0.6, 0.36],
	[1, 0.6],
	[2, 0.9],
	[3, 1],
	[3.6, 1],
])("%f aids are worth %f", (aids, value) => {
	expect(piecewiseLinear(rescue.scale, aids)).toBeCloseTo(value, 12);
});

test("in words: what was counted, and where ways differ that it depends", () => {
	expect(rescue.says({ low: 2, high: 2, missing: [], note: of3("2 of the 3 aids") })).toBe(of3("2 of the 3 aids"));
	expect(rescue.says({ low: 0, high: 3, missing: [] })).toBe(
		"how much it helps with building and starting depends on what is not known",
	);
	expect(rescue.says({ low: 2, high: 2, missing: [] })).toBe("it helps in part with building and starting");
});
