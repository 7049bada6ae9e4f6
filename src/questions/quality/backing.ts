import { backing as criterion } from "../../criteria/backing.ts";
import { importanceQuestion } from "../importance-question.ts";

export const backing = importanceQuestion(criterion, {
	id: "quality/backing",
	tier: "quality",
	label: "The maker's backing matters",
	howToFindOut: "Ask yourself what you would do if the board failed after three years.",
});
