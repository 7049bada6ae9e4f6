import axe from "axe-core";
import type { Page } from "playwright-core";
import { expect, test } from "vitest";
import { answersFile } from "../../src/parts/answers-file.ts";
import { answersInHtml } from "../../src/parts/answers-in-html.ts";
import { viewWalk } from "../../src/screens/walk-view.ts";
import { htmlSheet } from "../../src/sheet/html-sheet.ts";
import { savedWalk } from "../../src/walk/saved-walk.ts";
import type { WalkState } from "../../src/walk/walk-state.ts";
import { demo, emptyMarket, scenarios } from "../walk/walk-in-demo.ts";
import { pdfOf, withBrowser } from "./chromium.ts";
import { type PdfPage, pdfPages } from "./pdf-pages.ts";

/** Pages by walk: a sheet takes a while to make. */
const made = new Map<WalkState, string>();

function htmlOf(state: WalkState): string {
	const html = made.get(state) ?? htmlSheet(viewWalk(demo, state).sheet(), savedWalk(demo, state));
	made.set(state, html);
	return html;
}

/** Words of pictures that reach over the picture's edge. */
const wordsCutOff = `[...document.querySelectorAll("svg")].flatMap((svg) => {
	const { x, y, width, height } = svg.viewBox.baseVal;
	return [...svg.querySelectorAll("text")].flatMap((text) => {
		const box = text.getBBox();
		const isInside = box.x >= x && box.y >= y && box.x + box.width <= x + width && box.y + box.height <= y + height;
		return isInside ? [] : [text.textContent];
	});
})`;

/** What axe finds wrong, with the elements; nothing for a page that anybody can use. */
async function accessFaults(page: Page): Promise<readonly string[]> {
	// Run by the browser's tools, where the page's own policy does not reach.
	await page.evaluate(axe.source);
	return page.evaluate(`axe.run().then(({ violations, passes }) => [
		...violations.flatMap(({ id, nodes }) => nodes.map(({ html, failureSummary }) => id + ": " + html + " " + failureSummary)),
		...(passes.some(({ id }) => id === "color-contrast") ? [] : ["axe has not looked at the colours"]),
	])`);
}

/** The size that most of a page's letters have, to half a point. */
function usualSizePt({ texts }: PdfPage): number | undefined {
	const letters = new Map<number, number>();
	for (const { text, sizePt } of texts) {
		const size = Math.round(sizePt * 2) / 2;
		letters.set(size, (letters.get(size) ?? 0) + text.length);
	}
	return [...letters].sort((one, other) => other[1] - one[1])[0]?.[0];
}

/** The number of the sheet of paper that each heading stands on; 0 for none. */
function sheetsOfPaper(pages: readonly PdfPage[], headings: readonly string[]): readonly number[] {
	const squeezed = (text: string) => text.replace(/\s+/g, "");
	return headings.map(
		(heading) =>
			pages.findIndex(({ texts }) =>
				// A heading is drawn in bold letters of 12.5 points, at most in a few pieces.
				squeezed(
					texts
						.filter(({ sizePt }) => sizePt > 12)
						.map(({ text }) => text)
						.join(""),
				).includes(squeezed(heading)),
			) + 1,
	);
}

withBrowser("the sheet as a page", (browser) => {
	test.each(scenarios)("$name: silent, asks for nothing, reads on a phone, gives its answers back", async (person) => {
		const opened = await browser.openPage(htmlOf(person.state), { widthPx: 320, heightPx: 640 });
		expect(opened).toMatchObject({ said: [], errors: [], requests: [] });
		expect(opened.address).toMatch(/^file:/);
		expect(await opened.page.evaluate("document.documentElement.scrollWidth")).toBeLessThanOrEqual(320);
		expect(await opened.page.evaluate(wordsCutOff)).toEqual([]);
		// As a browser writes it when the page is kept anew.
		const keptAnew = await opened.page.content();
		expect(answersFile.parse(JSON.parse(answersInHtml(keptAnew) ?? "null"))).toEqual(savedWalk(demo, person.state));
		expect(savedWalk(demo, person.state).answers).toEqual(person.file.answers);
		expect(await opened.page.evaluate("document.querySelector('template').getBoundingClientRect().height")).toBe(0);
		await opened.close();
	});

	test.each(scenarios)("$name: two sheets of A4 or of Letter to take along", async ({ state }) => {
		const { page, close } = await browser.openPage(htmlOf(state));
		const headings = await page.evaluate<string[]>(
			"[...document.querySelectorAll('section.page > h2')].map(({ textContent }) => textContent)",
		);
		expect(headings).toHaveLength(3);
		for (const paper of ["A4", "Letter"] as const) {
			const pages = await pdfPages(await pdfOf(page, paper));
			expect(sheetsOfPaper(pages, headings), paper).toEqual([1, 2, 3]);
			for (const each of pages.slice(0, 2)) expect(usualSizePt(each)).toBe(11);
		}
		await close();
	});

	test.each(["first-guess", "workbench", "before-any-board"])(
		"%s: axe finds nothing, by light and by dark",
		async (name) => {
			const person = scenarios.find((one) => one.name === name) as (typeof scenarios)[number];
			const { page, close } = await browser.openPage(htmlOf(person.state), { widthPx: 320, heightPx: 640 });
			expect(await accessFaults(page)).toEqual([]);
			await page.emulateMedia({ colorScheme: "dark" });
			await page.setViewportSize({ width: 1280, height: 900 });
			expect(await accessFaults(page)).toEqual([]);
			await close();
		},
	);

	test("with no market at all it is still a sheet", async () => {
		const [first] = scenarios;
		const { page, close } = await browser.openPage(
			htmlSheet(viewWalk(emptyMarket, first?.state as WalkState).sheet(), null),
			{ scheme: "dark" },
		);
		expect(await accessFaults(page)).toEqual([]);
		expect(await pdfPages(await pdfOf(page, "A4"))).not.toHaveLength(0);
		await close();
	});

	test("boxes are ticked by their words and by the space bar", async () => {
		const [first] = scenarios;
		const { page, close } = await browser.openPage(htmlOf(first?.state as WalkState), { widthPx: 320 });
		await page.locator(".box label").first().click();
		expect(await page.locator(".box input").first().isChecked()).toBe(true);
		await page.locator(".box input").nth(1).focus();
		await page.keyboard.press("Space");
		expect(await page.locator(".box input").nth(1).isChecked()).toBe(true);
		await close();
	});

	test("a hostile sheet runs nothing and asks for nothing", async () => {
		const [first] = scenarios;
		const attacks = [
			`<img src=x onerror="alert(1)">`,
			"</template><script>alert(1)</script>",
			"--></style></title><script>alert(1)</script>",
			`"><svg onload="alert(1)"><image href="https://example.invalid/x.png"/></svg>`,
			"<style>@import url(https://example.invalid/x.css);</style>",
			"\u202eturned\u2066 round",
		];
		const text = attacks.join(" ");
		const sheet = viewWalk(demo, first?.state as WalkState).sheet();
		const kept = { ...savedWalk(demo, first?.state as WalkState), name: text };
		const hostile = {
			...sheet,
			title: text,
			market: text,
			inShort: [text],
			beforeYouPay: [text],
			open: [{ what: text, how: text, changes: text }],
			answers: [{ questionId: text, label: text, value: text, by: text }],
			sources: [text],
		};
		const opened = await browser.openPage(htmlSheet(hostile, kept));
		await opened.page.waitForTimeout(300);
		expect(opened).toMatchObject({ said: [], errors: [], requests: [] });
		expect(await opened.page.evaluate("document.querySelectorAll('script, img, image, style').length")).toBe(1);
		expect(await opened.page.locator("h1").textContent()).toContain("</template><script>alert(1)</script>");
		expect(JSON.parse(answersInHtml(await opened.page.content()) ?? "null")).toEqual(JSON.parse(JSON.stringify(kept)));
		await opened.close();
	});

	test("even a script that got in would not run", async () => {
		const [first] = scenarios;
		const html = htmlOf(first?.state as WalkState).replace(
			"</main>",
			'<script>document.title = "ran"</script><img src="https://example.invalid/x.png" onerror="document.title = 1"></main>',
		);
		const opened = await browser.openPage(html);
		expect(await opened.page.title()).not.toMatch(/ran|1$/);
		expect(opened.said.join("\n")).toMatch(/Content Security Policy/);
		await opened.close();
	});
});
