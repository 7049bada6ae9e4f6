import { defineRule } from "../define-rule.ts";
import { goodToKnow, type Outcome, pass } from "../outcome.ts";

/**
 * Whether the maker says what runs on the board. Only a list that somebody looked for and did not find counts against
 * it; where nobody has looked nothing is said.
 */
export const listsPublished = defineRule({
	id: "quality/lists-published",
	scope: "board",
	label: "Lists of what runs on it",
	wayOut: "a board without such lists",
	asks: "Does the maker publish which processors and which memory run on it?",
	why: "Such a list names what the maker has tried. Without it you find out yourself, with parts already paid for.",
	source: "common-practice",
	severity: "good-to-know",
	reads: [],
	mayRead: ["board.listsPublished.processors", "board.listsPublished.memory"],
	messages: {
		notAsked: () => "Nobody has noted that a list of what runs on it is missing.",
		both: () => "Its maker publishes which processors and which memory run on it.",
		noProcessors: () => "Its maker publishes no list of the processors that run on it.",
		noMemory: () => "Its maker publishes no list of the memory that was tried on it.",
		neither: () => "Its maker publishes no list of processors and none of memory that run on it.",
	},
	advice: {
		noProcessors: () => processorAdvice,
		noMemory: () => memoryAdvice,
		neither: () => `${processorAdvice} ${memoryAdvice}`,
	},
	check({ "board.listsPublished.processors": processors, "board.listsPublished.memory": memory }): Outcome {
		if (processors === false && memory === false) return goodToKnow("neither");
		if (processors === false) return goodToKnow("noProcessors");
		if (memory === false) return goodToKnow("noMemory");
		return processors && memory ? pass("both") : pass("notAsked");
	},
});

const processorAdvice =
	"Before you pay, ask the maker in writing whether your processor runs, and from which firmware version.";
const memoryAdvice = "Buy memory that the shop takes back. Its rate should be no higher than processor and board list.";
