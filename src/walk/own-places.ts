import type { FormPath } from "../parts/form-fields.ts";
import type { PartKind } from "../parts/part-kinds.ts";
import type { ReadKind } from "../reading/part-reading.ts";

/** What a pasted text is: the page of a part, or a board's list of processors. */
export type PastedKind = ReadKind | "support-list";

/** Places about the person's own parts. */
export type OwnPlace =
	| { readonly at: "own-parts" }
	/** Which kind of part a form is for. */
	| { readonly at: "new-part" }
	| { readonly at: "own-part"; readonly kind: PartKind; readonly id: string; readonly page?: "facts" }
	| { readonly at: "read-part"; readonly what: PastedKind; readonly questionId: string | null }
	/** "all": the facts that matter less too. */
	| { readonly at: "part-form"; readonly page?: "all" }
	/** One fact, list or thing of the form. `guided`: the facts of one thing are asked one after the other. */
	| { readonly at: "fact-form"; readonly path: FormPath; readonly guided?: true }
	| { readonly at: "doubt"; readonly index: number }
	/** Lines of the page that were not understood. */
	| { readonly at: "unread" }
	/** A part is not kept yet. `leaving`: the person wants to leave the walk. */
	| { readonly at: "leave-form"; readonly leaving: boolean };

/** A place that shows nothing without a form. */
export function needsForm({ at }: { readonly at: string }): boolean {
	return ["part-form", "fact-form", "doubt", "unread", "leave-form"].includes(at);
}

/** Text that was pasted, as it came: it is cleaned line by line when it is read. */
export interface PastedText {
	readonly text: string;
	/** Lines with anything on them. */
	readonly lines: number;
	/** The last line was typed, or came as if it were: one Enter more may still be part of the page. */
	readonly isTyped: boolean;
}

/** A page has some ten thousand letters; more than this is no page (own convention). In characters (UTF-16 units). */
export const mostPasted = 2_000_000;
