import { cleanLine } from "../parts/clean-text.ts";
import { markupSafe } from "./markup-safe.ts";
import type { PaperBoard } from "./paper-board.ts";
import {
	boxAround,
	type PaperBox,
	type PaperLine,
	type PaperPoint,
	type PaperShape,
	path,
	words,
} from "./paper-board-shapes.ts";
import { wrapText } from "./wrap-text.ts";

/** Thin lines of about a pen's width, in mm: whoever measures from one must see where it is. */
const strokes: Readonly<Record<PaperLine, string>> = {
	sure: 'stroke-width="0.4"',
	assumed: 'stroke-width="0.35" stroke-dasharray="1.6 1.2"',
	over: 'stroke-width="0.35" stroke-dasharray="6 2"',
	guide: 'stroke-width="0.12"',
};

/** Round a screw hole, which longer dashes would leave in pieces. */
const fineDashes = 'stroke-width="0.35" stroke-dasharray="0.8 0.5"';

/** Exactly this long, in mm. */
const barMm = 100;
const tickMm = 2;
/** Room round everything, in mm. */
const marginMm = 10;
const lineHighMm = 4.6;
const wordsHighMm = 3.2;
/** What a letter takes of the width, of its height: less than most do in a plain font (own convention). */
const letterWide = 0.55;

const barWords = "Measure this first: 100 mm. If it is not, print at 100 % (no fit to page).";

/** A bar to hold a ruler against, with what it is for below it. */
export function barShapes({ x, y }: PaperPoint): readonly PaperShape[] {
	const end = x + barMm;
	return [
		path("bar", "sure", { x, y }, { x: end, y }),
		path("bar-end", "sure", { x, y: y - tickMm }, { x, y: y + tickMm }),
		path("bar-end", "sure", { x: end, y: y - tickMm }, { x: end, y: y + tickMm }),
		words({ x, y: y + 6 }, barWords, { highMm: wordsHighMm }),
	];
}

/** The box of a board's drawing on its own axes, with room for what is written at its edge. */
export function boardBox({ shapes }: Pick<PaperBoard, "shapes">): PaperBox {
	return boxAround(shapes, 3);
}

/** The paper board as one SVG at true size, in mm, with all its words below it. Black on white: it is printed. */
export function paperBoardSvg(paper: PaperBoard): string {
	const board = boardBox(paper);
	const loose = paper.loose && boxAround(paper.loose, 6);
	const boardTop = marginMm + 24;
	const looseTop = boardTop + board.height + 8;
	const wordsTop = looseTop + (loose ? loose.height + 10 : 0);
	const inner = Math.max(board.width, loose ? loose.width + 40 : 0, 190);
	const lines = linesOf(paper, inner);
	const wide = rounded(inner + 2 * marginMm);
	const high = rounded(wordsTop + lines.length * lineHighMm + marginMm);
	const title = titleOf(paper);
	return [
		`<svg xmlns="http://www.w3.org/2000/svg" width="${wide}mm" height="${high}mm" viewBox="0 0 ${wide} ${high}" role="img" ${drawnWith}>`,
		`<title>${markupSafe(title)}</title>`,
		`<desc>${markupSafe(inWords(paper))}</desc>`,
		`<rect width="${wide}" height="${high}" fill="#fff" stroke="none"/>`,
		...shapesSvg([
			words({ x: marginMm, y: marginMm + 4 }, title, { highMm: 5 }),
			...barShapes({ x: marginMm, y: marginMm + 12 }),
		]),
		...moved(paper.shapes, board, { x: marginMm, y: boardTop }),
		...(paper.loose && loose ? moved(paper.loose, loose, { x: marginMm, y: looseTop }) : []),
		...shapesSvg(
			lines.map((line, index) =>
				words({ x: marginMm, y: wordsTop + (index + 1) * lineHighMm }, line, { highMm: wordsHighMm }),
			),
		),
		"</svg>",
		"",
	].join("\n");
}

/** How every drawing here is drawn unless a line says otherwise. */
export const drawnWith = 'fill="none" stroke="#000" font-family="Arial, Helvetica, sans-serif"';

export function titleOf({ boardName }: Pick<PaperBoard, "boardName">): string {
	return `Paper board: ${boardName}`;
}

/** Everything the drawing shows, for whoever hears it read out. */
function inWords({ sections }: Pick<PaperBoard, "sections">): string {
	return sections.flatMap(({ heading, lines }) => [`${heading}:`, ...lines]).join(" ");
}

function linesOf({ sections }: PaperBoard, wideMm: number): readonly string[] {
	const columns = Math.floor(wideMm / (wordsHighMm * letterWide));
	return sections.flatMap(({ heading, lines }) => [
		"",
		heading,
		...lines.flatMap((line) =>
			wrapText(`- ${cleanLine(line)}`, columns, { indent: "  ", measure: columnsOf, breakWords: true }),
		),
	]);
}

/** Letters of other scripts are up to twice as wide. */
function columnsOf(text: string): number {
	return [...text].reduce((sum, letter) => sum + (letter > "\u052f" ? 2 : 1), 0);
}

/** Shapes with the corner of their box put at a place. */
function moved(shapes: readonly PaperShape[], { left, top }: PaperBox, to: PaperPoint): readonly string[] {
	return [`<g transform="translate(${rounded(to.x - left)} ${rounded(to.y - top)})">`, ...shapesSvg(shapes), "</g>"];
}

/** Shapes as SVG, each with its part as a class. */
export function shapesSvg(shapes: readonly PaperShape[]): readonly string[] {
	return shapes.map(shapeSvg);
}

function shapeSvg(shape: PaperShape): string {
	switch (shape.kind) {
		case "rectangle": {
			const { left, top, width, height } = shape.box;
			return `<rect class="${shape.part}" x="${rounded(left)}" y="${rounded(top)}" width="${rounded(width)}" height="${rounded(height)}" ${strokes[shape.line]}/>`;
		}
		case "circle":
			return `<circle class="${shape.part}" cx="${rounded(shape.at.x)}" cy="${rounded(shape.at.y)}" r="${rounded(shape.diameterMm / 2)}" ${shape.line === "assumed" ? fineDashes : strokes[shape.line]}/>`;
		case "path": {
			const points = shape.points.map(({ x, y }) => `${rounded(x)} ${rounded(y)}`).join("L");
			return `<path class="${shape.part}" d="M${points}" ${strokes[shape.line]}/>`;
		}
		case "words":
			return wordsSvg(shape);
	}
}

function wordsSvg({ at, words: text, highMm, from, isTurned }: Extract<PaperShape, { kind: "words" }>): string {
	const [x, y] = [rounded(at.x), rounded(at.y)];
	const turned = isTurned ? ` transform="rotate(90 ${x} ${y})"` : "";
	const anchor = from === "start" ? "" : ` text-anchor="${from}"`;
	return `<text x="${x}" y="${y}" font-size="${highMm}" fill="#000" stroke="none"${anchor}${turned}>${markupSafe(text)}</text>`;
}

/** To a thousandth of a mm, far finer than any printer. */
export function rounded(length: number): number {
	return Math.round(length * 1000) / 1000;
}
