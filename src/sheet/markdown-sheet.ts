import type { Sheet } from "./sheet.ts";
import { type DocumentBlock, sheetDocument } from "./sheet-document.ts";

/** The sheet as Markdown (CommonMark), with task boxes. No raw HTML, no links; names cannot break out of their line. */
export function markdownSheet(sheet: Sheet): string {
	const lines = [`# ${escaped(sheet.title)}`, "", ...sheetDocument(sheet).flatMap(blockLines)];
	return `${lines
		.join("\n")
		.replace(/\n{3,}/g, "\n\n")
		.trim()}\n`;
}

function blockLines(block: DocumentBlock): string[] {
	switch (block.kind) {
		case "page":
			return ["", `## ${escaped(block.text)}`, ""];
		case "section":
			return ["", `### ${escaped(block.text)}`, ""];
		case "subsection":
			return ["", `#### ${escaped(block.text)}`, ""];
		case "picture":
			return ["", ...fenced(block.lines), ""];
		case "paragraph":
			return [escaped(block.text), ""];
		case "item":
			return [
				`- ${block.box ? "[ ] " : ""}${block.label ? `**${escaped(block.label)}**: ` : ""}${escaped(block.text)}${block.why ? ` ${escaped(block.why)}` : ""}`,
			];
		case "table":
			return ["", tableLine(block.heads), tableLine(block.heads.map(() => "---")), ...block.rows.map(tableLine), ""];
	}
}

/** Cells are escaped apart from the line of dashes below the heads; a "|" in one cannot begin another. */
function tableLine(cells: readonly string[]): string {
	return `| ${cells.map((cell) => (cell === "---" ? cell : escaped(cell))).join(" | ")} |`;
}

/** Lines as they are: a fence longer than any run of tildes in them (CommonMark 0.31.2, section 4.5). */
function fenced(lines: readonly string[]): readonly string[] {
	const longest = Math.max(0, ...lines.flatMap((line) => line.match(/~+/g) ?? []).map((run) => run.length));
	const fence = "~".repeat(Math.max(3, longest + 1));
	return [fence, ...lines, fence];
}

/**
 * Text in which no character has a meaning for Markdown: special ASCII characters are escaped with a backslash
 * (CommonMark 0.31.2, section 2.4 "Backslash escapes"), line breaks become spaces, and none stand at the ends.
 */
export function escaped(text: string): string {
	return (
		text
			.replace(/\s*[\r\n]\s*/g, " ")
			.trim()
			.replace(/[\\`*_{}[\]<>#|~&]/g, "\\$&")
			// Public sites make links of bare addresses (GitHub Flavored Markdown 0.29-gfm, section 6.9).
			.replace(/:(?=\/\/)|@|(?<=www)\./gi, "\\$&")
			.replace(/^[-+=]/, "\\$&")
			.replace(/^(\d+)([.)])/, "$1\\$2")
	);
}
