import type { BuildFacts } from "../parts/build.ts";
import { cleanLine } from "../parts/clean-text.ts";
import type { Question, QuestionContext, Reading } from "./define-question.ts";
import { readLineNumbers } from "./many-question.ts";

/**
 * Reads what was typed at a question: by the question's own reader, or as the words of one option (all of them, or a
 * beginning or a piece that only one option has).
 */
export function readTyped(question: Question, text: string, context: QuestionContext, facts: BuildFacts): Reading {
	const typed = cleanLine(text);
	if (question.read) return question.read(typed, context);
	if (question.kind === "many") return readLineNumbers(typed, question.options(context, facts));
	if (typed === "") return { problem: "Pick a line, or type some of its words." };
	const options = question.options(context, facts);
	const plain = (words: string) => words.toLowerCase().normalize("NFKC");
	const wanted = plain(typed);
	for (const matches of [
		options.filter(({ label }) => plain(label) === wanted),
		options.filter(({ label }) => plain(label).startsWith(wanted)),
		options.filter(({ label }) => plain(label).includes(wanted)),
	]) {
		const [only, ...more] = matches;
		if (only && more.length === 0) return { value: only.value };
		if (only)
			return {
				problem: `Several lines have "${typed}": ${matches
					.slice(0, 4)
					.map(({ label }) => label)
					.join(", ")}${matches.length > 4 ? ` and ${matches.length - 4} more` : ""}.`,
			};
	}
	return { problem: `No line has "${typed}". Try fewer letters, or take another line.` };
}
