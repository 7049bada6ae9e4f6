import type { Answer } from "../parts/answers-file.ts";

/** Places of the helper, and those where the builder decides on what was suggested. */
export type CoachPlace =
	/** What the helper would check. */
	| { readonly at: "coach" }
	| { readonly at: "coach-name" }
	/** A question that the helper answers; `tried` is what was marked so far, and nothing of it is kept yet. */
	| { readonly at: "coach-question"; readonly id: string; readonly tried: Answer | null }
	/** Why the helper would answer otherwise than somebody has. */
	| { readonly at: "coach-why"; readonly id: string; readonly tried: Answer }
	/** What others suggest. "decided": what became of it. */
	| { readonly at: "suggestions"; readonly page?: "decided" }
	/** All that is proposed for one question. */
	| { readonly at: "suggestion"; readonly questionId: string };

/** What can be done there. */
export type CoachEvent =
	| { readonly type: "coach" }
	/** Asks for the helper's name again. */
	| { readonly type: "coach-name" }
	/** The helper takes back what they proposed for a question. */
	| { readonly type: "withdraw"; readonly questionId: string }
	| { readonly type: "suggestions"; readonly page?: "decided" }
	| { readonly type: "suggestion"; readonly questionId: string }
	/** `index` among all suggestions of the walk. */
	| { readonly type: "take-suggestion"; readonly index: number }
	/** Nothing of what is proposed for a question is taken. */
	| { readonly type: "leave-suggestions"; readonly questionId: string };
