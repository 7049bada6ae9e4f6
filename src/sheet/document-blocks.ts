import type { DocumentBlock } from "./document-block.ts";

type Item = Extract<DocumentBlock, { kind: "item" }>;

export const page = (at: Extract<DocumentBlock, { kind: "page" }>["page"], text: string): DocumentBlock => ({
	kind: "page",
	page: at,
	text,
});
const section = (text: string): DocumentBlock => ({ kind: "section", text });
export const paragraph = (text: string): DocumentBlock => ({ kind: "paragraph", text });
export const item = (text: string, more: Partial<Pick<Item, "label" | "why" | "box">> = {}): DocumentBlock => ({
	kind: "item",
	text,
	...more,
});

/** A section with its blocks; nothing at all where there are none. */
export function sectionOf(text: string, blocks: readonly DocumentBlock[]): readonly DocumentBlock[] {
	return blocks.length > 0 ? [section(text), ...blocks] : [];
}

/** Sentences under one label; nothing where there are none. */
export function labelled(label: string, texts: readonly string[]): readonly DocumentBlock[] {
	return texts.length > 0 ? [item(texts.join(" "), { label })] : [];
}
