import type { Question } from "../define-question.ts";
import { manyQuestion } from "../many-question.ts";

const mostTyped = 30;

const counted = manyQuestion({
	id: "features/rear-devices",
	tier: "features",
	short: true,
	ask: "Which USB things will be plugged in at the back?",
	hint: "Mark each thing; mark a line twice for two of them",
	label: "USB things at the back",
	why: "Sockets at the back cannot be added later without a hub or a card.",
	whereToFind: "Follow the cables at the computer you use now, and add what you plan to buy.",
	changes: "How many sockets stay free counts in the score, up to four spare ones. No board is taken out.",
	notSure: "Spare sockets are left out of the score.",
	howToFindOut: "Count the cables at the computer you use now.",
	lines: [
		{ value: "keyboard", label: "Keyboard", explanation: "With a cable, or the stub of a wireless one", most: 2 },
		{ value: "mouse", label: "Mouse", explanation: "With a cable, or the stub of a wireless one", most: 2 },
		{ value: "headset", label: "Headset or microphone", explanation: "One with a USB plug", most: 3 },
		{ value: "printer", label: "Printer or scanner", explanation: "One on a USB cable", most: 3 },
		{ value: "camera", label: "Camera", explanation: "For calls or streams", most: 3 },
		{ value: "drive", label: "Drive outside the case", explanation: "For copies of your files", most: 4 },
		{ value: "hub", label: "Hub or dock", explanation: "What hangs on it needs no socket of its own", most: 3 },
		{ value: "game-pad", label: "Game pad or wheel", explanation: "On a cable, or its charging cable", most: 4 },
		{
			value: "sound-device",
			label: "USB sound box",
			explanation: "For an instrument or a studio microphone",
			most: 3,
		},
		{ value: "tablet", label: "Drawing tablet", explanation: "Some take two sockets: mark it twice", most: 3 },
		{ value: "cable", label: "Cable for phone or camera", explanation: "One that stays plugged in", most: 4 },
		{ value: "other", label: "Something else", explanation: "Anything with a USB plug", most: 6 },
	],
	none: { label: "Nothing at all", explanation: "Then every socket is a spare one" },
	sets: (facts, values) => ({ ...facts, rearDevices: values.length }),
});

/** Files may also hold the plain number, as they did before things were named one by one. */
export const rearDevices: Question = {
	...counted,
	expected: (value, context) =>
		typeof value === "number"
			? Number.isInteger(value) && value >= 0 && value <= mostTyped
				? null
				: `a whole number from 0 to ${mostTyped}`
			: counted.expected(value, context),
	sets: (facts, value, context) =>
		typeof value === "number" ? { ...facts, rearDevices: value } : counted.sets(facts, value, context),
	says: (value, context) => (typeof value === "number" ? String(value) : counted.says(value, context)),
};
