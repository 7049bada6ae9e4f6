/** How many cells of a terminal a text takes; by default one a character. */
export type Measure = (text: string) => number;

export interface WrapOptions {
	/** In front of every line after the first. */
	readonly indent?: string;
	readonly measure?: Measure;
	/** Breaks words that are wider than a line; else such a word stands alone. */
	readonly breakWords?: boolean;
}

/**
 * Breaks text at spaces so that no line is wider than `width`. Spaces in front are kept, and so are line breaks.
 */
export function wrapText(text: string, width: number, options: WrapOptions = {}): string[] {
	const { indent = "", measure = (words) => words.length, breakWords = false } = options;
	return text.split("\n").flatMap((paragraph) => {
		const lead = /^ */.exec(paragraph)?.[0] ?? "";
		const words = paragraph.slice(lead.length).split(" ");
		const room = Math.max(1, width - Math.max(indent.length, lead.length));
		const pieces = breakWords ? words.flatMap((word) => brokenWord(word, room, measure)) : words;
		const lines: string[] = [];
		let line = lead;
		for (const piece of pieces) {
			const isBlank = line.trim() === "";
			const longer = isBlank ? line + piece : `${line} ${piece}`;
			if (!isBlank && measure(longer) > width) {
				lines.push(line);
				line = indent + piece;
			} else line = longer;
		}
		return [...lines, line];
	});
}

function brokenWord(word: string, room: number, measure: Measure): string[] {
	if (measure(word) <= room) return [word];
	const pieces: string[] = [];
	let piece = "";
	for (const { segment } of new Intl.Segmenter("en", { granularity: "grapheme" }).segment(word)) {
		if (piece !== "" && measure(piece + segment) > room) {
			pieces.push(piece);
			piece = "";
		}
		piece += segment;
	}
	return [...pieces, piece];
}
