import { wishQuestion } from "../wish-question.ts";

export const wireless = wishQuestion({
	id: "features/wireless",
	tier: "features",
	short: true,
	ask: "Do you need wireless (Wi-Fi)?",
	hint: "Where a network cable reaches the desk you can do without",
	label: "Wireless (Wi-Fi)",
	why: "Boards with wireless built in cost more, and mostly bring Bluetooth too. An adapter in a USB socket does the same job.",
	whereToFind: "At your desk: look whether a cable from the router reaches it.",
	changes: "A board without it is marked, and you are told to count the price of an adapter. No board is taken out.",
	notSure: "It is not counted for or against any board.",
	howToFindOut: "Look whether a cable from the router reaches the desk.",
	strengths: {
		must: { label: "Yes: no network cable there", explanation: "Boards without it are marked: you need an adapter" },
		"would-like": { label: "Would like", explanation: "Boards without it are marked" },
		"dont-mind": { label: "No: a cable will do", explanation: "It is not counted" },
	},
});
