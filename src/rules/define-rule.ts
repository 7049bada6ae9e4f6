import type { BuildFacts } from "../parts/build.ts";
import type { FactsUnder } from "../parts/fact-path.ts";
import type { SourceId } from "../reference/sources.ts";
import type { MessageData, Outcome, Severity } from "./outcome.ts";

/** What a person should look for, when no board is at hand yet: a line of the requirement sheet. */
export interface Need {
	readonly messageId: string;
	readonly data: MessageData;
	/** Needs, by message id, of which this one says enough as long as the answer that they hang on is open. */
	readonly standsFor?: readonly string[];
}

export interface RuleWords {
	/** Same as the file's path below src/rules; printed everywhere and never changed without `formerly`. */
	readonly id: string;
	readonly formerly?: readonly string[];
	/** "board": judges one board for the build. "build": judges the parts among themselves; removes no board. */
	readonly scope: "board" | "build";
	/** The question in plain words. */
	readonly asks: string;
	/** Why it matters, in plain words. */
	readonly why: string;
	readonly source: SourceId;
	/** What a failure means. Only "stops" removes a board. */
	readonly severity: Severity;
	/**
	 * Whether it can stop any board with such a build; where it is left out it can. Where it cannot, a board need not be
	 * planned to see that it does not.
	 */
	readonly mayStop?: (facts: BuildFacts) => boolean;
	/** Short name of the requirement on the sheet, such as "Socket". */
	readonly label: string;
	/** Ids of messages that tell nothing of this board in this build; left out where findings are listed. */
	readonly saysNothing?: readonly string[];
	/** What the person would change to do without it, behind "with": "another case". */
	readonly wayOut: string;
}

/**
 * Declares a rule. `reads` are facts that must be known before `check` runs (else the runner answers "can't tell"
 * and names the missing one); `mayRead` are facts that `check` can do without. `needs` gives the line of the
 * requirement sheet from the build alone, or null where there is nothing to look for.
 */
export function defineRule<const Reads extends readonly string[], const MayRead extends readonly string[]>(
	rule: RuleWords & {
		readonly reads: Reads;
		readonly mayRead: MayRead;
		readonly messages: Readonly<Record<string, (data: never) => string>>;
		/** What to do about it, by message id. */
		readonly advice?: Readonly<Record<string, (data: never) => string>>;
		readonly check: (facts: FactsUnder<Reads[number], MayRead[number]>) => Outcome;
		readonly needs?: (facts: FactsUnder<never, Reads[number] | MayRead[number]>) => Need | null;
	},
): Rule {
	return rule as unknown as Rule;
}

/** A rule with its types forgotten, as the runner sees it. */
export interface Rule extends RuleWords {
	readonly reads: readonly string[];
	readonly mayRead: readonly string[];
	readonly messages: Readonly<Record<string, (data: MessageData) => string>>;
	readonly advice?: Readonly<Record<string, (data: MessageData) => string>>;
	readonly check: (facts: Readonly<Record<string, unknown>>) => Outcome;
	readonly needs?: (facts: Readonly<Record<string, unknown>>) => Need | null;
}
