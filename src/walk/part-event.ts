import type { FormPath } from "../parts/form-fields.ts";
import type { PartKind } from "../parts/part-kinds.ts";
import type { PastedKind } from "./own-places.ts";

/** What a person can do with parts of their own. */
export type PartEvent =
	| { readonly type: "own-parts" }
	/** A form for a new part; without a kind it is asked first. */
	| { readonly type: "new-part"; readonly kind?: PartKind }
	| { readonly type: "paste-part"; readonly what: PastedKind }
	/** Text that came at once, with its line ends. */
	| { readonly type: "paste"; readonly text: string }
	/** What was pasted is all: it is read. */
	| { readonly type: "read" }
	| { readonly type: "clear-paste" }
	| { readonly type: "own-part"; readonly kind: PartKind; readonly id: string; readonly page?: "facts" }
	| { readonly type: "edit-part" }
	| { readonly type: "copy-part" }
	| { readonly type: "remove-part" }
	| { readonly type: "bring-back" }
	| { readonly type: "add-offer" }
	/** To the form being filled in. */
	| { readonly type: "part-form"; readonly page?: "all" }
	| { readonly type: "fact-form"; readonly path: FormPath }
	/** `like`: in all but its name as the last one. */
	| { readonly type: "add-entry"; readonly like?: boolean }
	| { readonly type: "remove-entry" }
	| { readonly type: "doubt"; readonly index: number }
	| { readonly type: "unread" }
	| { readonly type: "keep" }
	| { readonly type: "drop-form" };
