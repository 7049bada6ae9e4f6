import type { AnswerValue } from "../parts/answers-file.ts";
import type { BuildFacts } from "../parts/build.ts";
import type { Market } from "../parts/market.ts";
import type { PartKind } from "../parts/part-kinds.ts";

export const tiers = ["about", "fit", "features", "quality", "before-you-pay"] as const;
export type Tier = (typeof tiers)[number];

/** Tiers as a person reads them. */
export const tierNames: Readonly<Record<Tier, string>> = {
	about: "About you",
	fit: "Fit",
	features: "Features",
	quality: "Build quality",
	"before-you-pay": "Before you pay",
};

/** What questions are asked against. The date is an input, never read from a clock. */
export interface QuestionContext {
	readonly market: Market;
	/** ISO date. */
	readonly asOf: string;
}

export interface Option {
	readonly value: AnswerValue;
	readonly label: string;
	/** One short sentence without a full stop. */
	readonly explanation: string;
	/** Where several lines can be marked: how often this one can be, for "two of them". Once unless said. */
	readonly most?: number;
	/** Heading above this line and those that follow, in a long list. */
	readonly group?: string;
}

/** What a typed line comes to: a value, or what is wrong with it in the question's own words. */
export type Reading = { readonly value: AnswerValue } | { readonly problem: string };

/** One way an unsure answer may turn out. */
export interface Possibility {
	readonly label: string;
	readonly sets: (facts: BuildFacts) => BuildFacts;
}

/**
 * A question and all that the protocol asks of it. A test fails where a text is missing, or where no answer changes
 * anything anywhere.
 */
export interface Question {
	/** Same as the file's path below src/questions. */
	readonly id: string;
	readonly formerly?: readonly string[];
	readonly tier: Tier;
	/** "many": any lines of the list, each perhaps more than once; the value is the list of what was marked. */
	readonly kind: "one" | "many" | "number" | "part" | "order";
	/** Asked on the short way too: it decides most. */
	readonly short?: true;
	/** The heading; at most twelve words. */
	readonly ask: string;
	/** One sentence without a full stop: how to answer, or where to look. */
	readonly hint: string;
	/** Short statement for the review, such as "Most the board may cost". */
	readonly label: string;
	readonly why: string;
	readonly whereToFind: string;
	/** What the answers change. */
	readonly changes: string;
	/** Where the thing itself is in the hand: how to read it off, step by step. */
	readonly recipe?: readonly string[];
	/** A picture in plain letters, shown with the recipe; at most 56 cells wide, and told in the recipe too. */
	readonly picture?: readonly string[];
	/** What the answers so far come to, shown with the question; null where there is nothing to show yet. */
	readonly shows?: (facts: BuildFacts) => string | null;
	/** What "not sure" does. */
	readonly notSure: string;
	/** How to find the answer out later; for the sheet's list of what is still unknown. */
	readonly howToFindOut: string;
	/** For a question about parts: their kind. */
	readonly partKind?: PartKind;
	/** A wish shows beside each option, before it is chosen, how many boards it would leave. */
	readonly isWish?: boolean;
	/** Whether it makes sense with what earlier questions have set. */
	readonly applies: (facts: BuildFacts) => boolean;
	/** Lines to pick, given what earlier questions have set. */
	readonly options: (context: QuestionContext, facts: BuildFacts) => readonly Option[];
	/** For "many": the line that says there is none of it. */
	readonly none?: { readonly label: string; readonly explanation: string };
	/** For values that are typed rather than picked. */
	readonly read?: (text: string, context: QuestionContext) => Reading;
	/** Whether a value from a file is one this question can have; says what was expected if not. */
	readonly expected: (value: AnswerValue, context: QuestionContext) => string | null;
	readonly sets: (facts: BuildFacts, value: AnswerValue, context: QuestionContext) => BuildFacts;
	/** The value in words, for review and sheet. */
	readonly says: (value: AnswerValue, context: QuestionContext) => string;
	/** For a question whose values can all be listed: every way "not sure" may turn out. */
	readonly possibilities?: (context: QuestionContext) => readonly Possibility[];
	/** For an answer that itself leaves several ways open, such as three candidates: each of them. */
	readonly alternatives?: (value: AnswerValue, context: QuestionContext) => readonly Possibility[];
}
