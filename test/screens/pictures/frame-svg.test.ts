import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import type { DrawnCell } from "../../ui/drawn-terminal.ts";
import { frameSvg } from "./frame-svg.ts";

const folder = new URL("./", import.meta.url);
const pictures = readdirSync(folder)
	.filter((file) => file.endsWith(".svg"))
	.sort()
	.map((file) => [file, readFileSync(new URL(file, folder), "utf8")] as const);

const plain: Omit<DrawnCell, "sign" | "columns"> = { bold: false, dim: false, underline: false, colour: null };
const cells = (words: string, look: Partial<DrawnCell> = {}): DrawnCell[] =>
	[...words].map((sign) => ({ ...plain, sign, columns: 1, ...look }));
const drawn = (...rows: readonly (readonly DrawnCell[])[]) => frameSvg(rows, { name: "a", title: "A frame" });
const textsIn = (svg: string) =>
	[...svg.matchAll(/<text ([^>]*)>([^<]*)<\/text>/g)].map(([, how, words]) => [how, words]);

/** Colours that words are drawn in, and the one behind them. */
const inksOf = (svg: string) =>
	new Set([...svg.matchAll(/<(?:text|g) [^>]*fill="([^"]+)"/g)].map(([, ink]) => ink ?? ""));
const groundOf = (svg: string) => /<rect [^>]*fill="(#[\da-f]{6})"/.exec(svg)?.[1] ?? "";

/** Light from 0 to 1 of a colour such as #1a2b3c: relative luminance of WCAG 2.2. */
function lightOf(colour: string): number {
	const [red = 0, green = 0, blue = 0] = [1, 3, 5].map((from) => {
		const share = Number.parseInt(colour.slice(from, from + 2), 16) / 255;
		return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
	});
	return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
}

/** Contrast ratio of WCAG 2.2, from 1 to 21. */
function contrast(one: string, other: string): number {
	const [dark = 0, light = 0] = [lightOf(one), lightOf(other)].sort((a, b) => a - b);
	return (light + 0.05) / (dark + 0.05);
}

test("the contrast measured here is that of the standard: 21 for black on white, 4.54 for this grey", () => {
	expect(contrast("#000000", "#ffffff")).toBe(21);
	expect(contrast("#767676", "#ffffff")).toBeCloseTo(4.54, 2);
});

describe("a frame as a picture", () => {
	test("has each run of cells that look alike at its column, as wide as its cells", () => {
		const svg = drawn(
			[...cells("> ", { bold: true, colour: 6 }), ...cells("mark", { bold: true, colour: 6 }), ...cells(" more  far ")],
			[],
			cells("  dim", { dim: true }),
		);
		expect(textsIn(svg)).toEqual([
			[
				'x="16" y="29" textLength="50.4" lengthAdjust="spacingAndGlyphs" font-weight="bold" fill="#6fd3d6"',
				"&gt; mark",
			],
			['x="74.8" y="29" textLength="33.6" lengthAdjust="spacingAndGlyphs"', "more"],
			['x="125.2" y="29" textLength="25.2" lengthAdjust="spacingAndGlyphs"', "far"],
			['x="32.8" y="65" textLength="25.2" lengthAdjust="spacingAndGlyphs" fill="#a9acae"', "dim"],
		]);
	});

	test("counts a wide sign as two columns", () => {
		const svg = drawn([...cells("箱", { columns: 2 }), ...cells("x")]);
		expect(textsIn(svg)).toEqual([['x="16" y="29" textLength="25.2" lengthAdjust="spacingAndGlyphs"', "箱x"]]);
	});

	test("says its text in its description, and lets no name become anything else", () => {
		const svg = drawn(cells("</text><script>&amp;\u0007"), cells("  two   gaps "));
		expect(svg).toContain('<desc id="a-desc">&lt;/text&gt;&lt;script&gt;&amp;amp;\n  two   gaps</desc>');
		expect(svg).not.toContain("<script");
		expect(svg).not.toContain("\u0007");
	});

	test("can be read in every colour that frames are drawn in", () => {
		const looks: Partial<DrawnCell>[] = [{}, { dim: true }, { colour: 3 }, { colour: 6, bold: true }];
		const svg = drawn(...looks.map((look) => cells("x", look)));
		expect(inksOf(svg).size).toBe(4);
		for (const ink of inksOf(svg)) expect(contrast(ink, groundOf(svg)), ink).toBeGreaterThanOrEqual(4.5);
	});

	test("is refused in a colour that has none here", () => {
		expect(() => drawn(cells("x", { colour: 1 }))).toThrow("colour 1");
	});
});

describe("the pictures of README.md", () => {
	test("are six, each named there once, with words for who cannot see it", () => {
		const readme = readFileSync(new URL("../../../README.md", folder), "utf8");
		const shown = [...readme.matchAll(/!\[([^\]]+)\]\(test\/screens\/pictures\/([\w-]+\.svg)\)/g)];
		expect(shown.map(([, , file]) => file).sort()).toEqual(pictures.map(([file]) => file));
		expect(pictures).toHaveLength(6);
		for (const [, words] of shown) expect(words?.length).toBeGreaterThan(40);
	});

	test.each(pictures)("%s can be read on its ground, is small, and runs nothing", (_, svg) => {
		expect(inksOf(svg).size).toBeGreaterThanOrEqual(2);
		for (const ink of inksOf(svg)) expect(contrast(ink, groundOf(svg)), ink).toBeGreaterThanOrEqual(4.5);
		expect(Buffer.byteLength(svg)).toBeLessThan(40_000);
		expect(svg).not.toMatch(/<script|\son\w+=|href|url\(|@import|style=/i);
		expect(svg).toMatch(
			/^<svg xmlns="http:\/\/www\.w3\.org\/2000\/svg" viewBox="0 0 704 464" width="704" height="464" role="img"/,
		);
	});
});
