import { expect, test } from "vitest";
import { powerGaugeSvg } from "../../src/sheet/power-gauge-svg.ts";

const of = (low: number, high: number) => ({ airC: { low: 35, high: 45 }, hotSpotC: { low, high } });
const title = 'Heat of "A & <B>"\u0001';
const numbers = (svg: string, pattern: RegExp) => [...svg.matchAll(pattern)].map((found) => found.slice(1).map(Number));

/** Names of the tags in order, those that close with a slash; one that closes itself is left out. */
function tagsLeftOpen(svg: string): readonly string[] {
	const open: string[] = [];
	for (const [, slash, name = "", rest = ""] of svg.matchAll(/<(\/?)([a-z]+)([^>]*)>/g)) {
		if (slash) expect(open.pop()).toBe(name);
		else if (!rest.endsWith("/")) open.push(name);
	}
	return open;
}

test.each([
	["a range on the scale", of(53, 78)],
	["one past its end", of(130, Number.POSITIVE_INFINITY)],
	["nothing known", null],
])("%s: a whole file with a title and a description, and no colour of its own", (_, steady) => {
	const svg = powerGaugeSvg(steady, title);
	expect(tagsLeftOpen(svg)).toEqual([]);
	expect(svg).toMatch(/^<svg xmlns="http:\/\/www\.w3\.org\/2000\/svg" viewBox="0 0 640 \d+" role="img"/);
	expect(svg).toContain("<title>Heat of &#34;A &#38; &#60;B&#62;&#34;</title>");
	expect(svg).toMatch(/<desc>[^<]{20,}<\/desc>/);
	const colours = [...svg.matchAll(/(?:fill|stroke)="([^"]*)"/g)].map(([, colour]) => colour);
	expect(new Set(colours)).toEqual(new Set(["none", "currentColor"]));
	expect(svg).not.toMatch(/NaN|Infinity|undefined|null/);
	expect(svg.replace("http://www.w3.org/2000/svg", "")).not.toMatch(/https?:|<script|href/);
});

test("bars lie where their figures are on the scale", () => {
	const svg = powerGaugeSvg(of(53, 78), "Heat");
	const [[scaleFrom = 0, scaleTo = 0] = []] = numbers(svg, /<path d="M([\d.]+) [\d.]+H([\d.]+)"/g);
	const at = (celsius: number) => scaleFrom + ((celsius - 35) / (120 - 35)) * (scaleTo - scaleFrom);
	const bars = numbers(svg, /<rect x="([\d.]+)" y="[\d.]+" width="([\d.]+)"/g);
	const wanted = [
		[35, 45],
		[53, 78],
	];
	bars.forEach(([left = 0, long = 0], index) => {
		expect(left).toBeCloseTo(at(wanted[index]?.[0] ?? 0), 0);
		expect(left + long).toBeCloseTo(at(wanted[index]?.[1] ?? 0), 0);
	});
	expect(bars).toHaveLength(2);
	const marks = numbers(svg, /<path d="M([\d.]+) [\d.]+V[\d.]+" stroke-dasharray/g).flat();
	expect(marks.map(Math.round)).toEqual([90, 105].map((line) => Math.round(at(line))));
});

test("an arrow stands only where a range goes on past the scale", () => {
	const arrows = (low: number, high: number) => powerGaugeSvg(of(low, high), "Heat").match(/Z" fill/g)?.length ?? 0;
	expect([arrows(53, 78), arrows(53, 120), arrows(53, 121), arrows(200, Number.POSITIVE_INFINITY)]).toEqual([
		0, 0, 1, 1,
	]);
});

test("the description says all that is drawn", () => {
	const words = (low: number, high: number) => /<desc>(.*)<\/desc>/.exec(powerGaugeSvg(of(low, high), "Heat"))?.[1];
	expect(words(53, 78)).toBe(
		"A scale from 35 to 120 degrees C. The air: 35 to 45 degrees C. The hottest stage: 53 to 78 degrees C. A line at 90 degrees C: at ease for years up to here. A line at 105 degrees C: boards hold the processor back.",
	);
	expect(words(97, 160)).toContain("The hottest stage: 97 to far past 150 degrees C, past the end of the scale.");
});

test("texts stay inside the picture", () => {
	const svg = powerGaugeSvg(of(53, 78), "Heat");
	const [[high = 0] = []] = numbers(svg, /viewBox="0 0 640 (\d+)"/g);
	for (const [x = 0, y = 0] of numbers(svg, /<text x="([\d.]+)" y="([\d.]+)"/g)) {
		expect(x).toBeLessThan(640);
		expect(y).toBeLessThan(high);
	}
});
