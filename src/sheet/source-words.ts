import type { Source } from "../reference/sources.ts";

/** A source as one line of a bibliography. */
export function sourceWords(source: Source): string {
	const parts = [
		source.title,
		source.number,
		source.revision && `rev. ${source.revision}`,
		source.section,
		source.year && String(source.year),
	].filter((part) => part !== undefined && part !== "");
	return `${parts.join(", ")} (${source.kind}${source.note ? `; ${source.note}` : ""})`;
}

/** A source in a few words, behind a sentence. */
export function groundWords({ kind, title }: Source): string {
	return kind === "common practice" ? "common practice, no source" : kind === "from memory" ? "from memory" : title;
}
