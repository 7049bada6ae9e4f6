import { type Measure, wrapText } from "../sheet/wrap-text.ts";
import { blockLines } from "./block-lines.ts";
import { type Face, inField, shownChoices } from "./face.ts";
import { keymap } from "./keys.ts";
import type { Block, Choice, Screen } from "./screen.ts";
import { graphemesOf } from "./text-field.ts";

export interface ScreenSize {
	readonly columns: number;
	readonly rows: number;
}

/** A line of a list as it is drawn: wrapped, and whether it is the marked one. */
export interface DrawnChoice {
	readonly lines: readonly string[];
	/** How many of the lines are the label; the others explain it. */
	readonly labelLines: number;
	readonly marked: boolean;
}

/** A window of lines that may be part of something longer. */
export interface Window<Line> {
	readonly lines: readonly Line[];
	readonly above: boolean;
	readonly below: boolean;
}

/**
 * A screen laid out for a terminal of a certain size: what stands where, wrapped and cut to fit. Never more than
 * rows - 1 lines high, since a frame as high as the terminal makes it scroll.
 */
export interface Arrangement {
	readonly place: string;
	readonly title: readonly string[];
	readonly message: readonly string[];
	readonly text: Window<string>;
	readonly choices: Window<DrawnChoice>;
	/** The line being typed, as far as it fits, or null. */
	readonly field: { readonly prompt: string; readonly text: string; readonly cursorColumn: number } | null;
	/** Beside everything else on a wide terminal; else null, and its first words stand above the text. */
	readonly side: readonly string[] | null;
	readonly mainColumns: number;
	readonly sideColumns: number;
	readonly footer: readonly string[];
	/** Where the real cursor belongs. */
	readonly cursor: { readonly x: number; readonly y: number };
	/** For page keys. */
	readonly lastScroll: number;
	/** Empty rows above the footer, so that it always stands at the bottom. */
	readonly filler: number;
}

/** From this width on, boards left stand beside the question. */
const sideFrom = 76;
const sideColumns = 26;
const gap = 2;
/** Narrower or lower than this nothing useful can be shown. */
export const smallest: ScreenSize = { columns: 40, rows: 12 };
const markColumns = 2;

/** Lays a screen out. Pure; `measure` tells how many cells a text takes. */
export function arrange(screen: Screen, face: Face, size: ScreenSize, measure: Measure): Arrangement {
	const hasSide = screen.side.length > 0 && !face.helpOpen;
	const beside = hasSide && size.columns >= sideFrom;
	const width = beside ? size.columns - sideColumns - gap : size.columns;
	const wrap = (text: string, indent = "") => wrapText(text, width, { indent, measure, breakWords: true });
	const title = wrap(screen.title);
	const message = [screen.notice, screen.problem].flatMap((words) => (words ? wrap(words) : []));
	const footer = wrapText(footerWords(screen, face), size.columns, { measure });
	const sideAbove = hasSide && !beside ? blockLines(screen.side.slice(0, 2), width, measure).slice(0, 3) : [];
	const fullText = face.helpOpen
		? blockLines(helpBlocks(screen), width, measure)
		: [...sideAbove, ...(sideAbove.length > 0 ? [""] : []), ...blockLines(screen.body, width, measure)];
	const fieldRows = screen.typing && !face.helpOpen ? 1 : 0;
	const fixed = 1 + title.length + message.length + 1 + fieldRows + 1 + footer.length;
	const room = Math.max(2, size.rows - 1 - fixed);
	const shown = face.helpOpen ? [] : shownChoices(screen, face);
	const row = Math.min(face.row, shown.length - 1);
	const roomy = shown.map((choice, index) => drawnChoice(choice, index === row, true, width, measure));
	const tight = shown.map((choice, index) => drawnChoice(choice, index === row, index === row, width, measure));
	const gapRow = shown.length > 0 && fullText.length > 0 ? 1 : 0;
	const drawn = rowsOf(roomy) + fullText.length + gapRow <= room ? roomy : tight;
	const choiceRows = Math.min(rowsOf(drawn), Math.max(Math.ceil((room - gapRow) / 2), room - gapRow - fullText.length));
	const textRows = Math.max(0, room - gapRow - choiceRows);
	const text = windowOfText(fullText, face.scroll, textRows);
	const choices = windowOfChoices(drawn, Math.max(0, row), choiceRows);
	const field = fieldRows > 0 ? fieldOf(screen, face, width, measure) : null;
	const above = 1 + title.length + message.length + 1;
	const choicesTop = above + text.lines.length + gapRow + fieldRows;
	const markedTop = choices.lines.findIndex(({ marked }) => marked);
	const markedRow = rowsOf(choices.lines.slice(0, Math.max(0, markedTop)));
	const inTheField = field !== null && (face.row === inField || face.field.text !== "");
	return {
		place: cutTo(screen.place || "boardwalk", width, measure),
		title,
		message,
		text,
		choices,
		field,
		side: beside
			? blockLines(screen.side, sideColumns, measure).slice(0, room + fieldRows + title.length + message.length + 1)
			: null,
		mainColumns: width,
		sideColumns,
		footer,
		cursor: inTheField
			? { x: field.cursorColumn, y: above + text.lines.length + gapRow }
			: { x: 0, y: markedTop >= 0 ? choicesTop + markedRow : Math.max(0, above - 1) },
		lastScroll: Math.max(0, fullText.length - textRows),
		filler: Math.max(0, room - text.lines.length - gapRow - rowsOf(choices.lines)),
	};
}

function rowsOf(choices: readonly DrawnChoice[]): number {
	return choices.reduce((sum, { lines }) => sum + lines.length, 0);
}

function drawnChoice(
	choice: Choice,
	marked: boolean,
	withDetail: boolean,
	columns: number,
	measure: Measure,
): DrawnChoice {
	const options = { measure, breakWords: true };
	const chosen = choice.chosen ? " (chosen)" : "";
	const count = choice.count ? ` (${choice.count})` : "";
	const label = wrapText(`${choice.label}${chosen}${count}`, columns - markColumns, options);
	const detail =
		withDetail && choice.detail
			? wrapText(`  ${choice.detail}`, columns - markColumns, { ...options, indent: "  " })
			: [];
	return { lines: [...label, ...detail], labelLines: label.length, marked };
}

/** The text from a line on, as many as there are rows for; scrolled no further than to its end. */
function windowOfText(lines: readonly string[], scroll: number, rows: number): Window<string> {
	const from = Math.max(0, Math.min(scroll, lines.length - rows));
	return { lines: lines.slice(from, from + rows), above: from > 0, below: from + rows < lines.length };
}

/** Whole entries around the marked one, as many as there are rows for. */
function windowOfChoices(choices: readonly DrawnChoice[], row: number, rows: number): Window<DrawnChoice> {
	let [from, to] = [row, row + 1];
	const fits = (a: number, b: number) => rowsOf(choices.slice(a, b)) <= rows;
	while (true) {
		if (to < choices.length && fits(from, to + 1)) to++;
		else if (from > 0 && fits(from - 1, to)) from--;
		else break;
	}
	return { lines: choices.slice(from, to), above: from > 0, below: to < choices.length };
}

/** The end of what is typed, if it is longer than the line, with the cursor in sight. */
function fieldOf(screen: Screen, { field }: Face, columns: number, measure: Measure): Arrangement["field"] {
	const prompt = screen.typing?.kind === "words" ? "Find: " : "Type: ";
	const room = columns - measure(prompt) - 1;
	const letters = graphemesOf(field.text);
	let from = 0;
	while (from < field.cursor && measure(letters.slice(from, field.cursor).join("")) > room) from++;
	const text = cutTo(letters.slice(from).join(""), room, measure);
	return { prompt, text, cursorColumn: measure(prompt) + measure(letters.slice(from, field.cursor).join("")) };
}

/** Text cut at a width in cells, never through a grapheme. */
export function cutTo(text: string, columns: number, measure: Measure): string {
	if (measure(text) <= columns) return text;
	let cut = "";
	for (const letter of graphemesOf(text)) {
		if (measure(cut + letter) > columns) break;
		cut += letter;
	}
	return cut;
}

/** Why we ask, and every key that counts on this screen. */
function helpBlocks(screen: Screen): readonly Block[] {
	const counts = keymap.filter(({ when }) => {
		if (when === "lists") return screen.choices.length > 0;
		return when === "typing" ? screen.typing !== null : true;
	});
	return [
		...screen.help,
		{ kind: "heading", text: "Keys" },
		{ kind: "list", items: counts.map(({ keys, does }) => `${keys}: ${does}`) },
	];
}

/** One line: the keys that matter now. */
function footerWords(screen: Screen, face: Face): string {
	if (face.helpOpen) return "? close   Page Down read on   Esc close";
	const enter =
		face.row === inField ? (screen.enter ? `Enter ${screen.enter.words}` : "Enter take it") : "Enter choose";
	const typing = screen.typing?.kind === "words" ? ["type to find"] : [];
	return ["Up/Down move", enter, ...typing, "Esc back", "? help", "Tab more"].join("   ");
}
