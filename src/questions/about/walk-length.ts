import { choiceQuestion } from "../choice-question.ts";

export const walkLength = choiceQuestion({
	id: "about/walk-length",
	tier: "about",
	short: true,
	want: "walkLength",
	ask: "How much time do you have for questions?",
	hint: "You can stop at any time, and go on from there later",
	label: "Length of the walk",
	why: "Some questions decide a lot for most people. The others decide something for a few.",
	whereToFind: "Nothing to look up: choose what suits you today.",
	changes: "The short walk asks what can still change which board leads. You can change your answer later and go on.",
	notSure: "All questions are asked; you can stop at any time.",
	howToFindOut: "Start with the short walk, and change to the long one if you like it.",
	choices: {
		short: { label: "About a quarter of an hour", explanation: "Only what decides most; the rest counts as not sure" },
		whole: { label: "About three quarters of an hour", explanation: "Everything that can make a difference" },
	},
});
