import { room as criterion } from "../../criteria/room.ts";
import { importanceQuestion } from "../importance-question.ts";

export const room = importanceQuestion(criterion, {
	id: "features/room",
	tier: "features",
	label: "Room for later matters",
	howToFindOut: "Think of how often you opened your last computer.",
	short: true,
	// Without anything to add there is no room to weigh.
	applies: ({ laterThings }) => (laterThings?.length ?? 0) > 0,
});
