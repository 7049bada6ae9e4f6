import { expect, test } from "vitest";
import { pdfOf, withBrowser } from "./chromium.ts";
import { pdfPages } from "./pdf-pages.ts";

/** Chromium lays things out in whole pixels, a quarter of a millimetre; what is drawn inside a picture is exact. */
const aboutMm = (found: number | undefined, right: number, within: number) =>
	expect(Math.abs((found ?? Number.NaN) - right)).toBeLessThan(within);

/** What the other tests in this folder lean on: a harness that misses what happens would let everything pass. */
withBrowser("the browser harness", (browser) => {
	test("hears what a page says, throws and asks for", async () => {
		const opened = await browser.openPage(
			`<!doctype html><title>t</title><img src="https://example.invalid/a.png"><script>console.log("said");alert(1);throw new Error("thrown")</script>`,
		);
		expect(opened.said.join()).toContain("said");
		expect(opened.errors.join()).toContain("thrown");
		expect(opened.errors.join()).toContain("dialog: 1");
		expect(opened.requests).toEqual(["https://example.invalid/a.png"]);
	});

	test("hears nothing from a page that is silent", async () => {
		const opened = await browser.openPage("<!doctype html><title>t</title><p>Quiet</p>");
		expect(opened).toMatchObject({ said: [], errors: [], requests: [] });
		expect(opened.address).toMatch(/^file:/);
	});

	test.each([
		["A4", 210, 297],
		["Letter", 215.9, 279.4],
	] as const)("measures what is printed on %s", async (paper, widthMm, heightMm) => {
		const { page } = await browser.openPage(
			`<!doctype html><style>@page{margin:10mm}body{margin:0}p{margin:0;font-size:11pt;break-after:page}svg{display:block}</style>
			<p>First</p><svg width="120mm" height="40mm" viewBox="0 0 120 40" fill="none" stroke="#000" stroke-width="0.2">
			<path d="M5 10h100"/><circle cx="20" cy="30" r="2"/><rect x="40" y="20" width="30" height="10"/></svg>`,
		);
		const pages = await pdfPages(await pdfOf(page, paper));
		expect(pages).toHaveLength(2);
		for (const each of pages) {
			aboutMm(each.widthMm, widthMm, 0.5);
			aboutMm(each.heightMm, heightMm, 0.5);
		}
		const [first, second] = pages;
		expect(first?.text).toBe("First");
		expect(first?.texts[0]?.sizePt).toBeCloseTo(11, 1);
		aboutMm(first?.texts[0]?.xMm, 10, 0.3);
		const [bar, hole, slot] = second?.shapes.filter(({ drawn }) => drawn === "stroke") ?? [];
		aboutMm(bar?.widthMm, 100, 0.02);
		aboutMm(bar?.leftMm, 15, 0.3);
		aboutMm(bar?.topMm, 20, 0.3);
		aboutMm(hole?.widthMm, 4, 0.02);
		aboutMm((hole?.leftMm ?? 0) - (bar?.leftMm ?? 0), 20 - 2 - 5, 0.02);
		expect(slot).toMatchObject({ isClosed: true });
		aboutMm(slot?.heightMm, 10, 0.02);
	});
});
