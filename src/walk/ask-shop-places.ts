import type { OwnPart } from "../parts/answers-file.ts";
import type { Contradiction } from "./told-fact.ts";

/** Places about asking a shop, or anybody who has the board. */
export type AskShopPlace =
	/** The message. `before`: own parts before the fact told last, to show what it changed. */
	| {
			readonly at: "ask-shop";
			readonly boardId: string;
			readonly language?: "de";
			readonly before?: readonly OwnPart[];
	  }
	/**
	 * What was answered to one question: first the answer, then who gave it. `both`: something else is stated of the
	 * board, and the person decides. `asPage`: text of many lines is wanted.
	 */
	| {
			readonly at: "they-answered";
			readonly boardId: string;
			readonly path: string;
			readonly asPage?: true;
			readonly answer?: string;
			readonly both?: Contradiction & { readonly by: string };
	  };

/** What a person can do there. */
export type AskShopEvent =
	| { readonly type: "ask-shop"; readonly boardId: string; readonly language?: "de" }
	/** To one question of the message that is shown. */
	| { readonly type: "they-answered"; readonly path: string; readonly asPage?: true }
	/** A fact that somebody told counts no more. */
	| { readonly type: "take-back"; readonly path: string }
	/** Who gave the answer. `replace`: it counts in place of what is stated. */
	| { readonly type: "told-by"; readonly by: string; readonly replace?: true };
