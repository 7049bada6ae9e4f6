import type { LikeDirection } from "../choose/like-this-but.ts";
import type { AnswerValue, OwnPart } from "../parts/answers-file.ts";
import type { PartKind } from "../parts/part-kinds.ts";
import type { AskShopEvent } from "./ask-shop-places.ts";
import type { CoachEvent } from "./coach-places.ts";
import type { KeptWalkEvent, WalksChange } from "./kept-walk-places.ts";
import type { PartEvent } from "./part-event.ts";
import type { WalkSettings } from "./saved-settings.ts";
import type { TakenChange } from "./take-way-out.ts";

/** A page of a board besides what was checked: all its facts, what plugs in where, or power and heat. */
export type BoardPage = "facts" | "plan" | "power";

/** Everything a person can do in a walk, whichever face it has. */
export type WalkEvent =
	/** Go on: from the start, a tier's end, an answered question that is kept. */
	| { readonly type: "next" }
	| { readonly type: "back" }
	/** On to the first question nobody has dealt with. */
	| { readonly type: "go-on" }
	| { readonly type: "answer"; readonly value: AnswerValue }
	/** Marks a line of a list once more (a full one is emptied), or with -1 once less. */
	| { readonly type: "mark"; readonly value: string; readonly by: 1 | -1 }
	| { readonly type: "not-sure" }
	/** Something typed: read by the question, or by the fact being described. */
	| { readonly type: "text"; readonly text: string }
	| { readonly type: "describe" }
	| { readonly type: "describe-board" }
	| { readonly type: "fact"; readonly value: unknown }
	| { readonly type: "not-on-page" }
	| { readonly type: "review" }
	| { readonly type: "change"; readonly questionId: string }
	/** Takes what would make a board fit: changes these answers, and asks again for parts that are to be chosen anew. */
	| { readonly type: "way-out"; readonly changes: readonly TakenChange[] }
	| { readonly type: "fell-out" }
	| { readonly type: "shortlist" }
	/** What more money buys. */
	| { readonly type: "price-line" }
	| { readonly type: "find-out" }
	| { readonly type: "board"; readonly boardId: string; readonly page?: BoardPage }
	/** Tries another answer: first which, then the question itself. */
	| { readonly type: "what-if"; readonly questionId?: string }
	/** Takes the answer that was tried. */
	| { readonly type: "keep-tried" }
	/** What is like a board but better; without an id, the board that is looked at. */
	| { readonly type: "like"; readonly boardId?: string; readonly direction?: LikeDirection }
	/** `page`: all of it, to read on the screen. */
	| { readonly type: "sheet"; readonly page?: "all" }
	/** `orNext`: where the file is there already, the next free name: sheet-2.md. */
	| { readonly type: "write-sheet"; readonly to: string; readonly orNext?: boolean }
	| { readonly type: "written"; readonly path: string }
	| { readonly type: "not-written"; readonly problem: string }
	/** Everything that can be reached from anywhere. */
	| { readonly type: "menu" }
	| { readonly type: "open"; readonly file: string }
	| { readonly type: "settings" }
	/** A made-up person's walk, to look round in; and back to one's own. */
	| { readonly type: "look-at-example" }
	| { readonly type: "leave-example" }
	/** Every word that is explained. */
	| { readonly type: "glossary" }
	| { readonly type: "set"; readonly setting: Partial<WalkSettings> }
	/** A word from outside, such as that a file was set aside. */
	| { readonly type: "tell"; readonly words: string }
	/** Shows numbers and sources with every screen, or hides them again. */
	| { readonly type: "show-sources" }
	| { readonly type: "leave" }
	| AskShopEvent
	| CoachEvent
	| KeptWalkEvent
	| PartEvent;

/** What the outside must do after an event. */
export type WalkEffect =
	| { readonly type: "save" }
	| { readonly type: "write-sheet"; readonly to: string; readonly orNext: boolean }
	/** The made-up person's walk is to stand in place of this one, or this one again. */
	| { readonly type: "look-at-example" }
	| { readonly type: "leave-example" }
	/** Another walk is to be taken up in place of this one. */
	| { readonly type: "open"; readonly file: string }
	/** Walks that are kept are named, copied, removed; see WalksChange. */
	| { readonly type: "change-walks"; readonly change: WalksChange }
	| { readonly type: "keep-settings"; readonly settings: WalkSettings }
	/** An own part is new, or takes the place of the one with its id. */
	| { readonly type: "keep-part"; readonly own: OwnPart }
	| { readonly type: "remove-part"; readonly kind: PartKind; readonly id: string }
	/** `finished`: a shortlist was seen. */
	| { readonly type: "leave"; readonly finished: boolean };
