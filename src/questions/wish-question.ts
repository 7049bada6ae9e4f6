import { type WishStrength, wishStrengths } from "../parts/build.ts";
import type { Question } from "./define-question.ts";

/** Declares a wish: must, would like, don't mind. What each strength means stands in the question's own words. */
export function wishQuestion(
	question: Omit<Question, "kind" | "isWish" | "options" | "expected" | "sets" | "says" | "applies"> & {
		readonly strengths: Readonly<Record<WishStrength, { readonly label: string; readonly explanation: string }>>;
	},
): Question {
	const { id, strengths } = question;
	return {
		...question,
		kind: "one",
		isWish: true,
		applies: () => true,
		options: () => wishStrengths.map((value) => ({ value, ...strengths[value] })),
		expected: (value) => (wishStrengths.includes(value as WishStrength) ? null : `one of ${wishStrengths.join(", ")}`),
		sets: (facts, value) => ({ ...facts, wishes: { ...facts.wishes, [id]: value as WishStrength } }),
		says: (value) => strengths[value as WishStrength]?.label ?? String(value),
	};
}
