import { readHtml } from "./html-reading.ts";
import { unescaped } from "./markdown-reading.ts";

/** What a form of the sheet says, without its marks and its pictures. */
export interface SaidInForm {
	/** Words and figures in their order, in capitals: headings are written so in text. */
	readonly words: readonly string[];
	/** Boxes to tick. */
	readonly boxes: number;
}

/** A figure with its sign and digits behind the point is one word; a hyphen parts words. */
export function wordsIn(text: string): readonly string[] {
	return text.toUpperCase().match(/\p{N}+(?:[.,]\p{N}+)*|[\p{L}\p{M}\p{N}]+/gu) ?? [];
}

/** Figures alone. */
export function figuresIn(text: string): readonly string[] {
	return wordsIn(text).filter((word) => /^\p{N}/u.test(word));
}

/** @param pictures the pictures that may stand in it, line by line */
export function saidInText(text: string, pictures: readonly (readonly string[])[]): SaidInForm {
	const without = pictures.reduce((rest, lines) => rest.replace(`\n${lines.join("\n")}\n`, "\n\n"), text);
	return { words: wordsIn(without.replace(/^=+$/gm, "")), boxes: countOf(/^\[ \] /gm, text) };
}

/** Fenced blocks are pictures; the first row of a table and the line below it are its heads. */
export function saidInMarkdown(markdown: string): SaidInForm {
	const without = markdown
		.replace(/^(~{3,})\n[\s\S]*?\n\1$/gm, "")
		.replace(/^\|.*\|\n\|[ |-]+\|$/gm, "")
		.replace(/^#+ /gm, "");
	return { words: wordsIn(unescaped(without)), boxes: countOf(/^- \[ \] /gm, markdown) };
}

export function saidInHtml(html: string): SaidInForm {
	const body = html
		.replace(/^[\s\S]*<main>|<\/main>[\s\S]*$/g, "")
		.replace(/<svg[\s\S]*?<\/svg>|<pre>[\s\S]*?<\/pre>|<thead>[\s\S]*?<\/thead>/g, "");
	return { words: wordsIn(readHtml(body).texts.join(" ")), boxes: countOf(/<input type="checkbox">/g, html) };
}

/** Texts and figures of a JSON value with the keys that lead there; numbers of lists are no keys. */
export function leavesOf(value: unknown, path = ""): readonly { readonly path: string; readonly leaf: unknown }[] {
	if (Array.isArray(value)) return value.flatMap((one) => leavesOf(one, path));
	if (typeof value !== "object" || value === null) return [{ path, leaf: value }];
	return Object.entries(value).flatMap(([key, one]) => leavesOf(one, path === "" ? key : `${path}.${key}`));
}

function countOf(mark: RegExp, text: string): number {
	return text.match(mark)?.length ?? 0;
}
