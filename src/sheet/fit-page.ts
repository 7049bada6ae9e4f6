import type { DocumentBlock } from "./document-block.ts";

/**
 * Letters that stand in a line of the printed page, and lines on it: 11 pt on the smaller of A4's width and Letter's
 * height, with 12 mm of margin. Fonts differ, so both are on the safe side; the first page has the title too (measured in a browser; own convention).
 */
const lettersInLine = 88;
const linesOnPage = { shop: 57, bench: 63 } as const;
/** Lines that a heading takes with the space around it. */
const headingLines = 1.6;

/** The first way to tell a page that goes onto one sheet of paper; the last where none does. */
export function fittingBlocks(
	page: keyof typeof linesOnPage,
	ways: readonly (() => readonly DocumentBlock[])[],
): readonly DocumentBlock[] {
	let told: readonly DocumentBlock[] = [];
	for (const way of ways) {
		told = way();
		if (linesOf(told) <= linesOnPage[page]) break;
	}
	return told;
}

/** How many lines of a printed page these blocks take, by their letters. */
export function linesOf(blocks: readonly DocumentBlock[]): number {
	return blocks.reduce((sum, block) => sum + blockLines(block), 0);
}

function blockLines(block: DocumentBlock): number {
	switch (block.kind) {
		case "page":
		case "section":
		case "subsection":
			return headingLines;
		case "paragraph":
			return wrapped(block.text.length);
		case "item":
			return wrapped(4 + (block.label?.length ?? -2) + 2 + block.text.length + (block.why ? block.why.length + 1 : 0));
		case "picture":
			return Math.min(mostPictureLines, block.lines.length * pictureLine);
		case "table":
			return block.rows.length + 1;
	}
}

/** Pictures are set smaller than text, and a high one is made smaller still. */
const pictureLine = 1.1;
const mostPictureLines = 21;

function wrapped(letters: number): number {
	return Math.max(1, Math.ceil(letters / lettersInLine));
}
