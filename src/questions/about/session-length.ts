import { choiceQuestion } from "../choice-question.ts";
import { wattsWords } from "../watts-words.ts";

export const sessionLength = choiceQuestion({
	id: "about/session-length",
	tier: "about",
	want: "sessionLength",
	ask: "How long does your heaviest work last without a break?",
	hint: "The longest usual stretch of games, editing or computing",
	label: "Longest stretch of heavy work",
	why: "The parts that feed the processor warm up over minutes. Short work ends before they are hot.",
	whereToFind: "Think of the last time the fans of your computer got loud, and for how long.",
	changes: "The longer the stretch, the hotter the parts that feed the processor are counted.",
	shows: wattsWords,
	notSure: "Work all day long is counted, to be on the safe side.",
	howToFindOut: "Look at the clock the next time you play or edit.",
	choices: {
		minutes: { label: "Some minutes", explanation: "Over before the board is really warm" },
		"an-hour": { label: "About an hour", explanation: "The board gets as warm as it ever will, or nearly" },
		"all-day": { label: "Many hours", explanation: "Counted as without end" },
	},
});
