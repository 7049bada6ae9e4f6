import type { RescueAid } from "../../parts/wants.ts";
import { manyQuestion } from "../many-question.ts";

export const rescueMusts = manyQuestion({
	id: "features/rescue-musts",
	tier: "features",
	ask: "Which aids for a bad day must the board have?",
	hint: "For the day the computer does not start, or stays dark",
	label: "Aids the board must have",
	why: "When a new computer stays dark, a first builder has nothing to swap and try. These aids save hours.",
	whereToFind: "In yourself: think of who would help you, and how soon.",
	changes: "Boards without an aid you mark are taken out. What you do not mark still counts in the score.",
	notSure: "No board is taken out for it.",
	howToFindOut: "Ask someone who has built a computer what went wrong the first time.",
	lines: [
		{
			value: "fault-display",
			label: "It shows why it stays dark",
			explanation: "Small lights or digits name the part that stops it",
		},
		{
			value: "flash-without-processor",
			label: "It updates without a processor",
			explanation: "Firmware starts the board; in the box it may be older than your processor",
		},
		{
			value: "reset-at-back",
			label: "A reset button at the back",
			explanation: "A wrong setting can be undone without opening the case",
		},
	],
	none: { label: "None of them is a must", explanation: "They still count in the score" },
	sets: (facts, values) => ({ ...facts, rescueMusts: values as readonly RescueAid[] }),
});
