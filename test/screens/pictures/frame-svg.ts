import type { DrawnCell } from "../../ui/drawn-terminal.ts";

export interface FrameSvgOptions {
	/** Begins the ids in the picture, so that two pictures can stand in one page. */
	readonly name: string;
	/** What the picture shows, in a few words. */
	readonly title: string;
}

/** Size of a cell and the margin around the frame, in pixels of the picture. */
const cell = { width: 8.4, height: 18 } as const;
const margin = 16;
const fontSize = 14;
/** From the top of a row to the line that letters stand on. */
const baseline = 13;

/** Our own neutral colours, on a ground of its own, so that the page behind may be light or dark. */
const ground = "#212427";
const edge = "#73787d";
const usual = "#e4e4e0";
const dimmed = "#a9acae";
/** Numbers of named colours that a frame may have, as terminals count them. */
const named: Readonly<Record<number, string>> = { 3: "#e0c46c", 6: "#6fd3d6" };

/** Cells in a row that look alike, and the column they begin in. */
interface Run {
	readonly column: number;
	readonly columns: number;
	readonly words: string;
	readonly look: DrawnCell;
}

/**
 * A frame of a terminal as a picture. Each run of cells is held to its columns, whatever letters the reader has; the
 * text of the frame stands in its description.
 *
 * @throws Error for a colour that frames are not drawn in
 */
export function frameSvg(rows: readonly (readonly DrawnCell[])[], { name, title }: FrameSvgOptions): string {
	const columns = Math.max(0, ...rows.map((row) => row.reduce((sum, { columns: wide }) => sum + wide, 0)));
	const [width, height] = [round(columns * cell.width) + 2 * margin, rows.length * cell.height + 2 * margin];
	const said = rows.map((row) => row.map(({ sign }) => sign).join("")).map((line) => line.trimEnd());
	const texts = rows.flatMap((row, index) => runsOf(row).map((run) => textOf(run, index)));
	return [
		`<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${width} ${height}" width="${width}" height="${height}" role="img" aria-labelledby="${name}-title ${name}-desc">`,
		`<title id="${name}-title">${escaped(title)}</title>`,
		`<desc id="${name}-desc">${escaped(said.join("\n").trim())}</desc>`,
		`<rect x="0.5" y="0.5" width="${width - 1}" height="${height - 1}" rx="6" fill="${ground}" stroke="${edge}"/>`,
		`<g font-family="ui-monospace, monospace" font-size="${fontSize}" fill="${usual}">`,
		...texts,
		"</g>",
		"</svg>",
		"",
	].join("\n");
}

/** Runs of cells that look alike; a gap of two spaces or more ends a run, since SVG would make one space of it. */
function runsOf(row: readonly DrawnCell[]): readonly Run[] {
	const runs: Run[] = [];
	let column = 0;
	for (const look of row) {
		const last = runs.at(-1);
		const follows = last !== undefined && last.column + last.columns === column && looksLike(last.look, look);
		if (last && follows && !(look.sign === " " && last.words.endsWith(" ")))
			runs.splice(-1, 1, { ...last, columns: last.columns + look.columns, words: last.words + look.sign });
		else if (look.sign !== " ") runs.push({ column, columns: look.columns, words: look.sign, look });
		column += look.columns;
	}
	return runs.map((run) =>
		run.words.endsWith(" ") ? { ...run, columns: run.columns - 1, words: run.words.slice(0, -1) } : run,
	);
}

function looksLike(one: DrawnCell, other: DrawnCell): boolean {
	return (
		one.bold === other.bold && one.dim === other.dim && one.underline === other.underline && one.colour === other.colour
	);
}

function textOf({ column, columns, words, look }: Run, row: number): string {
	const colour = look.colour === null ? (look.dim ? dimmed : null) : named[look.colour];
	if (colour === undefined) throw new Error(`no frame is drawn in colour ${look.colour}`);
	const attributes = [
		`x="${round(margin + column * cell.width)}"`,
		`y="${margin + row * cell.height + baseline}"`,
		`textLength="${round(columns * cell.width)}" lengthAdjust="spacingAndGlyphs"`,
		...(look.bold ? ['font-weight="bold"'] : []),
		...(look.underline ? ['text-decoration="underline"'] : []),
		...(colour === null ? [] : [`fill="${colour}"`]),
	];
	return `<text ${attributes.join(" ")}>${escaped(words)}</text>`;
}

/** Tenths of a pixel, so that the same frame is the same file everywhere. */
function round(pixels: number): number {
	return Math.round(pixels * 10) / 10;
}

const entities: Readonly<Record<string, string>> = { "&": "&amp;", "<": "&lt;", ">": "&gt;" };

/** Text for XML; what XML 1.0 does not allow at all (control characters) is left out. */
function escaped(text: string): string {
	return text
		.replaceAll(/[&<>]/g, (sign) => entities[sign] ?? sign)
		.replaceAll(/[^\n\u0020-\ud7ff\ue000-\ufffd\u{10000}-\u{10ffff}]/gu, "");
}
