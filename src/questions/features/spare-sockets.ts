import { spareSockets as criterion } from "../../criteria/spare-sockets.ts";
import { importanceQuestion } from "../importance-question.ts";

export const spareSockets = importanceQuestion(criterion, {
	id: "features/spare-sockets",
	tier: "features",
	label: "Spare USB sockets matter",
	howToFindOut: "Count how many things you bought in the last two years that went into a USB socket.",
	short: true,
	// Where nobody has counted the things, there is nothing to weigh.
	applies: ({ rearDevices }) => rearDevices !== null,
});
