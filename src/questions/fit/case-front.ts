import type { PcCase } from "../../parts/case.ts";
import { oneQuestion } from "../one-question.ts";
import { withHave } from "../part-question.ts";

export const caseFront = oneQuestion<NonNullable<PcCase["frontOpen"]>>({
	id: "fit/case-front",
	tier: "fit",
	ask: "What does the front of your case look like?",
	hint: "Hold a hand or a lamp behind it: how much gets through?",
	label: "Front of the case",
	why: "Fresh air comes in at the front. Behind a solid front it is warmer inside, and so is the board.",
	whereToFind: "Look at the case or at the pictures on its page.",
	changes: "Behind a closed front the air is warmer, so each board has fewer degrees to spare.",
	notSure: "Anything from open mesh to a solid front is counted.",
	howToFindOut: "Look at the pictures on the case maker's page.",
	applies: ({ case: pcCase }) => pcCase.state === "have" && pcCase.part.frontOpen === undefined,
	choices: {
		mesh: { label: "Open mesh", explanation: "Many small holes; air comes in freely" },
		slits: { label: "Narrow slits", explanation: "A closed plate with openings at its sides" },
		solid: { label: "Solid", explanation: "Glass or plate without openings you can see" },
	},
	sets: (facts, frontOpen) =>
		facts.case.state === "have"
			? withHave(facts, "case", { ...facts.case, part: { ...facts.case.part, frontOpen } })
			: facts,
});
