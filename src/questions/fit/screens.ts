import type { PictureSocket } from "../../parts/vocabulary.ts";
import { manyQuestion } from "../many-question.ts";

export const screens = manyQuestion({
	id: "fit/screens",
	tier: "fit",
	ask: "Which plugs do your screens have?",
	hint: "Mark one plug for each screen you will use",
	label: "Plugs of the screens",
	why: "The picture comes out of the graphics card or, without one, out of the board. The plug must suit.",
	whereToFind: "At the back of each screen: look at the shape of its sockets.",
	recipe: [
		"HDMI: wide as a thumb, with two slanted lower corners.",
		"DisplayPort: like HDMI, but only one corner is slanted.",
		"USB-C: small and oval, like on a new phone.",
		"DVI: broad, white inside, with screws at both sides.",
		"VGA: blue, fifteen holes in three rows, with screws at both sides.",
	],
	picture: [
		" HDMI         DisplayPort    USB-C     VGA or DVI",
		" ________     ________                  ________",
		"|        |   |        |     (______)  o|        |o",
		" \\______/     \\_______|                 \\______/",
	],
	changes: "A missing socket is marked, with the adapter that would help.",
	notSure: "No screen is counted for or against any board.",
	howToFindOut: "Look at the back of the screen.",
	lines: [
		{ value: "HDMI", label: "HDMI", explanation: "Most screens and all televisions have it", most: 3 },
		{ value: "DisplayPort", label: "DisplayPort", explanation: "Common on screens for work and games", most: 3 },
		{ value: "USB-C", label: "USB-C", explanation: "Picture through the small oval plug", most: 2 },
		{ value: "DVI", label: "DVI", explanation: "On older screens", most: 2 },
		{ value: "VGA", label: "VGA", explanation: "On the oldest screens; hardly any new part has it", most: 2 },
	],
	none: { label: "No screen yet", explanation: "Nothing is checked" },
	sets: (facts, values) => ({ ...facts, screens: values as readonly PictureSocket[] }),
});
