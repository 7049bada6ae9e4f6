import { wishQuestion } from "../wish-question.ts";

export const tested = wishQuestion({
	id: "quality/tested",
	tier: "quality",
	ask: "Do you want a board that somebody has tested?",
	hint: "A published test with pictures of the bare board",
	label: "A published test",
	why: "A page does not say how well a board feeds the processor. A test with pictures does.",
	whereToFind: "Look for tests of the boards you think about, before you buy.",
	changes: "Boards nobody has looked at are marked, and you are told to look for a test first.",
	notSure: "No board is marked for it.",
	howToFindOut: "Look for published tests of boards with your socket.",
	strengths: {
		must: {
			label: "Yes: I would look for a test first",
			explanation: "Untested boards are marked, and you are told to look first",
		},
		"would-like": { label: "Would like", explanation: "Untested boards are marked" },
		"dont-mind": { label: "Don't mind", explanation: "It is not counted" },
	},
});
