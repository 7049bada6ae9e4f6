import { type Measure, wrapText } from "../sheet/wrap-text.ts";
import type { Block } from "./screen.ts";

/** Blocks as wrapped lines; a heading has an empty line in front, unless it comes first. */
export function blockLines(blocks: readonly Block[], columns: number, measure?: Measure): string[] {
	const lines = blocks.flatMap((block) => linesOf(block, columns, measure));
	return lines[0] === "" ? lines.slice(1) : lines;
}

function linesOf(block: Block, columns: number, measure?: Measure): string[] {
	const options = measure ? { measure, breakWords: true } : {};
	switch (block.kind) {
		case "heading":
			return ["", ...wrapText(block.text, columns, options)];
		case "text":
			return wrapText(block.text, columns, options);
		case "list":
			return block.items.flatMap((item) => wrapText(`- ${item}`, columns, { ...options, indent: "  " }));
		case "picture":
			// A picture that is wider than the window would only confuse; its recipe says the same in words.
			return block.lines.every((line) => line.length <= columns) ? [...block.lines] : [];
		case "pairs":
			return block.pairs.flatMap(([label, value]) =>
				wrapText(`${label}: ${value}`, columns, { ...options, indent: "  " }),
			);
	}
}
