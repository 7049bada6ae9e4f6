import type { FactsUnder } from "../parts/fact-path.ts";
import { defineRule, type Rule, type RuleWords } from "./define-rule.ts";
import { cannotTell, fail, goodToKnow, type MessageData, type Outcome, pass } from "./outcome.ts";

/** Whether a board has what was wished; undefined where its page does not say. Data fill in the message. */
type Has = { readonly has: boolean; readonly data?: MessageData } | undefined;

/**
 * Declares a rule about one wish that a board meets or does not. A must that is missing fails; what one would like is
 * marked; a wish nobody has, or that is not settled, asks for nothing. The rule's id is the wish's question.
 *
 * `words` are pieces of sentences without a full stop: "It has ...", "It has no ...", "Whether it has ...".
 */
export function wishRule<const Reads extends readonly string[]>(
	rule: Omit<RuleWords, "scope"> & {
		readonly reads: Reads;
		readonly has: (facts: FactsUnder<never, Reads[number]>) => Has;
		/** Facts whose absence is why nobody can tell; those of `reads` that are absent unless said. */
		readonly missing?: (facts: FactsUnder<never, Reads[number]>) => readonly string[];
		readonly words: {
			readonly notAsked: string;
			readonly has: (data: MessageData) => string;
			readonly lacks: (data: MessageData) => string;
			/** Behind "Whether". */
			readonly whether: string;
			readonly need: string;
		};
		/** What to do about it where it is missing. */
		readonly advice?: string;
	},
): Rule {
	const { reads, has, missing, words, advice, ...plain } = rule;
	const wish = `wish.${rule.id}`;
	return defineRule({
		...plain,
		scope: "board",
		reads: [],
		mayRead: [wish, ...reads] as readonly string[],
		messages: {
			notAsked: () => `${words.notAsked}.`,
			has: (data: MessageData) => `${words.has(data)}.`,
			lacks: (data: MessageData) => `${words.lacks(data)}, which you must have.`,
			wouldLike: (data: MessageData) => `${words.lacks(data)}, which you would like.`,
			silent: () => `Whether ${words.whether} is not known; you would like it.`,
			need: ({ must }: { must: boolean }) => (must ? `${words.need}.` : `${words.need}, if it costs little.`),
		},
		...(advice ? { advice: { lacks: () => advice, wouldLike: () => advice } } : {}),
		check(facts): Outcome {
			const all = facts as Readonly<Record<string, unknown>>;
			const strength = all[wish];
			if (strength === undefined || strength === "dont-mind") return pass("notAsked");
			const found = has(all as FactsUnder<never, Reads[number]>);
			const must = strength === "must";
			if (found === undefined) {
				// Where the fact is there but not whole, such as slots without their lanes, it is the one to look up again.
				const absent = reads.filter((path) => all[path] === undefined);
				const lacking = missing?.(all as FactsUnder<never, Reads[number]>) ?? (absent.length > 0 ? absent : reads);
				return must ? cannotTell(lacking) : goodToKnow("silent");
			}
			const data = found.data ?? {};
			if (found.has) return pass("has", data);
			return must ? fail("lacks", data) : goodToKnow("wouldLike", data);
		},
		needs(facts) {
			const strength = (facts as Readonly<Record<string, unknown>>)[wish];
			return strength === undefined || strength === "dont-mind"
				? null
				: { messageId: "need", data: { must: strength === "must" } };
		},
	});
}
