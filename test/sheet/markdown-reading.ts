/**
 * What Markdown text says, by the rules of CommonMark 0.31.2: a backslash before ASCII punctuation gives that character
 * and takes its meaning away; before anything else it is a backslash (section 2.4).
 */
export function unescaped(markdown: string): string {
	return markdown.replace(/\\([!-/:-@[-`{-~])/g, "$1");
}

/**
 * What in one line's text would have a meaning for Markdown. Emphasis, code, links, raw HTML, entities and strikethrough
 * by single characters (sections 2.5 and 6), block starts at the front (sections 4 and 5), and stray backslashes.
 */
export function meaningsIn(line: string): readonly string[] {
	const bare = line.replace(/\\[!-/:-@[-`{-~]/g, "");
	return [
		...(/\\/.test(bare) ? ["a backslash that shows"] : []),
		...(/[*_`~]/.test(bare) ? ["emphasis or code"] : []),
		...(/[[\]]/.test(bare) ? ["a link"] : []),
		...(/[<>]/.test(bare) ? ["raw HTML or a quotation"] : []),
		...(/&/.test(bare) ? ["an entity"] : []),
		...(/\|/.test(bare) ? ["a table"] : []),
		...(/[\r\n]/.test(bare) ? ["a line break"] : []),
		...(/^\s/.test(line) ? ["indented code"] : []),
		...(/^#|#+\s*$/.test(bare) ? ["a heading"] : []),
		...(/^(?:[-+]|\d{1,9}[.)])(?:\s|$)/.test(line) ? ["a list"] : []),
		...(/^(?:=+|-+)\s*$/.test(line) ? ["a heading's underline"] : []),
	];
}
