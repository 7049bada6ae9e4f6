import { readdirSync, readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { frameSvg } from "../screens/pictures/frame-svg.ts";
import { withBrowser } from "./chromium.ts";

const folder = new URL("../screens/pictures/", import.meta.url);
const pictures = readdirSync(folder)
	.filter((file) => file.endsWith(".svg"))
	.map((file) => [file, readFileSync(new URL(file, folder), "utf8")] as const);

const hostile = `</desc><script>&lt;"' ]]> <!-- <![CDATA[`;
const hostileFrame = frameSvg(
	[[...hostile].map((sign) => ({ sign, columns: 1, bold: false, dim: false, underline: false, colour: null }))],
	{ name: "hostile", title: hostile },
);

/** Where the first column begins and the last one ends, and what letters may stand over their cells, in pixels. */
const [left, right, slack] = [16, 688, 0.8];

/** Where the letters of a run really stand, in pixels. */
interface TextBox {
	readonly words: string;
	readonly row: number;
	readonly from: number;
	readonly to: number;
}

withBrowser("the pictures of README.md", (browser) => {
	test.each([...pictures, ["names that look like markup", hostileFrame] as const])(
		"%s is sound XML of the few elements a picture needs",
		async (_, svg) => {
			const { page } = await browser.openPage("<!doctype html><title>pictures</title>");
			const read = await page.evaluate<{ elements: string[]; title: string; desc: string }>(`(() => {
				const { documentElement } = new DOMParser().parseFromString(${JSON.stringify(svg)}, "image/svg+xml");
				const all = [documentElement, ...documentElement.querySelectorAll("*")];
				const words = (tag) => documentElement.querySelector(tag)?.textContent ?? "";
				const elements = [...new Set(all.map(({ tagName }) => tagName))].sort();
				return { elements, title: words("title"), desc: words("desc") };
			})()`);
			expect(read.elements).toEqual(["desc", "g", "rect", "svg", "text", "title"]);
			expect(read.title).not.toBe("");
			expect(read.desc).not.toBe("");
			if (svg === hostileFrame) expect([read.title, read.desc]).toEqual([hostile, hostile]);
		},
	);

	test.each(["monospace", "serif"])(
		"letters of %s stand in their columns, inside the picture and never over each other",
		async (font) => {
			for (const [file, svg] of pictures) {
				const { page, close } = await browser.openPage(
					`<!doctype html><title>${file}</title>${svg.replace('"ui-monospace, monospace"', `"${font}"`)}`,
				);
				const boxes = await page.evaluate<readonly TextBox[]>(`[...document.querySelectorAll("text")].map((text) => {
					const { x, width } = text.getBBox();
					return { words: text.textContent, row: Number(text.getAttribute("y")), from: x, to: x + width };
				})`);
				expect(boxes.length).toBeGreaterThan(10);
				const slips = boxes.filter(
					({ row, from, to }, index) =>
						from < left - slack ||
						to > right + slack ||
						boxes.some((other, at) => at > index && other.row === row && other.from < to - slack),
				);
				expect(slips, file).toEqual([]);
				await close();
			}
		},
	);
});
