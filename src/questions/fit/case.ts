import type { BoardForm } from "../../parts/vocabulary.ts";
import { partQuestion, withHave } from "../part-question.ts";

/** What a case may turn out to take, by the largest board; smaller forms are listed with the larger. */
const kindsOfCase: readonly {
	readonly label: string;
	readonly boardForms: readonly BoardForm[];
	readonly boardMaxDepthMm?: number;
}[] = [
	{ label: "Mini-ITX only", boardForms: ["Mini-ITX"] },
	{ label: "microATX and smaller", boardForms: ["microATX", "Mini-ITX"] },
	{ label: "ATX and smaller", boardForms: ["ATX", "microATX", "Mini-ITX"] },
	// The whole depth of the form, 13 in; a case that takes less of it is described, not left open.
	{ label: "E-ATX and smaller", boardForms: ["E-ATX", "ATX", "microATX", "Mini-ITX"], boardMaxDepthMm: 330 },
];

export const pcCase = partQuestion({
	id: "fit/case",
	tier: "fit",
	short: true,
	partKind: "case",
	ask: "Which case will the board go into?",
	hint: "Pick one, or say what board sizes its page lists",
	label: "Case",
	why: "The board is screwed to the case: it must not be larger than the case allows.",
	whereToFind: 'The case maker\'s page, "motherboard support": it lists board sizes such as ATX, microATX, Mini-ITX.',
	recipe: [
		"With a tape: measure from the back wall, where the sockets will be, to the first thing that stops a board.",
		"ATX needs 30.5 cm by 24.4 cm, microATX 24.4 cm by 24.4 cm, Mini-ITX 17 cm by 17 cm.",
		"Count the card openings at the back: seven for ATX, four for microATX, two or one for Mini-ITX.",
	],
	changes: "Boards larger than the case takes are taken out.",
	notSure: "Every size of case is kept in mind: a board then fits, does not fit, or depends on your case.",
	howToFindOut: "Read the case maker's page, or measure the place for the board with a tape.",
	specials: {
		open: { label: "I will choose a case to suit the board", explanation: "No board is taken out for its size" },
	},
	possibilities: () =>
		kindsOfCase.map(({ label, boardForms, ...room }) => ({
			label: `a case for ${label}`,
			sets: (facts) =>
				withHave(facts, "case", {
					state: "have",
					ownership: "planned",
					part: { id: "a-case", name: `a case for ${label}`, boardForms: [...boardForms], ...room },
				}),
		})),
});
