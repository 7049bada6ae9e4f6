import type { LightPlug } from "../../parts/wants.ts";
import { manyQuestion } from "../many-question.ts";

export const lighting = manyQuestion({
	id: "features/lighting",
	tier: "features",
	ask: "Which lights will be plugged into the board?",
	hint: "Strips, lit fans and the like, by the plug at their cable",
	label: "Lights",
	why: "There are two kinds of plugs, for 5 volts and 12 volts. The wrong one destroys the lights.",
	whereToFind: "At the end of the cable: count the holes of the plug.",
	recipe: [
		"5 V: three holes, with one place closed between them. Each light has its own colour.",
		"12 V: four holes in a row. All lights have the same colour.",
		"Never press a plug in that does not go in easily. The print beside it on the board says the volts.",
	],
	picture: ["5 V: [o o   o]      12 V: [o o o o]"],
	changes: "A board without the right place is marked, with what to buy instead.",
	notSure: "Lights are not counted for or against any board.",
	howToFindOut: "Count the holes in the plug.",
	lines: [
		{ value: "5 V three-pin", label: "Lights with a three-hole plug (5 V)", explanation: "The common kind today" },
		{ value: "12 V four-pin", label: "Lights with a four-hole plug (12 V)", explanation: "The older, plain kind" },
		{ value: "maker's own", label: "Lights with another plug", explanation: "They need a box of their own maker" },
	],
	none: { label: "No lights", explanation: "Nothing is checked, and none is paid for" },
	sets: (facts, values) => ({ ...facts, lights: values as readonly LightPlug[] }),
});
