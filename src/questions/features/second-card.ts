import { wishQuestion } from "../wish-question.ts";

export const secondCard = wishQuestion({
	id: "features/second-card",
	tier: "features",
	ask: "Do you want room for a second big card?",
	hint: "For computing or video work; games do not use a second one",
	label: "Room for a second big card",
	why: "A second slot with enough lanes, the paths for data, costs a lot. Few people ever use it.",
	whereToFind: "The page of your program says whether it can use two cards.",
	changes: "If it is a must, boards without such a slot are taken out.",
	notSure: "No board is taken out for it.",
	howToFindOut: "Read the page of the program you would use it for.",
	strengths: {
		must: { label: "Must have", explanation: "Boards without such a slot are taken out" },
		"would-like": { label: "Would like", explanation: "Boards without such a slot are marked, not taken out" },
		"dont-mind": { label: "Don't mind", explanation: "It is not counted" },
	},
});
