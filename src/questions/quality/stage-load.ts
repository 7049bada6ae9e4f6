import { steadyPower as criterion } from "../../criteria/steady-power.ts";
import { importanceQuestion } from "../importance-question.ts";
import { wattsWords } from "../watts-words.ts";

export const stageLoad = importanceQuestion(criterion, {
	id: "quality/stage-load",
	tier: "quality",
	short: true,
	label: "Steady power for hours matters",
	shows: wattsWords,
	howToFindOut: "Think whether you ever let a computer work hard for more than ten minutes without a break.",
});
