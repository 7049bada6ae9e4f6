import type { AnswersFile } from "../parts/answers-file.ts";
import { answersTemplate } from "../parts/answers-in-html.ts";
import { cleanText } from "../parts/clean-text.ts";
import { htmlPage } from "./html-page.ts";
import { htmlStyle } from "./html-style.ts";
import { markupSafe } from "./markup-safe.ts";
import type { Sheet } from "./sheet.ts";
import { type DocumentBlock, sheetDocument } from "./sheet-document.ts";

/**
 * The sheet as one HTML file: no script, no address outside, and a content policy that forbids both. It reads on a phone,
 * by light and by dark, and prints each page of the sheet from a new sheet of paper on.
 *
 * @param kept the walk it was made from, so that the file can be opened as a walk again; null leaves it out
 */
export function htmlSheet(sheet: Sheet, kept: AnswersFile | null): string {
	return htmlPage(
		sheet.title,
		`\n${htmlStyle}`,
		["<main>", ...mainLines(sheet), "</main>", ...(kept ? [answersTemplate(kept)] : [])],
		['<meta name="color-scheme" content="light dark">'],
	);
}

/** What is open at a place in the document, from the outside in, and the headings so far. */
interface Place {
	readonly level: number;
	readonly openPage: boolean;
	readonly openList: boolean;
	readonly headings: number;
}

function mainLines(sheet: Sheet): readonly string[] {
	const german = germanTexts(sheet);
	const lines: string[] = [`<h1>${markupSafe(sheet.title)}</h1>`];
	let place: Place = { level: 1, openPage: false, openList: false, headings: 0 };
	for (const block of sheetDocument(sheet)) {
		if (place.openList && block.kind !== "item") lines.push("</ul>");
		const inList = block.kind === "item";
		if (inList && !place.openList) lines.push("<ul>");
		if (block.kind === "page") {
			if (place.openPage) lines.push("</section>");
			lines.push(`<section class="page ${block.page}">`);
		}
		const headings = place.headings + (isHeading(block) ? 1 : 0);
		const level = levelOf(block, place);
		lines.push(blockHtml(block, level, headings, german));
		place = { level, openPage: place.openPage || block.kind === "page", openList: inList, headings };
	}
	if (place.openList) lines.push("</ul>");
	if (place.openPage) lines.push("</section>");
	return lines;
}

/** Messages to a shop are in two languages; whoever hears the page read should hear each in its own. */
function germanTexts({ askTheShop }: Sheet): ReadonlySet<string> {
	const english = new Set(askTheShop.flatMap((message) => message.english.split("\n")));
	const german = askTheShop.flatMap((message) => message.german.split("\n"));
	return new Set(german.filter((text) => !english.has(text)));
}

function isHeading({ kind }: DocumentBlock): boolean {
	return kind === "page" || kind === "section" || kind === "subsection";
}

/** The level of a heading, or of the heading that a block stands under: never more than one below the one before. */
function levelOf({ kind }: DocumentBlock, { level, openPage }: Place): number {
	switch (kind) {
		case "page":
			return 2;
		case "section":
			return openPage ? 3 : 2;
		case "subsection":
			return Math.min(level + 1, openPage ? 4 : 3);
		default:
			return level;
	}
}

function blockHtml(block: DocumentBlock, level: number, heading: number, german: ReadonlySet<string>): string {
	switch (block.kind) {
		case "page":
		case "section":
		case "subsection":
			return `<h${level} id="heading-${heading}">${markupSafe(block.text)}</h${level}>`;
		case "paragraph":
			return `<p${german.has(block.text) ? ' lang="de"' : ""}>${markupSafe(block.text)}</p>`;
		case "item":
			return itemHtml(block);
		case "picture":
			return scrolling(
				"figure",
				heading,
				block.svg
					? svgAtTheLeft(block.svg)
					: `<pre>${block.lines.map((one) => escaped(cleanText(one))).join("\n")}</pre>`,
			);
		case "table":
			return scrolling("div", heading, tableHtml(block.heads, block.rows));
	}
}

/** A box is one that can be ticked on a phone; its words belong to it, so that they can be tapped too. */
function itemHtml({ text, label, why, box }: DocumentBlock & { readonly kind: "item" }): string {
	const words = [
		label === undefined ? "" : `<b>${markupSafe(label)}:</b> `,
		markupSafe(text),
		why === undefined ? "" : ` <span class="why">${markupSafe(why)}</span>`,
	].join("");
	if (box) return `<li class="box"><label><input type="checkbox"><span>${words}</span></label></li>`;
	return label === undefined ? `<li>${words}</li>` : `<li class="labelled">${words}</li>`;
}

function tableHtml(heads: readonly string[], rows: readonly (readonly string[])[]): string {
	return [
		"<table>",
		`<thead><tr>${heads.map((head) => `<th scope="col">${markupSafe(head)}</th>`).join("")}</tr></thead>`,
		"<tbody>",
		...rows.map(([first = "", ...others]) => {
			const cells = others.map((cell) => `<td>${markupSafe(cell)}</td>`).join("");
			return `<tr><th scope="row">${markupSafe(first)}</th>${cells}</tr>`;
		}),
		"</tbody>",
		"</table>",
	].join("\n");
}

/** What may be wider than a phone scrolls by itself, by keys too, so that the page never has to. */
function scrolling(element: "figure" | "div", heading: number, inside: string): string {
	const named = heading > 0 ? `aria-labelledby="heading-${heading}"` : 'aria-label="Picture"';
	return `<${element} class="wide" role="group" tabindex="0" ${named}>\n${inside}\n</${element}>`;
}

/** Where there is more room than it fills, a picture stands at the left, as the text does. */
function svgAtTheLeft(svg: string): string {
	return svg.replace(/^<svg /, '<svg preserveAspectRatio="xMinYMin" ');
}

function escaped(text: string): string {
	return text.replace(/[&<>"']/g, (sign) => `&#${sign.charCodeAt(0)};`);
}
