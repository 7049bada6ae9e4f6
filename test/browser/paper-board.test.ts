import axe from "axe-core";
import { describe, expect, test } from "vitest";
import { holePosition, holesOfForm } from "../../src/reference/board-holes.ts";
import { paperBoardHtml } from "../../src/sheet/paper-board-html.ts";
import { paperBoardSvg } from "../../src/sheet/paper-board-svg.ts";
import { type Paper, tilesOf } from "../../src/sheet/paper-board-tiles.ts";
import { slot } from "../plan/made-up-problem.ts";
import { drawn, statedBoards, thickCard, withCooler } from "../sheet/paper-boards.ts";
import { pdfOf, withBrowser } from "./chromium.ts";
import { type PdfPage, type PdfShape, type PointMm, pdfPages } from "./pdf-pages.ts";

/** What a ruler would not see, in mm. */
const closeMm = 0.2;
const layout = { memoryFromSocketMm: 52, firstSlotFromSocketMm: 76 };
const full = {
	graphicsCard: thickCard,
	...withCooler({ overSlotMm: 63, overMemoryMm: 38 }),
};
const papers = [
	["a4", "A4", 210, 297],
	["letter", "Letter", 215.9, 279.4],
] as const satisfies readonly (readonly [Paper, "A4" | "Letter", number, number])[];

const strokesOf = ({ shapes }: PdfPage) => shapes.filter(({ drawn: how }) => how === "stroke");
/** The check bar: the one level line of about its length near the top of a page, right above its words. */
function barsOf(page: PdfPage): readonly PdfShape[] {
	const words = page.texts.find(({ text }) => text.startsWith("Measure this first"));
	return strokesOf(page).filter(
		({ heightMm, widthMm, topMm }) =>
			heightMm < 0.05 && widthMm > 50 && words && topMm < words.yMm && words.yMm - topMm < 8,
	);
}

/** The upper left crop mark: three points, the bend between two arms of 4 mm. */
function cropCorner(page: PdfPage): PointMm {
	const marks = strokesOf(page).filter(
		({ points, widthMm, heightMm }) =>
			points.length === 3 && Math.abs(widthMm - 4) < 0.05 && Math.abs(heightMm - 4) < 0.05,
	);
	const corner = {
		xMm: Math.min(...marks.map(({ leftMm }) => leftMm)),
		yMm: Math.min(...marks.map(({ topMm }) => topMm)),
	};
	expect(marks).toHaveLength(4);
	return corner;
}

/** Middles of the screw holes on a sheet, in mm from its upper left crop mark; what the sheet does not show is left out. */
function holesOf(page: PdfPage, box: { readonly width: number; readonly height: number }): readonly PointMm[] {
	const corner = cropCorner(page);
	return strokesOf(page)
		.filter(({ points }) => points.length > 3)
		.filter(({ widthMm, heightMm }) => Math.abs(widthMm - 3.96) < 0.05 && Math.abs(heightMm - 3.96) < 0.05)
		.map(({ leftMm, topMm, widthMm, heightMm }) => ({
			xMm: leftMm + widthMm / 2 - corner.xMm,
			yMm: topMm + heightMm / 2 - corner.yMm,
		}))
		.filter(({ xMm, yMm }) => xMm > 0 && xMm < box.width && yMm > 0 && yMm < box.height);
}

withBrowser("the paper board", (browser) => {
	const printed = async (html: string, on: "A4" | "Letter") => {
		const opened = await browser.openPage(html);
		const pages = await pdfPages(await pdfOf(opened.page, on));
		await opened.close();
		return { opened, pages, sheets: pages.filter(({ text }) => /Sheet \d+ of \d+: /.test(text)) };
	};

	describe.each(papers)("on %s", (paper, on, widthMm, heightMm) => {
		test.each(["ATX", "microATX", "Mini-ITX"] as const)("%s: pages, bar and holes", async (form) => {
			const board = drawn({ ...statedBoards[form], layout }, full);
			const tiles = tilesOf(board.shapes, paper);
			const { opened, pages, sheets } = await printed(paperBoardHtml(board, paper), on);
			expect([opened.said, opened.errors, opened.requests]).toEqual([[], [], []]);

			for (const page of pages) {
				expect(Math.abs(page.widthMm - widthMm)).toBeLessThan(0.5);
				expect(Math.abs(page.heightMm - heightMm)).toBeLessThan(0.5);
			}
			// One or two pages of words, the sheets in their order, the loose piece last: nothing spills over.
			const words = pages.length - tiles.length - 1;
			expect([1, 2]).toContain(words);
			expect(sheets).toEqual(pages.slice(words, -1));
			expect(pages.at(-1)?.text).toContain("Loose piece: round the processor");
			tiles.forEach(({ name }, index) => {
				expect(sheets[index]?.text).toContain(name);
			});

			// 100 mm on the first page, on every sheet and on the loose piece.
			for (const page of [...pages.slice(0, 1), ...pages.slice(words)]) {
				const bars = barsOf(page);
				expect(bars).toHaveLength(1);
				expect(Math.abs((bars[0]?.widthMm ?? 0) - 100)).toBeLessThan(closeMm);
			}

			// Every hole lies on some sheet, and where the standard has it on every sheet that shows it.
			const shown = tiles.flatMap(({ box }, index) =>
				holesOf(sheets[index] as PdfPage, box).map(({ xMm, yMm }) => ({ xMm: xMm + box.left, yMm: yMm + box.top })),
			);
			const standard = (holesOfForm(form)?.letters ?? []).map(holePosition);
			const isNear = (one: PointMm, other: PointMm) => Math.hypot(one.xMm - other.xMm, one.yMm - other.yMm) < closeMm;
			expect(standard.filter((hole) => !shown.some((one) => isNear(one, hole)))).toEqual([]);
			expect(shown.filter((one) => !standard.some((hole) => isNear(one, hole)))).toEqual([]);
		});

		test("Mini-ITX: two holes on one sheet are as far apart as the standard says", async () => {
			const board = drawn(statedBoards["Mini-ITX"]);
			const [tile] = tilesOf(board.shapes, paper);
			const { sheets } = await printed(paperBoardHtml(board, paper), on);
			const holes = tile && sheets[0] ? holesOf(sheets[0], tile.box) : [];
			expect(holes).toHaveLength(4);
			const xs = holes.map(({ xMm }) => xMm);
			const ys = holes.map(({ yMm }) => yMm);
			// H to J and C to H, ParametricCase, motherboard.scad: read in a secondary text.
			expect(Math.abs(Math.max(...xs) - Math.min(...xs) - 157.48)).toBeLessThan(closeMm);
			expect(Math.abs(Math.max(...ys) - Math.min(...ys) - 154.94)).toBeLessThan(closeMm);
		});

		test("a board with much to tell and hostile names prints as text and asks for nothing", async () => {
			const nasty = `</title><script>alert(1)</script><img src="https://example.invalid/a.png"> &amp; 'name'`;
			const board = drawn(
				{ ...statedBoards.microATX, name: nasty, cardSlots: [slot(nasty, 1, 16)], holes: undefined },
				{ ...full, ...withCooler({ name: nasty, overSlotMm: 60 }) },
			);
			const { opened, pages } = await printed(paperBoardHtml(board, paper), on);
			expect([opened.said, opened.errors, opened.requests]).toEqual([[], [], []]);
			expect(pages[0]?.text).toContain("</title><script>alert(1)</script>");
		});
	});

	test("in a narrow window the sheets scroll and not the page, and axe finds nothing", async () => {
		const opened = await browser.openPage(paperBoardHtml(drawn({ ...statedBoards.ATX, layout }, full), "a4"), {
			widthPx: 320,
		});
		const wide = await opened.page.evaluate("document.documentElement.scrollWidth");
		expect(wide).toBeLessThanOrEqual(320);
		// Run by the browser's tools, where the page's own policy does not reach.
		await opened.page.evaluate(axe.source);
		const faults = "axe.run().then(({ violations }) => violations.map(({ id, nodes }) => id + ': ' + nodes[0].html))";
		expect(await opened.page.evaluate(faults)).toEqual([]);
	});

	test("the SVG's bar is 100 mm where it is shown at its own size", async () => {
		const board = drawn({ ...statedBoards.ATX, layout }, full);
		const html = `<!doctype html><title>t</title><style>@page{size:420mm 900mm;margin:0}body{margin:0}svg{display:block}</style>${paperBoardSvg(board)}`;
		const { opened, pages } = await printed(html, "A4");
		expect([opened.said, opened.errors, opened.requests]).toEqual([[], [], []]);
		expect(pages).toHaveLength(1);
		const [bar, ...others] = pages.flatMap(barsOf);
		expect(others).toEqual([]);
		expect(Math.abs((bar?.widthMm ?? 0) - 100)).toBeLessThan(closeMm);
	});
});
