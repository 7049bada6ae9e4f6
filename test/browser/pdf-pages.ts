import { getDocument, OPS } from "pdfjs-dist/legacy/build/pdf.mjs";

/** A place on a page, from its upper left corner. */
export interface PointMm {
	readonly xMm: number;
	readonly yMm: number;
}

export interface PdfText extends PointMm {
	readonly text: string;
	readonly sizePt: number;
}

/** A line or outline that a page draws: one for each stretch drawn without lifting the pen. */
export interface PdfShape {
	readonly drawn: "stroke" | "fill" | "both" | "clip";
	/** Where it begins, and the ends of all its straight and bent pieces. */
	readonly points: readonly PointMm[];
	readonly isClosed: boolean;
	readonly leftMm: number;
	readonly topMm: number;
	readonly widthMm: number;
	readonly heightMm: number;
}

export interface PdfPage {
	readonly widthMm: number;
	readonly heightMm: number;
	/** Pieces of text in the order they are drawn, `xMm` and `yMm` where the first letter stands on its line. */
	readonly texts: readonly PdfText[];
	/** All texts with a space between. */
	readonly text: string;
	readonly shapes: readonly PdfShape[];
}

/** From the user space of a PDF, y upwards, to where the page's reader sees it: a b c d e f as in the PDF itself. */
type Matrix = readonly [number, number, number, number, number, number];

/** A point is 1/72 of an inch, an inch is 25.4 mm. */
const mmPerPoint = 25.4 / 72;

const multiply = ([a, b, c, d, e, f]: Matrix, [g, h, i, j, k, l]: Matrix): Matrix => [
	a * g + c * h,
	b * g + d * h,
	a * i + c * j,
	b * i + d * j,
	a * k + c * l + e,
	b * k + d * l + f,
];

/** What a PDF shows, page by page. */
export async function pdfPages(bytes: Uint8Array): Promise<readonly PdfPage[]> {
	const task = getDocument({ data: new Uint8Array(bytes), verbosity: 0 });
	const document = await task.promise;
	const pages: PdfPage[] = [];
	for (let number = 1; number <= document.numPages; number++) {
		const page = await document.getPage(number);
		const [left = 0, bottom = 0, right = 0, top = 0] = page.view;
		const place = ([x, y]: readonly [number, number]): PointMm => ({
			xMm: (x - left) * mmPerPoint,
			yMm: (top - y) * mmPerPoint,
		});
		const { items } = await page.getTextContent();
		const texts = items.flatMap((item) => {
			if (!("str" in item) || item.str.trim() === "") return [];
			const [, , c = 0, d = 0, x = 0, y = 0] = item.transform as number[];
			return [{ text: item.str, sizePt: Math.hypot(c, d), ...place([x, y]) }];
		});
		const { fnArray, argsArray } = await page.getOperatorList();
		pages.push({
			widthMm: (right - left) * mmPerPoint,
			heightMm: (top - bottom) * mmPerPoint,
			texts,
			text: texts.map(({ text }) => text).join(" "),
			shapes: shapesOf(fnArray, argsArray, place),
		});
	}
	await task.destroy();
	return pages;
}

const strokes: readonly number[] = [OPS.stroke, OPS.closeStroke];
const fills: readonly number[] = [OPS.fill, OPS.eoFill];
const both: readonly number[] = [OPS.fillStroke, OPS.eoFillStroke, OPS.closeFillStroke, OPS.closeEOFillStroke];

/** Walks the drawing operators; every path comes with the operator that paints it. */
function shapesOf(
	operators: readonly number[],
	operands: readonly unknown[],
	place: (point: readonly [number, number]) => PointMm,
): readonly PdfShape[] {
	let now: Matrix = [1, 0, 0, 1, 0, 0];
	const kept: Matrix[] = [];
	const shapes: PdfShape[] = [];
	operators.forEach((operator, index) => {
		const given = operands[index];
		if (operator === OPS.save) kept.push(now);
		else if (operator === OPS.restore || operator === OPS.paintFormXObjectEnd) now = kept.pop() ?? now;
		else if (operator === OPS.transform) now = multiply(now, given as Matrix);
		else if (operator === OPS.paintFormXObjectBegin) {
			kept.push(now);
			const [matrix] = given as [Matrix | null];
			if (matrix) now = multiply(now, matrix);
		} else if (operator === OPS.constructPath) {
			const [painter, [data]] = given as [number, [ArrayLike<number> | null]];
			const drawn = strokes.includes(painter)
				? "stroke"
				: fills.includes(painter)
					? "fill"
					: both.includes(painter)
						? "both"
						: "clip";
			const at = now;
			const seen = (x: number, y: number) => {
				const [a, b, c, d, e, f] = at;
				return place([a * x + c * y + e, b * x + d * y + f]);
			};
			if (data) for (const piece of piecesOf(data, seen)) shapes.push({ drawn, ...piece, ...boundsOf(piece.points) });
		}
	});
	return shapes;
}

/** A path as pdf.js keeps it: 0 x y moves, 1 x y draws a line, 2 with six figures a curve, 3 with four, 4 closes. */
function piecesOf(data: ArrayLike<number>, seen: (x: number, y: number) => PointMm) {
	const pieces: { points: PointMm[]; isClosed: boolean }[] = [];
	const figures = [2, 2, 6, 4, 0];
	for (let at = 0; at < data.length; ) {
		const kind = data[at] ?? 4;
		const count = figures[kind];
		if (count === undefined) throw new Error(`This path has a piece of a kind that is not known: ${kind}.`);
		const end = at + count;
		if (kind === 4) {
			const last = pieces.at(-1);
			if (last) last.isClosed = true;
		} else {
			const point = seen(data[end - 1] ?? 0, data[end] ?? 0);
			if (kind === 0) pieces.push({ points: [point], isClosed: false });
			else pieces.at(-1)?.points.push(point);
		}
		at = end + 1;
	}
	return pieces;
}

function boundsOf(points: readonly PointMm[]) {
	const xs = points.map(({ xMm }) => xMm);
	const ys = points.map(({ yMm }) => yMm);
	const leftMm = Math.min(...xs);
	const topMm = Math.min(...ys);
	return { leftMm, topMm, widthMm: Math.max(...xs) - leftMm, heightMm: Math.max(...ys) - topMm };
}
