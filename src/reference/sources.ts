import sources from "../../data/sources.json" with { type: "json" };

/** The name of one entry of the bibliography, `data/sources.json`. A name that is not there does not compile. */
export type SourceId = keyof typeof sources;

/** What a source is, from the firmest ground to the softest. */
export type SourceKind = "standard" | "handbook" | "application note" | "paper" | "common practice" | "from memory";

/**
 * Where a fact or a rule was read. A field that is absent is unknown, never "none".
 * `note` says when the text was read second hand, or only in part.
 */
export type Source = {
	readonly id: SourceId;
	readonly title: string;
	/** The document's number, such as "336521". */
	readonly number?: string;
	readonly revision?: string;
	/** Sections, tables, figures and pages used. */
	readonly section?: string;
	readonly year?: number;
	readonly kind: SourceKind;
	readonly publisher?: string;
	readonly note?: string;
};

// The compiler reads every `kind` in a JSON file as any string; test/reference/sources.test.ts holds them to SourceKind.
const byId = sources as Record<SourceId, Omit<Source, "id">>;

/** The bibliography entry of this name. */
export function sourceById(id: SourceId): Source {
	return { id, ...byId[id] };
}

/** The whole bibliography, in the order of the file. */
export function allSources(): readonly Source[] {
	return (Object.keys(byId) as SourceId[]).map(sourceById);
}
