import { withHave } from "../part-question.ts";
import { partsOf, partsQuestion } from "../parts-question.ts";

export const candidates = partsQuestion({
	id: "fit/candidates",
	tier: "fit",
	short: true,
	partKind: "processor",
	mostOfOne: 1,
	most: 4,
	ask: "Which processors are you still thinking about?",
	hint: "Mark up to four; the choice among them stays yours",
	label: "Processors in question",
	why: "Each processor needs a certain socket. A board fits some of them, and not the others.",
	whereToFind: "On your list of wishes, or in your basket at the shop.",
	changes: "Boards that suit none of them are taken out. Each other board says which of them it suits.",
	notSure: "No board is taken out; whether a board runs your processor stays unknown.",
	howToFindOut: "Make a list of two or three by what you want to do and by price.",
	none: { label: "No idea yet", explanation: "Then no board can be judged by the processor" },
	applies: ({ processor }) => processor.state === "unknown",
	sets(facts, processors) {
		const [only, ...more] = processors;
		return only && more.length === 0
			? withHave(facts, "processor", { state: "have", part: only, ownership: "planned" })
			: facts;
	},
	alternatives: (value, context) => {
		const processors = partsOf("processor", value, context);
		if (processors.length < 2) return [];
		return processors.map((part) => ({
			label: part.name,
			sets: (facts) => withHave(facts, "processor", { state: "have", part, ownership: "planned" }),
		}));
	},
});
