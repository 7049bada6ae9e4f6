import type { LinePoint, PriceLine } from "../choose/price-line.ts";
import { moneyText } from "../parts/money.ts";
import { shortened } from "./plan-picture.ts";
import { sumWords } from "./price-line-words.ts";

interface PriceLinePictureSize {
	/** Most columns of a line; 40 at least. */
	readonly width?: number;
	/** Rows of the plot without its axis and the list below; 6 at least. */
	readonly height?: number;
	readonly ascii?: boolean;
}

interface Signs {
	readonly level: string;
	readonly rising: string;
	readonly steep: string;
	readonly other: string;
	readonly side: string;
	readonly foot: string;
	readonly corner: string;
}

const asciiSigns: Signs = { level: "-", rising: "/", steep: ":", other: ".", side: "|", foot: "-", corner: "+" };
const lineSigns: Signs = { level: "─", rising: "╱", steep: "┊", other: "·", side: "│", foot: "─", corner: "└" };

/** Boards beyond these have no letter. */
const letters = "ABCDEFGHIJKL";
/** Columns of the points at the left, the side among them. */
const sideColumns = 5;

/**
 * Price against points as a picture: dearer to the right, more points up. Letters stand for boards and are explained
 * below; a board without one is a dot. The line is drawn between its boards. Sums of one place share the first's letter.
 *
 * @returns lines, plain ASCII where asked for, but for what names hold; none where there is nothing to compare
 */
export function priceLinePicture(
	line: PriceLine,
	{ width = 60, height = 12, ascii = true }: PriceLinePictureSize = {},
): readonly string[] {
	const { points, hull } = line;
	const [cheapest, dearest] = [points[0], points.at(-1)];
	if (!cheapest || !dearest || points.length < 2) return [];
	const signs = ascii ? asciiSigns : lineSigns;
	const columns = Math.max(20, width - sideColumns);
	const rows = Math.max(6, height);
	const [bottom, top] = scaleOf(points);
	const columnOf = ({ minor }: LinePoint) => at(minor, cheapest.minor, dearest.minor, columns - 1);
	const rowOf = (point: LinePoint) => rows - 1 - at(point.points, bottom, top, rows - 1);
	const cells = Array.from({ length: rows }, () => Array<string>(columns).fill(" "));
	const put = (row: number, column: number, sign: string, over: string) => {
		const cellsOfRow = cells[row];
		if (cellsOfRow && over.includes(cellsOfRow[column] ?? "x")) cellsOfRow[column] = sign;
	};
	for (const point of points) put(rowOf(point), columnOf(point), signs.other, " ");
	hull.slice(1).forEach((to, index) => {
		const from = hull[index] ?? to;
		for (const [row, column, sign] of stroke([rowOf(from), columnOf(from)], [rowOf(to), columnOf(to)], signs))
			put(row, column, sign, " ");
	});
	const drawn = new Map<string, string>();
	const legend = lettered(line).map(([letter, point]) => {
		const place = `${rowOf(point)} ${columnOf(point)}`;
		const taken = drawn.get(place);
		if (taken === undefined) {
			drawn.set(place, letter);
			put(rowOf(point), columnOf(point), letter, ` ${Object.values(signs).join("")}`);
		}
		const words = `: ${sumWords(point, line)}${taken === undefined ? "" : `, at ${taken}`}`;
		return legendLine(letter, point.board.name, words, width);
	});
	const labels = new Map([
		[0, String(top)],
		[rows - 1, String(bottom)],
	]);
	const prices = [cheapest, dearest].map(({ minor }) => moneyText({ minor, currency: line.currency ?? "" }));
	const [low = "", high = ""] = prices;
	const dots = points.length - legend.length;
	return [
		"points",
		...cells.map((row, index) => `${(labels.get(index) ?? "").padStart(3)} ${signs.side}${row.join("")}`.trimEnd()),
		`${" ".repeat(4)}${signs.corner}${signs.foot.repeat(columns)}`,
		`${" ".repeat(sideColumns)}${cheapest.minor === dearest.minor ? low : `${low}${high.padStart(columns - low.length)}`}`,
		...legend,
		...(dots > 0 ? [`${signs.other} = ${dots} more ${dots === 1 ? "board" : "boards"}`] : []),
	];
}

/** Boards with their letters: the line first, then others that none beats, then those with most points; by price. */
function lettered({ points, hull, below, unsettled }: PriceLine): readonly (readonly [string, LinePoint])[] {
	const byPoints = [...points].sort((one, other) => other.points - one.points);
	const chosen = new Set([...new Set([...hull, ...below, ...unsettled, ...byPoints])].slice(0, letters.length));
	return points.filter((point) => chosen.has(point)).map((point, index) => [letters.charAt(index), point] as const);
}

/** The name gives way before the sum does. */
function legendLine(letter: string, name: string, words: string, width: number): string {
	const room = width - 2;
	return `${letter} ${shortened(`${shortened(name, Math.max(6, room - words.length))}${words}`, room)}`;
}

/** Whole tens around all points; ten apart at least. */
function scaleOf(points: readonly LinePoint[]): readonly [bottom: number, top: number] {
	const mids = points.map((point) => point.points);
	const bottom = Math.max(0, Math.floor(Math.min(...mids) / 10) * 10);
	return [bottom, Math.max(bottom + 10, Math.ceil(Math.max(...mids) / 10) * 10)];
}

/** The place of a value on a scale of whole steps; all in the middle where the scale has no length. */
function at(value: number, low: number, high: number, last: number): number {
	return high > low ? Math.round(((value - low) / (high - low)) * last) : Math.round(last / 2);
}

type Cell = readonly [row: number, column: number];

/** Signs from one cell up to another at its right, without the two ends. */
function stroke(from: Cell, to: Cell, signs: Signs): readonly (readonly [number, number, string])[] {
	const [rowsUp, columnsOn] = [from[0] - to[0], to[1] - from[1]];
	const steps = Math.max(rowsUp, columnsOn);
	const sign = rowsUp * 3 > columnsOn * 2 ? (rowsUp > columnsOn * 2 ? signs.steep : signs.rising) : signs.level;
	const rowAt = (step: number) => Math.round(from[0] - (rowsUp * step) / steps);
	return Array.from({ length: Math.max(0, steps - 1) }, (_, index) => {
		const step = index + 1;
		const isUp = rowAt(step) !== rowAt(step - 1);
		const own = sign === signs.level && isUp ? signs.rising : sign;
		return [rowAt(step), Math.round(from[1] + (columnsOn * step) / steps), own] as const;
	});
}
