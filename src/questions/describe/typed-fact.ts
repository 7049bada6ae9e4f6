import type { AnyPart } from "../../parts/part-kinds.ts";

/** What is being typed in: a part whose facts come one by one. */
export type PartDraft = Readonly<Record<string, unknown>>;

export type TypedReading = { readonly value: unknown } | { readonly problem: string };

/** One fact of a part that is typed in from a page. "Not on the page" is always allowed and leaves the key absent. */
export interface TypedFact {
	/** Path of the fact in the part's definition; its title and where to find it come from there. */
	readonly path: string;
	readonly ask: string;
	/** Values to pick from, with the words for them; else the fact is typed. */
	readonly choices?: readonly { readonly value: unknown; readonly label: string }[];
	/** For a typed fact: how it is read, and what was expected if it cannot be. */
	readonly read?: (text: string) => TypedReading;
	/** Puts the value into the draft; by default at the path. */
	readonly put?: (draft: PartDraft, value: unknown) => PartDraft;
	/** Whether it is asked, by what was told before it; only for the last facts of a list, so that none changes its place. */
	readonly when?: (draft: PartDraft) => boolean;
	/** An example of what to type. */
	readonly example?: string;
}

/** The draft with a value at a dotted path. */
export function putAt(draft: PartDraft, path: string, value: unknown): PartDraft {
	const [key = "", ...rest] = path.split(".");
	if (rest.length === 0) return { ...draft, [key]: value };
	return { ...draft, [key]: putAt((draft[key] ?? {}) as PartDraft, rest.join("."), value) };
}

/** A typed part still lacks its id and perhaps its name; both are made here, the id one that nobody has. */
export function finishDraft(draft: PartDraft, noun: string, takenIds: ReadonlySet<string>): AnyPart {
	const name = typeof draft["name"] === "string" ? draft["name"] : `my ${noun}`;
	const stem =
		name
			.normalize("NFKD")
			.toLowerCase()
			.replace(/[^a-z0-9]+/g, "-")
			.replace(/^-+|-+$/g, "")
			.slice(0, 60) || noun.replace(/ /g, "-");
	let id = stem;
	for (let suffix = 2; takenIds.has(id); suffix++) id = `${stem}-${suffix}`;
	return { ...draft, id, name } as AnyPart;
}
