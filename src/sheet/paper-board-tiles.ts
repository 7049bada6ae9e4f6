import { boxAround, type PaperBox, type PaperPoint, type PaperShape, path, words } from "./paper-board-shapes.ts";
import { boardBox } from "./paper-board-svg.ts";

export const papers = {
	a4: { name: "A4", cssName: "A4", widthMm: 210, heightMm: 297 },
	letter: { name: "Letter", cssName: "letter", widthMm: 215.9, heightMm: 279.4 },
} as const;
export type Paper = keyof typeof papers;

/** White round every sheet, in mm: most printers reach so far. */
export const sheetMarginMm = 10;
/** What two neighbours both show, in mm. */
const overlapMm = 8;
/** Room above a sheet's drawing for its name and the bar, in mm. */
export const sheetHeadMm = 24;
/** Left free at the foot, in mm, so that rounding never makes a page of its own. */
export const spareMm = 1;

/** One sheet of paper: the part of the drawing that it shows. */
export interface Tile {
	/** From 1. */
	readonly number: number;
	readonly row: number;
	readonly column: number;
	readonly box: PaperBox;
	/** "Sheet 2 of 4: top right". */
	readonly name: string;
}

/**
 * How a drawing goes onto sheets of this paper, from the upper left on, neighbours overlapping. A sheet on which nothing
 * of it would stand is left out.
 */
export function tilesOf(shapes: readonly PaperShape[], paper: Paper): readonly Tile[] {
	const drawing = boardBox({ shapes });
	const room = roomOf(paper);
	const [columns, rows] = [countOf(drawing.width, room.width), countOf(drawing.height, room.height)];
	const places = Array.from({ length: rows * columns }, (_, index) => {
		const [row, column] = [Math.floor(index / columns), index % columns];
		const left = drawing.left + column * (room.width - overlapMm);
		const top = drawing.top + row * (room.height - overlapMm);
		const width = Math.min(room.width, drawing.left + drawing.width - left);
		const height = Math.min(room.height, drawing.top + drawing.height - top);
		return { row, column, box: { left, top, width, height } };
	}).filter(({ box }) => shapes.some((shape) => meets(shape, box)));
	return places.map(({ row, column, box }, index) => ({
		number: index + 1,
		row: row + 1,
		column: column + 1,
		box,
		name: `Sheet ${index + 1} of ${places.length}: ${placeWords({ row, column }, { rows, columns })}`,
	}));
}

/** Whether anything of a shape may stand in a box, the strip left out that the neighbour before shows too. */
function meets(shape: PaperShape, { left, top, width, height }: PaperBox): boolean {
	const [start, high] = [left + overlapMm, top + overlapMm];
	const of = boxAround([shape], 0);
	return of.left < left + width && of.left + of.width > start && of.top < top + height && of.top + of.height > high;
}

/** What a sheet leaves for the drawing, in mm. */
function roomOf(paper: Paper): { readonly width: number; readonly height: number } {
	const { widthMm, heightMm } = papers[paper];
	return { width: widthMm - 2 * sheetMarginMm, height: heightMm - 2 * sheetMarginMm - sheetHeadMm - spareMm };
}

function countOf(length: number, room: number): number {
	return Math.max(1, Math.ceil((length - overlapMm) / (room - overlapMm) - 1e-9));
}

function placeWords(
	{ row, column }: { readonly row: number; readonly column: number },
	{ rows, columns }: { readonly rows: number; readonly columns: number },
): string {
	if (rows * columns === 1) return "the whole board";
	if (rows > 2 || columns > 2) return `row ${row + 1}, column ${column + 1}`;
	const upOrDown = rows === 1 ? [] : [row === 0 ? "top" : "bottom"];
	const side = columns === 1 ? [] : [column === 0 ? "left" : "right"];
	return [...upOrDown, ...side].join(" ");
}

/**
 * Where neighbours meet: a line to cut at on the left and at the top, and on the neighbour the line it is laid on. Both
 * show the same crosses at the same places of the drawing.
 */
export function seamShapes({ box, row, column }: Tile, tiles: readonly Tile[]): readonly PaperShape[] {
	const { left, top, width, height } = box;
	const [right, bottom] = [left + width, top + height];
	const at = (atRow: number, atColumn: number) => tiles.find((one) => one.row === atRow && one.column === atColumn);
	const upright = (x: number) => path("seam", "guide", { x, y: top }, { x, y: bottom });
	const level = (y: number) => path("seam", "guide", { x: left, y }, { x: right, y });
	const next = at(row, column + 1);
	const below = at(row + 1, column);
	const middle = { x: left + width / 2, y: top + height / 2 };
	const turned = { from: "middle", isTurned: true, highMm: 2.6 } as const;
	const straight = { from: "middle", highMm: 2.6 } as const;
	return [
		...corners(box),
		...(at(row, column - 1) ? [upright(left)] : []),
		...(at(row - 1, column) ? [level(top)] : []),
		...(at(row, column - 1) ? [words({ x: left + 0.8, y: top + height * 0.12 }, "cut here", turned)] : []),
		...(at(row - 1, column) ? [words({ x: left + width * 0.12, y: top + 3 }, "cut here", straight)] : []),
		...(at(row, column - 1) ? crossesDown(left + overlapMm / 2, box) : []),
		...(at(row - 1, column) ? crossesAlong(top + overlapMm / 2, box) : []),
		...(next
			? [
					upright(right - overlapMm),
					words({ x: right - 3, y: middle.y }, `sheet ${next.number} is laid on here`, turned),
					...crossesDown(right - overlapMm / 2, box),
				]
			: []),
		...(below
			? [
					level(bottom - overlapMm),
					words({ x: middle.x, y: bottom - 1.5 }, `sheet ${below.number} is laid on here`, straight),
					...crossesAlong(bottom - overlapMm / 2, box),
				]
			: []),
	];
}

/** Crop marks: bold corners of the part that a sheet shows. */
function corners({ left, top, width, height }: PaperBox): readonly PaperShape[] {
	const [right, bottom] = [left + width, top + height];
	const corner = (x: number, y: number, across: number, down: number) =>
		path("crop", "sure", { x: x + across, y }, { x, y }, { x, y: y + down });
	return [
		corner(left, top, 4, 4),
		corner(right, top, -4, 4),
		corner(left, bottom, 4, -4),
		corner(right, bottom, -4, -4),
	];
}

function crossesDown(x: number, { top, height }: PaperBox): readonly PaperShape[] {
	return [0.2, 0.8].flatMap((share) => cross({ x, y: top + height * share }));
}

function crossesAlong(y: number, { left, width }: PaperBox): readonly PaperShape[] {
	return [0.2, 0.8].flatMap((share) => cross({ x: left + width * share, y }));
}

function cross({ x, y }: PaperPoint): readonly PaperShape[] {
	const arm = 2.5;
	return [
		path("register", "guide", { x: x - arm, y }, { x: x + arm, y }),
		path("register", "guide", { x, y: y - arm }, { x, y: y + arm }),
	];
}
