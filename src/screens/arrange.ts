import { type Measure, wrapText } from "../sheet/wrap-text.ts";
import { blockLines } from "./block-lines.ts";
import { type Face, inField, isOpen, shownChoices } from "./face.ts";
import { keymap } from "./keys.ts";
import { wordBlocks, wordMark, wordsMarked } from "./marked-words.ts";
import type { Block, Choice, Screen } from "./screen.ts";
import { graphemesOf } from "./text-field.ts";

export interface ScreenSize {
	readonly columns: number;
	readonly rows: number;
}

/** A line of a list as it is drawn: wrapped, and whether it is the marked one. */
export interface DrawnChoice {
	readonly lines: readonly string[];
	/** How many of the lines are a heading above it, and how many then are the label; the others explain it. */
	readonly headingLines: number;
	readonly labelLines: number;
	readonly marked: boolean;
}

/** A window of lines that may be part of something longer. */
export interface Window<Line> {
	readonly lines: readonly Line[];
	/** Index of the first line shown. */
	readonly first: number;
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
	/** The row between text and choices: words where either goes on beyond its window, else empty; null for no row. */
	readonly between: string | null;
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
	/** Line of the whole text where numbers and sources begin; null where they do not stand in it. */
	readonly sourcesFrom: number | null;
	/** Empty rows under the title: one, or none where the terminal is low. */
	readonly air: number;
	/** Empty rows above the footer, so that it always stands at the bottom. */
	readonly filler: number;
}

/** From this width on, boards left stand beside the question. */
const sideFrom = 76;
const narrowSideColumns = 26;
/** From this width on, numbers and sources have a wider column, so that more of them stand beside the text. */
const wideSideFrom = 110;
const wideSideColumns = 44;
const gap = 2;
/** Narrower or lower than this nothing useful can be shown. */
export const smallest: ScreenSize = { columns: 40, rows: 12 };
const markColumns = 2;
/** On fewer rows, empty rows and the less needed keys of the footer give way to text. */
const airFrom = 18;
/** Long text leaves the list at least this part of the window; text of more than two windows is there to be read. */
const leastForChoices = { usual: 0.4, besideMuchText: 0.25 };

/** Whether a terminal is too small for a screen; then one is told so, and keys rest. */
export function isTooSmall({ columns, rows }: ScreenSize): boolean {
	return columns < smallest.columns || rows < smallest.rows;
}

/** Lays a screen out. Pure; `measure` tells how many cells a text takes. */
export function arrange(screen: Screen, face: Face, size: ScreenSize, measure: Measure): Arrangement {
	if (isTooSmall(size)) return tooSmall(size, measure);
	const air = size.rows < airFrom ? 0 : 1;
	const footer = footerLines(screen, face, size, measure);
	const covered = isOpen(face);
	const isWide = size.columns >= sideFrom && !covered;
	const sources = covered ? [] : screen.sources;
	const sideColumns = sources.length > 0 && size.columns >= wideSideFrom ? wideSideColumns : narrowSideColumns;
	const sourcesBeside =
		isWide &&
		sources.length > 0 &&
		blockLines([...screen.side, ...sources], sideColumns, measure).length <= size.rows - 1 - air - footer.length;
	const hasSide = screen.side.length > 0 && !covered;
	const beside = isWide && (hasSide || sourcesBeside);
	const width = beside ? size.columns - sideColumns - gap : size.columns;
	const wrap = (text: string) => wrapText(text, width, { measure, breakWords: true });
	const title = cutLines(wrap(screen.title), Math.max(2, Math.floor(size.rows / 6)));
	const message = cutLines(
		[screen.notice, screen.problem].flatMap((words) => (words ? wrap(words) : [])),
		Math.floor(size.rows / 5),
	);
	const sideAbove = hasSide && !beside ? cutLines(blockLines(screen.side, width, measure), 4, sideGoesOn) : [];
	const bodyLines = knownLines(screen.body, width, measure);
	const sideAndGap = sideAbove.length > 0 ? [...sideAbove, ""] : [];
	const fullText = covered
		? blockLines(face.wordsOpen ? wordBlocks(screen) : helpBlocks(screen), width, measure)
		: [
				...sideAndGap,
				...bodyLines,
				// What is longer than the column beside it stands below the text, where it can be read on.
				...(sourcesBeside || sources.length === 0 ? [] : ["", ...blockLines(sources, width, measure)]),
			];
	const fieldRows = screen.typing && !covered ? 1 : 0;
	const above = 1 + title.length + message.length + air;
	const room = size.rows - 1 - above - fieldRows - air - footer.length;
	const shown = covered ? [] : shownChoices(screen, face);
	const row = Math.min(face.row, shown.length - 1);
	const drawnAs = (choice: Choice, index: number, withDetail: boolean) => {
		const heading = choice.group !== undefined && choice.group !== shown[index - 1]?.group ? choice.group : null;
		return drawnChoice(choice, { heading, marked: index === row, withDetail }, width, measure);
	};
	const roomy = shown.map((choice, index) => drawnAs(choice, index, true));
	const tight = shown.map((choice, index) => drawnAs(choice, index, index === row));
	const gapRow = shown.length > 0 && fullText.length > 0 ? air : 0;
	const drawn = rowsOf(roomy) + fullText.length + gapRow <= room ? roomy : tight;
	const isWhole = rowsOf(drawn) + fullText.length + gapRow <= room;
	const space = room - (isWhole ? gapRow : 1);
	const choiceRows = Math.min(
		rowsOf(drawn),
		Math.max(
			Math.ceil(space * (fullText.length > 2 * space ? leastForChoices.besideMuchText : leastForChoices.usual)),
			space - fullText.length,
			Math.min(space, (drawn[row]?.headingLines ?? 0) + (drawn[row]?.labelLines ?? 0)),
		),
	);
	const text = windowOfText(fullText, face.scroll, space - choiceRows);
	const tail = shown.length - 1 - shown.findLastIndex(({ apart }) => !apart);
	const { choices, seen } = withTail(drawn, tail, Math.max(0, row), choiceRows);
	const fits = (words: string) => measure(words) <= width;
	const empty = gapRow > 0 ? "" : null;
	const more = sources.length > 0 && !sourcesBeside && text.below ? "... numbers, sources: " : "... more: ";
	const between = isWhole ? empty : cutTo(windowWords(text, seen, { all: shown.length, more, fits }), width, measure);
	const field = fieldRows > 0 ? fieldOf(screen, face, width, measure) : null;
	const fieldTop = above + text.lines.length + (between === null ? 0 : 1);
	const height = above + fieldRows + room;
	const sideBlocks = sourcesBeside ? [...screen.side, ...sources] : screen.side;
	const side = beside ? cutLines(blockLines(sideBlocks, sideColumns, measure), height, sideGoesOn) : null;
	const markedTop = choices.lines.findIndex(({ marked }) => marked);
	const markedRow =
		rowsOf(choices.lines.slice(0, Math.max(0, markedTop))) + (choices.lines[markedTop]?.headingLines ?? 0);
	const inTheField = field !== null && (face.row === inField || face.field.text !== "");
	return {
		place: cutTo(screen.place || "boardwalk", width, measure),
		title,
		message,
		text,
		between,
		choices,
		field,
		side,
		mainColumns: width,
		sideColumns,
		footer,
		cursor: inTheField
			? { x: field.cursorColumn, y: fieldTop }
			: { x: 0, y: markedTop >= 0 ? fieldTop + fieldRows + markedRow : Math.max(0, above - 1) },
		sourcesFrom: sources.length > 0 && !sourcesBeside ? sideAndGap.length + bodyLines.length : null,
		lastScroll: Math.max(0, fullText.length - (space - choiceRows)),
		air,
		filler: height - Math.max(side?.length ?? 0, fieldTop + fieldRows + rowsOf(choices.lines)),
	};
}

const sideGoesOn = "... more: Tab, Boards left";

/** In place of a screen, where the terminal is too small for any. */
function tooSmall({ columns, rows }: ScreenSize, measure: Measure): Arrangement {
	const words = [
		`This window is too small: at least ${smallest.columns} columns and ${smallest.rows} rows are needed.`,
		"Nothing is lost. Make it larger to go on, or press Ctrl+C to leave.",
	];
	const width = Math.max(1, columns);
	const lines = words.flatMap((line) => wrapText(line, width, { measure, breakWords: true }));
	const [place = "", ...title] = lines.slice(0, Math.max(1, rows - 1));
	const none = { lines: [], first: 0, above: false, below: false };
	return {
		...{ place, title, message: [], text: none, between: null, choices: none, field: null, side: null },
		...{
			mainColumns: width,
			sideColumns: 0,
			footer: [],
			cursor: { x: 0, y: 0 },
			lastScroll: 0,
			sourcesFrom: null,
			air: 0,
			filler: 0,
		},
	};
}

/** Wrapped texts of screens, by width: the same text is laid out with every key, and a whole sheet is long. */
const wrapped = new WeakMap<
	readonly Block[],
	{ readonly columns: number; readonly measure: Measure; readonly lines: readonly string[] }
>();

function knownLines(blocks: readonly Block[], columns: number, measure: Measure): readonly string[] {
	const before = wrapped.get(blocks);
	if (before?.columns === columns && before.measure === measure) return before.lines;
	const lines = blockLines(blocks, columns, measure);
	wrapped.set(blocks, { columns, measure, lines });
	return lines;
}

/** Lines cut to a number of rows; where something is cut away, the last one says so. */
function cutLines(lines: readonly string[], rows: number, goesOn = "..."): readonly string[] {
	return lines.length <= rows ? lines : [...lines.slice(0, rows - 1), goesOn];
}

/** What lies beyond the windows, and how to get there; in fewer words where not all of them fit. */
function windowWords(
	text: Window<string>,
	choices: Window<DrawnChoice>,
	{ all, more, fits }: { readonly all: number; readonly more: string; readonly fits: (words: string) => boolean },
): string {
	const ways = [...(text.above ? ["Up"] : []), ...(text.below ? ["Down"] : [])];
	const [first, last] = [choices.first + 1, choices.first + choices.lines.length];
	const words = (ahead: string, noun: string) =>
		[
			...(ways.length > 0 ? [`${ahead}Page ${ways.join("/")}`] : []),
			...(choices.above || choices.below ? [`${noun}${first}-${last} of ${all}`] : []),
		].join("   ");
	const full = words(more, "choices ");
	return fits(full) ? full : words("... ", "");
}

function rowsOf(choices: readonly DrawnChoice[]): number {
	return choices.reduce((sum, { lines }) => sum + lines.length, 0);
}

function drawnChoice(
	choice: Choice,
	{
		heading,
		marked,
		withDetail,
	}: { readonly heading: string | null; readonly marked: boolean; readonly withDetail: boolean },
	columns: number,
	measure: Measure,
): DrawnChoice {
	const options = { measure, breakWords: true };
	const chosen = choice.chosen ? " (chosen)" : "";
	const count = choice.count ? ` (${choice.count})` : "";
	const head = heading === null ? [] : wrapText(heading, columns - markColumns, options);
	const label = wrapText(`${markWords(choice)}${choice.label}${chosen}${count}`, columns - markColumns, options);
	const detail =
		withDetail && choice.detail
			? wrapText(`  ${choice.detail}`, columns - markColumns, { ...options, indent: "  " })
			: [];
	return { lines: [...head, ...label, ...detail], headingLines: head.length, labelLines: label.length, marked };
}

/** "[x] " or "[ ] " where a line can be marked; "[2] " where it can be marked more than once. */
export function markWords({ mark }: Choice): string {
	if (!mark) return "";
	if (mark.count === 0) return "[ ] ";
	return mark.most > 1 ? `[${mark.count}] ` : "[x] ";
}

/** The text from a line on, as many as there are rows for; scrolled no further than to its end. */
function windowOfText(lines: readonly string[], scroll: number, rows: number): Window<string> {
	const from = Math.max(0, Math.min(scroll, lines.length - rows));
	return { lines: lines.slice(from, from + rows), first: from, above: from > 0, below: from + rows < lines.length };
}

/** A list below that goes on beyond its window keeps at least this many rows beside the lines that stand apart. */
const leastBesideTail = 4;

/**
 * The window of a list with the lines that stand apart at its end ("not sure") always in sight: nobody should have to
 * scroll through thirty names to find them. `seen` is the part that scrolls. On a low terminal all of it scrolls.
 */
function withTail(
	drawn: readonly DrawnChoice[],
	tail: number,
	row: number,
	rows: number,
): { readonly choices: Window<DrawnChoice>; readonly seen: Window<DrawnChoice> } {
	const kept = drawn.slice(drawn.length - tail);
	const left = rows - rowsOf(kept);
	if (tail === 0 || tail === drawn.length || rowsOf(drawn) <= rows || left < leastBesideTail) {
		const all = windowOfChoices(drawn, row, rows);
		return { choices: all, seen: all };
	}
	const list = drawn.slice(0, drawn.length - tail);
	const seen = windowOfChoices(list, Math.min(row, list.length - 1), left);
	return { choices: { ...seen, lines: [...seen.lines, ...kept] }, seen };
}

/** Whole entries around the marked one, as many as there are rows for. */
function windowOfChoices(choices: readonly DrawnChoice[], row: number, rows: number): Window<DrawnChoice> {
	let [from, to] = [row, row + 1];
	const fits = (a: number, b: number) => rowsOf(choices.slice(a, b)) <= rows;
	for (let grows = true; grows; ) {
		const [down, up] = [to < choices.length && fits(from, to + 1), from > 0];
		if (down) to++;
		const rises = up && fits(from - 1, to);
		if (rises) from--;
		grows = down || rises;
	}
	// An entry that is higher than the window is shown from its top.
	const lines = choices.slice(from, to).map((choice) => ({ ...choice, lines: choice.lines.slice(0, rows) }));
	return { lines, first: from, above: from > 0, below: to < choices.length };
}

/** The end of what is typed, if it is longer than the line, with the cursor in sight. */
function fieldOf(screen: Screen, { field }: Face, columns: number, measure: Measure): Arrangement["field"] {
	const prompts = { words: "Find: ", free: "Type: ", value: "Type: ", page: "Paste: " };
	const prompt = prompts[screen.typing?.kind ?? "value"];
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

/** The keys that matter now; on a low terminal one line of those needed most. */
function footerLines(screen: Screen, face: Face, size: ScreenSize, measure: Measure): string[] {
	if (isOpen(face)) return [`${face.wordsOpen ? wordMark : "?"} or Esc close   Up/Down read on`];
	const isEmpty = face.field.text.trim() === "";
	const isPage = screen.typing?.kind === "page";
	const wanted = isPage ? "paste, then Enter" : "type, then Enter";
	const inTheField = isEmpty ? (screen.enter ? `Enter ${screen.enter.words}` : wanted) : "Enter take it";
	const row = shownChoices(screen, face)[face.row];
	const isMarked = (row?.mark?.count ?? 0) > 0 && screen.enter;
	const onLine = isMarked ? `Enter ${isMarked.words}` : row?.mark ? "Space or Enter mark" : "Enter choose";
	const enter = face.row === inField ? inTheField : onLine;
	const space = isMarked ? [(row?.mark?.most ?? 1) > 1 ? "Space once more" : "Space unmark"] : [];
	// Below a field for the answer itself stands one line that one does not know, and perhaps some to pick.
	const below = (isPage || screen.typing?.kind === "value") && face.row === inField ? screen.choices : [];
	const [only, ...more] = below;
	const move = only ? (more.length > 0 ? "Down pick a line" : `Down ${only.label.toLowerCase()}`) : "Up/Down move";
	const typing = screen.typing?.kind === "words" ? ["type to find"] : [];
	const all = [move, ...space, enter, ...typing, "Esc back", "? help", "Tab more"];
	if (size.rows >= airFrom) {
		const lines = joinedPieces(all, size.columns, measure);
		const withWords = joinedPieces([...all, `${wordMark} words`], size.columns, measure);
		// The mark itself is the key, so that no row of text is given up for saying so.
		return wordsMarked(screen).length > 0 && withWords.length === lines.length ? withWords : lines;
	}
	// On a narrow line what Enter does is enough.
	const few = [enter.replace("Space or ", ""), "Esc back", "? help", "Tab more"].join("  ");
	return [cutTo(few, size.columns, measure)];
}

/** Pieces in a row, three spaces apart, on as many lines as they take; none is broken. */
function joinedPieces(pieces: readonly string[], columns: number, measure: Measure): string[] {
	const lines: string[] = [];
	for (const piece of pieces) {
		const longer = [...lines.slice(-1), piece].join("   ");
		if (measure(longer) > columns) lines.push(piece);
		else lines.splice(-1, 1, longer);
	}
	return lines;
}
