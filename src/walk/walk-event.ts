import type { AnswerValue } from "../parts/answers-file.ts";

/** Everything a person can do in a walk, whichever face it has. */
export type WalkEvent =
	/** Go on: from the start, a tier's end, an answered question that is kept. */
	| { readonly type: "next" }
	| { readonly type: "back" }
	| { readonly type: "answer"; readonly value: AnswerValue }
	| { readonly type: "not-sure" }
	/** Something typed: read by the question, or by the fact being described. */
	| { readonly type: "text"; readonly text: string }
	| { readonly type: "describe" }
	| { readonly type: "describe-board" }
	| { readonly type: "fact"; readonly value: unknown }
	| { readonly type: "not-on-page" }
	| { readonly type: "review" }
	| { readonly type: "change"; readonly questionId: string }
	| { readonly type: "fell-out" }
	| { readonly type: "shortlist" }
	| { readonly type: "board"; readonly boardId: string }
	| { readonly type: "sheet" }
	| { readonly type: "write-sheet"; readonly to: string }
	| { readonly type: "written"; readonly path: string }
	| { readonly type: "not-written"; readonly problem: string }
	| { readonly type: "leave" };

/** What the outside must do after an event. */
export type WalkEffect =
	| { readonly type: "save" }
	| { readonly type: "write-sheet"; readonly to: string }
	/** `finished`: a shortlist was seen. */
	| { readonly type: "leave"; readonly finished: boolean };
