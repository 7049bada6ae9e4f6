/**
 * How a line is drawn. "sure": known of this board. "assumed": follows from a standard. "over": lies above or beyond the
 * board. "guide": only helps to find one's way.
 */
export type PaperLine = "sure" | "assumed" | "over" | "guide";

interface AnyShape {
	/** What it stands for, one word, such as "hole". */
	readonly part: string;
}

/** What is drawn at true size: lengths in mm, x to the right, y down. Texts are plain and unescaped. */
export type PaperShape = AnyShape &
	(
		| { readonly kind: "rectangle"; readonly line: PaperLine; readonly box: PaperBox }
		| { readonly kind: "circle"; readonly line: PaperLine; readonly at: PaperPoint; readonly diameterMm: number }
		| { readonly kind: "path"; readonly line: PaperLine; readonly points: readonly PaperPoint[] }
		| {
				readonly kind: "words";
				readonly at: PaperPoint;
				readonly words: string;
				readonly highMm: number;
				readonly from: "start" | "middle" | "end";
				/** Written downwards instead of to the right. */
				readonly isTurned: boolean;
		  }
	);

export interface PaperPoint {
	readonly x: number;
	readonly y: number;
}

export interface PaperBox {
	readonly left: number;
	readonly top: number;
	readonly width: number;
	readonly height: number;
}

export function rectangle(part: string, line: PaperLine, box: PaperBox): PaperShape {
	return { kind: "rectangle", part, line, box };
}

export function circle(part: string, line: PaperLine, at: PaperPoint, diameterMm: number): PaperShape {
	return { kind: "circle", part, line, at, diameterMm };
}

/** Straight pieces from point to point. */
export function path(part: string, line: PaperLine, ...points: readonly PaperPoint[]): PaperShape {
	return { kind: "path", part, line, points };
}

/** A line of text; its letters stand on the point, or beside it where it is turned. */
export function words(
	at: PaperPoint,
	text: string,
	options: { readonly highMm?: number; readonly from?: "start" | "middle" | "end"; readonly isTurned?: boolean } = {},
): PaperShape {
	const { highMm = 3, from = "start", isTurned = false } = options;
	return { kind: "words", part: "words", at, words: text, highMm, from, isTurned };
}

/** The box that holds all lines; what is written lies among them and adds little. */
export function boxAround(shapes: readonly PaperShape[], marginMm: number): PaperBox {
	const points = shapes.flatMap(pointsOf);
	const [xs, ys] = [points.map(({ x }) => x), points.map(({ y }) => y)];
	const [left, top] = [Math.min(...xs) - marginMm, Math.min(...ys) - marginMm];
	return { left, top, width: Math.max(...xs) + marginMm - left, height: Math.max(...ys) + marginMm - top };
}

function pointsOf(shape: PaperShape): readonly PaperPoint[] {
	switch (shape.kind) {
		case "rectangle": {
			const { left, top, width, height } = shape.box;
			return [
				{ x: left, y: top },
				{ x: left + width, y: top + height },
			];
		}
		case "circle": {
			const radius = shape.diameterMm / 2;
			return [
				{ x: shape.at.x - radius, y: shape.at.y - radius },
				{ x: shape.at.x + radius, y: shape.at.y + radius },
			];
		}
		case "path":
			return shape.points;
		case "words":
			return [shape.at];
	}
}
