import { wishQuestion } from "../wish-question.ts";

export const warranty = wishQuestion({
	id: "quality/warranty",
	tier: "quality",
	ask: "Do you want a warranty of three years or more?",
	hint: "Two years are usual; some makers give three or five",
	label: "Three years of warranty",
	why: "Boards that fail mostly do so early, or after many years. While the warranty lasts, the maker pays.",
	whereToFind: "On the maker's warranty page for your country. What the law gives you comes on top.",
	changes: "If it is a must, boards with less are taken out.",
	notSure: "No board is taken out for it.",
	howToFindOut: "Read the maker's warranty page.",
	strengths: {
		must: { label: "Must have", explanation: "Boards with less are taken out" },
		"would-like": { label: "Would like", explanation: "Boards with less are marked, not taken out" },
		"dont-mind": { label: "Don't mind", explanation: "It is not counted" },
	},
});
