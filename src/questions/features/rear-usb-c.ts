import { wishQuestion } from "../wish-question.ts";

export const rearUsbC = wishQuestion({
	id: "features/rear-usb-c",
	tier: "features",
	short: true,
	ask: "Do you want a USB-C socket at the back?",
	hint: "USB-C is the small oval plug that goes in either way round",
	label: "USB-C at the back",
	why: "Some screens, drives and docks come with a USB-C plug only.",
	whereToFind: "Look at the plugs of the things you own: flat ones are USB-A, small oval ones are USB-C.",
	changes: "If it is a must, boards without one are taken out.",
	notSure: "No board is taken out for it.",
	howToFindOut: "Look at the plugs of the things you will connect.",
	strengths: {
		must: { label: "Must have", explanation: "Boards without one are taken out" },
		"would-like": { label: "Would like", explanation: "Boards without one are marked, not taken out" },
		"dont-mind": { label: "Don't mind", explanation: "It is not counted" },
	},
});
