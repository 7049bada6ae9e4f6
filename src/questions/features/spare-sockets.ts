import { connections as criterion } from "../../criteria/connections.ts";
import { importanceQuestion } from "../importance-question.ts";

export const spareSockets = importanceQuestion(criterion, {
	id: "features/spare-sockets",
	tier: "features",
	label: "Spare sockets and network matter",
	howToFindOut: "Count how many things you bought in the last two years that went into a USB socket.",
	short: true,
	// Where nobody has told of things or of a network, there is nothing to weigh.
	applies: ({ rearDevices, routerGbps }) => rearDevices !== null || (routerGbps ?? 0) > 0,
});
