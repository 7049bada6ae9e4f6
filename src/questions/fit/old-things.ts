import type { OldThing } from "../../parts/wants.ts";
import { manyQuestion } from "../many-question.ts";

export const oldThings = manyQuestion({
	id: "fit/old-things",
	tier: "fit",
	ask: "Which old things must work on the new computer?",
	hint: "Things with plugs that new boards seldom have",
	label: "Old things brought along",
	why: "Few new boards have their sockets. Some can be helped with an adapter, some cannot.",
	whereToFind: "Look at the plugs of the things on your desk.",
	recipe: [
		"PS/2: a round plug with six pins, green or violet.",
		"Serial: nine pins in two rows, with screws. Parallel: twenty-five pins.",
		"IDE: a drive with a flat grey cable, 5 cm wide, with forty holes.",
		"PCI: a card whose edge has one or two notches, and no short piece in front.",
		"An installed system: you take the drive out of another computer and want to go on as before.",
	],
	changes:
		"A board without the socket is marked, with the adapter that would help. For a system there is a list of what to do first.",
	notSure: "No old thing is counted for or against any board.",
	howToFindOut: "Look at the plugs of the things you want to keep.",
	lines: [
		{ value: "PS/2 keyboard or mouse", label: "PS/2 keyboard or mouse", explanation: "A round plug, green or violet" },
		{ value: "serial device", label: "Serial device", explanation: "Nine pins; measuring and machine tools" },
		{ value: "parallel printer", label: "Parallel printer", explanation: "A very wide plug with 25 pins" },
		{ value: "IDE drive", label: "IDE drive", explanation: "A flat cable 5 cm wide" },
		{ value: "PCI card", label: "PCI card", explanation: "A card from before about 2010" },
		{
			value: "installed system",
			label: "A drive with its system",
			explanation: "From another computer, to go on as before",
		},
	],
	none: { label: "None of these", explanation: "All you have uses today's plugs" },
	sets: (facts, values) => ({ ...facts, oldThings: values as readonly OldThing[] }),
});
