/** The few signs that are drawn; each takes one cell and has an ASCII double that says the same. */
export interface Signs {
	/** In front of the marked line. */
	readonly mark: string;
	readonly more: string;
}

/** U+276F is neutral in width (Unicode Standard Annex 11), so that it takes one cell everywhere. */
export const unicodeSigns: Signs = { mark: "❯", more: "..." };
export const asciiSigns: Signs = { mark: ">", more: "..." };
