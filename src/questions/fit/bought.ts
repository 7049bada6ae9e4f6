import type { BuildFacts } from "../../parts/build.ts";
import { boughtLists } from "../../parts/wants.ts";
import { type ManyLine, manyQuestion } from "../many-question.ts";
import { linesOfParts, partKindsOfBuild, partLabel, withOwnership } from "../owned-parts.ts";

export const bought = manyQuestion({
	id: "fit/bought",
	tier: "fit",
	ask: "Which of these parts have you bought already?",
	hint: "Mark what lies at home or is paid for",
	label: "Bought already",
	why: "What is only planned can still be changed. What is bought for good is the last to be given up.",
	whereToFind: "On your receipts and orders.",
	changes: "When something does not fit, we first show what to change among parts that are not bought.",
	notSure: "All parts count as planned, so that any of them may be named as the one to change.",
	howToFindOut: "Look at your orders.",
	applies: (facts) => allLines(facts).length > 0,
	lines: (facts) => allLines(facts),
	values: [...partKindsOfBuild, ...boughtLists],
	none: { label: "None of these yet", explanation: "All of it is planned" },
	says: (values) => values.map(partLabel).join(", "),
	sets: (facts, values) => ({
		...withOwnership(facts, (kind) => (values.includes(kind) ? "bought" : "planned")),
		boughtLists: boughtLists.filter((list) => values.includes(list)),
	}),
});

function allLines(facts: BuildFacts): readonly ManyLine[] {
	const lists = boughtLists.flatMap((list): readonly ManyLine[] => {
		const parts = facts[list] ?? [];
		return parts.length > 0
			? [{ value: list, label: partLabel(list), explanation: parts.map(({ name }) => name).join(", ") }]
			: [];
	});
	return [...linesOfParts(facts, () => true), ...lists];
}
