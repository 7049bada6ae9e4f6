import { type DocumentBlock, sheetDocument } from "../sheet/sheet-document.ts";
import { plainScreen } from "./plain-screen.ts";
import { type Block, heading, list, type Screen, text } from "./screen.ts";
import type { WalkView } from "./walk-view.ts";

/** The whole sheet, to read here: for who has no place to write it to, or listens to it. */
export function sheetPageScreen(view: WalkView): Screen {
	const sheet = view.sheet();
	return plainScreen(view, {
		id: "sheet-page",
		place: "Before you pay",
		title: sheet.title,
		body: inLists(sheetDocument(sheet).flatMap(inWordsToo)),
		choices: [{ label: "Back to the ways to write it", event: { type: "sheet" } }],
		enter: { words: "back", event: { type: "back" } },
	});
}

/** What is drawn is left out line by line, and then it must be said where the words for it stand. */
function inWordsToo(block: DocumentBlock): readonly DocumentBlock[] {
	return block.kind === "picture"
		? [block, { kind: "paragraph", text: "In words this picture stands in the annex." }]
		: [block];
}

/** Blocks of the document as those of a screen; items that follow each other make one list. */
function inLists(document: readonly DocumentBlock[]): readonly Block[] {
	const blocks: Block[] = [];
	for (const block of document.map(screenBlock)) {
		const last = blocks.at(-1);
		if (block.kind === "list" && last?.kind === "list") blocks.splice(-1, 1, list([...last.items, ...block.items]));
		else blocks.push(block);
	}
	return blocks;
}

function screenBlock(block: DocumentBlock): Block {
	switch (block.kind) {
		case "page":
			return heading(block.text.toUpperCase());
		case "section":
		case "subsection":
			return heading(block.text);
		case "paragraph":
			return text(block.text);
		case "picture":
			// The annex says it in words.
			return { kind: "picture", lines: block.lines, isTold: true };
		case "item":
			return list([
				`${block.box ? "[ ] " : ""}${block.label ? `${block.label}: ` : ""}${block.text}${block.why ? ` ${block.why}` : ""}`,
			]);
		case "table":
			return list(block.rows.map(([first = "", ...others]) => `${first}: ${others.filter(Boolean).join("; ")}`));
	}
}
