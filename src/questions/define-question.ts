import type { AnswerValue } from "../parts/answers-file.ts";
import type { BuildFacts, BuildPartKind } from "../parts/build.ts";
import type { Market } from "../parts/market.ts";

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
	readonly kind: "one" | "many" | "number" | "part" | "order";
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
	/** What "not sure" does. */
	readonly notSure: string;
	/** How to find the answer out later; for the sheet's list of what is still unknown. */
	readonly howToFindOut: string;
	/** For a part question: the kind of part. */
	readonly partKind?: BuildPartKind;
	/** A wish shows beside each option, before it is chosen, how many boards it would leave. */
	readonly isWish?: boolean;
	readonly applies: (facts: BuildFacts) => boolean;
	readonly options: (context: QuestionContext) => readonly Option[];
	/** For values that are typed rather than picked. */
	readonly read?: (text: string, context: QuestionContext) => Reading;
	/** Whether a value from a file is one this question can have; says what was expected if not. */
	readonly expected: (value: AnswerValue, context: QuestionContext) => string | null;
	readonly sets: (facts: BuildFacts, value: AnswerValue, context: QuestionContext) => BuildFacts;
	/** The value in words, for review and sheet. */
	readonly says: (value: AnswerValue, context: QuestionContext) => string;
	/** For a question whose values can all be listed: every way "not sure" may turn out. */
	readonly possibilities?: (context: QuestionContext) => readonly Possibility[];
}
