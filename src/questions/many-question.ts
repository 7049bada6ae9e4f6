import type { AnswerValue } from "../parts/answers-file.ts";
import type { BuildFacts } from "../parts/build.ts";
import type { Option, Question, Reading } from "./define-question.ts";

/** A line of a list in which several can be marked. */
export interface ManyLine extends Omit<Option, "value"> {
	readonly value: string;
}

/**
 * Declares a question where any lines of a list can be marked, some of them more than once. The answer is the list of
 * what was marked, in the order of the lines; "none of these" is the empty list.
 */
export function manyQuestion(
	question: Omit<Question, "kind" | "options" | "expected" | "sets" | "says" | "read" | "applies"> & {
		readonly lines: readonly ManyLine[] | ((facts: BuildFacts) => readonly ManyLine[]);
		/** All values a file may hold, where the lines differ from build to build. */
		readonly values?: readonly string[];
		readonly none: NonNullable<Question["none"]>;
		readonly sets: (facts: BuildFacts, values: readonly string[]) => BuildFacts;
		readonly applies?: Question["applies"];
		/** How a list is said; the labels with commas by default. */
		readonly says?: (values: readonly string[]) => string;
	},
): Question {
	const { lines, values, sets, says, ...plain } = question;
	const linesFor = (facts: BuildFacts) => (typeof lines === "function" ? lines(facts) : lines);
	const fixed = typeof lines === "function" ? [] : lines;
	const known = values ?? fixed.map(({ value }) => value);
	const most = (value: string) => fixed.find((line) => line.value === value)?.most ?? 1;
	return {
		applies: () => true,
		...plain,
		kind: "many",
		options: (_, facts) => linesFor(facts).map(({ value, ...words }) => ({ ...words, value: [value] })),
		expected: (value) => expectation(value, known, most),
		sets: (facts, value) => sets(facts, value as readonly string[]),
		says: (value) => {
			const marked = value as readonly string[];
			if (marked.length === 0) return plain.none.label;
			return says?.(marked) ?? labels(marked, fixed).join(", ");
		},
	};
}

/** "2 x Drive" for what is marked more than once. */
function labels(marked: readonly string[], lines: readonly ManyLine[]): readonly string[] {
	return [...new Set(marked)].map((value) => {
		const count = marked.filter((other) => other === value).length;
		const label = lines.find((line) => line.value === value)?.label ?? value;
		return count > 1 ? `${count} x ${label}` : label;
	});
}

function expectation(value: AnswerValue, known: readonly string[], most: (value: string) => number): string | null {
	const isList = Array.isArray(value) && value.every((one) => known.includes(one));
	const fits = isList && known.every((one) => value.filter((other) => other === one).length <= most(one));
	return fits ? null : `a list of ${known.map((one) => `"${one}"`).join(", ")}; [] for none`;
}

/** Reads numbers of lines as typed, such as "1, 3, 3": the lines meant, or what is wrong. */
export function readLineNumbers(text: string, lines: readonly Option[]): Reading {
	const numbers = text.split(/[\s,;]+/).filter((piece) => piece !== "");
	const wrong = numbers.find((piece) => !/^\d{1,3}$/.test(piece) || !lines[Number(piece) - 1]);
	if (numbers.length === 0 || wrong !== undefined)
		return {
			problem: `Type numbers from 1 to ${lines.length}${lines.length > 2 ? " with commas, such as 1, 3" : ""}.`,
		};
	const value = lines.flatMap((line, index) => {
		const count = numbers.filter((piece) => Number(piece) === index + 1).length;
		const [one = ""] = line.value as readonly string[];
		return Array.from({ length: Math.min(count, line.most ?? 1) }, () => one);
	});
	return { value };
}
