import { moneyQuestion } from "../money-question.ts";

export const moneyInAll = moneyQuestion({
	id: "about/money-in-all",
	tier: "about",
	short: true,
	want: "moneyInAll",
	zero: false,
	ask: "How much money is there for the whole computer?",
	hint: "A sum, such as 900, for all parts together",
	label: "Money in all",
	why: "The board must leave enough for everything else.",
	whereToFind: "Your savings, or what your parents or a helper agreed to.",
	changes:
		"A usual share for the board is worked out from it. What you spent and the parts you pick are taken off; a dearer board is taken out.",
	notSure: "Only the limit for the board counts, if you set one.",
	howToFindOut: "Settle on a sum before you look at any price.",
});
