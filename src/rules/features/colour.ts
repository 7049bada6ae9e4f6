import { colourKinds } from "../../reference/colour-words.ts";
import { defineRule } from "../define-rule.ts";
import { goodToKnow, type Outcome, pass } from "../outcome.ts";

/** Looks come last and never cost a board its place; said only where a stated colour is plainly the other one. */
export const colour = defineRule({
	id: "features/colour",
	scope: "board",
	label: "Colour",
	wayOut: "another colour",
	asks: "Is the board of the colour you like?",
	why: "The colour changes nothing in how it works. Behind a closed side nobody sees it.",
	source: "own-convention",
	severity: "good-to-know",
	reads: [],
	mayRead: ["colourTaste", "board.colour"],
	messages: {
		notAsked: () => "You have asked for no colour.",
		nothingAgainst: () => "Nothing speaks against its colour.",
		other: ({ colour, taste }: { colour: string; taste: string }) =>
			`Its colour is given as ${colour}; you like ${taste} boards.`,
		need: ({ taste }: { taste: string }) => `A ${taste} board, where all else is equal.`,
	},
	check({ colourTaste: taste, "board.colour": given }): Outcome {
		if (!taste || taste === "plain") return pass("notAsked");
		const kinds = given === undefined ? [] : colourKinds(given);
		return given !== undefined && kinds.length > 0 && !kinds.includes(taste)
			? goodToKnow("other", { colour: given, taste })
			: pass("nothingAgainst");
	},
	needs: ({ colourTaste: taste }) => (taste && taste !== "plain" ? { messageId: "need", data: { taste } } : null),
});
