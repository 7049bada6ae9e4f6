import { quiet as criterion } from "../../criteria/quiet.ts";
import { importanceQuestion } from "../importance-question.ts";

export const quiet = importanceQuestion(criterion, {
	id: "about/quiet",
	tier: "about",
	label: "Quiet matters",
	howToFindOut: "Sit in the room at night and listen to what you hear.",
});
