import stringWidth from "string-width";
import { arrange, type ScreenSize } from "../../src/screens/arrange.ts";
import { type Face, inField, isOpen, shownChoices } from "../../src/screens/face.ts";
import { wordMark } from "../../src/screens/marked-words.ts";
import type { Screen } from "../../src/screens/screen.ts";
import { frameRows } from "./frame-rows.ts";

/** The same words are laid out very often here. */
const measured = new Map<string, number>();
export function measure(text: string): number {
	const known = measured.get(text);
	if (known !== undefined) return known;
	const width = stringWidth(text);
	measured.set(text, width);
	return width;
}

/** What is wrong with a frame, in words; empty where nothing is. */
export function frameSlips(screen: Screen, face: Face, size: ScreenSize): readonly string[] {
	const arranged = arrange(screen, face, size, measure);
	const rows = frameRows(arranged, size.columns);
	const tooWide = rows.filter(({ words, columns }) => measure(words) > columns);
	const sideTooWide = (arranged.side ?? []).filter((line) => measure(line) > arranged.sideColumns);
	const besides = arranged.side ? arranged.mainColumns + 2 + arranged.sideColumns : arranged.mainColumns;
	const marked = rows.findIndex(({ isMarked }) => isMarked);
	const shown = isOpen(face) ? [] : shownChoices(screen, face);
	const wantsMark = shown.length > 0 && Math.min(face.row, shown.length - 1) >= 0;
	const cursorRow = rows[arranged.cursor.y];
	const cursorIsRight = isOpen(face)
		? arranged.cursor.y < rows.length
		: arranged.field && (face.row === inField || face.field.text !== "")
			? cursorRow?.words === arranged.field.prompt + arranged.field.text && arranged.cursor.x < size.columns
			: !wantsMark || (arranged.cursor.y === marked && arranged.cursor.x === 0);
	const firstWord = screen.title.split(" ")[0] ?? "";
	return [
		...(rows.length === size.rows - 1 ? [] : [`${rows.length} rows instead of ${size.rows - 1}`]),
		...(rows.some(({ words }) => words.includes("\n")) ? ["a row with a line break in it"] : []),
		...tooWide.map(({ words, columns }) => `wider than ${columns}: ${words}`),
		...sideTooWide.map((line) => `side too wide: ${line}`),
		...(besides <= size.columns ? [] : ["columns wider than the terminal"]),
		...((arranged.side?.length ?? 0) <= rows.length - arranged.footer.length ? [] : ["side over the footer"]),
		...(arranged.title[0]?.startsWith(firstWord.slice(0, 10)) ? [] : ["no title"]),
		...(arranged.place === "" ? ["no place"] : []),
		...(!wantsMark || marked >= 0 ? [] : ["no marked line"]),
		...(cursorIsRight ? [] : [`the cursor stands on: ${cursorRow?.words}`]),
		...([face.wordsOpen ? wordMark : "?", "Esc"].every((key) => arranged.footer.join(" ").includes(key))
			? []
			: ["no keys"]),
		...(arranged.filler >= 0 ? [] : ["negative filler"]),
	];
}
