import { moneyQuestion } from "../money-question.ts";

export const moneySpent = moneyQuestion({
	id: "about/money-spent",
	tier: "about",
	want: "moneySpent",
	zero: true,
	ask: "How much of your money is already spent?",
	hint: "A sum, such as 420; type 0 for nothing yet",
	label: "Money spent already",
	why: "What is spent cannot go into the board.",
	whereToFind: "Add up your orders and receipts for this computer.",
	changes: "A board that costs more than what is left is taken out.",
	notSure: "All the money counts as left.",
	howToFindOut: "Add up your receipts.",
	applies: ({ moneyInAll }) => moneyInAll !== null,
});
