import { partQuestion } from "../part-question.ts";

export const processor = partQuestion({
	id: "fit/processor",
	tier: "fit",
	short: true,
	partKind: "processor",
	ask: "Which processor will you use?",
	hint: "Pick one, or describe yours in a few facts",
	label: "Processor",
	why: "Everything else depends on it: the socket, the memory, how much power the board must feed.",
	whereToFind: "On its box, on the metal lid of the processor, or on the order.",
	recipe: [
		"The lid shows the maker's name, the series and the number, in small engraved letters. Tilt it in the light.",
		"Hold it by the edges. Never touch the contacts below.",
		"A processor that is glued under a cooler stays there: read the box, or the computer's own system page.",
	],
	changes: "Boards with another socket, and boards that do not run this processor, are taken out.",
	notSure: "We ask which ones you are thinking about. Until then no board is taken out for it.",
	howToFindOut: "Settle on a processor first: by what you want to do with the computer, and by its price.",
	specials: {},
});
