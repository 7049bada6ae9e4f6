import { partsQuestion } from "../parts-question.ts";

export const cards = partsQuestion({
	id: "fit/cards",
	tier: "fit",
	partKind: "addInCard",
	mostOfOne: 2,
	most: 6,
	ask: "Which other cards will be plugged in?",
	hint: "Sound, network, video or drive cards; not the graphics card",
	label: "Other cards",
	why: "Each needs a slot that the graphics card does not cover.",
	whereToFind: "In the older computer: screwed to its back, one above the other.",
	changes: "Boards without a slot left for them are marked. Where no such slot exists at all, they are taken out.",
	notSure: "No slot is counted for other cards.",
	howToFindOut: "Think whether anything you own is plugged into a card of its own.",
	none: { label: "No other cards", explanation: "Most computers have none" },
	sets: (facts, parts) => ({ ...facts, addInCards: parts }),
});
