import type { Wants } from "../parts/wants.ts";
import type { Question } from "./define-question.ts";

type CountWant = { [W in keyof Wants]: NonNullable<Wants[W]> extends number ? W : never }[keyof Wants];

/** Declares a question answered by a whole number; it sets one want. */
export function countQuestion(
	question: Omit<Question, "kind" | "options" | "expected" | "sets" | "says" | "read" | "applies"> & {
		readonly want: CountWant;
		readonly least: number;
		readonly most: number;
		/** Unit as it may be typed behind the number, such as "GB"; said behind it too. */
		readonly unit?: string;
		readonly applies?: Question["applies"];
	},
): Question {
	const { want, least, most, unit, ...plain } = question;
	return {
		applies: () => true,
		...plain,
		kind: "number",
		options: () => [],
		read: (text) => {
			const match = new RegExp(`^\\s*(\\d{1,5})\\s*(?:${unit ?? ""})?\\s*$`, "i").exec(text);
			const count = Number(match?.[1]);
			return match && count >= least && count <= most
				? { value: count }
				: { problem: `Type a whole number from ${least} to ${most}${unit ? `, in ${unit}` : ""}.` };
		},
		expected: (value) =>
			typeof value === "number" && Number.isInteger(value) && value >= least && value <= most
				? null
				: `a whole number from ${least} to ${most}`,
		sets: (facts, value) => ({ ...facts, [want]: value }),
		says: (value) => (unit ? `${value} ${unit}` : String(value)),
	};
}
