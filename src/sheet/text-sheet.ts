import type { Sheet } from "./sheet.ts";
import { type DocumentBlock, sheetDocument } from "./sheet-document.ts";
import { wrapText } from "./wrap-text.ts";

/** The sheet as plain text, ASCII apart from names, at most `width` columns wide. Ends with a line feed. */
export function textSheet(sheet: Sheet, width = 78): string {
	const lines = [sheet.title.toUpperCase(), "", ...sheetDocument(sheet).flatMap((block) => blockLines(block, width))];
	return `${lines
		.join("\n")
		.replace(/\n{3,}/g, "\n\n")
		.trim()}\n`;
}

const inWords = "The annex says in words what this picture shows.";

/** A line that begins like an item, as a stranger's name of a board may, stands one in, so that it looks like none. */
function noItems(lines: readonly string[]): string[] {
	return lines.map((line) => (/^(?:- |\[ \] )/.test(line) ? ` ${line}` : line));
}

function blockLines(block: DocumentBlock, width: number): string[] {
	switch (block.kind) {
		case "page":
			return ["", "=".repeat(Math.min(width, block.text.length)), block.text.toUpperCase()];
		case "section":
			return ["", block.text.toUpperCase(), ""];
		case "subsection":
			return ["", ...noItems(wrapText(block.text, width))];
		case "picture":
			// A picture that is wider than the page would only confuse; the annex says the same in words.
			return block.lines.every((line) => line.length <= width) ? ["", ...block.lines, ""] : [inWords];
		case "paragraph":
			return noItems(wrapText(block.text, width));
		case "item": {
			const mark = block.box ? "[ ] " : "- ";
			return wrapText(
				`${mark}${block.label ? `${block.label}: ` : ""}${block.text}${block.why ? ` ${block.why}` : ""}`,
				width,
				{
					indent: " ".repeat(mark.length),
				},
			);
		}
		case "table":
			return block.rows.flatMap(([first = "", ...others]) =>
				wrapText(`- ${first}: ${others.filter(Boolean).join("; ")}`, width, { indent: "  " }),
			);
	}
}
