/**
 * Breaks text at spaces so that no line is wider than `width`; a single longer word stands alone. Lines after the first
 * are indented; spaces in front are kept, and so are line breaks.
 */
export function wrapText(text: string, width: number, indent = ""): string[] {
	return text.split("\n").flatMap((paragraph) => {
		const lead = /^ */.exec(paragraph)?.[0] ?? "";
		const lines: string[] = [];
		let line = lead;
		for (const word of paragraph.slice(lead.length).split(" ")) {
			const isBlank = line.trim() === "";
			const longer = isBlank ? line + word : `${line} ${word}`;
			if (!isBlank && longer.length > width) {
				lines.push(line);
				line = indent + word;
			} else line = longer;
		}
		return [...lines, line];
	});
}
