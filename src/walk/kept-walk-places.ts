/** Most letters of a walk's name; the answers file holds it to the same. In UTF-16 units. */
export const mostOfName = 80;

/** A walk kept earlier, in a few words. */
export interface SavedSummary {
	readonly file: string;
	/** What the person calls it, on one line. */
	readonly name?: string | null;
	/** "7 of 12 answered, in Fit, yesterday". */
	readonly words: string;
}

/** What is done with the files of kept walks; the outside does it and answers with a WalksChanged. */
export type WalksChange =
	| { readonly does: "name"; readonly file: string; readonly name: string }
	| { readonly does: "copy"; readonly file: string }
	| { readonly does: "remove"; readonly file: string }
	| { readonly does: "bring-back" }
	/** A copy of a friend's file, or of the walk in a sheet. */
	| { readonly does: "take"; readonly path: string };

/** What a person can do with walks that are kept. */
export type KeptWalkEvent =
	| { readonly type: "saved-walks" }
	/** One kept walk. */
	| { readonly type: "kept-walk"; readonly file: string }
	/** To type a name; without a file for the walk one is in. */
	| { readonly type: "name-walk"; readonly file?: string }
	| { readonly type: "copy-walk" }
	| { readonly type: "remove-walk" }
	| { readonly type: "bring-walk-back" }
	/** To type the path of a friend's file. */
	| { readonly type: "take-walk" }
	/** From outside: the walks as they are after a change, and a word about it. */
	| {
			readonly type: "walks-changed";
			readonly saved: readonly SavedSummary[];
			readonly canBringBack: boolean;
			readonly words: string;
	  };

/** Places about kept walks. */
export type KeptWalkPlace =
	| { readonly at: "saved-walks" }
	| { readonly at: "kept-walk"; readonly file: string }
	/** A name is typed; null: for the walk one is in. */
	| { readonly at: "name-walk"; readonly file: string | null }
	| { readonly at: "take-walk" };
