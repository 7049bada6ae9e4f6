import { wishes as criterion } from "../../criteria/wishes.ts";
import { importanceQuestion } from "../importance-question.ts";

export const wishes = importanceQuestion(criterion, {
	id: "features/wishes",
	tier: "features",
	label: "Small wishes matter",
	howToFindOut: "Look at your wishes again in a week: which of them did you forget?",
});
