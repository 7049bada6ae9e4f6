import { partQuestion } from "../part-question.ts";

export const processor = partQuestion({
	id: "fit/processor",
	tier: "fit",
	partKind: "processor",
	ask: "Which processor will it be?",
	hint: "Pick one, or describe yours in a few facts",
	label: "Processor",
	why: "Everything else hangs on it: the socket, the memory, how much power the board must feed.",
	whereToFind: "On its box, on the metal lid of the processor, or on the order.",
	changes: "Boards with another socket, and boards that do not run this processor, are taken out.",
	notSure: "No board is taken out; whether a board runs your processor stays unknown.",
	howToFindOut: "Settle on a processor first: by what you want to do with the computer, and by its price.",
	specials: {},
});
