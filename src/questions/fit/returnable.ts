import { manyQuestion } from "../many-question.ts";
import { linesOfParts, partKindsOfBuild, partLabel, withOwnership } from "../owned-parts.ts";

export const returnable = manyQuestion({
	id: "fit/returnable",
	tier: "fit",
	ask: "Which bought parts can still go back to the shop?",
	hint: "Within the shop's time for returns; some take only what was never used",
	label: "Can still go back",
	why: "A part that can go back is easier to change than one bought for good.",
	whereToFind: "In the shop's terms for returns. Ask too whether a part you have tried may still go back.",
	changes: "When something does not fit, parts that can go back are named before those bought for good.",
	notSure: "What is bought counts as bought for good.",
	howToFindOut: "Read the shop's terms for returns, or ask the shop.",
	applies: (facts) => linesOfParts(facts, isOwned).length > 0,
	lines: (facts) => linesOfParts(facts, isOwned),
	values: partKindsOfBuild,
	none: { label: "None of them", explanation: "All of it is bought for good" },
	says: (values) => values.map(partLabel).join(", "),
	sets: (facts, values) =>
		withOwnership(facts, (kind) => {
			const have = facts[kind];
			if (have.state !== "have" || have.ownership === "planned") return null;
			return values.includes(kind) ? "returnable" : "bought";
		}),
});

const isOwned = (have: { state: string; ownership?: string }) => have.ownership !== "planned";
