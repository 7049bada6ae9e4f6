import type { Activity } from "../../parts/wants.ts";
import { manyQuestion } from "../many-question.ts";
import { wattsWords } from "../watts-words.ts";

export const activities = manyQuestion({
	id: "about/activities",
	tier: "about",
	short: true,
	ask: "What will you do with this computer?",
	hint: "Mark all that you will really do in the first year",
	label: "What it is for",
	why: "Some work lets the processor rest most of the time. Other work keeps it at full power for hours.",
	whereToFind: "Think of a usual week at the computer you use now.",
	changes: "We guess from it how many watts the board must feed. The heaviest use counts in the scores.",
	shows: wattsWords,
	notSure: "Heavy use is counted, to be on the safe side.",
	howToFindOut: "Write down for a week what you use a computer for.",
	lines: [
		{ value: "writing", label: "Writing, school work, the web", explanation: "The processor mostly rests" },
		{ value: "films", label: "Films and music", explanation: "The processor mostly rests" },
		{ value: "games", label: "Games", explanation: "Over half of full power, for as long as you play" },
		{
			value: "pictures",
			label: "Editing photos or videos",
			explanation: "Near full power, in bursts and when a film is saved",
		},
		{ value: "building", label: "Compiling, simulating, 3D rendering", explanation: "Full power, often for hours" },
		{ value: "sound-recording", label: "Recording sound or voice", explanation: "Little power, but quiet matters" },
		{ value: "always-on", label: "It stays on day and night", explanation: "Little power, but every day of the year" },
	],
	none: { label: "None of these", explanation: "Counted as light use" },
	sets: (facts, values) => ({ ...facts, activities: values as readonly Activity[] }),
});
