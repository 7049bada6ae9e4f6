import { htmlPage } from "./html-page.ts";
import { markupSafe } from "./markup-safe.ts";
import type { PaperBoard } from "./paper-board.ts";
import { boxAround, type PaperBox, type PaperShape, rectangle, words } from "./paper-board-shapes.ts";
import { barShapes, boardBox, drawnWith, rounded, shapesSvg, titleOf } from "./paper-board-svg.ts";
import {
	type Paper,
	papers,
	seamShapes,
	sheetHeadMm,
	sheetMarginMm,
	spareMm,
	type Tile,
	tilesOf,
} from "./paper-board-tiles.ts";

/** The paper board as one HTML file without a script, to print: a page of words, then the sheets at true size. */
export function paperBoardHtml(paper: PaperBoard, on: Paper): string {
	const drawing = boardBox(paper);
	const tiles = tilesOf(paper.shapes, on);
	const title = titleOf(paper);
	return htmlPage(title, styleOf(on), [
		"<main>",
		...wordsPage(paper, on, drawing, tiles),
		...tiles.map((tile) => tilePage(paper, tile, tiles)),
		...(paper.loose ? [loosePage(paper.loose)] : []),
		"</main>",
	]);
}

function styleOf(on: Paper): string {
	const { cssName } = papers[on];
	return [
		`@page{size:${cssName} portrait;margin:${sheetMarginMm}mm}`,
		":root{color-scheme:only light}",
		"body{margin:0;background:#fff;color:#000;font:9.5pt/1.25 Arial,Helvetica,sans-serif}",
		"h1{font-size:14pt;margin:0 0 1mm}h2{font-size:10.5pt;margin:2mm 0 0.5mm;break-after:avoid}",
		"ul,ol{margin:0;padding-left:5mm}li{break-inside:avoid;overflow-wrap:anywhere}p{margin:0 0 1mm}",
		".map{float:right;margin:0 0 2mm 4mm}ul:last-of-type{font-size:8pt}",
		"@media (max-width:600px){.map{float:none}}",
		"svg{display:block}.sheet{break-before:page;break-inside:avoid}",
		"@media screen{body{padding:4mm}.sheet{margin-top:8mm}.sheet,.wide{overflow-x:auto}}",
	].join("");
}

/** What to do, a map of the sheets, and all that is told of the drawing. */
function wordsPage(
	{ sections, boardName }: PaperBoard,
	on: Paper,
	drawing: PaperBox,
	tiles: readonly Tile[],
): readonly string[] {
	const count = tiles.length === 1 ? "one sheet" : `${tiles.length} sheets`;
	const bar = svgOf("Check bar", "A line of exactly 100 mm.", { left: -1, top: 0, width: 170, height: 12 }, [
		...barShapes({ x: 0, y: 3 }),
	]);
	return [
		`<h1>${markupSafe(titleOf({ boardName }))}</h1>`,
		`<p>For ${papers[on].name} paper: first the words, then ${count} at true size.</p>`,
		scrolling("Check bar", bar),
		...(tiles.length === 1 ? [] : [mapSvg(drawing, tiles), ...joining]),
		...sections.flatMap(({ heading, lines }) => [
			`<h2>${markupSafe(heading)}</h2>`,
			"<ul>",
			...lines.map((line) => `<li>${markupSafe(line)}</li>`),
			"</ul>",
		]),
	];
}

const joining: readonly string[] = [
	"<h2>How to put the sheets together</h2>",
	"<ol>",
	"<li>Measure the bar on every sheet. Sheets whose bars differ do not go together.</li>",
	"<li>Cut each sheet along the lines that say &#34;cut here&#34;, at its left and its upper side.</li>",
	"<li>Lay it on its neighbour, so that its edge lies on the line there and cross on cross. Then glue it.</li>",
	"</ol>",
];

/** Where each sheet goes; not to scale. */
function mapSvg(drawing: PaperBox, tiles: readonly Tile[]): string {
	const scale = Math.min(0.12, 32 / drawing.height);
	const shrunk = ({ left, top, width, height }: PaperBox): PaperBox => ({
		left: (left - drawing.left) * scale + 1,
		top: (top - drawing.top) * scale + 1,
		width: width * scale,
		height: height * scale,
	});
	const shapes = tiles.flatMap((tile): readonly PaperShape[] => {
		const box = shrunk(tile.box);
		return [
			rectangle("map", "guide", box),
			words({ x: box.left + box.width / 2, y: box.top + box.height / 2 + 1.5 }, String(tile.number), {
				highMm: 5,
				from: "middle",
			}),
		];
	});
	const whole = shrunk(drawing);
	const box = { left: 0, top: 0, width: Math.max(whole.width + 2, 40), height: whole.height + 7 };
	const below = words({ x: 1, y: whole.height + 5.5 }, "back edge at the top; not to scale", { highMm: 2.6 });
	const places = tiles.map(({ name }) => name).join("; ");
	const map = svgOf("Map of the sheets", `${places}. The back edge of the board is at the top.`, box, [
		...shapes,
		below,
	]);
	return `<div class="map">\n${map}\n</div>`;
}

/** One sheet: its name and the bar above, then its part of the drawing in true size with lines to cut and to glue at. */
function tilePage({ shapes, boardName }: PaperBoard, tile: Tile, tiles: readonly Tile[]): string {
	const { box } = tile;
	const head = svgOf(
		tile.name,
		"The sheet's name and a line of exactly 100 mm.",
		{ left: -1, top: 0, width: 180, height: sheetHeadMm - spareMm },
		[
			words({ x: 0, y: 5 }, tile.name, { highMm: 4.5 }),
			words({ x: 0, y: 9.5 }, titleOf({ boardName })),
			...barShapes({ x: 0, y: 14 }),
		],
	);
	const picture = svgOf(
		`${tile.name}, at true size`,
		"A part of the board's drawing; the first page tells all of it.",
		box,
		[...shapes, ...seamShapes(tile, tiles)],
	);
	return sheetSection(tile.name, head, picture);
}

/** The piece that is cut out by itself, on a sheet of its own. */
function loosePage(loose: readonly PaperShape[]): string {
	const head = svgOf(
		"Loose piece",
		"A line of exactly 100 mm.",
		{ left: -1, top: 0, width: 180, height: sheetHeadMm - spareMm },
		[
			words({ x: 0, y: 5 }, "Loose piece: round the processor", { highMm: 4.5 }),
			words(
				{ x: 0, y: 9.5 },
				"Cut it out and move it over the board. Keep its cross on the processor's line, where one is drawn.",
			),
			...barShapes({ x: 0, y: 14 }),
		],
	);
	const { left, top, width, height } = boxAround(loose, 6);
	const picture = svgOf(
		"Loose piece, at true size",
		"The middle of the processor and what is known round it.",
		{ left, top, width: width + 36, height },
		loose,
	);
	return sheetSection("Loose piece", head, picture);
}

/** A sheet of its own; on screen it scrolls by itself, by keys too, so that a phone need not shrink it. */
function sheetSection(name: string, ...pictures: readonly string[]): string {
	return `<section class="sheet" tabindex="0" aria-label="${markupSafe(name)}">\n${pictures.join("\n")}\n</section>`;
}

function scrolling(name: string, picture: string): string {
	return `<div class="wide" role="group" tabindex="0" aria-label="${markupSafe(name)}">\n${picture}\n</div>`;
}

/** A drawing of its own at true size, of which only this box shows. */
function svgOf(title: string, description: string, box: PaperBox, shapes: readonly PaperShape[]): string {
	const [left, top, width, height] = [box.left, box.top, box.width, box.height].map(rounded);
	return [
		`<svg width="${width}mm" height="${height}mm" viewBox="${left} ${top} ${width} ${height}" role="img" ${drawnWith}>`,
		`<title>${markupSafe(title)}</title>`,
		`<desc>${markupSafe(description)}</desc>`,
		...shapesSvg(shapes),
		"</svg>",
	].join("\n");
}
