import type { Wants } from "../parts/wants.ts";
import type { Question } from "./define-question.ts";
import { oneQuestion } from "./one-question.ts";

/** Wants that are one of a few words. */
type ChoiceWant = { [W in keyof Wants]: NonNullable<Wants[W]> extends string ? W : never }[keyof Wants];

/** Declares a question with a few answers, one of which a person picks; it sets one want. */
export function choiceQuestion<W extends ChoiceWant>(
	question: Omit<Question, "kind" | "options" | "expected" | "sets" | "says" | "applies"> & {
		readonly want: W;
		readonly choices: Readonly<
			Record<NonNullable<Wants[W]> & string, { readonly label: string; readonly explanation: string }>
		>;
		readonly applies?: Question["applies"];
	},
): Question {
	const { want, ...plain } = question;
	return oneQuestion({ ...plain, sets: (facts, value) => ({ ...facts, [want]: value }) });
}
