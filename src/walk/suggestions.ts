import type { Answer, Answers, Suggestion } from "../parts/answers-file.ts";
import type { WalkState } from "./walk-state.ts";

/** What is answered, or proposed as an answer. */
type Said = Pick<Answer, "status" | "value">;

/** Whether two say the same, whoever says it. "Skipped" counts as not sure. */
export function saysTheSame(one: Said | undefined, other: Said | undefined): boolean {
	if (!one || !other) return one === other;
	const isAnswered = one.status === "answered";
	if (isAnswered !== (other.status === "answered")) return false;
	return !isAnswered || inOneOrder(one.value) === inOneOrder(other.value);
}

/** The value with its keys in one order, whatever order a file has them in. */
function inOneOrder(value: Answer["value"]): string {
	const keys = typeof value === "object" && !Array.isArray(value) ? Object.keys(value).sort() : undefined;
	return JSON.stringify(value, keys) ?? "";
}

/** The answer to a question; nothing that every object inherits. */
export function answerTo(answers: Answers, questionId: string): Answer | undefined {
	return Object.hasOwn(answers, questionId) ? answers[questionId] : undefined;
}

/** Suggestions on which the builder has not decided, in the order they came. */
export function openSuggestions(suggestions: readonly Suggestion[]): readonly Suggestion[] {
	return suggestions.filter(({ state }) => state === "open");
}

/** Questions with something to decide on, each once. */
export function questionsToDecide(suggestions: readonly Suggestion[]): readonly string[] {
	return [...new Set(openSuggestions(suggestions).map(({ questionId }) => questionId))];
}

/** Whether two copies of the walk gave a question two answers, and nobody has decided yet. */
export function hasOpenRivals(suggestions: readonly Suggestion[], questionId: string): boolean {
	return openSuggestions(suggestions).some((one) => one.rival && one.questionId === questionId);
}

/**
 * The suggestions once answers have changed: who answers a question anew has decided between the answers of two copies.
 * What somebody proposed and is now answered counts as taken.
 */
export function decidedByAnswers(
	suggestions: readonly Suggestion[],
	before: Answers,
	after: Answers,
): readonly Suggestion[] {
	const changed = (id: string) => answerTo(before, id) !== answerTo(after, id);
	if (!suggestions.some(({ questionId }) => changed(questionId))) return suggestions;
	return suggestions.map((one): Suggestion => {
		if (!changed(one.questionId)) return one;
		const isTaken = saysTheSame(one, answerTo(after, one.questionId));
		if (one.rival) return { ...one, state: isTaken ? "taken" : "left" };
		return one.state === "open" && isTaken ? { ...one, state: "taken" } : one;
	});
}

/** How the builder walks is nobody else's to say. */
export const buildersOwn: readonly string[] = ["about/walk-length", "about/who"];

/**
 * Whether what a helper answers counts at once: only where nobody has answered, or the helper alone has. What the builder
 * has answered or decided stays, and the helper may suggest something else.
 */
export function countsAtOnce({ answers, suggestions, by }: WalkState, questionId: string): boolean {
	if (hasOpenRivals(suggestions, questionId) || buildersOwn.includes(questionId)) return false;
	const answer = answerTo(answers, questionId);
	if (answer?.status !== "answered") return true;
	return answer.by === by && !suggestions.some((one) => one.questionId === questionId && one.state === "taken");
}

/** What to say to who answers a question as it was answered before; null where nobody ever suggested anything else. */
export function unchangedWords(suggestions: readonly Suggestion[], questionId: string): string | null {
	const here = suggestions.filter((one) => one.questionId === questionId);
	if (here.length === 0) return null;
	const waits = here.some(({ state }) => state === "open") ? " What is suggested still waits for you." : "";
	return `That is what stands there already, so nothing changes.${waits}`;
}
