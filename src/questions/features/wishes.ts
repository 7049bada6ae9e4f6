import { wishes as criterion } from "../../criteria/wishes.ts";
import { importanceQuestion } from "../importance-question.ts";
import { smallWishes } from "../small-wishes.ts";

export const wishes = importanceQuestion(criterion, {
	id: "features/wishes",
	tier: "features",
	label: "Your small wishes matter",
	shows: (facts) => {
		const wished = smallWishes(facts);
		return wished.length > 0 ? `What you wished: ${wished.join(", ")}.` : null;
	},
	howToFindOut: "Look at your wishes again in a week: which of them did you forget?",
	// Without any wish there is nothing to weigh.
	applies: (facts) => smallWishes(facts).length > 0,
});
