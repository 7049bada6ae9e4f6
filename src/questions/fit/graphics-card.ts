import { partQuestion, withHave } from "../part-question.ts";

export const graphicsCard = partQuestion({
	id: "fit/graphics-card",
	tier: "fit",
	short: true,
	partKind: "graphicsCard",
	ask: "Will there be a graphics card?",
	hint: "Most games and heavy picture work need one; writing and films seldom do",
	label: "Graphics card",
	why: "Without a card the picture comes from the processor, through a socket at the back of the board.",
	whereToFind: "On your shopping list. A processor's page says whether it makes a picture by itself.",
	changes:
		"Without a card, boards that have no picture socket are taken out. With one, its length is held against the case.",
	notSure: "Both ways are kept in mind: with a card and without.",
	howToFindOut: "Think of what you will play or work on; its page says whether it wants a graphics card.",
	specials: {
		none: { label: "No card", explanation: "The processor makes the picture, if it can" },
		open: { label: "Yes, but not chosen yet", explanation: "The card gives the picture, whichever it will be" },
	},
	possibilities: () => [
		{ label: "a graphics card", sets: (facts) => withHave(facts, "graphicsCard", { state: "open" }) },
		{ label: "no graphics card", sets: (facts) => withHave(facts, "graphicsCard", { state: "none" }) },
	],
});
