import { choiceQuestion } from "../choice-question.ts";

export const who = choiceQuestion({
	id: "about/who",
	tier: "about",
	short: true,
	want: "answerer",
	ask: "Who gives the answers?",
	hint: "A helper is someone who has built a computer before",
	label: "Who answers",
	why: "A helper may fill in what the builder does not know. The sheet then says who said what.",
	whereToFind: "Look beside you.",
	changes: "The name stands beside each answer on the sheet. With a helper near, a failed first start is less lonely.",
	notSure: "The answers count as the builder's own.",
	howToFindOut: "Ask someone who has built a computer whether they would look at your answers.",
	choices: {
		builder: { label: "I do, alone", explanation: "Each answer is noted as the builder's" },
		"builder with a helper": {
			label: "I do, with a helper beside me",
			explanation: "Each answer is noted as given by both",
		},
		"helper for the builder": {
			label: "I am the helper",
			explanation: "Each answer is noted as the helper's, for the builder to confirm",
		},
	},
});
