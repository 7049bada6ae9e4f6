import { choiceQuestion } from "../choice-question.ts";

export const colour = choiceQuestion({
	id: "features/colour",
	tier: "features",
	want: "colourTaste",
	ask: "Which colour should the board have?",
	hint: "It only matters where you look into the case",
	label: "Colour",
	why: "Looks are a fair wish. They should never cost you what keeps the computer running.",
	whereToFind: "Look at your case: has it a window?",
	changes: "A board in your colour meets one more of your wishes. No board is taken out.",
	notSure: "Colour is not counted.",
	howToFindOut: "Look at pictures of the case with a board in it.",
	choices: {
		dark: { label: "Dark", explanation: "Black or grey, where all else is equal" },
		light: { label: "Light", explanation: "White, silver or cream, where all else is equal" },
		plain: { label: "Don't mind", explanation: "It is not counted" },
	},
});
