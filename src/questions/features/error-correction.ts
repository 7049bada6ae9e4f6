import { wishQuestion } from "../wish-question.ts";

export const errorCorrection = wishQuestion({
	id: "features/error-correction",
	tier: "features",
	ask: "Do you need memory that finds its own silent errors?",
	hint: "Called ECC; for accounts, research or servers, hardly ever for games",
	label: "Error-correcting memory",
	why: "Very rarely a number in memory changes by itself, and nobody notices. Error-correcting memory notices and mends it. Board, processor and memory must all know how.",
	whereToFind: "In yourself: what would one wrong number in a thousand million cost you?",
	changes: "If it is a must, boards on which such memory does not work are taken out. The processor must know how too.",
	notSure: "No board is taken out for it.",
	howToFindOut: "Ask whoever relies on your results.",
	strengths: {
		must: { label: "Must have", explanation: "Boards without it are taken out" },
		"would-like": { label: "Would like", explanation: "Boards without it are marked, not taken out" },
		"dont-mind": { label: "Don't mind", explanation: "It is not counted" },
	},
});
