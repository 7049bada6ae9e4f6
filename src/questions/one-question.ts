import type { BuildFacts } from "../parts/build.ts";
import type { Question } from "./define-question.ts";

/** Declares a question with a few answers, one of which a person picks. */
export function oneQuestion<V extends string>(
	question: Omit<Question, "kind" | "options" | "expected" | "sets" | "says" | "applies"> & {
		readonly choices: Readonly<Record<V, { readonly label: string; readonly explanation: string }>>;
		readonly sets: (facts: BuildFacts, value: V) => BuildFacts;
		readonly applies?: Question["applies"];
	},
): Question {
	const { choices, sets, ...plain } = question;
	const values = Object.keys(choices) as V[];
	return {
		applies: () => true,
		...plain,
		kind: "one",
		options: () => values.map((value) => ({ value, ...choices[value] })),
		expected: (value) => (values.includes(value as V) ? null : `one of ${values.join(", ")}`),
		sets: (facts, value) => sets(facts, value as V),
		says: (value) => choices[value as V]?.label ?? String(value),
	};
}
