import { countQuestion } from "../count-question.ts";

export const caseFans = countQuestion({
	id: "features/case-fans",
	tier: "features",
	want: "caseFans",
	least: 0,
	most: 20,
	ask: "How many fans will the case have?",
	hint: "Those fitted already and those you add; not the one on the processor",
	label: "Fans in the case",
	why: "Each fan wants a header on the board, a row of pins. There its speed can follow the heat, so it stays quiet.",
	whereToFind: "Look into the case, or read its page: fans included.",
	changes: "Boards with fewer headers than fans are marked, with what to buy instead.",
	notSure: "Fans are not counted for or against any board.",
	howToFindOut: "Count the fans in the case.",
});
