import type { Criterion } from "../criteria/define-criterion.ts";
import { type ImportanceTier, importanceTiers } from "../parts/build.ts";
import type { Question } from "./define-question.ts";

const words: Readonly<Record<ImportanceTier, { label: string; explanation: string }>> = {
	"a-lot": { label: "A lot", explanation: "This counts most in the score" },
	somewhat: { label: "Somewhat", explanation: "This counts, after what matters a lot" },
	"a-little": { label: "A little", explanation: "This counts last" },
	"not-at-all": { label: "Not at all", explanation: "This is left out of the score" },
};

/** Asks how much a criterion matters, by its consequence and with both ends shown. */
export function importanceQuestion(
	criterion: Criterion,
	question: Pick<Question, "id" | "tier" | "label" | "howToFindOut"> &
		Partial<Pick<Question, "short" | "applies" | "shows">>,
): Question {
	return {
		applies: () => true,
		...question,
		kind: "one",
		ask: criterion.asks,
		hint: `From "${criterion.ends.worst}" to "${criterion.ends.best}"`,
		why: criterion.why,
		whereToFind: "In yourself: picture the worst case on a bad day, and how you would feel.",
		changes: `Your answer sets how much weight the score gives to ${criterion.name}. It takes no board out.`,
		notSure: "It is counted like the others, and the sheet says that you were not sure.",
		options: () => importanceTiers.map((value) => ({ value, ...words[value] })),
		expected: (value) =>
			importanceTiers.includes(value as ImportanceTier) ? null : `one of ${importanceTiers.join(", ")}`,
		sets: (facts, value) => ({
			...facts,
			importance: { ...facts.importance, [criterion.id]: value as ImportanceTier },
		}),
		says: (value) => words[value as ImportanceTier]?.label ?? String(value),
	};
}
