import type { SoundUse } from "../../parts/wants.ts";
import { manyQuestion } from "../many-question.ts";

export const sound = manyQuestion({
	id: "features/sound",
	tier: "features",
	ask: "How will you listen and record?",
	hint: "Mark all that you will connect",
	label: "Sound",
	why: "Each way needs a socket of its own at the back or at the front.",
	whereToFind: "Look at the plugs of your headphones, speakers and microphones.",
	changes: "A board without the socket is marked, with what to buy instead.",
	notSure: "Sound is not counted for or against any board.",
	howToFindOut: "Look at the plugs.",
	lines: [
		{ value: "headphones", label: "Headphones with a round plug", explanation: "At the front or at the back" },
		{
			value: "microphone",
			label: "Microphone or recorder with a round plug",
			explanation: "At the front or at the back",
		},
		{ value: "speakers", label: "Two speakers with a round plug", explanation: "At the back" },
		{ value: "surround", label: "Five speakers or more", explanation: "They need more sound sockets at the back" },
		{
			value: "optical",
			label: "An optical cable to an amplifier",
			explanation: "It carries sound as light; the small square socket is called S/PDIF",
		},
		{ value: "own-device", label: "A USB sound box or USB headset", explanation: "It needs only a USB socket" },
	],
	none: { label: "None of these", explanation: "Nothing is checked" },
	sets: (facts, values) => ({ ...facts, soundUses: values as readonly SoundUse[] }),
});
