import { countQuestion } from "../count-question.ts";

export const years = countQuestion({
	id: "quality/years",
	tier: "quality",
	short: true,
	want: "yearsKept",
	least: 1,
	most: 15,
	unit: "years",
	ask: "How many years do you want to keep this board?",
	hint: "Three to six is usual",
	label: "Years to keep it",
	why: "The longer the board must last, the more a maker's warranty is worth.",
	whereToFind: "Think of how long you kept your last computer.",
	changes: "A warranty that covers more of these years counts in the score.",
	notSure: "Five years are counted.",
	howToFindOut: "Think of how long you kept your last computer.",
});
