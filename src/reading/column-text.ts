import type { TextLine } from "./text-lines.ts";

/** "Label ....... value" */
const leaders = /^(\s*\S.{0,58}?)\s?\.{3,}\s?(?=\S)(.+)$/;
/** "LABEL      value": words, two spaces or more, words. */
const gap = /^(\s?[^\s|].{0,38}?[^\s:])\s{2,}(?=\S)(.+)$/;
/** How far a line must be set in to go on with the value of the one before; own convention. */
const setIn = /^\s{6,}(?=\S)/;

/**
 * Lines with tabs where a text made its columns by dots, by spaces or by semicolons, so that one reader serves them all.
 * A text is taken so only where most of its lines are written that way.
 */
export function columnsAsTabs(lines: readonly TextLine[]): readonly TextLine[] {
	const filled = lines.filter(({ text }) => text.trim() !== "");
	if (filled.length < 5 || filled.some(({ text }) => text.includes("\t"))) return lines;
	const share = (pattern: RegExp) =>
		filled.filter(({ text }) => pattern.test(text) || setIn.test(text)).length / filled.length;
	if (filled.filter(({ text }) => leaders.test(text)).length >= 4 && share(leaders) > 0.6) return cut(lines, leaders);
	const rows = filled.filter(({ text }) => /^[^;]{2,40};/.test(text));
	if (rows.length / filled.length > 0.8) return lines.map((line) => ({ ...line, text: withoutSemicolons(line.text) }));
	const isSpaced = (text: string) => gap.test(text) && !/^\s*[-*•]/.test(text);
	if (
		filled.filter(({ text }) => isSpaced(text)).length >= 4 &&
		filled.filter(({ text }) => isSpaced(text) || setIn.test(text)).length / filled.length > 0.5
	)
		return cut(lines, gap);
	return lines;
}

function cut(lines: readonly TextLine[], pattern: RegExp): readonly TextLine[] {
	return lines.map((line) => {
		const [, label, value] = pattern.exec(line.text) ?? [];
		if (label !== undefined && value !== undefined) return { ...line, text: `${label.trim()}\t${value.trim()}` };
		return setIn.test(line.text) ? { ...line, text: `\t${line.text.trim()}` } : line;
	});
}

/** "width;244;mm" is a label, its value and its unit. */
function withoutSemicolons(text: string): string {
	const [label = "", ...rest] = text.split(";").map((cell) => cell.trim().replace(/^"(.*)"$/, "$1"));
	const value = rest.filter((cell) => cell !== "").join(" ");
	return value === "" ? label : `${label}\t${value}`;
}
