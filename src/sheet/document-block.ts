/** Which page a part of the sheet belongs to: two to take along, and what is looked up. */
export type SheetPage = "shop" | "bench" | "annex";

/** The sheet as a document: sections of paragraphs and items, from which text, Markdown and HTML are written alike. */
export type DocumentBlock =
	/** Begins a page; all blocks up to the next one belong to it. What stands before the first is the sheet's head. */
	| { readonly kind: "page"; readonly page: SheetPage; readonly text: string }
	| { readonly kind: "section"; readonly text: string }
	| { readonly kind: "subsection"; readonly text: string }
	| { readonly kind: "paragraph"; readonly text: string }
	/** Lines to be kept as they are, in letters of one width; the same as an SVG that says itself in words. */
	| { readonly kind: "picture"; readonly lines: readonly string[]; readonly svg?: string }
	/** `box`: an empty box to tick. `label` stands out in front, `why` stands back behind. */
	| {
			readonly kind: "item";
			readonly text: string;
			readonly label?: string;
			readonly why?: string;
			readonly box?: boolean;
	  }
	/** Rows as wide as their heads. */
	| { readonly kind: "table"; readonly heads: readonly string[]; readonly rows: readonly (readonly string[])[] };
