import type { AnswersFile } from "./answers-file.ts";

const opening = '<template id="boardwalk-answers">';
const closing = "</template>";

/**
 * The answers as an element of a page that no browser shows, so that the page can be opened as a walk again.
 *
 * It holds JSON of plain ASCII: what HTML gives a meaning, and every letter beyond ASCII, is written as JSON's own \u
 * escape. So nothing in it can end the element or hide, and a browser that saves the page anew leaves it as it is.
 */
export function answersTemplate(file: AnswersFile): string {
	const json = JSON.stringify(file).replace(/[^ -~]|[&<>']/g, asEscape);
	return `${opening}${json}${closing}`;
}

function asEscape(sign: string): string {
	return `\\u${sign.charCodeAt(0).toString(16).padStart(4, "0")}`;
}

/**
 * The JSON text that `answersTemplate` put into a page; null where there is none, more than one, or one of another form.
 * What it says is not checked: the schema does that.
 */
export function answersInHtml(html: string): string | null {
	const at = html.indexOf(opening);
	if (at < 0) return null;
	const begin = at + opening.length;
	const end = html.indexOf(closing, begin);
	if (end < 0 || html.indexOf(opening, begin) >= 0) return null;
	const json = html.slice(begin, end);
	return /[&<>]/.test(json) ? null : json;
}
