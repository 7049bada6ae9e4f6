import type { Arrangement } from "../../src/screens/arrange.ts";

/** A row of a frame: its words, and how many cells it may take. */
export interface FrameRow {
	readonly words: string;
	readonly columns: number;
	readonly isMarked: boolean;
	/** A heading in a list; it stands at the edge. */
	readonly isHeading: boolean;
}

/**
 * The rows of an arrangement's main column, top to bottom, as they are to be drawn (test/ui holds the drawing to it).
 * Lines of a list stand two cells to the right of headings in it.
 */
export function frameRows(arranged: Arrangement, footerColumns: number): readonly FrameRow[] {
	const { place, title, message, text, between, choices, field, footer, mainColumns, air, filler } = arranged;
	const row = (words: string, columns = mainColumns, isMarked = false, isHeading = false): FrameRow => ({
		words,
		columns,
		isMarked,
		isHeading,
	});
	const empty = (count: number) => Array.from({ length: Math.max(0, count) }, () => row(""));
	const main = [
		row(place),
		...title.map((line) => row(line)),
		...message.map((line) => row(line)),
		...empty(air),
		...text.lines.map((line) => row(line)),
		...(between === null ? [] : [row(between)]),
		...(field ? [row(field.prompt + field.text)] : []),
		...choices.lines.flatMap(({ lines, headingLines, marked }) =>
			lines.map((line, index) => row(line, mainColumns - 2, marked && index === headingLines, index < headingLines)),
		),
	];
	return [
		...main,
		...empty((arranged.side?.length ?? 0) - main.length),
		...empty(filler + air),
		...footer.map((line) => row(line, footerColumns)),
	];
}
