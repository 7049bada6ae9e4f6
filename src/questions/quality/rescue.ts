import { rescue as criterion } from "../../criteria/rescue.ts";
import { importanceQuestion } from "../importance-question.ts";

export const rescue = importanceQuestion(criterion, {
	id: "quality/rescue",
	tier: "quality",
	short: true,
	label: "Help at the first start matters",
	howToFindOut: "Ask yourself whether somebody who has built before will sit beside you.",
});
