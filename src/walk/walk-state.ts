import type { LikeDirection } from "../choose/like-this-but.ts";
import type { Answer, Answers, OwnPart, Suggestion } from "../parts/answers-file.ts";
import type { Market } from "../parts/market.ts";
import type { PartKind } from "../parts/part-kinds.ts";
import type { Tier } from "../questions/define-question.ts";
import type { PartDraft } from "../questions/describe/typed-fact.ts";
import type { AskShopPlace } from "./ask-shop-places.ts";
import type { CoachPlace } from "./coach-places.ts";
import type { KeptWalkPlace, SavedSummary } from "./kept-walk-places.ts";
import type { OwnPlace, PastedText } from "./own-places.ts";
import type { PartForm } from "./part-form.ts";
import { defaultSettings, type WalkSettings } from "./saved-settings.ts";
import type { BoardPage } from "./walk-event.ts";

/** What a walk is made in: parts to choose from and the date. Neither changes during a walk. */
export interface WalkContext {
	/** Without the person's own parts; see marketOf. */
	readonly market: Market;
	/** ISO date. */
	readonly asOf: string;
}

/** Where a person is. */
export type Place =
	| { readonly at: "start" }
	| { readonly at: "question"; readonly id: string }
	| { readonly at: "describe"; readonly kind: PartKind; readonly questionId: string | null; readonly index: number }
	| { readonly at: "parts-disagree" }
	| { readonly at: "tier-end"; readonly tier: Tier }
	| { readonly at: "review" }
	| { readonly at: "fell-out" }
	| { readonly at: "shortlist" }
	| { readonly at: "price-line" }
	| { readonly at: "find-out" }
	/** `page`: another page of the board than what was checked. */
	| { readonly at: "board"; readonly boardId: string; readonly page?: BoardPage }
	/** Which answer to try another one for. */
	| { readonly at: "what-if" }
	/** A question asked again to try another answer; `tried` is what was marked so far, and nothing of it is kept. */
	| { readonly at: "what-if-question"; readonly id: string; readonly tried: Answer | null }
	/** What the other answer would change. */
	| { readonly at: "what-if-answer"; readonly id: string; readonly tried: Answer }
	/** What is like a board and better in one way; no way is picked yet where there is none. */
	| { readonly at: "like"; readonly boardId: string; readonly direction?: LikeDirection }
	/** `page`: all of it, to read. */
	| { readonly at: "sheet"; readonly page?: "all" }
	| { readonly at: "menu" }
	| { readonly at: "settings" }
	| { readonly at: "glossary" }
	| { readonly at: "left" }
	| AskShopPlace
	| CoachPlace
	| KeptWalkPlace
	| OwnPlace;

/** A walk. Everything on screen follows from it and the context; nothing else is kept. */
export interface WalkState {
	readonly answers: Answers;
	/** What the walk is called; null: nobody has named it. */
	readonly name: string | null;
	/** Answers that somebody proposes, and what became of them. */
	readonly suggestions: readonly Suggestion[];
	/** Parts the person described, newest last. */
	readonly ownParts: readonly OwnPart[];
	/** Who is answering, kept with each answer. */
	readonly by: string;
	/** The helper looks through somebody else's walk; null: the builder's own walk. */
	readonly coaching: Coaching | null;
	/** A made-up person's walk is looked at; nothing in it is kept. */
	readonly isExample: boolean;
	/** Whether each screen shows its numbers and sources too. */
	readonly showsSources: boolean;
	readonly place: Place;
	/** Where to go back to after changing one answer, or after looking something up. */
	readonly returnTo: readonly Place[];
	/** Facts typed so far of the part being described. */
	readonly draft: PartDraft;
	/** What was entered for each of its facts, in words, by place in the list; shown when one goes back to it. */
	readonly entered: Readonly<Record<number, string>>;
	/** Answers before the last one, to show what it took out. */
	readonly answersBefore: Answers | null;
	/** What was wrong with the last thing typed. */
	readonly problem: string | null;
	/** A word about what was just done, such as where a file lies. */
	readonly notice: string | null;
	/** Walks kept earlier, newest first; shown at the start. */
	readonly saved: readonly SavedSummary[];
	/** A kept walk was removed and can be brought back. */
	readonly canBringBack: boolean;
	readonly settings: WalkSettings;
	/** What lies where on this machine, to show: each with its path. Nothing is read or written by them. */
	readonly files: readonly (readonly [what: string, path: string])[];
	/** The person's own parts that are kept for all walks; they are in the market already. */
	readonly kept: readonly OwnPart[];
	/** The part being filled in; it stays until it is kept or dropped, wherever the person goes meanwhile. */
	readonly form: PartForm | null;
	/** Text pasted and not read yet. */
	readonly pasted: PastedText | null;
	/** The own part removed last, with the answers that named it, to bring it back. */
	readonly removed: { readonly own: OwnPart; readonly answers: Answers } | null;
}

/** What a helper must not change. */
export interface Coaching {
	/** Parts that were in the walk before, as "kind/id": they stay as they are. */
	readonly theirParts: readonly string[];
}

export function startWalk(answers: Answers = {}, ownParts: readonly OwnPart[] = [], by = "builder"): WalkState {
	return {
		answers,
		name: null,
		suggestions: [],
		ownParts,
		by,
		coaching: null,
		isExample: false,
		showsSources: false,
		place: { at: "start" },
		returnTo: [],
		draft: {},
		entered: {},
		answersBefore: null,
		problem: null,
		notice: null,
		saved: [],
		canBringBack: false,
		settings: defaultSettings,
		files: [],
		kept: [],
		form: null,
		pasted: null,
		removed: null,
	};
}
