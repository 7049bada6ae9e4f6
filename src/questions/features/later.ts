import type { LaterThing } from "../../parts/wants.ts";
import { manyQuestion } from "../many-question.ts";

export const later = manyQuestion({
	id: "features/later",
	tier: "features",
	short: true,
	ask: "What will you most likely add later?",
	hint: "Only what you would really buy in the next years",
	label: "To be added later",
	why: "A place that is free on the first day is what makes a later part possible.",
	whereToFind: "Think of what you added to the last computer, or wished you could.",
	changes: "Boards are scored by how much of it would find a place. No board is taken out.",
	notSure: "Room for later is left out of the score.",
	howToFindOut: "Ask yourself what filled up first on your last computer.",
	lines: [
		{ value: "M.2 drive", label: "A fast drive (M.2)", explanation: "For more games or projects", most: 3 },
		{ value: "SATA drive", label: "A large drive on a cable", explanation: "For photos and copies", most: 4 },
		{ value: "memory", label: "More memory", explanation: "The same again, in free slots" },
		{ value: "card", label: "A card for sound, network or video", explanation: "In a free card slot", most: 2 },
		{ value: "fan", label: "More fans", explanation: "On free fan headers of the board", most: 3 },
		{ value: "USB thing", label: "More USB things", explanation: "At free sockets at the back", most: 4 },
	],
	none: { label: "Nothing", explanation: "Room for later is left out of the score" },
	sets: (facts, values) => ({ ...facts, laterThings: values as readonly LaterThing[] }),
});
