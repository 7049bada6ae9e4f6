import { choiceQuestion } from "../choice-question.ts";

export const raiseClock = choiceQuestion({
	id: "features/raise-clock",
	tier: "features",
	want: "clockPlan",
	ask: "Will you make the processor run faster than its maker set?",
	hint: "That gains a little, costs power and heat, and can end the warranty",
	label: "Raising the processor's clock",
	why: "The clock is the processor's pace. Only some boards let you raise it, and they cost more. If you leave it, you save the money.",
	whereToFind: "Nothing to look up: most people leave the clock as it is, and miss nothing.",
	changes: "If you have done it before, boards that do not allow it are taken out. Else nothing is taken out.",
	notSure: "No board is taken out or marked for it.",
	howToFindOut: "Ask your helper, or leave it: the computer runs well without it.",
	choices: {
		no: { label: "No", explanation: "The usual answer; nothing is lost" },
		maybe: {
			label: "Maybe, it would be my first time",
			explanation: "Boards that do not allow it are marked, not taken out",
		},
		"done-before": { label: "Yes, I have done it before", explanation: "Boards that do not allow it are taken out" },
	},
});
