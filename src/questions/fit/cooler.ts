import { partQuestion } from "../part-question.ts";

export const cooler = partQuestion({
	id: "fit/cooler",
	tier: "fit",
	short: true,
	partKind: "cooler",
	ask: "Which cooler will sit on the processor?",
	hint: "A metal block with a fan, or a pump with hoses",
	label: "Cooler",
	why: "A cooler is screwed to the board around the socket. It must suit the socket, the case and the heat.",
	whereToFind: "The cooler's page lists sockets, height and, for a liquid one, the length of the radiator.",
	changes:
		"Boards whose socket the cooler has no parts for are taken out. Height and heat are held against your parts.",
	notSure: "No board is taken out; whether the cooler goes onto a board stays unknown.",
	howToFindOut: "See whether a cooler comes in the processor's box; else plan one.",
	specials: {
		none: { label: "The one in the processor's box", explanation: "Only if one comes with it; we check that" },
		open: { label: "I will buy one to suit", explanation: "No board is taken out for it" },
	},
});
